/** Too few results, no scatter, one batch, values without a logarithm: a value, or why there is none. */
import { describe, expect, it } from 'vitest';
import { couponStatistics } from '../../../src/model/coupons/path.ts';
import { ModelError } from '../../../src/model/errors.ts';
import { expectClose } from '../../support/close.ts';
import { asked, even, expectFinite, tests, valueOfMethod } from '../../support/coupon-way.ts';
import { EIGHTEEN } from '../../support/coupons-published.ts';

describe('edges', () => {
  it('one result: mean, no scatter, no value, and what it takes', () => {
    const found = couponStatistics([[30]]);
    expectFinite(found);
    expect(found.all).toMatchObject({ n: 1, mean: 30, deviation: null, variation: null });
    expect(found.chosen).toEqual({ A: null, B: null });
    expect(asked(found, 'outliers-in-all').says).toMatch(/takes 3 results/);
    expect(asked(found, 'without-distribution')).toMatchObject({ consequence: 'no-value' });
    expect(asked(found, 'without-distribution').says).toMatch(/takes 2 results/);
    const least = Object.fromEntries(
      found.basis.map(({ method, kind, least: n }) => [`${method} ${kind}`, n]),
    );
    expect(least).toEqual({
      'weibull A': 10,
      'weibull B': 10,
      'normal A': 2,
      'normal B': 2,
      'lognormal A': 2,
      'lognormal B': 2,
      'hanson-koopmans A': 2,
      'hanson-koopmans B': 2,
      'ranks A': 299,
      'ranks B': 29,
      'anova A': 2,
      'anova B': 2,
    });
  });

  it('two to four results: no fit is judged, so none is assumed', () => {
    for (const n of [2, 3, 4]) {
      const found = couponStatistics([even(n, 100, 5)]);
      expectFinite(found);
      expect(found.fits).toEqual({ normal: null, lognormal: null, weibull: null });
      expect(asked(found, 'fit-normal')).toMatchObject({ outcome: 'not-applicable' });
      expect(found.chosen.B!.method).toBe('hanson-koopmans');
    }
  });

  it('all the same: no value but a rank, and nothing that is not a number', () => {
    for (const value of [30, 0.1, -7, 0]) {
      for (const n of [2, 5, 30, 300]) {
        const found = couponStatistics([Array(n).fill(value), Array(n).fill(value)]);
        expectFinite(found);
        expect(found.all.deviation).toBe(0);
        expect(asked(found, 'batches-alike')).toMatchObject({ consequence: 'pool-untested' });
        expect(asked(found, 'batches-alike').says).toMatch(/all the same/);
        expect(valueOfMethod(found, 'normal', 'B').because).toBe('all-equal');
        expect(valueOfMethod(found, 'anova', 'B').because).toBe('all-equal');
        expect(found.chosen.B?.value ?? null).toBe(2 * n >= 29 ? value : null);
      }
    }
  });

  it('the same but for the last digits of the arithmetic is the same', () => {
    const found = couponStatistics([[0.3, 0.1 + 0.2, 0.3, 0.1 + 0.2, 0.3, 0.3]]);
    expect(valueOfMethod(found, 'normal', 'B').because).toBe('all-equal');
    expect(asked(found, 'outliers-in-all').says).toMatch(/all the same/);
  });

  it('zero or below: the normal distribution alone', () => {
    for (const low of [0, -3]) {
      const found = couponStatistics([[low, ...even(11, 3, 1.2)]]);
      expectFinite(found);
      expect(asked(found, 'fit-weibull')).toMatchObject({ outcome: 'not-applicable' });
      expect(asked(found, 'fit-weibull').says).toMatch(/not above 0/);
      expect(found.chosen.B!.method).toBe('normal');
      for (const method of ['weibull', 'lognormal', 'hanson-koopmans'] as const) {
        expect(valueOfMethod(found, method, 'B').because).toBe('not-above-zero');
      }
    }
    const worse = couponStatistics([[-1, ...even(9, 100, 0.1), ...even(9, 200, 0.1)]]);
    expect(worse.chosen).toEqual({ A: null, B: null });
    expect(worse.decisions.at(-1)!.says).toMatch(/one is not above 0/);
  });

  it('batches of one: pooled untested; all of one: no analysis of variance', () => {
    const some = couponStatistics([[100], even(6, 100, 3), even(6, 101, 3)]);
    expectFinite(some);
    expect(asked(some, 'batches-alike').consequence).toBe('pool-untested');
    expect(asked(some, 'batches-alike').says).toMatch(/2 results or more/);
    expect(some.anova).not.toBeNull();
    const every = couponStatistics(even(7, 100, 3).map((value) => [value]));
    expectFinite(every);
    expect(every.anova).toBeNull();
    expect(valueOfMethod(every, 'anova', 'B').because).toBe('too-few-batches');
    expect(asked(every, 'variances-alike').outcome).toBe('not-applicable');
  });

  it('batches of two: distances from a median are the same, so Levene is silent', () => {
    const found = couponStatistics([
      [98, 103],
      [99, 100],
      [101, 97],
    ]);
    expectFinite(found);
    expect(asked(found, 'variances-alike')).toMatchObject({ outcome: 'not-applicable' });
    expect(asked(found, 'batches-alike').says).toMatch(/fewer than 5 results/);
  });

  it('a great many results do not fail', () => {
    const found = couponStatistics([even(60_000, 100, 5), even(60_000, 100, 5)]);
    expectFinite(found);
    expectClose(
      valueOfMethod(found, 'normal', 'B').value!,
      100 - 1.2898 * 5,
      { absolute: 0.01 },
      'B',
    );
  });

  it('one batch: what batches do is not in it', () => {
    const found = couponStatistics([EIGHTEEN]);
    expect(asked(found, 'batches-alike').says).toMatch(/one batch/);
    expect(tests(found)).not.toContain('outliers-in-batch');
    expect(tests(found)).not.toContain('variances-alike');
  });

  it('batches that are each without scatter, apart from one another', () => {
    const found = couponStatistics([Array(5).fill(90), Array(5).fill(100), Array(5).fill(110)]);
    expectFinite(found);
    expect(found.anova!.ratio).toBeNull();
    expect(found.chosen.B!.method).toBe('anova');
    // Three batches and nothing else: the factor of 3 results.
    expectClose(found.chosen.B!.factor!, 6.15528110332626, { relative: 1e-12 }, 'T');
  });

  it('what cannot be a result is refused by its place', () => {
    const refused = (batches: number[][], message: RegExp): void => {
      expect(() => couponStatistics(batches)).toThrow(ModelError);
      expect(() => couponStatistics(batches)).toThrow(message);
    };
    refused([], /no result/);
    refused([[1, 2], []], /Batch 2 has no result/);
    refused(
      [
        [1, 2],
        [3, Number.NaN],
      ],
      /Result 2 of batch 2/,
    );
    refused([[Number.POSITIVE_INFINITY]], /Result 1 of batch 1/);
    refused([[1e200]], /1e100/);
    refused([[1e-200]], /1e-100/);
  });
});
