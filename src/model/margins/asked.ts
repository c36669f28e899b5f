/**
 * The factor on the case's loads that each mode is asked for, docs/method.md section 8. An ultimate
 * case already contains its factor; only the fitting factor is added.
 */
import type { CaseKind, Factors } from '../joint/types.ts';

export type Mode =
  | 'adhesive-yield'
  | 'adhesive-strain'
  | 'adhesive-peel'
  | 'peel-shear'
  | 'interlaminar'
  | 'first-ply'
  | 'fracture'
  | 'durability-trough'
  | 'cyclic-shear'
  | 'cyclic-damage'
  | 'metal-yield'
  | 'metal-ultimate'
  | 'laminate-strength';

/** Modes that the layered shells find in the bonds. */
export const PEEL_MODES: ReadonlySet<Mode> = new Set<Mode>([
  'adhesive-peel',
  'peel-shear',
  'interlaminar',
  'fracture',
]);

/** Modes of the walls; all others are of the bonds. */
export const WALL_MODES: ReadonlySet<Mode> = new Set<Mode>([
  'metal-yield',
  'metal-ultimate',
  'laminate-strength',
  'first-ply',
]);

/** Modes of the bonds but the durability trough, which is a rule of length and not of strength. */
export const BOND_MODES: ReadonlySet<Mode> = new Set<Mode>([
  'adhesive-yield',
  'adhesive-strain',
  'cyclic-shear',
  'cyclic-damage',
  ...PEEL_MODES,
]);

/** Modes that end the joint; the others limit its service. */
export const FAILURE_MODES: ReadonlySet<Mode> = new Set([
  'adhesive-strain',
  'adhesive-peel',
  'interlaminar',
  'first-ply',
  'fracture',
  'metal-ultimate',
  'laminate-strength',
]);

/** @returns null when the mode is not asked of this kind of case */
export function askedFactor(mode: Mode, kind: CaseKind, factors: Factors): number | null {
  if (FAILURE_MODES.has(mode)) {
    return (kind === 'ultimate' ? 1 : factors.ultimate) * factors.fitting;
  }
  if (kind === 'ultimate') return null;
  if ((mode === 'cyclic-shear' || mode === 'cyclic-damage') && kind !== 'cyclic') return null;
  return factors.limit * factors.fitting;
}
