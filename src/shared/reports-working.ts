/** How a figure came about: its equations with their values. */
import type { Margin } from './reports.ts';

export interface CardValue {
  readonly symbol: string;
  readonly label: string;
  readonly value: number;
  /** Empty for a pure number. */
  readonly unit: string;
}

/** One equation with the values that went into a figure. */
export interface Card {
  readonly id: string;
  readonly title: string;
  /** What it says, in a sentence or two. */
  readonly statement: string;
  /** In the symbols of `values`; plain arithmetic that any reader can repeat. */
  readonly formula: string;
  /** The same with the values put in. */
  readonly filled: string;
  readonly values: readonly CardValue[];
  readonly result: CardValue;
  readonly source: string;
  readonly domain: readonly { readonly text: string; readonly inside: boolean }[];
}

/** How one figure came about: cards in the order of the calculation, the figure's own last. */
export interface Working {
  readonly jointId: string;
  readonly title: string;
  /** Case, gap and place that it holds for, in words. */
  readonly where: string;
  readonly margin: Margin | null;
  readonly cards: readonly Card[];
}
