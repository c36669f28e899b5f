/** One figure of one column, with its state, its second line, and a word where it is the best. */
import { type JSX, Show } from 'solid-js';
import { Mark } from '../parts/Mark.tsx';
import { None } from './InputCellView.tsx';
import type { Cell } from './result-row.ts';

function Bar(props: { readonly value: number; readonly most: number }): JSX.Element {
  const at = (value: number): number => Math.min(100, (100 * value) / Math.max(props.most, 1));
  return (
    <svg class="bar-of" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
      <rect y="1" width={at(props.value)} height="4" />
      <path d={`M${at(1)} 0 V6`} />
    </svg>
  );
}

export function ResultCell(props: {
  readonly cell: Cell | null;
  readonly waiting: boolean;
  readonly best: boolean;
  readonly most: number | null;
}): JSX.Element {
  return (
    <Show when={props.cell} fallback={props.waiting ? '…' : <None />}>
      {(cell) => (
        <div class={cell().state ? `is-${cell().state}` : ''}>
          <Show when={cell().state}>{(state) => <Mark state={state()} />}</Show>
          <span class="value">{cell().text}</span>
          <Show when={cell().word}>
            <span class="state">{cell().word}</span>
          </Show>
          <Show when={props.best}>
            <span class="best">best</span>
          </Show>
          <Show when={cell().more}>
            <span class="second-line">{cell().more}</span>
          </Show>
          <Show when={props.most !== null}>
            <span class="second-line">
              <Bar value={cell().value} most={props.most ?? 1} />
            </span>
          </Show>
        </div>
      )}
    </Show>
  );
}
