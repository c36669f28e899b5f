/** Exact limits from counts: the share behind so many of so many, and where a percentile lies. */
import { incompleteBeta, inverseIncompleteBeta } from './incomplete-beta.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Confidence of every interval here: two-sided. */
export const CONFIDENCE = 0.95;

/**
 * Limits of the share of which `found` of `of` were seen, by the exact binomial (C. J. Clopper, E. S.
 * Pearson, Biometrika 26 (1934) 404): the shares at which so many or more, so many or fewer, have the
 * chance (1 − confidence)/2. Never less than that confidence; 0 found gives the low limit 0.
 */
export function shareInterval(found: number, of: number, confidence = CONFIDENCE): Interval {
  const tail = (1 - confidence) / 2;
  return {
    low: found <= 0 ? 0 : inverseIncompleteBeta(tail, found, of - found + 1),
    high: found >= of ? 1 : inverseIncompleteBeta(1 - tail, found + 1, of - found),
  };
}

/** Chance of k or fewer of n at the share p: 1 − I_p(k + 1, n − k) (DLMF 8.17.24). */
export const atMost = (k: number, n: number, p: number): number =>
  k < 0 ? 0 : k >= n ? 1 : 1 - incompleteBeta(p, k + 1, n - k);

/** Smallest k with `atMost(k)` ≥ chance. */
function binomialQuantile(chance: number, n: number, p: number): number {
  let [low, high] = [-1, n];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (atMost(middle, n, p) >= chance) high = middle;
    else low = middle;
  }
  return high;
}

export interface Percentile extends Interval {
  readonly share: number;
  readonly value: number;
}

/**
 * The percentile of sorted samples and its limits, both samples themselves, whatever the distribution.
 * The value is the smallest sample that at least `share` of them do not exceed, x(⌈share·n⌉). With
 * K the number of samples below the true percentile, binomial, x(l) ≤ it ≤ x(u) unless K < l or
 * K ≥ u; l and u leave at most (1 − confidence)/2 on either side. Where no sample is low (high) enough for
 * that, the limit is the lowest (highest).
 */
export function percentileOf(
  sorted: ArrayLike<number>,
  share: number,
  confidence = CONFIDENCE,
): Percentile {
  const n = sorted.length;
  const rank = (k: number): number => sorted[Math.min(Math.max(k, 1), n) - 1]!;
  const tail = (1 - confidence) / 2;
  // P(K < l) = atMost(l − 1) ≤ tail, and P(K ≥ u) = 1 − atMost(u − 1) ≤ tail.
  const first = binomialQuantile(tail, n, share);
  const l = atMost(first, n, share) <= tail ? first + 1 : first;
  const u = binomialQuantile(1 - tail, n, share) + 1;
  return { share, value: rank(Math.ceil(share * n)), low: rank(l), high: rank(u) };
}
