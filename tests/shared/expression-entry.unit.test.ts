/** Expressions with units in a number field: hand values, and what is refused in which words. */
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readBox } from '../../src/shared/box-entry.ts';
import { kindNames, presets, type UnitChoice, unitKinds } from '../../src/shared/display-units.ts';
import { type FieldEntry, readEntry } from '../../src/shared/expression-entry.ts';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';
import { readQuantity } from '../../src/shared/quantity-entry.ts';
import { showUnitsOf } from '../../src/shared/shown-units.ts';
import { displayUnit, fromDisplay, toDisplay } from '../../src/shared/units.ts';

const value = (entry: FieldEntry): number => {
  if (!entry.ok) throw new Error(entry.message);
  return entry.value;
};
const understood = (name: QuantityName, text: string): string | undefined => {
  const entry = readEntry(name, text);
  if (!entry.ok) throw new Error(entry.message);
  return entry.understood;
};
const message = (name: QuantityName, text: string): string => {
  const entry = readEntry(name, text);
  if (entry.ok) throw new Error(`${text} was read as ${entry.value}`);
  return entry.message;
};

describe('an expression is read', () => {
  it.each([
    // Lengths: an inch is 25.4 mm exactly.
    ['overlap', '1 in', 25.4],
    ['overlap', '1/2 in', 12.7],
    ['overlap', '0.3 in', 7.62],
    ['overlap', '2*16 + 0.4 mm', 32.4],
    ['overlap', '(25 + 3)/2', 14],
    ['overlap', '0.1 + 0.2', 0.3],
    ['overlap', '1 ft', 304.8],
    ['overlap', '1 in + 2 mm', 27.4],
    ['overlap', '3 mm + 1/2 in - 1 cm', 5.7],
    ['overlap', '2*16+0.4 in', 42.16],
    ['overlap', '-1/2 in', -12.7],
    ['overlap', '(1 + 1/2) in', 38.1],
    ['overlap', '(1 + 2)/2 mm', 1.5],
    ['overlap', '3*1/2 in', 38.1],
    ['overlap', '2^3 mm', 8],
    ['overlap', '2^-2 m', 250],
    ['overlap', '6 mm^2/(2 mm)', 3],
    ['overlap', '6 mm^2/2 mm', 3],
    ['overlap', '0.03m', 30],
    ['overlap', '3.*10', 30],
    ['overlap', '.5 in', 12.7],
    ['overlap', '5e-1 in', 12.7],
    ['gap', '200 um', 0.2],
    ['gap', '200 µm', 0.2],
    // Forces are shown in kN, stored in N.
    ['force', '1 lbf', 4.4482216152605],
    ['force', '1.2e3 lbf', 5337.8659383126],
    ['force', '2*8', 16_000],
    ['force', '16000 N', 16_000],
    ['force', '2 + 500 N', 2500],
    ['force', '14 MPa * 20 mm^2', 280],
    // 4.4482216152605 × 25.4 and × 304.8 by hand.
    ['moment', '1 lbf*in', 112.9848290276167],
    ['moment', '1 lbf*ft', 1355.8179483314004],
    ['moment', '2.5 kN*m', 2_500_000],
    ['moment', '410 N·m', 410_000],
    ['moment', '3 N*mm', 3],
    // 4.4482216152605 / 645.16 by long division: 0.00689475729316836…
    ['strength', '1 psi', 0.006894757293168361],
    ['strength', '14 ksi', 96.52660210435705],
    ['strength', '1 lbf/in^2', 0.006894757293168361],
    ['strength', '5e6 Pa', 5],
    ['modulus', '114e3 MPa', 114_000],
    ['modulus', '100 + 14', 114_000],
    ['modulus', '114 GPa', 114_000],
    // (90 − 32) × 5/9.
    ['temperature', '90 degF', 32.22222222222222],
    ['temperature', '90 °F', 32.22222222222222],
    ['temperature', '-40 degF', -40],
    ['temperature', '212 degF', 100],
    ['temperature', '300 K', 26.85],
    ['temperature', '(20 + 5) degC', 25],
    ['temperature', '20 + 5', 25],
    ['toleranceTemperature', '5 K', 5],
    ['expansion', '8.6 um/m/K', 8.6e-6],
    ['expansion', '8.6e-6/K', 8.6e-6],
    ['expansion', '12e-6 1/K', 1.2e-5],
    ['expansion', '2*4.3', 8.6e-6],
    // So many °F more or less: a ninth of it is a fifth of so many kelvin.
    ['expansion', '9 um/m/degC', 9e-6],
    ['expansion', '5 uin/in/degF', 9e-6],
    ['expansion', '5 µin/in/°F', 9e-6],
    ['toleranceTemperature', '9 degF', 5],
    ['toleranceTemperature', '9 °C', 9],
    ['gap', '8 mil', 0.2032],
    ['gap', '8 thou', 0.2032],
    ['force', '2 kip', 8896.443230521],
    ['force', '2000 lbf', 8896.443230521],
    ['moment', '12 in-lbf', 1355.8179483314004],
    ['moment', '1 ft-lbf', 1355.8179483314004],
    ['moment', '1 lbf-ft', 1355.8179483314004],
    ['moment', '1/2 ft-lbf + 6 lbf·in', 1355.8179483314004],
    ['moment', '410 Nm', 410_000],
    ['moment', '3 Nmm', 3],
    ['moment', '2 kNm', 2_000_000],
    ['modulus', '2 Msi', 13_789.514586336722],
    ['fractureEnergy', '500 J/m²', 0.5],
    ['cycles', '5e6 cycles', 5_000_000],
    ['cycles', '2*10^6 cycles', 2_000_000],
    ['density', '1.6 g/cm^3', 1600],
    ['density', '1600 kg/m³', 1600],
    // 0.45359237 / 16387.064 mm³ × 1e9, a tenth of it.
    ['density', '0.1 lb/in^3', 2767.99047102031],
    ['clocking', '90/2 deg', 45],
    ['poisson', '34 %', 0.34],
    ['poisson', '1/3', 1 / 3],
    ['percent', '50 %', 50],
    ['percent', '10 + 5 %', 15],
    ['openTime', '1.5 h', 90],
    ['openTime', '90 s', 1.5],
    ['cureHours', '30 min', 0.5],
    ['cycles', '2*10^6', 2_000_000],
  ] as const)('%s: %s is %d', (name, text, stored) => {
    const read = value(readEntry(name, text));
    // The last digit of what was worked out by hand to fewer digits than a double has.
    if (name === 'density' && text.includes('lb')) expect(read).toBeCloseTo(stored, 10);
    else expect(Math.abs(read - stored)).toBeLessThanOrEqual(Math.abs(stored) * 2 ** -52);
  });

  it.each([
    ['overlap', '1 in', 25.4],
    ['overlap', '0.3 in', 7.62],
    ['overlap', '0.1 + 0.2', 0.3],
    ['force', '1 lbf', 4.4482216152605],
    ['force', '1000 lbf', 4448.2216152605],
    ['moment', '1 lbf*in', 112.9848290276167],
  ] as const)('%s: %s to the last bit, for it is rounded once', (name, text, stored) => {
    expect(value(readEntry(name, text))).toBe(stored);
  });

  it.each([
    ['overlap', '1/2 in', '= 12.7 mm'],
    ['overlap', '(25 + 3)/2', '= 14.0 mm'],
    ['overlap', '12.7 mm', '= 12.7 mm'],
    ['overlap', '2*16 + 0.4 mm', '= 32.4 mm, with “2*16” in mm'],
    ['overlap', '1 + 2 mm - 3', '= 0.0 mm, with “1” and “3” in mm'],
    ['force', '2 + 500 N', '= 2.5 kN, with “2” in kN'],
    ['modulus', '114e3 MPa', '= 114 GPa'],
    ['poisson', '1 - 60 %', '= 0.4'],
  ] as const)('%s: %s is understood %s', (name, text, said) => {
    expect(understood(name, text)).toBe(said);
  });
});

