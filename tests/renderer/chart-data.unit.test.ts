import fc from 'fast-check';
import { describe, expect, it, onTestFinished } from 'vitest';
import { nearest } from '../../src/renderer/charts/bond-picture.ts';
import {
  drawnStrengths,
  peelPeakText,
  peelPlot,
  peelRange,
  peelSentence,
  peelSpoken,
} from '../../src/renderer/charts/peel-data.ts';
import {
  allowables,
  peakText,
  shearPlot,
  shearRange,
  shearSentence,
} from '../../src/renderer/charts/shear-data.ts';
import { stressTable } from '../../src/renderer/charts/stress-table.ts';
import {
  strengthAt,
  sweepHigh,
  sweepSentence,
  sweepTable,
} from '../../src/renderer/charts/sweep-data.ts';
import { presets } from '../../src/shared/display-units.ts';
import type { LayeredStress } from '../../src/shared/reports.ts';
import { showUnitsOf } from '../../src/shared/shown-units.ts';
import { figure } from '../../src/shared/words.ts';
import { makeBond, makeLayered, makeStress, makeSweep } from './support/reports.ts';

const turned = makeBond(30);
const cappedPeel = makeLayered(30, {
  capped: {
    shear: turned.shear,
    peel: turned.shear.map((_, i, all) => (i === all.length - 1 ? 7 : 0.5)),
  },
  peel: turned.shear.map((_, i, all) => (i === all.length - 1 ? 12 : 1)),
  peak: { x: 30, value: 7 },
});
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
    const { x } = makeStress(30);
    expect(x[nearest(x, 14.9)]).toBe(15);
    expect(x[nearest(x, 99)]).toBe(30);
  });

  it('writes yield and peak of one plot in one unit', () => {
    const texts = () => {
      const { curves, levels } = shearPlot(makeStress(30));
      return [levels[0]!.text, curves[0]!.peak!.text];
    };
    const [yielding, peak] = texts();
    onTestFinished(showUnitsOf(() => presets.US));
    const [inKsi, peakInKsi] = texts();
    const number = (text: string | null | undefined): number =>
      Number(/[\d.]+/.exec(text ?? '')?.[0] ?? Number.NaN);
    const KSI = 6.894757;
    expect(number(inKsi) * KSI).toBeCloseTo(number(yielding), 0);
    expect(number(peakInKsi) * KSI).toBeCloseTo(number(peak), 0);
    expect(inKsi).toContain('°F');
  });

  it('hands over one curve for each bond, the layered shells only where they are wanted', () => {
    const names = (layered: boolean) => shearPlot(two, layered).curves.map(({ name }) => name);
    expect(names(false)).toEqual(['inner bond', 'outer bond']);
    expect(names(true).slice(2)).toEqual(['inner bond, layered', 'outer bond, layered']);
    expect(shearPlot(two).curves[0]?.dash).not.toEqual([]);
    expect(shearPlot(two).curves[1]?.dash).toEqual([]);
    const [plain, shown] = [shearRange(two), shearRange(two, true)];
    expect(shown.high).toBeGreaterThanOrEqual(plain.high);
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

  it('has both ends in its table, and peel beside shear', () => {
    const { head, rows } = stressTable(two);
    expect(rows).toHaveLength(13);
    expect([rows[0]?.[0], rows.at(-1)?.[0]]).toEqual(['0.00', '30.00']);
    expect(head).toEqual([
      'x, mm',
      'inner bond shear, MPa',
      'inner bond peel, MPa',
      'outer bond shear, MPa',
      'outer bond peel, MPa',
    ]);
    const capped = makeStress(30, { bonds: [makeBond(30, { layered: cappedPeel })] });
    expect(stressTable(capped).head).toContain('peel if elastic, MPa');
    // What counts comes first, the elastic figure after it.
    expect(stressTable(capped).rows.at(-1)?.slice(-2)).toEqual(['7.00', '12.0']);
  });
});

