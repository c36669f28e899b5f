/** The worst gap that the holding leaves: between stations, in corners of several contacts, and how uncertain. */
import { describe, expect, it } from 'vitest';
import { measureGap } from '../../src/model/gap/measure-gap.ts';
import { aroundWeights, ringOf } from '../../src/model/gap/surface.ts';
import type { MeasuredJoint, MeasuredSurface } from '../../src/model/gap/types.ts';
import { uniforms } from '../../src/model/scatter/philox.ts';
import { expectClose } from '../support/close.ts';
import { bond, DEGREE, joint, surface } from '../support/measured.ts';

const OVERLAP = 36;
const ends = { stations: [0, OVERLAP] };

describe('a double lap whose bonds taper against each other', () => {
  // The inner gap grows from 0.1 at the mouth to 0.3 at the root, the outer one falls from 0.3 to 0.2.
  // Both are 0.3 − 0.1·(2/3) = 0.2333… at two thirds: before it the inner bond stops the tube, behind it
  // the outer one. The outer bond opens to outer + least(inner, outer): 0.4667 there, 0.4 at both ends.
  const at = (from: number, to: number) => (x: number) => from + ((to - from) * x) / OVERLAP;
  const inner = at(0.1, 0.3);
  const outer = at(0.3, 0.2);
  const instrument = { error: 0.006, repeatability: 0.002 };
  const grid = { ...ends, ...instrument };
  const parts = joint([
    bond(
      surface(30, grid),
      surface((x) => 30 + 2 * inner(x), grid),
      false,
    ),
    bond(
      surface(40, grid),
      surface((x) => 40 + 2 * outer(x), grid),
    ),
  ]);
  const [inside, outside] = measureGap(parts);

  it('is thickest between the stations, where one bond takes over from the other', () => {
    expectClose(outside!.held.max.value, 0.3 + 0.3 - 0.4 / 3, { absolute: 1e-5 }, 'outer bond');
    expectClose(outside!.held.max.x, (2 * OVERLAP) / 3, { absolute: 0.01 }, 'where');
    // The inner bond opens to inner + least(inner, outer), which rises all the way: 0.5 at the root.
    expectClose(inside!.held.max.value, 0.5, { absolute: 1e-6 }, 'inner bond');
    expect(inside!.held.max.x).toBe(OVERLAP);
  });

  it('is thinnest between the stations too, where that bond does not stop the tube', () => {
    // With a jig of 0.05 nothing touches but at the mouth of the inner bond: 0.1 − 0.05.
    const [, held] = measureGap({ ...parts, holding: { spacer: 0, offset: 0.05 } });
    expectClose(held!.held.min.value, 0.15, { absolute: 1e-6 }, 'by the jig alone');
  });

  it('shares its uncertainty between both contacts, so that the place can move', () => {
    // V = outer(x) + e with e ≤ inner(x) and e ≤ outer(x), their slopes 2, −1 and −1: the factors of the two
    // contacts add up to 1, and 2ν − (1 − ν) − 1 = 0 makes them 2/3 and 1/3.
    const factors = [2 / 3, 1 + 1 / 3];
    // A gap is half of the difference of two diameters, each read at the mouth (1/3) and the root (2/3).
    const variance = factors.reduce((sum, factor) => {
      const shared = instrument.error ** 2 / 3;
      const own = (1 / 9 + 4 / 9) * instrument.repeatability ** 2;
      return sum + 2 * (factor / 2) ** 2 * (shared + own);
    }, 0);
    const { standard } = outside!.held.max;
    expectClose(standard, Math.sqrt(variance), { relative: 1e-3 }, 'outer bond');
  });
});

/** Every reading moved a little: what the extreme does, put together as the readings' errors are. */
function byDifferences(parts: MeasuredJoint, of: (joint: MeasuredJoint) => number): number {
  const STEP = 2e-4;
  let variance = 0;
  parts.bonds.forEach((one, b) => {
    for (const side of ['inside', 'outside'] as const) {
      const measured = one[side];
      let sum = 0;
      let squares = 0;
      measured.diameters.forEach((row, i) => {
        row.forEach((_, j) => {
          const moved = (step: number): MeasuredJoint => {
            const surfaceMoved: MeasuredSurface = {
              ...measured,
              diameters: measured.diameters.map((list, k) =>
                k === i ? list.map((value, l) => (l === j ? value + step : value)) : list,
              ),
            };
            const bonds = parts.bonds.map((other, k) =>
              k === b ? { ...other, [side]: surfaceMoved } : other,
            );
            return { ...parts, bonds };
          };
          const slope = (of(moved(STEP)) - of(moved(-STEP))) / (2 * STEP);
          sum += slope;
          squares += slope * slope;
        });
      });
      variance += (sum * measured.error) ** 2 / 3 + squares * measured.repeatability ** 2;
    }
  });
  return Math.sqrt(variance);
}

describe('the uncertainty of a thickest held gap', () => {
  const uniform = uniforms(7);
  const random = (k: number, n: number) => 2 * uniform(k, n) - 1;
  const grid = { stations: [3, 18, 33], error: 0.005, repeatability: 0.003 };
  /** Oval and tapered, as the number k has it; distinct enough that contacts do not change by a hair. */
  const shape = (k: number, n: number, drawn: number) =>
    surface((x, theta) => {
      const taper = 0.06 * random(k, n) * (x / OVERLAP - 0.5);
      return drawn + taper + 0.04 * random(k, n + 1) * Math.cos(2 * (theta - 3 * random(k, n + 2)));
    }, grid);
  const made = (k: number): MeasuredJoint =>
    joint(
      [
        bond(shape(k, 0, 29.6), shape(k, 3, 30), false),
        bond(shape(k, 6, 34), shape(k, 9, 34.4 + 0.05 * random(k, 20))),
      ],
      { spacer: 0.1 },
    );

  it.each([1, 2])('is what moving every reading makes of it: parts %i', (k) => {
    const parts = made(k);
    measureGap(parts).forEach((gap, b) => {
      const asMoved = byDifferences(parts, (other) => measureGap(other)[b]!.held.max.value);
      expectClose(gap.held.max.standard, asMoved, { relative: 0.03 }, `bond ${b}`);
    });
  });
});

it('a ring of diameters is the weighted sum of its readings', () => {
  for (const angles of [[10], [0, 90], [0, 60, 120], [5, 40, 77, 120, 160]]) {
    const clockings = angles.map((angle) => angle * DEGREE);
    const diameters = clockings.map((_, j) => 30 + 0.05 * Math.sin(7 * j));
    const weights = aroundWeights(clockings);
    const ring = ringOf(clockings)(diameters);
    for (let theta = -1; theta < 7; theta += 0.137) {
      const sum = weights(theta).reduce((total, weight, j) => total + weight * diameters[j]!, 0);
      expectClose(ring(theta), sum, { absolute: 1e-12 }, `at ${theta}`);
    }
  }
});
