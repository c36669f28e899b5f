/** Figures in the units of a person's choice: exact on the way in, and never changed on the way out. */
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { boxToKeep, boxToShow, readBox } from '../../src/shared/box-entry.ts';
import {
  kindNames,
  kindOfQuantity,
  presetNames,
  presetOf,
  presets,
  readChoice,
  type UnitChoice,
  unitKinds,
  unitOfQuantity,
} from '../../src/shared/display-units.ts';
import { readEntry } from '../../src/shared/expression-entry.ts';
import {
  figureOf,
  figureText,
  fixedOf,
  fromShown,
  inShown,
  lengthText,
  plainOf,
} from '../../src/shared/measures.ts';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';
import { toNumber } from '../../src/shared/rational.ts';
import { inSi, showUnitsOf } from '../../src/shared/shown-units.ts';
import {
  displayUnit,
  fromDisplay,
  inDisplayUnit,
  toDisplay,
  toDisplayWhole,
  withinRange,
} from '../../src/shared/units.ts';

const names = Object.keys(quantities) as QuantityName[];
let back = (): void => {};
afterEach(() => {
  back();
  back = () => {};
});
const show = (choice: UnitChoice): void => {
  back();
  back = showUnitsOf(() => choice);
};

/** Every unit of every kind once, whatever the presets take. */
const choices: readonly UnitChoice[] = Array.from(
  { length: Math.max(...kindNames.map((kind) => unitKinds[kind].units.length)) },
  (_, i) =>
    Object.fromEntries(
      kindNames.map((kind) => [kind, unitKinds[kind].units[i % unitKinds[kind].units.length]]),
    ) as unknown as UnitChoice,
);

describe('units of a choice', () => {
  it.each(presetNames)('%s has a unit for every quantity that has one', (name) => {
    for (const quantity of names) {
      const { symbol, size } = unitOfQuantity(presets[name], quantity);
      expect(symbol === '').toBe(quantities[quantity].unit === '1');
      expect(toNumber(size)).toBeGreaterThan(0);
    }
  });

  it('US shows nothing in a unit of SI', () => {
    for (const quantity of names) {
      if (kindOfQuantity(quantity) === null) continue;
      const { symbol } = unitOfQuantity(presets.US, quantity);
      expect(symbol, quantity).not.toBe(unitOfQuantity(presets.SI, quantity).symbol);
      expect(symbol, quantity).toMatch(/in|lb|mil|psi|ksi|Msi|°F/);
    }
  });

  it('reads what was kept, and takes SI for what it cannot', () => {
    expect(readChoice(JSON.parse(JSON.stringify(presets.US)))).toEqual(presets.US);
    for (const broken of [null, 7, 'US', [], {}]) expect(readChoice(broken)).toEqual(presets.SI);
    const mixed = readChoice({ ...presets.US, stress: 'bar', length: 'constructor', more: 1 });
    expect(mixed).toEqual({ ...presets.US, stress: 'MPa', length: 'mm' });
    expect(presetOf(presets.US)).toBe('US');
    expect(presetOf(mixed)).toBeNull();
  });
});

