/**
 * The units that figures are written in just now. The page puts its own choice here; the terminal and the
 * core never do, and write in SI. Nothing that is stored or computed depends on it.
 */
import { presets, type UnitChoice } from './display-units.ts';

let source: () => UnitChoice = () => presets.SI;

/** Read inside whatever shows a figure: a page that follows changes then follows this one. */
export const shownUnits = (): UnitChoice => source();

/** In SI whatever is on the screen: for what is written into a document, or onto a sheet for the bench. */
export function inSi<T>(write: () => T): T {
  const back = showUnitsOf(() => presets.SI);
  try {
    return write();
  } finally {
    back();
  }
}

/** @returns puts back what was there */
export function showUnitsOf(choice: () => UnitChoice): () => void {
  const before = source;
  source = choice;
  return () => {
    source = before;
  };
}
