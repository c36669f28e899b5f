/** What the printed sheet needs of one joint, in one answer; and where a sheet was saved. */
import type { RequestError } from './reply.ts';
import type { Flag, JointReport, Margin, SweepReport, Working } from './reports.ts';
import type { InputTolerance } from './reports-scatter.ts';

export interface SheetWorking {
  readonly margin: Margin;
  /** Null where it cannot be shown; the reason is in `refused`. */
  readonly working: Working | null;
  readonly refused: RequestError | null;
}

export interface JointSheet {
  readonly jointId: string;
  /** As the Size page has it; the state drawn is the one that is left to the model. */
  readonly report: JointReport;
  /** Null where the joint carries no load, where it was not asked for, or where it cannot be swept: then `sweepRefused` says why. */
  readonly sweep: SweepReport | null;
  readonly sweepRefused: RequestError | null;
  /** Of the lowest margins, as many as were asked for, lowest first. */
  readonly workings: readonly SheetWorking[];
  readonly tolerances: readonly InputTolerance[];
  /** Allowables whose coupons are not those any more that they were taken from. */
  readonly couponFlags: readonly Flag[];
}

export interface SheetSaved {
  /** Name of the file; null when it was given up. */
  readonly name: string | null;
}