describe('a unit that a field can show', () => {
  const names = Object.keys(quantities) as QuantityName[];
  let back = (): void => {};
  afterEach(() => back());

  /** Every unit of every kind once. */
  const choices = Array.from(
    { length: Math.max(...kindNames.map((kind) => unitKinds[kind].units.length)) },
    (_, i) =>
      Object.fromEntries(
        kindNames.map((kind) => [kind, unitKinds[kind].units[i % unitKinds[kind].units.length]]),
      ) as unknown as UnitChoice,
  );

  it.each(choices.map((choice, i) => [i, choice] as const))(
    'is read in it as it stands beside it, choice %i',
    (_i, choice) => {
      back = showUnitsOf(() => choice);
      for (const name of names) {
        const { symbol } = displayUnit(name);
        for (const figure of ['7.5', '0.125', '−3']) {
          const bare = value(readEntry(name, figure));
          // Of a number without a unit nothing stands beside it.
          const text = `${figure} ${symbol}`.trim();
          expect(value(readEntry(name, text)), `${name}: ${text}`).toBe(bare);
        }
      }
    },
  );

  it('has no more digits in what is understood than one reads', () => {
    back = showUnitsOf(() => presets.US);
    expect(understood('force', '2000 + 2023.3 lbf')).toMatch(/^= 4023\.3 lbf \(17\.897 kN\)/);
    expect(understood('overlap', '0.8661417322834646 mm')).toBe('= 0.0341 in (0.86614 mm)');
    back();
    back = () => {};
    expect(understood('overlap', '4/3 in')).toBe('= 33.867 mm');
    // Rounded to be read, not to be kept.
    expect(value(readEntry('overlap', '4/3 in'))).toBe((4 * 25.4) / 3);
  });
});

