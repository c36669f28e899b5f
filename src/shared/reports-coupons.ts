/** What is said of coupons: predicted and measured strength, statistics, how far the model agrees. */

import type { BondMode } from './project-materials.ts';

export type BasisKind = 'A' | 'B';
export type Family = 'normal' | 'lognormal' | 'weibull';
export type BasisMethod = Family | 'hanson-koopmans' | 'ranks' | 'anova';

/** What the model says of one coupon, by mean properties, without knockdowns and factors. */
export interface CouponPrediction {
  /** Pull at which it fails, N; null where the model cannot say: see `why`. */
  readonly load: number | null;
  readonly mode: string;
  /** Lowest of the modes of the adhesive itself, whether it comes first or not; null where there is none. */
  readonly bond: { readonly load: number; readonly mode: BondMode } | null;
  /** Every mode that ends the coupon, the first to come first. */
  readonly modes: readonly { readonly mode: string; readonly load: number }[];
  readonly why: string;
}

/** Why a result is kept out of the statistics. */
export type ApartBecause = 'surface' | 'adherend' | 'by-hand';

export interface CouponLine {
  readonly coupon: string;
  readonly batch: string;
  readonly load: number;
  readonly gap: number;
  readonly overlap: number;
  /** Load over bonded area, MPa: it compares coupons of one kind, and is no strength of the adhesive. */
  readonly strength: number;
  readonly predicted: number | null;
  /** Measured over predicted. */
  readonly ratio: number | null;
  /** Measured over the load at which the model has the adhesive fail: what may be taken into it. */
  readonly bondRatio: number | null;
  /** In per cent of the area; null where nobody looked. */
  readonly adhesion: number | null;
  readonly apart: ApartBecause | null;
  readonly why: string;
}

export interface SampleSummary {
  readonly n: number;
  readonly mean: number;
  readonly deviation: number | null;
  /** Share; null for one result. */
  readonly variation: number | null;
  readonly lowest: number;
  readonly highest: number;
}

export interface StatisticsDecision {
  readonly test: string;
  /** From 0 in `batches`; null: all results together. */
  readonly batch: number | null;
  readonly measure: 'MNR' | 'ADK' | 'F' | 'OSL' | 'results' | 'batches';
  readonly statistic: number | null;
  readonly critical: number | null;
  readonly level: number | null;
  readonly outcome: 'holds' | 'fails' | 'not-applicable';
  readonly consequence: string;
  readonly says: string;
}

export interface BasisLine {
  readonly method: BasisMethod;
  readonly kind: BasisKind;
  /** MPa of apparent strength; null: see `because`. */
  readonly value: number | null;
  readonly because: string | null;
  readonly factor: number | null;
  readonly least: number;
  readonly most: number | null;
}

export interface PlotPoint {
  readonly value: number;
  readonly chance: number;
  readonly x: number;
  readonly y: number;
}

export interface ProbabilityPlot {
  readonly family: Family;
  readonly points: readonly PlotPoint[];
  /** Ends of the fitted line on the plot's axes; null where there is no fit. */
  readonly line: readonly { readonly x: number; readonly y: number }[] | null;
}

export interface CouponStatistics {
  readonly all: SampleSummary;
  readonly batches: readonly ({ readonly name: string } & SampleSummary)[];
  readonly decisions: readonly StatisticsDecision[];
  readonly basis: readonly BasisLine[];
  readonly chosen: { readonly A: BasisLine | null; readonly B: BasisLine | null };
  readonly sampling: readonly {
    readonly name: string;
    readonly batches: number;
    readonly results: number;
    readonly met: boolean;
    readonly batchesShort: number;
    readonly resultsShort: number;
  }[];
  readonly plot: ProbabilityPlot;
}

/** Measured over predicted, of results that count. */
export interface Correlation {
  readonly n: number;
  readonly mean: number;
  readonly variation: number | null;
  /** 95 % interval of the mean, by Student's t; null below two results. */
  readonly low: number | null;
  readonly high: number | null;
}

/** What a set would allow, were it taken as the allowable of its adhesive in its environment. */
export interface AllowableOffer {
  readonly basis: BasisKind;
  readonly method: string;
  /** MPa, load over bonded area. */
  readonly value: number;
  readonly mean: number;
  /** Mean of measured over the load at which the model has the adhesive fail. */
  readonly ratio: number;
  /** Mode of the adhesive that these coupons tell of. */
  readonly mode: BondMode;
  /** value/mean × ratio: what is left of the strength that the file's mean properties give. */
  readonly factor: number;
  readonly coupons: number;
  readonly batches: number;
}

