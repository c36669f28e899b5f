import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LabelWish, placeLabels, type Side } from '../../src/renderer/charts/place-labels.ts';

const area = { left: 0, top: 0, right: 400, bottom: 200 };
const wish = (x: number, y: number, ...sides: Side[]): LabelWish => ({
  width: 80,
  height: 18,
  spots: sides.map((side) => ({ at: { x, y }, side, gap: 5 })),
});

describe('labels', () => {
  it('stand where they would like to when nothing is in the way', () => {
    const [box] = placeLabels([wish(100, 100, 'e', 'w')], area, []);
    expect(box).toEqual({ left: 105, right: 185, top: 91, bottom: 109 });
  });

  it('go to the other side rather than out of the drawing', () => {
    const [box] = placeLabels([wish(390, 100, 'e', 'w')], area, []);
    expect(box?.right).toBe(385);
  });

  it('go to the other side rather than over a curve', () => {
    const curve = Array.from({ length: 20 }, (_, i) => ({ x: 110 + 4 * i, y: 100 }));
    const [box] = placeLabels([wish(100, 100, 'e', 'w')], area, curve);
    expect(box?.right).toBe(95);
  });

  it('keep off one another, the first choosing first', () => {
    const [first, second] = placeLabels(
      [wish(100, 100, 'e', 'w'), wish(100, 100, 'e', 'w')],
      area,
      [],
    );
    expect(first?.left).toBe(105);
    expect(second?.right).toBe(95);
  });

  it('keep off what is already there', () => {
    const taken = [{ left: 100, right: 200, top: 90, bottom: 110 }];
    const [box] = placeLabels([wish(100, 100, 'e', 's')], area, [], taken);
    expect(box?.top).toBe(105);
  });

  it('are never cut off, wherever they are wanted', () => {
    const sides = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            x: fc.integer({ min: -100, max: 500 }),
            y: fc.integer({ min: -100, max: 300 }),
            side: fc.constantFrom(...sides),
          }),
          { minLength: 1, maxLength: 6 },
        ),
        (wanted) => {
          const boxes = placeLabels(
            wanted.map(({ x, y, side }) => wish(x, y, side)),
            area,
            [],
          );
          expect(boxes).toHaveLength(wanted.length);
          for (const box of boxes) {
            expect(box.left).toBeGreaterThanOrEqual(area.left);
            expect(box.right).toBeLessThanOrEqual(area.right);
            expect(box.top).toBeGreaterThanOrEqual(area.top);
            expect(box.bottom).toBeLessThanOrEqual(area.bottom);
          }
        },
      ),
    );
  });
});
