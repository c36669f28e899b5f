/** The layered lap of a sleeve under a unit bending moment: amplitudes at cos θ (around: sin θ). */
import { type Matrix, solveDense } from '../numerics/dense.ts';
import { balance } from './exponential.ts';
import { HARMONIC, type HarmonicStresses, harmonicSystem } from './harmonic-system.ts';
import type { LayeredLap, WallForces } from './lap.ts';
import type { Shell } from './shell.ts';
import { balancedStretch, joinAll, type Stretch } from './stretch.ts';
import { taperedStretches } from './taper.ts';

export interface HarmonicPoint {
  readonly stresses: HarmonicStresses;
  readonly forces: readonly WallForces[];
}

export interface HarmonicSolution {
  /** Per N·mm of moment, at places in rising order. */
  along(x: readonly number[]): HarmonicPoint[];
}

const SHEAR_FACTOR = 5 / 6;
/** Lengths √(R·t) after which only the beam is left of the end. */
const FAR = 24;

/** @param tube its layer in the lap */
export function solveHarmonic(lap: LayeredLap, tube: number): HarmonicSolution {
  const stretch = overlapOf(lap);
  const { half, ends } = stretch;
  const size = 2 * half;
  const a = new Float64Array(size * size);
  const b = new Float64Array(size);
  for (let i = 0; i < half; i++) {
    for (let j = 0; j < half; j++) {
      a[i * size + j] = ends.k00[i * half + j]!;
      a[i * size + half + j] = ends.k01[i * half + j]!;
      a[(half + i) * size + j] = ends.k10[i * half + j]!;
      a[(half + i) * size + half + j] = ends.k11[i * half + j]!;
    }
  }
  const shells = [lap.sectionAt(0).shells, lap.sectionAt(lap.length).shells] as const;
  ([lap.root, lap.mouth] as const).forEach((walls, end) => {
    walls.forEach((wall, i) => {
      const first = end * half + HARMONIC * i;
      if (wall.kind === 'clamped') {
        for (let row = first; row < first + HARMONIC; row++) {
          a.fill(0, row * size, (row + 1) * size);
          a[row * size + row] = 1;
        }
      } else if (wall.kind === 'run-out') {
        const beyond = runOut(shells[end]![i]!, end === 0 ? 'root' : 'mouth');
        for (let row = 0; row < HARMONIC; row++) {
          for (let column = 0; column < HARMONIC; column++) {
            a[(first + row) * size + first + column]! -= beyond.stiffness[row * HARMONIC + column]!;
          }
          b[first + row]! += i === tube ? beyond.pull[row]! : 0;
        }
      }
    });
  });
  solveDense(a, b, size, 1);
  const [d0, d1] = [b.slice(0, half), b.slice(half)];
  return {
    along: (x) => {
      const points: HarmonicPoint[] = [];
      stretch.sample({ x, from: 0, to: x.length, start: 0 }, d0, d1, 0, (i, y) => {
        const section = lap.sectionAt(x[i]!);
        points.push({
          stresses: harmonicSystem(section).stresses(y),
          forces: section.shells.map((shell, k) => wallForces(shell, y, k, half)),
        });
      });
      return points;
    },
  };
}

function overlapOf(lap: LayeredLap): Stretch {
  if (!lap.uniform) {
    return joinAll(taperedStretches(lap, { name: 'harmonic', of: harmonicSystem }, 0, lap.length));
  }
  const { a, g } = harmonicSystem(lap.sectionAt(0));
  return balancedStretch(balance(a, g), lap.length);
}

function wallForces(shell: Shell, y: Matrix, i: number, half: number): WallForces {
  const axial = y[half + 4 * i]! / shell.radius;
  const ratio = shell.cxt / shell.cxx;
  const strain = (y[4 * i + 1]! + y[4 * i + 3]!) / shell.radius;
  return {
    axial,
    hoop: ratio * axial + (shell.ctt - ratio * shell.cxt) * strain,
    moment: y[half + 4 * i + 2]! / shell.radius + shell.offset * axial,
  };
}

/** A wall that goes on alone: at the mouth bent far away by a unit moment, at the root held far away. */
function runOut(shell: Shell, side: 'root' | 'mouth'): { stiffness: Matrix; pull: Matrix } {
  const { a, g } = harmonicSystem({ shells: [shell], bonds: [], shearFactor: SHEAR_FACTOR });
  const { ends } = balancedStretch(balance(a, g), FAR * Math.sqrt(shell.radius * shell.thickness));
  const atMouth = side === 'mouth';
  const [nearNear, nearFar] = atMouth ? [ends.k00, ends.k01] : [ends.k11, ends.k10];
  const [farFar, farNear] = atMouth ? [ends.k11, ends.k10] : [ends.k00, ends.k01];
  const matrix = new Float64Array(16);
  const right = new Float64Array(4 * 5);
  const row = (target: number, terms: readonly (readonly [number, number])[]): void => {
    for (const [from, factor] of terms) {
      for (let j = 0; j < 4; j++) {
        matrix[target * 4 + j]! += factor * farFar[from * 4 + j]!;
        right[target * 5 + j]! -= factor * farNear[from * 4 + j]!;
      }
    }
  };
  if (atMouth) {
    // N = M·cosθ/(π·R²), no force across.
    row(0, [[0, 1]]);
    right[4] = 1 / (Math.PI * shell.radius);
    row(3, [[3, 1]]);
  } else {
    matrix[0] = 1;
    matrix[15] = 1;
  }
  row(1, [[1, 1]]);
  row(2, [
    [2, 1],
    [0, shell.offset],
  ]);
  solveDense(matrix, right, 4, 5);
  const stiffness = Float64Array.from(nearNear);
  const pull = new Float64Array(4);
  for (let i = 0; i < 4; i++) {
    for (let k = 0; k < 4; k++) {
      for (let j = 0; j < 4; j++) stiffness[i * 4 + j]! += nearFar[i * 4 + k]! * right[k * 5 + j]!;
      pull[i]! += nearFar[i * 4 + k]! * right[k * 5 + 4]!;
    }
  }
  return { stiffness, pull };
}
