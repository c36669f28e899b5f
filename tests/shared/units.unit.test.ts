import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';
import {
  displayUnit,
  fromDisplay,
  inDisplayUnit,
  toDisplay,
  toDisplayWhole,
  toldApart,
  withinRange,
  withUnit,
} from '../../src/shared/units.ts';

const names = Object.keys(quantities) as QuantityName[];

describe('units at the edge', () => {
  it.each([
    ['force', '16', 16_000],
    ['force', '0.3', 300],
    ['moment', '410', 410_000],
    ['torque', '1.1', 1100],
    ['modulus', '114', 114_000],
    ['expansion', '8.6', 8.6e-6],
    ['expansion', '−0.5', -5e-7],
    ['adhesiveShearModulus', '876', 876],
    ['gap', '0.2', 0.2],
  ] as const)('%s: %s stores %d exactly', (name, text, stored) => {
    expect(fromDisplay(name, text)).toEqual({ ok: true, value: stored });
  });

  it.each([
    ['force', 16_000, '16.0'],
    ['force', -300, '−0.3'],
    // More digits than one reads are there for whoever types.
    ['force', 0.1 + 0.2, '0.0003'],
    ['force', 17_896.443230521, '17.896'],
    ['overlap', 33.86666666666667, '33.867'],
    ['overlap', 25.400000000000002, '25.4'],
    ['overlap', 33.866667, '33.866667'],
    ['cycles', 1_234_567_891, '1234567891'],
    ['moment', 410_000, '410'],
    ['moment', 0, '0'],
    ['overlap', 30, '30.0'],
    ['overlap', 30.25, '30.25'],
    ['gap', 0.2, '0.20'],
    ['gap', 0.125, '0.125'],
    ['modulus', 114_000, '114'],
    ['expansion', 8.6e-6, '8.6'],
    ['expansion', -5e-7, '−0.5'],
    ['cycles', 1e7, '10000000'],
    ['cycles', 1e12, '1e12'],
    ['temperature', -20, '−20'],
    ['wall', 1e-9, '1e−9'],
  ] as const)('%s: %d is shown as %s', (name, value, text) => {
    expect(toDisplay(name, value)).toBe(text);
  });

  it('names the unit beside the figure, and none for a pure number', () => {
    expect(withUnit('force', 16_000)).toBe('16.0 kN');
    expect(withUnit('poisson', 0.34)).toBe('0.34');
  });

  it('never changes a value by showing all of it and typing it back', () => {
    for (const name of names) {
      const { min, max } = quantities[name];
      fc.assert(
        fc.property(fc.double({ min, max, noNaN: true }), (value) => {
          const entry = fromDisplay(name, toDisplayWhole(name, value));
          expect(entry).toEqual({ ok: true, value: value === 0 ? 0 : value });
        }),
      );
    }
  });

  it('tells two values apart that the eye would not', () => {
    expect(toldApart('overlap', 14, 24)).toEqual(['14.0', '24.0']);
    expect(toldApart('overlap', 14, 14)).toEqual(['14.0', '14.0']);
    expect(toldApart('overlap', 100 / 3, 100.0001 / 3)).toEqual(['33.3333', '33.3334']);
    for (const name of names) {
      const { min, max } = quantities[name];
      fc.assert(
        fc.property(
          fc.double({ min, max, noNaN: true }),
          fc.double({ min: -1e-15, max: 1e-15, noNaN: true }),
          (one, little) => {
            const other = one * (1 + little);
            const [a, b] = toldApart(name, one, other);
            expect(a === b).toBe(one === other || (one === 0 && other === 0));
          },
        ),
        { numRuns: 30 },
      );
    }
  });

  it('has a unit for every quantity', () => {
    for (const name of names) {
      const { symbol } = displayUnit(name);
      expect(symbol === '').toBe(quantities[name].unit === '1');
    }
  });

  it('gives axes the same figure as the field', () => {
    expect(inDisplayUnit('force', 300)).toBe(0.3);
    expect(inDisplayUnit('expansion', 8.6e-6)).toBe(8.6);
    expect(inDisplayUnit('moment', -1100)).toBe(-1.1);
  });
});

describe('a number inside its range', () => {
  it('is told its ends in the unit that is shown', () => {
    const said = (text: string) => withinRange('modulus', fromDisplay('modulus', text));
    expect(said('114')).toEqual({ ok: true, value: 114_000 });
    expect(said('0.05')).toEqual({ ok: false, message: 'It lies between 0.1 and 1000 GPa.' });
    expect(said('1000')).toEqual({ ok: true, value: 1_000_000 });
    expect(said('x')).toMatchObject({ ok: false, message: expect.stringContaining('no') });
  });
});
