/**
 * What a person types into a number field. Strict on purpose: a bonded joint can be a factor of
 * ten wrong through one misread separator, so what has two readings is refused with both shown.
 */
import { shortened } from './shortened.ts';

/** The written number, exactly: digits × 10^exponent. Moving the decimal point is arithmetic-free. */
export interface Decimal {
  readonly negative: boolean;
  /** No leading zeros; `0` for zero. */
  readonly digits: string;
  readonly exponent: number;
}

export type Entry =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string };

const shape = /^([+-]?)(\d*)(?:\.(\d*))?(?:e([+-]?\d{1,6}))?$/i;

/** Null when the text is not a plain decimal number. */
export function parseDecimal(text: string): Decimal | null {
  const match = shape.exec(text);
  if (!match) return null;
  const [, sign = '', whole = '', fraction = '', exponent = '0'] = match;
  if (whole === '' && fraction === '') return null;
  const digits = `${whole}${fraction}`.replace(/^0+(?=\d)/, '');
  return { negative: sign === '-', digits, exponent: Number(exponent) - fraction.length };
}

/** The nearest double, rounded once. */
export const decimalToNumber = (decimal: Decimal): number => {
  const value = Number(`${decimal.digits}e${decimal.exponent}`);
  return decimal.negative && value !== 0 ? -value : value;
};

const no = (message: string): Entry => ({ ok: false, message });

/** A comma, an apostrophe or a space can part decimals or thousands: say how to write each reading. */
function separated(text: string): string | null {
  if (!/^[+-]?[\d.,'’\s_]*\d(?:e[+-]?\d+)?$/i.test(text)) return null;
  // Longer ones would be written out whole in what is to be written instead.
  if (shortened(text) !== text) return null;
  const bare = (part: string): string => part.replace(/[.,'’\s_]/g, '');
  const joined = bare(text);
  const marks = text.replace(/[^.,]/g, '');
  const last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
  // The same mark twice can only part thousands; otherwise the last one is read as the point.
  const parted = marks === '' || (marks.length > 1 && new Set(marks).size === 1);
  if (parted && marks.length > 1 && !/^[+-]?\d{1,3}(?:[.,]\d{3})+$/.test(text)) return null;
  const pointed = parted ? joined : `${bare(text.slice(0, last))}.${bare(text.slice(last + 1))}`;
  if (!parseDecimal(joined) || !parseDecimal(pointed)) return null;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(text)) {
    return `“${text}” has two readings: write ${pointed} or ${joined}.`;
  }
  return `“${text}” is ambiguous: write ${pointed}.`;
}

/**
 * Reads one number, or says in one sentence what to type instead.
 * @param shift places by which the decimal point moves right on the way in: 3 turns kN into N.
 */
export function readNumber(text: string, shift = 0): Entry {
  const typed = text.trim();
  if (typed === '') return no('A number is needed here.');
  const plain = typed.replaceAll('−', '-');
  const decimal = parseDecimal(plain);
  if (!decimal) {
    return no(
      separated(plain) ?? `“${shortened(typed)}” is not a number: write it like 0.25 or 2.5e-1.`,
    );
  }
  const value = decimalToNumber({ ...decimal, exponent: decimal.exponent + shift });
  if (!Number.isFinite(value)) return no(`“${shortened(typed)}” is too large.`);
  if (value === 0 && /[1-9]/.test(decimal.digits)) return no(`“${shortened(typed)}” is too small.`);
  return { ok: true, value };
}
