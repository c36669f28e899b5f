/** Every mode of one case in one gap state: the adhesive in shear, peel and the plies, the walls. */
import type { AdhesiveInput, Factors } from '../joint/types.ts';
import { adhesiveModes } from './adhesive-modes.ts';
import { type Mode, PEEL_MODES, WALL_MODES } from './asked.ts';
import { peelModes } from './peel-modes.ts';
import type { ModeResult } from './result.ts';
import type { JointState } from './state.ts';
import { wallModes } from './wall-modes.ts';

/** Modes that the shear strength is found for. */
const NEED_STRENGTH: readonly Mode[] = ['adhesive-strain', 'adhesive-peel', 'interlaminar'];

export interface AllOptions {
  /** The modes to compute; all when left out. */
  readonly only?: ReadonlySet<Mode>;
  /**
   * Margins of a mode at or above this need not be found: the mode is left out of the answer.
   * @param known lowest margin found so far in this state
   */
  readonly ofInterest?: (mode: Mode, known: number) => number;
  /** True when that holds for the shear strength too, which is found in any case otherwise. */
  readonly spareStrength?: boolean;
}

export function allModes(
  state: JointState,
  adhesive: AdhesiveInput,
  factors: Factors,
  { only, ofInterest, spareStrength = false }: AllOptions = {},
): ModeResult[] {
  const some = (group: ReadonlySet<Mode>): boolean =>
    !only || [...group].some((mode) => only.has(mode));
  const results: ModeResult[] = some(WALL_MODES)
    ? wallModes(state, factors).filter(({ mode }) => !only || only.has(mode))
    : [];
  const known = (): number =>
    results.reduce((low, { margin }) => Math.min(low, margin), Number.POSITIVE_INFINITY);
  const interest = (mode: Mode): number => ofInterest?.(mode, known()) ?? Number.POSITIVE_INFINITY;
  const shear = adhesiveModes(state, adhesive, factors, {
    ...(only ? { only } : {}),
    troughOfInterest: interest('durability-trough'),
    // The modes of peel ask how far shear lets the joint come: beyond their own interest it is all one.
    ...(spareStrength ? { strengthOfInterest: Math.max(...NEED_STRENGTH.map(interest)) } : {}),
  });
  results.push(...shear);
  if (some(PEEL_MODES)) {
    const strength = shear.find(({ mode }) => mode === 'adhesive-strain');
    results.push(
      ...peelModes(state, adhesive, factors, {
        ...(only ? { only } : {}),
        ofInterest: interest,
        shearStrength: strength?.reached ?? Number.POSITIVE_INFINITY,
      }),
    );
  }
  return results;
}
