/** Elastic shear of random laps and of extreme ones, against arbitrary precision. */
import { combine } from '../../../src/model/shear-lag/elastic.ts';
import { solveElastic } from '../../../src/model/shear-lag/solve-elastic.ts';
import { type FixtureInputs, readFixture, toProblem } from '../../support/fixtures.ts';
import { type Case, group, lazy } from '../case.ts';

interface Fixture {
  readonly stations: readonly number[];
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: {
      readonly rateTimesLength: readonly number[];
      readonly shear: readonly (readonly number[])[];
      readonly force: readonly { readonly root: number; readonly mid: number }[];
    };
  }[];
}
const fixture = lazy(() => readFixture('shear-lag-elastic.json') as Fixture);
const solved = lazy(() =>
  fixture().cases.map((one) => {
    const problem = toProblem(one.inputs);
    const solution = solveElastic(problem.channels[0]!, problem.bonds, problem.length);
    return { ...one, problem, solution, state: combine(solution, 1) };
  }),
);

const shears = (bonds: 1 | 2) => () =>
  solved()
    .filter(({ problem }) => problem.bonds.length === bonds)
    .flatMap(({ name, problem, state, expected }) =>
      expected.shear.flatMap((values, j) => {
        const peak = Math.max(...values.map(Math.abs));
        return values.map((shear, i) => {
          const t = fixture().stations[i]!;
          return {
            what: `${name}: bond ${j + 1} at x/L = ${t}`,
            expected: shear,
            computed: state.shear(j, t * problem.length),
            scale: Math.max(Math.abs(shear), 0.005 * peak),
          };
        });
      }),
    );

const forces = () =>
  solved().flatMap(({ name, problem, state, expected }) => {
    const scale =
      Math.abs(problem.channels[0]!.load) +
      Math.max(...expected.force.map(({ mid }) => Math.abs(mid)));
    return expected.force.flatMap(({ root, mid }, j) => [
      {
        what: `${name}: ${j + 1} at the root`,
        expected: root,
        computed: state.outerForce(j, 0),
        scale,
      },
      {
        what: `${name}: ${j + 1} in the middle`,
        expected: mid,
        computed: state.outerForce(j, problem.length / 2),
        scale,
      },
    ]);
  });

const rates = (pick: (...all: number[]) => number, key: 'omegaMax' | 'omegaMin') => () =>
  solved().map(({ name, problem, solution, expected }) => ({
    what: name,
    expected: pick(...expected.rateTimesLength),
    computed: solution[key] * problem.length,
  }));

export const precise: Case = {
  id: 'elastic-sweep',
  title: 'Laps of one and two bonds, ωL from 1e-6 to 1e4',
  source:
    'reference/shear_lag.py: transition matrix in arbitrary precision (at least 40 spare digits), held against a boundary-value solver and a collocation',
  tag: 'independent',
  inputs: [
    'random laps with a fixed seed, load and thermal strain together, and extremes of ωL; nine stations each',
  ],
  checks: [
    ...([1, 2] as const).map((bonds) =>
      group({
        name: `shear, ${bonds === 1 ? 'one bond' : 'two bonds'}`,
        compare: shears(bonds),
        tolerance: 2e-9,
        scale: 'of the value, or of 0.5 % of the peak where the value is below that',
        why: 'ten digits are printed; far from both ends a hard bond falls below what doubles can tell',
      }),
    ),
    group({
      name: 'force of the outer adherends',
      compare: forces,
      tolerance: 1e-8,
      scale: 'of load and largest force together',
      why: 'ten digits are printed, and forces can be differences',
    }),
    group({
      name: 'largest decay rate × L',
      compare: rates(Math.max, 'omegaMax'),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'ten digits are printed',
    }),
    group({
      name: 'smallest decay rate × L',
      compare: rates(Math.min, 'omegaMin'),
      tolerance: 2e-7,
      scale: 'of the value',
      why: 'the small root of the pair loses digits where the two are far apart',
    }),
  ],
};
