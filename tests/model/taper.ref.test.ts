/** The elastic answer for tapered walls, load and temperature apart, against scipy (reference/taper.py). */
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
      readonly regime: string;
      readonly bonds: readonly {
        readonly shear: readonly number[];
        readonly force: { readonly root: number; readonly mid: number };
      }[];
    };
  }[];
}

const fixture = readFixture('taper.json') as Fixture;
const elastic = fixture.cases.filter(
  ({ inputs, expected }) => expected.regime === 'elastic' && inputs.channels === undefined,
);

describe('tapered walls, elastic', () => {
  it.each(elastic)('$name', ({ inputs, expected }) => {
    const problem = toProblem(inputs);
    const [channel] = problem.channels;
    const state = combine(solveElastic(channel!, problem.bonds, problem.length), 1);
    expected.bonds.forEach(({ shear, force }, j) => {
      const peak = Math.max(...shear.map(Math.abs));
      shear.forEach((value, i) => {
        const x = fixture.stations[i]! * problem.length;
        expectClose(
          state.shear(j, x),
          value,
          { absolute: 1e-5 * peak },
          `shear ${j} at ${x}`,
          inputs,
        );
      });
      const allowed = { absolute: 1e-5 * Math.abs(channel!.load) };
      expectClose(state.outerForce(j, 0), force.root, allowed, `force ${j} at the root`, inputs);
      expectClose(
        state.outerForce(j, problem.length / 2),
        force.mid,
        allowed,
        `force ${j}`,
        inputs,
      );
    });
  });

  it('there is something to compare', () => {
    if (elastic.length === 0) throw new Error('The fixture holds no elastic case of one channel.');
  });
});
