/** One plastic bond in every arrangement of its zones, and its capacity. */
import { chainCapacity } from '../../../src/model/chain/capacity.ts';
import { solveChain } from '../../../src/model/chain/solve.ts';
import { chainState } from '../../../src/model/joint/lap-state.ts';
import { solvePlastic } from '../../../src/model/plastic/one-bond.ts';
import { capacityOf, troughFactor } from '../../../src/model/plastic/one-bond-capacity.ts';
import { type FixtureInputs, readFixture, toProblem } from '../../support/fixtures.ts';
import { type Case, type Comparison, group, lazy, same } from '../case.ts';

interface BondState {
  readonly slip: readonly number[];
  readonly shear: readonly number[];
  readonly force: { readonly root: number; readonly mid: number };
  readonly plasticFromRoot: number;
  readonly plasticFromMouth: number;
  readonly lowestShear: number;
}
interface Fixture {
  readonly stations: readonly number[];
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: { readonly bonds: readonly BondState[] };
  }[];
  readonly capacity: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: {
      readonly factor: number;
      readonly reachedAt: string;
      readonly troughFactor?: number | null;
    };
  }[];
}
const fixture = lazy(() => readFixture('plastic-one-bond.json') as Fixture);

const states = lazy(() =>
  fixture().cases.map(({ name, inputs, expected }) => {
    const problem = toProblem(inputs);
    const [law] = problem.bonds;
    const state = expected.bonds[0]!;
    return {
      name,
      problem,
      law: law!,
      expected: state,
      size: Math.max(...state.slip.map(Math.abs)),
      exact: solvePlastic(problem.channels[0]!, law!, problem.length),
      chain: chainState(problem, solveChain(problem, { kind: 'load', factor: 1 })),
    };
  }),
);
type State = ReturnType<typeof states>[number];

const alongBond =
  (
    expected: (one: State) => readonly number[],
    computed: (one: State, x: number) => number,
    scale: (one: State) => number,
  ) =>
  (): Comparison[] =>
    states().flatMap((one) =>
      expected(one).map((figure, i) => ({
        what: `${one.name}, x/L = ${fixture().stations[i]}`,
        expected: figure,
        computed: computed(one, fixture().stations[i]! * one.problem.length),
        scale: scale(one),
      })),
    );
const size = (one: State): number => one.size;
const yieldOf = (one: State): number => one.law.shearYield;

const capacities = lazy(() =>
  fixture().capacity.map(({ name, inputs, expected }) => {
    const problem = toProblem(inputs);
    const exact = capacityOf(problem.channels[0]!, problem.bonds[0]!, problem.length);
    return { name, problem, expected, exact };
  }),
);
const loaded = () => capacities().filter(({ exact }) => exact.factor !== 0);

export const sweep: Case = {
  id: 'plastic-one-bond',
  title: 'Every arrangement of plastic zones, and capacity',
  source:
    'reference/plastic.py: collocation with the yield fronts as unknowns, held against a second boundary-value solver',
  tag: 'independent',
  inputs: [
    `random laps with a fixed seed: elastic, one end plastic, both ends in one sense and in opposite ones, nearly all plastic, temperature alone; nine stations each`,
  ],
  checks: [
    group({
      name: 'slip, exact solution',
      compare: alongBond(
        ({ expected }) => expected.slip,
        ({ exact }, x) => exact.slip(x),
        size,
      ),
      tolerance: 1e-8,
      scale: 'of the largest slip',
      why: 'both are good to about nine digits',
    }),
    group({
      name: 'shear, exact solution',
      compare: alongBond(
        ({ expected }) => expected.shear,
        ({ exact }, x) => exact.shear(x),
        yieldOf,
      ),
      tolerance: 1e-7,
      scale: 'of the yield stress',
      why: "close to a front a slip's error counts in full",
    }),
    group({
      name: 'plastic zones, exact solution',
      compare: () =>
        states().flatMap(({ name, problem, expected, exact }) => [
          {
            what: `${name}, at the root`,
            expected: expected.plasticFromRoot,
            computed: exact.plasticAtRoot,
            scale: problem.length,
          },
          {
            what: `${name}, at the mouth`,
            expected: expected.plasticFromMouth,
            computed: exact.plasticAtMouth,
            scale: problem.length,
          },
        ]),
      tolerance: 1e-6,
      scale: 'of the overlap',
      why: 'where the slip is flat a front moves far for little',
    }),
    group({
      name: 'force of the sleeve, exact solution',
      compare: () =>
        states().flatMap(({ name, problem, law, expected, exact }) => {
          const scale = law.shearYield * law.width * problem.length;
          const { root, mid } = expected.force;
          return [
            { what: `${name}, root`, expected: root, computed: exact.outerForce(0), scale },
            {
              what: `${name}, middle`,
              expected: mid,
              computed: exact.outerForce(problem.length / 2),
              scale,
            },
          ];
        }),
      tolerance: 1e-8,
      scale: 'of the load that makes the whole bond flow',
      why: 'both are good to about nine digits',
    }),
    group({
      name: 'lowest shear, exact solution',
      compare: () =>
        states().map(({ name, law, expected, exact }) => ({
          what: name,
          expected: expected.lowestShear,
          computed: exact.lowestShear,
          scale: law.shearYield,
        })),
      tolerance: 1e-7,
      scale: 'of the yield stress',
      why: 'as for the shear',
    }),
    group({
      name: 'slip, general solution (chain)',
      compare: alongBond(
        ({ expected }) => expected.slip,
        ({ chain }, x) => chain.slip(0, 0, x),
        size,
      ),
      tolerance: 1e-4,
      scale: 'of the largest slip',
      why: 'the accuracy that the chain of cells is made for',
    }),
    group({
      name: 'load factor at failure, exact solution',
      compare: () =>
        capacities().map(({ name, expected, exact }) => ({
          what: name,
          expected: expected.factor,
          computed: exact.factor,
        })),
      tolerance: 1e-8,
      scale: 'of the value',
      why: 'ten digits are printed',
    }),
    group({
      name: 'load factor at failure, general solution (chain)',
      compare: () =>
        loaded().map(({ name, problem, expected, exact }) => ({
          what: name,
          expected: expected.factor,
          computed: chainCapacity(problem, { bond: 0, end: exact.end }).factor,
        })),
      tolerance: 3e-5,
      scale: 'of the value',
      why: 'the accuracy that the chain of cells is made for',
    }),
    group({
      name: 'load factor at which the trough is used up',
      compare: () =>
        loaded().map(({ name, problem, expected, exact }) => ({
          what: name,
          expected: expected.troughFactor ?? exact.factor,
          computed: troughFactor(
            problem.channels[0]!,
            problem.bonds[0]!,
            problem.length,
            0.1,
            exact.factor,
          ),
        })),
      tolerance: 1e-7,
      scale: 'of the value',
      why: 'the lowest shear is flat near its minimum',
    }),
    same({
      name: 'where failure is reached',
      compare: () =>
        loaded().map(({ name, expected, exact }) => ({
          what: name,
          expected: /whole/.test(expected.reachedAt) ? 'whole bond' : expected.reachedAt,
          computed: exact.wholeBondFlows ? 'whole bond' : exact.end,
        })),
    }),
  ],
};
