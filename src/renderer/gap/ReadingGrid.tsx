/** The readings of one surface: a row for each station, a column for each clocking. */

import { createSignal, createUniqueId, For, Index, type JSX, Show } from 'solid-js';
import { surfaceWords } from '../../shared/bench-words.ts';
import { helpOfNumber } from '../../shared/field-help.ts';
import { readBlock } from '../../shared/pasted-block.ts';
import type { Instrument, MeasuredSurface } from '../../shared/project.ts';
import { readQuantity } from '../../shared/quantity-entry.ts';
import type { Mistake } from '../../shared/reports-gap.ts';
import { tellHelp } from '../help/known-fields.ts';
import { Mark } from '../parts/Mark.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { readingsSheet } from '../sheets/gap-sheets.ts';
import { Choice } from '../size/Choice.tsx';
import { PlaceInput } from './PlaceInput.tsx';

export interface ReadingGridProps {
  readonly surface: MeasuredSurface;
  /** What is typed and is no number yet outlives a change of page. */
  readonly memory: Map<string, Typed>;
  readonly instruments: readonly Instrument[];
  readonly mistakes: readonly Mistake[];
  /** Recorded: to be looked at only. */
  readonly fixed: boolean;
  readonly onRead: (station: number, clocking: number, value: number | null) => void;
  readonly onConfirm: (station: number, clocking: number) => void;
  readonly onInstrument: (instrument: Read) => void;
  /** Stations and clockings can be changed: then they stand in the way of Tab from reading to reading. */
  readonly places: boolean;
  /** Where it was read in truth. */
  readonly onStation: (station: number, x: number) => void;
  readonly onClocking: (clocking: number, angle: number) => void;
}

type Read = Pick<Instrument, 'name' | 'error' | 'repeatability'>;
const textOf = ({ name, error, repeatability }: Read): string =>
  `${name}, ±${error} mm, scatter ${repeatability}`;

/** A cell as it is typed: what is no number stays there, with what is wrong with it. */
export interface Typed {
  readonly text: string;
  readonly message: string | null;
}

/** Every reading of the page, in the order of measuring. */
const cellsOf = (from: HTMLElement): HTMLInputElement[] => [
  ...(from.closest('.gap-readings')?.querySelectorAll<HTMLInputElement>('input.reading') ?? []),
];

function moveBy(from: HTMLInputElement, steps: number): void {
  const cells = cellsOf(from);
  const next = cells[cells.indexOf(from) + steps];
  next?.focus();
  next?.select();
}

