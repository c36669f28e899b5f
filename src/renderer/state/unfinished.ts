/** Rows of a grid that are in no project file: not complete, or not saved; told, and put back into a grid. */

import { couponKey, type SheetRow } from '../../shared/coupon-sheet.ts';
import { type CouponColumn, couponSheet } from '../../shared/coupon-text.ts';
import type { KeptRow } from '../../shared/kept-rows.ts';
import type { CouponResult } from '../../shared/project-coupons.ts';
import type { GridRow as Row } from './grid-rows.ts';

type CouponRow = SheetRow<CouponColumn>;
export type CouponGridRow = Row<CouponColumn, CouponResult>;

export interface Unfinished {
  /** Rows that have never been a result: they do not count. */
  readonly rows: number;
  /** Rows with a change that is no result: what was there before counts. */
  readonly changes: number;
}

interface Known {
  readonly whole: boolean;
  /** Of its result; null where it never was one. */
  readonly result: string | null;
}

// Rows are never changed, only put in one another's place: what was read of one stays so.
const read = new WeakMap<CouponGridRow, Known>();
function known(row: CouponGridRow): Known {
  const before = read.get(row);
  if (before) return before;
  const { text, stored } = row;
  const now = { whole: couponSheet.readRow(text).ok, result: stored && resultText(stored) };
  read.set(row, now);
  return now;
}
const isWhole = (row: CouponGridRow): boolean => known(row).whole;

const isBlank = ({ text, stored }: CouponGridRow): boolean =>
  stored === null && couponSheet.isEmptyRow(text);

export function unfinishedOf(rows: readonly CouponGridRow[]): Unfinished {
  const open = rows.filter((row) => !isBlank(row) && !isWhole(row));
  const never = open.filter(({ stored }) => stored === null).length;
  return { rows: never, changes: open.length - never };
}

/** A result as a text that is the same for the same figures, in whatever order they stand. */
export const resultText = (result: CouponResult): string =>
  JSON.stringify(couponSheet.rowOf(result));

/** @param saved results of the set as the file has them, by `resultText` */
export const toKeep = (
  rows: readonly CouponGridRow[],
  saved: ReadonlySet<string>,
): readonly KeptRow[] =>
  rows
    .filter((row) => !isBlank(row) && (!isWhole(row) || !saved.has(known(row).result ?? '')))
    .map(({ text, stored }) => ({
      text: { ...text },
      good: stored ? { ...couponSheet.rowOf(stored) } : null,
    }));

/** Text out of a file, in the columns of the grid. */
const rowText = (cells: Readonly<Record<string, string>>): CouponRow => ({
  ...couponSheet.emptyRow,
  ...Object.fromEntries(couponSheet.columns.map((column) => [column, cells[column] ?? ''])),
});

const resultOf = (cells: KeptRow['good']): CouponResult | null => {
  const found = cells && couponSheet.readRow(rowText(cells));
  return found?.ok ? found.result : null;
};

/** A kept row as the grid has it. */
function gridRow({ text: cells, good }: KeptRow): CouponGridRow {
  const text = rowText(cells);
  const found = couponSheet.readRow(text);
  return { text, stored: found.ok ? found.result : resultOf(good) };
}

/** Those that are not here: of the whole ones no equal result, of the others no row of equal text. */
export function notHere(
  kept: readonly KeptRow[],
  here: readonly CouponGridRow[],
): readonly KeptRow[] {
  const results = new Set(here.flatMap((row) => known(row).result ?? []));
  const texts = new Set(here.map(({ text }) => JSON.stringify(rowText({ ...text }))));
  return kept.filter((one) => {
    const row = gridRow(one);
    if (isBlank(row)) return false;
    return isWhole(row)
      ? !results.has(resultText(row.stored!))
      : !texts.has(JSON.stringify(row.text));
  });
}

/** Where a result of the number and batch of this row stands; −1 where nowhere. */
const placeOf = ({ stored: of }: CouponGridRow, here: readonly CouponGridRow[]): number =>
  of === null
    ? -1
    : here.findIndex(({ stored }) => stored !== null && couponKey(stored) === couponKey(of));

/** Kept rows into a grid: in the place of the results that they are changes of, else behind the others. */
export function withKept(
  here: readonly CouponGridRow[],
  kept: readonly KeptRow[],
): readonly CouponGridRow[] {
  const old = here.filter((row) => !isBlank(row));
  const rows = [...old];
  const taken = new Set<number>();
  for (const one of kept) {
    const row = gridRow(one);
    const place = placeOf(row, old);
    const before = old[place];
    // Two of the same number were typed: neither goes for the other.
    if (!before || taken.has(place)) rows.push(row);
    // A change that is not complete changes no result: the one in the file counts on.
    else rows[place] = isWhole(row) ? row : { text: row.text, stored: before.stored };
    taken.add(place);
  }
  return rows;
}

export interface KeptCount {
  /** Results that are not here. */
  readonly fresh: number;
  /** Results that are here with other figures: they would be written over. */
  readonly other: number;
  /** Rows, and changes of results, that are not complete. */
  readonly open: number;
}

export function countKept(kept: readonly KeptRow[], here: readonly CouponGridRow[]): KeptCount {
  const rows = kept.map(gridRow);
  const whole = rows.filter(isWhole);
  const other = whole.filter((row) => placeOf(row, here) >= 0).length;
  return { fresh: whole.length - other, other, open: rows.length - whole.length };
}
