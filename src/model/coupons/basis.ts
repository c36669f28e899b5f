/** A- and B-basis values by every method, each with the least number of results that it takes. */
import { type Anova, anovaFactor } from './anova.ts';
import { type Family, type Fitted, parametersOf } from './distributions.ts';
import { basisRank, hansonKoopmansFactor, hansonKoopmansValue, LEAST_FOR_RANKS } from './ranks.ts';
import { allEqual, sorted } from './sample.ts';
import { BASIS_KINDS, type BasisKind, basisFactor } from './tolerance-factor.ts';

export type BasisMethod = Family | 'hanson-koopmans' | 'ranks' | 'anova';

export const BASIS_METHODS: readonly BasisMethod[] = [
  'weibull',
  'normal',
  'lognormal',
  'hanson-koopmans',
  'ranks',
  'anova',
];

/** Why a method gives no value. */
export type Because = 'too-few' | 'too-many' | 'too-few-batches' | 'all-equal' | 'not-above-zero';

export interface BasisValue {
  readonly method: BasisMethod;
  readonly kind: BasisKind;
  /** In the unit of the results; null: see `because`. */
  readonly value: number | null;
  readonly because: Because | null;
  /** k, V, T, k of Hanson and Koopmans; of ranks the rank. Null without a value. */
  readonly factor: number | null;
  /** Results (ANOVA: batches) that this method takes at least, and at most (null: no end). */
  readonly least: number;
  readonly most: number | null;
}

/** From here the approximation of V is on the safe side: see `weibullFactor`. */
export const LEAST_FOR_WEIBULL = 10;
export const LEAST_BATCHES = 2;

const LIMITS: Readonly<
  Record<BasisMethod, (kind: BasisKind) => readonly [least: number, most: number | null]>
> = {
  normal: () => [2, null],
  lognormal: () => [2, null],
  weibull: () => [LEAST_FOR_WEIBULL, null],
  'hanson-koopmans': (kind) => [2, LEAST_FOR_RANKS[kind] - 1],
  ranks: (kind) => [LEAST_FOR_RANKS[kind], null],
  anova: () => [LEAST_BATCHES, null],
};

/** Results (ANOVA: batches) that a method takes at least, and at most (null: no end). */
export const limitsOf = (
  method: BasisMethod,
  kind: BasisKind,
): readonly [least: number, most: number | null] => LIMITS[method](kind);

/**
 * V of a Weibull basis value Q·exp(−V/(β·√n)): V_B = 3.803 + exp(1.79 − 0.516·ln n + 5.1/(n − 1)),
 * V_A = 6.649 + exp(2.55 − 0.526·ln n + 4.76/n). MIL-HDBK-17-1F 8.3.4.2, the handbook's approximation, from memory.
 * Sampled (reference/coupons.py): from 16 results within 1 % of the true V; at 10 high, so that the value is low, by 5 % (B) and 2 % (A).
 */
export const weibullFactor = (n: number, kind: BasisKind): number =>
  kind === 'B'
    ? 3.803 + Math.exp(1.79 - 0.516 * Math.log(n) + 5.1 / (n - 1))
    : 6.649 + Math.exp(2.55 - 0.526 * Math.log(n) + 4.76 / n);

/** ln(−ln(1 − p)), the place of the quantile on a Weibull axis. */
const WEIBULL_QUANTILE: Readonly<Record<BasisKind, number>> = {
  A: Math.log(-Math.log1p(-0.01)),
  B: Math.log(-Math.log1p(-0.1)),
};

/** The basis value of a fitted distribution and its factor. */
export function fittedBasis(
  { family, location, scale }: Fitted,
  n: number,
  kind: BasisKind,
): { readonly value: number; readonly factor: number } {
  if (family === 'weibull') {
    const factor = weibullFactor(n, kind);
    const log = location + scale * (WEIBULL_QUANTILE[kind] - factor / Math.sqrt(n));
    return { value: Math.exp(log), factor };
  }
  const factor = basisFactor(n, kind);
  const value = location - factor * scale;
  return { value: family === 'normal' ? value : Math.exp(value), factor };
}

function blockedBy(
  method: BasisMethod,
  kind: BasisKind,
  values: readonly number[],
  anova: Anova | null,
): Because | null {
  const [least, most] = limitsOf(method, kind);
  if (method === 'anova') {
    if (values.length > 1 && allEqual(values)) return 'all-equal';
    return anova === null ? 'too-few-batches' : null;
  }
  if (values.length < least) return 'too-few';
  if (most !== null && values.length > most) return 'too-many';
  if (method !== 'ranks' && allEqual(values)) return 'all-equal';
  if (method !== 'ranks' && method !== 'normal' && !values.every((x) => x > 0)) {
    return 'not-above-zero';
  }
  return null;
}

function computed(
  method: BasisMethod,
  kind: BasisKind,
  values: readonly number[],
  anova: Anova | null,
): { readonly value: number; readonly factor: number } {
  const n = values.length;
  switch (method) {
    case 'anova': {
      const factor = anovaFactor(anova!, kind);
      return { value: anova!.mean - factor * anova!.deviation, factor };
    }
    case 'ranks': {
      const rank = basisRank(n, kind);
      return { value: sorted(values)[rank - 1]!, factor: rank };
    }
    case 'hanson-koopmans':
      return {
        value: hansonKoopmansValue(sorted(values), kind),
        factor: hansonKoopmansFactor(n, kind),
      };
    default:
      return fittedBasis(parametersOf(values, method), n, kind);
  }
}

/**
 * Every method, B and A. A method that cannot be used says why and what it would take.
 * @param values all results together, one or more
 * @param anova null where there are fewer than two batches, or no batch with two results
 */
export function basisValues(values: readonly number[], anova: Anova | null): readonly BasisValue[] {
  return BASIS_METHODS.flatMap((method) =>
    BASIS_KINDS.map((kind): BasisValue => {
      const [least, most] = limitsOf(method, kind);
      const because = blockedBy(method, kind, values, anova);
      if (because !== null) {
        return { method, kind, value: null, because, factor: null, least, most };
      }
      const { value, factor } = computed(method, kind, values, anova);
      return { method, kind, value, because: null, factor, least, most };
    }),
  );
}
