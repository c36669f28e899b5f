/** The results of a set, typed or pasted: a row for each coupon, one more for the next. */
import { createMemo, createUniqueId, For, Index, type JSX, Show } from 'solid-js';
import { isEmptyRow, readCouponBlock } from '../../shared/coupon-text.ts';
import type { CouponSetReport } from '../../shared/reports-coupons.ts';
import { figure } from '../../shared/words.ts';
import { Mark } from '../parts/Mark.tsx';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import type { CouponRows, GridRow } from '../state/coupon-rows.ts';
import type { ResultColumn } from './result-columns.ts';

export interface ResultGridProps {
  readonly rows: CouponRows;
  readonly columns: readonly ResultColumn[];
  readonly report: CouponSetReport | null;
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

export function ResultGrid(props: ResultGridProps): JSX.Element {
  const id = createUniqueId();
  /** The report's line of each row; none where the row has moved on since. */
  const lines = createMemo(() => {
    let place = 0;
    return props.rows.rows().map(({ stored }) => {
      if (!stored) return null;
      const line = props.report?.lines[place];
      place += 1;
      return line?.coupon === stored.coupon && line.load === stored.load ? line : null;
    });
  });
  const name = (row: GridRow, i: number): string =>
    row.text.coupon.trim() === '' ? `row ${i + 1}` : `coupon ${row.text.coupon.trim()}`;
  const paste = (event: ClipboardEvent, row: number, column: number): void => {
    const text = event.clipboardData?.getData('text') ?? '';
    const block = readCouponBlock(text);
    if (block.length === 1 && block[0]!.length === 1) return;
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
            <th
              scope="col"
              class="number"
              title="Load over bonded area; compares coupons of a kind"
            >
              Over area <span class="unit">MPa</span>
            </th>
            <th scope="col" class="number" title="Measured load over predicted load">
              Of predicted
            </th>
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
              return (
                <tr classList={{ 'is-apart': line()?.apart != null }}>
                  <For each={props.columns}>
                    {({ column, name: what, words }, j) => {
                      const bad = (): boolean => errors().some((one) => one.column === column);
                      return (
                        <td>
                          <input
                            class={words ? 'words' : 'figure'}
                            type="text"
                            inputmode={words ? undefined : 'decimal'}
                            autocomplete="off"
                            spellcheck={false}
                            aria-label={`${name(row(), i)}: ${what}`}
                            aria-invalid={bad() ? 'true' : undefined}
                            aria-describedby={bad() ? `${id}-notes` : undefined}
                            placeholder={column === 'apart' ? (line()?.why ?? '') : ''}
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
                  <td class="number">{line() ? figure(line()!.strength) : ''}</td>
                  <td class="number">{line()?.ratio == null ? '' : line()!.ratio!.toFixed(2)}</td>
                  <td class="end">
                    <Show when={row().stored || !isEmptyRow(row().text)}>
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
