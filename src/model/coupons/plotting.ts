/** Probability plots: where each result stands, and the axes on which a fitted distribution is a straight line. */
import { ModelError } from '../errors.ts';
import { inverseIncompleteBeta } from '../scatter/incomplete-beta.ts';
import { normalQuantile } from '../scatter/quantiles.ts';
import type { Family, Fitted } from './distributions.ts';
import { allEqual, sorted } from './sample.ts';

export interface PlotPoint {
  readonly value: number;
  /** Median rank, 0 to 1: the i-th of n lies above it as often as below. */
  readonly chance: number;
  /** Along: the value, or its natural logarithm (lognormal, Weibull). */
  readonly x: number;
  /** Up: normal quantile of the chance, or ln(−ln(1 − chance)) (Weibull). */
  readonly y: number;
}

/** Median of the i-th of n ordered uniform numbers, from 1: I_p(i, n − i + 1) = ½ (DLMF 8.17). */
export const medianRank = (i: number, n: number): number =>
  inverseIncompleteBeta(0.5, i, n - i + 1);

/** The axis of chance. */
export const chanceAxis = (family: Family, chance: number): number =>
  family === 'weibull' ? Math.log(-Math.log1p(-chance)) : normalQuantile(chance);

/** The axis of values. */
export const valueAxis = (family: Family, value: number): number =>
  family === 'normal' ? value : Math.log(value);

/**
 * Points in rising order.
 * @throws ModelError for a value not above 0 on a logarithmic axis
 */
export function plotPoints(values: readonly number[], family: Family): readonly PlotPoint[] {
  if (family !== 'normal' && !values.every((x) => x > 0)) {
    throw new ModelError(
      'batches',
      `A ${family === 'weibull' ? 'Weibull' : 'lognormal'} plot takes results above 0: use the normal plot.`,
    );
  }
  return sorted(values).map((value, index) => {
    const chance = medianRank(index + 1, values.length);
    return { value, chance, x: valueAxis(family, value), y: chanceAxis(family, chance) };
  });
}

/** y = (x − location)/scale: the fitted line on these axes, at its ends. */
export function plotLine(
  points: readonly PlotPoint[],
  { location, scale }: Fitted,
): readonly [PlotEnd, PlotEnd] {
  if (points.length < 2 || allEqual(points.map(({ value }) => value))) {
    throw new ModelError('batches', 'A fitted line takes 2 results that are not the same.');
  }
  const end = (y: number): PlotEnd => ({ x: location + scale * y, y });
  return [end(points[0]!.y), end(points.at(-1)!.y)];
}

export interface PlotEnd {
  readonly x: number;
  readonly y: number;
}
