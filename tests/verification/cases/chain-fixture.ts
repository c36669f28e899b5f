/** The general solution (chain of cells) against a fixture of one layout, and its groups of checks. */
import { chainCapacity } from '../../../src/model/chain/capacity.ts';
import { solveChain } from '../../../src/model/chain/solve.ts';
import { chainState } from '../../../src/model/joint/lap-state.ts';
import { isTapered } from '../../../src/model/lap/problem.ts';
import { lowestRatio, troughReached } from '../../../src/model/margins/bond-strength.ts';
import { shearFactor } from '../../../src/model/margins/shear-factor.ts';
import { type FixtureInputs, readFixture, toProblem } from '../../support/fixtures.ts';
import { type Check, type Comparison, group, lazy, same } from '../case.ts';

/** One list for one channel; a list of lists, or of records, for two. */
type PerChannel<T> = T | readonly T[];
interface Force {
  readonly root: number;
  readonly mid: number;
}
export interface ChainFixture {
  readonly stations: readonly number[];
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: {
      readonly regime: string;
      readonly bonds: readonly {
        readonly slip: PerChannel<readonly number[]>;
        readonly shear: PerChannel<readonly number[]>;
        readonly force: PerChannel<Force>;
        readonly plastic: readonly (readonly [number, number])[];
        readonly lowestShear: number;
      }[];
    };
  }[];
  readonly capacity: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: {
      readonly factor: number;
      readonly reachedAt: string;
      readonly troughFactor?: readonly (number | null)[] | null;
    };
  }[];
}

const rows = (value: PerChannel<readonly number[]>): readonly (readonly number[])[] =>
  Array.isArray(value[0])
    ? (value as readonly (readonly number[])[])
    : [value as readonly number[]];
const forces = (value: PerChannel<Force>): readonly Force[] =>
  Array.isArray(value) ? value : [value as Force];

const local = (inputs: FixtureInputs) => {
  const problem = toProblem(inputs);
  return { ...problem, axial: 0, hoop: problem.channels.length - 1 || -1 };
};

export const readChainFixture = (name: string) =>
  lazy(() => readFixture(`${name}.json`) as ChainFixture);

