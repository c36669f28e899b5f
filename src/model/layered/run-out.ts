/**
 * A single wall that goes on beyond the overlap, as what it answers at the overlap's end:
 * f = stiffness·d + load·pull + free, f and d those of the wall there.
 */
import { type Matrix, multiply, solveDense } from '../numerics/dense.ts';
import type { Shell } from './shell.ts';
import { uniformStretch } from './stretch.ts';
import { layeredSystem } from './system.ts';

/** κ of a wall bent on its own. */
const SHEAR_FACTOR = 5 / 6;

/** Lengths √(R·t) after which nothing of the end is left: e^(−1.3·24) is below rounding. */
const FAR = 24;
/** A flat wall has no such length: its end moment goes on; any length gives the same answer. */
const FLAT_LENGTH = 8;

export interface RunOut {
  readonly stiffness: Matrix;
  readonly pull: Matrix;
  readonly free: Matrix;
}

/**
 * @param pull internal force n at the far end per unit load, or `held` there in the axial direction
 */
export function runOut(shell: Shell, pull: number | 'held', side: 'root' | 'mouth'): RunOut {
  const { a, g } = layeredSystem({ shells: [shell], bonds: [], shearFactor: SHEAR_FACTOR }, []);
  const length = shell.flat
    ? FLAT_LENGTH * shell.thickness
    : FAR * Math.sqrt(shell.radius * shell.thickness);
  const { ends } = uniformStretch(a, g, length);
  const nearIsStart = side === 'mouth';
  const [nearNear, nearFar] = nearIsStart ? [ends.k00, ends.k01] : [ends.k11, ends.k10];
  const [farFar, farNear] = nearIsStart ? [ends.k11, ends.k10] : [ends.k00, ends.k01];
  const [nearLoad, farLoad] = nearIsStart ? [ends.p0, ends.p1] : [ends.p1, ends.p0];

  // Far end: q = 0, no moment about the middle (m = −offset·n), and n given or u held.
  const held = pull === 'held';
  const matrix = new Float64Array(9);
  const right = new Float64Array(3 * 5);
  const row = (
    target: number,
    terms: readonly (readonly [row: number, factor: number])[],
  ): void => {
    for (const [from, factor] of terms) {
      for (let j = 0; j < 3; j++) {
        matrix[target * 3 + j]! += factor * farFar[from * 3 + j]!;
        right[target * 5 + j]! -= factor * farNear[from * 3 + j]!;
      }
      right[target * 5 + 4]! -= factor * farLoad[from]!;
    }
  };
  if (held) matrix[0] = 1;
  else {
    row(0, [[0, 1]]);
    right[3] = pull;
  }
  row(1, [[1, 1]]);
  row(2, [
    [2, 1],
    [0, shell.offset],
  ]);
  solveDense(matrix, right, 3, 5);
  // d_far = right[0..2]·d_near + right[3]·load + right[4]
  const all = multiply(nearFar, right, 3, 3, 5);
  const stiffness = new Float64Array(9);
  const byPull = new Float64Array(3);
  const byTemperature = new Float64Array(3);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) stiffness[i * 3 + j] = nearNear[i * 3 + j]! + all[i * 5 + j]!;
    byPull[i] = all[i * 5 + 3]!;
    byTemperature[i] = nearLoad[i]! + all[i * 5 + 4]!;
  }
  return { stiffness, pull: byPull, free: byTemperature };
}
