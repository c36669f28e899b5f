/** Shear of the bonds from the slips between their faces, all bonds of a section together. */
import { type Matrix, solveDense } from '../numerics/dense.ts';
import type { FlowSigns, LayeredSection } from './section.ts';

/**
 * Slip of each bond as a row over d.
 * @param each unknowns of a wall: u, w, φ, and v in the first harmonic
 */
export function slips({ shells, bonds }: LayeredSection, each: 3 | 4 = 3): Matrix {
  const half = each * shells.length;
  const slip = new Float64Array(bonds.length * half);
  bonds.forEach((bond, j) => {
    const inner = shells[j]!;
    const outer = shells[j + 1]!;
    const row = j * half;
    slip[row + each * j] = -1;
    slip[row + each * j + 2] = (inner.thickness + bond.gap) / 2 + inner.offset;
    slip[row + each * (j + 1)] = 1;
    slip[row + each * (j + 1) + 2] = (outer.thickness + bond.gap) / 2 - outer.offset;
  });
  return slip;
}

/** Shear flexibility of the bonds together, with the warping of the walls between and beside them. */
export function slipFlexibility({ shells, bonds }: LayeredSection): Matrix {
  const count = bonds.length;
  const c = new Float64Array(count * count);
  const warp = (i: number): number => shells[i]!.thickness / (12 * shells[i]!.throughShear);
  bonds.forEach((bond, j) => {
    c[j * count + j] = bond.gap / bond.shearModulus + warp(j) + warp(j + 1);
    if (j + 1 < count) {
      c[j * count + j + 1] = -warp(j + 1);
      c[(j + 1) * count + j] = -warp(j + 1);
    }
  });
  return c;
}

/** Shear of the bonds as stiffness·Δs + fixed; where a bond flows its shear is given. */
export function shearLaw(
  section: LayeredSection,
  flow: FlowSigns,
): { stiffness: Matrix; fixed: Matrix } {
  const count = section.bonds.length;
  const c = slipFlexibility(section);
  const a = new Float64Array(count * count);
  const right = new Float64Array(count * (count + 1));
  section.bonds.forEach((bond, j) => {
    if (flow[j] === 0) {
      for (let k = 0; k < count; k++) a[j * count + k] = c[j * count + k]!;
      right[j * (count + 1) + j] = 1;
    } else {
      a[j * count + j] = 1;
      right[j * (count + 1) + count] = flow[j]! * bond.shearYield;
    }
  });
  solveDense(a, right, count, count + 1);
  const stiffness = new Float64Array(count * count);
  const fixed = new Float64Array(count);
  for (let j = 0; j < count; j++) {
    for (let k = 0; k < count; k++) stiffness[j * count + k] = right[j * (count + 1) + k]!;
    fixed[j] = right[j * (count + 1) + count]!;
  }
  return { stiffness, fixed };
}
