/** Factors, plots, lines of life, mean stress and damage: edges, limits and what must hold for any input. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodmanPeak, minerSum } from '../../../src/model/coupons/blocks.ts';
import { parametersOf } from '../../../src/model/coupons/distributions.ts';
import {
  fitLifeLine,
  type LifeResult,
  lifeAt,
  stressAtLife,
} from '../../../src/model/coupons/life-line.ts';
import { medianRank, plotLine, plotPoints } from '../../../src/model/coupons/plotting.ts';
import { hansonKoopmansFactor } from '../../../src/model/coupons/ranks.ts';
import {
  basisFactor,
  lineFactor,
  toleranceFactor,
} from '../../../src/model/coupons/tolerance-factor.ts';
import { ModelError } from '../../../src/model/errors.ts';
import { normalQuantile } from '../../../src/model/scatter/quantiles.ts';
import { expectClose, type Tolerance } from '../../support/close.ts';
import { EIGHTEEN } from '../../support/coupons-published.ts';

const close = (actual: number, expected: number, tolerance: Tolerance, about: unknown = {}): void =>
  expectClose(actual, expected, tolerance, 'figure', about);

const refused = (run: () => unknown, input: string, message: RegExp): void => {
  expect(run).toThrow(ModelError);
  expect(run).toThrow(message);
  try {
    run();
  } catch (error) {
    expect((error as ModelError).input).toBe(input);
  }
};

describe('factors', () => {
  it('fall with the number of results, and A asks more than B', () => {
    for (let n = 3; n < 60; n++) {
      expect(basisFactor(n, 'B')).toBeLessThan(basisFactor(n - 1, 'B'));
      expect(basisFactor(n, 'A')).toBeGreaterThan(basisFactor(n, 'B'));
    }
    for (let n = 3; n < 29; n++) {
      expect(hansonKoopmansFactor(n, 'A')).toBeGreaterThan(hansonKoopmansFactor(n, 'B'));
    }
  });

  it('of a line with no slope are those of a sample', () => {
    for (const n of [2, 5, 30]) {
      close(lineFactor(1 / n, n - 1, 0.1), basisFactor(n, 'B'), { relative: 1e-13 }, { n });
    }
  });

  it('refuse what they are not for', () => {
    refused(() => toleranceFactor(1, 0.1), 'results', /2 results or more; there are 1/);
    refused(() => toleranceFactor(2.5, 0.1), 'results', /2 results or more/);
    refused(() => hansonKoopmansFactor(29, 'B'), 'results', /2 to 28 results; there are 29/);
    refused(() => hansonKoopmansFactor(1, 'A'), 'results', /2 to 298 results/);
  });
});

describe('probability plots', () => {
  it('median ranks are alike from both ends and near (i − 0.3)/(n + 0.4)', () => {
    for (const n of [1, 2, 7, 30, 1000]) {
      for (const i of new Set([1, Math.ceil(n / 3), n])) {
        close(medianRank(i, n) + medianRank(n + 1 - i, n), 1, { absolute: 1e-12 }, { n, i });
        // A. Benard, E. C. Bos-Levenbach, Statistica Neerlandica 7 (1953) 163.
        close(medianRank(i, n), (i - 0.3) / (n + 0.4), { absolute: 0.0015 }, { n, i });
      }
    }
  });

  it('a sample at the median ranks of its distribution lies on the line of that distribution', () => {
    const n = 25;
    const ranks = Array.from({ length: n }, (_, i) => medianRank(i + 1, n));
    const normal = plotPoints(
      ranks.map((p) => 100 + 5 * normalQuantile(p)),
      'normal',
    );
    for (const { x, y } of normal) close(y, (x - 100) / 5, { absolute: 1e-9 });
    const weibull = plotPoints(
      ranks.map((p) => 80 * (-Math.log1p(-p)) ** (1 / 12)),
      'weibull',
    );
    for (const { x, y } of weibull) close(y, 12 * (x - Math.log(80)), { absolute: 1e-9 });
    const lognormal = plotPoints(
      ranks.map((p) => Math.exp(3 + 0.1 * normalQuantile(p))),
      'lognormal',
    );
    for (const { x, y } of lognormal) close(y, (x - 3) / 0.1, { absolute: 1e-9 });
  });

  it('points rise; the fitted line runs through mean and scale', () => {
    for (const family of ['normal', 'lognormal', 'weibull'] as const) {
      const points = plotPoints(EIGHTEEN, family);
      points.forEach(({ x, y }, i) => {
        if (i > 0) expect([x >= points[i - 1]!.x, y > points[i - 1]!.y]).toEqual([true, true]);
      });
      const fitted = parametersOf(EIGHTEEN, family);
      const [from, to] = plotLine(points, fitted);
      close((to.x - from.x) / (to.y - from.y), fitted.scale, { relative: 1e-12 });
      close(from.x - fitted.scale * from.y, fitted.location, { relative: 1e-12 });
      expect([from.y, to.y]).toEqual([points[0]!.y, points.at(-1)!.y]);
    }
  });

  it('refuse what has no logarithm, and a line through one value', () => {
    refused(() => plotPoints([1, 0], 'weibull'), 'batches', /Weibull plot takes results above 0/);
    refused(() => plotPoints([1, -1], 'lognormal'), 'batches', /lognormal plot/);
    const points = plotPoints([4, 4], 'normal');
    refused(
      () => plotLine(points, { family: 'normal', location: 4, scale: 0 }),
      'batches',
      /not the same/,
    );
  });
});

const lives = (
  rows: readonly (readonly [stress: number, cycles: number, runOut?: boolean])[],
): LifeResult[] => rows.map(([stress, cycles, runOut = false]) => ({ stress, cycles, runOut }));

const failed = lives([
  [30, 2100],
  [30, 4000],
  [24, 11_000],
  [24, 23_000],
  [20, 95_000],
  [20, 60_000],
  [17, 420_000],
  [17, 230_000],
]);
const withRunOuts = [
  ...failed,
  ...lives([
    [14, 1e6, true],
    [14, 1e6, true],
    [17, 1e6, true],
  ]),
];

describe('lines of life', () => {
  it('a run-out lengthens the life below, where leaving it out would not', () => {
    const [without, line] = [fitLifeLine(failed), fitLifeLine(withRunOuts)];
    expect(lifeAt(line, 14).median).toBeGreaterThan(lifeAt(without, 14).median);
    const asFailures = fitLifeLine(withRunOuts.map((one) => ({ ...one, runOut: false })));
    expect(lifeAt(line, 14).median).toBeGreaterThan(lifeAt(asFailures, 14).median);
    expect([line.results, line.failures]).toEqual([11, 8]);
  });

  it('a run-out far below the line says next to nothing', () => {
    const one = fitLifeLine([...failed, ...lives([[20, 10, true]])]);
    const none = fitLifeLine(failed);
    close(lifeAt(one, 20).median, lifeAt(none, 20).median, { relative: 1e-6 });
    close(one.deviation, none.deviation, { relative: 1e-6 });
  });

  it('Basquin: S = C·N^−e', () => {
    const line = fitLifeLine(failed);
    const { coefficient, exponent } = line.basquin!;
    const { median } = lifeAt(line, 21);
    close(coefficient * median ** -exponent, 21, { relative: 1e-11 });
    close(stressAtLife(line, median), 21, { relative: 1e-11 });
    close(exponent, -1 / line.slope, { relative: 1e-15 });
  });

  it('the bound lies below the median, A below B, and farthest off the middle of the tests', () => {
    const line = fitLifeLine(failed);
    const spread = (stress: number): number => {
      const { median, bound } = lifeAt(line, stress);
      expect(bound).toBeLessThan(median);
      expect(lifeAt(line, stress, 'A').bound).toBeLessThan(bound);
      return median / bound;
    };
    expect(spread(10 ** line.centre)).toBeLessThan(Math.min(spread(35), spread(12)));
    expect([35, 20, 12].map((stress) => lifeAt(line, stress).outside)).toEqual([true, false, true]);
  });

  it('units and order do not matter', () => {
    const line = fitLifeLine(withRunOuts);
    const other = fitLifeLine(
      [...withRunOuts].reverse().map((one) => ({ ...one, stress: one.stress * 145.0377 })),
    );
    close(other.slope, line.slope, { relative: 1e-9 });
    close(other.deviation, line.deviation, { relative: 1e-9 });
    close(lifeAt(other, 20 * 145.0377).bound, lifeAt(line, 20).bound, { relative: 1e-8 });
  });

  it('random lives: finite figures, bound below median', () => {
    const one = fc.record({
      stress: fc.double({ min: 5, max: 50, noNaN: true }),
      cycles: fc.double({ min: 10, max: 1e8, noNaN: true }),
      runOut: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 6, maxLength: 20 }), (results) => {
        fc.pre(results.filter(({ runOut }) => !runOut).length >= 4);
        const line = fitLifeLine(results);
        for (const value of [line.level, line.slope, line.deviation, ...line.variances]) {
          expect(Number.isFinite(value)).toBe(true);
        }
        expect(line.deviation).toBeGreaterThan(0);
        const [level, shared, slope] = line.variances;
        // A variance at every stress: the two form a positive matrix.
        expect(level * slope - shared * shared).toBeGreaterThan(0);
      }),
    );
  });

  it('a line cannot be drawn through too little', () => {
    refused(() => fitLifeLine(failed.slice(0, 2)), 'results', /3 failures or more; there are 2/);
    const out = withRunOuts.map((one, i) => ({ ...one, runOut: i > 1 }));
    refused(() => fitLifeLine(out), 'results', /Run-outs do not count/);
    const oneStress = failed.map((one) => ({ ...one, stress: 20 }));
    refused(() => fitLifeLine(oneStress), 'results', /2 stresses or more/);
    const exact = [30, 20, 15, 12].map((stress) => ({
      stress,
      cycles: stress ** -8 * 1e16,
      runOut: false,
    }));
    refused(() => fitLifeLine(exact), 'results', /no scatter/);
    refused(() => fitLifeLine(lives([[0, 1000]])), 'results', /stress above 0; it is 0/);
    refused(() => fitLifeLine(lives([[20, Number.NaN]])), 'results', /cycles above 0/);
    const line = fitLifeLine(failed);
    refused(() => lifeAt(line, 0), 'stress', /above 0/);
    refused(() => lifeAt(line, 1e-90), 'stress', /no life in numbers/);
    refused(() => stressAtLife(line, -1), 'cycles', /above 0/);
  });

  it('lives that rise with stress have no stress for a life', () => {
    const rising = fitLifeLine(failed.map((one) => ({ ...one, stress: 600 / one.stress })));
    expect(rising.basquin).toBeNull();
    refused(() => stressAtLife(rising, 1e5), 'results', /do not fall/);
  });
});

describe('mean stress', () => {
  it('Goodman: 40 at a ratio of 0.1 with 100 static is 23.0769 fully reversed', () => {
    // Amplitude 18, mean 22: 18/(1 − 0.22).
    close(goodmanPeak({ peak: 40, ratio: 0.1 }, -1, 100), 18 / 0.78, { relative: 1e-14 });
    close(goodmanPeak({ peak: 30, ratio: -1 }, -1, 100), 30, { relative: 1e-15 });
  });

  it('there and back again is where it was; a higher ratio bears a higher peak', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.95, noNaN: true }),
        fc.double({ min: -1, max: 0.9, noNaN: true }),
        fc.double({ min: -1, max: 0.9, noNaN: true }),
        (share, from, to) => {
          const peak = 80 * share;
          const there = goodmanPeak({ peak, ratio: from }, to, 80);
          expect(there).toBeLessThan(80);
          close(goodmanPeak({ peak: there, ratio: to }, from, 80), peak, { relative: 1e-10 });
          if (to > from + 1e-6) expect(there).toBeGreaterThan(peak);
        },
      ),
    );
  });

  it('refuses a peak at the static strength, and ratios that are none', () => {
    refused(() => goodmanPeak({ peak: 80, ratio: 0.1 }, -1, 80), 'ultimate', /above the highest/);
    refused(() => goodmanPeak({ peak: 20, ratio: 1 }, -1, 80), 'ratio', /below 1/);
    refused(() => goodmanPeak({ peak: 20, ratio: -2 }, -1, 80), 'ratio', /−1/);
    refused(() => goodmanPeak({ peak: 0, ratio: 0 }, -1, 80), 'stress', /above 0/);
  });
});

describe('damage', () => {
  it('adds up shares of life', () => {
    const { sum, shares, repeats } = minerSum([
      { cycles: 1000, life: 10_000 },
      { cycles: 5000, life: 200_000 },
    ]);
    expect(shares).toEqual([0.1, 0.025]);
    close(sum, 0.125, { relative: 1e-15 });
    close(repeats!, 8, { relative: 1e-14 });
    expect(minerSum([])).toEqual({ sum: 0, shares: [], repeats: null });
    expect(minerSum([{ cycles: 0, life: 5 }]).repeats).toBeNull();
  });

  it('refuses what is no life', () => {
    refused(() => minerSum([{ cycles: -1, life: 5 }]), 'cycles', /Block 1/);
    refused(() => minerSum([{ cycles: 1, life: 0 }]), 'life', /Block 1/);
    refused(() => minerSum([{ cycles: 1e300, life: 1e-300 }]), 'cycles', /beyond all numbers/);
  });
});
