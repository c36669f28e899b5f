/**
 * From coupon results to basis values by the usual way, each decision told: MIL-HDBK-17-1F (2002) Vol. 1,
 * 8.3.1 and its chart. Outliers in each batch; batches pooled or not; pooled: outliers in all, then the
 * first distribution that fits, else none; not pooled: between-batch variation. Results that lie apart
 * stay in: who leaves one out has a cause for it. Order of the distributions from memory.
 */
import { type Anova, analyseVariance } from './anova.ts';
import { type BasisMethod, type BasisValue, basisValues, limitsOf } from './basis.ts';
import { type Decision, type DecisionTest, decide } from './decisions.ts';
import { type Family, FIT_LEVEL, type Fit, fitFamily, LEAST_FOR_FIT } from './distributions.ts';
import {
  type OutlierSearch,
  outlierDecision,
  poolingDecision,
  varianceDecision,
} from './pooling.ts';
import { allEqual, type Batch, checkBatches, type Summary, summarise } from './sample.ts';
import { type SamplingMet, samplingOf } from './sampling.ts';
import { BASIS_KINDS, type BasisKind } from './tolerance-factor.ts';

/** In which order distributions are tried: the handbook's, or the normal one first. */
export type FamilyOrder = 'weibull-first' | 'normal-first';

const ORDERS: Readonly<Record<FamilyOrder, readonly Family[]>> = {
  'weibull-first': ['weibull', 'normal', 'lognormal'],
  'normal-first': ['normal', 'lognormal', 'weibull'],
};

/** Fewer batches make the value of the analysis of variance very low (handbook, 8.3.5; from memory). */
export const GOOD_BATCHES = 5;

export interface CouponStatistics {
  readonly all: Summary;
  readonly batches: readonly Summary[];
  readonly outliers: readonly OutlierSearch[];
  /** In the order in which they were taken. */
  readonly decisions: readonly Decision[];
  /** Null where a fit is not possible or not judged: the decision says why. */
  readonly fits: Readonly<Record<Family, Fit | null>>;
  readonly anova: Anova | null;
  /** Every method, whether the way led to it or not. */
  readonly basis: readonly BasisValue[];
  /** Where the way led; null: no value, see the last decision. */
  readonly chosen: Readonly<Record<BasisKind, BasisValue | null>>;
  readonly sampling: readonly SamplingMet[];
}

const TESTS: Readonly<Record<Family, DecisionTest>> = {
  weibull: 'fit-weibull',
  normal: 'fit-normal',
  lognormal: 'fit-lognormal',
};

const NAMES: Readonly<Record<Family, string>> = {
  weibull: 'Weibull',
  normal: 'normal',
  lognormal: 'lognormal',
};

function fitsOf(values: readonly number[]): Record<Family, Fit | null> {
  const possible = values.length >= LEAST_FOR_FIT && !allEqual(values);
  const positive = values.every((x) => x > 0);
  const of = (family: Family): Fit | null =>
    possible && (family === 'normal' || positive) ? fitFamily(values, family) : null;
  return { normal: of('normal'), lognormal: of('lognormal'), weibull: of('weibull') };
}

function fitDecision(family: Family, values: readonly number[], fit: Fit | null): Decision {
  if (fit === null) {
    const says =
      values.length < LEAST_FOR_FIT
        ? `Not judged: a fit takes ${LEAST_FOR_FIT} results.`
        : allEqual(values)
          ? 'Not judged: the results are all the same.'
          : 'Not possible: a result is not above 0.';
    const told = { outcome: 'not-applicable', consequence: 'next', says } as const;
    return decide(TESTS[family], 'OSL', told);
  }
  const holds = fit.significance > FIT_LEVEL;
  const [least] = limitsOf(family, 'B');
  const enough = values.length >= least;
  return decide(TESTS[family], 'OSL', {
    statistic: fit.significance,
    critical: FIT_LEVEL,
    level: FIT_LEVEL,
    outcome: holds ? 'holds' : 'fails',
    consequence: holds && enough ? 'use' : 'next',
    says: !holds
      ? `The ${NAMES[family]} distribution does not fit.`
      : enough
        ? `The ${NAMES[family]} distribution fits and is used.`
        : `The ${NAMES[family]} distribution fits, but its basis value takes ${least} results.`,
  });
}

