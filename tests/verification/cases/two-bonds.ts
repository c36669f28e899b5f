/** Elastic - perfectly plastic adhesive in two bonds, and in two directions at once. */
import { chainCapacity } from '../../../src/model/chain/capacity.ts';
import { chainState } from '../../../src/model/joint/lap-state.ts';
import type { LapProblem } from '../../../src/model/lap/problem.ts';
import { outerAdherendPeel } from '../../../src/model/peel/outer-adherend.ts';
import { solveElastic } from '../../../src/model/shear-lag/solve-elastic.ts';
import { bond, channel, member } from '../../support/laps.ts';
import { type Case, lazy, printed, type Topic, value } from '../case.ts';
import { chainChecks } from './chain-fixture.ts';

const law = bond(800, 0.2, 1, { yieldStrain: 0.05, plasticStrain: 0.5 });
const doubleLap = (modulus: number, alpha: number, deltaT: number, length = 80): LapProblem => ({
  length,
  bonds: [law, law],
  channels: [
    channel(1, member(modulus * 4, alpha * deltaT), [
      member(70_000 * 2, 2e-6 * deltaT),
      member(70_000 * 2, 2e-6 * deltaT),
    ]),
  ],
});
const strengthOf = (problem: LapProblem) => chainCapacity(problem, { bond: 0, end: 'mouth' });

const byReport =
  'L. J. Hart-Smith, Adhesive-Bonded Double-Lap Joints (1973), closed forms from memory; figures by an independent boundary-value solution';
const straps = 'outer straps 2 × 2 mm, E = 70 GPa, α = 2e-6 /°C';
const glue =
  'adhesive G = 800 MPa, h = 0.2 mm, γe = 0.05, γp = 0.5; overlap 80 mm; per mm of width';

const inner = 110_000 * 4;
const outer = 2 * 70_000 * 2;
/** Energy to failure, both bonds, per area. */
const energy = 2 * 0.2 * 40 * (0.05 / 2 + 0.5);
const dT = -100;
const mismatch = (8.6e-6 - 2e-6) * dT;
const closedForm = (thermal: number): readonly [number, number] => [
  Math.sqrt(energy * 2 * inner * (1 + inner / outer)) - thermal * inner,
  Math.sqrt(energy * 2 * outer * (1 + outer / inner)) + thermal * outer,
];
const unequal = lazy(() => strengthOf(doubleLap(110_000, 8.6e-6, 0)));
const unequalCold = lazy(() => strengthOf(doubleLap(110_000, 8.6e-6, dT)));

const asSolved = (name: string, text: string, computed: () => number) =>
  value({
    name,
    unit: 'N/mm',
    expected: Number(text),
    printed: text,
    computed,
    tolerance: { relative: 1e-6 },
    why: "the chain's own accuracy at this length",
  });

const unequalStraps: Case = {
  id: 'long-double-lap',
  title: 'Strength of a long double lap, titanium between carbon straps',
  source: byReport,
  tag: 'independent',
  inputs: [straps, 'inner strip 4 mm, E = 110 GPa, α = 8.6e-6 /°C', glue, 'ΔT = 0 and −100 °C'],
  checks: [
    asSolved('strength, no ΔT', '2774.427', () => unequal().factor),
    asSolved('strength, ΔT = −100 °C', '2589.627', () => unequalCold().factor),
    ...(
      [
        ['no ΔT', unequal, 0, '2774.429'],
        ['ΔT = −100 °C', unequalCold, mismatch, '2589.629'],
      ] as const
    ).map(([name, found, thermal, text]) =>
      value({
        name: `strength against the closed form, ${name}`,
        unit: 'N/mm',
        expected: Math.min(...closedForm(thermal)),
        printed: text,
        computed: () => found().factor,
        tolerance: { relative: 1e-6 },
        why: 'the closed form takes the overlap as endless',
        tag: 'memory' as const,
      }),
    ),
    value({
      name: 'strength at 160 mm over that at 80 mm',
      unit: '',
      expected: 1,
      computed: () => strengthOf(doubleLap(110_000, 8.6e-6, 0, 160)).factor / unequal().factor,
      tolerance: { relative: 2e-6 },
      why: 'the strength of a double lap saturates (abstract of NASA CR-112237)',
      tag: 'abstract',
    }),
  ],
  remarks: [
    'The closed form is the smaller of two expressions. By the straps it is 2774.429 and 2589.629 N/mm, by the inner strip 4359.817 and 4650.217 N/mm, without and with ΔT.',
  ],
};

