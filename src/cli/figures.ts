/** Figures and texts as a terminal shows them. */
import { withoutNoise } from '../shared/measures.ts';

/** Three significant figures, never in powers; what is only rounding noise is 0. */
export function significant(value: number): string {
  const size = Math.abs(value);
  if (size < 5e-6) return '0';
  const rounded = Number(withoutNoise(size).toPrecision(3));
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(rounded)));
  return (value < 0 ? '−' : '') + rounded.toFixed(decimals);
}

/** Below this share of the largest of its kind, a figure is what rounding and solving leave of 0. */
const NOISE = 1e-5;

/** The same beside figures as large as `scale`: what is nothing next to them is 0, without a sign. */
export const beside = (value: number, scale: number): string =>
  Math.abs(value) < NOISE * scale ? '0' : significant(value);

// C0 and C1 controls, line and paragraph separators, marks that reorder text.
const unsafe = /[\p{Cc}\u2028\u2029\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;

/**
 * A value with every text in it safe to write to a terminal: a project file comes from anywhere, and
 * a name in it must not be able to break the line, move the cursor or recolour the screen.
 */
export function printable<T>(value: T): T {
  if (typeof value === 'string') return value.replace(unsafe, '\uFFFD') as T;
  if (Array.isArray(value)) return value.map(printable) as T;
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, printable(v)])) as T;
  }
  return value;
}
