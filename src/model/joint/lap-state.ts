/**
 * One state of the lap, however it was found: closed form, exact plastic, or chain. Everything that
 * draws or judges a bond reads it through this.
 */

import { layoutOf } from '../chain/equations.ts';
import { findFronts, plasticAtRoot } from '../chain/fronts.ts';
import { interpolator } from '../chain/interpolate.ts';
import { solveChain } from '../chain/solve.ts';
import type { Chain } from '../chain/system.ts';
import { isTapered, type LapProblem, scaleLoads, slipAtYield } from '../lap/problem.ts';
import { solvePlastic } from '../plastic/one-bond.ts';
import { combine } from '../shear-lag/elastic.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface LapState {
  /** Slip in channel q of bond j at x, mm. */
  slip(q: number, j: number, x: number): number;
  /** Shear in channel q of bond j at x, MPa. */
  shear(q: number, j: number, x: number): number;
  /** Force in outer adherend j of channel q at x, N. */
  outerForce(q: number, j: number, x: number): number;
  /** Stretches of bond j where the adhesive has yielded. */
  plastic(j: number): readonly Stretch[];
}

/** True when the exact one-bond solution holds: one bond, one channel, uniform walls. */
export const hasExactPlastic = (problem: LapProblem): boolean =>
  problem.bonds.length === 1 && problem.channels.length === 1 && !isTapered(problem.channels[0]!);

/** Elastic state at a load factor, yield or not. */
export function elasticState(problem: LapProblem, factor: number): LapState {
  const parts = problem.channels.map((channel) =>
    combine(solveElastic(channel, problem.bonds, problem.length), factor),
  );
  return {
    slip: (q, j, x) => parts[q]!.shear(j, x) / problem.bonds[j]!.stiffness,
    shear: (q, j, x) => parts[q]!.shear(j, x),
    outerForce: (q, j, x) => parts[q]!.outerForce(j, x),
    plastic: () => [],
  };
}

/**
 * State with yielding at a load factor.
 * @throws ModelError or RangeError when the bond cannot carry it
 */
export function plasticState(problem: LapProblem, factor: number): LapState {
  if (hasExactPlastic(problem)) {
    const [channel] = scaleLoads(problem, factor).channels;
    const solved = solvePlastic(channel!, problem.bonds[0]!, problem.length);
    const { length } = problem;
    const stretches: Stretch[] = [];
    if (solved.plasticAtRoot > 0) stretches.push({ from: 0, to: solved.plasticAtRoot });
    if (solved.plasticAtMouth > 0) {
      stretches.push({ from: length - solved.plasticAtMouth, to: length });
    }
    return {
      slip: (_q, _j, x) => solved.slip(x),
      shear: (_q, _j, x) => solved.shear(x),
      outerForce: (_q, _j, x) => solved.outerForce(x),
      plastic: () => stretches,
    };
  }
  return chainState(problem, solveChain(problem, { kind: 'load', factor }));
}

export function chainState(problem: LapProblem, chain: Chain): LapState {
  const { bonds, unknowns } = layoutOf(problem);
  const at = interpolator(problem, chain);
  const out = new Float64Array(unknowns);
  let last = Number.NaN;
  const read = (x: number): Float64Array => {
    if (x !== last) at(x, out);
    last = x;
    return out;
  };
  const slip = (q: number, j: number, x: number): number => read(x)[2 * (q * bonds + j)]!;
  return {
    slip,
    shear: (q, j, x) => {
      const size = Math.hypot(...problem.channels.map((_c, p) => slip(p, j, x)));
      const atYield = slipAtYield(problem.bonds[j]!);
      return (problem.bonds[j]!.stiffness * slip(q, j, x)) / Math.max(1, size / atYield);
    },
    outerForce: (q, j, x) => read(x)[2 * (q * bonds + j) + 1]!,
    plastic: (j) => {
      const marks = [0, ...findFronts(problem, chain)[j]!, problem.length];
      let inside = plasticAtRoot(problem, chain, j);
      const stretches: Stretch[] = [];
      for (let i = 1; i < marks.length; i++) {
        if (inside) stretches.push({ from: marks[i - 1]!, to: marks[i]! });
        inside = !inside;
      }
      return stretches;
    },
  };
}

/** Size of the shear in bond j at x, all channels together. */
export function resultant(problem: LapProblem, state: LapState, j: number, x: number): number {
  if (problem.channels.length === 1) return Math.abs(state.shear(0, j, x));
  return Math.hypot(state.shear(0, j, x), state.shear(1, j, x));
}
