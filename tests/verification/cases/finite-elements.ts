/** Shear lag against the joint as a continuum: the check of physics. */
import { combine } from '../../../src/model/shear-lag/elastic.ts';
import { solveElastic } from '../../../src/model/shear-lag/solve-elastic.ts';
import {
  axialShear,
  bendingShear,
  doubleForces,
  doubleLap,
  doubleShear,
  noLoads,
  section12,
  singleLap,
  thermalShear,
} from '../../support/section-12.ts';
import { type CurveCase, lazy, type Panel, type Topic, value, type Zone } from '../case.ts';

const solve = (...args: Parameters<typeof section12>) =>
  lazy(() => {
    const problem = section12(...args);
    return combine(solveElastic(problem.channels[0]!, problem.bonds, problem.length), 1);
  });

const source =
  "the project's own axisymmetric finite-element model (first harmonic for bending), mid-bond stresses, made with a general-purpose solver";
const tube =
  'tube: inner radius 14.4 mm, wall 1.6 mm, Ex = 70, Eθ = 30, Er = 9, Gxr = 4 GPa, ν = 0.3, αx = 1e-6, αθ = 6e-6, αr = 30e-6 /°C';
const socket = 'socket outside: wall 1.2 mm, E = 114 GPa, ν = 0.34, α = 8.6e-6 /°C';
const adhesive = 'adhesive: h = 0.2 mm, E = 2.4 GPa, ν = 0.37, α = 55e-6 /°C; overlap 30 mm';
const single = [tube, socket, adhesive];

const shearPanel = (
  title: string,
  rows: readonly (readonly [number, number])[],
  computed: () => (x: number) => number,
): Panel => ({
  title,
  x: rows.map(([x]) => x),
  series: [
    { name: 'shear lag', stress: 'shear', expected: rows.map(([, shear]) => shear), computed },
  ],
});

const SHAPE =
  'a shear lag has no bending of the walls: it is high beside an end and low in the trough; these misses are what it cannot do';
const zones = (
  mouth: { readonly from: number; readonly tolerance: number; readonly why: string },
  elsewhere: number,
): readonly Zone[] => [
  {
    name: 'at the mouth',
    contains: (x) => x >= mouth.from,
    of: 'value',
    tolerance: mouth.tolerance,
    why: mouth.why,
  },
  {
    name: 'elsewhere',
    contains: () => true,
    of: 'peak',
    tolerance: elsewhere,
    why: SHAPE,
  },
];
const EARLIER =
  'These stresses stand an eighth of the gap outside its middle (reference/README.md, finite elements of bonded joints).';
const CORNER =
  'In the last gap’s width of the bond the elastic stress of a real corner is singular or zero; no figure of the finite elements is taken from there, and the peak of the shear lag at the very end is a nominal one.';

const pull = solve(singleLap, { ...noLoads, force: 1e4 }, 0);
const force: CurveCase = {
  id: 'fe-single-force',
  title: 'Single-lap socket, 10 kN',
  source,
  tag: 'finite elements',
  inputs: [...single, 'force 10 kN'],
  length: 30,
  panels: [shearPanel('Shear, 10 kN', axialShear, () => (x) => pull().shear(0, x))],
  zones: zones(
    {
      from: 29.5,
      tolerance: 0.062,
      why: "the walls' own shear (section 3) brings the peak this near",
    },
    0.098,
  ),
  remarks: [CORNER, EARLIER, 'Without the walls’ own shear the mouth comes out 18 to 25 % high.'],
};

const cold = solve(singleLap, noLoads, -100);
const temperature: CurveCase = {
  id: 'fe-single-cold',
  title: 'Single-lap socket, −100 °C',
  source,
  tag: 'finite elements',
  inputs: [...single, 'no load, ΔT = −100 °C'],
  length: 30,
  panels: [shearPanel('Shear, ΔT = −100 °C', thermalShear, () => (x) => cold().shear(0, x))],
  zones: zones(
    {
      from: 29.5,
      tolerance: 0.05,
      why: "the walls' own shear (section 3) brings the peak this near",
    },
    0.092,
  ),
  remarks: [CORNER, EARLIER],
};

const bend = solve(singleLap, { ...noLoads, moment: 200_000 }, 0);
const bending: CurveCase = {
  id: 'fe-single-bending',
  title: 'Single-lap socket, 200 N·m',
  source,
  tag: 'finite elements',
  inputs: [...single, 'moment 200 N·m, stress on the tension side (θ = 0)'],
  length: 30,
  panels: [shearPanel('Shear at θ = 0, 200 N·m', bendingShear, () => (x) => bend().shear(0, x))],
  zones: [
    {
      name: 'at the root',
      contains: (x) => x < 1,
      of: 'value',
      tolerance: 0.17,
      why: 'beam bending of tube and sleeve (section 4); the axial problem at the local line load is 36 % high here',
    },
    ...zones(
      { from: 29, tolerance: 0.06, why: 'beam bending of tube and sleeve (section 4)' },
      0.12,
    ),
  ],
  remarks: [CORNER, EARLIER],
};

const double = solve(doubleLap, { ...noLoads, force: 2e4 }, 0);
const doublePanel = (title: string, j: 0 | 1): Panel =>
  shearPanel(
    title,
    doubleShear.map((row) => [row[0], row[j + 1]!] as const),
    () => (x) => double().shear(j, x),
  );
const sleeve: CurveCase = {
  id: 'fe-double-force',
  title: 'Double-lap sleeve, 20 kN',
  source,
  tag: 'finite elements',
  inputs: [
    'spigot: inner radius 12.0 mm, wall 1.0 mm; gap 0.20 mm; tube wall 2.0 mm; gap 0.25 mm; socket wall 1.3 mm; materials as above',
    'overlap 25 mm, both metal walls clamped at the root; force 20 kN',
  ],
  length: 25,
  panels: [
    doublePanel('Shear of the inner bond, 20 kN', 0),
    doublePanel('Shear of the outer bond, 20 kN', 1),
  ],
  zones: zones(
    { from: 23, tolerance: 0.11, why: 'the walls bend and change the shares near the ends' },
    0.115,
  ),
  checks: (['spigot', 'socket'] as const).map((part, j) =>
    value({
      name: `force in the bond of the ${part}`,
      unit: 'N',
      expected: doubleForces[j]!,
      computed: () => double().outerForce(j, 0),
      tolerance: { relative: 0.051 },
      why: 'radial stiffness of the tube wall, which a shear lag lacks, shifts the shares',
    }),
  ),
  remarks: [CORNER, EARLIER],
};

export const finiteElements: Topic = {
  title: 'Finite elements: shear lag',
  intro:
    'Here nothing is exact. The tolerances say how far a shear lag may be from a continuum, and the tables show where it is. Dots are finite elements, lines the program.',
  cases: [force, temperature, bending, sleeve],
};