describe('a figure typed in US units', () => {
  const value = (name: QuantityName, text: string): number => {
    const entry = readEntry(name, text);
    if (!entry.ok) throw new Error(entry.message);
    return entry.value;
  };
  it.each([
    ['overlap', '1', 25.4],
    ['overlap', '.25', 6.35],
    ['gap', '8', 0.2032],
    ['temperature', '212', 100],
    ['temperature', '−40', -40],
    ['temperature', '32', 0],
    ['toleranceTemperature', '9', 5],
    ['density', '0.1', 2767.9904710203123],
    ['expansion', '5', 9e-6],
    ['force', '1', 4.4482216152605],
    ['moment', '1', 112.9848290276167],
    ['strength', '1', 6.894757293168361],
    ['modulus', '1', 6894.757293168362],
    ['fractureEnergy', '1', 0.17512683524647638],
    ['poisson', '0.3', 0.3],
    ['overlap', '25.4 mm', 25.4],
    ['overlap', '1 + 1 mm', 26.4],
    ['temperature', '100 degC', 100],
    ['temperature', '200 + 12', 100],
    ['strength', '10 MPa', 10],
  ] as const)('%s: %s stores %d', (name, text, stored) => {
    show(presets.US);
    expect(value(name, text)).toBe(stored);
  });

  it('says how an expression was read, in the unit on the screen and as it is stored', () => {
    show(presets.US);
    expect(readEntry('overlap', '12.7 mm')).toEqual({
      ok: true,
      value: 12.7,
      understood: '= 0.5 in (12.7 mm)',
    });
    expect(readEntry('overlap', '1 + 1 mm')).toMatchObject({
      understood: '= 1.0394 in (26.4 mm), with “1” in in',
    });
    expect(readEntry('overlap', '1,500')).toMatchObject({ ok: false });
    expect(readEntry('overlap', '5 psi')).toMatchObject({ ok: false });
  });

  it('refuses what is no number of this world, with powers that would never end', () => {
    show(presets.US);
    for (const text of ['1e999999', '9e307']) {
      expect(fromDisplay('overlap', text)).toMatchObject({ ok: false });
    }
    expect(fromDisplay('overlap', '1e-999999')).toMatchObject({ ok: false });
    expect(fromDisplay('overlap', '0e999999')).toEqual({ ok: true, value: 0 });
  });
});

describe('a stored figure in any unit', () => {
  it('comes back the very same from all its digits', () => {
    for (const choice of choices) {
      show(choice);
      for (const name of names) {
        const { min, max } = quantities[name];
        fc.assert(
          fc.property(fc.double({ min, max, noNaN: true }), (value) => {
            // At the very edge of what a double holds, or nearer to the zero of a scale than forty digits
            // tell, a field keeps the value by its text.
            const least = displayUnit(name).zero ? 1e-20 : 1e-290;
            if (Math.abs(value) < least && value !== 0) return;
            const entry = fromDisplay(name, toDisplayWhole(name, value));
            expect(entry).toEqual({ ok: true, value: value === 0 ? 0 : value });
          }),
          { numRuns: 40 },
        );
      }
    }
  });

  it('is off by less than a part in ten thousand to the eye', () => {
    for (const choice of choices) {
      show(choice);
      for (const name of names) {
        const { min, max } = quantities[name];
        fc.assert(
          fc.property(fc.double({ min, max, noNaN: true }), (value) => {
            const shown = Number(toDisplay(name, value).replaceAll('−', '-'));
            const exact = inDisplayUnit(name, value);
            expect(Math.abs(shown - exact)).toBeLessThanOrEqual(1e-4 * Math.abs(exact));
          }),
          { numRuns: 30 },
        );
      }
    }
  });

  it('is shown as it was typed in that unit', () => {
    show(presets.US);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_900_000 }), (n) => {
        const text = String(n / 100_000);
        const entry = fromDisplay('overlap', text);
        expect(entry.ok && toDisplay('overlap', entry.value)).toBe(text);
      }),
    );
    expect(toDisplay('temperature', 23)).toBe('73.4');
    expect(toDisplay('temperature', -55)).toBe('−67');
    expect(toDisplay('overlap', 16)).toBe('0.62992');
    expect(toDisplayWhole('overlap', 16)).toBe('0.6299212598425197');
    expect(toDisplay('overlap', 12.7)).toBe('0.5');
    expect(toDisplay('force', 0)).toBe('0');
  });

  it('keeps to its range, whose ends may be typed as they are told', () => {
    for (const choice of choices) {
      show(choice);
      for (const name of names) {
        const { min, max } = quantities[name];
        const said = withinRange(name, { ok: true, value: max * 2 + 1 });
        if (said.ok) throw new Error(name);
        const [, low = '', high = ''] =
          /between (\S+) and (\S+?)(?: .*)?\.$/.exec(said.message) ?? [];
        for (const [text, end] of [
          [low, min],
          [high, max],
        ] as const) {
          const entry = fromDisplay(name, text);
          expect(withinRange(name, entry), `${name} ${text}`).toEqual(entry);
          expect(entry.ok && Math.abs(entry.value - end)).toBeLessThanOrEqual(
            2e-4 * Math.max(Math.abs(end), displayUnit(name).scale),
          );
        }
      }
    }
    show(presets.US);
    expect(withinRange('overlap', { ok: true, value: 501 })).toEqual({
      ok: false,
      message: 'It lies between 0.039371 and 19.685 in.',
    });
  });
});

