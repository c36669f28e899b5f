/** Peel by the layered shells: the layer across the bond, the load, and the stresses at a place. */
import { type Step, step } from '../card.ts';
import { MODULUS, PEEL_STRENGTH, SHEAR_MODULUS } from '../joint/adhesive-state.card.ts';
import { flatLoad } from '../joint/local-problem.card.ts';
import { constrained, poisson } from '../layered/of-joint.card.ts';
import { adhesivePoisson, constrainedModulus, layeredLap } from '../layered/of-joint.ts';
import {
  flatOpeningFlexibility as flatFlexibilityCard,
  openingFlexibility as flexibilityCard,
  openingStiffness,
  openingStiffnessOfTwo,
} from '../layered/opening-law.card.ts';
import { normalStiffness, openingFlexibility } from '../layered/opening-law.ts';
import { plateProperties } from '../layered/shell.ts';
import { coveredLoad, elasticPeel, elasticShear, wallLoad } from '../margins/bond-fields.card.ts';
import { bondFields, boundedCover, coverAt, pullAt, type Sample } from '../margins/bond-fields.ts';
import { estimate } from '../peel/outer-adherend.card.ts';
import { outerAdherendPeel } from '../peel/outer-adherend.ts';
import { propertyStep } from './adhesive.ts';
import type { Given } from './context.ts';

/** Moduli of the adhesive and the modulus across the bond. */
export function moduliSteps(given: Given, j: number): Step[] {
  const adhesive = given.state.adhesives[j]!;
  const nu = adhesivePoisson(adhesive);
  return [
    propertyStep(given, j, MODULUS, 'modulus'),
    propertyStep(given, j, SHEAR_MODULUS, 'shearModulus'),
    step(poisson, { E: adhesive.modulus, G: adhesive.shearModulus }, nu),
    step(constrained, { E: adhesive.modulus, nu }, constrainedModulus(adhesive)),
  ];
}

export const peelStrengthStep = (given: Given, j: number): Step =>
  propertyStep(given, j, PEEL_STRENGTH, 'peelStrength');

/** Flexibility and stiffness across bond j at the mouth. */
export function openingSteps({ state }: Given, j: number): Step[] {
  const { assembly, adhesives, deltaT } = state;
  const section = layeredLap(assembly, adhesives, deltaT).sectionAt(assembly.overlap);
  const flexibility = openingFlexibility(section);
  const stiffness = normalStiffness(section);
  const count = section.bonds.length;
  const of = (i: number, k: number): number => flexibility[i * count + k]!;
  const own = step(
    assembly.flat ? flatFlexibilityCard : flexibilityCard,
    {
      h: section.bonds[j]!.gap,
      E_c: section.bonds[j]!.constrainedModulus,
      f_1: section.shells[j]!.throughFlexibility,
      f_2: section.shells[j + 1]!.throughFlexibility,
    },
    of(j, j),
  );
  const result = stiffness[j * count + j]!;
  if (count === 1) return [own, step(openingStiffness, { F_j: of(j, j) }, result)];
  const other = 1 - j;
  const values = { F_j: of(j, j), F_12: of(j, other), F_k: of(other, other) };
  return [own, step(openingStiffnessOfTwo, values, result)];
}

/** @param bounded for a capped state, where one load stands for force and moment */
export function pullStep(
  { state }: Given,
  theta: number,
  what: 'peel' | 'shear',
  place: { readonly bond: number; readonly x: number },
  bounded = false,
): Step {
  const { assembly, loadCase } = state;
  const { force, moment } = loadCase.loads;
  const c = (bounded ? boundedCover : coverAt)(state, what, place.bond, place.x);
  const load = pullAt(state, theta, c);
  if (assembly.flat) return step(flatLoad, { F: force }, load);
  const R_t = assembly.tube.root.meanRadius;
  return step(coveredLoad(what), { F: force, c, M: moment, theta, R_t }, load);
}

/** The load that bends the walls: no cover, for their strength has its own factors. */
export function pullStepPlain({ state }: Given, theta: number): Step {
  const { assembly, loadCase } = state;
  const { force, moment } = loadCase.loads;
  const load = pullAt(state, theta);
  if (assembly.flat) return step(flatLoad, { F: force }, load);
  return step(wallLoad, { F: force, M: moment, theta, R_t: assembly.tube.root.meanRadius }, load);
}

/** What the layered shells say of a place, per newton and by temperature. */
export interface Spot {
  readonly sample: Sample;
  readonly peelPull: number;
  readonly shearPull: number;
  readonly peelPerNewton: number;
  readonly shearPerNewton: number;
}

/** @param factor at which a flat single lap bends */
export function spotAt(
  { state }: Given,
  theta: number,
  factor: number,
  j: number,
  place: number,
): Spot {
  let found: Sample | undefined;
  bondFields(state).visit(theta, factor, (sample) => {
    if (sample.bond !== j) return;
    if (found === undefined || Math.abs(sample.x - place) < Math.abs(found.x - place))
      found = { ...sample };
  });
  const sample: Sample = found!;
  const peelPull = pullAt(state, theta, coverAt(state, 'peel', j, sample.x));
  const { x, unit } = state.layered.fields(factor * state.loadCase.loads.force);
  const i = x.indexOf(sample.x);
  const field = unit.bonds[j]!;
  return {
    sample,
    peelPull,
    shearPull: pullAt(state, theta, coverAt(state, 'shear', j, sample.x)),
    peelPerNewton: field.peel[i]!,
    shearPerNewton: field.shear[i]!,
  };
}

export const peelOf = ({ peelHeld, peelLoad }: Sample, factor: number): number =>
  peelHeld + factor * peelLoad;

export const shearOf = ({ shearHeld, shearLoad, around }: Sample, factor: number): number =>
  Math.hypot(shearHeld + factor * shearLoad, factor * around);

export const elasticPeelStep = (spot: Spot, factor: number): Step =>
  step(
    elasticPeel,
    {
      sigma_T: spot.sample.peelHeld,
      lambda: factor,
      sigma_1: spot.peelPerNewton,
      P: spot.peelPull,
    },
    peelOf(spot.sample, factor),
  );

export const elasticShearStep = (spot: Spot, factor: number): Step =>
  step(
    elasticShear,
    {
      tau_T: spot.sample.shearHeld,
      lambda: factor,
      tau_1: spot.shearPerNewton,
      P: spot.shearPull,
      tau_theta: spot.sample.around,
    },
    shearOf(spot.sample, factor),
  );

/** Double laps only: the plate on a foundation. */
export function estimateSteps({ state }: Given, j: number): Step[] {
  const { assembly, adhesives, bonds } = state;
  if (assembly.bonds.length < 2) return [];
  const outer = assembly.outers[j]!;
  const { axialModulus, poisson: nu } = plateProperties(outer.material);
  const t = outer.mouth.thickness;
  const h = assembly.bonds[j]!.gap;
  const tau = bonds[j]!.shearYield;
  const { modulus } = adhesives[j]!;
  if (!(1 - nu * nu > 0)) return [];
  return [
    step(
      estimate,
      { tau_p: tau, E: modulus, nu_s: nu, t, E_s: axialModulus, h },
      outerAdherendPeel(tau, modulus, t, axialModulus, nu, h),
    ),
  ];
}
