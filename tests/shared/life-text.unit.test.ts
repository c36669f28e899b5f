/** Lives of coupons as text: by row, by block, by file. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCouponBlock } from '../../src/shared/coupon-paste.ts';
import { lifeSheet } from '../../src/shared/life-text.ts';
import type { LifeResult } from '../../src/shared/project-coupons.ts';

const row = (change: Partial<typeof lifeSheet.emptyRow>) =>
  lifeSheet.readRow({
    ...lifeSheet.emptyRow,
    coupon: '1',
    peak_n: '4000',
    cycles: '2e5',
    ...change,
  });
const wrong = (change: Partial<typeof lifeSheet.emptyRow>): string[] => {
  const read = row(change);
  return read.ok ? [] : read.errors.map(({ column, message }) => `${column}: ${message}`);
};
const errors = (text: string): string[] => {
  const read = lifeSheet.readCsv(text);
  return read.ok ? [] : read.errors.map(({ line, message }) => `${line}: ${message}`);
};

describe('a row of lives', () => {
  it('is a result, failed where nothing else is said', () => {
    expect(row({})).toEqual({
      ok: true,
      result: { coupon: '1', batch: '', peak: 4000, cycles: 200_000, runOut: false },
    });
    expect(row({ batch: ' B ', run_out: ' Yes ', note: 'warm' })).toEqual({
      ok: true,
      result: {
        coupon: '1',
        batch: 'B',
        peak: 4000,
        cycles: 200_000,
        runOut: true,
        note: 'warm',
      },
    });
  });

  it('takes yes and no as they are usually written, and nothing else', () => {
    const runOut = (text: string) => {
      const read = row({ run_out: text });
      return read.ok ? read.result.runOut : null;
    };
    expect(['yes', 'Y', 'TRUE', '1', 'x'].map(runOut)).toEqual([true, true, true, true, true]);
    expect(['no', 'N', 'FALSE', '0', ''].map(runOut)).toEqual([false, false, false, false, false]);
    expect(wrong({ run_out: 'maybe' })).toEqual(['run_out: “maybe” is neither yes nor no.']);
  });

  it('is refused by the cell', () => {
    expect(wrong({ coupon: '', peak_n: '', cycles: '0' })).toEqual([
      'coupon: It has no number.',
      'peak_n: A number is needed here.',
      'cycles: It lies between 1 and 1000000000000.',
    ]);
    expect(wrong({ cycles: '2,000' })).toEqual([
      'cycles: “2,000” has two readings: write 2.000 or 2000.',
    ]);
    expect(wrong({ note: 'x'.repeat(4001) })).toEqual(['note: At most 4000 characters.']);
  });
});

describe('a file of lives', () => {
  const result: fc.Arbitrary<Omit<LifeResult, 'coupon'>> = fc.record({
    batch: fc.constantFrom('', 'A', '-2', '=1+1', 'a, b', "'quoted'"),
    peak: fc.double({ min: 0.01, max: 1e8, noNaN: true }),
    cycles: fc.double({ min: 1, max: 1e12, noNaN: true }),
    runOut: fc.boolean(),
  });

  it('reads back as it was written', () => {
    fc.assert(
      fc.property(fc.array(result, { minLength: 1, maxLength: 20 }), (list) => {
        const results = list.map((one, i) => ({ coupon: `${i % 2 ? '#' : ''}${i + 1}`, ...one }));
        expect(lifeSheet.readCsv(lifeSheet.writeCsv(results))).toEqual({ ok: true, results });
      }),
      { numRuns: 200 },
    );
  });

  it('has its columns in their order', () => {
    const text = lifeSheet.writeCsv([
      { coupon: '1', batch: 'A', peak: 4000, cycles: 3347, runOut: false },
      { coupon: '2', batch: 'A', peak: 2000, cycles: 1e6, runOut: true, note: 'taken off' },
    ]);
    expect(text.trim().split('\r\n')).toEqual([
      'coupon,batch,peak_n,cycles,run_out,note',
      '1,A,4000,3347,no,',
      '2,A,2000,1000000,yes,taken off',
    ]);
  });

  it('says what is wrong with which line and cell', () => {
    expect(errors('coupon,peak_n,cycles\n1,4000,2e5\n')).toEqual([
      '1: the column run_out is missing',
    ]);
    expect(errors('coupon,peak_n,cycles,run_out\n1,4000,2e5,no\n2,x,2e5,perhaps\n')).toEqual([
      '3: peak_n: “x” is not a number: write it like 0.25 or 2.5e-1.',
      '3: run_out: “perhaps” is neither yes nor no.',
    ]);
    expect(errors('coupon,load_n\n1,4000\n')[0]).toMatch(/^1: there is no column “load_n”/);
    expect(errors('coupon,peak_n,cycles,run_out\n1,4000,9,no\n1,4000,8,no\n')).toEqual([
      '3: coupon 1 stands in line 2 already',
    ]);
  });

  it('can be had empty, to be filled in', () => {
    const template = lifeSheet.template({ batches: 1, each: 3 });
    expect(template.split('\r\n')[3]).toBe('3,1,,,,');
    expect(errors(template)).toEqual(['1: there is no result in it']);
    const filled = template.replace('2,1,,,', '2,1,4000,5e4,yes');
    expect(lifeSheet.readCsv(filled)).toEqual({
      ok: true,
      results: [{ coupon: '2', batch: '1', peak: 4000, cycles: 50_000, runOut: true }],
    });
  });

  it('is known by its head where it is pasted', () => {
    expect(lifeSheet.hasHead(readCouponBlock('Coupon\tPeak (N)\tCycles\tRun-out'))).toBe(true);
    expect(lifeSheet.hasHead(readCouponBlock('Coupon\tLoad (N)'))).toBe(false);
    const byComma = 'coupon,peak_n,cycles,run_out\n1,4000,2e5,no\n';
    expect(lifeSheet.readPaste(byComma, 'coupon')).toEqual({ kind: 'file' });
    expect(lifeSheet.readPaste('Nr\tkN\tN\n1\t4\t2e5', 'coupon')).toEqual({ kind: 'file' });
    expect(errors('Nr\tkN\tN\n1\t4\t2e5')[0]).toMatch(
      /^1: there is no column “Nr” or “kN” or “N”: .*; the highest load of a cycle is peak_n, in N$/,
    );
  });
});
