/**
 * Normal, lognormal and two-parameter Weibull distributions: fitted, and how well they fit by the
 * statistic of Anderson and Darling. MIL-HDBK-17-1F (2002) Vol. 1, 8.3.4.
 */
import { findRoot } from '../numerics/root.ts';
import { logNormalTail } from './normal-tail.ts';
import { deviationOf, extent, meanOf, sorted } from './sample.ts';

export type Family = 'normal' | 'lognormal' | 'weibull';

/** The chance, were the distribution right, of a fit as bad as this or worse must be above it. */
export const FIT_LEVEL = 0.05;
/** No correction for small samples was made for fewer, and no test would tell anything. */
export const LEAST_FOR_FIT = 5;
/** Below this the handbook's correction calls nearly everything normal: at 5 results what should be 5 % is 24 %. */
const HANDBOOK_FROM = 8;

/** Location and scale: mean and s (normal), those of the logarithms, or ln α and 1/β (Weibull). */
export interface Fitted {
  readonly family: Family;
  readonly location: number;
  readonly scale: number;
}

export interface Fit extends Fitted, Corrected {
  /** AD. */
  readonly statistic: number;
}

export interface WeibullParameters {
  /** α: 63.2 % lie below. */
  readonly scale: number;
  /** β. */
  readonly shape: number;
}

/**
 * Weibull by maximum likelihood, of values above 0 that are not all the same:
 * Σx^β·ln x/Σx^β − 1/β = mean of ln x, then α = (Σx^β/n)^(1/β). The left side rises with β from −∞ to
 * ln of the largest, so there is one root. Logarithms are taken about the largest: no power overflows.
 */
export function weibullFit(values: readonly number[]): WeibullParameters {
  const logs = values.map(Math.log);
  const [, top] = extent(logs);
  const mean = meanOf(logs) - top;
  const powers = (shape: number): { sum: number; weighted: number } => {
    let [sum, weighted] = [0, 0];
    for (const log of logs) {
      const power = Math.exp(shape * (log - top));
      sum += power;
      weighted += power * (log - top);
    }
    return { sum, weighted };
  };
  const miss = (shape: number): number => {
    const { sum, weighted } = powers(shape);
    return weighted / sum - 1 / shape - mean;
  };
  // π/√6 over the deviation of the logarithms, the moments' answer.
  const guess = 1.2825498301618641 / deviationOf(logs);
  let [low, high] = [guess, guess];
  while (miss(low) > 0) low /= 2;
  while (miss(high) < 0) high *= 2;
  const shape = findRoot(miss, low, high);
  return {
    shape,
    scale: Math.exp(top + Math.log(powers(shape).sum / values.length) / shape),
  };
}

/** ln of the chance of z or less, and of more, of the standardised value. */
const chances: Readonly<Record<Family, (z: number) => readonly [below: number, above: number]>> = {
  normal: (z) => [logNormalTail(-z), logNormalTail(z)],
  lognormal: (z) => [logNormalTail(-z), logNormalTail(z)],
  weibull(z) {
    // ln(1 − exp(−eᶻ)); far down it is z itself.
    const power = Math.exp(z);
    return [z < -37 ? z : Math.log(-Math.expm1(-power)), -power];
  },
};

/** AD = Σ(1 − 2i)/n·[ln F(xᵢ) + ln(1 − F(xₙ₊₁₋ᵢ))] − n, x in rising order. */
export function andersonDarling(values: readonly number[], fitted: Fitted): number {
  const { family, location, scale } = fitted;
  const n = values.length;
  const pairs = sorted(values).map((x) =>
    chances[family](((family === 'normal' ? x : Math.log(x)) - location) / scale),
  );
  const sum = pairs.reduce(
    (all, [below], i) => all + (2 * i + 1) * (below + pairs[n - 1 - i]![1]),
    0,
  );
  return -sum / n - n;
}

/**
 * Normal, fewer than 8 results: AD* = (1 + 0.75/n + 2.25/n²)·AD and its chance, R. B. D'Agostino, M. A.
 * Stephens, Goodness-of-Fit Techniques (1986), table 4.9, from memory.
 */
function fewNormal(statistic: number, n: number): Corrected {
  const corrected = statistic * (1 + 0.75 / n + 2.25 / (n * n));
  const square = corrected * corrected;
  const power = (c: number, first: number, second: number): number =>
    Math.exp(c + first * corrected + second * square);
  if (corrected > 0.6) return { corrected, significance: power(1.2937, -5.709, 0.0186) };
  if (corrected > 0.34) return { corrected, significance: power(0.9177, -4.279, -1.38) };
  const rest = corrected > 0.2 ? power(-8.318, 42.796, -59.938) : power(-13.436, 101.14, -223.73);
  return { corrected, significance: 1 - rest };
}

export interface Corrected {
  /** AD*, corrected for the size of the sample. */
  readonly corrected: number;
  /** Observed significance level: chance of as much or more where the distribution is right. */
  readonly significance: number;
}

/**
 * AD* = (1 + 4/n − 25/n²)·AD and OSL = 1/(1 + exp(−0.48 + 0.78·ln AD* + 4.58·AD*)), normal and lognormal
 * from 8 results; AD* = (1 + 0.2/√n)·AD and OSL = 1/(1 + exp(−0.10 + 1.24·ln AD* + 4.48·AD*)), Weibull.
 * MIL-HDBK-17-1F 8.3.4, the corrections after M. A. Stephens, JASA 69 (1974) 730 and Biometrika 64
 * (1977) 583. From memory, held to sampled chances (reference/coupons.py): right to 0.016 at 0.05.
 * @param n 5 or more
 */
export function significanceOf(statistic: number, n: number, family: Family): Corrected {
  const weibull = family === 'weibull';
  if (!weibull && n < HANDBOOK_FROM) return fewNormal(statistic, n);
  const corrected = statistic * (weibull ? 1 + 0.2 / Math.sqrt(n) : 1 + 4 / n - 25 / (n * n));
  const power = weibull
    ? -0.1 + 1.24 * Math.log(corrected) + 4.48 * corrected
    : -0.48 + 0.78 * Math.log(corrected) + 4.58 * corrected;
  return { corrected, significance: 1 / (1 + Math.exp(power)) };
}

/** @param values 2 or more, not all the same; above 0 unless the family is normal */
export function parametersOf(values: readonly number[], family: Family): Fitted {
  if (family === 'weibull') {
    const { scale, shape } = weibullFit(values);
    return { family, location: Math.log(scale), scale: 1 / shape };
  }
  const used = family === 'normal' ? values : values.map(Math.log);
  return { family, location: meanOf(used), scale: deviationOf(used) };
}

/** @param values as `parametersOf`, 5 or more for a significance that means something */
export function fitFamily(values: readonly number[], family: Family): Fit {
  const fitted = parametersOf(values, family);
  const statistic = andersonDarling(values, fitted);
  return { ...fitted, statistic, ...significanceOf(statistic, values.length, family) };
}
