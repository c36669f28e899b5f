/** Everything side by side: heads, inputs, results in groups. */

import { createMemo, createSignal, For, Index, type JSX, Show } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import { saidText } from '../../shared/said.ts';
import { sentence } from '../../shared/words.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { compareTableSheet } from '../sheets/compare-table-sheet.ts';
import { TextField } from '../size/TextField.tsx';
import { type Column, columnKey, found, letterOf } from '../state/compared.ts';
import type { Comparison } from '../state/comparison.ts';
import type { Path, ProjectState } from '../state/project.ts';
import { deleteVariant } from '../state/variants.ts';
import { ColumnHead } from './ColumnHead.tsx';
import { InputCellView, None } from './InputCellView.tsx';
import { inputRows, isAlways } from './input-rows.ts';
import { ResultCell } from './ResultCell.tsx';
import { resultGroups } from './result-groups.ts';
import { bestOf, type Result, type ResultRow } from './result-row.ts';

export interface CompareTableProps {
  readonly comparison: Comparison;
  readonly state: ProjectState;
  readonly project: Project;
  readonly onJoint: (id: string) => void;
  readonly onSize: (id: string) => void;
  /** A column went, and with it the button that had the focus. */
  readonly onGone: () => void;
}

interface Shown extends Result {
  readonly of: Column;
  readonly path: Path;
}

const placeOf = ({ of, path }: Shown): Path | null => (of.kind === 'variant' ? path : null);

/** As text, so that a field is made anew when its variant moves; empty for a joint. */
const variantPlace = ({ of, path }: Shown): string =>
  of.kind === 'variant' ? JSON.stringify(path) : '';

/** Not the same in all columns, as a shape. */
function Differs(): JSX.Element {
  return (
    <>
      <svg class="differs" width="10" height="10" viewBox="0 0 10 10" aria-hidden="true">
        <path d="M1 3.4 H9 M1 6.6 H9 M6.8 0.8 L3.2 9.2" />
      </svg>
      <span class="hidden"> (differs)</span>
    </>
  );
}

