/**
 * Units as people read them. The document keeps N, mm, MPa, °C; only the edge of the screen converts. Where
 * a unit is so many times ten of what is stored, the decimal point moves and every digit is shown; else the
 * exact figure is rounded for the eye, and a field that is written in shows as many digits as bring the very
 * same value back. No figure changes by being looked at.
 */
import { decimalText, rounded } from './decimal-text.ts';
import {
  type DisplayUnit,
  isDifference,
  kindOfQuantity,
  presets,
  unitOfQuantity,
} from './display-units.ts';
import { decimalToNumber, type Entry, parseDecimal, readNumber } from './number-entry.ts';
import { type QuantityName, quantities } from './quantities.ts';
import { add, divided, negated, ofDecimal, type Rational, times, toNumber } from './rational.ts';
import { shortened } from './shortened.ts';
import { shownUnits } from './shown-units.ts';

export { isDifference };

/** Significant digits of a figure that has no end, or none that one reads. */
const FOR_THE_EYE = 5;
/** What ends so soon is shown whole: it was typed in this unit. */
const WHOLE = 8;
/** Fewer tell a double from its neighbours, but near the zero of a scale. */
const MOST = 40;

/** Decimals shown at least in SI, so that columns of like figures line up. */
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

export const displayUnit = (name: QuantityName): DisplayUnit => unitOfQuantity(shownUnits(), name);

/** What SI writes it in, whatever is on the screen. */
export const siUnit = (name: QuantityName): DisplayUnit => unitOfQuantity(presets.SI, name);

/** `12.7 mm`: as it is written in SI, whatever is on the screen. */
export function inSiUnits(name: QuantityName, value: number): string {
  const unit = siUnit(name);
  return `${forTheEye(value, unit, decimals[name])} ${unit.symbol}`;
}

/** True where a quantity is shown as it is in SI. */
export function isInSi(name: QuantityName): boolean {
  const kind = kindOfQuantity(name);
  return kind === null || shownUnits()[kind] === presets.SI[kind];
}

/** The value in this unit, exactly; null of what is no number. */
function exactly(value: number, { size, zero }: DisplayUnit): Rational | null {
  const decimal = parseDecimal(String(value));
  if (!decimal) return null;
  const stored = ofDecimal(decimal);
  return divided(zero ? add(stored, negated(zero)) : stored, size);
}

function read(unit: DisplayUnit, text: string): Entry {
  if (unit.shift !== null) return readNumber(text, unit.shift);
  const plain = readNumber(text);
  const typed = text.trim();
  const decimal = parseDecimal(typed.replaceAll('−', '-'));
  if (!plain.ok || !decimal) return plain;
  const shown = decimal.digits === '0' ? { ...decimal, exponent: 0 } : decimal;
  const size = times(ofDecimal(shown), unit.size);
  const value = toNumber(unit.zero ? add(size, unit.zero) : size);
  if (!Number.isFinite(value)) return { ok: false, message: `“${shortened(typed)}” is too large.` };
  return value === 0 && size.over !== 0n && !unit.zero
    ? { ok: false, message: `“${shortened(typed)}” is too small.` }
    : { ok: true, value };
}

/** With so many digits; null where they bring another value back. */
function whole(value: number, unit: DisplayUnit, exact: Rational, digits: number): string | null {
  const text = decimalText(rounded(exact, digits));
  const back = read(unit, text);
  return back.ok && back.value === value ? text : null;
}

/** Every digit, at least so many behind the point: moving the point makes no others. */
function shifted(value: number, { shift }: DisplayUnit, atLeast: number): string {
  const decimal = parseDecimal(String(value));
  if (!decimal) return String(value);
  return decimalText({ ...decimal, exponent: decimal.exponent - (shift ?? 0) }, atLeast);
}

/** Digits of a figure in this unit, zeros at either end apart; none where it is a whole number of them. */
function digitsOf(value: number, { shift }: DisplayUnit): number {
  const decimal = parseDecimal(String(value));
  if (!decimal || decimal.exponent - (shift ?? 0) >= 0) return 0;
  return decimal.digits.replace(/0+$/, '').length;
}

