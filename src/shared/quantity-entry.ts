/** A typed number that must lie in the range of its quantity. */
import { type Entry, readNumber } from './number-entry.ts';
import { type QuantityName, quantities } from './quantities.ts';

/** A number in the range; or what is wrong with it, as it stands at the end of a sentence. */
export function readQuantity(text: string, quantity: QuantityName): Entry {
  const entry = readNumber(text);
  if (!entry.ok) return entry;
  const { min, max } = quantities[quantity];
  return entry.value >= min && entry.value <= max
    ? entry
    : { ok: false, message: `It lies between ${min} and ${max}.` };
}
