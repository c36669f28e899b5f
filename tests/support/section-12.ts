/**
 * The two joints of the independent axisymmetric finite-element model, and its shear in mid-bond.
 * The finite-element figures are the project's own reference, made with a general-purpose solver.
 */
import { assemble } from '../../src/model/joint/assembly.ts';
import { bondLaws } from '../../src/model/joint/bond-law.ts';
import { localProblem } from '../../src/model/joint/local-problem.ts';
import type { JointInput, Loads, Material } from '../../src/model/joint/types.ts';

const carbon: Material = {
  kind: 'orthotropic',
  axialModulus: 70_000,
  hoopModulus: 30_000,
  shearModulus: 15_000,
  poisson: 0.3,
  axialExpansion: 1e-6,
  hoopExpansion: 6e-6,
  throughShearModulus: 4_000,
  throughModulus: 9_000,
  throughExpansion: 30e-6,
  tensileStrength: 700,
  compressiveStrength: 500,
  shearStrength: 150,
};
const titanium: Material = {
  kind: 'isotropic',
  modulus: 114_000,
  poisson: 0.34,
  expansion: 8.6e-6,
  yieldStrength: 830,
  ultimateStrength: 900,
};

const wall = (thickness: number) => ({
  material: titanium,
  atRoot: thickness,
  atMouth: thickness,
});

export const singleLap: JointInput = {
  type: 'sleeve-single',
  side: 'socket',
  overlap: 30,
  tube: { material: carbon, outsideDiameter: 32, wall: 1.6 },
  sleeve: wall(1.2),
  bond: { gap: 0.2, tolerance: 0 },
  offset: 0,
};

/** Spigot from 12.0 to 13.0, gap 0.20, tube from 13.2 to 15.2, gap 0.25, socket from 15.45 to 16.75. */
export const doubleLap: JointInput = {
  type: 'sleeve-double',
  overlap: 25,
  tube: { material: carbon, outsideDiameter: 30.4, wall: 2 },
  spigot: wall(1),
  socket: wall(1.3),
  innerBond: { gap: 0.2, tolerance: 0 },
  outerBond: { gap: 0.25, tolerance: 0 },
  offset: 0,
};

export const adhesive = {
  modulus: 2400,
  shearModulus: 2400 / (2 * 1.37),
  shearYield: 1e9,
  plasticStrain: 1,
  peelStrength: undefined,
  expansion: 55e-6,
  outsideTable: false,
};

export const noLoads: Loads = { force: 0, moment: 0, torque: 0, shear: 0 };

export function section12(joint: JointInput, loads: Loads, deltaT: number, adherendShear = true) {
  const assembly = assemble(joint, 'nominal');
  const bonds = bondLaws(
    assembly,
    assembly.bonds.map(() => adhesive),
    adherendShear,
  );
  return localProblem(assembly, bonds, loads, 0, deltaT);
}

/** x and shear under 10 kN, then under −100 °C. */
export const axialShear: readonly (readonly [number, number])[] = [
  [1.0, 6.039],
  [3.05, 3.741],
  [8.07, 2.198],
  [15.11, 1.491],
  [24.94, 3.914],
  [26.95, 5.247],
  [29.0, 8.754],
  [29.53, 10.814],
  [29.8, 12.247],
];
export const thermalShear: readonly (readonly [number, number])[] = [
  [1.0, -7.117],
  [3.05, -4.307],
  [8.07, -2.136],
  [15.11, 0.013],
  [24.94, 3.208],
  [26.95, 4.265],
  [29.0, 7.054],
  [29.53, 8.57],
  [29.8, 8.859],
];
/** First-harmonic finite elements, 200 N·m, at θ = 0. */
export const bendingShear: readonly (readonly [number, number])[] = [
  [0.5, 15.46],
  [3.0, 8.42],
  [8.0, 4.86],
  [15.0, 3.47],
  [25.0, 10.23],
  [28.0, 17.43],
  [29.5, 28.92],
  [29.8, 33.3],
];
/** x, inner and outer shear under 20 kN. */
export const doubleShear: readonly (readonly [number, number, number])[] = [
  [1, 6.571, 8.096],
  [3, 3.459, 5.88],
  [5, 2.118, 3.887],
  [8, 1.11, 2.201],
  [12.5, 0.764, 1.821],
  [17, 2.14, 3.388],
  [20, 5.138, 6.112],
  [23, 10.041, 11.199],
  [24, 12.344, 14.261],
  [24.5, 14.197, 16.587],
];
/** Force in the spigot's and the socket's bond, N. */
export const doubleForces = [7761, 12_234] as const;
