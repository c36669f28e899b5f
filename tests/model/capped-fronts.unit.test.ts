/** Where the bonds flow in the capped state: as looked at in small steps, in laps of few pieces and of many. */
import { describe, expect, it } from 'vitest';
import type { JointInput } from '../../src/model/joint/types.ts';
import { cappedState } from '../../src/model/layered/capped.ts';
import { fieldStations } from '../../src/model/layered/fields.ts';
import { elasticZones, solveLayered } from '../../src/model/layered/lap.ts';
import { build, glue, laminate, metal } from '../support/layered-laps.ts';

const carbon = laminate(90_000, 40_000);
const titanium = metal(110_000);
const bond = { gap: 0.3, tolerance: 0 };

const socket = (overlap: number, wall: number): JointInput => ({
  type: 'sleeve-single',
  side: 'socket',
  overlap,
  tube: { material: carbon, outsideDiameter: 40, wall },
  sleeve: { material: titanium, atRoot: wall, atMouth: wall },
  bond,
  offset: 0,
});
const double = (overlap: number, wall: number): JointInput => ({
  type: 'sleeve-double',
  overlap,
  tube: { material: carbon, outsideDiameter: 40, wall },
  spigot: { material: titanium, atRoot: wall / 2, atMouth: wall / 2 },
  socket: { material: titanium, atRoot: wall / 2, atMouth: wall / 2 },
  innerBond: bond,
  outerBond: bond,
  offset: 0,
});

const STEPS = 400;
const laps = [
  ['a socket', socket],
  ['a double lap', double],
] as const;
const sizes = [5, 14, 24, 48].flatMap((overlap) =>
  // On the thickest walls so short a bond flows from one end alone.
  (overlap === 5 ? [1, 2] : [1, 2, 5]).map((wall) => ({ overlap, wall })),
);

describe.each(laps)('%s', (_name, make) => {
  it.each(sizes)('of $overlap mm with walls of $wall mm flows where its zones say', (size) => {
    const built = build({
      joint: make(size.overlap, size.wall),
      adhesive: glue({ peelStrength: 40 }),
      deltaT: 0,
    });
    const { lap, assembly } = built;
    const yields = lap.sectionAt(0).bonds.map(({ shearYield }) => shearYield);
    const flowOfAll = assembly.bonds.reduce(
      (sum, { width }, j) => sum + width * yields[j]! * lap.length,
      0,
    );
    let between = 0;
    for (const share of [0.5, 0.8, 0.9, 0.95, 0.97]) {
      const load = share * flowOfAll;
      const state = cappedState(lap, load);
      // Less than the flow of all of it.
      expect(state, `${share}`).not.toBeNull();
      const { solution, zones } = state!;
      const answer = solution.under(load, 1);
      for (let i = 0; i <= STEPS; i++) {
        const x = (i * lap.length) / STEPS;
        if (zones.some(({ to }) => Math.abs(to - x) < 1e-3 * lap.length)) continue;
        const { flow } = zones.find(({ to }) => x <= to)!;
        yields.forEach((limit, j) => {
          const trial = answer.trial(j, x);
          expect(Math.abs(trial) > limit ? Math.sign(trial) : 0, `${share} ${j} ${x}`).toBe(
            flow[j],
          );
        });
      }
      // Both ends flow the same way, and what lies between them does not.
      if (flowsAtBothEnds(zones)) between++;
    }
    expect(between).toBeGreaterThan(0);
  });
});

/** Rounding of a figure is a few of these. */
const ULP = 2 ** -52;

describe.each(laps)('%s', (_name, make) => {
  it('has its state at loads that put a front on a place that is looked at, to the last digit', () => {
    const { lap } = build({
      joint: make(24, 1),
      adhesive: glue({ peelStrength: 40 }),
      deltaT: 0,
    });
    const yields = lap.sectionAt(0).bonds.map(({ shearYield }) => shearYield);
    const elastic = solveLayered(lap, elasticZones(lap)).under(1, 1);
    for (const x of fieldStations(lap.length, 32).slice(1, -1)) {
      yields.forEach((limit, j) => {
        const load = limit / Math.abs(elastic.trial(j, x));
        for (let digits = -4; digits <= 4; digits++) {
          expect(() => cappedState(lap, load * (1 + digits * ULP)), `${x} ${digits}`).not.toThrow();
        }
      });
    }
  });
});

function flowsAtBothEnds(zones: NonNullable<ReturnType<typeof cappedState>>['zones']): boolean {
  const [first, last] = [zones[0]!.flow, zones.at(-1)!.flow];
  return zones.length > 1 && first.some((sign, j) => sign !== 0 && sign === last[j]);
}