/** How far the mean of a set would move the strengths, were it taken; no allowable. */
export interface CalibrationOffer {
  /** Measured over the load at which the model has the adhesive fail, and the 95 % interval of its mean. */
  readonly factor: number;
  readonly mode: BondMode;
  readonly low: number;
  readonly high: number;
  /** MPa, load over bonded area. */
  readonly mean: number;
  readonly coupons: number;
  readonly batches: number;
}

/** Strength against gap from sets that differ in nothing but their gap; the thickness's own effect on the stresses taken out. */
export interface GapCurve {
  readonly adhesive: string;
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  readonly specimen: string;
  /** Gap at which the factor is 1: that of the allowable, else the thinnest. */
  readonly reference: number;
  readonly rows: readonly { readonly gap: number; readonly factor: number; readonly n: number }[];
}

export interface CouponFlag {
  readonly code: string;
  readonly message: string;
}

/** Which set is meant, of static results or of lives. */
export interface SetHead {
  readonly setId: string;
  readonly name: string;
  readonly specimen: { readonly id: string; readonly name: string; readonly standard: string };
  readonly adhesive: { readonly id: string; readonly name: string };
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  /** By the drawing. */
  readonly gap: number;
}

export interface CouponSetReport extends SetHead {
  readonly overlap: number;
  /** Bonded, of all bonds together, mm². */
  readonly area: number;
  readonly predicted: CouponPrediction;
  /** What the grips must hold, N: twice the predicted load. */
  readonly grip: number | null;
  readonly planned: number;
  readonly lines: readonly CouponLine[];
  /** Of apparent strengths that count; null where there are none. */
  readonly statistics: CouponStatistics | null;
  readonly correlation: Correlation | null;
  /** Measured over the load at which the model has the adhesive fail: what is offered rests on it. */
  readonly bond: Correlation | null;
  readonly offers: readonly AllowableOffer[];
  /** Null where the mean says nothing of the adhesive in a joint, or too few results count. */
  readonly calibration: CalibrationOffer | null;
  /** Why no allowable is offered from this set; empty where there are offers. */
  readonly notOffered: string;
  readonly flags: readonly CouponFlag[];
}

export interface LifeLineReport {
  readonly coupon: string;
  readonly batch: string;
  /** Highest load of the cycle, N. */
  readonly peak: number;
  readonly cycles: number;
  readonly runOut: boolean;
  /** Elastic peak shear at that load over yield; null where the model has none. */
  readonly share: number | null;
}

/** share = coefficient·cycles^−exponent, as the S-N line of an adhesive has it. */
export interface PowerLine {
  readonly coefficient: number;
  readonly exponent: number;
}

export interface LifeFit {
  readonly method: 'least-squares' | 'censored-likelihood';
  readonly failures: number;
  readonly runOuts: number;
  /** Standard deviation of log₁₀ N. */
  readonly deviation: number;
  /** Null where lives do not fall as stress rises. */
  readonly median: PowerLine | null;
  /** Nowhere among the tested stresses above the life that 90 % reach with 95 % confidence. */
  readonly bound: PowerLine | null;
  /** Lowest and highest share that was tested. */
  readonly shares: readonly [number, number];
  /** Longest test, cycles. */
  readonly longest: number;
  readonly curve: readonly {
    readonly share: number;
    readonly median: number;
    readonly bound: number;
  }[];
}

export interface LifeSetReport extends SetHead {
  /** Lowest over highest load. */
  readonly ratio: number;
  readonly lines: readonly LifeLineReport[];
  readonly fit: LifeFit | null;
  /**
   * The peak shear at another ratio over the peak here that does the same damage, for the highest that was
   * tested, as the margins carry it over: an approximation made for metals, no test.
   */
  readonly goodman: readonly { readonly ratio: number; readonly factor: number }[];
  /** Why there is no fit; empty where there is one. */
  readonly why: string;
}

export interface CouponsReport {
  readonly sets: readonly CouponSetReport[];
  /** By adhesive, over all its sets. */
  readonly adhesives: readonly {
    readonly id: string;
    readonly name: string;
    readonly correlation: Correlation | null;
  }[];
  readonly gapCurves: readonly GapCurve[];
  readonly life: readonly LifeSetReport[];
  readonly modelVersion: string;
}