describe('the peel chart', () => {
  const one = (layered: Partial<LayeredStress>) =>
    makeStress(30, { bonds: [makeBond(30, { layered: makeLayered(30, layered) })] });

  it('opens upwards, with zero and the strength in view', () => {
    const { low, high } = peelRange(makeStress(30));
    expect(low).toBeLessThan(0);
    expect(high).toBeGreaterThan(42);
    expect(peelPlot(makeStress(30)).levels).toEqual([{ value: 42, text: 'peel strength 42.0' }]);
  });

  it('is not flattened by a strength far above: that is told at its upper edge', () => {
    const strong = one({ strength: 420 });
    expect(drawnStrengths(strong)).toEqual([]);
    expect(peelRange(strong).high).toBeLessThan(42);
    expect(peelPlot(strong).beyond).toBe('peel strength 420 MPa ↑');
    // A strength that is drawn is told at its line alone.
    expect(peelPlot(makeStress(30)).beyond).toBeNull();
  });

  it('tells of every strength, by a line in view or at the upper edge', () => {
    const values = fc.double({ min: -30, max: 60, noNaN: true });
    const strengths = fc.array(fc.double({ min: 0.1, max: 500, noNaN: true }), {
      minLength: 2,
      maxLength: 2,
    });
    fc.assert(
      fc.property(strengths, fc.array(values, { minLength: 3, maxLength: 3 }), (pair, peel) => {
        const bonds = pair.map((strength) =>
          makeBond(30, { layered: makeLayered(30, { strength, peel, capped: null }) }),
        );
        const { levels, range, beyond } = peelPlot(makeStress(30, { bonds }));
        for (const strength of pair) {
          const line = levels.find(({ value }) => value === strength);
          if (line) expect(line.value).toBeLessThanOrEqual(range.high);
          else expect(beyond).toContain(figure(strength));
        }
      }),
    );
  });

  it('has every yield of shear in view: none is beyond its scale', () => {
    const values = fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 3 });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), values, (shearYield, shear) => {
        const stress = makeStress(30, { bonds: [makeBond(30, { shearYield, shear })] });
        const { levels, range, beyond } = shearPlot(stress);
        expect(beyond).toBeNull();
        expect(levels.length).toBeGreaterThan(0);
        for (const { value } of levels) {
          expect(value).toBeGreaterThanOrEqual(range.low);
          expect(value).toBeLessThanOrEqual(range.high);
        }
      }),
    );
  });

  it('draws no line where no strength is given, and says so', () => {
    const unknown = one({ strength: null });
    expect(peelPlot(unknown).levels).toEqual([]);
    expect(peelSentence(unknown, 'Gust')).toContain('no peel strength given');
    expect(peelSpoken(unknown)).toContain('no peel strength given');
  });

  it('draws the capped curve as the one that counts, the elastic one thin', () => {
    const plot = peelPlot(makeStress(30, { bonds: [makeBond(30, { layered: cappedPeel })] }));
    expect(plot.curves.map(({ name }) => name)).toEqual(['peel', 'elastic']);
    expect(plot.curves[0]?.values).toBe(cappedPeel.capped?.peel);
    expect(plot.curves[0]?.peak?.text).toBe('peak 7.00 at 30.0 mm');
    expect(plot.curves[1]?.width).toBe(1);
    expect(plot.curves[1]?.peak).toBeNull();
  });

  it('tells two bonds apart by dash and name', () => {
    const plot = peelPlot(two);
    expect(plot.curves.map(({ dash }) => dash.length > 0)).toEqual([true, false]);
    expect(peelPeakText(two, 0)).toBeNull();
    expect(peelPeakText(two, 1)).toMatch(/^both 11\.0 at 30\.0 mm$/);
    const apart = makeStress(30, {
      bonds: [
        two.bonds[0]!,
        { ...two.bonds[1]!, layered: makeLayered(30, { peak: { x: 0, value: 9 } }) },
      ],
    });
    expect(peelPeakText(apart, 0)).toMatch(/^inner 11\.0/);
    expect(peelPeakText(apart, 1)).toBe('outer 9.00 at 0.0 mm');
    expect(peelSpoken(apart)).toMatch(/^Peel peak 11\.0 MPa, peel strength 42\.0 MPa\.$/);
  });

  it('says when nothing opens', () => {
    const pressed = one({ peel: makeStress(30).x.map(() => -2), peak: { x: 0, value: -2 } });
    expect(peelSentence(pressed, 'Gust')).toContain('is pressed together all along');
    expect(peelPlot(pressed).curves[0]?.peak).toBeNull();
    expect(peelRange(pressed).high).toBeGreaterThan(0);
    expect(peelSpoken(pressed)).toContain('opens nothing');
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
