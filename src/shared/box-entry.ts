/**
 * A number of a question: it belongs to no document, and whoever asks keeps its text. The text that is kept
 * is in the unit that is stored, so that it means the same whatever is on the screen; the box alone converts.
 */
import { type FieldEntry, readEntry } from './expression-entry.ts';
import { readNumber } from './number-entry.ts';
import type { QuantityName } from './quantities.ts';
import { readQuantity } from './quantity-entry.ts';
import { displayUnit, isInSi, siUnit, toDisplay, toDisplayWhole, withinRange } from './units.ts';

/** True where a box asks in the unit on the screen; of what SI shows in thousands it asks as stored. */
const followsScreen = (name: QuantityName): boolean => siUnit(name).shift === 0;

/** The text that is kept, or one typed where SI is shown: a value in range, or what is wrong. */
export const readBox = (text: string, name: QuantityName): FieldEntry =>
  followsScreen(name)
    ? withinRange(name, readEntry(name, text, siUnit(name)))
    : readQuantity(text, name);

/** The text as it is typed, in the unit on the screen. */
export const readTyped = (text: string, name: QuantityName): FieldEntry =>
  followsScreen(name) ? withinRange(name, readEntry(name, text)) : readQuantity(text, name);

/** What is kept of what was typed: what cannot be read stays as it is. */
export function boxToKeep(name: QuantityName, typed: string): string {
  if (isInSi(name) || !followsScreen(name)) return typed;
  const entry = readEntry(name, typed);
  return entry.ok ? String(entry.value) : typed;
}

/** Digits of a text that is shown as it was typed: more of them were worked out. */
const TYPED = 9;

/** @param whole with every digit, for whoever is about to type */
export function boxToShow(name: QuantityName, kept: string, whole = false): string {
  if (!followsScreen(name)) return kept;
  if (isInSi(name) && (whole || kept.replace(/\D/g, '').length <= TYPED)) return kept;
  const entry = readNumber(kept);
  if (!entry.ok) return kept;
  return whole ? toDisplayWhole(name, entry.value) : toDisplay(name, entry.value);
}

/** Of a length and a temperature; counts and factors have none. */
export const boxUnit = (name: QuantityName): string => displayUnit(name).symbol;
