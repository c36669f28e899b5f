/** The gap between measured parts, against circles and ovals worked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/model/errors.ts';
import { angleOf, gapOffAxis, offsetToContact } from '../../src/model/gap/circles.ts';
import { measureGap } from '../../src/model/gap/measure-gap.ts';
import { summarise } from '../../src/model/gap/summary.ts';
import { aroundWeights, makeSurface, ovalIsSeen } from '../../src/model/gap/surface.ts';
import { expectClose } from '../support/close.ts';
import { bond, DEGREE, joint, surface } from '../support/measured.ts';

const near = { absolute: 2e-8 };
const only = (...args: Parameters<typeof joint>) => measureGap(joint(...args))[0]!;

describe('two circles off one axis', () => {
  // R = 20.2, r = 20, e = 0.13. By hand: toward the offset R − e − r, away R + e − r; at right angles the
  // ray from the inner centre meets the outer circle at √(R² − e²) = 20.19958168…
  it('has the distances that are worked by hand', () => {
    const at = (degrees: number) => gapOffAxis(20.2, 20, 0.13, angleOf(degrees * DEGREE));
    expectClose(at(0), 0.07, near, 'toward');
    expectClose(at(180), 0.33, near, 'away');
    expectClose(at(90), Math.sqrt(20.2 ** 2 - 0.13 ** 2) - 20, near, 'across');
    // At 60°: (x, y) = ρ·(½, √3/2) from the inner centre, which stands at (0.13, 0) of the outer one:
    // ρ² + 0.13·ρ + 0.0169 = 408.04, so ρ = −0.065 + √(0.004225 + 408.0231).
    expectClose(at(60), Math.sqrt(408.027325) - 0.065 - 20, near, 'at 60°');
  });

  it('touches where the offset is the difference of the radii', () => {
    expectClose(offsetToContact(20.2, 20, 0, angleOf(0)), 0.2, near, 'touching');
    expectClose(offsetToContact(20.2, 20, 0.12, angleOf(0)), 0.08, near, 'on a spacer');
    expect(offsetToContact(20.2, 20, 0.3, angleOf(0))).toBe(0);
    const e = offsetToContact(20.2, 20, 0.05, angleOf(0.7));
    expectClose(gapOffAxis(20.2, 20, e, angleOf(0.7)), 0.05, near, 'at any angle');
  });

  const round = bond(surface(40), surface(40.4));
  it('touches on one side and has twice the gap on the other where nothing holds the tube', () => {
    const gap = only([round]);
    expectClose(gap.centred.min.value, 0.2, near, 'centred');
    expect(gap.held.min.value).toBe(0);
    expectClose(gap.held.max.value, 0.4, near, 'thick side');
    expect(gap.stoppedBy).toBe('touch');
    const turn = Math.abs(gap.held.max.theta - gap.offset.theta);
    expectClose(turn, Math.PI, { absolute: 1e-6 }, 'opposite the offset');
  });

  it('rests on spacers, and keeps what they do not take', () => {
    const gap = only([round], { spacer: 0.12 });
    expect(gap.held.min).toMatchObject({ value: 0.12, standard: 0 });
    expectClose(gap.held.max.value, 0.28, near, 'thick side');
    expect(gap.stoppedBy).toBe('spacer');
  });

  it('goes as far as the jig lets it', () => {
    const gap = only([round], { offset: 0.03 });
    expectClose(gap.held.min.value, 0.17, near, 'thin side');
    expectClose(gap.held.max.value, 0.23, near, 'thick side');
    expect(gap.stoppedBy).toBe('jig');
    expectClose(gap.offset.value, 0.03, near, 'offset');
  });

  it('fills the ring between them', () => {
    const { volume } = only([round]);
    expectClose(volume, 36 * Math.PI * (20.2 ** 2 - 20 ** 2), { relative: 1e-12 }, 'volume');
  });

  it('stays centred where the parts do not fit', () => {
    const gap = only([bond(surface(40), surface(39.9))], { spacer: 0.1 });
    expectClose(gap.held.min.value, -0.05, near, 'thin');
    expectClose(gap.held.max.value, -0.05, near, 'thick');
  });
});

describe('ovals and tapers', () => {
  const oval = (mean: number, half: number, axis: number) => (_: number, theta: number) =>
    mean + half * Math.cos(2 * (theta - axis));

  it('finds an oval that lies between three clockings', () => {
    const gap = only([bond(surface(40), surface(oval(40.4, 0.06, 25 * DEGREE)))]);
    expectClose(gap.centred.max.value, 0.23, near, 'long axis');
    expectClose(gap.centred.min.value, 0.17, near, 'short axis');
    expectClose(gap.centred.max.theta % Math.PI, 25 * DEGREE, { absolute: 1e-5 }, 'where');
    expectClose(gap.centred.mean.value, 0.2, near, 'mean');
  });

  it('sees ovals cancel where they lie alike, and add where they are crossed', () => {
    const tube = surface(oval(40, 0.05, 0.4));
    const alike = only([bond(tube, surface(oval(40.4, 0.05, 0.4)))]);
    expectClose(alike.centred.max.value - alike.centred.min.value, 0, near, 'alike');
    const crossed = only([bond(tube, surface(oval(40.4, 0.05, 0.4 + Math.PI / 2)))]);
    expectClose(crossed.centred.min.value, 0.15, near, 'crossed, thin');
    expectClose(crossed.centred.max.value, 0.25, near, 'crossed, thick');
  });

  it('takes a taper straight on to both ends', () => {
    const gap = only([
      bond(
        surface(40),
        surface((x) => 40.4 - 0.004 * x),
      ),
    ]);
    expectClose(gap.centred.max.value, 0.2, near, 'mouth');
    expect(gap.centred.max.x).toBe(0);
    expectClose(gap.centred.min.value, 0.2 - 0.072, near, 'root');
    expect(gap.centred.min.x).toBe(36);
    expectClose(gap.centred.mean.value, 0.2 - 0.036, near, 'mean');
    const cone = (at: number) => Math.PI * ((20.2 - 0.002 * at) ** 2 - 400);
    const simpson = (36 / 6) * (cone(0) + 4 * cone(18) + cone(36));
    expectClose(gap.volume, simpson, { relative: 1e-12 }, 'volume');
  });

  it('lets each section touch by itself: the tube can tilt', () => {
    const gap = only(
      [
        bond(
          surface(40),
          surface((x) => 40.4 - 0.004 * x),
        ),
      ],
      { spacer: 0.1 },
    );
    expectClose(gap.held.max.value, 0.3, near, 'at the wide mouth');
    expect(gap.held.max.x).toBe(0);
  });

  it('meets every reading, however it lies', () => {
    const rough = surface((x, theta) => 40 + 0.01 * x + 0.02 * Math.cos(5 * theta), {
      clockings: [0, 30, 75, 120, 150],
    });
    const { diameter } = makeSurface(rough, 'surface');
    rough.stations.forEach((x, i) => {
      rough.clockings.forEach((theta, j) => {
        expectClose(diameter(x, theta), rough.diameters[i]![j]!, near, `${x}, ${theta}`);
        expectClose(diameter(x, theta + Math.PI), rough.diameters[i]![j]!, near, 'half a turn on');
      });
    });
  });

  it('knows when an oval can hide', () => {
    const seen = (...degrees: number[]) => ovalIsSeen(degrees.map((one) => one * DEGREE));
    expect(seen(0, 60, 120)).toBe(true);
    expect(seen(0, 45, 90, 135)).toBe(true);
    expect(seen(0, 90)).toBe(false);
    expect(seen(0, 10, 20)).toBe(false);
  });
});

describe('a double lap', () => {
  const inner = bond(surface(35.6), surface(36), false);
  const outer = bond(surface(40), surface(40.6));

  it('thins one bond where it thickens the other, and is stopped by the tighter one', () => {
    const [a, b] = measureGap(joint([inner, outer], { spacer: 0.1 }));
    // The inner bond, 0.2, leaves 0.1 to move; the outer one, 0.3, then keeps 0.2.
    expectClose(a!.held.min.value, 0.1, near, 'inner, thin');
    expectClose(a!.held.max.value, 0.3, near, 'inner, thick');
    expectClose(b!.held.min.value, 0.2, near, 'outer, thin');
    expectClose(b!.held.max.value, 0.4, near, 'outer, thick');
    // Moved toward φ, the outer bond is thick at φ + π, the inner one at φ.
    expectClose(Math.cos(a!.held.max.theta - a!.offset.theta), 1, { absolute: 1e-9 }, 'inner');
    expectClose(Math.cos(b!.held.max.theta - b!.offset.theta), -1, { absolute: 1e-9 }, 'outer');
  });
});

describe('uncertainty', () => {
  it('of a single reading on each part is the root of the sum of squares', () => {
    const grid = { stations: [18], clockings: [0], error: 0.02, repeatability: 0.01 };
    const gap = only([bond(surface(40, grid), surface(40.4, grid))], { offset: 0.03 });
    // Half of the difference of two diameters, each with 0.02/√3 and 0.01.
    const one = 0.5 * Math.sqrt(2 * (0.02 ** 2 / 3 + 0.01 ** 2));
    for (const { standard } of [gap.centred.min, gap.centred.mean, gap.held.min, gap.held.max]) {
      expectClose(standard, one, { relative: 1e-12 }, 'standard uncertainty');
    }
  });

  it('of a mean falls with the readings, but not below the error that they share', () => {
    const grid = { error: 0.02, repeatability: 0.03, stations: [0, 36], clockings: [0, 60, 120] };
    const gap = only([bond(surface(40, grid), surface(40.4, grid))]);
    const one = 0.5 * Math.sqrt(2 * (0.02 ** 2 / 3 + 0.03 ** 2 / 6));
    expectClose(gap.centred.mean.standard, one, { relative: 1e-9 }, 'mean');
  });

  it('doubles on the thick side where the tube rests on spacers', () => {
    const grid = { stations: [18], clockings: [0], error: 0, repeatability: 0.01 };
    const gap = only([bond(surface(40, grid), surface(40.4, grid))], { spacer: 0.1 });
    // 2·c − s, with c half of the difference.
    expectClose(gap.held.max.standard, 0.01 * Math.SQRT2, { relative: 1e-9 }, 'thick side');
  });
});

describe('any parts', () => {
  const degrees = fc.constantFrom([0], [0, 90], [0, 60, 120], [0, 45, 90, 135], [10, 70, 100, 150]);
  const parts = fc.record({
    clockings: degrees,
    clearance: fc.double({ min: 0.2, max: 1, noNaN: true }),
    oval: fc.double({ min: 0, max: 0.08, noNaN: true }),
    axis: fc.double({ min: 0, max: Math.PI, noNaN: true }),
    taper: fc.double({ min: -0.002, max: 0.002, noNaN: true }),
    spacer: fc.constantFrom(0, 0.02),
  });

  it('have weights that add up to one', () => {
    fc.assert(
      fc.property(degrees, fc.double({ min: -7, max: 7, noNaN: true }), (list, theta) => {
        const weights = aroundWeights(list.map((one) => one * DEGREE))(theta);
        const sum = weights.reduce((total, weight) => total + weight, 0);
        expectClose(sum, 1, { absolute: 1e-12 }, 'sum', { list, theta });
      }),
    );
  });

  it('keep their order: thinnest, mean, thickest; held about centred', () => {
    fc.assert(
      fc.property(parts, ({ clockings, clearance, oval, axis, taper, spacer }) => {
        const sleeve = surface(
          (x, theta) => 40 + clearance + taper * x + oval * Math.cos(2 * (theta - axis)),
          { clockings },
        );
        const { centred, held } = only([bond(surface(40, { clockings }), sleeve)], { spacer });
        expect(centred.min.value).toBeLessThanOrEqual(centred.mean.value + 1e-9);
        expect(centred.mean.value).toBeLessThanOrEqual(centred.max.value + 1e-9);
        expect(held.min.value).toBeLessThanOrEqual(centred.min.value + 1e-9);
        expect(held.max.value).toBeGreaterThanOrEqual(centred.max.value - 1e-9);
        const grown = surface(
          (x, theta) => 40.1 + clearance + taper * x + oval * Math.cos(2 * (theta - axis)),
          { clockings },
        );
        const wider = only([bond(surface(40, { clockings }), grown)], { spacer });
        expectClose(wider.centred.min.value, centred.min.value + 0.05, { absolute: 1e-6 }, 'wider');
        expect(wider.held.max.value).toBeGreaterThan(held.max.value);
      }),
      { numRuns: 25 },
    );
  });
});

describe('what cannot be computed', () => {
  it('names the surface and what is wrong with it', () => {
    const say = (clockings: readonly number[], stations = [4, 18]): ModelError => {
      try {
        only([bond(surface(40, { clockings, stations }), surface(40.4))]);
      } catch (error) {
        return error as ModelError;
      }
      throw new Error('it was computed');
    };
    expect(say([60, 0])).toBeInstanceOf(ModelError);
    expect(say([60, 0]).input).toBe('bonds.0.inside.clockings');
    expect(say([0, 180]).input).toBe('bonds.0.inside.clockings');
    expect(say([0, 60], [18, 4]).input).toBe('bonds.0.inside.stations');
    expect(say([]).input).toBe('bonds.0.inside.clockings');
  });
});

describe('the summary of a surface', () => {
  it('has its mean, its ovality and its taper', () => {
    const shape = summarise(
      surface((x, theta) => 40 - 0.002 * x + 0.03 * Math.cos(2 * theta), { repeatability: 0.03 }),
      36,
    );
    expectClose(shape.mean.value, 40 - 0.036, near, 'mean');
    expectClose(shape.mean.standard, 0.01, near, 'its uncertainty');
    expectClose(shape.ovality, 0.045, near, 'ovality by the clockings that were read');
    expectClose(shape.taper, 0.072, near, 'mouth less root');
  });
});
