/** First ply: from the forces in the wall to the ply that fails first. */
import { type Criterion, type Step, step } from '../card.ts';
import type { LaminateMaterial } from '../joint/types.ts';
import {
  crossStrain,
  crossStress,
  curvature,
  fibreStrain,
  fibreStress,
  forceAlong,
  forceAround,
  forceShear,
  maximumStrain,
  plyShear,
  shearStress,
  strainAlong,
  strainAround,
  strainShear,
  tsaiWu,
} from '../laminate/first-ply.card.ts';
import {
  firstPly,
  maximumStrainIndex,
  plyStates,
  type StrainComponent,
  tsaiWuIndex,
} from '../laminate/first-ply.ts';
import { addTriple, invertPlane, type Triple, times } from '../laminate/plane.ts';
import type { Ply } from '../laminate/ply.ts';
import { plyHeights, stiffnessOf } from '../laminate/stack.ts';
import { plateProperties, shellOf } from '../layered/shell.ts';
import { pullAt } from '../margins/bond-fields.ts';
import { wallStrainAt } from '../margins/first-ply-modes.ts';
import { thicknessAt, wallLines } from '../margins/wall-bending.ts';
import { type GivenMode, marginSteps } from './context.ts';
import { pullStepPlain } from './layer.ts';
import { membraneSteps, partIndex, partsOf, stressesOf } from './walls.ts';

const PLY: Criterion = { target: 1, tolerance: 1e-8, why: 'positive root of the criterion' };

export function firstPlyWorking(given: GivenMode): Step[] {
  const { state, result } = given;
  const { x, theta, reached: lambda } = result;
  const i = partIndex(state, result.part);
  const material = partsOf(state)[i]!.material as LaminateMaterial;
  const { stack } = material;
  const stresses = stressesOf(state);
  const { held, load } = wallStrainAt(state, stresses, i, material)(x)(theta);
  const { deltaT } = state;
  const failed = firstPly(stack, { ...held, deltaT }, load);
  const byStrain = result.plies?.criterion === 'maximum-strain';
  const place = byStrain ? failed.maximumStrain.place! : failed.tsaiWu.place!;
  const strain = addTriple(held.strain, load.strain, lambda);
  const bent = addTriple(held.curvature, load.curvature, lambda);
  const ply = plyStates(stack, { strain, curvature: bent, deltaT }).find(
    (one) => one.ply === place.ply && one.face === place.face,
  )!;
  const own = stack.plies[place.ply]!;
  const z = plyHeights(stack)[place.ply]! + ((place.face === 'outer' ? 1 : -1) * own.thickness) / 2;
  const criterion = lambda === 0 ? undefined : PLY;
  return [
    ...membraneSteps(given, stresses, i, x, theta),
    pullStepPlain(given, theta),
    ...wallSteps(given, i, material, strain),
    curvatureStep(given, i, material, bent[0]),
    ...plySteps(own.ply, ply, {
      epsilon_x: strain[0],
      epsilon_theta: strain[1],
      gamma: strain[2],
      kappa: bent[0],
      z,
      phi: (own.angle * Math.PI) / 180,
      DeltaT: deltaT,
    }),
    byStrain
      ? strainStep(own.ply, ply.strain, failed.maximumStrain.place!.component, criterion)
      : step(
          tsaiWu,
          {
            sigma_1: ply.stress[0],
            sigma_2: ply.stress[1],
            tau_12: ply.stress[2],
            X_t: own.ply.tensileStrength,
            X_c: own.ply.compressiveStrength,
            Y_t: own.ply.transverseTensileStrength,
            Y_c: own.ply.transverseCompressiveStrength,
            S: own.ply.shearStrength,
          },
          tsaiWuIndex(own.ply, ply.stress),
          criterion,
        ),
    ...marginSteps(given),
  ];
}