describe('a box of a question', () => {
  it('keeps the stored unit, whatever it shows', () => {
    show(presets.US);
    expect(boxToKeep('gap', '8')).toBe('0.2032');
    expect(boxToShow('gap', '0.2032')).toBe('8');
    expect(boxToKeep('gap', '0.2 mm')).toBe('0.2');
    expect(boxToKeep('gap', '1,500')).toBe('1,500');
    expect(boxToShow('gap', '5 MPa')).toBe('5 MPa');
    expect(readBox('0.2032', 'gap')).toEqual({ ok: true, value: 0.2032 });
    show(presets.SI);
    expect(boxToKeep('gap', '0.20')).toBe('0.20');
    expect(boxToShow('gap', '0.20')).toBe('0.20');
    expect(boxToShow('overlap', '33.86666666666667')).toBe('33.867');
    expect(boxToShow('overlap', '33.86666666666667', true)).toBe('33.86666666666667');
  });

  it('comes back the very same, typed again as it is shown to whoever types', () => {
    show(presets.US);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), (value) => {
        expect(boxToKeep('gap', boxToShow('gap', String(value), true))).toBe(String(value));
      }),
    );
  });
});

describe('figures of reports', () => {
  it('have three places in any unit, and those of SI as ever', () => {
    expect(figureText('stress', 34.26)).toBe('34.3 MPa');
    expect(figureText('force', 16_000)).toBe('16.0 kN');
    expect(figureText('mass', 48.123)).toBe('48.1 g');
    expect(lengthText(12.44)).toBe('12.4 mm');
    expect(plainOf('small', 0.2)).toBe('0.2');
    show(presets.US);
    expect(figureText('stress', 34.26)).toBe('4.97 ksi');
    expect(figureText('force', 16_000)).toBe('3597 lbf');
    expect(figureText('mass', 48.123)).toBe('0.106 lb');
    expect(figureOf('stress', -0.05)).toBe('−0.00725');
    expect(lengthText(12.44)).toBe('0.490 in');
    expect(fixedOf('small', 0.2, 3)).toBe('7.87');
    expect(plainOf('temperature', -55)).toBe('−67');
    expect(plainOf('small', 0.123456)).toBe('4.8605');
    expect(fixedOf('temperature', -55, 0)).toBe('−67');
    expect(fixedOf('length', -25.4, 1)).toBe('−1.000');
    expect(figureText('area', 645.16)).toBe('1.00 in²');
    expect(figureText('load', 4448.2216152605)).toBe('1000 lbf');
  });

  it('have places on an axis that come back', () => {
    show(presets.US);
    for (const measure of ['stress', 'length', 'temperature', 'rotation', 'spring'] as const) {
      for (const value of [-12, 0, 0.3, 4711]) {
        expect(fromShown(measure, inShown(measure, value))).toBeCloseTo(value, 9);
      }
    }
  });

  it('are in SI where they are written down, even after what fails', () => {
    show(presets.US);
    expect(inSi(() => figureText('stress', 10))).toBe('10.0 MPa');
    expect(() =>
      inSi(() => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(figureText('stress', 10)).toBe('1.45 ksi');
  });
});