export function ReadingGrid(props: ReadingGridProps): JSX.Element {
  const id = createUniqueId();
  /** What is being typed, by cell. */
  const [typing, setTyping] = createSignal<Readonly<Record<string, Typed>>>(
    Object.fromEntries(props.memory),
  );
  const [pasted, setPasted] = createSignal<string | null>(null);
  const cellKey = (i: number, j: number): string => `${i} ${j}`;
  const say = (i: number, j: number, typed: Typed | null): void => {
    if (typed?.message) props.memory.set(cellKey(i, j), typed);
    else props.memory.delete(cellKey(i, j));
    setTyping((all) => {
      const { [cellKey(i, j)]: _, ...others } = all;
      return typed === null ? others : { ...others, [cellKey(i, j)]: typed };
    });
  };
  /** What was typed is kept while it is no number yet; the reading is empty until it is one. */
  const enter = (i: number, j: number, text: string): void => {
    setPasted(null);
    const entry = text.trim() === '' ? null : readQuantity(text, 'diameter');
    say(i, j, { text, message: entry && !entry.ok ? entry.message : null });
    props.onRead(i, j, entry?.ok ? entry.value : null);
  };
  /** All of a block or nothing: what was read before stays where the block is empty or does not fit. */
  const paste = (event: ClipboardEvent, i: number, j: number): void => {
    const block = readBlock(event.clipboardData?.getData('text') ?? '');
    if (block.ok && block.rows.length === 1 && block.rows[0]!.length === 1) return;
    event.preventDefault();
    const { stations, clockings } = props.surface;
    const [rows, columns] = block.ok
      ? [block.rows.length, Math.max(...block.rows.map(({ length }) => length))]
      : [0, 0];
    if (!block.ok) return void setPasted(block.message);
    if (i + rows > stations.length || j + columns > clockings.length) {
      return void setPasted(
        `Nothing was taken: what was pasted has ${rows} rows and ${columns} columns; from here there is room for ${stations.length - i} and ${clockings.length - j}.`,
      );
    }
    setPasted(null);
    block.rows.forEach((row, k) => {
      row.forEach((value, l) => {
        if (value === null) return;
        say(i + k, j + l, null);
        props.onRead(i + k, j + l, value);
      });
    });
  };
  const key = (event: KeyboardEvent & { currentTarget: HTMLInputElement }): void => {
    const columns = props.surface.clockings.length;
    const steps = { Enter: 1, ArrowDown: columns, ArrowUp: -columns }[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    moveBy(event.currentTarget, event.key === 'Enter' && event.shiftKey ? -1 : steps);
  };
  const mistakeAt = (i: number, j: number): Mistake | undefined =>
    props.mistakes.find(({ at }) => at !== null && at[0] === i && at[1] === j);
  const name = (): string => surfaceWords[props.surface.surface];
  /** As many decimals as the finest reading of the surface, as the instrument shows them. */
  const decimals = (): number =>
    Math.max(
      0,
      ...props.surface.diameters
        .flat()
        .map((value) => (String(value ?? '').split('.')[1] ?? '').length),
    );
  const shown = (value: number | null): string =>
    value === null ? '' : value.toFixed(Math.min(4, decimals()));
  const used = (): Read => props.surface.instrument;
  /** The one that was read with stands first where the project has it no more, or otherwise. */
  const choices = (): readonly Read[] =>
    props.instruments.some((one) => textOf(one) === textOf(used()))
      ? props.instruments
      : [used(), ...props.instruments];

  return (
    <section class="gap-surface" aria-label={`Diameters of ${name()}`}>
      <header>
        <h3>{name()}</h3>
        <Show when={!props.fixed} fallback={<span class="units">{textOf(used())}</span>}>
          <Choice
            name={`Instrument for ${name()}`}
            help="instrument"
            options={choices().map((one) => ({ value: textOf(one), text: textOf(one) }))}
            value={textOf(used())}
            onChoose={(chosen) => {
              const instrument = choices().find((one) => textOf(one) === chosen);
              if (instrument) props.onInstrument(instrument);
            }}
          />
        </Show>
        <TakeOut what={`Diameters of ${name()}`} sheet={() => readingsSheet(props.surface)} />
      </header>
      <table>
        <thead>
          <tr>
            <th scope="col">
              <span class="hidden">Station, </span>mm from mouth
            </th>
            <Index each={props.surface.clockings}>
              {(angle, j) => (
                <th scope="col">
                  <Show when={props.places} fallback={angle()}>
                    <PlaceInput
                      quantity="clocking"
                      name={`Clocking ${j + 1} of ${name()}, degrees`}
                      value={angle()}
                      fixed={props.fixed}
                      onPlace={(value) => props.onClocking(j, value)}
                    />
                  </Show>
                  °
                </th>
              )}
            </Index>
          </tr>
        </thead>
        <tbody>
          <Index each={props.surface.stations}>
            {(station, i) => (
              <tr>
                <th scope="row">
                  <Show when={props.places} fallback={station()}>
                    <PlaceInput
                      quantity="station"
                      name={`Station ${i + 1} of ${name()}, mm from the mouth`}
                      value={station()}
                      fixed={props.fixed}
                      onPlace={(value) => props.onStation(i, value)}
                    />
                  </Show>
                </th>
                <Index each={props.surface.clockings}>
                  {(angle, j) => {
                    const stored = (): number | null => props.surface.diameters[i]?.[j] ?? null;
                    const typed = () => typing()[cellKey(i, j)];
                    const bad = () => (typed()?.message ?? null) !== null;
                    const doubt = () => mistakeAt(i, j);
                    return (
                      <td class={bad() || doubt() ? 'is-wrong' : ''}>
                        <input
                          ref={(field) => tellHelp(field, () => helpOfNumber('diameter'))}
                          class="reading"
                          type="text"
                          inputmode="decimal"
                          autocomplete="off"
                          spellcheck={false}
                          readonly={props.fixed}
                          aria-label={`${name()}, ${station()} mm from the mouth, ${angle()}°`}
                          aria-invalid={bad() || doubt() ? 'true' : undefined}
                          aria-describedby={bad() || doubt() ? `${id}-notes` : undefined}
                          value={typed()?.text ?? shown(stored())}
                          onInput={(event) => enter(i, j, event.currentTarget.value)}
                          onBlur={() => {
                            if (!bad()) say(i, j, null);
                          }}
                          onPaste={(event) => paste(event, i, j)}
                          onKeyDown={key}
                        />
                      </td>
                    );
                  }}
                </Index>
              </tr>
            )}
          </Index>
        </tbody>
      </table>
      <div class="gap-notes" id={`${id}-notes`} role="status">
        <Show when={pasted()}>
          {(message) => (
            <p>
              <Mark state="fails" /> {message()}
            </p>
          )}
        </Show>
        <For each={Object.values(typing()).flatMap(({ message }) => message ?? [])}>
          {(message) => (
            <p>
              <Mark state="fails" /> {message}
            </p>
          )}
        </For>
        <For each={props.mistakes}>
          {(mistake) => (
            <p>
              <Mark state={mistake.level === 'wrong' ? 'fails' : 'low'} /> {mistake.message}
              <Show when={!props.fixed && mistake.level === 'doubt' && mistake.at}>
                {(at) => (
                  <>
                    <Show when={mistake.meant !== null}>
                      <button
                        type="button"
                        class="plain"
                        onClick={() => props.onRead(at()[0], at()[1], mistake.meant)}
                      >
                        Take {mistake.meant}
                      </button>
                    </Show>
                    <button
                      type="button"
                      class="plain"
                      onClick={() => props.onConfirm(at()[0], at()[1])}
                    >
                      It is right
                    </button>
                  </>
                )}
              </Show>
            </p>
          )}
        </For>
      </div>
    </section>
  );
}
