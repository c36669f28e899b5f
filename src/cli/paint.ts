/** Marks and colours of the three states; a mark and a word always stand beside the colour. */
import type { MarginState } from '../shared/reports.ts';
import { stateWords } from '../shared/words.ts';

/** The shapes of the app: triangle, diamond, disc. */
const marks: Readonly<Record<MarginState, string>> = { fails: '▲', low: '◆', holds: '●' };
/** Red, yellow and green of the terminal's own palette. */
const colours: Readonly<Record<MarginState, number>> = { fails: 31, low: 33, holds: 32 };

export const markOf = (state: MarginState): string => marks[state];

export const marked = (state: MarginState): string => `${marks[state]} ${stateWords[state]}`;

export const painter =
  (colour: boolean) =>
  (state: MarginState) =>
  (text: string): string =>
    colour ? `\u001B[${colours[state]}m${text}\u001B[0m` : text;
