/** Peel and failure between plies: the layered shells with the shear capped at yield. */
import { type Criterion, type Step, step } from '../card.ts';
import { SHEAR_YIELD } from '../joint/adhesive-state.card.ts';
import { adhesiveModes } from '../margins/adhesive-modes.ts';
import { bondFields, pullOfPeel } from '../margins/bond-fields.ts';
import {
  cappedPeel,
  cappedShear,
  peelUse,
  pliesUse,
  shearDecides,
} from '../margins/capped-factor.card.ts';
import { elasticReach, peeledCold, pliesCold, pliesElastic } from '../margins/peel-factor.card.ts';
import { peelFactor } from '../margins/peel-factor.ts';
import {
  type Found,
  interlaminarFactor,
  interlaminarOf,
  interlaminarUse,
  worst,
} from '../margins/peel-modes.ts';
import { knockdownSteps, propertyStep } from './adhesive.ts';
import { bondIndex, type Given, type GivenMode, marginSteps } from './context.ts';
import {
  elasticPeelStep,
  elasticShearStep,
  estimateSteps,
  moduliSteps,
  openingSteps,
  peelOf,
  peelStrengthStep,
  pullStep,
  type Spot,
  shearOf,
  spotAt,
} from './layer.ts';

export const ELASTIC: Criterion = {
  target: 1,
  tolerance: 1e-6,
  why: 'root of the elastic solution; a flat single lap bends as the factor of its last round asks',
};
const CAPPED: Criterion = {
  target: 1,
  tolerance: 1e-4,
  why: 'the capped factor is sought to 1e-6, and its zones settle to their own tolerance',
};

/** Knockdowns, moduli and the stiffness across the bond, common to all modes of peel. */
export const layerSteps = (given: Given, j: number): Step[] => [
  ...knockdownSteps(given, j),
  ...moduliSteps(given, j),
  ...openingSteps(given, j),
];

export const yieldStep = (given: Given, j: number): Step =>
  propertyStep(given, j, SHEAR_YIELD, 'shearYield');

export function peelWorking(given: GivenMode): Step[] {
  const { state, result } = given;
  const j = bondIndex(state, result.part);
  const strengths = state.adhesives.map(({ peelStrength }) => peelStrength!);
  const sigma_p = strengths[j]!;
  const elastic = worst(state, bondFields(state), (sample) =>
    peelFactor(sample, strengths[sample.bond]!),
  );
  const before = [
    ...layerSteps(given, j),
    peelStrengthStep(given, j),
    ...estimateSteps(given, j),
    pullStep(given, result.theta, 'peel', placeOf(elastic, given), true),
  ];
  if (result.reached === 0 && !result.shearFirst) {
    const { sample } = spotAt(given, result.theta, 0, j, result.x);
    const cold = step(peeledCold, { sigma_p, sigma_T: sample.peelHeld }, 0);
    return [...before, cold, ...marginSteps(given)];
  }
  const place = cappedPlace(given, j, elastic);
  return [
    ...before,
    ...(elastic ? reachSteps(given, elastic) : []),
    ...(isElastic(given, elastic) || !place
      ? []
      : [
          peelStepOf(place),
          step(
            peelUse,
            { sigma: place.peel, sigma_p },
            place.peel / sigma_p,
            result.shearFirst ? undefined : CAPPED,
          ),
        ]),
    ...shearFirstSteps(given, elastic),
    ...marginSteps(given),
  ];
}

/** The factor is the elastic one: the bonds do not yield on the way, or keep no capped state. */
const isElastic = ({ result }: GivenMode, elastic: Found | null): boolean =>
  elastic !== null && !result.shearFirst && result.reached === elastic.factor;

function reachSteps(given: GivenMode, { factor, bond, x, theta }: Found): Step[] {
  const { sample, peelPerNewton, peelPull } = spotAt(given, theta, factor, bond, x);
  if (!Number.isFinite(factor) || factor === 0) return [];
  const values = {
    sigma_p: given.state.adhesives[bond]!.peelStrength!,
    sigma_T: sample.peelHeld,
    sigma_1: peelPerNewton,
    P: peelPull,
  };
  return [step(elasticReach, values, factor)];
}

/** One place of the capped state at the factor found. */
interface Capped {
  readonly factor: number;
  readonly pull: number;
  readonly around: number;
  readonly yields: number;
  readonly held: { readonly peel: number; readonly shear: number };
  readonly perNewton: { readonly peel: number; readonly shear: number };
  readonly peel: number;
  readonly shear: number;
}

/** Where the elastic factor was found: there the capped state takes its load. */
const placeOf = (elastic: Found | null, { state, result }: GivenMode) =>
  elastic ?? { bond: bondIndex(state, result.part), x: result.x };