describe('a plain number', () => {
  const names = Object.keys(quantities) as QuantityName[];

  it('is read as ever, to the bit, with nothing to say of it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        (name, number) => {
          for (const text of [String(number), toDisplay(name, number)]) {
            expect(readEntry(name, text)).toEqual(fromDisplay(name, text));
          }
        },
      ),
    );
  });

  it.each([
    '',
    ' ',
    '30',
    ' 0.3 ',
    '1,5',
    '1,500',
    '10 000',
    "10'000",
    '1.234,5',
    '1e999',
    '1e-999',
    'abc',
    '-',
    'Infinity',
    '1e',
    '½',
  ])('or what is none says the same as ever: %j', (text) => {
    expect(readEntry('force', text)).toEqual(fromDisplay('force', text));
  });
});

describe('an expression is refused', () => {
  it.each([
    ['overlap', '5 MPa', '“5 MPa” is a stress; this field takes a length.'],
    ['overlap', '2 + 5 MPa', '“5 MPa” is a stress; this field takes a length.'],
    ['overlap', '5 mm*2 mm', '“5 mm*2 mm” is an area; this field takes a length.'],
    ['overlap', '50 %', '“50 %” is a number without a unit; this field takes a length.'],
    ['overlap', '5 mm/2 mm', 'is a number without a unit; this field takes a length.'],
    ['force', '5 kN/2 m', 'is a force per length; this field takes a force.'],
    ['moment', '5 kN + 3 mm', '“5 kN” is a force and “3 mm” a length: they have no sum.'],
    ['poisson', '3 mm', '“3 mm” is a length; this field takes a number without a unit.'],
    ['temperature', '5 mm', '“5 mm” is a length; this field takes a temperature.'],
    ['temperature', '90 degF + 5', 'A temperature stands alone'],
    ['temperature', '20 degC + 5 K', 'A temperature stands alone'],
    ['temperature', '300 K - 5 K', 'A temperature stands alone'],
    ['temperature', '2*(90 degF)', 'A temperature stands alone'],
    ['temperature', '5 mm degF', 'a sign is missing'],
    // A pound is a mass, and no field takes the one for the other.
    ['force', '8 lb', '“8 lb” is a mass; this field takes a force. A pound of force is lbf.'],
    ['force', '3 kg', 'this field takes a force. A force is in N, kN, lbf or kip.'],
    ['moment', '10 in-lb', 'this field takes a moment. A pound of force is lbf.'],
    ['strength', '5 lb/in^2', 'this field takes a stress. A pound of force is lbf.'],
    ['density', '5 lbf', '“5 lbf” is a force; this field takes a density.'],
    ['overlap', '8 lb', '“8 lb” is a mass; this field takes a length.'],
    ['overlap', '1,5 in', '“1,5” is ambiguous: write 1.5.'],
    ['overlap', '0,5 in', '“0,5” is ambiguous: write 0.5.'],
    ['overlap', '1,500 mm', 'has two readings: write 1.500 or 1500.'],
    ['overlap', '1 000 mm', '“1 000” is ambiguous: write 1000.'],
    ['overlap', '1 1/2 in', '“1 1/2” has two readings: write (1 + 1/2) in.'],
    ['overlap', '1/2/3 in', 'has two readings: use brackets.'],
    ['overlap', '5 ft 3 in', 'Between “ft” and “3” a sign is missing'],
    ['overlap', '2(3)', 'Between “2” and “(” a sign is missing'],
    ['overlap', '2 MM', 'write mm'],
    [
      'overlap',
      '3 parsec',
      'is not a unit that is read here: they are mm, cm, m, µm, in, ft, mil, thou.',
    ],
    ['force', '3 pound', '“pound” is not a unit that is read here: they are N, kN, lbf, kip.'],
    ['moment', '3 foo', 'they are N·m, N·mm, kN·m, in-lbf, ft-lbf.'],
    ['strength', '3 foo', 'they are MPa, GPa, Pa, psi, ksi, Msi.'],
    ['temperature', '3 foo', 'they are °C, °F, K.'],
    ['expansion', '3 foo', 'they are 1/K, µm/m/K, µin/in/°F.'],
    ['density', '3 foo', 'they are kg/m³, g/cm³, lb/in³.'],
    ['fractureEnergy', '3 foo', 'they are N/mm, kN/mm, J/m², lbf/in.'],
    ['openTime', '3 foo', 'they are s, min, h.'],
    ['poisson', '3 foo', 'read here: this field takes a number without a unit.'],
    ['cycles', '3 foo', 'read here: this field takes a number without a unit, or cycles.'],
    ['poisson', '3 cycles', '“cycles” is not a unit that is read here'],
    // Whoever writes nanometres is not told of newton metres.
    ['overlap', '30 nm', '“nm” is not a unit that is read here: they are mm'],
    ['moment', '30 nm', '“nm” is not a unit that is read here: write Nm.'],
    ['overlap', '1/0 mm', '“0” is zero'],
    ['overlap', '0^-1', '“0” is zero'],
    ['overlap', '(1 - 1)^-1 mm', 'is zero'],
    ['overlap', '2^0.5 mm', 'The exponent “0.5”'],
    ['overlap', '2^(1 mm)', 'The exponent'],
    ['overlap', '2^10', 'The exponent “10”'],
    ['overlap', '(3 mm', 'A bracket is not closed.'],
    ['overlap', '3) mm', 'A bracket is closed that was not opened.'],
    ['overlap', '3 *', 'is not complete'],
    ['overlap', '3 ** 2', 'is not complete'],
    ['overlap', '--3', 'Two signs stand together'],
    ['overlap', '1e400 mm', '“1e400” is too large.'],
    ['overlap', '1e-400 mm', '“1e-400” is too small.'],
    ['overlap', '1e305 mm', 'too large'],
    ['overlap', `${'1+'.repeat(40)}1`, 'At most 80 characters'],
  ] as const)('%s: %s', (name, text, words) => {
    expect(message(name, text)).toContain(words);
  });
});

