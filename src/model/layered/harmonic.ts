/** The layered lap of a sleeve under a unit bending moment: amplitudes at cos θ (around: sin θ). */
import { endDisplacements, type Layout } from './ends.ts';
import { HARMONIC, type HarmonicStresses, harmonicSystem } from './harmonic-system.ts';
import type { LayeredLap } from './lap.ts';
import { aloneIn, runOut } from './run-out.ts';
import { joinAll, uniformStretch } from './stretch.ts';
import { taperedStretches } from './taper.ts';
import { type WallForces, wallForces } from './wall-forces.ts';

export interface HarmonicPoint {
  readonly stresses: HarmonicStresses;
  readonly forces: readonly WallForces[];
}

export interface HarmonicSolution {
  /** Per N·mm of moment, at places in rising order. */
  along(x: readonly number[]): HarmonicPoint[];
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
  return {
    along: (x) => {
      const points: HarmonicPoint[] = [];
      stretch.sample({ x, from: 0, to: x.length, start: 0 }, d0, d1, 0, (i, y) => {
        const section = lap.sectionAt(x[i]!);
        points.push({
          stresses: (uniform ?? harmonicSystem(section)).stresses(y),
          forces: section.shells.map((shell, wall) =>
            wallForces(shell, y, { half, each: HARMONIC, wall }, NO_PULL, 0),
          ),
        });
      });
      return points;
    },
  };
}
