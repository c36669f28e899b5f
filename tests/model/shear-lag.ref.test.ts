/** Elastic shear lag against transition matrices in high precision (reference/shear_lag.py). */
import { describe, it } from 'vitest';
import { combine } from '../../src/model/shear-lag/elastic.ts';
import { solveElastic } from '../../src/model/shear-lag/solve-elastic.ts';
import { expectClose } from '../support/close.ts';
import { type FixtureInputs, readFixture, toProblem } from '../support/fixtures.ts';

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

const fixture = readFixture('shear-lag-elastic.json') as Fixture;

describe.each(fixture.cases)('$name', ({ inputs, expected }) => {
  const problem = toProblem(inputs);
  const [channel] = problem.channels;
  const solution = solveElastic(channel!, problem.bonds, problem.length);
  const state = combine(solution, 1);

  it('gives every printed shear', () => {
    expected.shear.forEach((values, j) => {
      const peak = Math.max(...values.map(Math.abs));
      values.forEach((value, i) => {
        const x = fixture.stations[i]! * problem.length;
        // Far from both ends a hard bond's shear falls below what doubles can tell from the sum.
        const tolerance = { relative: 2e-9, absolute: 1e-11 * peak };
        expectClose(state.shear(j, x), value, tolerance, `bond ${j} at x = ${x}`, inputs);
      });
    });
  });

  it('gives the forces at the root and in the middle, and the decay rates', () => {
    const scale =
      Math.abs(channel!.load) + Math.max(...expected.force.map(({ mid }) => Math.abs(mid)));
    expected.force.forEach(({ root, mid }, j) => {
      const tolerance = { absolute: 1e-8 * scale };
      expectClose(state.outerForce(j, 0), root, tolerance, `force ${j} at the root`, inputs);
      expectClose(
        state.outerForce(j, problem.length / 2),
        mid,
        tolerance,
        `force ${j}, middle`,
        inputs,
      );
    });
    const rates = [...expected.rateTimesLength].sort((a, b) => a - b);
    expectClose(
      solution.omegaMax * problem.length,
      rates[rates.length - 1]!,
      { relative: 1e-9 },
      'rate',
    );
    expectClose(solution.omegaMin * problem.length, rates[0]!, { relative: 2e-7 }, 'slow rate');
  });
});
