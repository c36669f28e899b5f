/** What must be known beside the figures of a set. */
import { For, type JSX, Show } from 'solid-js';
import type { CouponFlag } from '../../shared/reports-coupons.ts';
import { Mark } from '../parts/Mark.tsx';

/** What speaks of the preparation or of what nobody looked at comes before remarks. */
const heavy = new Set(['surface-failed', 'surface-partly', 'modes-unseen']);
export const isHeavy = ({ code }: CouponFlag): boolean => heavy.has(code);

export function FlagList(props: { readonly flags: readonly CouponFlag[] }): JSX.Element {
  return (
    <Show when={props.flags.length > 0}>
      <ul class="coupon-flags" aria-label="Remarks">
        <For each={props.flags}>
          {({ code, message }) => (
            <li>
              <Show when={heavy.has(code)}>
                <Mark state={code === 'surface-failed' ? 'fails' : 'low'} />{' '}
              </Show>
              {message}
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
