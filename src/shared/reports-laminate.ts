/** What a stack of plies is as a wall. */
import type { Said } from './said.ts';

/** Rows 1, 2, 6 of a symmetric 3 × 3. */
export type Rows3 = readonly (readonly number[])[];

export interface LaminatePlane {
  readonly axialModulus: number;
  readonly hoopModulus: number;
  readonly shearModulus: number;
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
}

export interface LaminateReport {
  readonly adherendId: string;
  /** As written, in its shortest usual form. */
  readonly stack: string;
  readonly plies: readonly { readonly angle: number; readonly thickness: number }[];
  /** Thickness of the plies as they come, and of the wall that they were scaled to. */
  readonly plyThickness: number;
  readonly wall: number;
  readonly symmetric: boolean;
  readonly balanced: boolean;
  /** One sentence for each thing to know: not symmetric, not balanced, scaled to the wall. */
  readonly notes: readonly Said[];
  readonly a: Rows3;
  readonly b: Rows3;
  readonly d: Rows3;
  /** From A: where B ≠ 0 they hold the curvature suppressed. */
  readonly plane: LaminatePlane;
  /** B ≠ 0. */
  readonly curvatureHeld: boolean;
  /** Constants of the wall free to bend and twist, those that differ from `plane` by more than 1 %. */
  readonly free: Partial<LaminatePlane>;
  readonly bending: { readonly axialModulus: number; readonly hoopModulus: number };
  readonly through: {
    readonly modulus: number;
    readonly shearModulus: number;
    readonly expansion: number;
    readonly interlaminarTension: number;
    readonly interlaminarShear: number;
  };
}
