/** Measured surfaces for tests: round, tapered or oval, on grids of any kind. */
import type { MeasuredBond, MeasuredJoint, MeasuredSurface } from '../../src/model/gap/types.ts';

export const DEGREE = Math.PI / 180;
/** Places in mm from the mouth, clockings in degrees. */
export interface Grid {
  readonly stations?: readonly number[];
  readonly clockings?: readonly number[];
  readonly error?: number;
  readonly repeatability?: number;
}

/** @param diameter at a station, mm, and a clocking, radians */
export function surface(
  diameter: number | ((x: number, theta: number) => number),
  { stations = [4, 18, 32], clockings = [0, 60, 120], error = 0, repeatability = 0 }: Grid = {},
): MeasuredSurface {
  const at = typeof diameter === 'number' ? () => diameter : diameter;
  const turned = clockings.map((angle) => angle * DEGREE);
  return {
    stations,
    clockings: turned,
    diameters: stations.map((x) => turned.map((theta) => at(x, theta))),
    error,
    repeatability,
  };
}

export const bond = (
  inside: MeasuredSurface,
  outside: MeasuredSurface,
  tubeInside = true,
): MeasuredBond => ({ inside, outside, tubeInside });

export const joint = (
  bonds: readonly MeasuredBond[],
  holding: Partial<MeasuredJoint['holding']> = {},
  overlap = 36,
): MeasuredJoint => ({
  overlap,
  bonds,
  holding: { spacer: 0, offset: Number.POSITIVE_INFINITY, ...holding },
});
