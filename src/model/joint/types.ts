/**
 * What the model is given of a joint: resolved materials and plain numbers in N, mm, MPa, °C.
 * Ranges and references have been checked by the reader of the project file.
 */
export interface IsotropicMaterial {
  readonly kind: 'isotropic';
  readonly modulus: number;
  readonly poisson: number;
  readonly expansion: number;
  readonly yieldStrength: number;
  readonly ultimateStrength: number;
}

export interface OrthotropicMaterial {
  readonly kind: 'orthotropic';
  readonly axialModulus: number;
  readonly hoopModulus: number;
  readonly shearModulus: number;
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
  readonly throughShearModulus: number;
  readonly tensileStrength: number;
  readonly compressiveStrength: number;
  readonly shearStrength: number;
}

export type Material = IsotropicMaterial | OrthotropicMaterial;

/** Axial modulus, in-plane and through-thickness shear moduli, MPa, axial expansion, 1/K. */
export interface AxialProperties {
  readonly modulus: number;
  readonly shearModulus: number;
  readonly throughShearModulus: number;
  readonly expansion: number;
}

export function axialProperties(material: Material): AxialProperties {
  if (material.kind === 'isotropic') {
    const shearModulus = material.modulus / (2 * (1 + material.poisson));
    return {
      modulus: material.modulus,
      shearModulus,
      throughShearModulus: shearModulus,
      expansion: material.expansion,
    };
  }
  return {
    modulus: material.axialModulus,
    shearModulus: material.shearModulus,
    throughShearModulus: material.throughShearModulus,
    expansion: material.axialExpansion,
  };
}

export interface WallInput {
  readonly material: Material;
  readonly atRoot: number;
  readonly atMouth: number;
}

export interface BondInput {
  readonly gap: number;
  readonly tolerance: number;
}

export interface TubeInput {
  readonly material: Material;
  readonly outsideDiameter: number;
  readonly wall: number;
}

export type JointInput =
  | {
      readonly type: 'sleeve-single';
      readonly side: 'socket' | 'spigot';
      readonly overlap: number;
      readonly tube: TubeInput;
      readonly sleeve: WallInput;
      readonly bond: BondInput;
      readonly offset: number;
    }
  | {
      readonly type: 'sleeve-double';
      readonly overlap: number;
      readonly tube: TubeInput;
      readonly spigot: WallInput;
      readonly socket: WallInput;
      readonly innerBond: BondInput;
      readonly outerBond: BondInput;
      readonly offset: number;
    }
  | {
      readonly type: 'flat-single';
      readonly overlap: number;
      readonly width: number;
      readonly strip: { readonly material: Material; readonly thickness: number };
      readonly plate: WallInput;
      readonly bond: BondInput;
    }
  | {
      readonly type: 'flat-double';
      readonly overlap: number;
      readonly width: number;
      readonly strip: { readonly material: Material; readonly thickness: number };
      readonly lowerStrap: WallInput;
      readonly upperStrap: WallInput;
      readonly lowerBond: BondInput;
      readonly upperBond: BondInput;
    };

/** Loads at the mouth of the sleeve: N and N·mm. A flat joint has only `force`. */
export interface Loads {
  readonly force: number;
  readonly moment: number;
  readonly torque: number;
  readonly shear: number;
}

export type CaseKind = 'limit' | 'ultimate' | 'cyclic';

export interface CaseInput {
  readonly loads: Loads;
  readonly kind: CaseKind;
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  /** Number of cycles of a cyclic case. */
  readonly cycles?: number;
}

export interface AdhesiveRow {
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  readonly modulus: number;
  readonly shearModulus: number;
  readonly shearYield: number;
  readonly plasticStrain: number;
}

export interface AdhesiveInput {
  readonly stressFreeTemperature: number;
  readonly states: readonly AdhesiveRow[];
  readonly fatigue?: { readonly coefficient: number; readonly exponent: number } | undefined;
}

export interface Factors {
  readonly limit: number;
  readonly ultimate: number;
  readonly fitting: number;
}

export interface ModelSettings {
  readonly factors: Factors;
  readonly adherendShear: boolean;
}

export type GapState = 'min' | 'nominal' | 'max';
