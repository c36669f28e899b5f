/**
 * Plastic laps by the chain against boundary-value solutions by scipy: two bonds, two channels on one
 * yield surface, tapered walls (reference/plastic_two_bond.py, plastic_vector.py, taper.py).
 */
import { describe, expect, it } from 'vitest';
import { chainCapacity } from '../../src/model/chain/capacity.ts';
import { solveChain } from '../../src/model/chain/solve.ts';
import { chainState } from '../../src/model/joint/lap-state.ts';
import { isTapered } from '../../src/model/lap/problem.ts';
import { lowestRatio, troughReached } from '../../src/model/margins/bond-strength.ts';
import { shearFactor } from '../../src/model/margins/shear-factor.ts';
import { expectClose } from '../support/close.ts';
import { type FixtureInputs, readFixture, toProblem } from '../support/fixtures.ts';

/** One list for one channel; a list of lists, or of records, for two. */
type PerChannel<T> = T | readonly T[];
interface Force {
  readonly root: number;
  readonly mid: number;
}
interface Fixture {
  readonly stations: readonly number[];
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: {
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

const FORWARD = { bond: 0, end: 'mouth' } as const;

describe.each(['plastic-two-bond', 'plastic-vector', 'taper'])('%s', (name) => {
  const fixture = readFixture(`${name}.json`) as Fixture;

  it.each(fixture.cases)('$name', ({ inputs, expected }) => {
    const problem = local(inputs);
    const { length } = problem;
    const state = chainState(problem, solveChain(problem, { kind: 'load', factor: 1 }));
    expected.bonds.forEach((bond, j) => {
      const law = problem.bonds[j]!;
      const peak = Math.max(...rows(bond.slip).flat().map(Math.abs));
      const atYield = Math.min(law.shearYield, law.stiffness * peak);
      rows(bond.slip).forEach((slips, q) => {
        fixture.stations.forEach((t, i) => {
          const x = t * length;
          const what = `${q} ${j} at ${t}`;
          expectClose(
            state.slip(q, j, x),
            slips[i]!,
            { absolute: 1e-4 * peak },
            `slip ${what}`,
            inputs,
          );
          const shear = rows(bond.shear)[q]![i]!;
          // Close to a front a slip's error counts in full.
          const near = { absolute: 1e-3 * atYield };
          expectClose(state.shear(q, j, x), shear, near, `shear ${what}`, inputs);
        });
        const { root, mid } = forces(bond.force)[q]!;
        const force = {
          absolute: 1e-4 * (Math.abs(problem.channels[q]!.load) + atYield * law.width * length),
        };
        expectClose(state.outerForce(q, j, 0), root, force, `force ${q} ${j}, root`, inputs);
        expectClose(
          state.outerForce(q, j, length / 2),
          mid,
          force,
          `force ${q} ${j}, middle`,
          inputs,
        );
      });
      const zones = state.plastic(j);
      expect(zones.length).toBe(bond.plastic.length);
      bond.plastic.forEach(([from, to], i) => {
        expectClose(zones[i]!.from, from, { absolute: 2e-3 * length }, `zone ${i} from`, inputs);
        expectClose(zones[i]!.to, to, { absolute: 2e-3 * length }, `zone ${i} to`, inputs);
      });
      expectClose(
        lowestRatio(problem, state, j) * law.shearYield,
        bond.lowestShear,
        { absolute: 1e-3 * atYield },
        `lowest shear ${j}`,
        inputs,
      );
    });
  });

  it.each(fixture.capacity)('$name', ({ inputs, expected }) => {
    const problem = local(inputs);
    const found = chainCapacity(problem, FORWARD);
    expectClose(found.factor, expected.factor, { relative: 5e-5 }, 'factor', inputs);
    if (expected.reachedAt === 'root' || expected.reachedAt === 'mouth') {
      expect(found.end).toBe(expected.reachedAt);
    }
    if (!expected.troughFactor || problem.channels.some(isTapered)) return;
    const atYield = shearFactor(
      problem,
      problem.bonds.map((bond) => bond.shearYield),
    );
    const whole = expected.reachedAt === 'whole';
    const strength = { ...found, wholeBondFlows: whole, failed: chainState(problem, found.chain) };
    // Each bond must keep its own trough: the first to lose it decides.
    const first = Math.min(...expected.troughFactor.map((factor) => factor ?? expected.factor));
    const trough = troughReached(problem, atYield, strength);
    expectClose(trough, Math.min(first, expected.factor), { relative: 1e-3 }, 'trough', inputs);
  });
});
