/**
 * What a person types into a number field where it is more than a number: `1/2 in`, `2*16 + 0.4 mm`,
 * `90 degF`. A plain number goes the way it always went, and means the unit that the field shows.
 */
import { checkedText } from './expression-text.ts';
import { treeOf } from './expression-tree.ts';
import { isSame, targetOf } from './expression-units.ts';
import { Evaluation, wrongKind } from './expression-value.ts';
import { parseDecimal } from './number-entry.ts';
import type { QuantityName } from './quantities.ts';
import { readQuantity } from './quantity-entry.ts';
import { divided, times, toNumber } from './rational.ts';
import { Refused } from './refused.ts';
import { displayUnit, fromDisplay, withinRange, withUnit } from './units.ts';

export type FieldEntry =
  | {
      readonly ok: true;
      readonly value: number;
      /** `= 12.7 mm`: how an expression was read. None beside a plain number. */
      readonly understood?: string;
    }
  | { readonly ok: false; readonly message: string };

/** Digits and what parts them: a number, or a number that has two readings. */
const isNumberAlone = (text: string): boolean =>
  parseDecimal(text) !== null || /^[-+]?[\d.,'’\s_]*(?:e[-+]?\d*)?$/i.test(text);

/** The same value as it is shown, and the numbers that took the unit of the field. */
function understoodOf(name: QuantityName, value: number, taken: readonly string[]): string {
  const result = `= ${withUnit(name, value)}`;
  if (taken.length === 0) return result;
  const parts = [...new Set(taken)].map((part) => `“${part}”`).join(' and ');
  return `${result}, with ${parts} in ${displayUnit(name).symbol}`;
}

function evaluate(name: QuantityName, typed: string): FieldEntry {
  const target = targetOf(name);
  const tree = treeOf(checkedText(typed));
  if (!tree) return { ok: false, message: `“${typed}” is not complete, or has a sign too many.` };
  const reading = new Evaluation(target);
  const amount = target.onScale ? reading.temperatureOf(tree) : reading.amountOf(tree);
  if (!amount.bare && !isSame(amount.dimension, target.dimension)) {
    return { ok: false, message: wrongKind(typed, amount.dimension, target) };
  }
  const size = amount.bare ? times(amount.value, target.shown) : amount.value;
  const value = toNumber(divided(size, target.stored));
  if (!Number.isFinite(value)) return { ok: false, message: `“${typed}” is too large.` };
  if (value === 0 && amount.value.over !== 0n) {
    return { ok: false, message: `“${typed}” is too small.` };
  }
  return { ok: true, value, understood: understoodOf(name, value, reading.taken) };
}

/** Text in a field of this quantity, in its shown unit, to the value that is stored. */
export function readEntry(name: QuantityName, text: string): FieldEntry {
  const typed = text.trim();
  const plain = fromDisplay(name, text);
  if (plain.ok || isNumberAlone(typed.replaceAll('−', '-')) || !/\d/.test(typed)) return plain;
  try {
    return evaluate(name, typed);
  } catch (error) {
    if (error instanceof Refused) return { ok: false, message: error.message };
    throw error;
  }
}

/**
 * The same for a box that asks in the unit that is stored, and keeps to the range of its quantity.
 * Where the screen has another unit for it, a plain number is all that it reads.
 */
export const readBox = (text: string, name: QuantityName): FieldEntry =>
  displayUnit(name).shift === 0
    ? withinRange(name, readEntry(name, text))
    : readQuantity(text, name);
