/**
 * A single wall that goes on beyond the overlap, as what it answers at the overlap's end:
 * f = stiffness·d + load·pull + free, f and d those of the wall there.
 */
import { block, type Matrix, multiply, solveDense } from '../numerics/dense.ts';
import type { LayeredSection } from './section.ts';
import type { Shell } from './shell.ts';
import { uniformStretch } from './stretch.ts';

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

/** A wall by itself, as a section. */
export const aloneIn = (shell: Shell): LayeredSection => ({
  shells: [shell],
  bonds: [],
  shearFactor: SHEAR_FACTOR,
});

type OfShell = (shell: Shell, pull: number | 'held', side: 'root' | 'mouth') => RunOut;

/** Keeps what a wall answers: all states of a lap whose walls are uniform ask for the same. */
export function keptRunOuts(of: OfShell): OfShell {
  const known = new WeakMap<Shell, Map<string, RunOut>>();
  return (shell, pull, side) => {
    let ofShell = known.get(shell);
    if (!ofShell) {
      ofShell = new Map();
      known.set(shell, ofShell);
    }
    const key = `${pull} ${side}`;
    let found = ofShell.get(key);
    if (!found) {
      found = of(shell, pull, side);
      ofShell.set(key, found);
    }
    return found;
  };
}

/**
 * @param pull internal force n at the far end per unit load, or `held` there
 * @param system of the wall by itself
 * @param each unknowns of a wall: u, w, φ, and v in the first harmonic
 */
export function runOut(
  shell: Shell,
  pull: number | 'held',
  side: 'root' | 'mouth',
  system: { readonly a: Matrix; readonly g: Matrix },
  each: 3 | 4,
): RunOut {
  const length = shell.flat
    ? FLAT_LENGTH * shell.thickness
    : FAR * Math.sqrt(shell.radius * shell.thickness);
  const { ends } = uniformStretch(system.a, system.g, length);
  const nearIsStart = side === 'mouth';
  const width = 2 * each + 1;
  const part = (rows: Matrix, column: number, columns: number = each): Matrix =>
    block(rows, width, 0, column, each, columns);
  const [near, far] = nearIsStart ? [ends.start, ends.end] : [ends.end, ends.start];
  const [atNear, atFar] = nearIsStart ? [0, each] : [each, 0];
  const [nearNear, nearFar] = [part(near, atNear), part(near, atFar)];
  const [farFar, farNear] = [part(far, atFar), part(far, atNear)];
  const [nearLoad, farLoad] = [part(near, 2 * each, 1), part(far, 2 * each, 1)];

  // Far end: q = 0, no moment about the middle (m = −offset·n), and n given or u (and v) held.
  const held = pull === 'held';
  const columns = each + 2;
  const matrix = new Float64Array(each * each);
  const right = new Float64Array(each * columns);
  const row = (
    target: number,
    terms: readonly (readonly [row: number, factor: number])[],
  ): void => {
    for (const [from, factor] of terms) {
      for (let j = 0; j < each; j++) {
        matrix[target * each + j]! += factor * farFar[from * each + j]!;
        right[target * columns + j]! -= factor * farNear[from * each + j]!;
      }
      right[target * columns + each + 1]! -= factor * farLoad[from]!;
    }
  };
  if (held) matrix[0] = 1;
  else {
    row(0, [[0, 1]]);
    right[each] = pull;
  }
  row(1, [[1, 1]]);
  row(2, [
    [2, 1],
    [0, shell.offset],
  ]);
  if (each === 4) {
    if (held) matrix[15] = 1;
    else row(3, [[3, 1]]);
  }
  solveDense(matrix, right, each, columns);
  // d_far = right[0 … each − 1]·d_near + right[each]·load + right[each + 1]
  const all = multiply(nearFar, right, each, each, columns);
  const stiffness = new Float64Array(each * each);
  const byPull = new Float64Array(each);
  const byTemperature = new Float64Array(each);
  for (let i = 0; i < each; i++) {
    for (let j = 0; j < each; j++) {
      stiffness[i * each + j] = nearNear[i * each + j]! + all[i * columns + j]!;
    }
    byPull[i] = all[i * columns + each]!;
    byTemperature[i] = nearLoad[i]! + all[i * columns + each + 1]!;
  }
  return { stiffness, pull: byPull, free: byTemperature };
}
