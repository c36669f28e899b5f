/** The first half of the way: outliers, and whether the batches are one population. */
import { type Anova, LEVENE_LEVEL, levene } from './anova.ts';
import { type Decision, type DecisionTest, decide } from './decisions.ts';
import { kSample, POOLING_LEVEL } from './k-sample.ts';
import { findOutliers, LEAST_FOR_OUTLIERS, OUTLIER_LEVEL, type OutlierRound } from './outliers.ts';
import { allEqual, type Batch } from './sample.ts';

/** Results of a batch from which the critical value of the k-sample test is good. */
export const GOOD_BATCH = 5;

export interface OutlierSearch {
  /** From 0; null: all results together. */
  readonly batch: number | null;
  readonly rounds: readonly OutlierRound[];
}

export function outlierDecision(
  values: readonly number[],
  batch: number | null,
): { readonly search: OutlierSearch; readonly decision: Decision } {
  const rounds = findOutliers(values);
  const test: DecisionTest = batch === null ? 'outliers-in-all' : 'outliers-in-batch';
  const search = { batch, rounds };
  const first = rounds[0];
  if (first === undefined) {
    const says =
      values.length < LEAST_FOR_OUTLIERS
        ? `Not looked for: that takes ${LEAST_FOR_OUTLIERS} results.`
        : 'Not looked for: the results are all the same.';
    const told = { batch, outcome: 'not-applicable', consequence: 'keep-all', says } as const;
    return { search, decision: decide(test, 'MNR', told) };
  }
  const { residual: statistic, critical, outlier } = first;
  const found = rounds.filter((round) => round.outlier).length;
  const decision = decide(test, 'MNR', {
    batch,
    statistic,
    critical,
    level: OUTLIER_LEVEL,
    outcome: outlier ? 'fails' : 'holds',
    consequence: outlier ? 'look-at-outlier' : 'keep-all',
    says: outlier
      ? found === 1
        ? '1 result lies apart from the others. Leave it out only for a cause that is known; here it stays in.'
        : `${found} results lie apart from the others. Leave them out only for a cause that is known; here they stay in.`
      : 'No result lies apart from the others.',
  });
  return { search, decision };
}

/** @param batches one or more, none empty */
export function poolingDecision(batches: readonly Batch[]): Decision {
  const untested = (says: string): Decision =>
    decide('batches-alike', 'ADK', {
      outcome: 'not-applicable',
      consequence: 'pool-untested',
      says: `Not tested: ${says}`,
    });
  if (batches.length < 2) {
    return untested('there is one batch. How much batches differ is not in these results.');
  }
  if (batches.some(({ length }) => length < 2)) {
    return untested('a batch of one result shows no scatter. Give every batch 2 results or more.');
  }
  if (allEqual(batches.flat())) return untested('the results are all the same.');
  const { statistic, critical } = kSample(batches);
  const alike = statistic < critical;
  const rough = batches.some(({ length }) => length < GOOD_BATCH)
    ? ` A batch has fewer than ${GOOD_BATCH} results: the critical value is rough.`
    : '';
  return decide('batches-alike', 'ADK', {
    statistic,
    critical,
    level: POOLING_LEVEL,
    outcome: alike ? 'holds' : 'fails',
    consequence: alike ? 'pool' : 'keep-apart',
    says: `${alike ? 'The batches are taken as one sample.' : 'The batches differ: they are not one sample.'}${rough}`,
  });
}

/**
 * @param batches two or more
 * @param anova null where no batch has two results
 */
export function varianceDecision(batches: readonly Batch[], anova: Anova | null): Decision {
  const found = anova === null ? null : levene(batches);
  if (found === null) {
    return decide('variances-alike', 'F', {
      outcome: 'not-applicable',
      consequence: 'warn',
      says: 'Not tested: no batch has results at different distances from its median. Give one 3 results or more.',
    });
  }
  const alike = found.statistic < found.critical;
  return decide('variances-alike', 'F', {
    ...found,
    level: LEVENE_LEVEL,
    outcome: alike ? 'holds' : 'fails',
    consequence: alike ? 'use' : 'warn',
    says: alike
      ? 'The batches scatter alike.'
      : 'The batches scatter unlike one another: a value that takes them as alike is doubtful.',
  });
}
