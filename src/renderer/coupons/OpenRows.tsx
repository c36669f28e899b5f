/** Above the views: rows of the set that are no results yet, and rows that an earlier window left on disk. */
import { createMemo, For, type JSX, Show } from 'solid-js';
import { momentText, secondText } from '../parts/clock.ts';
import { Mark } from '../parts/Mark.tsx';
import type { CouponsState } from '../state/coupons.ts';
import type { KeptRows } from '../state/kept-rows.ts';
import { unfinishedOf } from '../state/unfinished.ts';
import { offerText, unfinishedText } from './open-words.ts';
import type { CouponRows } from './result-columns.ts';

export interface OpenRowsProps {
  readonly state: CouponsState;
  readonly rows: CouponRows;
  readonly kept: KeptRows;
  /** True where one set is looked at. */
  readonly ofSet: boolean;
}

export function OpenRows(props: OpenRowsProps): JSX.Element {
  const words = (): string => (props.ofSet ? unfinishedText(unfinishedOf(props.rows.rows())) : '');
  /** By set: an offer that stays is not drawn, nor read out, anew with every key. */
  const ids = createMemo(() => props.kept.offered().map(({ setId }) => setId));
  const clock = (at: string): string => momentText(new Date(at));
  const nameOf = (id: string): string =>
    props.state.sets().find((set) => set.id === id)?.name ?? id;
  return (
    <>
      <For each={ids()}>
        {(id) => (
          <Show when={props.kept.offered().find(({ setId }) => setId === id)}>
            {(kept) => (
              <div class="coupon-ask" role="status">
                <p>
                  Typed of “{nameOf(id)}” until {clock(kept().at)} and not in this file:{' '}
                  {offerText(props.kept.count(kept()))}.
                </p>
                <button type="button" class="plain" onClick={() => props.kept.takeIn(kept())}>
                  Take them in
                </button>
                <button type="button" class="plain" onClick={() => props.kept.putAway(kept())}>
                  Put away
                </button>
              </div>
            )}
          </Show>
        )}
      </For>
      <Show when={props.kept.trouble()}>
        {(message) => (
          <p class="refused coupon-open" role="alert">
            {message()}
          </p>
        )}
      </Show>
      <p class="coupon-open" role="status">
        <Show when={words() !== ''}>
          <Mark state="low" /> {words()}
          <Show when={props.kept.keptAt()}>
            {(at) => (
              <span class="units"> Kept on this computer, {secondText(new Date(at()))}.</span>
            )}
          </Show>
        </Show>
      </p>
    </>
  );
}
