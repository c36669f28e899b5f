/** Results of coupons as numbers: what may stand there, mean and scatter. */
import { ModelError } from '../errors.ts';

/** Results of one batch of material, in any order, all in one unit. */
export type Batch = readonly number[];

export interface Summary {
  readonly n: number;
  readonly mean: number;
  /** Standard deviation, n − 1; null for one result. */
  readonly deviation: number | null;
  /** Coefficient of variation, a share; null for one result or a mean that is not above 0. */
  readonly variation: number | null;
  readonly lowest: number;
  readonly highest: number;
}

/** Beyond these a square would leave the range of a double. */
const [SMALLEST, LARGEST] = [1e-100, 1e100];
/** A spread below this share of the largest value is rounding. */
const SAME = 1e-9;

/** @throws ModelError naming the batch and the result, both counted from 1 */
export function checkBatches(batches: readonly Batch[]): void {
  batches.forEach((batch, b) => {
    if (batch.length === 0) {
      throw new ModelError('batches', `Batch ${b + 1} has no result: add one or leave it out.`);
    }
    batch.forEach((value, i) => {
      const size = Math.abs(value);
      if (Number.isFinite(value) && (size === 0 || (size >= SMALLEST && size <= LARGEST))) return;
      const place = `Result ${i + 1} of batch ${b + 1}`;
      throw new ModelError(
        'batches',
        `${place} must be a number, 0 or between 1e-100 and 1e100 in size; it is ${value}.`,
      );
    });
  });
  if (batches.length === 0) throw new ModelError('batches', 'There is no result: give at least 1.');
}

export const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

/** Lowest and highest, of however many. */
export const extent = (values: readonly number[]): readonly [low: number, high: number] =>
  values.reduce<[number, number]>(
    ([low, high], x) => [Math.min(low, x), Math.max(high, x)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );

/** All the same, but for rounding. */
export function allEqual(values: readonly number[]): boolean {
  const [low, high] = extent(values);
  return high - low <= SAME * Math.max(Math.abs(low), Math.abs(high));
}

/** Mean by two passes: the second takes back what the first has rounded. */
export function meanOf(values: readonly number[]): number {
  const first = values.reduce((sum, x) => sum + x, 0) / values.length;
  return first + values.reduce((sum, x) => sum + (x - first), 0) / values.length;
}

/** Σ(x − mean)². */
export function squaresAbout(values: readonly number[], mean: number): number {
  return values.reduce((sum, x) => sum + (x - mean) ** 2, 0);
}

/** Standard deviation with n − 1, of 2 values or more; exactly 0 where all are the same to the bit. */
export const deviationOf = (values: readonly number[]): number =>
  values.every((x) => x === values[0])
    ? 0
    : Math.sqrt(squaresAbout(values, meanOf(values)) / (values.length - 1));

/** @param values at least one */
export function summarise(values: readonly number[]): Summary {
  const n = values.length;
  const mean = meanOf(values);
  const deviation = n > 1 ? deviationOf(values) : null;
  const [lowest, highest] = extent(values);
  return {
    n,
    mean,
    deviation,
    variation: deviation !== null && mean > 0 ? deviation / mean : null,
    lowest,
    highest,
  };
}
