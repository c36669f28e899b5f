/** What is said of coupons and their statistics. */
import { describe, expect, it } from 'vitest';
import { correlationOf, statisticsOf } from '../../src/main/handlers/coupons/statistics.ts';
import {
  basisSentence,
  becauseWords,
  calibrationText,
  comparedWords,
  correlationSentence,
  countedSentence,
  plotSentence,
  samplingWords,
  testWords,
} from '../../src/shared/coupon-words.ts';
import type { CouponLine } from '../../src/shared/reports-coupons.ts';
import { EIGHTEEN, ETW2 } from '../support/coupons-published.ts';

const line = (strength: number, change: Partial<CouponLine> = {}): CouponLine => ({
  coupon: '1',
  batch: 'A',
  load: 1000,
  gap: 0.2,
  overlap: 12.7,
  strength,
  predicted: 1000,
  ratio: 1,
  bondRatio: 1,
  adhesion: null,
  apart: null,
  why: '',
  ...change,
});
const ratios = (list: readonly number[]) => correlationOf(list.map((ratio) => line(1, { ratio })));
const threeBatches = ETW2.flatMap((batch, i) =>
  batch.map((value) => line(value, { batch: 'ABC'[i]! })),
);

describe('measured over predicted', () => {
  it('tells a difference only where the interval leaves 1', () => {
    expect(correlationSentence(ratios([0.9, 1, 1.1]), 'Coupons')).toBe(
      'Coupons broke at 1.00 of the predicted load on average (3 results, 95 % interval of the mean 0.75 to 1.25). The results show no difference from the model.',
    );
    expect(correlationSentence(ratios([0.79, 0.8, 0.81]), 'Coupons')).toMatch(
      /0\.78 to 0\.82\)\. The model predicts more than they held/,
    );
    expect(correlationSentence(ratios([1.19, 1.2, 1.21]), 'Coupons')).toMatch(
      /1\.18 to 1\.22\)\. They held more than the model predicts/,
    );
    expect(correlationSentence(ratios([1.2]), 'Coupons')).toMatch(/^One result, at 1\.20/);
    expect(correlationSentence(null, 'Coupons')).toMatch(/^No result counts/);
  });

  it('offers a calibration only then, and says that it is not done', () => {
    expect(calibrationText(ratios([0.9, 1, 1.1]))).toBeNull();
    expect(calibrationText(ratios([1.2]))).toBeNull();
    expect(calibrationText(ratios([0.79, 0.8, 0.81]))).toMatch(
      /about 0\.80, between 0\.78 and 0\.82.*Nothing is changed by itself: .*Statistics\.$/,
    );
  });

  it('counts what is kept apart by its cause', () => {
    const lines = [line(1), line(1, { apart: 'surface' }), line(1, { apart: 'by-hand' })];
    expect(countedSentence(lines)).toBe(
      '1 result counts; one came off a surface, one kept apart by hand.',
    );
    expect(countedSentence([line(1), line(2)])).toBe('2 results count.');
  });
});

describe('statistics', () => {
  const statistics = statisticsOf(threeBatches)!;

  it('name each step with its batch, and what was compared', () => {
    expect(statistics.decisions.map((one) => testWords(one, statistics.batches))).toEqual([
      'Results that lie apart, batch A',
      'Results that lie apart, batch B',
      'Results that lie apart, batch C',
      'Are the batches alike?',
      'Do the batches scatter alike?',
      'Between the batches',
    ]);
    const compared = statistics.decisions.map(comparedWords);
    expect(compared[0]).toMatch(/^MNR \d\.\d{3}; critical 2\.020, at 5 %$/);
    expect(compared[5]).toBe('3 batches; 5 asked');
    const count = statistics.decisions[5]!;
    expect(comparedWords({ ...count, statistic: 1 })).toBe('1 batch; 5 asked');
    const fit = { ...count, measure: 'OSL' as const, statistic: 2e-7, critical: 0.05, level: 0.05 };
    expect(comparedWords(fit)).toBe('OSL < 0.001; critical 0.050');
  });

  it('say which value was chosen, or what number would do', () => {
    expect(basisSentence(statistics)).toMatch(
      /^B value \d+\.?\d MPa, A value \d+\.?\d MPa \(variation between batches counted\), of load over area\.$/,
    );
    const few = statisticsOf([line(10)])!;
    expect(basisSentence(few)).toBe('No A or B value from 1 result: see what each method takes.');
    const because = (method: string, kind: string): string =>
      becauseWords(few.basis.find((one) => one.method === method && one.kind === kind)!);
    expect(because('normal', 'B')).toBe('takes 2 results');
    expect(because('weibull', 'A')).toBe('takes 10 results');
    expect(because('ranks', 'A')).toBe('takes 299 results');
    expect(because('anova', 'B')).toBe('takes 2 batches, one of them with 2 results');
  });

  it('say how far the classes of data are', () => {
    const said = statisticsOf(EIGHTEEN.map((value) => line(value)))!.sampling.map(samplingWords);
    expect(said.at(-1)).toBe('3 batches and 18 results: short by 2 batches');
    expect(statistics.sampling.map(samplingWords).at(-1)).toBe('3 batches and 18 results: met');
    expect(statistics.sampling.map(samplingWords).at(-2)).toBe(
      '5 batches and 30 results: short by 2 batches and 10 results',
    );
  });

  it('tell the plot in words, logarithmic axes as values', () => {
    const { plot } = statisticsOf(EIGHTEEN.map((value) => line(value)))!;
    expect(plot.family).toBe('weibull');
    expect(plotSentence(plot)).toMatch(
      /^Probability plot on Weibull axes: 18 results from 129 MPa at 3\.8 % to 152 MPa at 96\.2 %\. The fitted line goes from 12\d to 15\d MPa/,
    );
    expect(plotSentence(statisticsOf([line(5)])!.plot)).toMatch(/There is no fitted line/);
  });
});
