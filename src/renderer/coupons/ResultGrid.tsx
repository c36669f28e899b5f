/** The results of a set, typed or pasted: a row for each coupon, one more for the next. */
import { createMemo, createUniqueId, For, Index, type JSX, Show } from 'solid-js';
import { isOneCell } from '../../shared/coupon-paste.ts';
import type { Numbered } from '../../shared/coupon-sheet.ts';
import { tellHelp } from '../help/known-fields.ts';
import { Mark } from '../parts/Mark.tsx';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import type { GridRow, GridRows } from '../state/grid-rows.ts';
import { helpOfColumn } from './column-help.ts';
import type { ResultColumn } from './result-columns.ts';

/** A column that is worked out and cannot be typed into. */
export interface Worked<Line> {
  readonly head: string;
  readonly unit: string;
  readonly help: string;
  readonly text: (line: Line) => string;
}

export interface ResultGridProps<Column extends string, Result extends Numbered, Line> {
  readonly rows: GridRows<Column, Result>;
  readonly columns: readonly ResultColumn<Column>[];
  readonly worked: readonly Worked<Line>[];
  /** What the report says of the result at this place; null where that is of another one by now. */
  readonly lineOf: (place: number, result: Result) => Line | null;
  /** True where the coupon does not count. */
  readonly isApart?: (line: Line) => boolean;
  /** Words in a cell that is empty. */
  readonly placeholder?: (column: Column, line: Line | null) => string;
  readonly onPaste: (text: string, row: number, column: number) => void;
  readonly onRemove: (row: number) => void;
}

/** The cell below or above, in the same column. */
function moveBy(from: HTMLInputElement, rows: number): void {
  const line = from.closest('tr');
  const column = [...(line?.querySelectorAll('input') ?? [])].indexOf(from);
  const lines = [...(line?.parentElement?.children ?? [])];
  const next = lines[lines.indexOf(line!) + rows]?.querySelectorAll('input')[column];
  next?.focus();
  next?.select();
}

const key = (event: KeyboardEvent & { currentTarget: HTMLInputElement }): void => {
  const down = event.key === 'Enter' && event.shiftKey ? -1 : 1;
  const steps = { Enter: down, ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (steps === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  moveBy(event.currentTarget, steps);
};

export function ResultGrid<Column extends string, Result extends Numbered, Line>(
  props: ResultGridProps<Column, Result, Line>,
): JSX.Element {
  type Row = GridRow<Column, Result>;
  const id = createUniqueId();
  /** The report's line of each row; none where the row has moved on since. */
  const lines = createMemo(() => {
    let place = 0;
    return props.rows.rows().map(({ stored }) => {
      if (!stored) return null;
      const line = props.lineOf(place, stored);
      place += 1;
      return line;
    });
  });
  const name = (row: Row, i: number): string =>
    row.text.coupon.trim() === '' ? `row ${i + 1}` : `coupon ${row.text.coupon.trim()}`;
  const paste = (event: ClipboardEvent, row: number, column: number): void => {
    const text = event.clipboardData?.getData('text') ?? '';
    if (isOneCell(text, props.columns[column]?.column)) return;
    event.preventDefault();
    props.onPaste(text, row, column);
  };
  const wrongRows = createMemo(() =>
    props.rows.rows().flatMap((row, i) => {
      const errors = props.rows.errors(row);
      return errors.length > 0 ? [{ row, i, errors }] : [];
    }),
  );
  const headOf = (column: string): string =>
    props.columns.find((one) => one.column === column)?.head.toLowerCase() ?? column;

  return (
    <>
      <table class="coupon-results">
        <caption class="hidden">Results, one coupon in a row</caption>
        <thead>
          <tr>
            <For each={props.columns}>
              {({ head, unit, help, column }) => (
                <th scope="col" class={`is-${column.replace(/_.*/, '')}`} title={help}>
                  {head} <span class="unit">{unit}</span>
                </th>
              )}
            </For>
            <For each={props.worked}>
              {({ head, unit, help }) => (
                <th scope="col" class="number" title={help}>
                  {head} <span class="unit">{unit}</span>
                </th>
              )}
            </For>
            <th scope="col">
              <span class="hidden">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          <Index each={props.rows.rows()}>
            {(row, i) => {
              const line = createMemo(() => lines()[i] ?? null);
              const errors = createMemo(() => props.rows.errors(row()));
              const isApart = (): boolean => {
                const here = line();
                return here !== null && (props.isApart?.(here) ?? false);
              };
              return (
                <tr classList={{ 'is-apart': isApart() }}>
                  <For each={props.columns}>
                    {({ column, name: what, words }, j) => {
                      const bad = (): boolean => errors().some((one) => one.column === column);
                      return (
                        <td>
                          <input
                            ref={(field) => tellHelp(field, () => helpOfColumn(column))}
                            class={words ? 'words' : 'figure'}
                            type="text"
                            inputmode={words ? undefined : 'decimal'}
                            autocomplete="off"
                            spellcheck={false}
                            aria-label={`${name(row(), i)}: ${what}`}
                            aria-invalid={bad() ? 'true' : undefined}
                            aria-describedby={bad() ? `${id}-notes` : undefined}
                            placeholder={props.placeholder?.(column, line()) ?? ''}
                            value={row().text[column]}
                            onInput={(event) =>
                              props.rows.type(i, column, event.currentTarget.value)
                            }
                            onPaste={(event) => paste(event, i, j())}
                            onKeyDown={key}
                          />
                        </td>
                      );
                    }}
                  </For>
                  <For each={props.worked}>
                    {({ text }) => <td class="number">{line() === null ? '' : text(line()!)}</td>}
                  </For>
                  <td class="end">
                    <Show when={!props.rows.isBlank(row())}>
                      <RemoveButton
                        label={`Remove ${name(row(), i)}`}
                        title="Remove this coupon"
                        onRemove={() => props.onRemove(i)}
                      />
                    </Show>
                  </td>
                </tr>
              );
            }}
          </Index>
        </tbody>
      </table>
      <div class="coupon-notes" id={`${id}-notes`} role="status">
        <For each={wrongRows()}>
          {({ row, i, errors }) => (
            <p>
              <Mark state="fails" /> {name(row, i)}:{' '}
              {errors.map(({ column, message }) => `${headOf(column)}: ${message}`).join(' ')}{' '}
              {row.stored ? 'What was there before is kept.' : 'Not counted yet.'}
            </p>
          )}
        </For>
      </div>
    </>
  );
}
