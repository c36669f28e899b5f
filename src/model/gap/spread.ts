/**
 * How uncertain a weighted sum of readings is, by the law of propagation of uncertainty (JCGM
 * 100:2008, "Guide to the expression of uncertainty in measurement", 5.1 and 5.2): root of the sum of
 * squares. The readings of one surface share the error of their instrument, uniform between −a and +a,
 * standard uncertainty a/√3 (4.3.7), and have a scatter of their own, s:
 *
 *   u² = Σ over surfaces [ (Σ w)²·a²/3 + Σ w²·s² ]
 *
 * The instruments of two surfaces count as independent. One that reads both would err alike on both,
 * and part of its error would cancel: taken so, the uncertainty is not too small.
 */
import type { MeasuredSurface } from './types.ts';

/** Weights of the readings of a surface: one for each station times one for each clocking. */
export interface ReadingWeights {
  readonly surface: MeasuredSurface;
  readonly along: readonly number[];
  readonly around: readonly number[];
}

const sum = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0);
const squares = (list: readonly number[]): number =>
  list.reduce((total, value) => total + value * value, 0);

/** @param weights no surface twice */
export function standardUncertainty(weights: readonly ReadingWeights[]): number {
  const variance = weights.reduce((total, { surface, along, around }) => {
    const shared = (sum(along) * sum(around) * surface.error) ** 2 / 3;
    const own = squares(along) * squares(around) * surface.repeatability ** 2;
    return total + shared + own;
  }, 0);
  return Math.sqrt(variance);
}

/** Weights at one section of which some stand on the same surface, added up. */
export function joined(list: readonly ReadingWeights[]): readonly ReadingWeights[] {
  const bySurface = new Map<MeasuredSurface, ReadingWeights>();
  for (const one of list) {
    const known = bySurface.get(one.surface);
    bySurface.set(
      one.surface,
      known ? { ...one, around: one.around.map((w, j) => w + known.around[j]!) } : one,
    );
  }
  return [...bySurface.values()];
}
