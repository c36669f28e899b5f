/** Forces of one wall from the state of a section. */
import type { Matrix } from '../numerics/dense.ts';
import type { LayerPull } from './layer-pull.ts';
import type { Shell } from './shell.ts';

/** One wall at x: line forces per length of arc (width) of its middle, and its moment about its middle. */
export interface WallForces {
  readonly axial: number;
  readonly hoop: number;
  readonly moment: number;
}

/** Where a wall's unknowns stand in y = (d, f). */
export interface WallPlace {
  readonly half: number;
  /** Unknowns of a wall: u, w, φ, and v in the first harmonic. */
  readonly each: 3 | 4;
  readonly wall: number;
}

/**
 * @param pull what the layers on its faces carry of n and m, where temperature acts
 * @param share of temperature that acts in y
 */
export function wallForces(
  shell: Shell,
  y: Matrix,
  { half, each, wall }: WallPlace,
  pull: LayerPull,
  share: number,
): WallForces {
  const at = each * wall;
  const axial = (y[half + at]! - share * pull.n) / shell.radius;
  const moment = (y[half + at + 2]! - share * pull.m) / shell.radius + shell.offset * axial;
  if (shell.flat) return { axial, hoop: 0, moment };
  const ratio = shell.cxt / shell.cxx;
  const own = shell.ctt - ratio * shell.cxt;
  const around = y[at + 1]! + (each === 4 ? y[at + 3]! : 0);
  return {
    axial,
    hoop: ratio * axial + own * (around / shell.radius - share * shell.freeHoop),
    moment,
  };
}