describe('a box that asks in the stored unit', () => {
  it('reads expressions, and keeps to its range', () => {
    expect(readBox('1/2 in', 'overlap')).toEqual({
      ok: true,
      value: 12.7,
      understood: '= 12.7 mm',
    });
    expect(readBox('100 in', 'overlap')).toMatchObject({
      ok: false,
      message: 'It lies between 1 and 500 mm.',
    });
    expect(readBox('12', 'overlap')).toEqual({ ok: true, value: 12 });
  });
  it('is read as ever where the screen has another unit', () => {
    expect(readBox('16000', 'force')).toEqual(readQuantity('16000', 'force'));
    expect(readBox('16 kN', 'force').ok).toBe(false);
  });
});

describe('a measured number', () => {
  it.each(['1/2 in', '25.4 mm', '20 + 0.1', '(20)'])('takes no expression: %s', (text) => {
    expect(readQuantity(text, 'diameter')).toEqual({
      ok: false,
      message: `“${text}” is an expression: what was measured is typed as a plain number.`,
    });
  });
  it.each(['abc', '20,1', '20 000', 'cos(1)', '12 parsec'])(
    'says of %s what it ever said',
    (text) => {
      const entry = readQuantity(text, 'diameter');
      expect(entry.ok).toBe(false);
      if (!entry.ok) expect(entry.message).not.toContain('expression');
    },
  );
});
