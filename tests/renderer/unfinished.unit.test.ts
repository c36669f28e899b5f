/** Rows that are in no project file: told, kept as text, and put back where they belong. */
import { describe, expect, it } from 'vitest';
import { offerText, unfinishedText } from '../../src/renderer/coupons/open-words.ts';
import type { CouponGridRow as GridRow } from '../../src/renderer/state/unfinished.ts';
import {
  countKept,
  notHere,
  resultText,
  toKeep,
  unfinishedOf,
  withKept,
} from '../../src/renderer/state/unfinished.ts';
import type { SheetRow } from '../../src/shared/coupon-sheet.ts';
import { type CouponColumn, couponSheet } from '../../src/shared/coupon-text.ts';
import type { KeptRow } from '../../src/shared/kept-rows.ts';
import type { CouponResult } from '../../src/shared/project-coupons.ts';

const result = (coupon: string, load: number): CouponResult => ({ coupon, batch: 'A', load });
const whole = (one: CouponResult): GridRow => ({ text: couponSheet.rowOf(one), stored: one });
const typed = (
  cells: Partial<SheetRow<CouponColumn>>,
  stored: CouponResult | null = null,
): GridRow => ({
  text: { ...(stored ? couponSheet.rowOf(stored) : couponSheet.emptyRow), ...cells },
  stored,
});
const saved = (...results: CouponResult[]) => new Set(results.map(resultText));
/** As it comes from the disk. */
const through = (rows: readonly KeptRow[]): KeptRow[] => JSON.parse(JSON.stringify(rows));
const told = (rows: readonly GridRow[]) =>
  rows.map(({ text, stored }) => `${text.coupon} ${text.load_n}: ${stored?.load ?? 'none'}`);

describe('rows that are not complete', () => {
  const rows = [
    whole(result('1', 4100)),
    typed({ load_n: '' }, result('2', 4200)),
    typed({ coupon: '3', cohesive_pct: '100' }),
    typed({ coupon: '4', load_n: 'many' }),
    typed({}),
  ];

  it('are counted, an empty one is none', () => {
    expect(unfinishedOf(rows)).toEqual({ rows: 2, changes: 1 });
    expect(unfinishedOf([whole(result('1', 4100)), typed({})])).toEqual({ rows: 0, changes: 0 });
  });

  it('are told as such, and what counts in their place', () => {
    expect(unfinishedText({ rows: 2, changes: 0 })).toBe(
      '2 rows are not complete: they do not count.',
    );
    expect(unfinishedText({ rows: 1, changes: 1 })).toBe(
      '1 row is not complete: it does not count. 1 row has a change that is not complete: what was there before counts.',
    );
    expect(unfinishedText({ rows: 0, changes: 0 })).toBe('');
    expect(offerText({ fresh: 3, other: 1, open: 2 })).toBe(
      '3 results, 1 result that is here with other figures and 2 rows that are not complete',
    );
    expect(offerText({ fresh: 0, other: 0, open: 1 })).toBe('1 row that is not complete');
  });

  it('are kept, and with them what no file has yet', () => {
    const names = (list: readonly KeptRow[]) => list.map(({ text }) => text.coupon);
    expect(names(toKeep(rows, saved(result('1', 4100), result('2', 4200))))).toEqual([
      '2',
      '3',
      '4',
    ]);
    expect(names(toKeep(rows, saved(result('1', 4000), result('2', 4200))))).toEqual([
      '1',
      '2',
      '3',
      '4',
    ]);
    expect(toKeep(rows, saved())[1]!.good!.load_n).toBe('4200');
  });
});

describe('what was kept', () => {
  it('comes back as it was typed, whole or not', () => {
    const rows = [
      whole(result('1', 4100)),
      typed({ load_n: '' }, result('2', 4200)),
      typed({ coupon: '3', cohesive_pct: '100' }),
    ];
    const kept = through(toKeep(rows, saved()));
    expect(told(withKept([typed({})], kept))).toEqual(['1 4100: 4100', '2 : 4200', '3 : none']);
    expect(notHere(kept, rows)).toEqual([]);
  });

  it('is a change of the result that is there, and stands nowhere twice', () => {
    const here = [whole(result('1', 4100)), whole(result('2', 4200))];
    const kept = through(
      toKeep([typed({ load_n: '' }, result('1', 4100)), whole(result('2', 4999))], saved()),
    );
    expect(countKept(kept, here)).toEqual({ fresh: 0, other: 1, open: 1 });
    expect(told(withKept(here, kept))).toEqual(['1 : 4100', '2 4999: 4999']);
  });

  it('lets what is in the file count on while a change is not complete', () => {
    const kept = through(toKeep([typed({ load_n: '' }, result('1', 4100))], saved()));
    const [row] = withKept([whole(result('1', 5000))], kept);
    expect(row!.stored!.load).toBe(5000);
  });

  it('loses neither of two that were typed with the same number', () => {
    const kept = through(toKeep([whole(result('1', 4100)), whole(result('1', 4300))], saved()));
    expect(told(withKept([], kept))).toEqual(['1 4100: 4100', '1 4300: 4300']);
    expect(told(withKept([whole(result('1', 4000))], kept))).toEqual([
      '1 4100: 4100',
      '1 4300: 4300',
    ]);
  });

  it('is offered only where it is not here', () => {
    const kept = through(
      toKeep([whole(result('1', 4100)), whole(result('2', 4200)), typed({ coupon: '3' })], saved()),
    );
    // The same figures in other words are the same.
    const here = [typed({ load_n: '4100.0' }, result('1', 4100)), typed({ coupon: '3' })];
    expect(notHere(kept, here).map(({ text }) => text.coupon)).toEqual(['2']);
  });

  it('takes columns that the grid has, whatever stands in the file', () => {
    const kept: KeptRow[] = [{ text: { coupon: '5', odd: 'x' }, good: { odd: 'x' } }];
    const [row] = withKept([], kept);
    expect(row).toEqual({ text: { ...couponSheet.emptyRow, coupon: '5' }, stored: null });
    expect(notHere([{ text: { odd: 'x' }, good: null }], [])).toEqual([]);
  });
});
