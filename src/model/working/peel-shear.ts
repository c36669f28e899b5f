/** First yield under peel and shear, and fracture: elastic layered shells. */
import { type Criterion, type Step, step } from '../card.ts';
import { openingEnergy, slidingEnergy } from '../joint/knockdown.card.ts';
import { fractureAt } from '../joint/knockdown.ts';
import { constrainedModulus } from '../layered/of-joint.ts';
import {
  mixed,
  openingRate,
  peelShearCold,
  peelWithShear,
  slidingRate,
} from '../margins/peel-factor.card.ts';
import { releaseRates } from '../margins/peel-factor.ts';
import { bondIndex, type GivenMode, marginSteps } from './context.ts';
import {
  elasticPeelStep,
  elasticShearStep,
  peelOf,
  peelStrengthStep,
  pullStep,
  shearOf,
  spotAt,
} from './layer.ts';
import { ELASTIC, layerSteps, yieldStep } from './peel.ts';

export function peelShearWorking(given: GivenMode): Step[] {
  const { state, result } = given;
  const j = bondIndex(state, result.part);
  const { reached, theta, x } = result;
  const spot = spotAt(given, theta, reached, j, x);
  const [sigma, tau] = [peelOf(spot.sample, reached), shearOf(spot.sample, reached)];
  const sigma_p = state.adhesives[j]!.peelStrength!;
  const tau_p = state.bonds[j]!.shearYield;
  const values = { sigma, sigma_p, tau, tau_p };
  const use = (Math.max(sigma, 0) / sigma_p) ** 2 + (tau / tau_p) ** 2;
  return [
    ...layerSteps(given, j),
    peelStrengthStep(given, j),
    yieldStep(given, j),
    pullStep(given, theta, 'peel', { bond: j, x: spot.sample.x }),
    pullStep(given, theta, 'shear', { bond: j, x: spot.sample.x }),
    elasticPeelStep(spot, reached),
    elasticShearStep(spot, reached),
    reached === 0 ? step(peelShearCold, values, 0) : step(peelWithShear, values, use, ELASTIC),
    ...marginSteps(given),
  ];
}

/** The factor is sought to 1e-12 of 1 or more, which is little of a factor far below 1. */
const cracked = (factor: number): Criterion => ({
  target: 1,
  tolerance: ELASTIC.tolerance + 1e-10 / Math.min(factor, 1),
  why: 'root of the mix, sought to 1e-12 of a factor of 1',
});

export function fractureWorking(given: GivenMode): Step[] {
  const { state, adhesive, result } = given;
  const j = bondIndex(state, result.part);
  const { reached, theta, x } = result;
  const own = state.adhesives[j]!;
  const spot = spotAt(given, theta, reached, j, x);
  const stiffness = {
    gap: state.assembly.bonds[j]!.gap,
    normal: constrainedModulus(own),
    shear: own.shearModulus,
  };
  const { modeI, modeII } = releaseRates(spot.sample, reached, stiffness);
  const { left } = state.ledgers[j]!;
  const entered = adhesive.fracture!;
  const limit = fractureAt(entered, left);
  const use = (modeI / limit.modeI) ** limit.exponent + (modeII / limit.modeII) ** limit.exponent;
  return [
    ...layerSteps(given, j),
    step(openingEnergy, { G_0: entered.modeI, K: left }, limit.modeI),
    step(slidingEnergy, { G_0: entered.modeII, K: left }, limit.modeII),
    pullStep(given, theta, 'peel', { bond: j, x: spot.sample.x }),
    pullStep(given, theta, 'shear', { bond: j, x: spot.sample.x }),
    elasticPeelStep(spot, reached),
    elasticShearStep(spot, reached),
    step(
      openingRate,
      { h: stiffness.gap, sigma: peelOf(spot.sample, reached), E_c: stiffness.normal },
      modeI,
    ),
    step(
      slidingRate,
      { h: stiffness.gap, tau: shearOf(spot.sample, reached), G: stiffness.shear },
      modeII,
    ),
    step(
      mixed,
      {
        G_I: modeI,
        G_Ic: limit.modeI,
        G_II: modeII,
        G_IIc: limit.modeII,
        m: limit.exponent,
      },
      use,
      reached === 0 ? undefined : cracked(reached),
    ),
    ...marginSteps(given),
  ];
}
