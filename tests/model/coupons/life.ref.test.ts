/** Lines of life and their bounds against scipy's minimisers and noncentral t: reference/coupon_life.py. */
import { describe, expect, it } from 'vitest';
import { fitLifeLine, lifeAt, stressAtLife } from '../../../src/model/coupons/life-line.ts';
import { expectClose, type Tolerance } from '../../support/close.ts';
import { lifeFixture } from '../../support/coupons.ts';

const close = (actual: number, expected: number, tolerance: Tolerance, about: unknown): void =>
  expectClose(actual, expected, tolerance, 'figure', about);

const { cases, coverage } = lifeFixture();

describe('lines of life', () => {
  it('are the most likely ones, with run-outs and without', () => {
    const methods = new Set<string>();
    for (const expected of cases) {
      const line = fitLifeLine(expected.results);
      methods.add(line.method);
      const censored = line.method === 'censored-likelihood';
      const relative = censored ? 1e-6 : 1e-12;
      close(line.centre, expected.centre, { relative: 1e-13 }, expected);
      close(line.level, expected.level, { relative }, expected);
      close(line.slope, expected.slope, { relative }, expected);
      close(line.deviation, expected.deviation, { relative }, expected);
      expect(line.failures).toBe(expected.failures);
      line.variances.forEach((variance, i) => {
        const tolerance = censored ? { relative: 1e-4 } : { relative: 1e-11, absolute: 1e-11 };
        close(variance, expected.variances[i]!, tolerance, expected);
      });
    }
    expect(methods.size).toBe(2);
  });

  it('have these medians and lower bounds', () => {
    for (const { results, bounds } of cases) {
      const line = fitLifeLine(results);
      const censored = line.method === 'censored-likelihood';
      for (const { stress, median, factor, bound } of bounds) {
        const at = lifeAt(line, stress);
        const about = { results, stress };
        close(at.median, median, { relative: censored ? 2e-5 : 1e-10 }, about);
        close(at.factor, factor, { relative: censored ? 1e-4 : 1e-10 }, about);
        close(at.bound, bound, { relative: censored ? 1e-3 : 1e-9 }, about);
        close(stressAtLife(line, at.median), stress, { relative: 1e-11 }, about);
      }
    }
  });

  it('the bound holds in 95 of 100 samples, and in no fewer where there are run-outs', () => {
    for (const one of coverage) {
      // 20 000 samples: two standard errors are 0.003.
      if (one.meanFailures === one.results) close(one.held, 0.95, { absolute: 0.003 }, one);
      else {
        expect(one.held).toBeGreaterThan(0.947);
        expect(one.held).toBeLessThan(0.985);
      }
    }
  });
});
