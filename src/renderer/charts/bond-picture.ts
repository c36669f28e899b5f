/** What a chart along the bond is given to paint: plain arrays, no report. */
import type { Ink } from './ink.ts';
import type { Curve } from './plot.ts';

export interface BondView {
  /** Left edge of the overlap, pixels from the left of the canvas. */
  readonly left: number;
  /** Pixels for a millimetre. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

export interface Range {
  readonly low: number;
  readonly high: number;
}

export interface BondCurve {
  /** As the readout under the pointer calls it. */
  readonly name: string;
  readonly values: readonly number[];
  readonly colour: keyof Ink;
  readonly dash: readonly number[];
  readonly width: number;
  /** Ringed, and labelled unless another label speaks for it. */
  readonly peak: {
    readonly x: number;
    readonly value: number;
    readonly text: string | null;
  } | null;
}

/** A curve as the plot draws it. */
export const lineOf = (
  { values, colour, dash, width }: BondCurve,
  x: readonly number[],
  ink: Ink,
): Curve => ({
  points: x.map((at, i) => ({ x: at, y: values[i] ?? 0 })),
  colour: ink[colour],
  dash,
  width,
});

export interface BondPlot {
  readonly x: readonly number[];
  /** The first stands on top. */
  readonly curves: readonly BondCurve[];
  /** Allowables, drawn dotted. */
  readonly levels: readonly { readonly value: number; readonly text: string }[];
  readonly zones: readonly { readonly from: number; readonly to: number }[];
  readonly range: Range;
  /** Allowables above the scale: told at an arrow on the upper edge. */
  readonly beyond: string | null;
}

export interface BondPicture extends BondPlot {
  /** Whether the axis is lettered; of two plots above each other only the lower one is. */
  readonly foot: boolean;
  readonly view: BondView;
  readonly ink: Ink;
}

/** The outer bond, or the only one, is the solid line. */
export const isMain = (index: number, count: number): boolean => index === count - 1;

export const DASHED: readonly number[] = [7, 4];
/** A curve that does not count: thin and finely dashed. */
export const THIN = { width: 1, dash: [2, 2.5] } as const;

/** Place of the station that is nearest to this x. */
export function nearest(x: readonly number[], at: number): number {
  let best = 0;
  for (let i = 1; i < x.length; i += 1) {
    if (Math.abs((x[i] ?? 0) - at) < Math.abs((x[best] ?? 0) - at)) best = i;
  }
  return best;
}

export const placeAlong = (x: number, length: number, along: string): string =>
  x <= 1e-6 * length ? 'at the root' : x >= length * (1 - 1e-6) ? 'at the mouth' : along;

/** A dozen stations for the table beside a chart, both ends among them. */
export function tableStations(x: readonly number[], rows = 13): number[] {
  const last = x.length - 1;
  return [...new Set(Array.from({ length: rows }, (_, i) => Math.round((i * last) / (rows - 1))))];
}
