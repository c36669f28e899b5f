/**
 * Units as people read them. The document keeps N, mm, MPa, °C; only the edge of the screen converts,
 * by moving the decimal point of the written number, so that no figure changes by being looked at.
 */
import { decimalToNumber, type Entry, parseDecimal, readNumber } from './number-entry.ts';
import { type QuantityName, quantities, type Unit } from './quantities.ts';

export interface DisplayUnit {
  /** Empty for a pure number. */
  readonly symbol: string;
  /** Places by which the decimal point moves left on the way out: 3 shows N as kN. */
  readonly shift: number;
}

const byUnit: Readonly<Record<Unit, DisplayUnit>> = {
  mm: { symbol: 'mm', shift: 0 },
  MPa: { symbol: 'MPa', shift: 0 },
  N: { symbol: 'kN', shift: 3 },
  'N/mm': { symbol: 'N/mm', shift: 0 },
  N·mm: { symbol: 'N·m', shift: 3 },
  '°C': { symbol: '°C', shift: 0 },
  '1/K': { symbol: 'µm/m/K', shift: -6 },
  'kg/m³': { symbol: 'kg/m³', shift: 0 },
  '1': { symbol: '', shift: 0 },
  cycles: { symbol: 'cycles', shift: 0 },
  '°': { symbol: '°', shift: 0 },
  min: { symbol: 'min', shift: 0 },
  h: { symbol: 'h', shift: 0 },
};

const gigapascal: DisplayUnit = { symbol: 'GPa', shift: 3 };

/** Adherend moduli are quoted in GPa; those of adhesives, a hundred times smaller, in MPa. */
const byName: Readonly<Partial<Record<QuantityName, DisplayUnit>>> = {
  modulus: gigapascal,
  shearModulus: gigapascal,
};

/** Decimals shown at least, so that columns of like figures line up. */
const decimals: Readonly<Partial<Record<QuantityName, number>>> = {
  overlap: 1,
  outsideDiameter: 1,
  wall: 1,
  width: 1,
  gap: 2,
  gapTolerance: 2,
  offset: 2,
  force: 1,
  shear: 1,
};

export const displayUnit = (name: QuantityName): DisplayUnit =>
  byName[name] ?? byUnit[quantities[name].unit];

/** `12.5` moved three places right is `12500`; the digits themselves never change. */
function written(value: number, shift: number, atLeast: number): string {
  const decimal = parseDecimal(String(value));
  if (!decimal) return String(value);
  const exponent = decimal.digits === '0' ? 0 : decimal.exponent + shift;
  const digits = decimal.digits;
  const sign = decimal.negative && digits !== '0' ? '−' : '';
  // Powers beyond what anyone counts as zeros are written as powers.
  const magnitude = digits.length + exponent;
  if (magnitude > 12 || magnitude < -6) {
    const [first = '0', ...rest] = digits;
    const tail = rest.join('').replace(/0+$/, '');
    return `${sign}${first}${tail && `.${tail}`}e${magnitude - 1}`.replace('e-', 'e−');
  }
  if (exponent >= 0) {
    const whole = digits + '0'.repeat(exponent);
    return sign + whole + (atLeast > 0 ? `.${'0'.repeat(atLeast)}` : '');
  }
  const padded = digits.padStart(1 - exponent, '0');
  const whole = padded.slice(0, padded.length + exponent);
  const fraction = padded
    .slice(padded.length + exponent)
    .replace(/0+$/, '')
    .padEnd(atLeast, '0');
  return sign + whole + (fraction && `.${fraction}`);
}

/** The stored value in display units, every digit of it: typing it back gives the same value. */
export const toDisplay = (name: QuantityName, value: number): string =>
  written(value, -displayUnit(name).shift, decimals[name] ?? 0);

/** Text in display units to the value that is stored. */
export const fromDisplay = (name: QuantityName, text: string): Entry =>
  readNumber(text, displayUnit(name).shift);

type Refusal = Extract<Entry, { ok: false }>;

/** The same entry where its value lies in the range of its quantity. */
export function withinRange<E extends Entry>(name: QuantityName, entry: E): E | Refusal {
  const { min, max } = quantities[name];
  if (!entry.ok || (entry.value >= min && entry.value <= max)) return entry;
  const ends = [min, max].map((end) => inDisplayUnit(name, end));
  return { ok: false, message: `It lies between ${ends[0]} and ${ends[1]}.` };
}

/** The stored value as a number in display units, for axes and sliders. */
export const inDisplayUnit = (name: QuantityName, value: number): number => {
  const decimal = parseDecimal(String(value));
  if (!decimal) return value;
  return decimalToNumber({ ...decimal, exponent: decimal.exponent - displayUnit(name).shift });
};

/** `16.0 kN`, `410 N·m`, `23 °C`. */
export const withUnit = (name: QuantityName, value: number): string => {
  const { symbol } = displayUnit(name);
  return symbol === '' ? toDisplay(name, value) : `${toDisplay(name, value)} ${symbol}`;
};