function cappedPlace(given: GivenMode, j: number, elastic: Found | null): Capped | null {
  const { state, result } = given;
  const { reached: factor, theta, x } = result;
  const { sample } = spotAt(given, theta, factor, j, x);
  const { bond, x: at0 } = placeOf(elastic, given);
  const pull = pullOfPeel(state, theta, bond, at0);
  const load = factor * pull;
  const capped = state.layered.capped(load);
  if (!capped) return null;
  const at = (newtons: number, share: number) => {
    const { peel, shear } = capped.solution.at(sample.x, newtons, share).stresses;
    return { peel: peel[j]!, shear: shear[j]! };
  };
  const whole = at(load, 1);
  const yields = state.bonds[j]!.shearYield;
  return {
    factor,
    pull,
    around: sample.around,
    yields,
    held: at(0, 1),
    perNewton: at(1, 0),
    peel: whole.peel,
    shear: Math.min(Math.hypot(whole.shear, sample.around * factor), yields),
  };
}

const peelStepOf = ({ held, factor, pull, perNewton, peel }: Capped): Step =>
  step(cappedPeel, { sigma_f: held.peel, lambda: factor, P: pull, sigma_1: perNewton.peel }, peel);

const shearStepOf = (place: Capped): Step =>
  step(
    cappedShear,
    {
      tau_p: place.yields,
      tau_f: place.held.shear,
      lambda: place.factor,
      P: place.pull,
      tau_1: place.perNewton.shear,
      tau_theta: place.around,
    },
    place.shear,
  );

function shearFirstSteps(
  { state, adhesive, settings, result }: GivenMode,
  elastic: Found | null,
): Step[] {
  if (!result.shearFirst) return [];
  const only = new Set(['adhesive-strain'] as const);
  const [strength] = adhesiveModes(state, adhesive, settings.factors, { only });
  const lambda_u = strength?.reached ?? result.reached;
  return [step(shearDecides, { lambda_u, lambda_e: elastic?.factor ?? lambda_u }, result.reached)];
}

export function pliesWorking(given: GivenMode): Step[] {
  const { state, result } = given;
  const j = bondIndex(state, result.part);
  const all = interlaminarOf(state);
  const faces = all[j]!;
  const elastic = worst(state, bondFields(state), interlaminarFactor(all));
  const before = [
    ...layerSteps(given, j),
    ...(isElastic(given, elastic)
      ? (['peel', 'shear'] as const).map((what) =>
          pullStep(given, result.theta, what, placeOf(elastic, given)),
        )
      : [pullStep(given, result.theta, 'peel', placeOf(elastic, given), true)]),
  ];
  /** The face that is used most under a peel and a shear. */
  const face = (peel: number, shear: number) =>
    faces
      .map((one) => ({
        ...one,
        use: interlaminarUse([one], peel, shear),
      }))
      .reduce((a, b) => (b.use > a.use ? b : a));
  if (result.reached === 0 && !result.shearFirst) {
    const { sample } = spotAt(given, result.theta, 0, j, result.x);
    const [sigma, tau] = [sample.peelHeld, Math.abs(sample.shearHeld)];
    const { tension, shear } = face(sigma, tau);
    const cold = step(pliesCold, { sigma, Z_t: tension, tau, S_13: shear }, 0);
    return [...before, cold, ...marginSteps(given)];
  }
  if (isElastic(given, elastic)) {
    const spot = spotAt(given, result.theta, result.reached, elastic!.bond, elastic!.x);
    const own = { ...given, result: { ...result, x: elastic!.x } };
    return [...before, ...elasticPlies(own, spot, face), ...marginSteps(given)];
  }
  const place = cappedPlace(given, j, elastic);
  if (!place) return [...before, ...shearFirstSteps(given, elastic), ...marginSteps(given)];
  const { tension, shear, use } = face(place.peel, place.shear);
  return [
    ...before,
    yieldStep(given, j),
    peelStepOf(place),
    shearStepOf(place),
    step(
      pliesUse,
      { sigma: place.peel, Z_t: tension, tau: place.shear, S_13: shear },
      use,
      result.shearFirst ? undefined : CAPPED,
    ),
    ...shearFirstSteps(given, elastic),
    ...marginSteps(given),
  ];
}

function elasticPlies(
  { result }: GivenMode,
  spot: Spot,
  face: (peel: number, shear: number) => { readonly tension: number; readonly shear: number },
): Step[] {
  const factor = result.reached;
  const [sigma, tau] = [peelOf(spot.sample, factor), shearOf(spot.sample, factor)];
  const { tension, shear } = face(sigma, tau);
  const use = (Math.max(sigma, 0) / tension) ** 2 + (tau / shear) ** 2;
  return [
    elasticPeelStep(spot, factor),
    elasticShearStep(spot, factor),
    step(pliesElastic, { sigma, Z_t: tension, tau, S_13: shear }, use, ELASTIC),
  ];
}
