/** The way from results to basis values: every branch. */
import { describe, expect, it } from 'vitest';
import { couponStatistics } from '../../../src/model/coupons/path.ts';
import { expectClose } from '../../support/close.ts';
import { asked, even, evenWeibull, tests, valueOfMethod } from '../../support/coupon-way.ts';
import { EIGHTEEN, ETW, ETW2 } from '../../support/coupons-published.ts';

describe('the way', () => {
  it('batches that are alike and fit Weibull: its values', () => {
    const all = evenWeibull(18, 140, 20);
    const found = couponStatistics([0, 1, 2].map((b) => all.filter((_, i) => i % 3 === b)));
    expect(tests(found)).toEqual([
      ...Array(3).fill('outliers-in-batch'),
      'batches-alike',
      'outliers-in-all',
      'variances-alike',
      'fit-weibull',
    ]);
    expect(asked(found, 'batches-alike').consequence).toBe('pool');
    expect(found.chosen.B!.method).toBe('weibull');
    expect(found.chosen.A!.value!).toBeLessThan(found.chosen.B!.value!);
  });

  it('the order of the distributions is asked for', () => {
    const handbook = couponStatistics([EIGHTEEN]);
    const normal = couponStatistics([EIGHTEEN], 'normal-first');
    expect(tests(handbook).filter((test) => test.startsWith('fit'))).toEqual(['fit-weibull']);
    expect(tests(normal).filter((test) => test.startsWith('fit'))).toEqual(['fit-normal']);
    expect([handbook.chosen.B!.method, normal.chosen.B!.method]).toEqual(['weibull', 'normal']);
    expectClose(handbook.chosen.B!.value!, 125.441, { absolute: 6e-4 }, 'Weibull');
    expectClose(normal.chosen.B!.value!, 129.29, { absolute: 1e-3 }, 'normal');
  });

  it('Weibull fits a small sample but has no factor there: the next one that fits', () => {
    const found = couponStatistics([even(8, 100, 5)]);
    const weibull = asked(found, 'fit-weibull');
    expect([weibull.outcome, weibull.consequence]).toEqual(['holds', 'next']);
    expect(weibull.says).toMatch(/takes 10 results/);
    expect(found.chosen.B!.method).toBe('normal');
    expect(valueOfMethod(found, 'weibull', 'B')).toMatchObject({ because: 'too-few', least: 10 });
  });

  it('a long upper tail: lognormal', () => {
    const found = couponStatistics([even(80, 3, 1).map(Math.exp)]);
    expect(tests(found).slice(-3)).toEqual(['fit-weibull', 'fit-normal', 'fit-lognormal']);
    expect(asked(found, 'fit-weibull').outcome).toBe('fails');
    expect(asked(found, 'fit-normal').outcome).toBe('fails');
    expect(found.chosen.B!.method).toBe('lognormal');
  });

  it('nothing fits: Hanson and Koopmans, or a rank where there are enough, for each kind by itself', () => {
    const two = (n: number): number[] => [...even(n, 100, 1), ...even(n, 140, 1)];
    const few = couponStatistics([two(12)]);
    expect([few.chosen.B!.method, few.chosen.A!.method]).toEqual([
      'hanson-koopmans',
      'hanson-koopmans',
    ]);
    const more = couponStatistics([two(30)]);
    expect([more.chosen.B!.method, more.chosen.A!.method]).toEqual(['ranks', 'hanson-koopmans']);
    // 60 results: the second lowest, the rank of the binomial.
    expect(more.chosen.B!.factor).toBe(2);
    expect(more.chosen.B!.value).toBe([...two(30)].sort((a, b) => a - b)[1]);
    const many = couponStatistics([two(150)]);
    expect([many.chosen.B!.method, many.chosen.A!.method]).toEqual(['ranks', 'ranks']);
    expect(many.chosen.A!.value).toBe(Math.min(...two(150)));
    expect(valueOfMethod(many, 'hanson-koopmans', 'A')).toMatchObject({
      because: 'too-many',
      most: 298,
    });
  });

  it('batches that differ: analysis of variance, the example of the handbook', () => {
    const found = couponStatistics(ETW2);
    expect(asked(found, 'batches-alike')).toMatchObject({
      outcome: 'fails',
      consequence: 'keep-apart',
    });
    expect(asked(found, 'variances-alike')).toMatchObject({ outcome: 'holds' });
    expect(asked(found, 'between-batches')).toMatchObject({ statistic: 3, critical: 5 });
    expect(asked(found, 'between-batches').says).toMatch(/fewer than 5 batches/);
    expect(tests(found)).not.toContain('fit-weibull');
    expect(found.chosen.B!.method).toBe('anova');
    expectClose(found.chosen.B!.value!, 63.203, { absolute: 6e-3 }, 'B');
    expectClose(found.chosen.A!.value!, 34.578, { absolute: 6e-3 }, 'A');
  });

  it('unlike scatter of the batches is told', () => {
    const found = couponStatistics([even(8, 100, 0.2), even(8, 100, 9)]);
    expect(asked(found, 'variances-alike')).toMatchObject({
      outcome: 'fails',
      consequence: 'warn',
    });
  });

  it('an outlier is told and stays in', () => {
    const found = couponStatistics([ETW.slice(15)]);
    const decision = asked(found, 'outliers-in-all');
    expect(decision).toMatchObject({ outcome: 'fails', consequence: 'look-at-outlier' });
    expect(found.outliers[0]!.rounds[0]).toMatchObject({ index: 3, value: 80.2334815 });
    expect(found.all.n).toBe(7);
  });

  it('several outliers are found one after another, the first hidden by none', () => {
    const values = [...even(20, 100, 1), 130, 160];
    const { rounds } = couponStatistics([values]).outliers[0]!;
    expect(rounds.filter(({ outlier }) => outlier).map(({ value }) => value)).toEqual([160, 130]);
    expect(rounds.map(({ index }) => index).slice(0, 2)).toEqual([21, 20]);
    expect(rounds.at(-1)!.outlier).toBe(false);
  });

  it('between batches: where batches do not matter the factor is that of all results, where they are all that matters that of the batches', () => {
    const same = couponStatistics([even(6, 100, 5), even(6, 100, 5), even(6, 100, 5)]);
    const apart = couponStatistics([even(6, 50, 1e-6), even(6, 100, 1e-6), even(6, 150, 1e-6)]);
    expectClose(
      valueOfMethod(same, 'anova', 'B').factor!,
      1.97379503870549,
      { relative: 1e-12 },
      'T',
    );
    expectClose(
      valueOfMethod(apart, 'anova', 'B').factor!,
      6.15528110332626,
      { relative: 1e-9 },
      'T',
    );
  });

  it('how much was tested is held against the usual classes', () => {
    const found = couponStatistics([even(6, 1, 0.1), even(6, 1, 0.1), even(6, 1, 0.1)]);
    expect(found.sampling.filter(({ met }) => met).map(({ name }) => name)).toEqual(['B18']);
    expect(found.sampling.find(({ name }) => name === 'B30')).toMatchObject({
      batchesShort: 2,
      resultsShort: 12,
    });
  });
});
