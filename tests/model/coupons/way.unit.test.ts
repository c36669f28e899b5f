/** The way from results to basis values: every branch, every edge, and what must hold for any results. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BASIS_METHODS, type BasisMethod } from '../../../src/model/coupons/basis.ts';
import type { Decision, DecisionTest } from '../../../src/model/coupons/decisions.ts';
import { type CouponStatistics, couponStatistics } from '../../../src/model/coupons/path.ts';
import { BASIS_KINDS, type BasisKind } from '../../../src/model/coupons/tolerance-factor.ts';
import { ModelError } from '../../../src/model/errors.ts';
import { normalQuantile } from '../../../src/model/scatter/quantiles.ts';
import { expectClose } from '../../support/close.ts';
import { EIGHTEEN, ETW, ETW2 } from '../../support/coupons-published.ts';

const asked = (found: CouponStatistics, test: DecisionTest): Decision => {
  const decision = found.decisions.find((one) => one.test === test);
  if (!decision) throw new Error(`${test} was not asked`);
  return decision;
};
const valueOfMethod = (found: CouponStatistics, method: BasisMethod, kind: BasisKind) =>
  found.basis.find((one) => one.method === method && one.kind === kind)!;
const tests = (found: CouponStatistics): string[] => found.decisions.map(({ test }) => test);

/** n values at the even quantiles of a normal distribution: it fits as well as any can. */
const even = (n: number, mean: number, deviation: number): number[] =>
  Array.from({ length: n }, (_, i) => mean + deviation * normalQuantile((i + 0.5) / n));
/** The same of a Weibull distribution. */
const evenWeibull = (n: number, scale: number, shape: number): number[] =>
  Array.from({ length: n }, (_, i) => scale * (-Math.log1p(-(i + 0.5) / n)) ** (1 / shape));

/** No number anywhere in the answer that is not finite. */
function expectFinite(value: unknown, path = 'answer'): void {
  if (typeof value === 'number') expect(Number.isFinite(value), `${path} ${value}`).toBe(true);
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
  }
}

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

const result = fc.double({ min: 1, max: 1000, noNaN: true });
const someBatches = fc.array(fc.array(result, { minLength: 1, maxLength: 12 }), {
  minLength: 1,
  maxLength: 5,
});
/** Any results, many of them equal. */
const roughBatches = fc.array(
  fc.array(fc.integer({ min: -3, max: 12 }), { minLength: 1, maxLength: 9 }),
  { minLength: 1, maxLength: 5 },
);

describe('for any results', () => {
  it('nothing that is not a finite number comes out', () => {
    fc.assert(
      fc.property(fc.oneof(someBatches, roughBatches), (batches) => {
        expectFinite(couponStatistics(batches));
      }),
      { numRuns: 300 },
    );
  });

  it('A is not above B, of any method', () => {
    fc.assert(
      fc.property(someBatches, (batches) => {
        const found = couponStatistics(batches);
        for (const method of BASIS_METHODS) {
          const [a, b] = BASIS_KINDS.map((kind) => valueOfMethod(found, method, kind).value);
          if (a !== null && b !== null) expect(a!, method).toBeLessThanOrEqual(b! * (1 + 1e-12));
        }
      }),
    );
  });

  const same = (one: CouponStatistics, other: CouponStatistics, scale: number): void => {
    expect(tests(other)).toEqual(tests(one));
    expect(other.decisions.map(({ outcome }) => outcome)).toEqual(
      one.decisions.map(({ outcome }) => outcome),
    );
    one.basis.forEach(({ method, kind, value }, i) => {
      const theirs = other.basis[i]!.value;
      if (value === null || theirs === null) expect(theirs).toBe(value);
      else {
        // A Weibull shape is found to its last digits only where the results differ by more than theirs.
        const absolute = 1e-7 * scale * one.all.highest;
        expectClose(theirs, scale * value, { absolute }, `${method} ${kind}`, one);
      }
    });
  };

  it('another unit changes the values alone', () => {
    fc.assert(
      fc.property(someBatches, fc.constantFrom(1 / 1024, 8, 65536), (batches, scale) => {
        const scaled = batches.map((batch) => batch.map((x) => x * scale));
        same(couponStatistics(batches), couponStatistics(scaled), scale);
      }),
    );
  });

  it('the order of results and of batches changes nothing', () => {
    fc.assert(
      fc.property(someBatches, (batches) => {
        const turned = batches.map((batch) => [...batch].reverse());
        same(couponStatistics(batches), couponStatistics(turned), 1);
        const other = couponStatistics([...turned].reverse());
        const one = couponStatistics(batches);
        expect(other.chosen.B?.method).toBe(one.chosen.B?.method);
        one.basis.forEach(({ value, method }, i) => {
          if (value === null) expect(other.basis[i]!.value).toBeNull();
          else {
            const absolute = 1e-7 * one.all.highest;
            expectClose(other.basis[i]!.value!, value, { absolute }, method, batches);
          }
        });
      }),
    );
  });

  it('all results moved by the same amount move a normal value and that of the batches by it', () => {
    fc.assert(
      fc.property(someBatches, fc.integer({ min: 1, max: 500 }), (batches, by) => {
        const one = couponStatistics(batches);
        const other = couponStatistics(batches.map((batch) => batch.map((x) => x + by)));
        for (const method of ['normal', 'anova'] as const) {
          for (const kind of BASIS_KINDS) {
            const [a, b] = [valueOfMethod(one, method, kind), valueOfMethod(other, method, kind)];
            if (a.value === null || b.value === null) continue;
            expectClose(b.value, a.value + by, { absolute: 1e-7 * (by + one.all.highest) }, method);
          }
        }
      }),
    );
  });
});
