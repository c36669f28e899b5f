/** What sizing answers: the size found, what stops it, what would help; a joint in its frame sizes. */
import type { Joint, JointType } from './project.ts';
import type { RequestError } from './reply.ts';
import type { Flag, Margin, Mode } from './reports.ts';
import type { SaidFigure } from './said.ts';
import type { Vary } from './vary-joint.ts';

export interface SizingPoint {
  /** Of what varies, mm. */
  readonly value: number;
  /** Lowest over all modes, cases and gap states. */
  readonly margin: number;
  readonly mode: Mode;
  /** In plain words. */
  readonly label: string;
}

/** The full analysis of one value. */
export interface SizingCheck {
  readonly value: number;
  readonly reached: boolean;
  /** The lowest; null where the joint does not fit together. */
  readonly margin: Margin | null;
}

export interface SizingFound {
  /** The answer: the smallest value, or the thickest gap. */
  readonly value: number;
  /** Lowest margin at the answer, by the full analysis. */
  readonly margin: Margin;
  /** Smallest value that reaches the target; the answer itself but for a gap. */
  readonly low: number;
  /** False when no smaller one was looked at. */
  readonly lowBounded: boolean;
  /** Largest value, of a gap only. */
  readonly high: number | null;
  readonly highBounded: boolean;
  /** A larger value that was looked at and does not reach the target; null when all do. */
  readonly lostAt: number | null;
  /** At the ends and one step outside them, in order of value. */
  readonly checks: readonly SizingCheck[];
  /** The joint with the answer. */
  readonly joint: Joint;
}

/** Why no value reaches the target. */
export interface SizingStop {
  readonly best: number;
  /** Lowest margin there. */
  readonly margin: Margin;
  /** Smallest value whose margin is within 0.005 of the best. */
  readonly levelFrom: number;
  /** True when the margin still rises at the end of what was looked at. */
  readonly rising: boolean;
  /** Largest value that was looked at, and the lowest margin there. */
  readonly end: number;
  readonly endMargin: Margin;
  /** Modes below the target at the best value and at the largest, lowest first. */
  readonly atBest: readonly Margin[];
  readonly atEnd: readonly Margin[];
}

export type SuggestionKind =
  | 'overlap'
  | 'sleeve-wall'
  | 'taper'
  | 'thinner-gap'
  | 'thicker-gap'
  | 'tube-wall'
  | 'double-lap';

/** A change to something else, and what the same sizing finds with it. */
export interface SizingSuggestion {
  readonly kind: SuggestionKind;
  /** In words: `sleeve wall 1.2 → 1.5 mm`. */
  readonly change: string;
  /** Those in it. */
  readonly changeFigures?: readonly SaidFigure[];
  readonly reached: boolean;
  /** With the change: the size found, or the best one when none reaches the target. */
  readonly value: number;
  /** Lowest margin there. */
  readonly margin: number;
  readonly label: string;
  /** `margin` over the best without the change. */
  readonly gain: number;
  /** The joint with the change and that size. */
  readonly joint: Joint;
}

export interface SizingReport {
  readonly jointId: string;
  readonly type: JointType;
  readonly vary: Vary;
  readonly target: number;
  readonly step: number;
  /** Multiples of the step that were looked between, mm. */
  readonly from: number;
  readonly to: number;
  readonly present: { readonly value: number; readonly margin: Margin };
  /** Lowest margin against what varies, in order of value. */
  readonly points: readonly SizingPoint[];
  readonly found: SizingFound | null;
  /** Null when a size was found. */
  readonly stop: SizingStop | null;
  /** Those that reach the target first, the least change first; then those that only help. */
  readonly suggestions: readonly SizingSuggestion[];
  /** Tried, computed and of no help. */
  readonly noHelp: readonly SuggestionKind[];
  readonly flags: readonly Flag[];
  readonly modelVersion: string;
}

/** One frame size of a joint. */
export interface SizeResult {
  readonly sizeId: string;
  readonly name: string;
  /** Lowest margin at the joint's present overlap; null when it could not be computed. */
  readonly lowest: Margin | null;
  /** Shortest overlap that reaches the target in this size; null when none does. */
  readonly overlap: number | null;
  /** Lowest margin at that overlap; at the best one when none reaches the target. */
  readonly there: Margin | null;
  /** Overlap that `there` belongs to. */
  readonly at: number | null;
  readonly refused: RequestError | null;
}

export interface SizesReport {
  readonly jointId: string;
  readonly overlap: number;
  readonly target: number;
  readonly step: number;
  /** True: each size has an overlap of its own. False: one overlap for all. */
  readonly each: boolean;
  readonly sizes: readonly SizeResult[];
  /** The size with the lowest margin at the present overlap. */
  readonly worst: string | null;
  /** One overlap for all: found where every size reaches the target with it. */
  readonly common: {
    readonly overlap: number;
    /** The size that asks for it. */
    readonly by: string;
    /** The full analysis of every size with it. */
    readonly checks: readonly { readonly sizeId: string; readonly margin: Margin }[];
  } | null;
  readonly modelVersion: string;
}
