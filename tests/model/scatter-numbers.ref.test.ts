/** Random words, quantiles and exact limits against scipy and numpy: reference/scatter.py. */
import { describe, expect, it } from 'vitest';
import { percentileOf, shareInterval } from '../../src/model/scatter/binomial.ts';
import { incompleteBeta, inverseIncompleteBeta } from '../../src/model/scatter/incomplete-beta.ts';
import { philox, uniforms } from '../../src/model/scatter/philox.ts';
import {
  normalQuantile,
  plainLog,
  plainRoot,
  quantileOf,
} from '../../src/model/scatter/quantiles.ts';
import { expectClose, type Tolerance } from '../support/close.ts';
import { scatterFixture } from '../support/scatter.ts';

const close = (actual: number, expected: number, tolerance: Tolerance, about: object = {}): void =>
  expectClose(actual, expected, tolerance, 'figure', about);

const { words, quantiles, limits, ranks } = scatterFixture();

describe('random words', () => {
  it('are those of Philox4x32-10', () => {
    for (const { counter, key, words: expected } of words) {
      const drawn = Uint32Array.from(counter);
      philox(drawn, key[0], key[1]);
      expect([...drawn]).toEqual(expected);
    }
  });
});

describe('the samples of a seed', () => {
  // Golden: whatever changes these changes the figures of every seed.
  it('are the same to the bit', () => {
    const uniform = uniforms(1);
    const drawn = (['normal', 'uniform', 'triangular'] as const).map((name, i) =>
      [0, 1, 99_999].map((index) => quantileOf[name](uniform(index, i + 1))),
    );
    expect(drawn).toEqual([
      [0.03182672336175577, 1.8745961416690036, 0.51986121271125],
      [0.798518630451426, 0.9202909618301305, 0.3743605889741526],
      [0.5850165049464657, 0.05134089933371988, -0.009426483830508148],
    ]);
    const bits = new BigUint64Array(Float64Array.from(drawn.flat()).buffer);
    expect([...bits].map((one) => one.toString(16))).toEqual([
      '3fa04b979ff48565',
      '3ffdfe58861ad186',
      '3fe0a2b3fb61b80f',
      '3fe98d76f1612382',
      '3fed730607fbac66',
      '3fd7f5861da389c4',
      '3fe2b874888bb07a',
      '3faa495ab72bcde0',
      'bf834e313e257d40',
    ]);
  });

  it('of one input do not move when another is there, and differ between seeds, inputs, purposes', () => {
    const uniform = uniforms(7);
    const alone = Array.from({ length: 50 }, (_v, i) => uniform(i, 5));
    const beside = Array.from({ length: 50 }, (_v, i) => {
      uniform(i, 6);
      return uniform(i, 5);
    });
    expect(beside).toEqual(alone);
    const others = [uniforms(8)(0, 5), uniform(0, 6), uniform(1, 5), uniform(0, 5, 'design')];
    expect(new Set([alone[0], ...others]).size).toBe(5);
  });

  it('fill the unit interval evenly and keep off its ends', () => {
    const uniform = uniforms(3);
    const bins = new Array<number>(20).fill(0);
    const count = 40_000;
    for (let i = 0; i < count; i++) {
      const u = uniform(i, 1);
      expect(u > 0 && u < 1).toBe(true);
      bins[Math.floor(20 * u)]! += 1;
    }
    const chiSquare = bins.reduce((sum, n) => sum + (n - count / 20) ** 2 / (count / 20), 0);
    // 99.9 % of chi-square with 19 degrees of freedom lies below 43.82.
    expect(chiSquare).toBeLessThan(43.82);
  });
});

describe('quantiles', () => {
  it('of the normal distribution are those of scipy, and odd about the middle', () => {
    for (const { chance, quantile } of quantiles) {
      close(normalQuantile(chance), quantile, { relative: 4e-15, absolute: 1e-15 }, { chance });
      if (chance > 1e-3) {
        close(
          normalQuantile(1 - chance),
          -quantile,
          { relative: 1e-12, absolute: 1e-15 },
          { chance },
        );
      }
    }
  });

  it('rest on a logarithm and a root that are right to two units of the last digit', () => {
    const uniform = uniforms(11);
    for (let i = 0; i < 5000; i++) {
      const x = uniform(i, 1) * 10 ** (40 * uniform(i, 2) - 20);
      close(plainLog(x), Math.log(x), { relative: 4.5e-16, absolute: 1e-16 }, { x });
      close(plainRoot(x), Math.sqrt(x), { relative: 4.5e-16 }, { x });
    }
    expect(plainRoot(0)).toBe(0);
  });

  it('of the triangular distribution give back their chance', () => {
    for (const u of [1e-9, 0.1, 0.3, 0.5, 0.9, 1 - 1e-9]) {
      const t = quantileOf.triangular(u);
      const chance = t < 0 ? (1 + t) ** 2 / 2 : 1 - (1 - t) ** 2 / 2;
      close(chance, u, { relative: 1e-12, absolute: 1e-15 }, { u });
    }
  });
});

describe('exact limits', () => {
  it('of a share are those of scipy', () => {
    for (const { found, of, confidence, low, high } of limits) {
      const interval = shareInterval(found, of, confidence);
      const about = { found, of, confidence };
      // The logarithm of the gamma function of 1e5 is 1e6: its last digits are 1e-10 of the front factor.
      close(interval.low, low, { relative: 1e-9 }, about);
      close(interval.high, high, { relative: 1e-9 }, about);
    }
  });

  it('hold by their own meaning: so many or more have the chance of one tail', () => {
    const { low, high } = shareInterval(37, 100_000);
    // P(K ≥ k) at the low limit and P(K ≤ k) at the high one, by DLMF 8.17.
    close(incompleteBeta(low, 37, 100_000 - 36), 0.025, { relative: 1e-9 });
    close(1 - incompleteBeta(high, 38, 100_000 - 37), 0.025, { relative: 1e-9 });
  });

  it('invert the incomplete beta function', () => {
    for (const [a, b] of [
      [1, 1],
      [0.5, 3],
      [200, 2],
      [3, 5000],
    ] as const) {
      for (const p of [1e-6, 0.025, 0.5, 0.975]) {
        const x = inverseIncompleteBeta(p, a, b);
        close(incompleteBeta(x, a, b), p, { relative: 1e-10 }, { a, b, p });
      }
    }
    expect(inverseIncompleteBeta(0, 2, 3)).toBe(0);
    expect(inverseIncompleteBeta(1, 2, 3)).toBe(1);
  });

  it('of a percentile are the samples at the ranks of the binomial', () => {
    for (const { samples, share, low, high } of ranks) {
      const sorted = Float64Array.from({ length: samples }, (_v, i) => i + 1);
      const found = percentileOf(sorted, share);
      expect([found.low, found.high, found.value], JSON.stringify({ samples, share })).toEqual([
        low,
        high,
        Math.ceil(share * samples),
      ]);
    }
  });
});
