/**
 * Where around the tube the bond is weakest once it may flow: not where it yields first. Under force,
 * moment, torque and shear together the two can be tens of degrees and ten per cent of strength apart.
 */
import { bondStrength } from './bond-strength.ts';
import { clockings, worstClockings } from './clocking.ts';
import { type ModeResult, placeOf } from './result.ts';
import { shearFactor } from './shear-factor.ts';
import type { JointState } from './state.ts';

/**
 * Clockings whose mechanical shear alone is within this of the largest are followed into the plastic
 * range. Thermal stress decides which end yields first, but moves the strength by less than this.
 */
const FOLLOW = 2;

/**
 * Clockings at which the bond's strength can be lowest. First yield is worst where temperature adds to
 * the load; a bond with room to flow gives way where the load itself is largest, at an end or in sum.
 */
export function strengthClockings(
  state: JointState,
  byYield: readonly { readonly theta: number }[],
): number[] {
  const { assembly, bonds, loadCase } = state;
  const { loads } = loadCase;
  const limits = bonds.map((bond) => bond.shearYield);
  const cold = (theta: number): number => shearFactor(state.at(theta), limits, 1, 0).factor;
  const candidates = byYield.map(({ theta }) => theta);
  if (clockings(assembly.flat, loads).length > 2) {
    const bySum = (theta: number): number =>
      1 / Math.hypot(...state.at(theta).channels.map(({ load }) => load));
    for (const at of [cold, bySum]) {
      for (const { theta } of worstClockings(assembly.flat, loads, at)) {
        if (candidates.every((known) => apart(known, theta) > SAME)) candidates.push(theta);
      }
    }
  }
  const factors = candidates.map(cold);
  const coldest = Math.min(...factors);
  return candidates.filter((_theta, i) => factors[i]! <= coldest * FOLLOW);
}

/** Clockings closer than this are one for a first look; `refineStrength` closes in. */
const SAME = 0.05;

const apart = (a: number, b: number): number => {
  const turn = Math.abs(a - b) % (2 * Math.PI);
  return Math.min(turn, 2 * Math.PI - turn);
};

/**
 * The strength's own worst clocking near the one that was found, by parabolas through three: the
 * candidates are those of first yield and largest load, and the lowest strength lies a little beside.
 */
export function refineStrength(state: JointState, found: ModeResult): ModeResult {
  const { assembly, bonds, loadCase } = state;
  if (found.mode !== 'adhesive-strain' || found.reached === 0) return found;
  if (clockings(assembly.flat, loadCase.loads).length <= 2) return found;
  const limits = bonds.map((bond) => bond.shearYield);
  let best = found;
  const at = (theta: number): number => {
    const problem = state.at(theta);
    const strength = bondStrength(problem, shearFactor(problem, limits));
    if (!strength) return Number.POSITIVE_INFINITY;
    if (strength.factor < best.reached) {
      const x = strength.end === 'root' ? 0 : assembly.overlap;
      best = {
        ...best,
        reached: strength.factor,
        margin: strength.factor / best.asked - 1,
        part: assembly.bonds[strength.bond]!.name,
        place: placeOf(x, assembly.overlap),
        x,
        theta: (theta + 2 * Math.PI) % (2 * Math.PI),
        wholeBondFlows: strength.wholeBondFlows,
      };
    }
    return strength.factor;
  };
  let center = found.theta;
  let middle = found.reached;
  for (let step = 0.12; step > 0.005; step /= 3) {
    const [before, after] = [at(center - step), at(center + step)];
    const bend = before - 2 * middle + after;
    const vertex = bend > 0 ? ((before - after) / (2 * bend)) * step : Number.NaN;
    if (Math.abs(vertex) <= 2 * step) at(center + vertex);
    center = best.theta;
    middle = best.reached;
  }
  return best;
}
