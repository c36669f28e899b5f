/** The layered lap of a sleeve under a unit bending moment: amplitudes at cos θ (around: sin θ). */
import { endDisplacements, type Layout } from './ends.ts';
import { HARMONIC, harmonicSystem } from './harmonic-system.ts';
import type { LayeredLap } from './lap.ts';
import { aloneIn, runOut } from './run-out.ts';
import { joinAll, uniformStretch } from './stretch.ts';
import { taperedStretches } from './taper.ts';
import { wallForces } from './wall-forces.ts';

export interface HarmonicColumns {
  readonly bonds: readonly {
    readonly shear: Float64Array;
    readonly peel: Float64Array;
    readonly around: Float64Array;
  }[];
  /** Inside to outside. */
  readonly walls: readonly {
    readonly axial: Float64Array;
    readonly hoop: Float64Array;
    readonly moment: Float64Array;
  }[];
}

export interface HarmonicSolution {
  /** Per N·mm of moment, over places in rising order. */
  columns(x: readonly number[]): HarmonicColumns;
}

const BENT: Layout = {
  each: HARMONIC,
  thermal: false,
  // The tube is bent far away: N = M·cosθ/(π·R²), no force across.
  runOut: (shell, pull, side) =>
    runOut(
      shell,
      pull === 'held' ? pull : 1 / (Math.PI * shell.radius),
      side,
      harmonicSystem(aloneIn(shell)),
      HARMONIC,
    ),
};

const NO_PULL = { n: 0, m: 0 };

export function solveHarmonic(lap: LayeredLap): HarmonicSolution {
  const uniform = lap.uniform ? harmonicSystem(lap.sectionAt(0)) : null;
  const stretch = uniform
    ? uniformStretch(uniform.a, uniform.g, lap.length)
    : joinAll(taperedStretches(lap, { name: 'harmonic', of: harmonicSystem }, 0, lap.length));
  const { half } = stretch;
  const [[d0, d1]] = endDisplacements(lap, stretch.ends, BENT);
  const columns = (x: readonly number[]): HarmonicColumns => {
    const empty = (): Float64Array => new Float64Array(x.length);
    const { bonds: layers, shells } = lap.sectionAt(0);
    const bonds = layers.map(() => ({ shear: empty(), peel: empty(), around: empty() }));
    const walls = shells.map(() => ({ axial: empty(), hoop: empty(), moment: empty() }));
    const read = new Float64Array(3 * bonds.length);
    stretch.sample({ x, from: 0, to: x.length, start: 0 }, d0, d1, 0, (i, y) => {
      const section = lap.sectionAt(x[i]!);
      (uniform ?? harmonicSystem(section)).read(y, read);
      bonds.forEach((bond, j) => {
        bond.shear[i] = read[3 * j]!;
        bond.peel[i] = read[3 * j + 1]!;
        bond.around[i] = read[3 * j + 2]!;
      });
      section.shells.forEach((shell, k) => {
        const place = { half, each: HARMONIC, wall: k } as const;
        const { axial, hoop, moment } = wallForces(shell, y, place, NO_PULL, 0);
        const wall = walls[k]!;
        wall.axial[i] = axial;
        wall.hoop[i] = hoop;
        wall.moment[i] = moment;
      });
    });
    return { bonds, walls };
  };
  return { columns };
}
