/** Factors, tests, fits and plotting positions against scipy, mpmath and sampling: reference/coupons.py. */
import { describe, expect, it } from 'vitest';
import { analyseVariance, levene } from '../../../src/model/coupons/anova.ts';
import { weibullFactor } from '../../../src/model/coupons/basis.ts';
import { fitFamily, significanceOf, weibullFit } from '../../../src/model/coupons/distributions.ts';
import { kSample, kSampleStatistic } from '../../../src/model/coupons/k-sample.ts';
import { noncentralTChance, noncentralTQuantile } from '../../../src/model/coupons/noncentral-t.ts';
import {
  logNormalTail,
  normalChance,
  normalDensity,
  normalHazard,
  normalTail,
} from '../../../src/model/coupons/normal-tail.ts';
import { criticalResidual } from '../../../src/model/coupons/outliers.ts';
import { medianRank } from '../../../src/model/coupons/plotting.ts';
import {
  basisRank,
  hansonKoopmansFactor,
  LEAST_FOR_RANKS,
  orderUsed,
} from '../../../src/model/coupons/ranks.ts';
import { fisherTail, fisherUpper, studentUpper } from '../../../src/model/coupons/student.ts';
import {
  BASIS_KINDS,
  basisFactor,
  QUANTILE,
  SHARE_BELOW,
  toleranceFactor,
} from '../../../src/model/coupons/tolerance-factor.ts';
import { expectClose, type Tolerance } from '../../support/close.ts';
import { couponsFixture } from '../../support/coupons.ts';

const close = (actual: number, expected: number, tolerance: Tolerance, about: unknown): void =>
  expectClose(actual, expected, tolerance, 'figure', about);

const fixture = couponsFixture();

describe('tolerance factors', () => {
  it('of 2 to 1000 results are those of scipy', () => {
    expect(fixture.factors.length).toBe(999);
    for (const { n, ...factors } of fixture.factors) {
      for (const kind of BASIS_KINDS) {
        close(basisFactor(n, kind), factors[kind], { relative: 2e-12 }, { n, kind });
      }
    }
  });

  it('are those of 30 digits', () => {
    for (const { n, ...factors } of fixture.precise) {
      for (const kind of BASIS_KINDS) {
        close(
          toleranceFactor(n, SHARE_BELOW[kind]),
          factors[kind],
          { relative: 2e-13 },
          { n, kind },
        );
      }
    }
  });

  it('go on to the quantile itself, far beyond 1000', () => {
    let last = basisFactor(1000, 'B');
    for (const n of [3000, 10_000, 100_000, 1_000_000]) {
      const factor = basisFactor(n, 'B');
      expect(factor).toBeLessThan(last);
      // Large samples: z + 1.645·√((1 + z²/2)/n), a term of 1/n left out.
      const first = QUANTILE.B + 1.6448536269514722 * Math.sqrt((1 + QUANTILE.B ** 2 / 2) / n);
      close(factor, first, { absolute: 4 / n }, { n });
      last = factor;
    }
  });

  it('rest on the noncentral t, its chance and its quantile', () => {
    for (const { freedom, noncentrality, chance, t } of fixture.noncentral) {
      const about = { freedom, noncentrality, chance };
      close(noncentralTChance(t, freedom, noncentrality), chance, { absolute: 2e-10 }, about);
      const found = noncentralTQuantile(chance, freedom, noncentrality);
      close(noncentralTChance(found, freedom, noncentrality), chance, { absolute: 1e-13 }, about);
      close(found, t, { relative: 1e-8, absolute: 1e-9 }, about);
    }
  });
});

describe('normal, t and F', () => {
  it('tails are those of scipy, and their logarithms where they have vanished', () => {
    for (const { z, tail, log } of fixture.tails) {
      // At z = 38 what a double can still hold.
      close(normalTail(z), tail, { relative: 2e-13, absolute: 1e-310 }, { z });
      close(normalChance(-z), tail, { relative: 2e-13, absolute: 1e-310 }, { z });
      close(logNormalTail(z), log, { relative: 2e-13 }, { z });
      if (tail > 0 && z > -8) {
        close(normalHazard(z), normalDensity(z) / tail, { relative: 2e-13 }, { z });
      }
    }
    expect(Number.isFinite(logNormalTail(1e10))).toBe(true);
  });

  it('t and F are exceeded with their chance', () => {
    for (const { tail, freedom, t } of fixture.students) {
      close(studentUpper(tail, freedom), t, { relative: 2e-9 }, { tail, freedom });
    }
    for (const { tail, between, within, f } of fixture.fishers) {
      const about = { tail, between, within };
      close(fisherUpper(tail, between, within), f, { relative: 2e-9 }, about);
      close(fisherTail(f, between, within), tail, { relative: 2e-9 }, about);
    }
  });

  it('median ranks are those of the beta distribution', () => {
    for (const { n, i, rank } of fixture.medianRanks) {
      close(medianRank(i, n), rank, { relative: 1e-10 }, { n, i });
    }
  });
});

