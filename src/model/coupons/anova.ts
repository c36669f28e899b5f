/** Scatter between batches against scatter within: one-way analysis of variance, and Levene's test. */
import { allEqual, type Batch, meanOf, sorted, squaresAbout } from './sample.ts';
import { fisherUpper } from './student.ts';
import { type BasisKind, basisFactor } from './tolerance-factor.ts';

export const LEVENE_LEVEL = 0.05;

export interface Anova {
  readonly batches: number;
  readonly n: number;
  readonly mean: number;
  /** Mean squares between the batches (k − 1) and within them (n − k). */
  readonly between: number;
  readonly within: number;
  /** between/within; null where no batch scatters. */
  readonly ratio: number | null;
  /** n′, the batch size that counts. */
  readonly effective: number;
  /** S: standard deviation of a result of the population of batches. */
  readonly deviation: number;
}

/**
 * MIL-HDBK-17-1F 8.3.5.2 (one-way, random batches): n′ = (n − Σnᵢ²/n)/(k − 1),
 * S = √(MSB/n′ + (n′ − 1)/n′·MSE).
 * @param batches two or more, at least one of which has two results
 */
export function analyseVariance(batches: readonly Batch[]): Anova {
  const all = batches.flat();
  const [k, n] = [batches.length, all.length];
  const mean = meanOf(all);
  const means = batches.map(meanOf);
  const between =
    batches.reduce((sum, { length }, i) => sum + length * (means[i]! - mean) ** 2, 0) / (k - 1);
  const alike = batches.every(allEqual);
  const within = alike
    ? 0
    : batches.reduce((sum, batch, i) => sum + squaresAbout(batch, means[i]!), 0) / (n - k);
  const squares = batches.reduce((sum, { length }) => sum + length * length, 0);
  const effective = (n - squares / n) / (k - 1);
  const deviation = Math.sqrt(between / effective + ((effective - 1) / effective) * within);
  const ratio = within > 0 ? between / within : null;
  return { batches: k, n, mean, between, within, ratio, effective, deviation };
}

/**
 * T of mean − T·S (MIL-HDBK-17-1F 8.3.5.2; M. G. Vangel, Technometrics 34 (1992) 176): from the factor
 * of as many results as there are batches (nothing but batches scatters) to that of all results (batches
 * do not matter), by w = √(u/(u + n′ − 1)), u the ratio of mean squares, at least 1.
 */
export function anovaFactor(anova: Anova, kind: BasisKind): number {
  const { between, within, effective, batches, n } = anova;
  const counted = Math.max(between, within);
  const w = Math.sqrt(counted / (counted + (effective - 1) * within));
  const [all, few] = [basisFactor(n, kind), basisFactor(batches, kind)];
  const root = 1 / Math.sqrt(effective);
  return (all - few * root + (few - all) * w) / (1 - root);
}

export interface Levene {
  /** F of the distances from each batch's median. */
  readonly statistic: number;
  readonly critical: number;
}

export function medianOf(values: readonly number[]): number {
  const order = sorted(values);
  const half = order.length >> 1;
  return order.length % 2 === 1 ? order[half]! : (order[half - 1]! + order[half]!) / 2;
}

/**
 * Do the batches scatter alike? Analysis of variance of |x − median of its batch| (M. B. Brown, A. B.
 * Forsythe, JASA 69 (1974) 364, after H. Levene); critical value F(k − 1, n − k) at 5 %.
 * Null where the distances within every batch are all the same: the ratio has no meaning.
 * @param batches as `analyseVariance`
 */
export function levene(batches: readonly Batch[]): Levene | null {
  const distances = batches.map((batch) => {
    const middle = medianOf(batch);
    return batch.map((x) => Math.abs(x - middle));
  });
  const { ratio, batches: k, n } = analyseVariance(distances);
  return ratio === null
    ? null
    : { statistic: ratio, critical: fisherUpper(LEVENE_LEVEL, k - 1, n - k) };
}