/** What ends soon as it is; of the rest as many digits as one reads. */
function forTheEye(value: number, unit: DisplayUnit, atLeast = 0): string {
  if (unit.shift !== null && digitsOf(value, unit) <= WHOLE) return shifted(value, unit, atLeast);
  const exact = exactly(value, unit);
  if (!exact) return String(value);
  const ended = unit.shift === null ? whole(value, unit, exact, WHOLE) : null;
  return ended ?? decimalText(rounded(exact, FOR_THE_EYE), atLeast);
}

const decimalsOf = (name: QuantityName): number => (isInSi(name) ? (decimals[name] ?? 0) : 0);

/** The stored value in display units, rounded for the eye where it has many digits or no end. */
export const toDisplay = (name: QuantityName, value: number): string =>
  forTheEye(value, displayUnit(name), decimalsOf(name));

/** The same with every digit that it takes: typed back it is the very value. */
export function toDisplayWhole(name: QuantityName, value: number): string {
  const unit = displayUnit(name);
  if (unit.shift !== null) return shifted(value, unit, decimalsOf(name));
  const exact = exactly(value, unit);
  if (!exact) return String(value);
  for (let digits = WHOLE; digits < MOST; digits += 1) {
    const text = whole(value, unit, exact, digits);
    if (text !== null) return text;
  }
  return decimalText(rounded(exact, MOST));
}

/** Two values as they are displayed; where the eye would see the same, with as many digits as tell them apart. */
export function toldApart(name: QuantityName, one: number, other: number): [string, string] {
  const texts = (written: (value: number) => string): [string, string] => [
    written(one),
    written(other),
  ];
  const [a, b] = texts((value) => toDisplay(name, value));
  if (a !== b || Object.is(one, other)) return [a, b];
  const unit = displayUnit(name);
  const [exact, beside] = [exactly(one, unit), exactly(other, unit)];
  for (let digits = FOR_THE_EYE + 1; exact && beside && digits < MOST; digits += 1) {
    const [c, d] = [exact, beside].map((value) => decimalText(rounded(value, digits)));
    if (c !== undefined && d !== undefined && c !== d) return [c, d];
  }
  return texts((value) => toDisplayWhole(name, value));
}

/** Text in display units to the value that is stored. */
export const fromDisplay = (
  name: QuantityName,
  text: string,
  unit: DisplayUnit = displayUnit(name),
): Entry => read(unit, text);

type Refusal = Extract<Entry, { ok: false }>;

/** An end of a range in display units: rounded inwards, so that it may itself be typed. */
function endText(name: QuantityName, end: number, towards: 'more' | 'less'): string {
  const unit = displayUnit(name);
  const exact = unit.shift === null ? exactly(end, unit) : null;
  if (!exact) return String(inDisplayUnit(name, end)).replace('-', '−');
  return decimalText(rounded(exact, FOR_THE_EYE, towards));
}

/** `1 and 500 mm`: between which a quantity lies. */
export function rangeText(name: QuantityName): string {
  const { min, max } = quantities[name];
  const { symbol } = displayUnit(name);
  const ends = `${endText(name, min, 'more')} and ${endText(name, max, 'less')}`;
  return symbol === '' ? ends : `${ends} ${symbol}`;
}

/** The same entry where its value lies in the range of its quantity. */
export function withinRange<E extends Entry>(name: QuantityName, entry: E): E | Refusal {
  const { min, max } = quantities[name];
  if (!entry.ok || (entry.value >= min && entry.value <= max)) return entry;
  return { ok: false, message: `It lies between ${rangeText(name)}.` };
}

/** The stored value as a number in display units, for axes and sliders. */
export const inDisplayUnit = (name: QuantityName, value: number): number => {
  const unit = displayUnit(name);
  const decimal = parseDecimal(String(value));
  if (!decimal) return value;
  return unit.shift === null
    ? toNumber(exactly(value, unit)!)
    : decimalToNumber({ ...decimal, exponent: decimal.exponent - unit.shift });
};

/** `16.0 kN`, `410 N·m`, `23 °C`. */
export const withUnit = (name: QuantityName, value: number): string => {
  const { symbol } = displayUnit(name);
  return symbol === '' ? toDisplay(name, value) : `${toDisplay(name, value)} ${symbol}`;
};
