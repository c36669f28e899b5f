/** The views of the Coupons page, in the order of their row. */
import type { CouponView } from '../state/coupons.ts';

export const couponViews: readonly { readonly id: CouponView; readonly title: string }[] = [
  { id: 'plan', title: 'Plan' },
  { id: 'results', title: 'Results' },
  { id: 'statistics', title: 'Statistics' },
  { id: 'agreement', title: 'Measured over predicted' },
  { id: 'lives', title: 'Lives' },
  { id: 'ledger', title: 'Ledger' },
];

const setless: ReadonlySet<CouponView> = new Set(['plan', 'lives', 'ledger']);

/** Has something to say without a set. */
export const isSetless = (view: CouponView): boolean => setless.has(view);
