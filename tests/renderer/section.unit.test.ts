import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut, roomForLayers } from '../../src/renderer/size/section/layout.ts';
import { fitView, LEFT, preferredBelow, scaleNote } from '../../src/renderer/size/section/scale.ts';
import { stackOf } from '../../src/renderer/size/section/stack.ts';
import { convertLap } from '../../src/shared/convert-lap.ts';
import type { Joint } from '../../src/shared/project.ts';
import { double, lug, makeProject, socket } from './support/project.ts';

const { adherends } = makeProject();
const parts = (joint: Joint): string[] => stackOf(joint, adherends).layers.map(({ part }) => part);
const frame = { width: 700, height: 170 };
const drawn = (joint: Joint) => {
  const stack = stackOf(joint, adherends);
  const room = roomForLayers(stack, frame.height);
  const view = fitView(stack, joint.overlap, frame.width, room);
  return { stack, view, layout: layOut(stack, joint.overlap, view, frame) };
};

describe('what lies over what', () => {
  it('is from the outside in', () => {
    expect(parts(socket)).toEqual(['socket', 'gap', 'tube']);
    expect(parts(convertLap(socket, 'spigot'))).toEqual(['tube', 'gap', 'spigot']);
    expect(parts(double)).toEqual(['socket', 'outer gap', 'tube', 'inner gap', 'spigot']);
    expect(parts(lug)).toEqual(['plate', 'gap', 'strip']);
    expect(parts(convertLap(lug, 'flat-double'))).toEqual([
      'upper strap',
      'upper gap',
      'strip',
      'lower gap',
      'lower strap',
    ]);
  });

  it('hatches metal and shows the plies of a laminate', () => {
    const hatches = stackOf(socket, adherends).layers.flatMap((layer) =>
      layer.kind === 'wall' ? [layer.hatch] : [],
    );
    expect(hatches).toEqual(['metal', 'plies']);
  });

  it('knows an axis only for tubes', () => {
    expect(stackOf(socket, adherends).diameter).toBe(32);
    expect(stackOf(lug, adherends).diameter).toBeNull();
  });
});

describe('the scale', () => {
  it('is a preferred number', () => {
    expect(preferredBelow(10)).toBe(10);
    expect(preferredBelow(11.1)).toBe(10);
    expect(preferredBelow(0.13)).toBeCloseTo(0.125, 12);
    expect(preferredBelow(9.99)).toBe(9);
  });

  it('leaves room to drag and to write right of the mouth, for any joint', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (overlap, wall, gap) => {
          const joint: Joint = {
            ...double,
            overlap,
            tube: { ...double.tube, wall },
            innerBond: { gap, tolerance: 0 },
          };
          const { view, layout } = drawn(joint);
          expect(layout.mouth - LEFT).toBeLessThanOrEqual(0.77 * (frame.width - LEFT));
          // Shorter only where the walls take all the height there is, and never a sliver.
          const least = view.wallFactor > 1 ? 0.5 : 0.2;
          expect(layout.mouth - LEFT).toBeGreaterThanOrEqual(least * (frame.width - LEFT));
          expect(layout.bottom).toBeGreaterThan(layout.top);
          expect(Number.isFinite(view.wallFactor * view.gapFactor)).toBe(true);
        },
      ),
    );
  });

  it('keeps walls and bonds inside their room at ordinary sizes', () => {
    for (const joint of [socket, double, lug, convertLap(socket, 'spigot')]) {
      const { layout } = drawn(joint);
      expect(layout.top).toBeGreaterThanOrEqual(22);
      expect(layout.dimension + 8).toBeLessThanOrEqual(frame.height);
      if (layout.axis !== null) expect(layout.axis).toBeLessThanOrEqual(frame.height);
    }
  });

  it('does not breathe: few steps of the overlap change it', () => {
    const scales = Array.from({ length: 41 }, (_, i) => {
      return drawn({ ...socket, overlap: 20 + i / 2 }).view.scale;
    });
    expect(new Set(scales).size).toBeLessThanOrEqual(8);
    expect(scales).toEqual(scales.toSorted((a, b) => b - a));
  });

  it('draws a short overlap shorter rather than its walls as foil', () => {
    const { view } = drawn({ ...socket, overlap: 3 });
    expect(view.wallFactor).toBeGreaterThanOrEqual(0.5);
  });

  it('says what is not to scale', () => {
    const view = { left: 64, scale: 10, wallFactor: 1, gapFactor: 1 };
    expect(scaleNote(view)).toBe('to scale');
    expect(scaleNote({ ...view, gapFactor: 4 })).toBe('to scale, gap drawn 4 × thicker');
    expect(scaleNote({ ...view, wallFactor: 2, gapFactor: 20 })).toBe(
      'thickness not to scale: walls 2 ×, gap 20 ×',
    );
  });
});

