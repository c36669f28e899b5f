/** Fractions of whole numbers of any length: sums and unit factors stay exact and are rounded once. */
import type { Decimal } from './number-entry.ts';

export interface Rational {
  readonly over: bigint;
  /** Above zero. */
  readonly under: bigint;
}

export const rational = (over: bigint, under = 1n): Rational =>
  under < 0n ? { over: -over, under: -under } : { over, under };

export const ofDecimal = ({ negative, digits, exponent }: Decimal): Rational => {
  const whole = negative ? -BigInt(digits) : BigInt(digits);
  return exponent >= 0
    ? rational(whole * 10n ** BigInt(exponent))
    : rational(whole, 10n ** BigInt(-exponent));
};

export const add = (a: Rational, b: Rational): Rational =>
  a.under === b.under
    ? rational(a.over + b.over, a.under)
    : rational(a.over * b.under + b.over * a.under, a.under * b.under);
export const negated = ({ over, under }: Rational): Rational => rational(-over, under);
export const times = (a: Rational, b: Rational): Rational =>
  rational(a.over * b.over, a.under * b.under);
/** @param b not zero */
export const divided = (a: Rational, b: Rational): Rational =>
  rational(a.over * b.under, a.under * b.over);
/** @param exponent whole; @param a not zero where it is negative */
export const power = ({ over, under }: Rational, exponent: number): Rational => {
  const times = BigInt(Math.abs(exponent));
  return exponent < 0
    ? rational(under ** times, over ** times)
    : rational(over ** times, under ** times);
};

/** Hexadecimal digits of the longer of both: how much work the next step with it is. */
export const lengthOf = ({ over, under }: Rational): number =>
  Math.max(over.toString(16).length, under.toString(16).length);

/** More than a double can tell apart: the digits are cut there, and one is added where a rest is left. */
const DIGITS = 40;

/** The nearest double; infinite or zero where there is none. */
export function toNumber({ over, under }: Rational): number {
  if (over === 0n) return 0;
  const size = over < 0n ? -over : over;
  const places = DIGITS - (String(size).length - String(under).length);
  const scale = 10n ** BigInt(Math.abs(places));
  const [top, bottom] = places >= 0 ? [size * scale, under] : [size, under * scale];
  const rest = top % bottom === 0n ? '' : '1';
  const value = Number(`${top / bottom}${rest}e${-places - rest.length}`);
  return over < 0n ? -value : value;
}
