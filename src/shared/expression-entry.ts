/**
 * What a person types into a number field where it is more than a number: `1/2 in`, `2*16 + 0.4 mm`,
 * `90 degF`. A plain number goes the way it always went, and means the unit that the field shows.
 */

import type { DisplayUnit } from './display-units.ts';
import { checkedText } from './expression-text.ts';
import { treeOf } from './expression-tree.ts';
import { targetOf } from './expression-units.ts';
import { Evaluation, wrongKind } from './expression-value.ts';
import { isSame } from './named-units.ts';
import { parseDecimal } from './number-entry.ts';
import type { QuantityName } from './quantities.ts';
import { add, divided, times, toNumber } from './rational.ts';
import { Refused } from './refused.ts';
import { shortened } from './shortened.ts';
import { displayUnit, fromDisplay, inSiUnits, isInSi, withUnit } from './units.ts';

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

/** The same value as it is shown, in SI too where that is another unit, and the numbers that took the unit of the field. */
function understoodOf(
  name: QuantityName,
  value: number,
  taken: readonly string[],
  { symbol }: DisplayUnit,
): string {
  const asTyped = isInSi(name) ? '' : ` (${inSiUnits(name, value)})`;
  const result = `= ${withUnit(name, value)}${asTyped}`;
  if (taken.length === 0) return result;
  const parts = [...new Set(taken)].map((part) => `“${part}”`).join(' and ');
  return `${result}, with ${parts} in ${symbol}`;
}

function evaluate(name: QuantityName, typed: string, unit: DisplayUnit): FieldEntry {
  const target = targetOf(name, unit);
  const tree = treeOf(checkedText(typed, target));
  if (!tree)
    return { ok: false, message: `“${shortened(typed)}” is not complete, or has a sign too many.` };
  const reading = new Evaluation(target);
  const amount = target.onScale ? reading.temperatureOf(tree) : reading.amountOf(tree);
  if (!amount.bare && !isSame(amount.dimension, target.dimension)) {
    return { ok: false, message: wrongKind(typed, amount.dimension, target) };
  }
  const shown = times(amount.value, target.shown);
  const bare = target.zero ? add(shown, target.zero) : shown;
  const value = toNumber(divided(amount.bare ? bare : amount.value, target.stored));
  if (!Number.isFinite(value)) return { ok: false, message: `“${shortened(typed)}” is too large.` };
  if (value === 0 && amount.value.over !== 0n && !target.onScale) {
    return { ok: false, message: `“${shortened(typed)}” is too small.` };
  }
  return { ok: true, value, understood: understoodOf(name, value, reading.taken, unit) };
}

/** Text in a field of this quantity, a bare number in its shown unit, to the value that is stored. */
export function readEntry(
  name: QuantityName,
  text: string,
  unit: DisplayUnit = displayUnit(name),
): FieldEntry {
  const typed = text.trim();
  const plain = fromDisplay(name, text, unit);
  if (plain.ok || isNumberAlone(typed.replaceAll('−', '-')) || !/\d/.test(typed)) return plain;
  try {
    return evaluate(name, typed, unit);
  } catch (error) {
    if (error instanceof Refused) return { ok: false, message: error.message };
    throw error;
  }
}
