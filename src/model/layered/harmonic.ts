/** The layered lap of a sleeve under a unit bending moment: amplitudes at cos θ (around: sin θ). */
import { type SectionColumns, sectionColumns } from './columns.ts';
import { endDisplacements, type Layout } from './ends.ts';
import { HARMONIC, type HarmonicSystem, harmonicSystem } from './harmonic-system.ts';
import type { LayeredLap } from './lap.ts';
import { type Asked, type OfSection, ofSection } from './readings.ts';
import { aloneIn, runOut } from './run-out.ts';
import type { LayeredSection } from './section.ts';
import { Acting, joinAll, readBy, type Stretch, uniformStretch } from './stretch.ts';
import { taperedStretches } from './taper.ts';
import { wallReadings } from './wall-forces.ts';

export type HarmonicColumns = SectionColumns<(typeof READ)[number]>;
/** Of each bond, as the system reads them. */
const READ = ['shear', 'peel', 'around'] as const;

export interface HarmonicSolution {
  /**
   * Per N·mm of moment, over places in rising order.
   * @param withWalls whether the walls are asked for
   */
  columns(x: readonly number[], withWalls: boolean): HarmonicColumns;
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

const readingsOf = ({ shells }: LayeredSection, { bonds }: HarmonicSystem): OfSection =>
  ofSection(bonds, () =>
    wallReadings(
      shells,
      HARMONIC,
      shells.map(() => NO_PULL),
    ),
  );

function stretchOf(lap: LayeredLap): Stretch<Asked> {
  if (!lap.uniform) {
    const coefficients = {
      name: 'harmonic',
      of: harmonicSystem,
      readings: (section: LayeredSection) => readingsOf(section, harmonicSystem(section)),
    };
    return joinAll(taperedStretches(lap, coefficients, 0, lap.length));
  }
  const section = lap.sectionAt(0);
  const system = harmonicSystem(section);
  return readBy(uniformStretch(system.a, system.g, lap.length), readingsOf(section, system));
}

export function solveHarmonic(lap: LayeredLap): HarmonicSolution {
  const stretch = stretchOf(lap);
  const [[d0, d1]] = endDisplacements(lap, stretch.ends, BENT);
  const acting = new Acting(d0, d1, 0);
  return {
    columns: (x, withWalls) =>
      sectionColumns(stretch, acting, x, READ, lap.sectionAt(0), withWalls),
  };
}
