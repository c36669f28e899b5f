/**
 * How figures are printed in the book: few enough digits that the last bits of another machine's
 * arithmetic do not show, enough that a change of the program does.
 */

/** A true minus before the figure; its exponent stays as it is typed. */
const minus = (text: string): string => text.replace(/^-/, '−');
/** Small powers as 2e-6, not as 0.000002. */
const written = (number: number): string => {
  const short = Number(number.toPrecision(12));
  return minus(short !== 0 && Math.abs(short) < 1e-3 ? short.toExponential() : String(short));
};

/** `digits` significant ones; an ordinary decimal where that is short. */
export function significant(number: number, digits = 5): string {
  if (number === 0) return '0';
  if (!Number.isFinite(number)) return String(number);
  const [mantissa, exponent] = number.toExponential(digits - 1).split('e') as [string, string];
  const power = Number(exponent);
  if (power < -4 || power > 6) return minus(`${mantissa}e${power}`);
  return minus(Number(`${mantissa}e${power}`).toFixed(Math.max(digits - 1 - power, 0)));
}

/** Significant digits of a figure as printed. */
export const digitsOf = (text: string): number =>
  text.replace(/e.*$/i, '').replace(/[^\d]/g, '').replace(/^0+/, '').length;

/** Below this a difference is rounding and is not printed. */
const ROUNDING = 1e-9;

/** A relative difference, without its sign: in per cent where that reads well. */
export function share(relative: number): string {
  if (relative < ROUNDING) return '< 1e-9';
  if (relative >= 9.5e-5) return `${significant(100 * relative, 2)} %`;
  return significant(relative, relative < 1e-6 ? 1 : 2);
}

/** A difference with its sign, and its share of the expected value. */
export function difference(miss: number, expected: number): string {
  const relative = expected === 0 ? Math.abs(miss) : Math.abs(miss / expected);
  if (relative < ROUNDING) return '< 1e-9';
  const sign = miss > 0 ? '+' : '';
  const signed = `${sign}${significant(miss, relative < 1e-6 ? 1 : 2)}`;
  return expected === 0 ? signed : `${signed} (${share(relative)})`;
}

/** A tolerance: as given, in per cent where that reads well. */
export const allowance = (relative: number): string =>
  relative >= 1e-4 ? `${written(100 * relative)} %` : written(relative);

export const plain = written;
