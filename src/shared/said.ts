/**
 * Sentences that the core makes, with their figures: they stand in SI, for terminal and files. Whoever reads in other
 * units has the figures put into the sentence anew.
 */
import type { Measure } from './display-units.ts';
import { presets, unitOfMeasure } from './display-units.ts';
import { shownUnits } from './shown-units.ts';

export interface SaidFigure {
  /** As it stands in the sentence, with its unit, or without it where the unit follows later. */
  readonly as: string;
  readonly measure: Measure;
  readonly value: number;
}

export interface Said {
  readonly message: string;
  /** In the order in which they stand in it. */
  readonly figures?: readonly SaidFigure[] | undefined;
}

/** As many significant digits as the sentence has, at least three. */
const LEAST = 3;
const digitsIn = (as: string): number => {
  const [number = ''] = /[\d.]+/.exec(as) ?? [];
  return number.replace('.', '').replace(/^0+/, '').length;
};

function shownAs({ as, measure, value }: SaidFigure): string {
  const unit = unitOfMeasure(shownUnits(), measure);
  if (unit.symbol === unitOfMeasure(presets.SI, measure).symbol) return as;
  const shown = (value - unit.origin) / unit.scale;
  const number = String(Number(shown.toPrecision(Math.max(LEAST, digitsIn(as)))));
  return `${number.replace('-', '−')}${as.includes(' ') ? ` ${unit.symbol}` : ''}`;
}

/** The sentence in the units on the screen. */
export function saidText({ message, figures = [] }: Said): string {
  let before = message;
  let after = '';
  // From the end: what a person called a load case may look like a figure, and stands before them.
  for (const figure of figures.toReversed()) {
    const at = before.lastIndexOf(figure.as);
    if (at < 0) continue;
    after = shownAs(figure) + before.slice(at + figure.as.length) + after;
    before = before.slice(0, at);
  }
  return before + after;
}

/** The same of what a strength rests on. */
export const shownRest = (from: {
  readonly restsOn: string;
  readonly restsOnFigures?: readonly SaidFigure[];
}): string => saidText({ message: from.restsOn, figures: from.restsOnFigures });
