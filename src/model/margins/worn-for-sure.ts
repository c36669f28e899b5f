/**
 * Whether temperature alone takes an end of a bond past its slip at failure, from equilibrium alone: where the bond
 * flows over nearly all its length no numerical solution is needed, and none would be found easily.
 *
 * The slip of bond j changes along the overlap by the free mismatch, less the strain that forces in the walls bring.
 * No wall takes more than its bonds give from end to end, a·w·τp·L. With zero slip somewhere in between or not, one
 * of the ends then slips by at least half the change.
 */
import type { LocalProblem } from '../joint/local-problem.ts';
import { type Member, thermalMismatch } from '../lap/problem.ts';

const softest = ({ stiffness, taper }: Member): number =>
  Math.min(stiffness, taper?.middle ?? stiffness, taper?.mouth ?? stiffness);

/** A lower bound of the larger end slip of bond j without load, mm; 0 where nothing is sure. */
export function slipForSure(problem: LocalProblem, j: number): number {
  const channel = problem.channels[problem.axial];
  if (!channel) return 0;
  const given = problem.bonds.map(
    ({ width, shearYield }, k) => channel.levers[k]! * width * shearYield * problem.length,
  );
  const inTube = given.reduce((sum, force) => sum + force, 0);
  const strain = inTube / softest(channel.tube) + given[j]! / softest(channel.outers[j]!);
  // Only forces have a lever.
  const change = Math.abs(thermalMismatch(channel, j)) - channel.levers[j]! * strain;
  return Math.max((change * problem.length) / 2, 0);
}
