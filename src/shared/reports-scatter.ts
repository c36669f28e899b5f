/** What a joint's tolerances do to its margins: which input matters, and how the margins scatter. */
import type { Tolerance, ToleranceInput } from './project-settings.ts';
import type { Flag } from './reports.ts';

/** What `joint.scatter` takes when nothing is said. */
export const scatterDefaults = { samples: 100_000, seed: 1, method: 'fitted' } as const;

export type Distribution = Tolerance['distribution'];
/** From the project's settings, from the joint's own tolerance or offset, or typical, from memory. */
export type ToleranceOrigin = 'project' | 'joint' | 'typical';

/** How one input of a joint varies. */
export interface InputTolerance {
  readonly input: ToleranceInput;
  /** `overlap`, `adhesive shear yield` and so on. */
  readonly label: string;
  /** What the spread is measured in: `1` is a share of the value. */
  readonly unit: 'mm' | '°C' | '1';
  readonly distribution: Distribution;
  /** Standard deviation (normal) or half-width (uniform, triangular); 0 where the input does not vary. */
  readonly spread: number;
  /** What is added to the input's own value in the middle of its range. */
  readonly middle: number;
  readonly origin: ToleranceOrigin;
}

/** A margin that is the lowest of all at some values of the inputs, the durability trough apart. */
export interface LowestMargin {
  readonly margin: number;
  readonly label: string;
  readonly caseName: string;
}

interface Common {
  readonly jointId: string;
  readonly targetMargin: number;
  /** Only those that vary. */
  readonly tolerances: readonly InputTolerance[];
  /** Every input in its middle, no worst-case gaps: where the bars and the samples start from. */
  readonly middle: LowestMargin;
  /** The joint's own lowest margin: worst gap, all knockdowns. */
  readonly own: LowestMargin;
  readonly flags: readonly Flag[];
}

export interface MattersBar {
  readonly input: ToleranceInput;
  readonly label: string;
  /** At −2 standard deviations, or −1 half-width. */
  readonly low: LowestMargin;
  readonly high: LowestMargin;
  /** What is added to the input's own value at both ends, in the unit of its spread. */
  readonly from: number;
  readonly to: number;
  readonly swing: number;
}

export interface MattersReport extends Common {
  /** The largest swing first. */
  readonly bars: readonly MattersBar[];
}

export interface ShareLimits {
  readonly low: number;
  readonly high: number;
}

/** The fitted surfaces against the full model; differences in margin. */
export interface ScatterCheck {
  /** Evaluations of the full model behind the surfaces. */
  readonly points: number;
  /** Random samples that were computed by the full model too. */
  readonly checked: number;
  readonly largest: number;
  readonly rms: number;
  readonly mean: number;
  /** The same over the weakest samples. */
  readonly weakest: { readonly checked: number; readonly largest: number; readonly rms: number };
  /** Samples whose margin was within ± band of zero, and how many of them were computed by the full model. */
  readonly band: number;
  readonly inBand: number;
  readonly recomputed: number;
  /** Modes that came near the lowest and could not be followed by a surface. */
  readonly left: readonly string[];
}

export interface ScatterReport extends Common {
  readonly samples: number;
  readonly seed: number;
  readonly method: 'fitted' | 'each';
  /** Samples below margin 0, their share and its limits at `confidence`, by the exact binomial. */
  readonly below: ShareLimits & { readonly count: number; readonly share: number };
  readonly confidence: number;
  readonly mean: number;
  readonly deviation: number;
  readonly lowest: number;
  readonly highest: number;
  /** Share, the smallest margin that so many samples do not exceed, and its limits at `confidence`. */
  readonly percentiles: readonly (ShareLimits & {
    readonly share: number;
    readonly value: number;
  })[];
  /** Bars of one width; zero is an edge. */
  readonly histogram: {
    readonly from: number;
    readonly width: number;
    readonly counts: readonly number[];
  };
  /** In how many samples each is the lowest, most often first. */
  readonly governs: readonly {
    readonly label: string;
    readonly caseName: string;
    readonly count: number;
  }[];
  /** Samples computed by the full model. */
  readonly exact: number;
  /** Null when every sample is. */
  readonly check: ScatterCheck | null;
}