/** Strain of the middle of the wall from its forces at the factor. */
function wallSteps(
  { state, result }: GivenMode,
  i: number,
  { stack }: LaminateMaterial,
  strain: Triple,
): Step[] {
  const { x, theta, reached } = result;
  const { a, thermalForce } = stiffnessOf(stack);
  const flex = invertPlane(a);
  const free = times(flex, thermalForce);
  const t = thicknessAt(state, i, x);
  const stress = stressesOf(state).at(i, x)(theta);
  const lines = wallLines(state, i)(x);
  const forces = {
    N_x: (stress.thermal + reached * stress.axial) * t,
    N_theta: lines.hoopHeld + reached * lines.hoopLoad * pullAt(state, theta),
    N_s: reached * stress.shear * t,
    DeltaT: state.deltaT,
  };
  const { c11: a_11, c12: a_12, c16: a_16, c22: a_22, c26: a_26, c66: a_66 } = flex;
  const lambda = reached;
  const P = pullAt(state, theta);
  return [
    step(forceAlong, { sigma_T: stress.thermal, lambda, sigma_1: stress.axial, t }, forces.N_x),
    step(forceAround, { n_T: lines.hoopHeld, lambda, n_1: lines.hoopLoad, P }, forces.N_theta),
    ...(stress.shear === 0
      ? []
      : [step(forceShear, { lambda, tau_1: stress.shear, t }, forces.N_s)]),
    step(strainAlong, { ...forces, a_11, a_12, a_16, alpha: free[0] }, strain[0]),
    step(strainAround, { ...forces, a_12, a_22, a_26, alpha: free[1] }, strain[1]),
    step(strainShear, { ...forces, a_16, a_26, a_66, alpha: free[2] }, strain[2]),
  ];
}

function curvatureStep(
  { state, result }: GivenMode,
  i: number,
  material: LaminateMaterial,
  bent: number,
): Step {
  const { x, theta, reached } = result;
  const { flat } = state.assembly;
  const size = { radius: 1, thickness: thicknessAt(state, i, x), flat };
  const { bending } = shellOf(plateProperties(material), size, 'both', 0);
  const lines = wallLines(state, i)(x);
  return step(
    curvature,
    {
      m_T: lines.momentHeld,
      lambda: reached,
      m_1: lines.momentLoad,
      P: pullAt(state, theta),
      D: bending,
    },
    bent,
  );
}

type Turned = Readonly<
  Record<'epsilon_x' | 'epsilon_theta' | 'gamma' | 'kappa' | 'z' | 'phi' | 'DeltaT', number>
>;

function plySteps(
  ply: Ply,
  { strain, stress }: { readonly strain: Triple; readonly stress: Triple },
  turned: Turned,
): Step[] {
  const { DeltaT, ...wall } = turned;
  const own = {
    epsilon_1: strain[0],
    epsilon_2: strain[1],
    E_1: ply.axialModulus,
    E_2: ply.transverseModulus,
    nu_12: ply.poisson,
  };
  return [
    step(fibreStrain, { ...wall, DeltaT, alpha_1: ply.axialExpansion }, strain[0]),
    step(crossStrain, { ...wall, DeltaT, alpha_2: ply.transverseExpansion }, strain[1]),
    step(plyShear, wall, strain[2]),
    step(fibreStress, own, stress[0]),
    step(crossStress, own, stress[1]),
    step(shearStress, { G_12: ply.shearModulus, gamma_12: strain[2] }, stress[2]),
  ];
}

function strainStep(
  ply: Ply,
  strain: Triple,
  component: StrainComponent,
  criterion: Criterion | undefined,
): Step {
  const [epsilon, E, X] = {
    'fibre tension': [strain[0], ply.axialModulus, ply.tensileStrength] as const,
    'fibre compression': [strain[0], ply.axialModulus, ply.compressiveStrength] as const,
    'transverse tension': [
      strain[1],
      ply.transverseModulus,
      ply.transverseTensileStrength,
    ] as const,
    'transverse compression': [
      strain[1],
      ply.transverseModulus,
      ply.transverseCompressiveStrength,
    ] as const,
    'in-plane shear': [strain[2], ply.shearModulus, ply.shearStrength] as const,
  }[component];
  return step(maximumStrain, { epsilon, E, X }, maximumStrainIndex(ply, strain), criterion);
}
