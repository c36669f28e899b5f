/** A measured number, typed as it was read; it must lie in the range of its quantity. */
import { looksLikeExpression } from './expression-text.ts';
import { type Entry, readNumber } from './number-entry.ts';
import { type QuantityName, quantities } from './quantities.ts';
import { shortened } from './shortened.ts';

/** A number in the range; or what is wrong with it, as it stands at the end of a sentence. */
export function readQuantity(text: string, quantity: QuantityName): Entry {
  const entry = readNumber(text);
  if (!entry.ok) {
    if (!looksLikeExpression(text)) return entry;
    const message = `“${shortened(text.trim())}” is an expression: what was measured is typed as a plain number.`;
    return { ok: false, message };
  }
  const { min, max } = quantities[quantity];
  return entry.value >= min && entry.value <= max
    ? entry
    : { ok: false, message: `It lies between ${min} and ${max}.` };
}
