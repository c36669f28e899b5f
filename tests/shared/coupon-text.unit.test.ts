/** Coupon results as text: by row, by block, by file. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOneCell, readCouponBlock } from '../../src/shared/coupon-paste.ts';
import { couponSheet } from '../../src/shared/coupon-text.ts';
import { readCsv } from '../../src/shared/csv.ts';
import type { CouponResult } from '../../src/shared/project-coupons.ts';
import { EIGHTEEN } from '../support/coupons-published.ts';

const {
  columnOf: couponColumn,
  emptyRow,
  hasHead,
  readCsv: readCouponsCsv,
  readPaste,
  readRow: readCouponRow,
  rowOf: couponRow,
  writeCsv: writeCouponsCsv,
} = couponSheet;

const row = (change: Partial<typeof emptyRow>) =>
  readCouponRow({ ...emptyRow, coupon: '1', load_n: '4000', ...change });
const wrong = (change: Partial<typeof emptyRow>): string[] => {
  const read = row(change);
  return read.ok ? [] : read.errors.map(({ column, message }) => `${column}: ${message}`);
};
const errors = (text: string): string[] => {
  const read = readCouponsCsv(text);
  return read.ok ? [] : read.errors.map(({ line, message }) => `${line}: ${message}`);
};

describe('a row', () => {
  it('is a result, with what was measured and nothing else', () => {
    expect(row({})).toEqual({ ok: true, result: { coupon: '1', batch: '', load: 4000 } });
    expect(
      row({
        batch: ' B ',
        gap_mm: '0.21',
        overlap_mm: '12.4',
        width_mm: '25.3',
        cohesive_pct: '70',
        thin_layer_pct: '30',
        apart: 'slipped in the grip',
        note: 'loud',
      }),
    ).toEqual({
      ok: true,
      result: {
        coupon: '1',
        batch: 'B',
        load: 4000,
        gap: 0.21,
        overlap: 12.4,
        width: 25.3,
        modes: { cohesive: 70, thinLayer: 30 },
        apart: 'slipped in the grip',
        note: 'loud',
      },
    });
  });

  it('is refused by the cell', () => {
    expect(wrong({ load_n: '' })).toEqual(['load_n: A number is needed here.']);
    expect(wrong({ load_n: '4,000' })).toEqual([
      'load_n: “4,000” has two readings: write 4.000 or 4000.',
    ]);
    expect(wrong({ load_n: '-3' })).toEqual(['load_n: It lies between 0.01 and 100000000.']);
    expect(wrong({ coupon: ' ', gap_mm: '9' })).toEqual([
      'coupon: It has no number.',
      'gap_mm: It lies between 0.01 and 5.',
    ]);
    expect(wrong({ batch: 'x'.repeat(41) })).toEqual(['batch: At most 40 characters.']);
    expect(wrong({ cohesive_pct: '101' })).toEqual(['cohesive_pct: It lies between 0 and 100.']);
  });

  it('takes failure modes that make 100 alone', () => {
    expect(wrong({ thin_layer_pct: '60', adhesion_pct: '30' })).toEqual([
      'thin_layer_pct: The failure modes make 90 %, not 100 %.',
    ]);
    expect(wrong({ cohesive_pct: '33.3', adhesion_pct: '33.3', adherend_pct: '33.3' })).toEqual([]);
    expect(wrong({ cohesive_pct: '100' })).toEqual([]);
  });
});

describe('a file', () => {
  const text = (max: number) =>
    fc.string({ maxLength: max, unit: 'grapheme' }).map((one) => one.trim());
  const result: fc.Arbitrary<CouponResult> = fc
    .record({
      batch: fc.constantFrom('', 'A', '-2', '=1+1', 'a, b', "'quoted'"),
      load: fc.double({ min: 0.01, max: 1e8, noNaN: true }),
      gap: fc.option(fc.double({ min: 0.01, max: 5, noNaN: true }), { nil: undefined }),
      cohesive: fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined }),
      apart: fc.option(
        text(30).filter((one) => one !== '' && !one.startsWith("'") && !/[\r\n]/.test(one)),
        { nil: undefined },
      ),
    })
    .map(({ batch, load, gap, cohesive, apart }) => ({
      coupon: '',
      batch,
      load,
      ...(gap === undefined ? {} : { gap }),
      ...(cohesive === undefined ? {} : { modes: { cohesive, adhesion: 100 - cohesive } }),
      ...(apart === undefined ? {} : { apart }),
    }));

  it('reads back as it was written', () => {
    fc.assert(
      fc.property(fc.array(result, { minLength: 1, maxLength: 20 }), (list) => {
        const results = list.map((one, i) => ({ ...one, coupon: `${i % 2 ? '#' : ''}${i + 1}` }));
        expect(readCouponsCsv(writeCouponsCsv(results))).toEqual({ ok: true, results });
      }),
      { numRuns: 200 },
    );
  });

  it('holds no formula for a spreadsheet', () => {
    const formula = '=HYPERLINK("x")';
    const results = [{ coupon: formula, batch: '@b', load: 4000, note: '+1' }];
    const csv = readCsv(writeCouponsCsv(results));
    const [, line] = csv.ok ? csv.rows : [];
    expect(line?.cells).toContain(`'${formula}`);
    expect(line?.cells).toContain("'@b");
    expect(line?.cells.filter((cell) => /^[=+@-]/.test(cell))).toEqual([]);
    expect(readCouponsCsv(writeCouponsCsv(results))).toEqual({ ok: true, results });
  });

  it('takes columns in any order, by any of the usual marks', () => {
    const published = EIGHTEEN.map((value, i) => `${value};${i + 1};${(i % 3) + 1}`).join('\n');
    const read = readCouponsCsv(`Load (N);Coupon;Batch\n# eighteen results\n\n${published}\n`);
    expect(read.ok && read.results.map(({ load }) => load)).toEqual(EIGHTEEN);
    expect(read.ok && read.results[4]).toEqual({ coupon: '5', batch: '2', load: 141.8203 });
  });

  it('says what is wrong with which line', () => {
    expect(errors('')).toEqual(['1: the file is empty']);
    expect(errors('coupon,load_n\n')).toEqual(['1: there is no result in it']);
    expect(errors('coupon,batch\n1,A\n')).toEqual(['1: the column load_n is missing']);
    expect(errors('coupon,load_n,load_n\n')).toEqual(['1: the column load_n stands twice']);
    expect(errors('coupon,force\n')[0]).toMatch(/^1: there is no column “force”: the columns are/);
    expect(errors('coupon,load_n\n1,4000\n"2,5\n')).toEqual(['3: a quotation mark is not closed']);
    expect(
      errors(
        'coupon,batch,load_n,adhesion_pct,adherend_pct\n1,A,4000,,\n2,A,x,,\n3,A,4000,20,30\n1,A,4100,,\n1,B,4200,,\n4,A,4,5,,,\n5,A,4,5,95,7\n',
      ),
    ).toEqual([
      '3: load_n: “x” is not a number: write it like 0.25 or 2.5e-1.',
      '4: adhesion_pct: The failure modes make 50 %, not 100 %.',
      '5: coupon 1 of batch A stands in line 2 already',
      '7: adhesion_pct: The failure modes make 5 %, not 100 %.',
      '8: 6 cells under 5 columns: is a decimal comma among them?',
    ]);
  });

  it('ends after twenty errors and a thousand results', () => {
    const lines = (n: number, load: string) =>
      Array.from({ length: n }, (_, i) => `${i},${load}`).join('\n');
    expect(errors(`coupon,load_n\n${lines(50, 'x')}`)).toHaveLength(20);
    expect(errors(`coupon,load_n\n${lines(1001, '5')}`)).toEqual([
      '1: 1001 results; the most of a set are 1000',
    ]);
  });

  it('can be had empty, to be filled in', () => {
    const template = couponSheet.template({ batches: 2, each: 3 });
    expect(template.split('\r\n')[4]).toBe('4,2,,,,,,,,,,');
    expect(errors(template)).toEqual(['1: there is no result in it']);
    const filled = template.replace('2,1,,', '2,1,4000,');
    expect(readCouponsCsv(filled)).toEqual({
      ok: true,
      results: [{ coupon: '2', batch: '1', load: 4000 }],
    });
  });
});

describe('a pasted block', () => {
  it('is rows of cells, with or without a head', () => {
    expect(readCouponBlock('1\tA\t4000\r\n2\tA\t\r\n')).toEqual([
      ['1', 'A', '4000'],
      ['2', 'A', ''],
    ]);
    expect(readCouponBlock('4000\n4100')).toEqual([['4000'], ['4100']]);
    expect(hasHead(readCouponBlock('Coupon\tLoad, N\n1\t4000'))).toBe(true);
    expect(hasHead(readCouponBlock('1\t4000'))).toBe(false);
    expect(couponColumn('Adhesion %')).toBe('adhesion_pct');
  });

  it('parted by commas under our own head is read as the file is', () => {
    const text = 'coupon,batch,load_n,cohesive_pct\n1,A,12500,100\n';
    expect(readPaste(text, 'coupon')).toEqual({ kind: 'file' });
    expect(readCouponsCsv(text)).toMatchObject({ ok: true, results: [{ load: 12500 }] });
    expect(isOneCell(text, 'coupon')).toBe(false);
  });

  it('parted by commas alone is cells where it has no other reading', () => {
    expect(readPaste('1,A,12500.5\n2,A,13000', 'coupon')).toEqual({
      kind: 'cells',
      block: [
        ['1', 'A', '12500.5'],
        ['2', 'A', '13000'],
      ],
    });
    expect(readPaste('1, 12500\n2, 13000', 'batch')).toMatchObject({ kind: 'cells' });
    const refused = (text: string) => {
      const read = readPaste(text, 'load_n');
      return read.kind === 'refused' ? `${read.line}: ${read.message.slice(0, 30)}` : read.kind;
    };
    expect(refused('1,A,12500\n2,A,13000,100')).toBe('2: a comma in it may part two cel');
    expect(refused('1,12500\n2,13000')).toBe('1: a comma in it may part two cel');
    expect(refused('1,A,12500,100')).toBe('1: a comma in it may part two cel');
    expect(refused('1,A,12500\n2,A')).toBe('2: it has another number of cells');
    expect(refused('7\nA,b')).toBe('1: it has no second cell by comma');
    // A column of decimals, as a spreadsheet with decimal commas gives it: each cell says what it takes.
    expect(readPaste('12500,5\n12750\n12600,25', 'load_n')).toEqual({
      kind: 'cells',
      block: [['12500,5'], ['12750'], ['12600,25']],
    });
    expect(refused('1,5\n2,5\n3,5')).toBe('1: a comma in it may part two cel');
    expect(readPaste('loud, late\nquiet', 'note')).toMatchObject({ kind: 'cells' });
  });

  it('of one cell is left to the cell', () => {
    expect(['12500', '12,5', 'a, b'].map((text) => isOneCell(text, 'coupon'))).toEqual([
      true,
      true,
      true,
    ]);
    expect(isOneCell('1,A,12500', 'coupon')).toBe(false);
    expect(isOneCell('one, two, three', 'note')).toBe(true);
    expect(isOneCell('1\t2', 'note')).toBe(false);
  });

  it('under names that are not known is read as a file is, and refused there', () => {
    for (const text of ['Nr\tkN\n1\t12.5', 'load_kN\n12.5\n13', 'strength_mpa\n12,5\n13,1']) {
      expect(readPaste(text, 'load_n'), text).toEqual({ kind: 'file' });
    }
    expect(errors('Nr\tkN\n1\t12.5\n')).toEqual([
      '1: there is no column “Nr” or “kN”: the columns are coupon, batch, load_n, gap_mm, overlap_mm, width_mm, cohesive_pct, thin_layer_pct, adhesion_pct, adherend_pct, apart, note; the load is load_n, in N',
    ]);
    expect(errors('strength_mpa\n12,5\n')[0]).toContain('“strength_mpa”');
    expect(errors('load_n\n12500\n')).toEqual(['1: the column coupon is missing']);
    // Words above numbers of other columns are no head.
    expect(hasHead(readCouponBlock('L1\tA\t\nL2\tA\t4000'))).toBe(false);
  });

  it('and a result are the same row', () => {
    const result: CouponResult = { coupon: '7', batch: 'C', load: 123.4, modes: { adhesion: 100 } };
    expect(readCouponRow(couponRow(result))).toEqual({ ok: true, result });
  });
});
