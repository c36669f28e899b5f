/** The lowest margins of every joint under every load case, and the corners of one joint. */

import type { RequestError } from './reply.ts';
import type { Margin, MarginState } from './reports.ts';

/** The lowest margin of a corner, of a cell or of a joint: what sets it, where and in which state. */
export type CornerMargin = Pick<
  Margin,
  | 'mode'
  | 'label'
  | 'margin'
  | 'state'
  | 'caseId'
  | 'caseName'
  | 'conditionId'
  | 'conditionName'
  | 'gapState'
  | 'place'
  | 'x'
  | 'theta'
  | 'part'
  | 'typical'
>;

/** A joint under one load case, over its gap states and the surroundings that it is judged in. */
export interface CornerCell {
  readonly caseId: string;
  /** Null when no load acts on the joint in this case. */
  readonly lowest: CornerMargin | null;
  /** States that were looked at for it. */
  readonly states: number;
}

export interface JointCorners {
  readonly jointId: string;
  readonly name: string;
  readonly description: string;
  /** Strips have no clocking. */
  readonly flat: boolean;
  /** One for each load case of the joint, in the order of its loads; empty when it was refused. */
  readonly cells: readonly CornerCell[];
  /**
   * The lowest of its cells, or of its cyclic cases together where that is lower: the figure of
   * `project.check`; null when no load acts on it.
   */
  readonly lowest: CornerMargin | null;
  readonly states: number;
  /** Why the joint could not be computed; null when it could. */
  readonly refused: RequestError | null;
}

/** True of the cell that sets the joint's figure; all cycles together are in no cell. */
export const isLowestOf = ({ lowest }: JointCorners, caseId: string): boolean =>
  lowest !== null && lowest.mode !== 'cyclic-damage' && lowest.caseId === caseId;

export interface CornersReport {
  readonly project: string;
  readonly targetMargin: number;
  /** The load cases that act on these joints, in the order of the project. */
  readonly cases: readonly { readonly caseId: string; readonly name: string }[];
  readonly joints: readonly JointCorners[];
  readonly counts: Readonly<Record<MarginState, number>>;
  /** States that were looked at in all. */
  readonly states: number;
  /** Every corner of the joint that was asked for, lowest first; null when none was. */
  readonly corners: readonly CornerMargin[] | null;
  readonly modelVersion: string;
}
