/** The histogram as bars, and as a sentence. */
import type { ScatterReport } from '../../../shared/reports-scatter.ts';
import { belowSentence } from '../../../shared/scatter-words.ts';
import { signed } from '../../../shared/words.ts';

export interface HistogramBar {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** Edges are whole multiples of the width: computed so, zero is 0 to the last bit. */
export function barsOf({ from, width, counts }: ScatterReport['histogram']): HistogramBar[] {
  const first = Math.round(from / width);
  return counts.map((count, i) => ({
    from: (first + i) * width,
    to: (first + i + 1) * width,
    count,
  }));
}

/** Margins to write under the axis: round ones, some five of them. */
export function ticksOf(from: number, to: number): number[] {
  const least = (to - from) / 6;
  const power = 10 ** Math.floor(Math.log10(least));
  const step = [1, 2, 5, 10].find((digit) => digit * power >= least)! * power;
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_v, i) => (first + i) * step);
}

export const histogramSentence = (report: ScatterReport): string =>
  `Histogram of the lowest margin from ${signed(report.lowest)} to ${signed(report.highest)}, mean ${signed(report.mean)}. ${belowSentence(report)}`;
