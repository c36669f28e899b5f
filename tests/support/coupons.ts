/** What reference/coupons.py and reference/coupon_life.py wrote. */
import type { Family } from '../../src/model/coupons/distributions.ts';
import type { BasisKind } from '../../src/model/coupons/tolerance-factor.ts';
import { readFixture } from './fixtures.ts';

interface Factors {
  readonly n: number;
  readonly A: number;
  readonly B: number;
}

export interface ReferenceSample {
  readonly batches: readonly (readonly number[])[];
  /** (A²kN − (k − 1))/σ, ties shared out and not; what it may be at 2.5 %. */
  readonly kSample: {
    readonly normalised: number;
    readonly normalisedRight: number;
    readonly critical: number;
  };
  readonly variances: number;
  readonly ratio: number;
  readonly fits?: {
    readonly normal: {
      readonly location: number;
      readonly scale: number;
      readonly statistic: number;
    };
    readonly lognormal: {
      readonly location: number;
      readonly scale: number;
      readonly statistic: number;
    };
    readonly weibull: {
      readonly scale: number;
      readonly shape: number;
      readonly statistic: number;
    };
  };
}

export interface CouponsFixture {
  readonly factors: readonly Factors[];
  readonly precise: readonly Factors[];
  readonly noncentral: readonly {
    readonly freedom: number;
    readonly noncentrality: number;
    readonly chance: number;
    readonly t: number;
  }[];
  readonly hansonKoopmans: readonly {
    readonly kind: BasisKind;
    readonly n: number;
    readonly r: number;
    readonly k: number;
  }[];
  readonly ranks: readonly {
    readonly kind: BasisKind;
    readonly n: number;
    readonly rank: number | null;
  }[];
  readonly students: readonly {
    readonly tail: number;
    readonly freedom: number;
    readonly t: number;
  }[];
  readonly fishers: readonly {
    readonly tail: number;
    readonly between: number;
    readonly within: number;
    readonly f: number;
  }[];
  readonly tails: readonly { readonly z: number; readonly tail: number; readonly log: number }[];
  readonly residuals: readonly { readonly n: number; readonly critical: number }[];
  readonly samples: readonly ReferenceSample[];
  readonly sampledWeibull: readonly {
    readonly n: number;
    readonly kind: BasisKind;
    readonly factor: number;
    readonly error: number;
  }[];
  readonly sampledSignificance: readonly {
    readonly family: Family;
    readonly n: number;
    readonly chance: number;
    readonly statistic: number;
  }[];
  readonly sampledResiduals: readonly { readonly n: number; readonly critical: number }[];
  readonly medianRanks: readonly {
    readonly n: number;
    readonly i: number;
    readonly rank: number;
  }[];
}

export const couponsFixture = (): CouponsFixture => readFixture('coupons.json') as CouponsFixture;

export interface LifeFixture {
  readonly cases: readonly {
    readonly results: readonly {
      readonly stress: number;
      readonly cycles: number;
      readonly runOut: boolean;
    }[];
    readonly centre: number;
    readonly level: number;
    readonly slope: number;
    readonly deviation: number;
    readonly failures: number;
    readonly variances: readonly [number, number, number];
    readonly bounds: readonly {
      readonly stress: number;
      readonly median: number;
      readonly factor: number;
      readonly bound: number;
    }[];
  }[];
  readonly coverage: readonly {
    readonly levels: number;
    readonly perLevel: number;
    readonly runOutAt: number;
    readonly stress: number;
    readonly meanFailures: number;
    readonly results: number;
    readonly held: number;
  }[];
}

export const lifeFixture = (): LifeFixture => readFixture('coupon-life.json') as LifeFixture;