export function chainChecks(name: string): readonly Check[] {
  const fixture = readChainFixture(name);
  const solved = lazy(() =>
    fixture().cases.map((one) => {
      const problem = local(one.inputs);
      const state = chainState(problem, solveChain(problem, { kind: 'load', factor: 1 }));
      return { ...one, problem, state };
    }),
  );
  /** Every bond of every case, with what sets the scale of its figures. */
  const bonds = lazy(() =>
    solved().flatMap(({ name: title, problem, state, expected }) =>
      expected.bonds.map((bond, j) => {
        const law = problem.bonds[j]!;
        const peak = Math.max(...rows(bond.slip).flat().map(Math.abs));
        const atYield = Math.min(law.shearYield, law.stiffness * peak);
        return { title: `${title}, bond ${j + 1}`, problem, state, bond, j, law, peak, atYield };
      }),
    ),
  );
  type OfBond = ReturnType<typeof bonds>[number];
  const alongBond =
    (
      figures: (one: OfBond) => PerChannel<readonly number[]>,
      computed: (one: OfBond, q: number, x: number) => number,
      scale: (one: OfBond) => number,
    ) =>
    (): Comparison[] =>
      bonds().flatMap((one) =>
        rows(figures(one)).flatMap((values, q) =>
          values.map((expected, i) => {
            const t = fixture().stations[i]!;
            return {
              what: `${one.title}, direction ${q + 1} at x/L = ${t}`,
              expected,
              computed: computed(one, q, t * one.problem.length),
              scale: scale(one),
            };
          }),
        ),
      );
  const capacities = lazy(() =>
    fixture().capacity.map((one) => {
      const problem = local(one.inputs);
      return { ...one, problem, found: chainCapacity(problem, { bond: 0, end: 'mouth' }) };
    }),
  );
  // The trough of a taper is asked of whole joints only.
  const withTrough = () =>
    capacities().filter(
      ({ problem, expected }) => expected.troughFactor && !problem.channels.some(isTapered),
    );

  const checks: Check[] = [
    group({
      name: 'slip',
      compare: alongBond(
        ({ bond }) => bond.slip,
        ({ state, j }, q, x) => state.slip(q, j, x),
        ({ peak }) => peak,
      ),
      tolerance: 1e-4,
      scale: 'of the largest slip',
      why: 'the accuracy that the chain of cells is made for',
    }),
    group({
      name: 'shear',
      compare: alongBond(
        ({ bond }) => bond.shear,
        ({ state, j }, q, x) => state.shear(q, j, x),
        ({ atYield }) => atYield,
      ),
      tolerance: 1e-3,
      scale: 'of the yield stress, or of the peak where that is lower',
      why: "close to a front a slip's error counts in full",
    }),
    group({
      name: 'force of the outer adherends',
      compare: () =>
        bonds().flatMap(({ title, problem, state, bond, j, law, atYield }) =>
          forces(bond.force).flatMap(({ root, mid }, q) => {
            const scale =
              Math.abs(problem.channels[q]!.load) + atYield * law.width * problem.length;
            const at = (x: number): number => state.outerForce(q, j, x);
            return [
              { what: `${title}, root`, expected: root, computed: at(0), scale },
              { what: `${title}, middle`, expected: mid, computed: at(problem.length / 2), scale },
            ];
          }),
        ),
      tolerance: 1e-4,
      scale: 'of the load and the yield force of the bond together',
      why: 'as for the slip',
    }),
    same({
      name: 'number of plastic zones',
      compare: () =>
        bonds().map(({ title, state, bond, j }) => ({
          what: title,
          expected: String(bond.plastic.length),
          computed: String(state.plastic(j).length),
        })),
    }),
    group({
      name: 'ends of the plastic zones',
      compare: () =>
        bonds().flatMap(({ title, problem, state, bond, j }) =>
          bond.plastic.flatMap(([from, to], i) => {
            const zone = state.plastic(j)[i] ?? { from: Number.NaN, to: Number.NaN };
            const scale = problem.length;
            return [
              { what: `${title}, from`, expected: from, computed: zone.from, scale },
              { what: `${title}, to`, expected: to, computed: zone.to, scale },
            ];
          }),
        ),
      tolerance: 2e-3,
      scale: 'of the overlap',
      why: 'where the slip is flat a front moves far for little',
    }),
    group({
      name: 'lowest shear',
      compare: () =>
        bonds().map(({ title, problem, state, bond, j, law, atYield }) => ({
          what: title,
          expected: bond.lowestShear,
          computed: lowestRatio(problem, state, j) * law.shearYield,
          scale: atYield,
        })),
      tolerance: 1e-3,
      scale: 'of the yield stress, or of the peak where that is lower',
      why: 'as for the shear',
    }),
    group({
      name: 'load factor at failure',
      compare: () =>
        capacities().map(({ name: title, expected, found }) => ({
          what: title,
          expected: expected.factor,
          computed: found.factor,
        })),
      tolerance: 5e-5,
      scale: 'of the value',
      why: 'the accuracy that the chain of cells is made for',
    }),
    same({
      name: 'end at which failure is reached',
      compare: () =>
        capacities()
          .filter(({ expected: { reachedAt } }) => reachedAt === 'root' || reachedAt === 'mouth')
          .map(({ name: title, expected, found }) => ({
            what: title,
            expected: expected.reachedAt,
            computed: found.end,
          })),
    }),
  ];
  if (fixture().capacity.every(({ inputs }) => toProblem(inputs).channels.some(isTapered))) {
    return checks;
  }
  return [
    ...checks,
    group({
      name: 'load factor at which the first trough is used up',
      compare: () =>
        withTrough().map(({ name: title, problem, expected, found }) => {
          const atYield = shearFactor(
            problem,
            problem.bonds.map((bond) => bond.shearYield),
          );
          const strength = {
            ...found,
            wholeBondFlows: expected.reachedAt === 'whole',
            failed: chainState(problem, found.chain),
          };
          // Each bond must keep its own trough: the first to lose it decides.
          const first = Math.min(
            ...expected.troughFactor!.map((factor) => factor ?? expected.factor),
          );
          return {
            what: title,
            expected: Math.min(first, expected.factor),
            computed: troughReached(problem, atYield, strength),
          };
        }),
      tolerance: 1e-3,
      scale: 'of the value',
      why: 'the lowest shear is flat near its minimum',
    }),
  ];
}
