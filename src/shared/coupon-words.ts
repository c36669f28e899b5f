/** Words for coupons: methods of a basis value, tests on the way to it, surroundings of a set. */
import type {
  BasisLine,
  BasisMethod,
  CouponSetReport,
  StatisticsDecision,
} from './reports-coupons.ts';
import { environment } from './words.ts';

export const methodWords: Readonly<Record<BasisMethod, string>> = {
  normal: 'normal',
  lognormal: 'lognormal',
  weibull: 'Weibull',
  'hanson-koopmans': 'Hanson and Koopmans',
  ranks: 'ranks',
  anova: 'analysis of variance',
};

const tests: Readonly<Record<string, string>> = {
  'outliers-in-batch': 'results that lie apart',
  'batches-alike': 'batches alike',
  'variances-alike': 'scatter alike',
  'outliers-in-all': 'results that lie apart',
  'fit-weibull': 'Weibull fits',
  'fit-normal': 'normal fits',
  'fit-lognormal': 'lognormal fits',
  'without-distribution': 'no distribution',
  'between-batches': 'between batches',
};

/** @param batches names, in the order of the statistics */
export const testWords = (
  { test, batch }: Pick<StatisticsDecision, 'test' | 'batch'>,
  batches: readonly string[],
): string => `${tests[test] ?? test}${batch === null ? '' : ` (${batches[batch] ?? batch + 1})`}`;

const because: Readonly<Record<string, string>> = {
  'too-few': 'too few results',
  'too-many': 'enough results for ranks',
  'too-few-batches': 'too few batches',
  'all-equal': 'all results are the same',
  'not-above-zero': 'a result is not above 0',
  'value-beyond-numbers': 'beyond all numbers',
};

/** Why a method has no value, and what it would take. */
export function noValueWords({ because: code, least, method }: BasisLine): string {
  const why = because[code ?? ''] ?? '';
  return code === 'too-few' || code === 'too-few-batches'
    ? `${why}: it takes ${least} ${method === 'anova' ? 'batches' : 'results'}`
    : why;
}

/** What a strength rests on, for wherever it is used: `B-basis, 18 coupons, 60 °C wet`. */
export const restsOn = (
  kind: 'A' | 'B',
  n: number,
  { temperature, moisture }: Pick<CouponSetReport, 'temperature' | 'moisture'>,
): string =>
  `${kind}-basis, ${n} coupon${n === 1 ? '' : 's'}, ${environment(temperature, moisture)}`;
