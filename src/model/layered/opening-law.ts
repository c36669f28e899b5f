/** Peel of the bonds from how far they are opened. */
import type { Matrix } from '../numerics/dense.ts';
import { layerPulls } from './layer-pull.ts';
import type { LayeredSection } from './section.ts';

/**
 * Share of each wall's t/E3 that the opening of a bond feels. A thick wall under a uniform pull would
 * have 3/8; under peel that turns within a length like its thickness it has less. Set by the
 * finite-element models of the verification book; one value serves all of them.
 */
const WALL_SHARE = 0.25;

/** Normal stiffness k_n of bond j, MPa/mm: 1/k_n = h/E′ + share·Σ t/E3. */
export function normalStiffness({ shells, bonds }: LayeredSection, j: number): number {
  const { gap, constrainedModulus } = bonds[j]!;
  const walls = shells[j]!.throughFlexibility + shells[j + 1]!.throughFlexibility;
  return 1 / (gap / constrainedModulus + WALL_SHARE * walls);
}

/** Rows over y with a constant that temperature adds. */
interface Rows {
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
export function openings(section: LayeredSection): Rows {
  const { shells, bonds } = section;
  const pulls = layerPulls(section);
  const half = 3 * shells.length;
  const size = 2 * half;
  const rows = new Float64Array(bonds.length * size);
  const fixed = new Float64Array(bonds.length);
  bonds.forEach((bond, j) => {
    const row = j * size;
    rows[row + 3 * j + 1] = -1;
    rows[row + 3 * j + 4] = 1;
    fixed[j] = -bond.freeOpening;
    for (const [i, side] of [
      [j, 1],
      [j + 1, -1],
    ] as const) {
      const shell = shells[i]!;
      const { radius, thickness: t, offset } = shell;
      const [w, n, m] = [row + 3 * i + 1, row + half + 3 * i, row + half + 3 * i + 2];
      const ratio = shell.cxt / shell.cxx;
      const own = shell.flat ? 0 : shell.ctt - ratio * shell.cxt;
      // Half a wall thins by t/2·(thinAxial·σx + thinHoop·σθ), σx = N/t − side·3M/t², M = (m + offset·n)/R.
      const byForce = (shell.thinAxial + shell.thinHoop * ratio) / (2 * radius);
      const byMoment = (-side * 1.5 * shell.thinAxial) / (t * radius);
      const pull = pulls[i]!;
      rows[n]! += byForce + byMoment * offset;
      rows[m]! += byMoment;
      fixed[j]! -= byForce * pull.n + byMoment * (pull.m + offset * pull.n);
      rows[w]! += (shell.thinHoop * own) / (2 * radius);
      fixed[j]! -= (shell.thinHoop * own * shell.freeHoop) / 2 + shell.freeHalfThickness;
      // The layer's strain is the mean of its two faces': half of each, ε_x = u′ − side·t/2·φ′, ε_θ = w/R.
      const closing = (bond.gap * bond.contraction) / 2;
      const bend = (-side * t) / (2 * radius * shell.bending);
      rows[n]! += closing * (1 / (radius * shell.cxx) + bend * offset);
      rows[m]! += closing * bend;
      if (!shell.flat) rows[w]! += (closing * (1 - ratio)) / radius;
      fixed[j]! +=
        closing *
        (shell.freeAxial +
          ratio * shell.freeHoop -
          pull.n / (radius * shell.cxx) -
          bend * (pull.m + offset * pull.n));
    }
  });
  return { rows, fixed };
}
