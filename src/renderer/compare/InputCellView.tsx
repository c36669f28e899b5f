/** One input of one column: a variant's can be changed in its place, a joint's is read. */
import { createMemo, type JSX, Match, Show, Switch, untrack } from 'solid-js';
import { convertLap, type Lap, lapOf, lapsFor } from '../../shared/convert-lap.ts';
import type { Joint } from '../../shared/project.ts';
import { lapWords } from '../../shared/words.ts';
import { Choice } from '../size/Choice.tsx';
import type { FieldSource } from '../size/entry.ts';
import type { NumberInput } from '../size/form-model.ts';
import { NumberField } from '../size/NumberField.tsx';
import { type Path, valueAt } from '../state/project.ts';
import type { InputRow } from './input-rows.ts';

export interface InputCellViewProps extends FieldSource {
  readonly row: InputRow;
  /** Which column. */
  readonly at: number;
  readonly letter: string;
  readonly joint: Joint;
  /** Where a variant stands in the document; null where the joint is only read. */
  readonly place: Path | null;
}

/** The only words that a joint chooses from lists of the project. */
const listOf = (key: string) =>
  key === 'adhesive' ? 'adhesives' : key === 'adherend' ? 'adherends' : null;

export function InputCellView(props: InputCellViewProps): JSX.Element {
  const cell = () => props.row.cells[props.at] ?? null;
  const name = (): string => `${props.row.label}, ${props.letter}`;
  /** As text: the field is made anew when its place moves, not when its figure does. */
  const place = createMemo(() => {
    const here = cell();
    return here && props.place ? JSON.stringify([...props.place, ...here.path]) : '';
  });
  const list = () => listOf(String(cell()?.path.at(-1) ?? ''));
  const choices = () => {
    const key = list();
    return key === null ? [] : (props.project.document()?.[key] ?? []);
  };
  const changeLap = (lap: string): void => {
    const joint = JSON.parse(JSON.stringify(props.joint)) as Joint;
    const known = lapsFor(joint).find((one): one is Lap => one === lap);
    if (known && props.place) props.project.edit(props.place, convertLap(joint, known));
  };

  return (
    <Show when={cell()} fallback={<None />}>
      {(here) => (
        <Show when={place()} keyed fallback={here().text}>
          {(text) => {
            const path = JSON.parse(text) as Path;
            // Made once: a field that is told anew what it is of forgets what is being typed into it.
            const input = untrack((): NumberInput | null => {
              const { quantity } = props.row;
              return quantity === null ? null : { path, quantity, name: name() };
            });
            return (
              <Switch fallback={here().text}>
                <Match when={input}>
                  {(number) => (
                    <div class="compare-field">
                      <NumberField project={props.project} issues={props.issues} input={number()} />
                    </div>
                  )}
                </Match>
                <Match when={props.row.field === 'lap'}>
                  <Choice
                    name={name()}
                    help="lap"
                    options={lapsFor(props.joint).map((lap) => ({
                      value: lap,
                      text: lapWords[lap],
                    }))}
                    value={lapOf(props.joint)}
                    onChoose={changeLap}
                  />
                </Match>
                <Match when={list()}>
                  <Choice
                    name={name()}
                    help={list() === 'adhesives' ? 'adhesive' : 'adherend'}
                    options={choices().map((one) => ({ value: one.id, text: one.name }))}
                    value={String(valueAt(props.project.document(), path))}
                    onChoose={(id) => props.project.edit(path, id)}
                  />
                </Match>
              </Switch>
            );
          }}
        </Show>
      )}
    </Show>
  );
}

/** A column that has no such figure. */
export function None(): JSX.Element {
  return (
    <span class="none">
      <span aria-hidden="true">–</span>
      <span class="hidden">none</span>
    </span>
  );
}
