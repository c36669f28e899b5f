/** The reading of the map never stands on what it reads. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/renderer/charts/place-labels.ts';
import { CLEAR, distanceTo, placeReading } from '../../src/renderer/charts/place-reading.ts';

const area = { left: 64, right: 514, top: 8, bottom: 126 };
const beside = { left: 590, right: 658, top: 8, bottom: 126 };
const wide = { left: 300, right: 658, top: 8, bottom: 126 };
const size = { width: 158, height: 20 };
const corners: readonly (readonly [string, Point, 'left' | 'right', 'top' | 'bottom'])[] = [
  ['mouth, 180°', { x: 514, y: 8 }, 'left', 'bottom'],
  ['mouth, −180°', { x: 514, y: 126 }, 'left', 'top'],
  ['root, 180°', { x: 64, y: 8 }, 'right', 'bottom'],
  ['root, −180°', { x: 64, y: 126 }, 'right', 'top'],
];

describe('the reading of the map', () => {
  it.each(corners)('stands inwards from the corner: %s', (_name, at, across, down) => {
    const placed = placeReading(size, at, { area, beside })!;
    expect(distanceTo(placed.box, at)).toBeGreaterThanOrEqual(CLEAR);
    if (across === 'left') expect(placed.box.right).toBeLessThan(at.x);
    else expect(placed.box.left).toBeGreaterThan(at.x);
    if (down === 'bottom') expect(placed.box.top).toBeGreaterThan(at.y);
    else expect(placed.box.bottom).toBeLessThan(at.y);
  });

  it('is joined to the place by a hairline that begins outside the ring', () => {
    const at = { x: 514, y: 67 };
    const { box, leader } = placeReading(size, at, { area, beside })!;
    expect(Math.hypot(leader!.from.x - at.x, leader!.from.y - at.y)).toBeCloseTo(6, 9);
    expect(distanceTo(box, leader!.to)).toBe(0);
    // Off both of the lines that cross there.
    expect(box.right).toBeLessThan(at.x);
    expect(box.bottom < at.y || box.top > at.y).toBe(true);
  });

  it('goes elsewhere rather than over the largest stress', () => {
    const at = { x: 440, y: 50 };
    const first = placeReading(size, at, { area, beside })!;
    const peak = {
      x: (first.box.left + first.box.right) / 2,
      y: (first.box.top + first.box.bottom) / 2,
    };
    const second = placeReading(size, at, { area, beside }, [peak])!;
    expect(second.box).not.toEqual(first.box);
    expect(distanceTo(second.box, peak)).toBeGreaterThanOrEqual(CLEAR);
  });

  it('goes elsewhere rather than over the line of the allowable, where it can', () => {
    const at = { x: 514, y: 67 };
    const { box } = placeReading(size, at, { area, beside })!;
    const line = [{ x: box.left + 5, y: box.top + 5 }];
    const other = placeReading(size, at, { area, beside }, [], line)!;
    expect(distanceTo(other.box, line[0]!)).toBeGreaterThan(0);
  });

  it('stands beside the scale where the map is too narrow, and nowhere where nothing is free', () => {
    const narrow = { ...area, right: 184 };
    const at = { x: 184, y: 8 };
    const placed = placeReading(size, at, { area: narrow, beside: wide })!;
    expect(placed.leader).toBeNull();
    expect(placed.box).toEqual({ left: 300, right: 458, top: 8, bottom: 28 });
    expect(placeReading(size, at, { area: narrow, beside })).toBeNull();
  });

  it('is in the map and clear of the place and the peak, wherever they are', () => {
    const place = fc.record({
      x: fc.double({ min: 64, max: 514, noNaN: true }),
      y: fc.double({ min: 8, max: 126, noNaN: true }),
    });
    fc.assert(
      fc.property(
        place,
        place,
        fc.double({ min: 60, max: 200, noNaN: true }),
        (at, peak, width) => {
          const placed = placeReading({ width, height: 20 }, at, { area, beside: wide }, [peak]);
          expect(placed).not.toBeNull();
          const { box, leader } = placed!;
          expect(leader).not.toBeNull();
          expect(box.left).toBeGreaterThanOrEqual(area.left);
          expect(box.right).toBeLessThanOrEqual(area.right);
          expect(box.top).toBeGreaterThanOrEqual(area.top);
          expect(box.bottom).toBeLessThanOrEqual(area.bottom);
          expect(box.right - box.left).toBeCloseTo(width, 9);
          for (const point of [at, peak]) {
            expect(distanceTo(box, point)).toBeGreaterThanOrEqual(CLEAR);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});
