/** One-sided tolerance factors of a normal sample. */
import { ModelError } from '../errors.ts';
import { normalQuantile } from '../scatter/quantiles.ts';
import { noncentralTQuantile } from './noncentral-t.ts';

/** A: 99 % of all are stronger, B: 90 %; both with 95 % confidence. */
export type BasisKind = 'A' | 'B';

export const BASIS_KINDS: readonly BasisKind[] = ['A', 'B'];
/** Share of all results that lies below the value sought. */
export const SHARE_BELOW: Readonly<Record<BasisKind, number>> = { A: 0.01, B: 0.1 };
export const CONFIDENCE = 0.95;

/** −z of the share below: 2.326 (A), 1.282 (B). */
export const QUANTILE: Readonly<Record<BasisKind, number>> = {
  A: -normalQuantile(SHARE_BELOW.A),
  B: -normalQuantile(SHARE_BELOW.B),
};

/**
 * k for which mean − k·s lies below the quantile with the confidence wanted, exactly (D. B. Owen,
 * Technometrics 10 (1968) 445): k = t′(γ; n − 1, z·√n)/√n, t′ the quantile of the noncentral t.
 * @param n results, whole, 2 or more
 * @param below share of all that lies below the value sought, 0 to 1, neither of them
 * @throws ModelError below 2 results: one says nothing of scatter
 */
export function toleranceFactor(n: number, below: number, confidence = CONFIDENCE): number {
  if (!(Number.isInteger(n) && n >= 2)) {
    throw new ModelError('results', `A tolerance factor needs 2 results or more; there are ${n}.`);
  }
  const z = -normalQuantile(below);
  return noncentralTQuantile(confidence, n - 1, z * Math.sqrt(n)) / Math.sqrt(n);
}

/**
 * The same for a straight line fitted to results, at a place where the fitted value has the variance
 * h·σ² (h = 1/n in a sample without a line): k = √h·t′(γ; ν, z/√h), value − k·s. Owen, as above.
 * @param freedom degrees of freedom of s
 */
export function lineFactor(
  h: number,
  freedom: number,
  below: number,
  confidence = CONFIDENCE,
): number {
  const root = Math.sqrt(h);
  return root * noncentralTQuantile(confidence, freedom, -normalQuantile(below) / root);
}

const kept = new Map<string, number>();

/** `toleranceFactor` of a basis value; each is computed once. */
export function basisFactor(n: number, kind: BasisKind): number {
  const key = `${kind}${n}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const factor = toleranceFactor(n, SHARE_BELOW[kind]);
  kept.set(key, factor);
  return factor;
}
