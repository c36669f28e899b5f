/**
 * Engineering constants of a wall that is free to bend and twist, beside those of `constants.ts`,
 * which hold the curvature suppressed. The two agree when B = 0.
 */
import { elasticConstants, inPlaneConstants, type PlaneConstants, released } from './constants.ts';
import { addTriple, invertPlane, times } from './plane.ts';
import type { LaminateStiffness } from './stack.ts';

/**
 * From the inverse of the whole ABD matrix, no moment: a* = (A − B·D⁻¹·B)⁻¹, then as from A⁻¹:
 * Ex = 1/(t·a*11), Ey = 1/(t·a*22), Gxy = 1/(t·a*66), νxy = −a*12/a*11, α = a*·(N_T − B·D⁻¹·M_T).
 * Classical lamination theory.
 */
export function freeConstants(stiffness: LaminateStiffness): PlaneConstants {
  const { thickness: t, a, b, d, thermalForce, thermalMoment } = stiffness;
  const flexibility = invertPlane(released(a, b, d));
  const force = addTriple(thermalForce, times(b, times(invertPlane(d), thermalMoment)), -1);
  const [axialExpansion, hoopExpansion] = times(flexibility, force);
  return { ...elasticConstants(t, flexibility), axialExpansion, hoopExpansion };
}

/** A constant that changes by less than this share when the wall is let free is not told twice. */
const DIFFERS = 0.01;

/** The free constants that differ by more than 1 % from those held; none when B = 0. */
export function freeDifferences(stiffness: LaminateStiffness): Partial<PlaneConstants> {
  const held = inPlaneConstants(stiffness);
  if (!held.curvatureHeld) return {};
  const free = freeConstants(stiffness);
  return Object.fromEntries(
    Object.entries(free).filter(([key, value]) => {
      const other = held[key as keyof PlaneConstants];
      return Math.abs(value - other) > DIFFERS * Math.max(Math.abs(value), Math.abs(other));
    }),
  );
}
