/** Two plastic bonds by the chain against a boundary-value solution by scipy (reference/plastic_two_bond.py). */
import { describe, expect, it } from 'vitest';
import { chainCapacity } from '../../src/model/chain/capacity.ts';
import { solveChain } from '../../src/model/chain/solve.ts';
import { chainState } from '../../src/model/joint/lap-state.ts';
import { lowestRatio, troughReached } from '../../src/model/margins/bond-strength.ts';
import { shearFactor } from '../../src/model/margins/shear-factor.ts';
import { expectClose } from '../support/close.ts';
import { type FixtureInputs, readFixture, toProblem } from '../support/fixtures.ts';

interface Fixture {
  readonly stations: readonly number[];
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: FixtureInputs;
    readonly expected: {
      readonly bonds: readonly {
        readonly slip: readonly number[];
        readonly shear: readonly number[];
        readonly force: { readonly root: number; readonly mid: number };
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
      readonly bond: number | null;
      readonly troughFactor?: readonly (number | null)[] | null;
    };
  }[];
}

const fixture = readFixture('plastic-two-bond.json') as Fixture;

describe.each(fixture.cases)('$name', ({ inputs, expected }) => {
  const problem = { ...toProblem(inputs), axial: 0, hoop: -1 };
  const { length } = problem;
  const state = chainState(problem, solveChain(problem, { kind: 'load', factor: 1 }));

  it('gives slips, shears, forces, zones and trough', () => {
    const load = Math.abs(problem.channels[0]!.load);
    expected.bonds.forEach((bond, j) => {
      const law = problem.bonds[j]!;
      const size = Math.max(...bond.slip.map(Math.abs), law.shearYield / law.stiffness);
      fixture.stations.forEach((t, i) => {
        const x = t * length;
        const slip = { absolute: 1e-4 * size };
        const shear = { absolute: 3e-4 * law.shearYield };
        expectClose(state.slip(0, j, x), bond.slip[i]!, slip, `slip ${j} at ${t}`, inputs);
        expectClose(state.shear(0, j, x), bond.shear[i]!, shear, `shear ${j} at ${t}`, inputs);
      });
      const force = { absolute: 1e-4 * (load + law.shearYield * law.width * length) };
      expectClose(
        state.outerForce(0, j, 0),
        bond.force.root,
        force,
        `force ${j} at the root`,
        inputs,
      );
      const zones = state.plastic(j);
      expect(zones.length).toBe(bond.plastic.length);
      bond.plastic.forEach(([from, to], i) => {
        expectClose(zones[i]!.from, from, { absolute: 1e-3 * length }, `zone ${i} from`, inputs);
        expectClose(zones[i]!.to, to, { absolute: 1e-3 * length }, `zone ${i} to`, inputs);
      });
      expectClose(
        lowestRatio(problem, state, j) * law.shearYield,
        bond.lowestShear,
        { absolute: 3e-4 * law.shearYield },
        `lowest shear ${j}`,
        inputs,
      );
    });
  });
});

describe.each(fixture.capacity)('$name', ({ inputs, expected }) => {
  const problem = { ...toProblem(inputs), axial: 0, hoop: -1 };

  it('gives the load factor, where it is reached, and the trough factor', () => {
    const found = chainCapacity(problem, { bond: 0, end: 'mouth' });
    expectClose(found.factor, expected.factor, { relative: 3e-5 }, 'factor', inputs);
    if (expected.reachedAt === 'root' || expected.reachedAt === 'mouth') {
      expect(found.end).toBe(expected.reachedAt);
    }
    const atYield = shearFactor(
      problem,
      problem.bonds.map((bond) => bond.shearYield),
    );
    const whole = expected.reachedAt === 'whole';
    const strength = { ...found, wholeBondFlows: whole, failed: chainState(problem, found.chain) };
    const factors = (expected.troughFactor ?? []).map((factor) => factor ?? expected.factor);
    if (factors.length === 0) return;
    const trough = troughReached(problem, atYield, strength);
    expectClose(trough, Math.min(...factors), { relative: 1e-3 }, 'trough factor', inputs);
  });
});