type Pick = (method: BasisMethod, kind: BasisKind) => BasisValue | null;
type Chosen = Record<BasisKind, BasisValue | null>;

/** The step without a distribution, for one kind: a rank where there are enough, else Hanson and Koopmans. */
function withoutDistribution(
  n: number,
  kind: BasisKind,
  pick: Pick,
): [Decision, BasisValue | null] {
  const [enough] = limitsOf('ranks', kind);
  const method = n >= enough ? 'ranks' : 'hanson-koopmans';
  const value = pick(method, kind);
  const [least] = limitsOf('hanson-koopmans', kind);
  const decision = decide('without-distribution', 'results', {
    statistic: n,
    critical: enough,
    outcome: n >= enough ? 'holds' : 'fails',
    consequence: value === null ? 'no-value' : 'use',
    says:
      value !== null
        ? method === 'ranks'
          ? `${kind}: a rank is used.`
          : `${kind}: fewer than ${enough} results, so that the lowest is extrapolated (Hanson and Koopmans).`
        : n < least
          ? `${kind}: no value. It takes ${least} results.`
          : `${kind}: no value. Fewer than ${enough} results, and they are all the same or one is not above 0.`,
  });
  return [decision, value];
}

function pooledWay(
  values: readonly number[],
  fits: Readonly<Record<Family, Fit | null>>,
  order: FamilyOrder,
  pick: Pick,
): { readonly decisions: Decision[]; readonly chosen: Chosen } {
  const decisions: Decision[] = [];
  for (const family of ORDERS[order]) {
    const decision = fitDecision(family, values, fits[family]);
    decisions.push(decision);
    if (decision.consequence === 'use') {
      return { decisions, chosen: { A: pick(family, 'A'), B: pick(family, 'B') } };
    }
  }
  const chosen: Chosen = { A: null, B: null };
  for (const kind of BASIS_KINDS) {
    const [decision, value] = withoutDistribution(values.length, kind, pick);
    decisions.push(decision);
    chosen[kind] = value;
  }
  return { decisions, chosen };
}

function betweenBatches(batches: number): Decision {
  const enough = batches >= GOOD_BATCHES;
  return decide('between-batches', 'batches', {
    statistic: batches,
    critical: GOOD_BATCHES,
    outcome: enough ? 'holds' : 'fails',
    consequence: 'use',
    says: enough
      ? 'Variation between the batches is counted (analysis of variance).'
      : `Variation between the batches is counted (analysis of variance). With fewer than ${GOOD_BATCHES} batches the value is low.`,
  });
}

/**
 * @param batches the results of each batch, all in one unit, at one condition
 * @throws ModelError for no result, an empty batch, or a result that is no number
 */
export function couponStatistics(
  batches: readonly Batch[],
  order: FamilyOrder = 'weibull-first',
): CouponStatistics {
  checkBatches(batches);
  const values = batches.flat();
  const several = batches.length >= 2;
  const anova =
    several && batches.some(({ length }) => length > 1) ? analyseVariance(batches) : null;
  const basis = basisValues(values, anova);
  const pick: Pick = (method, kind) =>
    basis.find((one) => one.method === method && one.kind === kind && one.value !== null) ?? null;
  const fits = fitsOf(values);

  const inBatches = several ? batches.map((batch, i) => outlierDecision(batch, i)) : [];
  const pooling = poolingDecision(batches);
  const pooled = pooling.consequence !== 'keep-apart';
  const inAll = pooled ? [outlierDecision(values, null)] : [];
  const variances = several ? [varianceDecision(batches, anova)] : [];
  const rest = pooled
    ? pooledWay(values, fits, order, pick)
    : {
        decisions: [betweenBatches(batches.length)],
        chosen: { A: pick('anova', 'A'), B: pick('anova', 'B') },
      };
  return {
    all: summarise(values),
    batches: batches.map(summarise),
    outliers: [...inBatches, ...inAll].map(({ search }) => search),
    decisions: [
      ...inBatches.map(({ decision }) => decision),
      pooling,
      ...inAll.map(({ decision }) => decision),
      ...variances,
      ...rest.decisions,
    ],
    fits,
    anova,
    basis,
    chosen: rest.chosen,
    sampling: samplingOf(batches.length, values.length),
  };
}
