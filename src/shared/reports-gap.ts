/** What is answered about measured parts: gaps in mm from the mouth of the sleeve, degrees from the mark. */
import type { GapCheck, Source, SurfaceName, VerdictState } from './project.ts';
import type { Flag, Margin } from './reports.ts';

export type BondName = 'bond' | 'inner bond' | 'outer bond';

/** A length with its expanded uncertainty (k = 2, about 95 %), mm. */
export interface Uncertain {
  readonly value: number;
  readonly uncertainty: number;
}

export interface PlacedGap extends Uncertain {
  /** Distance from the mouth, mm. */
  readonly x: number;
  /** Turn from the mark, degrees. */
  readonly theta: number;
}

export interface GapSpan {
  readonly min: PlacedGap;
  readonly mean: Uncertain;
  readonly max: PlacedGap;
}

/** 95 % interval of the Monte Carlo, mm. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface GapMap {
  /** From the mouth, mm. */
  readonly x: readonly number[];
  /** From the mark, degrees, 0 to below 360. */
  readonly theta: readonly number[];
  /** One row for each x, one value for each theta. */
  readonly centred: readonly (readonly number[])[];
  /** In the worst offset that spacers and jig leave, toward `offset.theta`. */
  readonly held: readonly (readonly number[])[];
}

/** The gap of one bond between two measured surfaces. */
export interface BondGap {
  readonly bond: BondName;
  readonly inside: SurfaceName;
  readonly outside: SurfaceName;
  /** Both parts on one axis. */
  readonly centred: GapSpan;
  /** The worst that spacers and jig leave; with neither, the parts touch. */
  readonly held: GapSpan;
  /** How far the held gap can reach by its uncertainty; spacers keep it from being thinner than they are. */
  readonly reach: { readonly from: number; readonly to: number };
  /** How far the tube may stand off centre where the held gap is largest, and toward which side. */
  readonly offset: { readonly value: number; readonly theta: number };
  /** What stops it there. */
  readonly stoppedBy: 'jig' | 'spacer' | 'touch';
  readonly map: GapMap;
  /** Of the bond, mm³; the same centred or not. */
  readonly volume: number;
}

/** Extremes of the held gap by Monte Carlo, to check the uncertainties by. */
export interface GapScatter {
  readonly bond: BondName;
  readonly min: Interval;
  readonly mean: Interval;
  readonly max: Interval;
  readonly samples: number;
  readonly seed: number;
}

/** A surface as measured. */
export interface SurfaceShape {
  readonly surface: SurfaceName;
  readonly mean: Uncertain;
  /** Largest less smallest diameter at one station. */
  readonly ovality: number;
  /** Mean diameter at the mouth less that at the root, by the straight line through the stations. */
  readonly taper: number;
}

/** A reading or a place that looks wrong, in plain words. */
export interface Mistake {
  readonly surface: SurfaceName;
  /** Station and clocking from 0; null when it is about the whole surface or its head. */
  readonly at: readonly [station: number, clocking: number] | null;
  /** `wrong` must be mended; `doubt` may be confirmed. */
  readonly level: 'wrong' | 'doubt';
  readonly code:
    | 'inch'
    | 'radius'
    | 'decimal-point'
    | 'swapped-digits'
    | 'stands-off'
    | 'far-from-drawing'
    | 'larger-than-sleeve'
    | 'parts-exchanged'
    | 'clocking-order'
    | 'station-order'
    | 'station-outside'
    | 'grid';
  readonly message: string;
  /** What was probably meant, mm; null when there is no guess. */
  readonly meant: number | null;
}

export interface BenchAmounts {
  /** In the bonds, mm³. */
  readonly volume: number;
  /** To mix, waste included: mm³, and g where the density is known. */
  readonly mixVolume: number;
  readonly mixMass: number | null;
  /** g of resin and hardener; null where the mix or the density is not known. */
  readonly resin: number | null;
  readonly hardener: number | null;
  readonly waste: number;
}

/** Gaps that may be bonded, and who says so. */
export interface GapLimits {
  readonly bond: BondName;
  readonly from: number | null;
  readonly to: number | null;
  readonly fromBy: 'engineer' | 'coupons' | 'spacer' | null;
  readonly toBy: 'engineer' | 'coupons' | null;
}

export interface GapReport {
  readonly jointId: string;
  /** Readings still to be taken, by surface. */
  readonly missing: readonly { readonly surface: SurfaceName; readonly count: number }[];
  readonly mistakes: readonly Mistake[];
  readonly shapes: readonly SurfaceShape[];
  /** Empty until every reading is there and none is wrong. */
  readonly bonds: readonly BondGap[];
  readonly limits: readonly GapLimits[];
  /** For the gap as measured; for the gap as drawn until it is. */
  readonly amounts: BenchAmounts;
  readonly flags: readonly Flag[];
}

export type ReasonCode =
  | 'inside'
  | 'not-measured'
  | 'reading'
  | 'does-not-fit'
  | 'below-spacer'
  | 'below-range'
  | 'above-range'
  | 'margin'
  | 'no-margin'
  | 'uncertain'
  | 'not-held'
  | 'unseen'
  | 'no-range';

export interface Reason {
  readonly code: ReasonCode;
  /** What it leads to by itself. */
  readonly state: VerdictState | 'unknown';
  readonly bond: BondName | null;
  /** One sentence in the words of the bench. */
  readonly message: string;
}

export interface GapVerdict {
  readonly jointId: string;
  /** `unknown` until everything is measured. */
  readonly state: VerdictState | 'unknown';
  /** The first reason decides; the others are also true. Never empty. */
  readonly reasons: readonly Reason[];
  /** The same report that `joint.gap` gives. */
  readonly gap: GapReport;
  readonly scatter: readonly GapScatter[];
  /** Lowest margin at the gap as measured, and at the ends of its uncertainty. */
  readonly measured: Margin | null;
  readonly guarded: Margin | null;
  readonly targetMargin: number;
  readonly modelVersion: string;
  /** The time that a record of it gets. */
  readonly at: string;
}

export interface GapRange {
  readonly from: number;
  readonly to: number;
}

export interface BondRange {
  readonly bond: BondName;
  /** As drawn, mm. */
  readonly drawn: number;
  /** Lowest margin of the joint at each gap of this bond, the other bond as drawn. */
  readonly curve: readonly {
    readonly gap: number;
    readonly margin: number;
    readonly mode: string;
  }[];
  /** Where the margin reaches the target, around the drawn gap; null when it does not there. */
  readonly model: GapRange | null;
  /** Whether the range goes on past the ends of the sweep. */
  readonly open: { readonly from: boolean; readonly to: boolean };
  readonly coupons: (GapRange & { readonly source: Source }) | null;
  /** The narrower of both; null when they do not meet. */
  readonly narrower: GapRange | null;
  /** What the engineer has set. */
  readonly set: GapRange | null;
  readonly flags: readonly Flag[];
}

export interface GapLimitsReport {
  readonly jointId: string;
  readonly targetMargin: number;
  readonly bonds: readonly BondRange[];
  readonly modelVersion: string;
}

/** What the journal keeps of checks, whether or not the project file was saved since. */
export interface KeptCheck {
  readonly project: string;
  /** When it was last written. */
  readonly at: string;
  readonly check: GapCheck;
}

export interface Kept {
  readonly checks: readonly KeptCheck[];
}
