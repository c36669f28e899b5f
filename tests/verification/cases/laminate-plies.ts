/** Plies and small stacks: the examples of NASA RP-1351. */
import { plyStates } from '../../../src/model/laminate/first-ply.ts';
import { type Plane, type Triple, times, turnBy } from '../../../src/model/laminate/plane.ts';
import { type Ply, reducedStiffness, turnStiffness } from '../../../src/model/laminate/ply.ts';
import { makeStack, respond, stiffnessOf } from '../../../src/model/laminate/stack.ts';
import { elasticPly } from '../../support/plies.ts';
import { type Case, lazy, printed, value } from '../case.ts';
import { figures, named } from './laminate-figures.ts';

const nettles =
  'A. T. Nettles, Basic Mechanics of Laminated Composite Plates, NASA RP-1351, October 1994';
const nettlesLamina =
  'ply: E1 = 20 010 000, E2 = 1 301 000, G12 = 1 001 000 psi, ν12 = 0.3, ν21 = 0.02 (rounded by the source; 0.01951 by symmetry), 0.005 in';
const nettlesPly = elasticPly({
  axialModulus: 20_010_000,
  transverseModulus: 1_301_000,
  shearModulus: 1_001_000,
  poisson: 0.3,
  thickness: 0.005,
});
const nettlesQ = reducedStiffness(nettlesPly, 0.02);
/** The ply whose own symmetric ν21 gives the Q that the source has with its rounded one. */
const roundedPly: Ply = {
  ...nettlesPly,
  axialModulus: nettlesQ.c11 - nettlesQ.c12 ** 2 / nettlesQ.c22,
  transverseModulus: nettlesQ.c22 - nettlesQ.c12 ** 2 / nettlesQ.c11,
  poisson: nettlesQ.c12 / nettlesQ.c22,
};
const nettlesStiffness = (angles: readonly number[]) =>
  lazy(() => stiffnessOf(makeStack(roundedPly, angles)));

export const lamina: Case = {
  id: 'laminate-ply-stiffness',
  title: 'Stiffness of a ply, along its fibres and at 45°',
  source: nettles,
  tag: 'published',
  inputs: [nettlesLamina],
  checks: [
    ...figures(
      'psi',
      () => ({ ...nettlesQ }),
      { c11: '20130785', c12: '392656', c22: '1308853' },
      named('Q'),
    ),
    ...Object.entries({ c11: 6_557_237, c12: 4_555_238, c16: 4_705_483, c66: 5_163_582 }).map(
      ([key, expected]) =>
        value({
          name: key.replace('c', 'Q̄'),
          unit: 'psi',
          expected,
          computed: () => turnStiffness(nettlesQ, turnBy(45))[key as keyof Plane],
          tolerance: { absolute: 1 },
          why: 'the source turns Q already rounded to whole psi',
        }),
    ),
    value({
      name: 'Q11 with the symmetric ν21',
      unit: 'psi',
      expected: 20_130_785,
      computed: () => reducedStiffness(nettlesPly).c11,
      tolerance: { relative: 1.5e-4 },
      why: 'the rounding of ν21 alone is worth 0.015 %',
    }),
  ],
};

const twoPly = nettlesStiffness([45, 0]);
export const coupling: Case = {
  id: 'laminate-coupling-two-plies',
  title: 'Coupling of a two-ply stack',
  source: `${nettles}, example 2`,
  tag: 'published',
  inputs: [nettlesLamina, '[0/45], the 0° ply on the side of positive z'],
  checks: figures(
    'lb',
    () => ({ ...twoPly().b }),
    { c11: '170', c12: '-52', c22: '-66', c16: '-59', c26: '-59', c66: '-52' },
    named('B'),
  ),
};

const threePly = nettlesStiffness([90, 0, 45]);
export const mixed: Case = {
  id: 'laminate-three-plies',
  title: 'Stretching and coupling of three plies',
  source: `${nettles}, example 9`,
  tag: 'published',
  inputs: [nettlesLamina, '90° at the bottom, then 0°, 45° at the top'],
  checks: [
    ...figures(
      'lb/in',
      () => ({ ...threePly().a }),
      { c11: '139984', c22: '139984', c16: '23527', c66: '35828' },
      named('A'),
    ),
    ...figures(
      'lb',
      () => ({ ...threePly().b }),
      { c11: '131.2', c12: '104', c16: '117.6', c26: '117.6', c66: '104' },
      named('B'),
    ),
    value({
      name: 'B22',
      unit: 'lb',
      expected: -339.4,
      printed: '-339.4',
      computed: () => threePly().b.c22,
      tolerance: { absolute: 0.07 },
      why: "the source's own stiffnesses give −339.34: its last digit is one too high",
    }),
  ],
};

const strip = lazy(() => {
  const stack = makeStack(roundedPly, [0, 45, 45, 0]);
  const answer = respond(stiffnessOf(stack), { force: [500, 0, 0] });
  const state = plyStates(stack, { ...answer, deltaT: 0 })[2]!;
  return { answer, state };
});
const components = ['1', '2', '12'] as const;
/** Half a unit of the last printed digit of the strains from which the source takes the stresses. */
const strainRounding = 5e-6;
const stressRounding: Triple = [
  (nettlesQ.c11 + nettlesQ.c12) * strainRounding,
  (nettlesQ.c12 + nettlesQ.c22) * strainRounding,
  nettlesQ.c66 * strainRounding,
];
export const tension: Case = {
  id: 'laminate-ply-stress',
  title: 'Strains and ply stresses of a symmetric stack in tension',
  source: `${nettles}, example 3 (p. 46), as quoted in a public test suite`,
  tag: 'second-hand',
  inputs: [nettlesLamina, '[0/45]s, Nx = 500 lb/in'],
  remarks: [
    'The source takes the stresses from strains rounded to 1e-5; from those same strains the stiffness gives its stresses to the last digit.',
  ],
  checks: [
    ...(['.00221', '-.0007', '-.00115'] as const).map((text, i) =>
      // "-.0007" stands for -.00070 among its neighbours.
      value({
        name: ['εx', 'εy', 'γxy'][i]!,
        unit: '',
        expected: Number(text),
        printed: text,
        computed: () => strip().answer.strain[i]!,
        tolerance: { absolute: strainRounding },
        why: 'half of the fifth decimal, the last that is printed',
      }),
    ),
    ...(['.00018', '.00133', '-.00291'] as const).map((text, i) =>
      printed(`ε${components[i]} in the 45° ply`, '', text, () => strip().state.strain[i]!),
    ),
    ...[4146, 1812, -2913].flatMap((expected, i) => [
      value({
        name: `σ${components[i]} in the 45° ply`,
        unit: 'psi',
        expected,
        computed: () => strip().state.stress[i]!,
        tolerance: { absolute: stressRounding[i]! },
        why: "what the rounding of the source's strains is worth",
      }),
      value({
        name: `σ${components[i]} from the printed strains`,
        unit: 'psi',
        expected,
        computed: () => times(nettlesQ, [0.00018, 0.00133, -0.00291])[i]!,
        tolerance: { absolute: 0.6 },
        why: 'half of the last printed digit, and a little: the printed figures themselves give 1811.45 where 1812 is printed',
      }),
    ]),
  ],
};
