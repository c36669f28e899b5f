/** Flat single laps: moments at the ends of the overlap, shear and peel in the bond. */
import { homogeneousAdherend } from '../../../src/model/flat-lap/adherend.ts';
import { hartSmithFactor } from '../../../src/model/flat-lap/edge-factor.ts';
import { type EdgeMoments, edgeMoments } from '../../../src/model/flat-lap/edge-moment.ts';
import {
  balancedTransverseForce,
  type EqualLap,
  golandReissner,
  type LapEnd,
  slopeTransverseForce,
  transverseFactor,
} from '../../../src/model/flat-lap/goland-reissner.ts';
import { readFixture } from '../../support/fixtures.ts';
import {
  type Case,
  type Check,
  type Comparison,
  type CurveCase,
  group,
  lazy,
  printed,
  type Topic,
} from '../case.ts';

const overlap = 12.5;
const wall = homogeneousAdherend(1.62, 70_000, 0.34);
const strips = (load: number): EqualLap => ({
  load,
  overlap,
  thickness: 1.62,
  modulus: 70_000,
  adhesive: { thickness: 0.2, shearModulus: 650, modulus: 1850 },
});
const edges = (load: number): EdgeMoments =>
  edgeMoments({ load, overlap, gap: 0, root: wall, mouth: wall });
const xiC = (load: number): number => (Math.sqrt(load / wall.bendingStiffness) * overlap) / 2;

/** The lap loaded at its ends as in the source, and as the balance of the overlap asks. */
const bothWays = (load: number) =>
  lazy(() => {
    const { factor } = edges(load).golandReissner.root;
    const kPrime = transverseFactor(factor, xiC(load));
    const solve = (transverseForce: number) =>
      golandReissner(strips(load), { factor, transverseForce });
    return {
      kPrime,
      source: solve(slopeTransverseForce(load, 1.62, overlap, kPrime)),
      balanced: solve(balancedTransverseForce(load, 1.62, overlap, factor)),
    };
  });

interface Row {
  readonly load: number;
  readonly factor: string;
  readonly kPrime: string;
  readonly shearEnd: string;
  readonly shearMiddle: string;
  readonly peelEnd: string;
  readonly peelBalanced: string;
  readonly hartSmith: string;
}

const table: readonly Row[] = (
  [
    [50, '0.791673', '0.104466', '10.77627', '1.64066', '14.72109', '14.71852', '0.783994'],
    [150, '0.688151', '0.157280', '30.45817', '5.57329', '40.08556', '40.05096', '0.670271'],
    [250, '0.632228', '0.186547', '49.07941', '9.87522', '63.16928', '63.05607', '0.606735'],
  ] as const
).map(([load, factor, kPrime, shearEnd, shearMiddle, peelEnd, peelBalanced, hartSmith]) => ({
  load,
  factor,
  kPrime,
  shearEnd,
  shearMiddle,
  peelEnd,
  peelBalanced,
  hartSmith,
}));

const rowChecks = (row: Row): readonly Check[] => {
  const { load } = row;
  const lap = bothWays(load);
  const at = (name: string): string => `${name}, P = ${load} N/mm`;
  return [
    printed(
      at('k, Goland and Reissner'),
      '',
      row.factor,
      () => edges(load).golandReissner.root.factor,
      'memory',
    ),
    printed(at('k′'), '', row.kPrime, () => lap().kPrime, 'memory'),
    printed(at('shear at the ends'), 'MPa', row.shearEnd, () => lap().source.shear(0)),
    printed(at('shear at the far end'), 'MPa', row.shearEnd, () => lap().source.shear(overlap)),
    printed(at('shear in the middle'), 'MPa', row.shearMiddle, () =>
      lap().source.shear(overlap / 2),
    ),
    printed(
      at('peel at the ends, V by the slope in the run-out'),
      'MPa',
      row.peelEnd,
      () => lap().source.peel(0),
      'memory',
    ),
    printed(at('peel at the ends, V by balance'), 'MPa', row.peelBalanced, () =>
      lap().balanced.peel(overlap),
    ),
    printed(
      at('k, Hart-Smith'),
      '',
      row.hartSmith,
      () => edges(load).hartSmith.mouth.factor,
      'memory',
    ),
    printed(
      at('k, Hart-Smith, by the factor alone'),
      '',
      row.hartSmith,
      () => hartSmithFactor(xiC(load)),
      'memory',
    ),
  ];
};

const aluminiumStrips: Case = {
  id: 'flat-single-lap',
  title: 'Single lap of two equal aluminium strips',
  source:
    'closed forms after M. Goland, E. Reissner, The Stresses in Cemented Joints (1944), and the factor of L. J. Hart-Smith (1973, NASA CR-112236), both from memory; shear and peel proved by an own solution of the two beams as a boundary-value problem, to all digits shown',
  tag: 'independent',
  inputs: [
    'strips E = 70 000 MPa, ν = 0.34, t = 1.62 mm; overlap 12.5 mm, long run-outs',
    'adhesive E = 1850 MPa, G = 650 MPa, thickness 0.20 mm, neglected in the lever',
    'E, not E/(1 − ν²), in the decay rates of shear and peel, as in the source',
  ],
  checks: table.flatMap(rowChecks),
  remarks: [
    'The factors k and k′ are remembered formulas evaluated once more; no printed table of them could be read. Their assumption is held to a boundary-value problem below.',
  ],
};

