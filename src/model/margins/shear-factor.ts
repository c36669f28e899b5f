/**
 * Load factor at which the elastic shear first reaches a limit, temperature held fixed:
 * the positive root of |τ_thermal + λ·τ_mechanical| = limit, worst over both bonds and along them.
 */
import type { LocalProblem } from '../joint/local-problem.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';

export interface ShearReached {
  /** Infinity when no load reaches the limit. */
  readonly factor: number;
  readonly bond: number;
  readonly x: number;
}

/** Stations between the ends. With one bond the resultant is convex along x: the ends are enough. */
const INTERIOR = 8;

/** A factor is lower than another below this share of it: of places that are equal to rounding the first counts. */
export const BELOW = 1 - 1e-9;

/** What bounds factors from below is taken this share of itself: by more than rounding and the tolerance of roots. */
export const SURELY = 1 - 1e-6;

/**
 * Root of |(t + λm, λn)| = limit for λ ≥ 0: how much load the fixed stress t leaves room for.
 * Scales apply to the two components alike. 0 when t alone is enough.
 */
export function factorTo(limit: number, t: number, m: number, n: number): number {
  const room = limit * limit - t * t;
  if (room <= 0) return 0;
  const a = m * m + n * n;
  if (a === 0) return Number.POSITIVE_INFINITY;
  const b = t * m;
  const root = Math.sqrt(b * b + a * room);
  // The form without cancellation for each sign of b.
  return b > 0 ? room / (b + root) : (root - b) / a;
}

/** Places along the overlap at which the resultant is looked at. */
export function stationsOf(bondCount: number, length: number): number[] {
  const count = bondCount === 1 ? 2 : INTERIOR + 2;
  return Array.from({ length: count }, (_v, i) =>
    i === count - 1 ? length : (length * i) / (count - 1),
  );
}

/**
 * @param limits stress for each bond, MPa
 * @param end what the loads are multiplied by besides the factor: below 0 for the reversed end of a cycle
 * @param share of temperature that acts: 0 for the loads alone
 */
export function shearFactor(
  problem: LocalProblem,
  limits: readonly number[],
  end = 1,
  share = 1,
): ShearReached {
  const { length, bonds, channels, axial, hoop } = problem;
  const solutions = channels.map((channel) => solveElastic(channel, bonds, length));
  const stations = stationsOf(bonds.length, length);
  let best: ShearReached = { factor: Number.POSITIVE_INFINITY, bond: 0, x: length };
  for (let j = 0; j < bonds.length; j++) {
    for (const x of stations) {
      const t = axial >= 0 && share !== 0 ? share * solutions[axial]!.thermal.shear(j, x) : 0;
      const m = axial >= 0 ? solutions[axial]!.mechanical.shear(j, x) : 0;
      const n = hoop >= 0 ? solutions[hoop]!.mechanical.shear(j, x) : 0;
      const factor = factorTo(limits[j]!, t, end * m, end * n);
      if (factor < best.factor * BELOW) best = { factor, bond: j, x };
    }
  }
  return best;
}
