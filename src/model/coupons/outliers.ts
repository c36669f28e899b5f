/** Results that do not belong with the others: the maximum normed residual. */
import { allEqual, deviationOf, extent, meanOf } from './sample.ts';
import { studentUpper } from './student.ts';

/** Chance of calling a sample without an outlier one that has one. */
export const OUTLIER_LEVEL = 0.05;
/** With two results the residual is 0.707 whatever they are. */
export const LEAST_FOR_OUTLIERS = 3;

/** One round of the test: the farthest of the results that were left. */
export interface OutlierRound {
  /** Place in the list that was given, from 0. */
  readonly index: number;
  readonly value: number;
  /** Distance from the mean of those left over their standard deviation. */
  readonly residual: number;
  readonly critical: number;
  readonly outlier: boolean;
}

/**
 * Largest |x − mean|/s that n normal results exceed with the chance `level`:
 * C = (n − 1)/√n·√(t²/(n − 2 + t²)), t = Student's t exceeded with level/(2n), n − 2 degrees of freedom.
 * MIL-HDBK-17-1F (2002) Vol. 1, 8.3.3.1; exact where the largest can be one result alone
 * (W. Stefansky, Technometrics 14 (1972) 469), else an upper limit.
 * @param n 3 or more
 */
export function criticalResidual(n: number, level = OUTLIER_LEVEL): number {
  const t = studentUpper(level / (2 * n), n - 2);
  // t²/(n − 2 + t²) written so that it holds at t → ∞.
  return (n - 1) / Math.sqrt(n) / Math.sqrt(1 + (n - 2) / (t * t));
}

/**
 * The test again and again, each time without the outlier found, until there is none: the last round
 * says so. Empty where fewer than 3 results are there or all are the same.
 */
export function findOutliers(values: readonly number[]): readonly OutlierRound[] {
  const left = values.map((value, index) => ({ value, index }));
  const rounds: OutlierRound[] = [];
  while (left.length >= LEAST_FOR_OUTLIERS) {
    const now = left.map(({ value }) => value);
    if (allEqual(now)) break;
    const [mean, deviation] = [meanOf(now), deviationOf(now)];
    const residuals = now.map((value) => Math.abs(value - mean) / deviation);
    const [, residual] = extent(residuals);
    const at = residuals.indexOf(residual);
    const critical = criticalResidual(now.length);
    const outlier = residual > critical;
    rounds.push({ ...left[at]!, residual, critical, outlier });
    if (!outlier) break;
    left.splice(at, 1);
  }
  return rounds;
}
