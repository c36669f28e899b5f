/**
 * One wall of a layered lap as a thin shell (a plate, when flat), per radian (per width): stretch,
 * hoop, bending and transverse shear. docs/method.md, layered shells.
 *
 * The axial unknown is that of a reference line at a distance z = −offset from the middle of the wall,
 * the bonded face of a sleeve: in a taper the face runs straight while the middle does not, and it is
 * the face's displacement that is continuous.
 */
import type { Material } from '../joint/types.ts';

export interface Shell {
  /** Mean radius; the width of a flat joint. */
  readonly radius: number;
  readonly thickness: number;
  readonly flat: boolean;
  /** Nx = cxx·(u′ − αx·ΔT) + cxt·(w/R − αθ·ΔT), N/mm */
  readonly cxx: number;
  readonly cxt: number;
  readonly ctt: number;
  /** Bending stiffness, N·mm */
  readonly bending: number;
  /** Shear stiffness G13·t, N/mm, before the factor κ */
  readonly shear: number;
  /** Through-thickness shear modulus, MPa */
  readonly throughShear: number;
  /** In-plane shear stiffness Gxθ·t, N/mm */
  readonly planeShear: number;
  /** Free strains along and around: α·ΔT */
  readonly freeAxial: number;
  readonly freeHoop: number;
  /** Free growth through half the wall, mm */
  readonly freeHalfThickness: number;
  /** ν13/Ex and ν23/Eθ: how much the wall thins, per stress along and around, 1/MPa */
  readonly thinAxial: number;
  readonly thinHoop: number;
  /** t/E3, mm/MPa; 0 where E3 is not known */
  readonly throughFlexibility: number;
  /** u of the reference line = u of the middle + offset·φ */
  readonly offset: number;
}

export interface PlateProperties {
  readonly axialModulus: number;
  readonly hoopModulus: number;
  /** ν of hoop contraction over axial extension. */
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
  readonly throughExpansion: number;
  readonly throughShearModulus: number;
  readonly shearModulus: number;
  /** ν of thinning over extension along and around. */
  readonly axialThinning: number;
  readonly hoopThinning: number;
  /** E3, MPa; Infinity where it is not known */
  readonly throughModulus: number;
  /** D over that of a homogeneous wall of the same thickness; 1 unless a stack says otherwise. */
  readonly bendingRatio: number;
}

/** ν13 and ν23 of carbon laminates, which few data sheets give (typical, from memory). */
const USUAL_THINNING = 0.3;

export function plateProperties(material: Material): PlateProperties {
  if (material.kind === 'isotropic') {
    const { modulus, poisson, expansion } = material;
    return {
      axialModulus: modulus,
      hoopModulus: modulus,
      poisson,
      axialExpansion: expansion,
      hoopExpansion: expansion,
      throughExpansion: expansion,
      throughShearModulus: modulus / (2 * (1 + poisson)),
      shearModulus: modulus / (2 * (1 + poisson)),
      axialThinning: poisson,
      hoopThinning: poisson,
      throughModulus: modulus,
      bendingRatio: 1,
    };
  }
  return {
    axialModulus: material.axialModulus,
    hoopModulus: material.hoopModulus,
    poisson: material.poisson,
    axialExpansion: material.axialExpansion,
    hoopExpansion: material.hoopExpansion,
    // Left out, the wall's own shrinkage through its thickness is left out, and the result says so.
    throughExpansion: material.throughExpansion ?? 0,
    throughShearModulus: material.throughShearModulus,
    shearModulus: material.shearModulus,
    axialThinning: USUAL_THINNING,
    hoopThinning: USUAL_THINNING,
    throughModulus: material.throughModulus ?? Number.POSITIVE_INFINITY,
    bendingRatio: material.kind === 'laminate' ? material.bendingRatio : 1,
  };
}

/** Where a wall is bonded, seen from itself: a sleeve on one face, the tube of a double lap on both. */
export type BondedFace = 'inner' | 'outer' | 'both';

export function shellOf(
  properties: PlateProperties,
  size: { readonly radius: number; readonly thickness: number; readonly flat: boolean },
  face: BondedFace,
  deltaT: number,
): Shell {
  const { axialModulus: ex, hoopModulus: et, poisson } = properties;
  const { radius, thickness, flat } = size;
  const poissonBack = (poisson * et) / ex;
  const room = 1 - poisson * poissonBack;
  const cxx = (ex * thickness) / room;
  return {
    radius,
    thickness,
    flat,
    cxx,
    cxt: poissonBack * cxx,
    ctt: (et * thickness) / room,
    bending: ((cxx * thickness * thickness) / 12) * properties.bendingRatio,
    shear: properties.throughShearModulus * thickness,
    throughShear: properties.throughShearModulus,
    planeShear: properties.shearModulus * thickness,
    freeAxial: properties.axialExpansion * deltaT,
    freeHoop: properties.hoopExpansion * deltaT,
    freeHalfThickness: (properties.throughExpansion * deltaT * thickness) / 2,
    thinAxial: properties.axialThinning / ex,
    thinHoop: properties.hoopThinning / et,
    throughFlexibility: thickness / properties.throughModulus,
    offset: face === 'both' ? 0 : face === 'inner' ? thickness / 2 : -thickness / 2,
  };
}

/** ε_y of a flat joint that is free to grow in width: Σ E_y·t·α_y·ΔT / Σ E_y·t, no net force. */
export function commonWidthStrain(shells: readonly Shell[]): number {
  let force = 0;
  let stiffness = 0;
  for (const shell of shells) {
    const own = shell.ctt - (shell.cxt * shell.cxt) / shell.cxx;
    force += own * shell.freeHoop;
    stiffness += own;
  }
  return force / stiffness;
}
