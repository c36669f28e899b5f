/** What is known of one mode in one state, and how it is put together. */
import type { GapState } from '../joint/types.ts';
import { FAILURE_MODES, type Mode } from './asked.ts';
import type { JointState } from './state.ts';

export type Place = 'root' | 'mouth' | 'within';

export interface ModeResult {
  readonly mode: Mode;
  /** Name of the bond or the wall. */
  readonly part: string;
  /** Factor on the case's loads at which the mode is reached. */
  readonly reached: number;
  readonly asked: number;
  readonly margin: number;
  readonly place: Place;
  readonly x: number;
  /** Clocking, radians. */
  readonly theta: number;
  readonly gapState: GapState;
  /** True when the bond's strength is reached by flowing from end to end. */
  readonly wholeBondFlows: boolean;
  /** True when the bonds fail in shear before this mode is reached: the factor is the least it could be. */
  readonly shearFirst?: boolean;
  /** Cyclic shear at the reversed end of its cycle: the ratio of its load, below 0. */
  readonly end?: number;
  /** Cyclic damage: what each occasion adds when its loads have grown to this mode's factor. */
  readonly damage?: readonly DamageShare[];
  /** First ply: both criteria, and which ply. */
  readonly plies?: PlyReach;
}

/** One occasion's part of a damage sum, in the surroundings in which it is largest. */
export interface DamageShare {
  readonly caseIndex: number;
  /** Name of the occasion. */
  readonly occasion: string;
  readonly cycles: number;
  /** Lowest over highest load; not known when left out. */
  readonly ratio: number | undefined;
  /** Elastic peak shear over yield. */
  readonly peak: number;
  /** Cycles to failure at that peak. */
  readonly life: number;
  /** The same under the loads that are asked for, not grown to the sum of 1; 0 above yield. */
  readonly lifeAsked: number;
}

export interface PlyReach {
  readonly tsaiWu: number;
  readonly maximumStrain: number;
  /** 0 is the innermost. */
  readonly ply: number;
  /** Degrees from the tube's axis. */
  readonly angle: number;
  readonly criterion: 'tsai-wu' | 'maximum-strain';
}

/** Lowest first; of equal ones what ends the joint comes before what limits its service. */
export function byMargin(a: ModeResult, b: ModeResult): number {
  if (a.margin !== b.margin) return a.margin < b.margin ? -1 : 1;
  return Number(FAILURE_MODES.has(b.mode)) - Number(FAILURE_MODES.has(a.mode));
}

/** Factors beyond this mean that the load does not move the mode at all. */
export const UNLOADED = 1e9;

export const placeOf = (x: number, length: number): Place =>
  x <= 1e-6 * length ? 'root' : x >= (1 - 1e-6) * length ? 'mouth' : 'within';

/** What follows from the factors and the place stands in one spot. */
export const resultOf = (
  { assembly, gapState }: JointState,
  found: Omit<ModeResult, 'margin' | 'place' | 'gapState'>,
): ModeResult => ({
  ...found,
  margin: found.reached / found.asked - 1,
  place: placeOf(found.x, assembly.overlap),
  gapState,
});
