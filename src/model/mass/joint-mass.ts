/**
 * Volumes and masses of a joint over its overlap, and how many layers its sleeve takes to print.
 *
 *   wall       V = ∫ A dx        A is a parabola in x where the wall tapers: Simpson's rule is exact
 *   adhesive   V = c·h·L         c = 2πρ at mid-bond (flat: b), so that it is the exact ring
 *
 * What lies behind the root or past the mouth is not the joint's: it is left out.
 */
import type { Assembly, Part } from '../joint/assembly.ts';

/** Densities in kg/m³; undefined where they are not known. */
export interface Densities {
  readonly tube: number | undefined;
  /** In the order of the assembly's outer walls. */
  readonly outers: readonly (number | undefined)[];
  readonly adhesive: number | undefined;
}

/** A part's volume, mm³, and mass, g; null where the density is not known. */
export interface PartMass {
  readonly part: string;
  readonly volume: number;
  readonly mass: number | null;
}

export interface JointMass {
  readonly tube: PartMass;
  readonly walls: readonly PartMass[];
  readonly bonds: readonly PartMass[];
  /** What the joint adds to the bare tube: sleeve walls and adhesive over the overlap, g. */
  readonly added: number | null;
}

/** g per mm³ of 1 kg/m³. */
const GRAMS = 1e-6;

export const wallVolume = ({ root, middle, mouth }: Part, overlap: number): number =>
  (overlap * (root.area + 4 * middle.area + mouth.area)) / 6;

const massOf = (part: string, volume: number, density: number | undefined): PartMass => ({
  part,
  volume,
  mass: density === undefined ? null : volume * density * GRAMS,
});

export function jointMass(assembly: Assembly, densities: Densities): JointMass {
  const { overlap, tube, outers, bonds } = assembly;
  const walls = outers.map((part, i) =>
    massOf(part.name, wallVolume(part, overlap), densities.outers[i]),
  );
  const adhesive = bonds.map(({ name, width, gap }) =>
    massOf(name, width * gap * overlap, densities.adhesive),
  );
  const masses = [...walls, ...adhesive].map(({ mass }) => mass);
  return {
    tube: massOf(tube.name, wallVolume(tube, overlap), densities.tube),
    walls,
    bonds: adhesive,
    added: masses.some((mass) => mass === null)
      ? null
      : masses.reduce<number>((sum, mass) => sum + mass!, 0),
  };
}

/** Of a usual layer, mm, and what a print usually does not exceed (common practice, no source). */
export const USUAL_LAYER = 0.06;
export const MOST_LAYERS = 2500;
export const TALLEST_PRINT = 150;

export interface Print {
  /** Height that is printed, mm: the overlap and what stands under it. */
  readonly height: number;
  readonly layers: number;
  /** True when that is more than a print usually is. */
  readonly tall: boolean;
}

/** Layers of a sleeve printed along its axis, rounded up. Sizes in mm. */
export function printOf(overlap: number, layerThickness: number, base: number): Print {
  const height = overlap + base;
  // A height that is whole layers but for rounding is not one layer more.
  const layers = Math.ceil(height / layerThickness - 1e-9);
  return { height, layers, tall: layers > MOST_LAYERS || height > TALLEST_PRINT };
}
