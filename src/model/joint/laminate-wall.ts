/** A wall of plies as the material of a joint. */
import { laminateMaterial } from '../laminate/material.ts';
import type { Ply } from '../laminate/ply.ts';
import type { LaminateMaterial } from './types.ts';

/**
 * The bending stiffness is that of a wall free to stretch while it bends, D* = D − B·A⁻¹·B: below D11
 * for a stack that is not symmetric, D11 for one that is.
 * @param angles degrees from the tube's axis, inside to outside
 * @throws ModelError for a ply that could not exist
 */
export function laminateWall(ply: Ply, angles: readonly number[], wall: number): LaminateMaterial {
  const { reducedBendingStiffness, ...whole } = laminateMaterial(ply, angles, wall);
  const { axialModulus, hoopModulus, poisson } = whole;
  const homogeneous =
    (axialModulus * wall ** 3) / 12 / (1 - (poisson * poisson * hoopModulus) / axialModulus);
  return { kind: 'laminate', ...whole, bendingRatio: reducedBendingStiffness / homogeneous };
}
