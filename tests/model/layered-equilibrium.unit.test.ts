/**
 * Balance of every wall of a layered lap, by quadrature of what the model reports: its bonds carry
 * what is asked of them, along, across and in moment, hot or cold, tapered or flowing.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cappedState } from '../../src/model/layered/capped.ts';
import type { FlowZone } from '../../src/model/layered/lap.ts';
import { balances } from '../support/layered-balance.ts';
import {
  build,
  glue,
  type Lap,
  type LapType,
  laminate,
  metal,
  randomLaps,
} from '../support/layered-laps.ts';
import { positive } from '../support/random-laps.ts';

interface Allowed {
  /** Of what an end of the joint has: nothing, or the load. */
  readonly ends: number;
  /** Of the forces along. */
  readonly along: number;
  /** Of the moments that should cancel, their levers as long as the lap. */
  readonly moment: number;
}
/** Rounding of the doublings: it grows with the length over the walls. */
const EXACT: Allowed = { ends: 1e-9, along: 1e-9, moment: 1e-8 };

function expectBalance(
  given: Lap,
  load: number,
  zones: readonly FlowZone[],
  allowed: Allowed,
): void {
  for (const { what, miss, size } of balances(given, build(given), load, zones)) {
    const kind = what.includes('moment') ? 'moment' : / (at|turned) /.test(what) ? 'ends' : 'along';
    if (!(Math.abs(miss) <= allowed[kind] * size)) {
      expect.fail(`${what}: ${miss} of ${size}, ${JSON.stringify({ load, zones, given })}`);
    }
  }
}

const elastic = (given: Lap): FlowZone[] => {
  const { lap, assembly } = build(given);
  return [{ to: lap.length, flow: assembly.bonds.map(() => 0) }];
};

const once = { seed: 20261125, endOnFailure: true };
const types: readonly LapType[] = ['sleeve-single', 'sleeve-double', 'flat-single', 'flat-double'];

describe.each(types)('a %s', (type) => {
  it.each([
    ['under load', { thermal: false }],
    ['under load and temperature', {}],
  ] as const)('balances %s', (_name, options) => {
    fc.assert(
      fc.property(randomLaps(type, options), fc.constantFrom(0, 1e4, -3000), (given, load) => {
        expectBalance(given, load, elastic(given), EXACT);
      }),
      { ...once, numRuns: 40 },
    );
  });

  it('balances while its bonds flow', () => {
    let flowing = 0;
    fc.assert(
      fc.property(
        randomLaps(type, { overlap: positive(5, 60) }),
        positive(1.02, 1.6),
        (given, over) => {
          const { lap, solution } = build(given);
          const peak = Math.max(
            ...[0, lap.length].flatMap((x) => solution().at(x, 1, 0).stresses.shear.map(Math.abs)),
          );
          const load = (over * given.adhesive.shearYield) / peak;
          const state = cappedState(lap, load);
          if (!state) return;
          if (state.zones.length > 1) flowing++;
          expectBalance(given, load, state.zones, EXACT);
          for (const { stresses } of state.solution.along([0, lap.length], load, 1)) {
            for (const shear of stresses.shear) {
              expect(Math.abs(shear)).toBeLessThanOrEqual(given.adhesive.shearYield * (1 + 1e-5));
            }
          }
        },
      ),
      { ...once, numRuns: 20 },
    );
    expect(flowing).toBeGreaterThan(5);
  });
});

it('balances in usual tapers, as nearly as their short pieces are exact', () => {
  for (const side of ['socket', 'spigot'] as const) {
    for (const deltaT of [0, -80]) {
      for (const overlap of [12, 30]) {
        const given: Lap = {
          joint: {
            type: 'sleeve-single',
            side,
            overlap,
            tube: { material: laminate(70_000, 30_000), outsideDiameter: 32, wall: 1.6 },
            sleeve: { material: metal(114_000, 0.34, 8.6e-6), atRoot: 1.6, atMouth: 0.5 },
            bond: { gap: 0.2, tolerance: 0 },
            offset: 0,
          },
          adhesive: glue(),
          deltaT,
        };
        expectBalance(given, 1e4, elastic(given), { ends: 1e-9, along: 2e-6, moment: 5e-4 });
      }
    }
  }
});
