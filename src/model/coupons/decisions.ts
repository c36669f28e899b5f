/** One step on the way to a basis value: what was tested, how it came out, what follows. */

export type DecisionTest =
  | 'outliers-in-batch'
  | 'batches-alike'
  | 'variances-alike'
  | 'outliers-in-all'
  | 'fit-weibull'
  | 'fit-normal'
  | 'fit-lognormal'
  | 'without-distribution'
  | 'between-batches';

/** MNR and F and ADK hold up to their critical value, OSL above it, counts from it on. */
export type Measure = 'MNR' | 'ADK' | 'F' | 'OSL' | 'results' | 'batches';

export type Outcome = 'holds' | 'fails' | 'not-applicable';

export type Consequence =
  | 'keep-all'
  | 'look-at-outlier'
  | 'pool'
  | 'pool-untested'
  | 'keep-apart'
  | 'warn'
  | 'use'
  | 'next'
  | 'no-value';

export interface Decision {
  readonly test: DecisionTest;
  /** From 0; null: all results together. */
  readonly batch: number | null;
  readonly measure: Measure;
  /** Null where it cannot be computed. */
  readonly statistic: number | null;
  readonly critical: number | null;
  /** Chance of failing the test by luck alone; null where nothing is left to chance. */
  readonly level: number | null;
  readonly outcome: Outcome;
  readonly consequence: Consequence;
  /** Outcome and consequence as one plain sentence; of a test that is not applicable, why. */
  readonly says: string;
}

type Told = Pick<Decision, 'outcome' | 'consequence' | 'says'> &
  Partial<Pick<Decision, 'batch' | 'statistic' | 'critical' | 'level'>>;

export const decide = (test: DecisionTest, measure: Measure, told: Told): Decision => ({
  test,
  measure,
  batch: null,
  statistic: null,
  critical: null,
  level: null,
  ...told,
});
