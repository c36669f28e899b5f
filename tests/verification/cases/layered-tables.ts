/** Stresses that the specification asks the layered shells to meet, and the same joints solved by them. */
import { assemble } from '../../../src/model/joint/assembly.ts';
import type { JointInput } from '../../../src/model/joint/types.ts';
import { solveHarmonic } from '../../../src/model/layered/harmonic.ts';
import { elasticZones, solveLayered } from '../../../src/model/layered/lap.ts';
import { layeredLap, layerOrder } from '../../../src/model/layered/of-joint.ts';
import {
  adhesive,
  axialShear,
  bendingShear,
  doubleShear,
  thermalShear,
} from '../../support/section-12.ts';
import { lazy, type Panel } from '../case.ts';

/** Station, shear, peel. */
export type Row = readonly [x: number, shear: number, peel: number];
const withPeel = (
  shear: readonly (readonly [number, number])[],
  peel: readonly number[],
): readonly Row[] => shear.map(([x, tau], i) => [x, tau, peel[i]!]);

export const force = withPeel(
  axialShear,
  [-0.28, -0.77, -0.26, -0.01, 0.13, -0.17, 1.38, 3.88, 6.29],
);
export const cooled = withPeel(
  thermalShear,
  [0.08, 0.43, -0.2, -0.29, -0.33, -0.5, 0.76, 2.59, 3.15],
);
/** First harmonic at θ = 0, and the axisymmetric solution at the same local line load. */
export const harmonic = withPeel(
  bendingShear,
  [3.62, -1.58, -0.51, 0.01, 0.18, -0.42, 10.31, 18.01],
);
export const axisymmetric: readonly Row[] = [
  [0.5, 18.27, 5.12],
  [3, 9.92, -2.06],
  [8, 5.82, -0.69],
  [15, 3.92, -0.04],
  [25, 10.38, 0.33],
  [28, 17.15, -0.14],
  [29.5, 28.12, 9.71],
  [29.8, 32.25, 16.58],
];
export const inner = withPeel(
  doubleShear.map(([x, shear]) => [x, shear]),
  [0.28, 1.21, 0.94, 0.4, 0.04, -0.34, -1.28, -0.19, 2.82, 4.79],
);
export const outer = withPeel(
  doubleShear.map(([x, , shear]) => [x, shear]),
  [1.98, 0.56, 0.2, 0.05, 0.04, -0.18, -0.95, 1.01, 5.17, 9.17],
);

export interface Solved {
  shear(j: number, x: number): number;
  peel(j: number, x: number): number;
  /** Force of wall i, inside to outside, N. */
  force(i: number, x: number): number;
}

export const solve = (joint: JointInput, pull: number, deltaT: number): (() => Solved) =>
  lazy(() => {
    const assembly = assemble(joint, 'nominal');
    const adhesives = assembly.bonds.map(() => adhesive);
    const lap = layeredLap(assembly, adhesives, deltaT);
    const solution = solveLayered(lap, elasticZones(lap));
    const { signs } = layerOrder(assembly);
    const at = (x: number) => solution.at(x, pull, 1);
    return {
      shear: (j, x) => signs[j]! * at(x).stresses.shear[j]!,
      peel: (j, x) => at(x).stresses.peel[j]!,
      force: (i, x) => 2 * Math.PI * lap.sectionAt(x).shells[i]!.radius * at(x).forces[i]!.axial,
    };
  });

/** Bending: amplitudes at θ = 0 under a moment, N·mm. */
export const solveBent = (joint: JointInput, moment: number): (() => Solved) =>
  lazy(() => {
    const assembly = assemble(joint, 'nominal');
    const lap = layeredLap(
      assembly,
      assembly.bonds.map(() => adhesive),
      0,
    );
    const { signs } = layerOrder(assembly);
    const solution = solveHarmonic(lap);
    const at = (x: number) => solution.columns([x], true);
    return {
      shear: (j, x) => moment * signs[j]! * at(x).bonds[j]!.shear[0]!,
      peel: (j, x) => moment * at(x).bonds[j]!.peel[0]!,
      force: (i, x) => moment * at(x).walls[i]!.axial[0]!,
    };
  });

export interface Bond {
  readonly rows: readonly Row[];
  /** Name of its curves. */
  readonly name: string;
  readonly shear: () => (x: number) => number;
  readonly peel: () => (x: number) => number;
}

export const peakOf = (figures: readonly number[]): number => Math.max(...figures.map(Math.abs));
export const shears = (rows: readonly Row[]): readonly number[] => rows.map(([, shear]) => shear);
export const peels = (rows: readonly Row[]): readonly number[] => rows.map(([, , peel]) => peel);

export const panels = (title: string, { rows, name, shear, peel }: Bond): readonly Panel[] =>
  (['shear', 'peel'] as const).map((stress) => ({
    title: `${stress === 'shear' ? 'Shear' : 'Peel'}, ${title}`,
    x: rows.map(([x]) => x),
    series: [
      {
        name,
        stress,
        expected: stress === 'shear' ? shears(rows) : peels(rows),
        computed: stress === 'shear' ? shear : peel,
      },
    ],
  }));

export const bondOf = (solved: () => Solved, rows: readonly Row[], name: string, j = 0): Bond => ({
  rows,
  name,
  shear: () => (x) => solved().shear(j, x),
  peel: () => (x) => solved().peel(j, x),
});
