/** The quiet remark that a value is unusual: waits for a pause, so that typing 30 by way of 3 shows none. */
import {
  type Accessor,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
  untrack,
} from 'solid-js';
import { type QuantityField, unusual } from '../../shared/field-help.ts';
import type { QuantityName } from '../../shared/quantities.ts';

/** Milliseconds. */
const PAUSE = 600;

export function createRemark(
  quantity: QuantityName,
  value: Accessor<number | undefined>,
  field: QuantityField = {},
): Accessor<string | null> {
  const now = createMemo(() => unusual(quantity, value(), field));
  const [remark, setRemark] = createSignal(untrack(now));
  let waiting: ReturnType<typeof setTimeout> | undefined;
  createEffect(
    on(
      now,
      (next) => {
        clearTimeout(waiting);
        waiting = setTimeout(() => setRemark(next), PAUSE);
      },
      { defer: true },
    ),
  );
  onCleanup(() => clearTimeout(waiting));
  return remark;
}
