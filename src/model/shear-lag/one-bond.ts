/**
 * Shear lag of one bondline.
 *
 *   τ″ = ω²τ,  ω² = a²·c·k·(1/K_t + 1/K_s)
 *   τ′(0) = k(−aP/K_s + Δε),  τ′(L) = k(aP/K_t + Δε),  ∫ a·c·τ dx = P
 *
 * Source: O. Volkersen (1938), as extended by a thermal mismatch Δε = (α_t − α_s)·ΔT; written about
 * the middle of the overlap. Valid for thin walls that stay straight; uniform walls only.
 */
import { type BondLaw, type Channel, thermalMismatch } from '../lap/problem.ts';
import { makeBasis } from './basis.ts';
import type { ElasticSolution, Part } from './elastic.ts';

/** Decay rate of the shear from an end, 1/mm. */
export function decayRate(channel: Channel, bond: BondLaw): number {
  const lever = channel.levers[0]!;
  const compliance = 1 / channel.tube.stiffness + 1 / channel.outers[0]!.stiffness;
  return lever * Math.sqrt(bond.width * bond.stiffness * compliance);
}

export function solveOneBond(channel: Channel, bond: BondLaw, length: number): ElasticSolution {
  const lever = channel.levers[0]!;
  const omega = decayRate(channel, bond);
  const basis = makeBasis(omega, length);
  const transfer = lever * bond.width;
  const imbalance = 1 / channel.tube.stiffness - 1 / channel.outers[0]!.stiffness;
  const oddPerSlope = basis.tanh / (2 * omega);
  const part = (even: number, odd: number): Part => ({
    shear: (_j, x) => even * basis.even(x) + odd * basis.odd(x),
    outerForce: (_j, x) => transfer * (even * basis.evenBeyond(x) + odd * basis.oddBeyond(x)),
    outerStretch: () =>
      (transfer * (even * basis.evenArea + odd * basis.oddArea)) / channel.outers[0]!.stiffness,
  });
  const load = channel.load;
  return {
    mechanical: part(
      (load * omega) / (2 * transfer * basis.tanh),
      bond.stiffness * lever * load * imbalance * oddPerSlope,
    ),
    thermal: part(0, 2 * bond.stiffness * thermalMismatch(channel, 0) * oddPerSlope),
    omegaMax: omega,
    omegaMin: omega,
  };
}
