/** Results that come from outside: what is new, what is there already, what would be written over. */
import { type CouponColumn, couponKey } from '../../shared/coupon-text.ts';
import type { CouponResult } from '../../shared/project-coupons.ts';
import type { GridRow } from '../state/coupon-rows.ts';

export interface Arrived {
  readonly fresh: readonly CouponResult[];
  /** The same in every figure: nothing to do. */
  readonly same: number;
  /** Of the same number and batch, but otherwise. */
  readonly clashes: readonly CouponResult[];
}

const text = (result: CouponResult): string =>
  JSON.stringify(
    Object.entries(result)
      .map(([key, value]) => [key, JSON.stringify(value)])
      .sort(([a], [b]) => (a! < b! ? -1 : 1)),
  );

export function sortArrived(
  here: readonly CouponResult[],
  arrived: readonly CouponResult[],
): Arrived {
  const known = new Map(here.map((one) => [couponKey(one), text(one)]));
  const fresh = arrived.filter((one) => !known.has(couponKey(one)));
  const others = arrived.filter((one) => known.has(couponKey(one)));
  const clashes = others.filter((one) => known.get(couponKey(one)) !== text(one));
  return { fresh, same: others.length - clashes.length, clashes };
}

/** How many cells that hold something a block would change. */
export function writtenOver(
  rows: readonly GridRow[],
  block: readonly (readonly string[])[],
  row: number,
  columns: readonly CouponColumn[],
  column: number,
): number {
  return block.reduce(
    (sum, cells, i) =>
      sum +
      cells.filter((cell, j) => {
        const name = columns[column + j];
        const old = name && rows[row + i]?.text[name];
        return old !== undefined && old !== '' && old !== cell;
      }).length,
    0,
  );
}
