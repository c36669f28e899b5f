/** Numbers as text, digit by digit: no step on the way goes through a double. */
import type { Decimal } from './number-entry.ts';
import type { Rational } from './rational.ts';

/** The written number with a plain minus sign as it is printed; ends in no zero but those asked for. */
export function decimalText({ negative, digits, exponent: shifted }: Decimal, atLeast = 0): string {
  const exponent = digits === '0' ? 0 : shifted;
  const sign = negative && digits !== '0' ? '−' : '';
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

const zero: Decimal = { negative: false, digits: '0', exponent: 0 };

/**
 * A fraction with so many significant digits.
 * @param towards the nearest, or the end of a range: no less, or no more, than the fraction itself
 */
export function rounded(
  { over, under }: Rational,
  significant: number,
  towards: 'nearest' | 'more' | 'less' = 'nearest',
): Decimal {
  if (over === 0n) return zero;
  const negative = over < 0n;
  const size = negative ? -over : over;
  const most = 10n ** BigInt(significant);
  const split = (exponent: number): { whole: bigint; rest: bigint; by: bigint } => {
    const scale = 10n ** BigInt(Math.abs(exponent));
    const [top, by] = exponent >= 0 ? [size, under * scale] : [size * scale, under];
    return { whole: top / by, rest: top % by, by };
  };
  let exponent = String(size).length - String(under).length - significant;
  if (split(exponent).whole >= most) exponent += 1;
  const { whole, rest, by } = split(exponent);
  const away = negative ? 'less' : 'more';
  const up = towards === 'nearest' ? 2n * rest >= by : rest > 0n && towards === away;
  const digits = String(up ? whole + 1n : whole);
  const bare = digits.replace(/0+$/, '');
  return { negative, digits: bare, exponent: exponent + digits.length - bare.length };
}
