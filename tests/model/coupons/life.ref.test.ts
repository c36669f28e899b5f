/** Lines of life and their bounds against scipy's minimisers and noncentral t: reference/coupon_life.py. */
import { describe, expect, it } from 'vitest';
import { fitLifeLine, lifeAt, stressAtLife } from '../../../src/model/coupons/life-line.ts';
import { uniforms } from '../../../src/model/scatter/philox.ts';
import { normalQuantile } from '../../../src/model/scatter/quantiles.ts';
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

  it('the bound holds in as many samples as in those of the script: 95 of 100, and a few more with run-outs', () => {
    const SAMPLES = 600;
    const z = normalQuantile(0.1);
    const law = (stress: number): number => 5 - 9 * Math.log10(stress / 20);
    for (const { levels, perLevel, runOutAt, stress, held: theirs } of coverage.filter(
      (one) => one.perLevel === 3,
    )) {
      const stresses = Array.from({ length: levels * perLevel }, (_, i) => {
        const level = Math.floor(i / perLevel);
        return 28 + ((14 - 28) * level) / (levels - 1);
      });
      const uniform = uniforms(5);
      let [held, all] = [0, 0];
      for (let sample = 0; sample < SAMPLES; sample++) {
        const results = stresses.map((at, i) => {
          const life = 10 ** (law(at) + 0.3 * normalQuantile(uniform(sample, i + 1)));
          return { stress: at, cycles: Math.min(life, runOutAt), runOut: life > runOutAt };
        });
        if (results.filter(({ runOut }) => !runOut).length < 4) continue;
        const { bound } = lifeAt(fitLifeLine(results), stress);
        if (bound <= 10 ** (law(stress) + 0.3 * z)) held += 1;
        all += 1;
      }
      // Four standard errors; the script's are a sixth of ours.
      const absolute = 4 * Math.sqrt((theirs * (1 - theirs)) / all);
      close(held / all, theirs, { absolute }, { levels, perLevel, runOutAt, stress });
    }
  });
});
