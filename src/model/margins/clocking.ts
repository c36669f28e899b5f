/**
 * Which clockings to look at. Force and torque are the same all round; moment is worst in its plane,
 * at 0° or 180°; with transverse shear, which is worst across that plane, the worst lies between.
 */
import type { Loads } from '../joint/types.ts';
import { findMinimum } from '../numerics/root.ts';

const STEP = Math.PI / 12;

/** Clockings from 0 to 2π at which a mode can be worst, before refinement. */
export function clockings(flat: boolean, loads: Loads): number[] {
  if (flat || (loads.moment === 0 && loads.shear === 0)) return [0];
  if (loads.shear === 0) return [0, Math.PI];
  return Array.from({ length: 24 }, (_v, i) => i * STEP);
}

/**
 * Local minima of a factor over the clockings, lowest first, refined where the loads need it.
 * @param at load factor at a clocking; Infinity where the mode is not reached
 */
export function worstClockings(
  flat: boolean,
  loads: Loads,
  at: (theta: number) => number,
): { theta: number; factor: number }[] {
  const thetas = clockings(flat, loads);
  const values = thetas.map((theta) => ({ theta, factor: at(theta) }));
  if (thetas.length <= 2) return values.sort((a, b) => a.factor - b.factor);
  const count = values.length;
  const dips = values.filter(({ factor }, i) => {
    const before = values[(i + count - 1) % count]!.factor;
    const after = values[(i + 1) % count]!.factor;
    return factor <= before && factor < after && Number.isFinite(factor);
  });
  // The same all round, as when temperature alone is enough: any clocking is the worst.
  if (dips.length === 0) return values.slice(0, 1);
  return dips
    .map(({ theta }) => {
      const refined = findMinimum(at, theta - STEP, theta + STEP, 1e-4);
      const turn = (refined + 2 * Math.PI) % (2 * Math.PI);
      return { theta: turn, factor: at(refined) };
    })
    .sort((a, b) => a.factor - b.factor);
}