const equal = lazy(() => {
  const problem = doubleLap(70_000, 2e-6, 0);
  const found = strengthOf(problem);
  return { found, zones: chainState(problem, found.chain).plastic(0) };
});
const balancedDecay = (): number => {
  const { channels, bonds, length } = doubleLap(70_000, 2e-6, 0);
  return solveElastic(channels[0]!, bonds, length).omegaMax;
};

const equalStraps: Case = {
  id: 'balanced-double-lap',
  title: 'Balanced double lap: strength and plastic zones',
  source: byReport,
  tag: 'independent',
  inputs: [straps, 'inner strip 4 mm of the same material', glue],
  checks: [
    value({
      name: 'strength',
      unit: 'N/mm',
      expected: 3067.2445,
      printed: '3067.2445',
      computed: () => equal().found.factor,
      tolerance: { relative: 5e-7 },
      why: "the chain's own accuracy at this length",
    }),
    ...(['root', 'mouth'] as const).map((end, i) =>
      value({
        name: `plastic zone at the ${end}`,
        unit: 'mm',
        expected: 14.987,
        printed: '14.9870',
        computed: () => {
          const zone = equal().zones[i];
          return zone ? zone.to - zone.from : Number.NaN;
        },
        tolerance: { absolute: 5e-4 },
        why: 'a front is found to a few 1e-5 of the overlap',
      }),
    ),
    printed('ω', '1/mm', '0.23905', balancedDecay, 'memory'),
  ],
};

const shortened = lazy(() => {
  const problem = doubleLap(70_000, 2e-6, 0, 2 * 14.987 + 6 / balancedDecay());
  const state = chainState(problem, strengthOf(problem).chain);
  return { middle: state.shear(0, 0, problem.length / 2) / 40 };
});

const trough: Case = {
  id: 'elastic-trough',
  title: 'An elastic trough of six decay lengths keeps a tenth of yield in its middle',
  source: 'identity of the theory: 1/cosh 3 = 0.0993',
  tag: 'independent',
  inputs: [
    'balanced double lap of the case above, overlap = two plastic zones of 14.987 mm + 6/ω = 55.07 mm',
  ],
  checks: [
    value({
      name: 'shear in the middle over yield, at failure',
      unit: '',
      expected: 1 / Math.cosh(3),
      printed: '0.0993',
      computed: () => shortened().middle,
      tolerance: { relative: 5e-3 },
      why: 'beside a trough of finite length the zones are a little longer (tanh 3 for 1), which takes 0.03 mm from the trough',
    }),
  ],
};

const peel: Case = {
  id: 'strap-peel',
  title: 'Peel at the free end of a strap, first estimate',
  source:
    'L. J. Hart-Smith, double laps: formula from memory; digits of a semi-infinite plate on an elastic foundation with the moment τp·t/2 at its end',
  tag: 'independent',
  inputs: ['strap E = 70 GPa, ν = 0.3, t = 2 mm', 'adhesive E = 2500 MPa, h = 0.2 mm, τp = 40 MPa'],
  checks: [
    printed('peel', 'MPa', '39.747621', () => outerAdherendPeel(40, 2500, 2, 70_000, 0.3, 0.2)),
  ],
};

const random: Case = {
  id: 'plastic-two-bonds',
  title: 'Two bonds in one direction',
  source:
    'reference/plastic_two_bond.py: collocation with the yield fronts as unknowns, held against a second boundary-value solver',
  tag: 'independent',
  inputs: [
    'random laps with a fixed seed, nearly symmetric ones, temperature alone; nine stations each',
  ],
  checks: chainChecks('plastic-two-bond'),
};

const vector: Case = {
  id: 'plastic-two-directions',
  title: 'Axial and circumferential shear on one yield surface',
  source:
    'reference/plastic_vector.py: collocation with the yield fronts as unknowns, held against a second boundary-value solver',
  tag: 'independent',
  inputs: ['random laps of one and two bonds with a fixed seed; nine stations each'],
  checks: chainChecks('plastic-vector'),
};

export const twoBonds: Topic = {
  title: 'Elastic-plastic adhesive, two bonds and two directions',
  intro: 'Section 7 of the method: the chain of cells.',
  cases: [unequalStraps, equalStraps, trough, peel, random, vector],
};