export function CompareTable(props: CompareTableProps): JSX.Element {
  const [all, setAll] = createSignal(false);
  const columns = () => props.comparison.columns();
  const shown = createMemo<Shown[]>(() =>
    columns().flatMap((of) => {
      const place = found(props.project, of);
      if (!place) return [];
      const column = props.comparison.report()?.columns.find(({ id }) => id === of.id) ?? null;
      return [{ ...place, of, column }];
    }),
  );
  const inputs = createMemo(() =>
    inputRows(
      props.project,
      shown().map(({ joint }) => joint),
    ),
  );
  /** A row that was changed until it no longer differs stays under the hand. */
  const fields = createMemo<{ of: string; list: readonly string[] }>(
    (before) => {
      const of = columns().map(columnKey).join('\n');
      const kept = new Set(before.of === of ? before.list : []);
      const list = inputs()
        .filter((row) => all() || isAlways(row) || kept.has(row.field))
        .map(({ field }) => field);
      return { of: all() ? '' : of, list };
    },
    { of: '', list: [] },
  );
  const changed = ({ id }: Column): string =>
    props.comparison.making.changed(id).map(saidText).join('; ');
  const made = (): boolean => columns().some((column) => changed(column) !== '');
  const groups = createMemo(() => resultGroups(shown()));
  const most = (row: ResultRow): number | null =>
    row.bars ? Math.max(1, ...row.cells.map((cell) => cell?.value ?? 0)) : null;

  return (
    <table class="compare">
      <caption class="hidden">Columns side by side</caption>
      <thead>
        <tr>
          <td class="corner">
            <TakeOut
              what="Comparison"
              sheet={() =>
                compareTableSheet(
                  shown().map(({ joint }, i) => `${letterOf(i)} ${joint.name}`),
                  inputs(),
                  groups(),
                )
              }
            />
          </td>
          <For each={columns()}>
            {(column, i) => (
              <th scope="col">
                <Show when={shown()[i()]}>
                  {(one) => (
                    <ColumnHead
                      column={column}
                      letter={letterOf(i())}
                      joint={one().joint}
                      project={props.project}
                      result={one().column}
                      first={i() === 0}
                      onJoint={props.onJoint}
                      onSize={() => props.onSize(column.id)}
                      onRemove={() => {
                        props.comparison.remove(column);
                        props.onGone();
                      }}
                      onDelete={() => {
                        deleteVariant(props.state, column.id);
                        props.onGone();
                      }}
                    />
                  )}
                </Show>
              </th>
            )}
          </For>
        </tr>
      </thead>
      <tbody class="is-inputs">
        <tr class="group-row">
          <th scope="rowgroup" colspan={columns().length + 1}>
            Inputs{' '}
            <span class="units">
              variants are changed here, joints on the Size page: a variant has none
            </span>
            <label class="tick">
              <input
                type="checkbox"
                checked={all()}
                onChange={(event) => setAll(event.currentTarget.checked)}
              />
              all inputs
            </label>
          </th>
        </tr>
        <Show when={all()}>
          <tr>
            <th scope="row">name</th>
            <Index each={shown()}>
              {(one, i) => (
                <td class="is-words">
                  <Show when={variantPlace(one())} keyed fallback={one().joint.name}>
                    {(place) => (
                      <TextField
                        project={props.state}
                        issues={props.comparison.issues}
                        path={[...(JSON.parse(place) as Path), 'name']}
                        name={`name, ${letterOf(i)}`}
                      />
                    )}
                  </Show>
                </td>
              )}
            </Index>
          </tr>
        </Show>
        <Show when={made()}>
          <tr>
            <th scope="row">made from the joint by</th>
            <Index each={shown()}>
              {(one) => (
                <td class="is-words">
                  <Show when={changed(one().of)} fallback={<None />}>
                    {(words) => sentence(words())}
                  </Show>
                </td>
              )}
            </Index>
          </tr>
        </Show>
        <For each={fields().list}>
          {(field) => {
            const row = () => inputs().find((one) => one.field === field);
            return (
              <Show when={row()}>
                {(input) => (
                  <tr classList={{ 'is-different': input().differs }}>
                    <th scope="row">
                      {input().label}
                      <Show when={input().unit}>
                        {' '}
                        <span class="unit">{input().unit}</span>
                      </Show>
                      <Show when={input().differs}>
                        <Differs />
                      </Show>
                    </th>
                    <Index each={shown()}>
                      {(one, i) => (
                        <td classList={{ 'is-words': input().quantity === null }}>
                          <InputCellView
                            project={props.state}
                            issues={props.comparison.issues}
                            row={input()}
                            at={i}
                            letter={letterOf(i)}
                            joint={one().joint}
                            place={placeOf(one())}
                          />
                        </td>
                      )}
                    </Index>
                  </tr>
                )}
              </Show>
            );
          }}
        </For>
      </tbody>
      <Index each={groups()}>
        {(group) => (
          <tbody class="is-results">
            <tr class="group-row">
              <th scope="rowgroup" colspan={columns().length + 1}>
                {group().title} <span class="units">{group().note}</span>
              </th>
            </tr>
            <Index each={group().rows}>
              {(row) => {
                const best = createMemo(() => bestOf(row()));
                return (
                  <tr classList={{ 'is-strong': row().strong === true }}>
                    <th scope="row">
                      {row().label}
                      <Show when={row().unit}>
                        {' '}
                        <span class="unit">{row().unit}</span>
                      </Show>
                    </th>
                    <Index each={row().cells}>
                      {(cell, i) => (
                        <td>
                          <ResultCell
                            cell={cell()}
                            waiting={shown()[i]?.column === null}
                            best={best().has(i)}
                            most={most(row())}
                          />
                        </td>
                      )}
                    </Index>
                  </tr>
                );
              }}
            </Index>
          </tbody>
        )}
      </Index>
    </table>
  );
}
