/** One wall of a flat lap, per unit of its width; wide, so that it bends as a plate. */
import { ModelError } from '../errors.ts';

export interface FlatAdherend {
  /** Thickness, mm. */
  readonly thickness: number;
  /** Force per unit width and unit strain, N/mm: Et/(1 − ν²) when it is homogeneous. */
  readonly membraneStiffness: number;
  /** Moment per unit width and unit curvature, N·mm: Et³/12(1 − ν²) when it is homogeneous. */
  readonly bendingStiffness: number;
}

/** A homogeneous wall in plane strain across its width. */
export function homogeneousAdherend(
  thickness: number,
  modulus: number,
  poisson: number,
): FlatAdherend {
  const membraneStiffness = (modulus * thickness) / (1 - poisson * poisson);
  return {
    thickness,
    membraneStiffness,
    bendingStiffness: (membraneStiffness * thickness * thickness) / 12,
  };
}

/** A number that a flat lap cannot do without. */
export function requirePositive(value: number, input: string): void {
  if (value > 0 && Number.isFinite(value)) return;
  throw new ModelError(input, `A flat lap needs a positive, finite ${input}; it is ${value}.`);
}

export function requireFinite(value: number, input: string): void {
  if (Number.isFinite(value)) return;
  throw new ModelError(input, `A flat lap needs a finite ${input}; it is ${value}.`);
}
