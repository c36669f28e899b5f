/** One plastic bond against a boundary-value solution by scipy (reference/plastic.py). */
import { describe, expect, it } from 'vitest';
import { chainCapacity } from '../../src/model/chain/capacity.ts';
import { solveChain } from '../../src/model/chain/solve.ts';
import { chainState } from '../../src/model/joint/lap-state.ts';
import { solvePlastic } from '../../src/model/plastic/one-bond.ts';
import { capacityOf, troughFactor } from '../../src/model/plastic/one-bond-capacity.ts';
import { expectClose } from '../support/close.ts';
import { type FixtureInputs, readFixture, toProblem } from '../support/fixtures.ts';

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
    readonly expected: { readonly regime: string; readonly bonds: readonly BondState[] };
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

const fixture = readFixture('plastic-one-bond.json') as Fixture;

describe.each(fixture.cases)('$name', ({ inputs, expected }) => {
  const problem = toProblem(inputs);
  const [channel] = problem.channels;
  const [law] = problem.bonds;
  const { length } = problem;
  const [state] = expected.bonds;
  const size = Math.max(...state!.slip.map(Math.abs));

  it('the exact solution gives slips, shears, zones, forces and trough', () => {
    const solved = solvePlastic(channel!, law!, length);
    fixture.stations.forEach((t, i) => {
      const x = t * length;
      expectClose(
        solved.slip(x),
        state!.slip[i]!,
        { absolute: 1e-8 * size },
        `slip at ${t}`,
        inputs,
      );
      expectClose(
        solved.shear(x),
        state!.shear[i]!,
        { absolute: 1e-7 * law!.shearYield },
        `shear at ${t}`,
        inputs,
      );
    });
    const zone = { absolute: 1e-6 * length };
    expectClose(solved.plasticAtRoot, state!.plasticFromRoot, zone, 'zone at the root', inputs);
    expectClose(solved.plasticAtMouth, state!.plasticFromMouth, zone, 'zone at the mouth', inputs);
    const force = { absolute: 1e-8 * law!.shearYield * law!.width * length };
    expectClose(solved.outerForce(0), state!.force.root, force, 'force at the root', inputs);
    expectClose(
      solved.outerForce(length / 2),
      state!.force.mid,
      force,
      'force in the middle',
      inputs,
    );
    expectClose(
      solved.lowestShear,
      state!.lowestShear,
      { absolute: 1e-7 * law!.shearYield },
      'trough',
    );
  });

  it('the chain gives the same', () => {
    const solved = chainState(problem, solveChain(problem, { kind: 'load', factor: 1 }));
    fixture.stations.forEach((t, i) => {
      const tolerance = { absolute: 1e-4 * size };
      expectClose(
        solved.slip(0, 0, t * length),
        state!.slip[i]!,
        tolerance,
        `slip at ${t}`,
        inputs,
      );
    });
  });
});

describe.each(fixture.capacity)('$name', ({ inputs, expected }) => {
  const problem = toProblem(inputs);
  const [channel] = problem.channels;
  const [law] = problem.bonds;

  it('exact and chain give the load factor, and where it is reached', () => {
    const { factor, end, wholeBondFlows } = capacityOf(channel!, law!, problem.length);
    expectClose(factor, expected.factor, { relative: 1e-8 }, 'factor', inputs);
    if (factor === 0) return;
    if (wholeBondFlows) expect(expected.reachedAt).toMatch(/whole/);
    else expect(expected.reachedAt).toBe(end);
    const chain = chainCapacity(problem, { bond: 0, end });
    expectClose(chain.factor, expected.factor, { relative: 3e-5 }, 'factor by the chain', inputs);
    const trough = troughFactor(channel!, law!, problem.length, 0.1, factor);
    expectClose(
      trough,
      expected.troughFactor ?? factor,
      { relative: 1e-7 },
      'trough factor',
      inputs,
    );
  });
});
