/** Peel of the bonds from how far they are opened. */
import { type Matrix, multiply, solveDense } from '../numerics/dense.ts';
import { layerPulls } from './layer-pull.ts';
import type { LayeredSection } from './section.ts';
import { commonWidthStrain } from './shell.ts';

/**
 * Shares of a wall's t/E3 that the opening of a bond feels: of peel on the same face, and of peel on the
 * other. A thick wall under a uniform pull on one face would have 3/8, on both 1/2 together; under
 * peel that turns within a length like its thickness it has less. Set by the finite-element models of
 * the verification book; the same values serve all of them.
 */
const WALL_SHARE = 1 / 4;
const ACROSS_SHARE = 1 / 8;

/** Openings of the bonds per peel, mm/MPa: h/E′ and the walls' own shares. */
export function openingFlexibility({ shells, bonds }: LayeredSection): Matrix {
  const count = bonds.length;
  const flexibility = new Float64Array(count * count);
  bonds.forEach(({ gap, constrainedModulus }, j) => {
    const walls = shells[j]!.throughFlexibility + shells[j + 1]!.throughFlexibility;
    flexibility[j * count + j] = gap / constrainedModulus + WALL_SHARE * walls;
    if (j + 1 < count) {
      const across = ACROSS_SHARE * shells[j + 1]!.throughFlexibility;
      flexibility[j * count + j + 1] = across;
      flexibility[(j + 1) * count + j] = across;
    }
  });
  return flexibility;
}

/** Peel of the bonds from their openings, MPa/mm: the inverse of their flexibility. */
export function normalStiffness(section: LayeredSection): Matrix {
  const count = section.bonds.length;
  const stiffness = new Float64Array(count * count);
  for (let j = 0; j < count; j++) stiffness[j * count + j] = 1;
  return solveDense(openingFlexibility(section), stiffness, count, count);
}

/**
 * Peel of each bond as a row over y.
 * @param each unknowns of a wall: u, w, φ, and v in the first harmonic
 */
export function peelLaw(section: LayeredSection, each: 3 | 4 = 3): Rows {
  const { rows, fixed } = openings(section, each);
  const count = section.bonds.length;
  const stiffness = normalStiffness(section);
  return {
    rows: multiply(stiffness, rows, count, count, 2 * each * section.shells.length),
    fixed: multiply(stiffness, fixed, count, count, 1),
  };
}

/** Rows over y with a constant that temperature adds. */
export interface Rows {
  readonly rows: Matrix;
  readonly fixed: Matrix;
}

/**
 * What strains each bond across, as rows over y:
 *
 *   w₊ − w₋ − (growth of the half walls on both sides) + h·ν/(1 − ν)·(ε_x + ε_θ) − h·αa·ΔT·(1 + ν)/(1 − ν)
 *
 * A wall under stress gets thinner and pulls the bond open; a layer that is stretched with its walls
 * wants to close and cannot. Both matter where the strain changes quickly, at the ends.
 */
function openings(section: LayeredSection, each: 3 | 4): Rows {
  const { shells, bonds } = section;
  const pulls = layerPulls(section);
  const half = each * shells.length;
  const size = 2 * half;
  const rows = new Float64Array(bonds.length * size);
  const fixed = new Float64Array(bonds.length);
  // Strain around: w/R, or that of the whole width of a flat joint.
  const width = shells[0]!.flat ? commonWidthStrain(shells) : 0;
  bonds.forEach((bond, j) => {
    const row = j * size;
    rows[row + each * j + 1] = -1;
    rows[row + each * (j + 1) + 1] = 1;
    fixed[j] = -bond.freeOpening;
    for (const [i, side] of [
      [j, 1],
      [j + 1, -1],
    ] as const) {
      const shell = shells[i]!;
      const { radius, thickness: t, offset } = shell;
      const [w, n, m] = [row + each * i + 1, row + half + each * i, row + half + each * i + 2];
      // In the first harmonic v adds to w in the strain around.
      const around = each === 3 ? [w] : [w, w + 2];
      const ratio = shell.cxt / shell.cxx;
      const own = shell.ctt - ratio * shell.cxt;
      // Half a wall thins by t/2·(thinAxial·σx + thinHoop·σθ), σx = N/t − side·3M/t², M = (m + offset·n)/R.
      const byForce = (shell.thinAxial + shell.thinHoop * ratio) / (2 * radius);
      const byMoment = (-side * 1.5 * shell.thinAxial) / (t * radius);
      const pull = pulls[i]!;
      rows[n]! += byForce + byMoment * offset;
      rows[m]! += byMoment;
      fixed[j]! -= byForce * pull.n + byMoment * (pull.m + offset * pull.n);
      for (const at of shell.flat ? [] : around) rows[at]! += (shell.thinHoop * own) / (2 * radius);
      fixed[j]! += (shell.thinHoop * own * (width - shell.freeHoop)) / 2 - shell.freeHalfThickness;
      // The layer's strain is the mean of its two faces': half of each, ε_x = u′ − side·t/2·φ′, ε_θ = w/R.
      const closing = (bond.gap * bond.contraction) / 2;
      const bend = (-side * t) / (2 * radius * shell.bending);
      rows[n]! += closing * (1 / (radius * shell.cxx) + bend * offset);
      rows[m]! += closing * bend;
      for (const at of shell.flat ? [] : around) rows[at]! += (closing * (1 - ratio)) / radius;
      fixed[j]! +=
        closing *
        (shell.freeAxial -
          ratio * (width - shell.freeHoop) -
          pull.n / (radius * shell.cxx) -
          bend * (pull.m + offset * pull.n));
    }
  });
  return { rows, fixed };
}
