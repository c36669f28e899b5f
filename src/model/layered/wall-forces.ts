/** Forces of the walls from the state of a section. */
import type { LayerPull } from './layer-pull.ts';
import type { Readings } from './readings.ts';
import type { Shell } from './shell.ts';

/** One wall at x: line forces per length of arc (width) of its middle, and its moment about its middle. */
export interface WallForces {
  readonly axial: number;
  readonly hoop: number;
  readonly moment: number;
}

/** The same at many places. */
export type WallColumns = Readonly<Record<keyof WallForces, Float64Array>>;

export function wallColumns(places: number): WallColumns {
  const empty = (): Float64Array => new Float64Array(places);
  return { axial: empty(), hoop: empty(), moment: empty() };
}

/**
 * Axial and hoop force and moment of each wall in turn.
 * @param each unknowns of a wall: u, w, φ, and v in the first harmonic
 * @param pulls what the layers on their faces carry of n and m, where temperature acts
 */
export function wallReadings(
  shells: readonly Shell[],
  each: 3 | 4,
  pulls: readonly LayerPull[],
): Readings {
  const half = each * shells.length;
  const size = 2 * half;
  const count = 3 * shells.length;
  const rows = new Float64Array(count * size);
  const constants = new Float64Array(count);
  shells.forEach(({ radius, offset, flat, cxx, cxt, ctt, freeHoop }, i) => {
    const [axial, hoop, moment] = [3 * i, 3 * i + 1, 3 * i + 2];
    const [w, n, m] = [each * i + 1, half + each * i, half + each * i + 2];
    const pull = pulls[i]!;
    rows[axial * size + n] = 1 / radius;
    constants[axial] = -pull.n / radius;
    rows[moment * size + m] = 1 / radius;
    rows[moment * size + n] = offset / radius;
    constants[moment] = -(pull.m + offset * pull.n) / radius;
    if (flat) return;
    const ratio = cxt / cxx;
    const own = ctt - ratio * cxt;
    rows[hoop * size + n] = ratio / radius;
    // In the first harmonic v adds to w in the strain around.
    for (const around of each === 3 ? [w] : [w, w + 2]) rows[hoop * size + around] = own / radius;
    constants[hoop] = (-ratio * pull.n) / radius - own * freeHoop;
  });
  return { count, rows, constants };
}
