/** What is said of coupons and their statistics, the same wherever it is said. */
import { figureOf, figureText } from './measures.ts';
import type {
  BasisKind,
  BasisLine,
  BasisMethod,
  Correlation,
  CouponLine,
  CouponStatistics,
  Family,
  ProbabilityPlot,
  StatisticsDecision,
} from './reports-coupons.ts';
import { count } from './words.ts';

export const methodWords: Readonly<Record<BasisMethod, string>> = {
  weibull: 'Weibull',
  normal: 'normal',
  lognormal: 'lognormal',
  'hanson-koopmans': 'no distribution, extrapolated (Hanson and Koopmans)',
  ranks: 'no distribution, by rank',
  anova: 'variation between batches counted',
};

const testNames: Readonly<Record<string, string>> = {
  'outliers-in-batch': 'Results that lie apart',
  'batches-alike': 'Are the batches alike?',
  'variances-alike': 'Do the batches scatter alike?',
  'outliers-in-all': 'Results that lie apart, all together',
  'fit-weibull': 'Does a Weibull distribution fit?',
  'fit-normal': 'Does a normal distribution fit?',
  'fit-lognormal': 'Does a lognormal distribution fit?',
  'without-distribution': 'Without a distribution',
  'between-batches': 'Between the batches',
};

/** What a step asks; in a batch with the name of the batch. */
export function testWords(
  { test, batch }: StatisticsDecision,
  batches: readonly { readonly name: string }[],
): string {
  const title = testNames[test] ?? test;
  if (batch === null) return title;
  return `${title}, ${batchWords(batches[batch]?.name ?? String(batch + 1))}`;
}

export const batchWords = (name: string): string =>
  name === '' ? 'no batch named' : `batch ${name}`;

/** Counts are whole; what is next to nothing is said to be less, never 0. */
export function comparedFigure(
  { measure }: Pick<StatisticsDecision, 'measure'>,
  value: number,
  figured: (value: number) => string,
): string {
  if (measure === 'results' || measure === 'batches') return String(value);
  return Math.abs(value) < 0.001 ? '< 0.001' : figured(value);
}

/** Statistic and critical value as they are compared; empty where nothing was computed. */
export function comparedWords(decision: StatisticsDecision): string {
  const { measure, statistic, critical, level } = decision;
  if (statistic === null || critical === null) return '';
  if (measure === 'results' || measure === 'batches') {
    return `${amount(statistic, measure)}; ${critical} asked`;
  }
  const at = level === null || measure === 'OSL' ? '' : `, at ${figurePercent(level)}`;
  const text = (value: number): string => comparedFigure(decision, value, (one) => one.toFixed(3));
  return `${measure} ${text(statistic)}; critical ${text(critical)}${at}`;
}

const figurePercent = (share: number): string => `${Number((100 * share).toFixed(2))} %`;

export const outcomeWords: Readonly<Record<StatisticsDecision['outcome'], string>> = {
  holds: 'holds',
  fails: 'fails',
  'not-applicable': 'not tested',
};

export const amount = (n: number, what: string): string =>
  `${n} ${n === 1 ? what.replace(/s$/, '').replace(/che$/, 'ch') : what}`;

/** Why a method gives no value, and what number would do. */
export function becauseWords({ method, because, least, most }: BasisLine): string {
  switch (because) {
    case null:
      return '';
    case 'too-few':
      return `takes ${amount(least, 'results')}`;
    case 'too-few-batches':
      return `takes ${amount(least, 'batches')}, one of them with 2 results`;
    case 'too-many':
      return `up to ${amount(most ?? least, 'results')}; use the rank`;
    case 'all-equal':
      return 'the results are all the same';
    case 'not-above-zero':
      return 'a result is not above 0';
    case 'value-beyond-numbers':
      return 'no finite value';
    default:
      return method === 'anova' ? `takes ${amount(least, 'batches')}` : because;
  }
}

export const basisMeans: Readonly<Record<BasisKind, string>> = {
  A: 'A: 99 of 100 coupons hold more, with 95 % confidence',
  B: 'B: 90 of 100 coupons hold more, with 95 % confidence',
};

/** `A75: 10 batches and 75 results; short by 7 batches and 57 results`. */
export function samplingWords(one: CouponStatistics['sampling'][number]): string {
  const asked = `${amount(one.batches, 'batches')} and ${amount(one.results, 'results')}`;
  if (one.met) return `${asked}: met`;
  const short = [
    ...(one.batchesShort > 0 ? [amount(one.batchesShort, 'batches')] : []),
    ...(one.resultsShort > 0 ? [amount(one.resultsShort, 'results')] : []),
  ];
  return `${asked}: short by ${short.join(' and ')}`;
}

