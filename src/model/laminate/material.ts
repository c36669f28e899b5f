/** The homogeneous wall that stands for a laminate in a joint. */
import { flexuralConstants, inPlaneConstants, throughConstants } from './constants.ts';
import { checkPly, type Ply } from './ply.ts';
import { makeStack, type Stack, stiffnessOf } from './stack.ts';

export interface LaminateProperties {
  /** Ex */
  readonly axialModulus: number;
  /** Eθ */
  readonly hoopModulus: number;
  /** Gxθ */
  readonly shearModulus: number;
  /** νxθ */
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
  /** Gxz */
  readonly throughShearModulus: number;
  /** E3 */
  readonly throughModulus: number;
  /** α3 */
  readonly throughExpansion: number;
  /** Zt */
  readonly interlaminarTension: number;
  /** S13 */
  readonly interlaminarShear: number;
  /** D11 at this wall thickness, N·mm. */
  readonly bendingStiffness: number;
  /** D*11, the middle surface free to stretch: below D11 when the stack is not symmetric. */
  readonly reducedBendingStiffness: number;
  /**
   * D*11 over that of a homogeneous wall of the same axial modulus, 12·D*11·(1 − νxθ·νθx)/(Ex·t³): a
   * wall of a joint is free to stretch while it bends.
   */
  readonly bendingRatio: number;
  readonly stack: Stack;
  /** Wall over the plies' own thickness: 1 when the stack as given makes the wall. */
  readonly scale: number;
}

/**
 * @param angles degrees from the tube's axis, inside to outside; plies are scaled evenly to the wall
 * @throws ModelError for a ply that could not exist, an empty stack, or no wall
 */
export function laminateMaterial(
  ply: Ply,
  angles: readonly number[],
  wall: number,
): LaminateProperties {
  checkPly(ply);
  const stack = makeStack(ply, angles, wall);
  const stiffness = stiffnessOf(stack);
  const plane = inPlaneConstants(stiffness);
  const bending = flexuralConstants(stiffness);
  const through = throughConstants(stack);
  const room = 1 - (plane.poisson ** 2 * plane.hoopModulus) / plane.axialModulus;
  return {
    axialModulus: plane.axialModulus,
    hoopModulus: plane.hoopModulus,
    shearModulus: plane.shearModulus,
    poisson: plane.poisson,
    axialExpansion: plane.axialExpansion,
    hoopExpansion: plane.hoopExpansion,
    throughShearModulus: through.axialShearModulus,
    throughModulus: through.modulus,
    throughExpansion: through.expansion,
    interlaminarTension: through.interlaminarTension,
    interlaminarShear: through.interlaminarShear,
    bendingStiffness: bending.bendingStiffness,
    reducedBendingStiffness: bending.reducedBendingStiffness,
    bendingRatio: (12 * bending.reducedBendingStiffness * room) / (plane.axialModulus * wall ** 3),
    stack,
    scale: wall / (ply.thickness * angles.length),
  };
}
