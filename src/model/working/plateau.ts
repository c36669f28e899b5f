/** The plateau of the bond's strength against its overlap. */
import { type Step, step } from '../card.ts';
import type { AdhesiveInput, CaseInput, JointInput, ModelSettings } from '../joint/types.ts';
import type { ModeResult } from '../margins/result.ts';
import { plateauShare, ratio } from '../sweep/overlap-sweep.card.ts';
import {
  bondStrengthAt,
  findPlateau,
  LONGEST_OVERLAP,
  PLATEAU_SHARE,
  type Strength,
} from '../sweep/overlap-sweep.ts';

export interface PlateauWorking {
  readonly steps: Step[];
  /** Null when the bond still gains at the longest overlap. */
  readonly overlap: number | null;
  /** What sets the strength there, and the index of its case; null when no case loads the joint. */
  readonly at: {
    readonly overlap: number;
    readonly mode: ModeResult;
    readonly caseIndex: number;
  } | null;
}

export function plateauWorking(question: {
  readonly joint: JointInput;
  readonly adhesive: AdhesiveInput;
  readonly cases: readonly CaseInput[];
  readonly settings: ModelSettings;
}): PlateauWorking {
  const { overlap, strength } = findPlateau(question);
  if (!strength.mode || strength.ratio <= 0) return { steps: [], overlap, at: null };
  // Still gaining: the strength a little short of the longest overlap shows it.
  const at = overlap ?? LONGEST_OVERLAP * PLATEAU_SHARE;
  const here = bondStrengthAt(question, at);
  if (!here.mode) return { steps: [], overlap, at: null };
  const card = (which: 'long' | 'plateau', { mode, ratio: own }: Strength, length: number): Step =>
    step(
      ratio(which, `${Number(length.toPrecision(4))} mm`),
      { lambda: mode!.reached, asked: mode!.asked },
      own,
    );
  return {
    steps: [
      card('long', strength, LONGEST_OVERLAP),
      card('plateau', here, at),
      step(plateauShare, { R: here.ratio, R_long: strength.ratio }, here.ratio / strength.ratio),
    ],
    overlap,
    at: { overlap: at, mode: here.mode, caseIndex: here.caseIndex },
  };
}