/** What the set comes to, in one sentence. */
export function basisSentence({ all, chosen }: CouponStatistics): string {
  const value = (kind: BasisKind): string | null => {
    const line = chosen[kind];
    return line?.value == null ? null : `${kind} value ${figureText('stress', line.value)}`;
  };
  const found = [value('B'), value('A')].filter((one) => one !== null);
  if (found.length === 0) {
    return `No A or B value from ${amount(all.n, 'results')}: see what each method takes.`;
  }
  const method = chosen.B?.method ?? chosen.A!.method;
  return `${found.join(', ')} (${methodWords[method]}), of load over area.`;
}

const axisWords: Readonly<Record<Family, string>> = {
  normal: 'normal',
  lognormal: 'lognormal',
  weibull: 'Weibull',
};
const chanceText = (chance: number): string => `${(100 * chance).toFixed(1)} %`;

/** The probability plot for whoever does not see it. */
export function plotSentence({ family, points, line }: ProbabilityPlot): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return 'No result counts.';
  const ends = `from ${figureText('stress', first.value)} at ${chanceText(first.chance)} to ${figureText('stress', last.value)} at ${chanceText(last.chance)}`;
  const fitted =
    line === null
      ? 'There is no fitted line: the results are too few or all the same.'
      : `The fitted line goes from ${figureOf('stress', onAxis(family, line[0]!.x))} to ${figureText('stress', onAxis(family, line.at(-1)!.x))} between the same chances.`;
  return `Probability plot on ${axisWords[family]} axes: ${amount(points.length, 'results')} ${ends}. ${fitted}`;
}

/** A place on the axis of values back as a value: two of the axes are logarithmic. */
export const onAxis = (family: Family, x: number): number =>
  family === 'normal' ? x : Math.exp(x);

const share = (ratio: number): string => ratio.toFixed(2);
export const percentOf = (ratio: number): string => `${(100 * ratio).toFixed(1)} %`;

/** What measured over predicted comes to. */
export function correlationSentence(found: Correlation | null, of: string): string {
  if (!found) {
    return 'No result counts that has a prediction: nothing is said of the model yet.';
  }
  const { n, mean, low, high } = found;
  if (low === null || high === null) {
    return `One result, at ${share(mean)} of its predicted load: one says nothing of the scatter, so nothing of the model.`;
  }
  const said = `${of} broke at ${share(mean)} of the predicted load on average (${amount(n, 'results')}, 95 % interval of the mean ${share(low)} to ${share(high)}).`;
  if (low <= 1 && high >= 1) return `${said} The results show no difference from the model.`;
  return high < 1
    ? `${said} The model predicts more than they held: its loads are too high for these coupons.`
    : `${said} They held more than the model predicts: its loads are low for these coupons.`;
}

/** A calibration as a text: it is done by hand or not at all. */
export function calibrationText(found: Correlation | null): string | null {
  if (!found || found.low === null || found.high === null) return null;
  if (found.low <= 1 && found.high >= 1) return null;
  return `To bring the model onto these coupons, multiply the strengths that set the mode (shear yield, or peel strength) by about ${share(found.mean)}, between ${share(found.low)} and ${share(found.high)}, and look again: the load does not follow the strength quite evenly. Do so only where the coupons fail as the joint does. Nothing is changed by itself: where the mean may be taken, it is offered under Statistics.`;
}

export const apartWords: Readonly<Record<NonNullable<CouponLine['apart']>, string>> = {
  surface: 'came off a surface',
  adherend: 'broke in the adherend',
  'by-hand': 'kept apart by hand',
};

/** How many count, how many do not and why. */
export function countedSentence(lines: readonly CouponLine[]): string {
  const counted = lines.filter(({ apart }) => apart === null).length;
  const apart = (['surface', 'adherend', 'by-hand'] as const)
    .map((why) => [why, lines.filter((line) => line.apart === why).length] as const)
    .filter(([, n]) => n > 0)
    .map(([why, n]) => `${count(n)} ${apartWords[why]}`);
  const all = `${amount(counted, 'results')} ${counted === 1 ? 'counts' : 'count'}`;
  return apart.length === 0 ? `${all}.` : `${all}; ${apart.join(', ')}.`;
}
