/** Where each bond passes from elastic to plastic, and which cells lie on which side. */
import { type LapProblem, slipAtYield } from '../lap/problem.ts';
import { findRoot } from '../numerics/root.ts';
import { layoutOf } from './equations.ts';
import { interpolator } from './interpolate.ts';
import type { Regime } from './law.ts';
import type { Chain } from './system.ts';

/** Size of the slip of bond j at node i over the slip at yield. */
export function slipRatio(problem: LapProblem, chain: Chain, j: number, i: number): number {
  const { bonds, channels, unknowns } = layoutOf(problem);
  const at = i * unknowns;
  const s0 = chain.values[at + 2 * j]!;
  const s1 = channels > 1 ? chain.values[at + 2 * (bonds + j)]! : 0;
  return Math.hypot(s0, s1) / slipAtYield(problem.bonds[j]!);
}

/**
 * Rising positions, for each bond, where |s| passes the slip at yield: on the cubic through the slips
 * and slip rates at both ends of the cell, so that a front is known better than the cell is fine.
 */
export function findFronts(problem: LapProblem, chain: Chain): number[][] {
  const { bonds, channels, unknowns } = layoutOf(problem);
  const at = interpolator(problem, chain);
  const out = new Float64Array(unknowns);
  return problem.bonds.map((bond, j) => {
    const atYield = slipAtYield(bond);
    const excess = (x: number): number => {
      at(x, out);
      return Math.hypot(out[2 * j]!, channels > 1 ? out[2 * (bonds + j)]! : 0) / atYield - 1;
    };
    const fronts: number[] = [];
    for (let i = 1; i < chain.nodes.length; i++) {
      const a = slipRatio(problem, chain, j, i - 1) - 1;
      const b = slipRatio(problem, chain, j, i) - 1;
      if (a > 0 === b > 0) continue;
      const x0 = chain.nodes[i - 1]!;
      const x1 = chain.nodes[i]!;
      // Zero to rounding at a node that already stands on the front.
      const inner = excess(x0) * excess(x1) < 0;
      fronts.push(
        inner
          ? findRoot(excess, x0, x1, 1e-9 * problem.length)
          : Math.abs(a) < Math.abs(b)
            ? x0
            : x1,
      );
    }
    return fronts;
  });
}

/** True where bond j is plastic at the overlap's root end. */
export const plasticAtRoot = (problem: LapProblem, chain: Chain, j: number): boolean =>
  slipRatio(problem, chain, j, 0) > 1;

/** Breakpoints of the mesh: ends and fronts, those closer than `least` merged. */
export function breakpointsOf(
  fronts: readonly number[][],
  length: number,
  least: number,
): number[] {
  const points = [0];
  for (const x of fronts.flat().sort((a, b) => a - b)) {
    if (x - points[points.length - 1]! > least && length - x > least) points.push(x);
  }
  points.push(length);
  return points;
}

/** Each cell's branch for each bond, by the cell's middle against the fronts. */
export function regimesOf(
  nodes: Float64Array,
  fronts: readonly number[][],
  startsPlastic: readonly boolean[],
): (readonly Regime[])[] {
  const regimes: (readonly Regime[])[] = [];
  const passed = fronts.map(() => 0);
  let current: readonly Regime[] | null = null;
  for (let i = 1; i < nodes.length; i++) {
    const middle = (nodes[i - 1]! + nodes[i]!) / 2;
    for (let j = 0; j < fronts.length; j++) {
      while (passed[j]! < fronts[j]!.length && fronts[j]![passed[j]!]! < middle) {
        passed[j]!++;
        current = null;
      }
    }
    // Cells between the same fronts share one list.
    current ??= passed.map(
      (count, j): Regime => ((count % 2 === 0) === startsPlastic[j]! ? 'plastic' : 'elastic'),
    );
    regimes.push(current);
  }
  return regimes;
}