describe('the drawing', () => {
  it('is to the scale that it claims', () => {
    const { view, layout, stack } = drawn(socket);
    expect(layout.mouth - layout.root).toBeCloseTo(30 * view.scale, 9);
    const [bond] = layout.bonds;
    expect(bond?.width).toBeCloseTo(30 * view.scale, 9);
    expect(bond?.height).toBeCloseTo(0.2 * view.scale * view.gapFactor, 9);
    const thick = (1.2 + 1.6) * view.scale * view.wallFactor;
    expect(layout.bottom - layout.top).toBeCloseTo(thick + (bond?.height ?? 0), 9);
    expect(stack.layers).toHaveLength(3);
  });

  it('tapers a wall on its free face and keeps the bonded face straight', () => {
    const { layout } = drawn({ ...socket, sleeve: { ...socket.sleeve, atMouth: 0.6 } });
    const [sleeve] = layout.shapes;
    const [bond] = layout.bonds;
    const heights = [...(sleeve?.outline ?? '').matchAll(/L(\S+) (\S+)/g)].map(([, , y]) =>
      Number(y),
    );
    expect(heights[0]).toBeGreaterThan(layout.top);
    expect(heights[1]).toBeCloseTo(bond?.y ?? Number.NaN, 9);
  });

  it('joins the two walls of a double lap before the root', () => {
    const { layout } = drawn(double);
    expect(layout.shapes.map(({ part }) => part)).toEqual(['socket and spigot', 'tube']);
    const mixed = makeProject().adherends;
    const other = stackOf({ ...double, spigot: { ...double.spigot, adherend: 'carbon' } }, mixed);
    const view = fitView(other, 45, frame.width, roomForLayers(other, frame.height));
    expect(layOut(other, 45, view, frame).shapes).toHaveLength(3);
  });

  it('names every part', () => {
    const texts = drawn(double).layout.labels.map(({ text }) => text);
    expect(texts).toEqual([
      'socket, wall 1.4 to 0.7',
      'spigot, wall 1.2 to 0.6',
      'outer gap 0.25',
      'inner gap 0.20',
      'tube 40.0 × 2.0',
    ]);
  });

  it('names the tube by its wall alone where there is no room for its diameter', () => {
    const { stack, view } = drawn(double);
    const texts = (width: number): string[] =>
      layOut(stack, double.overlap, view, { ...frame, width }).labels.map(({ text }) => text);
    expect(texts(frame.width)).toContain('tube 40.0 × 2.0');
    const { mouth } = layOut(stack, double.overlap, view, frame);
    // The walls end 46 px before the frame, and a label may go on for 40 more.
    const narrow = mouth + 14 + 'tube, wall 2.0'.length * 6.3 + 6 + 1;
    expect(texts(narrow)).toContain('tube, wall 2.0');
    expect(texts(narrow)).not.toContain('tube 40.0 × 2.0');
  });

  it('lets a mouth that is dragged far out take the tube along', () => {
    const { view, stack } = drawn(socket);
    const layout = layOut(stack, 90, view, frame);
    expect(layout.tubeEnd.x).toBeGreaterThan(layout.mouth);
  });
});
