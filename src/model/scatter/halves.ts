/**
 * First yield and cyclic shear of the two halves around the tube, each by itself: where a moment acts,
 * temperature helps one side and hurts the other, and the worst side changes with it. Each half's
 * strength is smooth in the inputs; the lower of both is not.
 */
import type { AdhesiveInput, Factors } from '../joint/types.ts';
import { askedFactor, type Mode } from '../margins/asked.ts';
import { clockings } from '../margins/clocking.ts';
import { allowedShare, cycleFactor } from '../margins/cyclic.ts';
import { UNLOADED } from '../margins/result.ts';
import { shearFactor } from '../margins/shear-factor.ts';
import type { JointState } from '../margins/state.ts';
import { findMinimum } from '../numerics/root.ts';

/** Around the plane of bending, on the side of θ = 0 or of θ = 180°; empty where there are none. */
export type Half = '' | 'near' | 'far';

export const halved: ReadonlySet<Mode> = new Set<Mode>(['adhesive-yield', 'cyclic-shear']);

const STEPS = 12;

/** Ratios of the halves; none where the mode is not asked or no load reaches it. */
export function halvesOf(
  state: JointState,
  adhesive: AdhesiveInput,
  factors: Factors,
  mode: Mode,
): { readonly half: Half; readonly ratio: number }[] {
  const { assembly, bonds, loadCase } = state;
  const asked = askedFactor(mode, loadCase.kind, factors);
  const { fatigue } = adhesive;
  const cyclic = mode === 'cyclic-shear';
  if (asked === null || (cyclic && (!fatigue || loadCase.cycles === undefined))) return [];
  const share = cyclic ? allowedShare(fatigue!, loadCase) : 1;
  const limits = bonds.map((bond) => bond.shearYield * share);
  const at = (theta: number): number =>
    (cyclic ? cycleFactor(state.at(theta), limits, loadCase) : shearFactor(state.at(theta), limits))
      .factor;
  const thetas = clockings(assembly.flat, loadCase.loads);
  const lowestAbout = (middle: number): number => {
    if (thetas.length <= 2) return at(middle);
    const step = Math.PI / STEPS;
    const places = Array.from({ length: STEPS + 1 }, (_v, i) => middle + (i - STEPS / 2) * step);
    const factors = places.map(at);
    const low = places[factors.indexOf(Math.min(...factors))]!;
    return Math.min(...factors, at(findMinimum(at, low - step, low + step, 1e-4)));
  };
  const found =
    thetas.length === 1
      ? [{ half: '' as const, factor: at(0) }]
      : [
          { half: 'near' as const, factor: lowestAbout(0) },
          { half: 'far' as const, factor: lowestAbout(Math.PI) },
        ];
  return found.flatMap(({ half, factor }) =>
    factor < UNLOADED ? [{ half, ratio: factor / asked }] : [],
  );
}
