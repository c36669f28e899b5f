/** The readings of one surface: a row for each station, a column for each clocking. */
import { createSignal, createUniqueId, For, Index, type JSX, Show } from 'solid-js';
import { surfaceWords } from '../../shared/bench-words.ts';
import { readBlock } from '../../shared/measured-text.ts';
import type { Instrument, MeasuredSurface } from '../../shared/project.ts';
import { readQuantity } from '../../shared/quantity-entry.ts';
import type { Mistake } from '../../shared/reports-gap.ts';
import { Mark } from '../parts/Mark.tsx';
import { Choice } from '../size/Choice.tsx';
import { PlaceInput } from './PlaceInput.tsx';

export interface ReadingGridProps {
  readonly surface: MeasuredSurface;
  readonly instruments: readonly Instrument[];
  readonly mistakes: readonly Mistake[];
  /** Recorded: to be looked at only. */
  readonly fixed: boolean;
  readonly onRead: (station: number, clocking: number, value: number | null) => void;
  readonly onConfirm: (station: number, clocking: number) => void;
  readonly onInstrument: (instrument: Instrument) => void;
  /** Where it was read in truth. */
  readonly onStation: (station: number, x: number) => void;
  readonly onClocking: (clocking: number, angle: number) => void;
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
  /** What was typed and is no number, by cell. */
  const [wrong, setWrong] = createSignal<Readonly<Record<string, string>>>({});
  const cellKey = (i: number, j: number): string => `${i} ${j}`;
  const say = (i: number, j: number, message: string | null): void => {
    setWrong((all) => {
      const { [cellKey(i, j)]: _, ...others } = all;
      return message === null ? others : { ...others, [cellKey(i, j)]: message };
    });
  };
  const enter = (i: number, j: number, text: string): void => {
    const entry = text.trim() === '' ? null : readQuantity(text, 'diameter');
    say(i, j, entry && !entry.ok ? entry.message : null);
    props.onRead(i, j, entry?.ok ? entry.value : null);
  };
  const paste = (event: ClipboardEvent, i: number, j: number): void => {
    const rows = readBlock(event.clipboardData?.getData('text') ?? '');
    if (rows.length === 1 && rows[0]!.length === 1) return;
    event.preventDefault();
    rows.forEach((row, k) => {
      row.forEach(({ value, message }, l) => {
        const [station, clocking] = [i + k, j + l];
        if (station >= props.surface.stations.length) return;
        if (clocking >= props.surface.clockings.length) return;
        say(station, clocking, message);
        props.onRead(station, clocking, value);
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

  return (
    <section class="gap-surface" aria-label={`Diameters of ${name()}`}>
      <header>
        <h3>{name()}</h3>
        <Choice
          name={`Instrument for ${name()}`}
          options={props.instruments.map((one) => ({
            value: one.name,
            text: `${one.name}, ±${one.error} mm`,
          }))}
          value={props.surface.instrument.name}
          onChoose={(chosen) => {
            const instrument = props.instruments.find((one) => one.name === chosen);
            if (instrument) props.onInstrument(instrument);
          }}
        />
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
                  <PlaceInput
                    quantity="clocking"
                    name={`Clocking ${j + 1} of ${name()}, degrees`}
                    value={angle()}
                    fixed={props.fixed}
                    onPlace={(value) => props.onClocking(j, value)}
                  />
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
                  <PlaceInput
                    quantity="station"
                    name={`Station ${i + 1} of ${name()}, mm from the mouth`}
                    value={station()}
                    fixed={props.fixed}
                    onPlace={(value) => props.onStation(i, value)}
                  />
                </th>
                <Index each={props.surface.clockings}>
                  {(angle, j) => {
                    const stored = (): number | null => props.surface.diameters[i]?.[j] ?? null;
                    const bad = () => wrong()[cellKey(i, j)] !== undefined;
                    const doubt = () => mistakeAt(i, j);
                    return (
                      <td class={bad() || doubt() ? 'is-wrong' : ''}>
                        <input
                          class="reading"
                          type="text"
                          inputmode="decimal"
                          autocomplete="off"
                          spellcheck={false}
                          readonly={props.fixed}
                          aria-label={`${name()}, ${station()} mm from the mouth, ${angle()}°`}
                          aria-invalid={bad() || doubt() ? 'true' : undefined}
                          aria-describedby={bad() || doubt() ? `${id}-notes` : undefined}
                          value={stored() ?? ''}
                          onInput={(event) => enter(i, j, event.currentTarget.value)}
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
        <For each={Object.values(wrong())}>
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
