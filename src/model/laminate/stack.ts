/**
 * Classical lamination theory: a stack of plies from the inside to the outside, its stiffness
 * N = A·ε + B·κ − N_T·ΔT, M = B·ε + D·κ − M_T·ΔT, and its strains. z runs outward from the middle
 * surface; the strain at z is ε + z·κ. Plane walls: valid for R/t above about 10.
 */
import { ModelError } from '../errors.ts';
import { solveSmall } from '../numerics/small-solve.ts';
import {
  addPlane,
  addTriple,
  invertPlane,
  type Plane,
  rowsOf,
  type Triple,
  times,
  turnBy,
  turnStrain,
  zeroPlane,
} from './plane.ts';
import { expansionOf, type Ply, reducedStiffness, turnStiffness } from './ply.ts';

export interface StackPly {
  readonly ply: Ply;
  /** Degrees from the tube's axis. */
  readonly angle: number;
  readonly thickness: number;
}

export interface Stack {
  /** From the inside to the outside. */
  readonly plies: readonly StackPly[];
}

/** Mid-surface strain and curvature, in laminate axes. */
export interface LaminateStrain {
  readonly strain: Triple;
  readonly curvature: Triple;
}

export interface LaminateStiffness {
  readonly thickness: number;
  /** N/mm */
  readonly a: Plane;
  /** N */
  readonly b: Plane;
  /** N·mm */
  readonly d: Plane;
  /** Force of the fully restrained wall per kelvin, N/(mm·K). */
  readonly thermalForce: Triple;
  /** Its moment, N/K. */
  readonly thermalMoment: Triple;
}

/**
 * Plies of one material at these angles, with their own thickness, or scaled evenly to the wall.
 * @throws ModelError when there is no ply or no wall
 */
export function makeStack(ply: Ply, angles: readonly number[], wall?: number): Stack {
  if (angles.length === 0) throw new ModelError('stack', 'The stack has no ply.');
  if (angles.some((angle) => !Number.isFinite(angle))) {
    throw new ModelError('stack', 'A ply of the stack has no angle.');
  }
  if (wall !== undefined && !(wall > 0 && Number.isFinite(wall))) {
    throw new ModelError('wall', 'The wall must be thicker than zero.');
  }
  const thickness = wall === undefined ? ply.thickness : wall / angles.length;
  return { plies: angles.map((angle) => ({ ply, angle, thickness })) };
}

export const thicknessOf = ({ plies }: Stack): number =>
  plies.reduce((sum, { thickness }) => sum + thickness, 0);

/**
 * Height of each ply's middle, inside to outside. Half the difference of what lies below and above,
 * so that a symmetric stack has exactly opposite heights.
 */
export function plyHeights({ plies }: Stack): readonly number[] {
  const n = plies.length;
  const below = new Array<number>(n).fill(0);
  const above = new Array<number>(n).fill(0);
  for (let k = 1; k < n; k++) {
    below[k] = below[k - 1]! + plies[k - 1]!.thickness;
    above[n - 1 - k] = above[n - k]! + plies[n - k]!.thickness;
  }
  return below.map((low, k) => (low - above[k]!) / 2);
}

/** Ply numbers from both faces inward, so that the terms of a symmetric stack cancel to zero. */
function* fromFaces(n: number): Generator<number> {
  for (let k = 0; k < n / 2; k++) {
    yield k;
    if (k !== n - 1 - k) yield n - 1 - k;
  }
}

/** A = Σ Q̄·t, B = Σ Q̄·t·z, D = Σ Q̄·(t·z² + t³/12), z the middle of each ply. */
export function stiffnessOf(stack: Stack): LaminateStiffness {
  const heights = plyHeights(stack);
  let a = zeroPlane;
  let b = zeroPlane;
  let d = zeroPlane;
  let thermalForce: Triple = [0, 0, 0];
  let thermalMoment: Triple = [0, 0, 0];
  for (const k of fromFaces(stack.plies.length)) {
    const { ply, angle, thickness: t } = stack.plies[k]!;
    const z = heights[k]!;
    const turn = turnBy(angle);
    const q = turnStiffness(reducedStiffness(ply), turn);
    const thermal = times(q, turnStrain(expansionOf(ply), turn));
    a = addPlane(a, q, t);
    b = addPlane(b, q, t * z);
    d = addPlane(d, q, t * z * z + t ** 3 / 12);
    thermalForce = addTriple(thermalForce, thermal, t);
    thermalMoment = addTriple(thermalMoment, thermal, t * z);
  }
  return { thickness: thicknessOf(stack), a, b, d, thermalForce, thermalMoment };
}

/** The 6 × 6 matrix [A B; B D], row by row. */
export function abdMatrix({ a, b, d }: LaminateStiffness): Float64Array {
  const [ra, rb, rd] = [rowsOf(a), rowsOf(b), rowsOf(d)];
  const rows = [0, 1, 2].flatMap((i) => [...ra[i]!, ...rb[i]!]);
  return Float64Array.from([...rows, ...[0, 1, 2].flatMap((i) => [...rb[i]!, ...rd[i]!])]);
}

function solve(stiffness: LaminateStiffness, right: Float64Array, width: number): Float64Array {
  if (!solveSmall(abdMatrix(stiffness), right, 6, width)) {
    throw new ModelError('stack', 'The laminate has no stiffness in some direction.');
  }
  return right;
}

/** Inverse of [A B; B D], row by row. */
export function inverseAbd(stiffness: LaminateStiffness): Float64Array {
  const identity = new Float64Array(36);
  for (let i = 0; i < 6; i++) identity[7 * i] = 1;
  return solve(stiffness, identity, 6);
}

export interface LaminateLoad {
  /** Nx, Ny, Nxy, N/mm */
  readonly force?: Triple;
  /** Mx, My, Mxy, N */
  readonly moment?: Triple;
  /** K above the stress-free temperature of the laminate. */
  readonly deltaT?: number;
}

/** Strain and curvature of a wall that is free to bend and twist. */
export function respond(
  stiffness: LaminateStiffness,
  { force = [0, 0, 0], moment = [0, 0, 0], deltaT = 0 }: LaminateLoad,
): LaminateStrain {
  const n = addTriple(force, stiffness.thermalForce, deltaT);
  const m = addTriple(moment, stiffness.thermalMoment, deltaT);
  const [x, y, s, kx, ky, ks] = solve(stiffness, Float64Array.from([...n, ...m]), 1);
  return { strain: [x!, y!, s!], curvature: [kx!, ky!, ks!] };
}

/** Strain of a wall that is held from bending and twisting out of its surface, as a closed tube is. */
export function respondWithoutCurvature(
  stiffness: LaminateStiffness,
  { force = [0, 0, 0], deltaT = 0 }: Omit<LaminateLoad, 'moment'>,
): LaminateStrain {
  const n = addTriple(force, stiffness.thermalForce, deltaT);
  return { strain: times(invertPlane(stiffness.a), n), curvature: [0, 0, 0] };
}
