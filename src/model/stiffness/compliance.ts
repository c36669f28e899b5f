/**
 * How far the tube moves at the mouth against the metal at the root, per load at the mouth.
 *
 *   C = [ s_j(L)/a_j + ∫ N_j/K_j dx ] / P        along outer adherend j to the mouth, then across bond j
 *
 * The same for every bond, because spigot and socket are one piece of metal behind the root. With one
 * bond and uniform walls it is, with r = K/(K_t + K_s) of tube and sleeve and λ = 1/K_t + 1/K_s,
 *
 *   C = L/(K_t + K_s) + (λ/ω)·[ (r_t² + r_s²)·coth ωL + 2·r_t·r_s/sinh ωL ]
 *
 * Limits: a rigid bond leaves the composite section L/(K_t + K_s); a very soft one its own slip
 * 1/Σ(a²·c·k·L); past a few 1/ω the ends cost a constant beyond the composite section. Half of C·P² is
 * the energy of walls and bonds. Elastic, loads alone: temperature moves the joint but not its stiffness.
 */
import type { BondLaw, Channel } from '../lap/problem.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';

/** @param channel of any generalised force; its load must not be zero. Movement per load. */
export function complianceOf(channel: Channel, bonds: readonly BondLaw[], length: number): number {
  const { mechanical } = solveElastic(channel, bonds, length);
  // The stiffer bond of two, whose slip is the smaller part, loses the fewest digits.
  const weight = (j: number): number =>
    channel.levers[j]! ** 2 * bonds[j]!.width * bonds[j]!.stiffness;
  const j = bonds.length === 2 && weight(1) > weight(0) ? 1 : 0;
  const slip = mechanical.shear(j, length) / bonds[j]!.stiffness;
  return (slip / channel.levers[j]! + mechanical.outerStretch(j)) / channel.load;
}
