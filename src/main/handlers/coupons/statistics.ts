/** Statistics of the results that count, by batches; and measured over predicted. */
import { parametersOf } from '../../../model/coupons/distributions.ts';
import { couponStatistics } from '../../../model/coupons/path.ts';
import { plotLine, plotPoints } from '../../../model/coupons/plotting.ts';
import { allEqual, summarise } from '../../../model/coupons/sample.ts';
import { studentUpper } from '../../../model/coupons/student.ts';
import type {
  Correlation,
  CouponLine,
  CouponStatistics,
  Family,
  ProbabilityPlot,
} from '../../../shared/reports-coupons.ts';

/** Results that count, batch by batch, in the order in which the batches first appear. */
export function batchesOf(lines: readonly CouponLine[]): {
  readonly names: readonly string[];
  readonly values: readonly (readonly number[])[];
} {
  const counted = lines.filter(({ apart }) => apart === null);
  const names = [...new Set(counted.map(({ batch }) => batch))];
  const values = names.map((name) =>
    counted.filter(({ batch }) => batch === name).map(({ strength }) => strength),
  );
  return { names, values };
}

/** Drawn on the axes of the distribution that was chosen, else on those of the normal one. */
function plotOf(values: readonly number[], chosen: string | undefined): ProbabilityPlot {
  const families: readonly Family[] = ['normal', 'lognormal', 'weibull'];
  const family = families.find((one) => one === chosen) ?? 'normal';
  const points = plotPoints(values, family);
  const fits = values.length > 1 && !allEqual(values);
  return { family, points, line: fits ? plotLine(points, parametersOf(values, family)) : null };
}

export function statisticsOf(lines: readonly CouponLine[]): CouponStatistics | null {
  const { names, values } = batchesOf(lines);
  if (names.length === 0) return null;
  const found = couponStatistics(values);
  return {
    all: found.all,
    batches: found.batches.map((batch, i) => ({ name: names[i]!, ...batch })),
    decisions: found.decisions,
    basis: found.basis,
    chosen: found.chosen,
    sampling: found.sampling,
    plot: plotOf(values.flat(), found.chosen.B?.method),
  };
}

/** Of the mean, both tails together. */
const TAIL = 0.025;

/**
 * Measured over predicted; null without a result that counts and is predicted.
 * @param of over the load that is predicted first of all, or that of the adhesive's own modes
 */
export function correlationOf(
  lines: readonly CouponLine[],
  of: 'ratio' | 'bondRatio' = 'ratio',
): Correlation | null {
  const ratios = lines.flatMap(({ [of]: ratio, apart }) =>
    ratio === null || apart !== null ? [] : [ratio],
  );
  if (ratios.length === 0) return null;
  const { n, mean, deviation, variation } = summarise(ratios);
  const half = deviation === null ? null : (studentUpper(TAIL, n - 1) * deviation) / Math.sqrt(n);
  return {
    n,
    mean,
    variation,
    low: half === null ? null : mean - half,
    high: half === null ? null : mean + half,
  };
}
