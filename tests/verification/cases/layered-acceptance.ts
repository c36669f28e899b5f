/** The layered shells against the stresses that the specification asks them to meet, by its tolerances. */
import type { JointInput, Material } from '../../../src/model/joint/types.ts';
import { doubleForces, doubleLap, singleLap } from '../../support/section-12.ts';
import { type CurveCase, type Topic, value, type Zone } from '../case.ts';
import { bondedJoint, solveBondedJoint } from './bonded-joints.ts';
import { type Ends, meanShear, SHEAR, zonesOf } from './layered-limits.ts';
import {
  axisymmetric,
  type Bond,
  bondOf,
  cooled,
  force,
  harmonic,
  inner,
  outer,
  panels,
  solve,
  solveBent,
} from './layered-tables.ts';

const source =
  "the specification's table: axisymmetric finite elements (first harmonic for bending), mid-bond stresses; shear positive in tension of the tube";
const DEFINITIONS =
  'The last h holds the stations that are h or less from an end: 29.8 mm is its edge. Peel counts where it is over a quarter of the largest in the table. Means are those of the sizes of the relative differences.';
const OFF_MIDDLE =
  'The table stands an eighth of the gap outside the middle of the bond (reference/README.md), and towards an end the stresses turn across the gap: at 29.8 mm the finite elements of the next topic have in the very middle the shear of the last row, above what the program has, which lies between the two. That explains why this station is OUTSIDE; it does not bring it inside.';
const single = [
  'tube: inner radius 14.4 mm, wall 1.6 mm, Ex = 70, Eθ = 30, Er = 9, Gxr = 4 GPa, ν = 0.3, αx = 1e-6, αθ = 6e-6, αr = 30e-6 /°C',
  'socket outside: wall 1.2 mm, E = 114 GPa, ν = 0.34, α = 8.6e-6 /°C',
  'adhesive: h = 0.2 mm, E = 2.4 GPa, ν = 0.37, α = 55e-6 /°C; overlap 30 mm',
];

const LAYERED = 'layered shells';

const singleEnds: Ends = { length: 30, gap: 0.2, small: 0.1, edge: 0.03 };
function singleCase(
  id: string,
  title: string,
  load: string,
  bond: Bond,
  more: Partial<CurveCase> = {},
): CurveCase {
  return {
    id,
    title,
    source,
    tag: 'finite elements',
    inputs: [...single, load],
    length: 30,
    panels: panels(load.split(' as ')[0]!, bond),
    zones: zonesOf(bond, singleEnds),
    ...more,
    checks: [meanShear(bond, singleEnds), ...(more.checks ?? [])],
    remarks: [DEFINITIONS, ...(more.remarks ?? [])],
  };
}

const pulled = bondOf(solve(singleLap, 1e4, 0), force, LAYERED);
const cold = bondOf(solve(singleLap, 0, -100), cooled, LAYERED);

/** Beyond the specification's 8 % where the edge of the last h is counted. */
const coldEdge: Zone = {
  name: 'x = 29.8 mm, h from the mouth',
  contains: (x) => x === 29.8,
  stress: 'shear',
  of: 'value',
  tolerance: 0.09,
  why: "OUTSIDE the specification's 8 % if the edge of the last h is counted, which is read here as not counting; a lock against regression, set just above what is found",
};

/** The same station in the very middle of the gap, by the project's own finite elements. */
function middleCheck(x: number) {
  const joint = bondedJoint('socket-thermal');
  const { stations, bonds } = joint.expected;
  return value({
    name: `shear at x = ${x} mm in the middle of the gap`,
    unit: 'MPa',
    expected: bonds[0]!.shear[stations.indexOf(x)]!,
    computed: () => solveBondedJoint(joint).layeredShear(0, x),
    tolerance: { relative: 0.04 },
    why: 'set just above what is found',
  });
}

/** The local line load on the tension side as a load all round: P = F + 2M/R_t. */
const LOCAL_PULL = (2 * 200_000) / 15.2;
const bare = bondOf(solve(singleLap, LOCAL_PULL, 0), axisymmetric, LAYERED);

