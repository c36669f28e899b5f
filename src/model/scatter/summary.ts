/** A scatter run as figures: mean, spread, percentiles, histogram. */
import { type Percentile, percentileOf } from './binomial.ts';
import type { ScatterOutcome } from './scatter.ts';

/** Bars of one width; `from` of the first is a whole multiple of it, so that zero is an edge. */
export interface Histogram {
  readonly from: number;
  readonly width: number;
  readonly counts: readonly number[];
}

export interface ScatterSummary {
  readonly mean: number;
  /** Standard deviation of the samples, n − 1. */
  readonly deviation: number;
  readonly lowest: number;
  readonly highest: number;
  readonly percentiles: readonly Percentile[];
  readonly histogram: Histogram;
}

const BARS = 40;
const PERCENTILES = [0.01, 0.05] as const;

/** 1, 2 or 5 times a power of ten, not below `least`. */
export function roundWidth(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const step = [1, 2, 5, 10].find((digit) => digit * power >= least * (1 - 1e-9))!;
  return step * power;
}

export function histogramOf(values: ArrayLike<number>, low: number, high: number): Histogram {
  const width = roundWidth(Math.max((high - low) / BARS, 1e-6));
  const start = Math.floor(low / width);
  const counts = new Array<number>(Math.floor(high / width) - start + 1).fill(0);
  for (let i = 0; i < values.length; i++) {
    const bar = Math.floor(values[i]! / width) - start;
    counts[Math.min(Math.max(bar, 0), counts.length - 1)]! += 1;
  }
  return { from: start * width, width, counts };
}

/** Margins: ratio − 1. */
export function summaryOf({ ratios }: Pick<ScatterOutcome, 'ratios'>): ScatterSummary {
  const margins = ratios.map((ratio) => ratio - 1);
  const sorted = margins.slice().sort();
  const n = margins.length;
  const mean = margins.reduce((sum, margin) => sum + margin, 0) / n;
  const squares = margins.reduce((sum, margin) => sum + (margin - mean) ** 2, 0);
  const [lowest, highest] = [sorted[0]!, sorted[n - 1]!];
  return {
    mean,
    deviation: n > 1 ? Math.sqrt(squares / (n - 1)) : 0,
    lowest,
    highest,
    percentiles: PERCENTILES.map((share) => percentileOf(sorted, share)),
    histogram: histogramOf(margins, lowest, highest),
  };
}
