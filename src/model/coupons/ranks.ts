/** Basis values without a distribution: ranks of large samples, Hanson and Koopmans for small ones. */
import { ModelError } from '../errors.ts';
import { findRoot } from '../numerics/root.ts';
import { atMost } from '../scatter/binomial.ts';
import { incompleteBeta, logGamma } from '../scatter/incomplete-beta.ts';
import { type BasisKind, CONFIDENCE, SHARE_BELOW } from './tolerance-factor.ts';

/** Results from which a rank answers; below them Hanson and Koopmans. */
export const LEAST_FOR_RANKS: Readonly<Record<BasisKind, number>> = { A: 299, B: 29 };

/**
 * The rank, from 1 at the lowest, of the result that is the basis value of n: the highest r with
 * P(r or more of n lie below the quantile) ≥ 95 %, exact binomial. MIL-HDBK-17-1F 8.3.4.5.1.
 * @throws ModelError where not even the lowest result will do: fewer than 29 (B) or 299 (A)
 */
export function basisRank(n: number, kind: BasisKind): number {
  const share = SHARE_BELOW[kind];
  let [low, high] = [0, n + 1];
  while (high - low > 1) {
    const r = Math.floor((low + high) / 2);
    if (1 - atMost(r - 1, n, share) >= CONFIDENCE) low = r;
    else high = r;
  }
  if (low === 0) {
    throw new ModelError(
      'results',
      `The ${kind}-basis by ranks needs ${LEAST_FOR_RANKS[kind]} results; there are ${n}.`,
    );
  }
  return low;
}

/** r of the B-basis for n = 2 to 28: MIL-HDBK-17-1F Vol. 1 8.3.4.5.2 and its table, from memory. */
const ORDER_B = [
  2, 3, 4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 8, 8, 8, 8, 9, 9, 10, 10, 10, 11, 11, 11, 11, 11, 12,
];

/** Which result, counted from the lowest, is extrapolated from: r of the table (B), the highest (A). */
export const orderUsed = (n: number, kind: BasisKind): number =>
  kind === 'A' ? n : ORDER_B[n - 2]!;

/** Half the nodes of the quadrature, and their step: tanh-sinh, converged to 1e-13. */
const [HALF, STEP] = [60, 0.06];

/**
 * Chance that x(r)·(x(1)/x(r))^k lies below the quantile p, at worst over all distributions with a
 * log-concave chance F of ln x, where the basis value is no higher than the lowest result (D. L. Hanson,
 * L. H. Koopmans, Annals of Mathematical Statistics 35 (1964) 1561; M. G. Vangel, Communications in
 * Statistics: Simulation 23 (1994) 1137). Then F of the basis value is at most
 * U(r)·(U(1)/U(r))^k, U the ordered uniform numbers, and U(1)/U(r) is the lowest of r − 1 others:
 *
 *     I_p(r, n − r + 1) + ∫_p^1 b(v)·[1 − (1 − (p/v)^(1/k))^(r − 1)] dv
 *
 * with b the beta density of U(r).
 */
function worstChance(k: number, n: number, r: number, p: number): number {
  const last = n - r + 1;
  const front = logGamma(n + 1) - logGamma(r) - logGamma(last);
  let sum = 0;
  for (let i = -HALF; i <= HALF; i++) {
    const t = i * STEP;
    const s = Math.PI * Math.sinh(t);
    // v = p + (1 − p)·share; 1 − v is kept by itself.
    const rest = (1 - p) / (1 + Math.exp(s));
    const share = 1 / (1 + Math.exp(-s));
    const v = p + (1 - p) * share;
    const weight = rest * share * Math.PI * Math.cosh(t) * STEP;
    const density = Math.exp(front + (r - 1) * Math.log(v) + (last - 1) * Math.log(rest));
    const below = 1 - (1 - (p / v) ** (1 / k)) ** (r - 1);
    sum += weight * density * below;
  }
  return incompleteBeta(p, r, last) + sum;
}

const kept = new Map<string, number>();

/**
 * The k of Hanson and Koopmans, solved for: the published tables round it.
 * @param n 2 to 28 (B) or 298 (A)
 * @throws ModelError outside these
 */
export function hansonKoopmansFactor(n: number, kind: BasisKind): number {
  if (!(Number.isInteger(n) && n >= 2 && n < LEAST_FOR_RANKS[kind])) {
    const most = LEAST_FOR_RANKS[kind] - 1;
    throw new ModelError(
      'results',
      `The ${kind}-basis after Hanson and Koopmans is for 2 to ${most} results; there are ${n}.`,
    );
  }
  const key = `${kind}${n}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const miss = (k: number): number =>
    worstChance(k, n, orderUsed(n, kind), SHARE_BELOW[kind]) - CONFIDENCE;
  const factor = findRoot(miss, 0.9, 200, 1e-13);
  kept.set(key, factor);
  return factor;
}

/** x(r)·(x(1)/x(r))^k of sorted values above 0. */
export function hansonKoopmansValue(sorted: readonly number[], kind: BasisKind): number {
  const n = sorted.length;
  const [lowest, upper] = [sorted[0]!, sorted[orderUsed(n, kind) - 1]!];
  return upper * (lowest / upper) ** hansonKoopmansFactor(n, kind);
}
