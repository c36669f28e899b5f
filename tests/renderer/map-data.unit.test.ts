import { describe, expect, it } from 'vitest';
import {
  between,
  contour,
  fieldOf,
  fieldRange,
  mapSentence,
  mapTable,
  valueAt,
  worstSpot,
} from '../../src/renderer/charts/map-data.ts';
import { makeBond, makeLayered, makeMap, makeStress } from './support/reports.ts';

const stress = makeStress(30, { map: makeMap(30) });
const shear = fieldOf(stress, 'bond', 'shear')!;
const peel = fieldOf(stress, 'bond', 'peel')!;

describe('the bond unrolled', () => {
  it('goes once round, from −180° back to where it began', () => {
    expect(shear.theta[0]).toBe(-180);
    expect(shear.theta.at(-1)).toBe(180);
    expect(shear.theta.toSorted((a, b) => a - b)).toEqual(shear.theta);
    expect(shear.values.at(-1)).toEqual(shear.values[0]);
    expect(shear.values).toHaveLength(37);
  });

  it('is worst where the stress is, the plane of bending in its middle', () => {
    const spot = worstSpot(shear, 'shear');
    expect(shear.x[spot.i]).toBe(30);
    expect(shear.theta[spot.j]).toBe(0);
    expect(valueAt(shear, spot)).toBeCloseTo(30, 12);
  });

  it('takes shear either way, but of peel only what opens', () => {
    const turned = makeMap(30);
    const negative = turned.bonds.map((bond) => ({
      ...bond,
      shear: bond.shear.map((row) => row.map((value) => -value)),
      peel: bond.peel.map((row) => row.map((value) => -value)),
    }));
    const other = makeStress(30, { map: { ...turned, bonds: negative } });
    const sheared = fieldOf(other, 'bond', 'shear')!;
    const pressed = fieldOf(other, 'bond', 'peel')!;
    expect(valueAt(sheared, worstSpot(sheared, 'shear'))).toBeCloseTo(-30, 12);
    expect(Math.abs(pressed.theta[worstSpot(pressed, 'peel').j] ?? 0)).toBe(180);
  });

  it('is not there without a map, nor for a bond that is not', () => {
    expect(fieldOf(makeStress(30), 'bond', 'shear')).toBeNull();
    expect(fieldOf(stress, 'outer bond', 'shear')).toBeNull();
  });

  it('is read between stations as on them', () => {
    expect(between(shear, 30, 0)).toBeCloseTo(30, 12);
    const [a, b] = [valueAt(shear, { i: 3, j: 18 }), valueAt(shear, { i: 4, j: 18 })];
    const middle = ((shear.x[3] ?? 0) + (shear.x[4] ?? 0)) / 2;
    expect(between(shear, middle, 0)).toBeCloseTo((a + b) / 2, 12);
    const { low, high } = fieldRange(shear);
    for (const theta of [-180, -33, 0, 77, 180]) {
      for (const x of [0, 3.3, 29.9, 30]) {
        expect(between(shear, x, theta)).toBeGreaterThanOrEqual(low - 1e-9);
        expect(between(shear, x, theta)).toBeLessThanOrEqual(high + 1e-9);
      }
    }
  });
});

describe('the line of the allowable', () => {
  it('runs where the field has that value', () => {
    const segments = contour(shear, 20);
    expect(segments.length).toBeGreaterThan(5);
    for (const { from, to } of segments) {
      // Straight along the edges of the cells, so exact on them.
      expect(between(shear, from.x, from.theta)).toBeCloseTo(20, 9);
      expect(between(shear, to.x, to.theta)).toBeCloseTo(20, 9);
    }
  });

  it('is not there where the field stays below', () => {
    expect(contour(shear, 38)).toEqual([]);
  });
});

describe('the map in words', () => {
  it('says what is largest, where, and how it stands to the allowable', () => {
    expect(mapSentence(shear, 'bond', 'shear')).toBe(
      'Elastic shear around the bond, bond: the largest shear is 30.0 MPa, at the mouth and 0° from the plane of bending. Nowhere does it reach the yield of 38.0 MPa.',
    );
    expect(mapSentence({ ...shear, allowable: 20 }, 'bond', 'shear')).toContain(
      'It passes the yield of 20.0 MPa inside the marked line.',
    );
    const unknown = makeStress(30, {
      map: makeMap(30),
      bonds: [makeBond(30, { layered: makeLayered(30, { strength: null }) })],
    });
    const field = fieldOf(unknown, 'bond', 'peel')!;
    expect(mapSentence(field, 'bond', 'peel')).toContain('No peel strength is given.');
    expect(peel.allowable).toBe(42);
  });

  it('has a table with both ends and the whole turn', () => {
    const { head, rows } = mapTable(shear);
    expect(head.at(1)).toBe('0.0 mm');
    expect(head.at(-1)).toBe('30.0 mm');
    expect(rows).toHaveLength(13);
    expect(rows.map(([theta]) => theta)).toContain('0°');
    expect(rows.find(([theta]) => theta === '0°')?.at(-1)).toBe('30.0');
  });
});
