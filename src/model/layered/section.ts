/** What one cross-section of a layered lap is made of. */
import type { Shell } from './shell.ts';

export interface LayerBond {
  /** Radius of mid-bond; the width of a flat joint. */
  readonly radius: number;
  readonly gap: number;
  readonly shearModulus: number;
  /** E′ of the constrained layer, MPa */
  readonly constrainedModulus: number;
  /** ν/(1 − ν): how far stretching the layer in its plane closes it, per strain */
  readonly contraction: number;
  /** E/(1 − ν²), MPa, ν and α·ΔT of the layer in its own plane */
  readonly planeModulus: number;
  readonly poisson: number;
  readonly freeStrain: number;
  /** Free growth of the layer itself across the gap, mm */
  readonly freeOpening: number;
  readonly shearYield: number;
}

/** Sign of the shear where a bond flows, 0 where it is elastic. */
export type FlowSigns = readonly number[];

export interface LayeredSection {
  readonly shells: readonly Shell[];
  readonly bonds: readonly LayerBond[];
  /** 1 over the overlap, 5/6 in a run-out. */
  readonly shearFactor: number;
}
