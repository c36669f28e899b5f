/** What the charts of coupons draw. */
import { describe, expect, it } from 'vitest';
import { statisticsOf } from '../../src/main/handlers/coupons/statistics.ts';
import { chanceAxis } from '../../src/model/coupons/plotting.ts';
import {
  agreementAlt,
  agreementPlot,
  agreementTable,
  probabilityPlot,
  probabilityTable,
  type SetLine,
} from '../../src/renderer/charts/coupon-data.ts';
import type { Family } from '../../src/shared/reports-coupons.ts';
import { EIGHTEEN } from '../support/coupons-published.ts';

const line = (change: Partial<SetLine> = {}): SetLine => ({
  set: 'Lap shear',
  temperature: 23,
  coupon: '1',
  batch: 'A',
  load: 4000,
  gap: 0.2,
  overlap: 12.7,
  strength: 12,
  predicted: 4000,
  ratio: 1,
  bondRatio: 1,
  adhesion: null,
  apart: null,
  why: '',
  ...change,
});

describe('measured over predicted', () => {
  const lines = [
    line({ ratio: 0.9, gap: 0.1 }),
    line({ ratio: 1.3, gap: 0.4, coupon: '2', apart: 'surface' }),
    line({ ratio: null, predicted: null, coupon: '3' }),
  ];

  it('draws each predicted coupon, what is kept apart as such', () => {
    const plot = agreementPlot(lines, 'gap', null)!;
    expect(plot.dots.map(({ x, y, apart }) => [x, y, apart])).toEqual([
      [0.1, 0.9, false],
      [0.4, 1.3, true],
    ]);
    expect(plot.dots[1]!.text).toEqual([
      'coupon 2, batch A, 0.4 mm',
      '1.30 of the prediction',
      'came off a surface',
    ]);
    expect(agreementAlt(lines, 'gap')).toBe(
      'Measured over predicted load of 2 coupons against gap: 0.90 to 1.30, at 0.10 to 0.40 mm. 1 of them is kept apart and drawn as a cross.',
    );
    expect(agreementTable(lines).rows.map((row) => row.slice(-2))).toEqual([
      ['0.900', 'yes'],
      ['1.300', 'came off a surface'],
      ['–', 'yes'],
    ]);
  });

  it('has room for every coupon, for what is predicted, and for the interval', () => {
    const far = [line({ ratio: 2.1 }), line({ ratio: 1.9 })];
    const found = { n: 2, mean: 2, variation: 0.07, low: 0.7, high: 3.3 };
    for (const against of ['gap', 'overlap', 'temperature'] as const) {
      const { x, y, dots, lines: drawn, band } = agreementPlot(far, against, found)!;
      expect(y.low).toBeLessThan(0.7);
      expect(y.high).toBeGreaterThan(3.3);
      expect(dots.every((dot) => dot.x > x.low && dot.x < x.high)).toBe(true);
      expect(drawn.map(({ from }) => from.y)).toEqual([1, 2]);
      expect(band).toEqual({ low: 0.7, high: 3.3 });
    }
  });

  it('is not drawn of nothing', () => {
    expect(agreementPlot([], 'gap', null)).toBeNull();
    expect(agreementPlot([lines[2]!], 'gap', null)).toBeNull();
  });
});

describe('the probability plot', () => {
  const plot = statisticsOf(EIGHTEEN.map((strength) => line({ strength })))!.plot;

  it('has rungs where the chances are, on either axis', () => {
    for (const family of ['normal', 'lognormal', 'weibull'] as const satisfies Family[]) {
      const { y } = probabilityPlot({ ...plot, family })!;
      expect(y.ticks.length).toBeGreaterThan(5);
      for (const { at, text } of y.ticks) {
        expect(at).toBeCloseTo(chanceAxis(family, Number.parseFloat(text) / 100), 4);
      }
    }
  });

  it('tells the values of a logarithmic axis in MPa', () => {
    const drawn = probabilityPlot(plot)!;
    expect(plot.family).toBe('weibull');
    expect(drawn.x.ticks.map(({ text }) => text)).toEqual(['130', '135', '140', '145', '150']);
    for (const { at, text } of drawn.x.ticks) expect(Math.exp(at)).toBeCloseTo(Number(text), 9);
    expect(drawn.dots).toHaveLength(18);
    expect(drawn.lines).toHaveLength(1);
    const { x, y } = drawn;
    expect(
      [...drawn.dots, drawn.lines[0]!.from, drawn.lines[0]!.to].every(
        (one) => one.x > x.low && one.x < x.high && one.y > y.low && one.y < y.high,
      ),
    ).toBe(true);
    expect(probabilityTable(plot).rows[0]!.slice(0, 2)).toEqual(['129', '3.8']);
  });

  it('is drawn of one result, without a line, and not of none', () => {
    const one = probabilityPlot(statisticsOf([line()])!.plot)!;
    expect([one.dots.length, one.lines.length]).toEqual([1, 0]);
    expect(one.x.low).toBeLessThan(one.x.high);
    expect(probabilityPlot({ family: 'normal', points: [], line: null })).toBeNull();
  });
});
