/** The plateau of the bond's strength against its overlap. */
import { type Step, step } from '../card.ts';
import type { AdhesiveInput, CaseInput, JointInput, ModelSettings } from '../joint/types.ts';
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
  /** Index of the case that sets it; -1 when no case loads the joint. */
  readonly caseIndex: number;
}

export function plateauWorking(question: {
  readonly joint: JointInput;
  readonly adhesive: AdhesiveInput;
  readonly cases: readonly CaseInput[];
  readonly settings: ModelSettings;
}): PlateauWorking {
  const { overlap, strength } = findPlateau(question);
  const { caseIndex } = strength;
  if (!strength.mode || strength.ratio <= 0) return { steps: [], overlap, caseIndex };
  // Still gaining: the strength a little short of the longest overlap shows it.
  const at = overlap ?? LONGEST_OVERLAP * PLATEAU_SHARE;
  const here = bondStrengthAt(question, at);
  if (!here.mode) return { steps: [], overlap, caseIndex };
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
    caseIndex,
  };
}
