/** Metal walls and laminates given as one material, at the worse face of the place found. */
import { type Criterion, type Step, step } from '../card.ts';
import type { OrthotropicMaterial } from '../joint/types.ts';
import { pullAt } from '../margins/bond-fields.ts';
import { faceAlong, faceAround, faceShear } from '../margins/wall-bending.card.ts';
import {
  backOf,
  type FaceBending,
  thicknessAt,
  wallBending,
  wallLines,
} from '../margins/wall-bending.ts';
import { laminateUse, metalUse, vonMises } from '../margins/wall-strength.card.ts';
import { laminateFactor, metalFactor } from '../margins/wall-strength.ts';
import { flatAxial, thermalAxial, tubeAxial, tubeShear } from '../margins/wall-stress.card.ts';
import { type WallStress, type WallStresses, wallStresses } from '../margins/wall-stress.ts';
import { type Given, type GivenMode, marginSteps } from './context.ts';
import { pullStepPlain } from './layer.ts';

const WALL: Criterion = {
  target: 1,
  tolerance: 1e-3,
  why: 'the place is closed in on by steps; the factor is that of the best of them',
};

export const partsOf = ({ assembly }: Given['state']) => [assembly.tube, ...assembly.outers];
export const partIndex = (state: Given['state'], name: string): number =>
  Math.max(
    0,
    partsOf(state).findIndex((part) => part.name === name),
  );

export const stressesOf = ({ assembly, bonds, loadCase, deltaT }: Given['state']): WallStresses =>
  wallStresses(assembly, bonds, loadCase.loads, deltaT);

/** Membrane stress of a wall at a place: by the loads, per factor, and by temperature. */
export function membraneSteps(
  { state }: Given,
  stresses: WallStresses,
  i: number,
  x: number,
  theta: number,
): Step[] {
  const { force, moment, torque, shear } = state.loadCase.loads;
  const behind = stresses.behind(i, x);
  const { area: A, bending: z, torsion: y } = behind;
  const stress = stresses.at(i, x)(theta);
  const n_F = behind.ofForce;
  const steps: Step[] = [step(thermalAxial, { N_T: behind.thermalForce, A }, stress.thermal)];
  if (state.assembly.flat) return [...steps, step(flatAxial, { n_F, F: force, A }, stress.axial)];
  steps.push(
    step(tubeAxial, { n_F, F: force, A, n_M: behind.ofMoment, M: moment, z, theta }, stress.axial),
  );
  if (torque !== 0 || shear !== 0) {
    steps.push(
      step(tubeShear, { n_T: behind.ofTorque, T: torque, y, V: shear, theta, A }, stress.shear),
    );
  }
  return steps;
}

export function wallWorking(given: GivenMode): Step[] {
  const { state, result } = given;
  const { x, theta, reached, mode } = result;
  const i = partIndex(state, result.part);
  const { material } = partsOf(state)[i]!;
  const stresses = stressesOf(state);
  const stress = stresses.at(i, x)(theta);
  const bend = wallBending(state, i);
  const factorOf = (face: FaceBending): number => {
    if (material.kind === 'isotropic') {
      const { yieldStrength, ultimateStrength } = material;
      return metalFactor(stress, mode === 'metal-yield' ? yieldStrength : ultimateStrength, face);
    }
    return material.kind === 'orthotropic' ? laminateFactor(stress, material, face) : 0;
  };
  const [inner, outer] = [bend(x, -1)(theta), bend(x, 1)(theta)];
  const f = factorOf(outer) < factorOf(inner) ? 1 : -1;
  const face = f === 1 ? outer : inner;
  const at = faceStress(stress, face, reached);
  const before = [
    ...membraneSteps(given, stresses, i, x, theta),
    pullStepPlain(given, theta),
    ...faceSteps(given, i, f, at, stress),
  ];
  const criterion = reached === 0 ? undefined : WALL;
  if (material.kind === 'isotropic') {
    const { along: sigma_x, around: sigma_theta, shear: tau } = at;
    const S = mode === 'metal-yield' ? material.yieldStrength : material.ultimateStrength;
    const sigma_v = Math.sqrt(
      sigma_x ** 2 - sigma_x * sigma_theta + sigma_theta ** 2 + 3 * tau ** 2,
    );
    const card = metalUse(mode === 'metal-yield' ? 'yield' : 'ultimate');
    return [
      ...before,
      step(vonMises, { sigma_x, sigma_theta, tau }, sigma_v),
      step(card, { sigma_v, S }, sigma_v / S, criterion),
      ...marginSteps(given),
    ];
  }
  const own = material as OrthotropicMaterial;
  const X = at.along < 0 ? own.compressiveStrength : own.tensileStrength;
  const S = own.shearStrength;
  const use = (at.along / X) ** 2 + (at.shear / S) ** 2;
  return [
    ...before,
    step(laminateUse, { sigma_x: at.along, X, tau: at.shear, S }, use, criterion),
    ...marginSteps(given),
  ];
}

interface FaceStress {
  readonly along: number;
  readonly around: number;
  readonly shear: number;
}

const faceStress = (stress: WallStress, face: FaceBending, factor: number): FaceStress => ({
  along: stress.thermal + face.axialHeld + factor * (stress.axial + face.axialLoad),
  around: face.hoopHeld + factor * face.hoopLoad,
  shear: factor * stress.shear,
});

function faceSteps(
  { state, result }: GivenMode,
  i: number,
  f: 1 | -1,
  at: FaceStress,
  stress: WallStress,
): Step[] {
  const { x, theta, reached: lambda } = result;
  const lines = wallLines(state, i)(x);
  const bending = {
    lambda,
    f,
    m_T: lines.momentHeld,
    m_1: lines.momentLoad,
    P: pullAt(state, theta),
    t: thicknessAt(state, i, x),
  };
  return [
    step(faceAlong, { ...bending, sigma_T: stress.thermal, sigma_1: stress.axial }, at.along),
    step(
      faceAround,
      { ...bending, n_T: lines.hoopHeld, n_1: lines.hoopLoad, nu: backOf(state, i) },
      at.around,
    ),
    step(faceShear, { lambda, tau_1: stress.shear }, at.shear),
  ];
}