describe('without a distribution', () => {
  it('the factors of Hanson and Koopmans are those of the other integral', () => {
    for (const { kind, n, r, k } of fixture.hansonKoopmans) {
      expect(orderUsed(n, kind)).toBe(r);
      close(hansonKoopmansFactor(n, kind), k, { relative: 1e-9 }, { kind, n });
    }
  });

  it('ranks are those of the binomial', () => {
    for (const { kind, n, rank } of fixture.ranks) {
      if (rank === null) expect(() => basisRank(n, kind)).toThrow(/needs (29|299) results/);
      else expect(basisRank(n, kind), `${kind} ${n}`).toBe(rank);
    }
    for (const kind of BASIS_KINDS) {
      expect(basisRank(LEAST_FOR_RANKS[kind], kind)).toBe(1);
      expect(() => basisRank(LEAST_FOR_RANKS[kind] - 1, kind)).toThrow();
    }
  });
});

describe('tests of samples', () => {
  it('k-sample statistic, its deviation and critical value are those of scipy, with ties and without', () => {
    let ties = 0;
    for (const { batches, kSample: theirs } of fixture.samples) {
      const { raw, deviation, statistic, critical } = kSample(batches);
      const m = batches.length - 1;
      close((raw - m) / (deviation * m), theirs.normalised, { absolute: 1e-10 }, batches);
      close(statistic, raw / m, { relative: 1e-15 }, batches);
      const right = kSampleStatistic(batches, 'right');
      close((right - m) / (deviation * m), theirs.normalisedRight, { absolute: 1e-10 }, batches);
      // scipy's is in deviations about the mean: 1 here.
      close((critical - 1) / deviation, theirs.critical, { relative: 1e-12 }, batches);
      if (Math.abs(right - raw) > 1e-9) ties += 1;
    }
    expect(ties).toBeGreaterThan(8);
  });

  it("Levene's F and the analysis of variance are those of scipy", () => {
    for (const { batches, variances, ratio } of fixture.samples) {
      close(analyseVariance(batches).ratio!, ratio, { relative: 1e-9, absolute: 1e-12 }, batches);
      const found = levene(batches);
      if (Number.isFinite(variances) && variances < 1e6 && found) {
        close(found.statistic, variances, { relative: 1e-9, absolute: 1e-12 }, batches);
        const n = batches.flat().length;
        const k = batches.length;
        close(fisherTail(found.critical, k - 1, n - k), 0.05, { relative: 1e-9 }, batches);
      }
    }
  });

  it('the largest residual is exceeded in one of twenty samples', () => {
    for (const { n, critical } of fixture.residuals) {
      close(criticalResidual(n), critical, { relative: 1e-9 }, { n });
    }
    // Sampled 400 000 times; beyond a few results the limit is an upper one by a hair.
    for (const { n, critical } of fixture.sampledResiduals) {
      close(criticalResidual(n), critical, { relative: 2.5e-3 }, { n });
    }
  });
});

describe('fits', () => {
  it('parameters and AD of every sample are those of scipy', () => {
    for (const { batches, fits } of fixture.samples) {
      if (!fits) continue;
      const values = batches.flat();
      for (const family of ['normal', 'lognormal'] as const) {
        const found = fitFamily(values, family);
        close(found.location, fits[family].location, { relative: 1e-12 }, { family, values });
        close(found.scale, fits[family].scale, { relative: 1e-10 }, { family, values });
        close(found.statistic, fits[family].statistic, { absolute: 1e-9 }, { family, values });
      }
      const { scale, shape } = weibullFit(values);
      // A minimiser finds the top of the likelihood to the root of a double's accuracy.
      close(scale, fits.weibull.scale, { relative: 1e-7 }, values);
      close(shape, fits.weibull.shape, { relative: 1e-6 }, values);
      const { statistic } = fitFamily(values, 'weibull');
      close(statistic, fits.weibull.statistic, { absolute: 1e-5 }, values);
    }
  });

  it('their significance is the sampled chance', () => {
    for (const { family, n, chance, statistic } of fixture.sampledSignificance) {
      const { significance } = significanceOf(statistic, n, family);
      // What the printed formulas are worth; from 5 % down the decisions hang on it.
      const few = family === 'normal' && n < 8;
      const absolute = few
        ? ({ 0.2: 0.023, 0.1: 0.0055 }[chance] ?? 0.004)
        : ({ 0.2: 0.037, 0.1: 0.018, 0.05: 0.016 }[chance] ?? 0.011);
      close(significance, chance, { absolute }, { family, n });
    }
  });

  it('the four pieces of the chance of few results meet', () => {
    for (const corrected of [0.2, 0.34, 0.6]) {
      for (const n of [5, 7]) {
        const statistic = corrected / (1 + 0.75 / n + 2.25 / (n * n));
        const [below, above] = [0.999999, 1.000001].map(
          (by) => significanceOf(by * statistic, n, 'normal').significance,
        );
        close(below!, above!, { absolute: 0.004 }, { corrected, n });
      }
    }
  });

  it('the factor of a Weibull basis value is within 1 % of the sampled one from 16, above it below', () => {
    for (const { n, kind, factor, error } of fixture.sampledWeibull) {
      const ours = weibullFactor(n, kind);
      if (n >= 16) close(ours, factor, { absolute: 0.01 * factor + 2 * error }, { n, kind });
      else {
        expect(ours).toBeGreaterThan(factor - 2 * error);
        expect(ours).toBeLessThan(1.055 * factor);
      }
    }
  });
});