const { tube } = singleLap as Extract<JointInput, { type: 'sleeve-single' }>;
/** The tube's Gxθ is not in the table: 20 GPa, as the finite elements of the next topic have it. */
const bentLap = {
  ...singleLap,
  tube: { ...tube, material: { ...tube.material, shearModulus: 20_000 } as Material },
} as JointInput;
const bent = bondOf(solveBent(bentLap, 200_000), harmonic, LAYERED);

const bendingLoad = 'moment 200 N·m at θ = 0 as the line load P = 2M/R_t = 26 316 N';
const localLine = singleCase(
  'acceptance-bending-local',
  'Bending, axisymmetric at the local line load',
  bendingLoad,
  bare,
  {
    zones: zonesOf(bare, {
      ...singleEnds,
      found: [
        {
          name: 'x = 0.5 mm, beside the free end of the tube',
          contains: (x) => x === 0.5,
          stress: 'peel',
          of: 'value',
          tolerance: 0.27,
          why: "OUTSIDE the specification's 20 %: peel falls to nothing within two gaps from here, and so steep a curve is off by a quarter when it is moved by a tenth of a gap; set just above what is found",
        },
      ],
    }),
    remarks: ['Like with like: both are solved for a load that is the same all round.'],
  },
);

const bending = singleCase(
  'acceptance-bending',
  'Bending, first harmonic',
  'moment 200 N·m as the first harmonic, at θ = 0; Gxθ of the tube 20 GPa',
  bent,
  {
    zones: zonesOf(bent, { ...singleEnds, edge: 0.035 }),
    remarks: [
      'The layered shells solve the first harmonic itself, with the displacement around; the table is first-harmonic finite elements.',
    ],
  },
);

const doubleSolved = solve(doubleLap, 2e4, 0);
const bonds = [
  bondOf(doubleSolved, inner, 'layered shells, inner bond', 0),
  bondOf(doubleSolved, outer, 'layered shells, outer bond', 1),
] as const;
const doubleEnds = [
  { length: 25, gap: 0.2, small: 0.1, edge: SHEAR },
  { length: 25, gap: 0.25, small: 0.04, edge: SHEAR },
] as const;
const sleeve: CurveCase = {
  id: 'acceptance-double',
  title: 'Double-lap sleeve, 20 kN',
  source,
  tag: 'finite elements',
  inputs: [
    'spigot: inner radius 12.0 mm, wall 1.0 mm; gap 0.20 mm; tube wall 2.0 mm; gap 0.25 mm; socket wall 1.3 mm; materials as above',
    'overlap 25 mm, both metal walls clamped at the root; force 20 kN',
  ],
  length: 25,
  panels: [...panels('inner bond, 20 kN', bonds[0]), ...panels('outer bond, 20 kN', bonds[1])],
  zones: bonds.flatMap((bond, j) => zonesOf(bond, doubleEnds[j]!)),
  checks: [
    ...bonds.map((bond, j) => meanShear(bond, doubleEnds[j]!)),
    ...(['spigot', 'socket'] as const).map((part, j) =>
      value({
        name: `force in the bond of the ${part}`,
        unit: 'N',
        expected: doubleForces[j]!,
        computed: () => doubleSolved().force(2 * j, 0),
        tolerance: { relative: 0.025 },
        why: 'the specification gives no tolerance; set just above what is found',
      }),
    ),
  ],
  remarks: [
    DEFINITIONS,
    'The table has no station within 1 mm of the clamped root: what peel does there is in the cases of double laps below.',
  ],
};

export const layeredAcceptance: Topic = {
  title: 'Acceptance: layered shells',
  intro:
    'What the specification asks of the layered shells: shear within 8 % away from the last h and 4 % in the mean, peel within 20 % where it is over a quarter of its peak and 25 % at h from the mouth. Its figures come from finite elements that were made before the program. Where a figure is outside, the row says OUTSIDE and by how much.',
  cases: [
    singleCase('acceptance-force', 'Single-lap socket, 10 kN', '10 kN', pulled),
    singleCase('acceptance-cold', 'Single-lap socket, −100 °C', 'no load, ΔT = −100 °C', cold, {
      zones: zonesOf(cold, { ...singleEnds, small: 0.25, edge: SHEAR, found: [coldEdge] }),
      checks: [middleCheck(29.8)],
      remarks: [OFF_MIDDLE],
    }),
    localLine,
    bending,
    sleeve,
  ],
};