interface FixtureWall {
  readonly thickness: number;
  readonly membrane: number;
  readonly bending: number;
}
interface Fixture {
  readonly stations: readonly number[];
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: {
      readonly load: number;
      readonly overlap: number;
      readonly gap: number;
      readonly root: FixtureWall;
      readonly mouth: FixtureWall;
    };
    readonly expected: {
      readonly rootMoment: number;
      readonly mouthMoment: number;
      readonly transverseForce: number;
    };
  }[];
  readonly stresses: readonly {
    readonly name: string;
    readonly inputs: EqualLap & LapEnd;
    readonly expected: { readonly shear: readonly number[]; readonly peel: readonly number[] };
  }[];
}

const fixture = lazy(() => readFixture('flat-lap.json') as Fixture);
const toWall = ({ thickness, membrane, bending }: FixtureWall) => ({
  thickness,
  membraneStiffness: membrane,
  bendingStiffness: bending,
});

const edgeComparisons = (
  pick: (e: Fixture['cases'][number]['expected'], computed: EdgeMoments) => [number, number],
): readonly Comparison[] =>
  fixture().cases.map(({ name, inputs, expected }) => {
    const computed = edgeMoments({
      ...inputs,
      root: toWall(inputs.root),
      mouth: toWall(inputs.mouth),
    });
    const [wanted, found] = pick(expected, computed);
    return { what: name, expected: wanted, computed: found };
  });

const why = 'the boundary-value solution is good to about 1e-8';

const edgeLoads: Case = {
  id: 'flat-lap-edges',
  title: 'Ends of the overlap, equal and unequal adherends',
  source:
    'own boundary-value problem of two long run-outs and an overlap that bends as one plate (reference/flat_lap.py): the assumption of Goland and Reissner, not their formula',
  tag: 'independent',
  inputs: ['eight laps: equal walls, laminates, a thin wall at either end, two materials'],
  checks: [
    group({
      name: 'moment at the root',
      compare: () => edgeComparisons((e, { golandReissner: g }) => [e.rootMoment, g.root.moment]),
      tolerance: 1e-7,
      scale: 'of the value',
      why,
    }),
    group({
      name: 'moment at the mouth',
      compare: () => edgeComparisons((e, { golandReissner: g }) => [e.mouthMoment, g.mouth.moment]),
      tolerance: 1e-7,
      scale: 'of the value',
      why,
    }),
    group({
      name: 'transverse force',
      compare: () =>
        edgeComparisons((e, { golandReissner: g }) => [e.transverseForce, g.transverseForce]),
      tolerance: 1e-6,
      scale: 'of the value',
      why: 'a difference of moments: ten times their error',
    }),
  ],
  remarks: ['It shows the arithmetic, not that a real overlap is so stiff.'],
};

const stressComparisons = (stress: 'shear' | 'peel'): readonly Comparison[] =>
  fixture().stresses.flatMap(({ name, inputs, expected }) => {
    const solution = golandReissner(inputs, inputs);
    const peak = Math.max(...expected[stress].map(Math.abs));
    return expected[stress].map((wanted, i) => {
      const x = fixture().stations[i]! * inputs.overlap;
      return {
        what: `${name}, x = ${x} mm`,
        expected: wanted,
        computed: solution[stress](x),
        scale: peak,
      };
    });
  });

const twoBeams: Case = {
  id: 'flat-lap-stresses',
  title: 'Shear and peel between two equal beams',
  source:
    'own boundary-value problem of two beams and the adhesive between them, twelve first-order equations (reference/flat_lap.py)',
  tag: 'independent',
  inputs: ['six laps: short and thick, long and thin, soft and stiff adhesive; V by balance'],
  checks: (['shear', 'peel'] as const).map((stress) =>
    group({
      name: `${stress} at nine stations`,
      compare: () => stressComparisons(stress),
      tolerance: 1e-7,
      scale: 'of the peak',
      why,
    }),
  ),
};

const aluminium = lazy(() => fixture().stresses.filter(({ inputs }) => inputs.overlap === overlap));

const alongTheOverlap: CurveCase = {
  id: 'flat-lap-curves',
  title: 'Along the overlap of the aluminium strips',
  source: twoBeams.source,
  tag: 'independent',
  inputs: aluminiumStrips.inputs,
  length: overlap,
  panels: aluminium().map(({ inputs, expected }) => {
    const solution = lazy(() => golandReissner(inputs, inputs));
    return {
      title: `P = ${inputs.load} N/mm`,
      x: fixture().stations.map((station) => station * overlap),
      series: (['shear', 'peel'] as const).map((stress) => ({
        name: stress,
        stress,
        expected: expected[stress],
        computed: () => (x: number) => solution()[stress](x),
      })),
    };
  }),
  zones: [{ name: 'everywhere', contains: () => true, of: 'peak', tolerance: 1e-7, why }],
};

export const flatLaps: Topic = {
  title: 'Flat single laps',
  intro:
    'The load of a flat single lap is eccentric: the joint turns, and a moment is left at each end of the overlap. The shear and the peel that go with it in closed form.',
  cases: [aluminiumStrips, edgeLoads, twoBeams, alongTheOverlap],
};

/** By the kind of test that holds them. */
export const publishedFlatLaps: readonly Case[] = [aluminiumStrips];
export const independentFlatLaps: readonly Case[] = [edgeLoads, twoBeams];
