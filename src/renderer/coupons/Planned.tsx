/** How many batches of how many coupons a set is to have; changed as the plan changes. */
import { createEffect, createSignal, type JSX, on } from 'solid-js';
import type { CouponSet } from '../../shared/project-coupons.ts';
import { countValue, NumberBox } from './NumberBox.tsx';

export interface PlannedProps {
  readonly set: CouponSet;
  readonly onPlanned: (planned: NonNullable<CouponSet['planned']>) => void;
}

export function Planned(props: PlannedProps): JSX.Element {
  const [batches, setBatches] = createSignal('');
  const [each, setEach] = createSignal('');
  createEffect(
    on(
      () => props.set.id,
      () => {
        setBatches(String(props.set.planned?.batches ?? 1));
        setEach(String(props.set.planned?.each ?? 5));
      },
    ),
  );
  /** Stored once both are whole numbers in their range. */
  const store = (): void => {
    const planned = {
      batches: countValue(batches(), 'batchCount'),
      each: countValue(each(), 'couponCount'),
    };
    if (planned.batches === undefined || planned.each === undefined) return;
    props.onPlanned({ batches: planned.batches, each: planned.each });
  };
  return (
    <span class="coupon-line">
      Planned
      <NumberBox
        name="Batches planned"
        quantity="batchCount"
        unit="batches of"
        whole
        text={batches()}
        onText={(text) => {
          setBatches(text);
          store();
        }}
      />
      <NumberBox
        name="Coupons planned of each batch"
        quantity="couponCount"
        unit="coupons"
        whole
        text={each()}
        onText={(text) => {
          setEach(text);
          store();
        }}
      />
    </span>
  );
}
