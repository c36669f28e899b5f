/** Results that come from outside: what is new, what is there already, what would be written over. */
import type { Block } from '../../shared/coupon-paste.ts';
import { couponKey, type Numbered } from '../../shared/coupon-sheet.ts';
import type { GridRow } from '../state/grid-rows.ts';

export interface Arrived<Result> {
  readonly fresh: readonly Result[];
  /** The same in every figure: nothing to do. */
  readonly same: number;
  /** Of the same number and batch, but otherwise. */
  readonly clashes: readonly Result[];
}

const text = (result: object): string =>
  JSON.stringify(
    Object.entries(result)
      .map(([key, value]) => [key, JSON.stringify(value)])
      .sort(([a], [b]) => (a! < b! ? -1 : 1)),
  );

export function sortArrived<Result extends Numbered>(
  here: readonly Result[],
  arrived: readonly Result[],
): Arrived<Result> {
  const known = new Map(here.map((one) => [couponKey(one), text(one)]));
  const fresh = arrived.filter((one) => !known.has(couponKey(one)));
  const others = arrived.filter((one) => known.has(couponKey(one)));
  const clashes = others.filter((one) => known.get(couponKey(one)) !== text(one));
  return { fresh, same: others.length - clashes.length, clashes };
}

/** How many cells that hold something a block would change. */
export function writtenOver<Column extends string, Result>(
  rows: readonly GridRow<Column, Result>[],
  block: Block,
  row: number,
  columns: readonly Column[],
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
