import { describe, expect, it } from 'vitest';
import {
  allowables,
  peakText,
  readAt,
  shearRange,
  shearSentence,
  shearTable,
} from '../../src/renderer/charts/shear-data.ts';
import {
  strengthAt,
  sweepHigh,
  sweepSentence,
  sweepTable,
} from '../../src/renderer/charts/sweep-data.ts';
import { makeBond, makeStress, makeSweep } from './support/reports.ts';

const turned = makeBond(30);
const compressed = makeStress(30, {
  bonds: [
    {
      ...turned,
      shear: turned.shear.map((value) => -value),
      peak: { x: 30, value: -turned.peak.value },
    },
  ],
});
const two = makeStress(30, {
  bonds: [
    makeBond(30, { part: 'inner bond', peak: { x: 30, value: 14.2 } }),
    makeBond(30, {
      part: 'outer bond',
      peak: { x: 30, value: 22 },
      plastic: [{ from: 28, to: 30 }],
    }),
  ],
});

describe('the shear chart', () => {
  it('has room for curve and allowable, on the side that is used', () => {
    const pulled = shearRange(makeStress(30));
    expect(pulled.low).toBe(0);
    expect(pulled.high).toBeGreaterThan(38);
    const pushed = shearRange(compressed);
    expect(pushed.high).toBe(0);
    expect(pushed.low).toBeLessThan(-38);
  });

  it('draws each yield once, below zero too when a curve goes there', () => {
    expect(allowables(makeStress(30))).toEqual([38]);
    expect(allowables(two)).toEqual([38]);
    expect(allowables(compressed)).toEqual([-38]);
    const bond = makeBond(30);
    const both = bond.shear.map((value, i) => (i === 0 ? -30 : value));
    expect(allowables(makeStress(30, { bonds: [{ ...bond, shear: both }] }))).toEqual([38, -38]);
  });

  it('names the bond only where there are two, and two equal peaks once', () => {
    expect(peakText(makeStress(30), 0)).toMatch(/^peak 22\.0$/);
    expect(peakText(two, 0)).toBe('inner bond, peak 14.2');
    expect(peakText(two, 1)).toBe('outer bond, peak 22.0');
    const twin = makeStress(30, { bonds: [two.bonds[1]!, { ...two.bonds[1]!, part: 'upper' }] });
    expect(peakText(twin, 0)).toBeNull();
    expect(peakText(twin, 1)).toBe('both bonds, peak 22.0');
  });

  it('reads the nearest station', () => {
    const read = readAt(two, 14.9);
    expect(read.x).toBe(15);
    expect(read.values.map(({ part }) => part)).toEqual(['inner bond', 'outer bond']);
    expect(readAt(two, 99).x).toBe(30);
  });

  it('says in words what it shows', () => {
    const words = shearSentence(two, 'Gust');
    expect(words).toContain('Shear along 30.0 mm of bond, Gust, gap max, clocking 0°');
    expect(words).toContain('outer bond: peak 22.0 MPa at the mouth');
    expect(words).toContain('plastic over 2.0 mm');
    expect(words).not.toContain('cannot carry');
    const short = makeStress(30, { carried: false, capacity: 0.83 });
    expect(shearSentence(short, 'Gust')).toContain('cannot carry this load');
    expect(shearSentence(short, 'Gust')).toContain('0.83');
  });

  it('has both ends in its table', () => {
    const rows = shearTable(two);
    expect(rows).toHaveLength(13);
    expect(rows[0]?.x).toBe(0);
    expect(rows.at(-1)?.x).toBe(30);
    expect(rows[0]?.shear).toHaveLength(2);
  });
});

describe('the sweep', () => {
  const sweep = makeSweep();

  it('is read between its points, and not outside', () => {
    const [a, b] = [sweep.points[3]!, sweep.points[4]!];
    expect(strengthAt(sweep, a.overlap)?.bond).toBeCloseTo(a.bond, 12);
    expect(strengthAt(sweep, (a.overlap + b.overlap) / 2)?.bond).toBeCloseTo(
      (a.bond + b.bond) / 2,
      12,
    );
    expect(strengthAt(sweep, sweep.points[0]!.overlap)).not.toBeNull();
    expect(strengthAt(sweep, 1)).toBeNull();
    expect(strengthAt(sweep, 300)).toBeNull();
  });

  it('always shows the target, and is not flattened by a bond of great strength', () => {
    expect(sweepHigh(sweep, 0.25)).toBeGreaterThan(1.6);
    expect(sweepHigh(sweep, 2)).toBeGreaterThan(3);
    const strong = makeSweep({
      points: sweep.points.map((point) => ({ ...point, bond: point.bond * 50 })),
    });
    expect(sweepHigh(strong, 0.25)).toBe(3.75);
  });

  it('says in words what it shows', () => {
    const words = sweepSentence(sweep, 30, 0.25);
    expect(words).toContain('from 2.0 mm to 60.0 mm');
    expect(words).toContain('the target is 1.25');
    expect(words).toContain('At the present 30.0 mm');
    expect(words).toContain('Past 38 mm, more overlap buys under 2 %.');
    expect(sweepSentence(makeSweep({ plateau: null }), 30, 0.25)).toContain('still adds strength');
    expect(sweepSentence(makeSweep({ points: [] }), 30, 0.25)).toContain('nothing to show');
  });

  it('has both ends in its table', () => {
    const rows = sweepTable(sweep);
    expect(rows[0]).toEqual(sweep.points[0]);
    expect(rows.at(-1)).toEqual(sweep.points.at(-1));
  });
});
