/**
 * What the model is given of a joint: resolved materials and plain numbers in N, mm, MPa, °C.
 * Ranges and references have been checked by the reader of the project file.
 */
import type { LaminateProperties } from '../laminate/material.ts';

export interface IsotropicMaterial {
  readonly kind: 'isotropic';
  readonly modulus: number;
  readonly poisson: number;
  readonly expansion: number;
  readonly yieldStrength: number;
  readonly ultimateStrength: number;
}

/** Elastic constants of a wall whose directions differ, as one homogeneous material. */
export interface OrthotropicConstants {
  readonly axialModulus: number;
  readonly hoopModulus: number;
  readonly shearModulus: number;
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
  readonly throughShearModulus: number;
  /** Through the thickness; what is left out is not checked. */
  readonly throughModulus?: number | undefined;
  readonly throughExpansion?: number | undefined;
  readonly interlaminarTension?: number | undefined;
  readonly interlaminarShear?: number | undefined;
}

export interface OrthotropicMaterial extends OrthotropicConstants {
  readonly kind: 'orthotropic';
  readonly tensileStrength: number;
  readonly compressiveStrength: number;
  readonly shearStrength: number;
}

/** A wall of plies: its constants follow from the stack, its strength from the plies. */
export interface LaminateMaterial extends LaminateProperties {
  readonly kind: 'laminate';
}

export type Material = IsotropicMaterial | OrthotropicMaterial | LaminateMaterial;

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
  /** Lowest over highest load of a cyclic case, −1 to below 1; left out, it is that of the S-N line. */
  readonly ratio?: number | undefined;
  /** Cases of one occasion are the same cycles in other surroundings; left out, each is its own. */
  readonly occasion?: string | undefined;
}

/** Allowed peak shear over yield = min(1, coefficient·cycles^−exponent). */
export interface SnLine {
  readonly coefficient: number;
  readonly exponent: number;
  /** Lowest over highest load in the tests behind it; not known when left out. */
  readonly ratio?: number | undefined;
}

export interface AdhesiveRow {
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  readonly modulus: number;
  readonly shearModulus: number;
  readonly shearYield: number;
  readonly plasticStrain: number;
  readonly peelStrength?: number | undefined;
}

/** What is left of the strength, step by step; 1 takes nothing away. */
export interface Knockdowns {
  readonly environment: number;
  readonly ageing: number;
  readonly scatter: number;
  readonly gap: readonly { readonly gap: number; readonly factor: number }[];
  /** From own coupons, one for each surroundings: it stands in place of `scatter` there. */
  readonly tested?: readonly TestedStrength[] | undefined;
}

/** Strength that may be used over the mean of the adhesive's rows, at one temperature and moisture. */
export interface TestedStrength {
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  /** Gap of the coupons, mm. */
  readonly gap: number;
  readonly factor: number;
}

/** Energies that a crack takes, N/mm, and the exponent of their mix. */
export interface Fracture {
  readonly modeI: number;
  readonly modeII: number;
  readonly exponent: number;
}

export interface AdhesiveInput {
  readonly stressFreeTemperature: number;
  readonly states: readonly AdhesiveRow[];
  readonly expansion?: number | undefined;
  readonly fracture?: Fracture | undefined;
  readonly knockdowns?: Knockdowns | undefined;
  readonly fatigue?: SnLine | undefined;
}

export interface Factors {
  readonly limit: number;
  readonly ultimate: number;
  readonly fitting: number;
}

export interface ModelSettings {
  readonly factors: Factors;
  readonly adherendShear: boolean;
  /** Edge moment of flat single laps; Goland and Reissner when left out. */
  readonly edgeMoment?: 'goland-reissner' | 'hart-smith' | undefined;
}

/**
 * `min` and `max`: tolerance and offset together, taken all the way round. `thin-side` and
 * `thick-side`: the offset alone, where the tube stands nearest to its sleeve and farthest from it;
 * in a double lap the sides are those of the outer bond.
 */
export type GapState = 'min' | 'nominal' | 'max' | 'thin-side' | 'thick-side';
