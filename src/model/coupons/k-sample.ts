/** Do batches come from one population? The k-sample Anderson-Darling test. */
import type { Batch } from './sample.ts';
import { sorted } from './sample.ts';

/** Chance of keeping batches of one population apart. */
export const POOLING_LEVEL = 0.025;

export interface KSample {
  /** A²kN of Scholz and Stephens, ties shared out. */
  readonly raw: number;
  /** ADK = A²kN/(k − 1). */
  readonly statistic: number;
  /** Standard deviation of ADK where the batches are alike. */
  readonly deviation: number;
  readonly critical: number;
}

export type Ties = 'midrank' | 'right';

interface Pooled {
  readonly value: number;
  /** How many results have this value. */
  readonly times: number;
}

function distinct(all: readonly number[]): readonly Pooled[] {
  const found: { value: number; times: number }[] = [];
  for (const value of sorted(all)) {
    const last = found.at(-1);
    if (last?.value === value) last.times += 1;
    else found.push({ value, times: 1 });
  }
  return found;
}

/** What one batch adds: Σ over the distinct values, counting up through the sorted batch. */
function ofBatch(batch: Batch, pooled: readonly Pooled[], n: number, ties: Ties): number {
  const own = sorted(batch);
  let [below, belowPooled, sum] = [0, 0, 0];
  for (const { value, times } of pooled) {
    let here = 0;
    while (own[below + here] === value) here += 1;
    if (ties === 'midrank') {
      // Half of those that are equal count as below.
      const [f, h] = [below + here / 2, belowPooled + times / 2];
      sum += (times * (n * f - batch.length * h) ** 2) / (h * (n - h) - (n * times) / 4);
    } else if (belowPooled + times < n) {
      const [f, h] = [below + here, belowPooled + times];
      sum += (times * (n * f - batch.length * h) ** 2) / (h * (n - h));
    }
    below += here;
    belowPooled += times;
  }
  return sum / batch.length;
}

/**
 * A²kN: F. W. Scholz, M. A. Stephens, "K-sample Anderson-Darling tests", JASA 82 (1987) 918, equation 7
 * (midrank, which MIL-HDBK-17-1F 8.3.2.2 takes) or 6 (right).
 * @param batches two or more, none empty, not all values the same
 */
export function kSampleStatistic(batches: readonly Batch[], ties: Ties = 'midrank'): number {
  const n = batches.reduce((sum, batch) => sum + batch.length, 0);
  const pooled = distinct(batches.flat());
  const sum = batches.reduce((all, batch) => all + ofBatch(batch, pooled, n, ties), 0);
  return ties === 'midrank' ? ((n - 1) * sum) / (n * n) : sum / n;
}

/** Standard deviation of A²kN/(k − 1) under one population: the same paper, equation 4. n ≥ 4. */
export function kSampleDeviation(sizes: readonly number[]): number {
  const k = sizes.length;
  const n = sizes.reduce((sum, size) => sum + size, 0);
  const s = sizes.reduce((sum, size) => sum + 1 / size, 0);
  let [t, g, tail] = [0, 0, 0];
  // From the far end: Σ over i of 1/((n − i)·j) with i < j, its inner sum kept.
  for (let i = n - 2; i >= 1; i--) {
    tail += 1 / (i + 1);
    g += tail / (n - i);
  }
  for (let i = 1; i < n; i++) t += 1 / i;
  const a = (4 * g - 6) * (k - 1) + (10 - 6 * g) * s;
  const b = (2 * g - 4) * k * k + 8 * t * k + (2 * g - 14 * t - 4) * s - 8 * t + 4 * g - 6;
  const c = (6 * t + 2 * g - 2) * k * k + (4 * t - 4 * g + 6) * k + (2 * t - 6) * s + 4 * t;
  const d = (2 * t + 6) * k * k - 4 * t * k;
  const variance =
    (((a * n + b) * n + c) * n + d) / ((n - 1) * (n - 2) * (n - 3) * (k - 1) * (k - 1));
  return Math.sqrt(variance);
}

/**
 * Statistic and what it may be at the 2.5 % level, 1 + σ·(1.96 + 1.149/√m − 0.391/m), m = k − 1: the
 * paper's table 1 and its interpolation in m; MIL-HDBK-17-1F 8.3.2.2. Good from 5 results in each batch.
 * @param batches as `kSampleStatistic`, 4 results or more together
 */
export function kSample(batches: readonly Batch[]): KSample {
  const m = batches.length - 1;
  const raw = kSampleStatistic(batches);
  const deviation = kSampleDeviation(batches.map((batch) => batch.length));
  const critical = 1 + deviation * (1.96 + 1.149 / Math.sqrt(m) - 0.391 / m);
  return { raw, statistic: raw / m, deviation, critical };
}
