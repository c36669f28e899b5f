/**
 * The noncentral t distribution by quadrature: T = (Z + δ)/√(V/ν), Z standard normal, V chi-square
 * with ν degrees of freedom (D. B. Owen, Technometrics 10 (1968) 445):
 *
 *     P(T ≤ t) = ∫ Φ(t·y − δ) f(y) dy,   f(y) ∝ y^(ν−1)·exp(−ν·y²/2), y > 0
 *
 * With y = eᵘ the integrand is smooth and dies at both ends, so the trapezoidal rule converges faster
 * than any power of its step (L. N. Trefethen, J. A. C. Weideman, SIAM Review 56 (2014) 385). The
 * weights are divided by their own sum: no gamma function, hence no loss of digits at a large ν.
 */
import { findRoot } from '../numerics/root.ts';
import { normalChance } from './normal-tail.ts';

interface Node {
  readonly y: number;
  readonly weight: number;
}

/** ln of weight below which a node is left out. */
const NEGLIGIBLE = -42;
/** Nodes per width of whichever is narrower, the density of ln y or the step of Φ. */
const STEPS = 8;

/** Nodes in y and their weights, which add up to 1. */
function nodes(freedom: number, noncentrality: number): readonly Node[] {
  const step = 1 / (STEPS * Math.sqrt(Math.max(2 * freedom, noncentrality * noncentrality, 2)));
  // ln of y·f(y), zero at its peak y = 1: ν(u + ½ − ½e^(2u)).
  const height = (u: number): number => freedom * (u - 0.5 * Math.expm1(2 * u));
  const found: { y: number; weight: number }[] = [{ y: 1, weight: 1 }];
  for (const side of [-1, 1]) {
    for (let k = 1; ; k++) {
      const u = side * k * step;
      const log = height(u);
      if (log < NEGLIGIBLE) break;
      found.push({ y: Math.exp(u), weight: Math.exp(log) });
    }
  }
  const sum = found.reduce((all, { weight }) => all + weight, 0);
  return found.map(({ y, weight }) => ({ y, weight: weight / sum }));
}

const chanceAt = (at: readonly Node[], t: number, noncentrality: number): number =>
  at.reduce((sum, { y, weight }) => sum + weight * normalChance(t * y - noncentrality), 0);

/** P(T ≤ t), any ν ≥ 1, to about 1e-13. */
export const noncentralTChance = (t: number, freedom: number, noncentrality: number): number =>
  chanceAt(nodes(freedom, noncentrality), t, noncentrality);

/** The t that T does not exceed with the given chance (0 to 1, neither of them). */
export function noncentralTQuantile(
  chance: number,
  freedom: number,
  noncentrality: number,
): number {
  const at = nodes(freedom, noncentrality);
  const miss = (t: number): number => chanceAt(at, t, noncentrality) - chance;
  // T scatters about δ by 1 and by the share that √(V/ν) does.
  let reach = 1 + Math.abs(noncentrality) / Math.sqrt(freedom);
  while (miss(noncentrality - reach) > 0) reach *= 2;
  let above = 1 + Math.abs(noncentrality) / Math.sqrt(freedom);
  while (miss(noncentrality + above) < 0) above *= 2;
  return findRoot(miss, noncentrality - reach, noncentrality + above);
}
