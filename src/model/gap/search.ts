/** The lowest place of a function around a turn: a grid, then the golden section about its lowest point. */

const GOLDEN = (Math.sqrt(5) - 1) / 2;

export interface Lowest {
  readonly at: number;
  readonly value: number;
}

/** Lowest value between two places; the function has one trough there. */
export function lowestBetween(
  f: (at: number) => number,
  from: number,
  to: number,
  steps = 40,
): Lowest {
  let [a, b] = [from, to];
  let c = b - GOLDEN * (b - a);
  let d = a + GOLDEN * (b - a);
  let [fc, fd] = [f(c), f(d)];
  for (let i = 0; i < steps; i++) {
    if (fc < fd) {
      b = d;
      [d, fd] = [c, fc];
      c = b - GOLDEN * (b - a);
      fc = f(c);
    } else {
      a = c;
      [c, fc] = [d, fd];
      d = a + GOLDEN * (b - a);
      fd = f(d);
    }
  }
  return fc < fd ? { at: c, value: fc } : { at: d, value: fd };
}

/**
 * Lowest value at the places of a rising list that goes around a whole turn, and between the
 * neighbours of the lowest. A place of the list wins where nothing between is lower.
 * @param atPlace the function at the list's own places, where that is cheaper
 * @param between whether to look between the places too
 */
export function lowestAround(
  f: (at: number) => number,
  places: readonly number[],
  atPlace: (i: number) => number = (i) => f(places[i]!),
  between = true,
): Lowest {
  let best = 0;
  let value = Number.POSITIVE_INFINITY;
  for (let i = 0; i < places.length; i++) {
    const here = atPlace(i);
    // Ties go to the first place, whatever the last digit says.
    if (here < value - 1e-12) [best, value] = [i, here];
  }
  if (!between) return { at: places[best]!, value };
  const n = places.length;
  const before = places[best - 1] ?? places[n - 1]! - 2 * Math.PI;
  const after = places[best + 1] ?? places[0]! + 2 * Math.PI;
  const at = places[best]!;
  for (const found of [lowestBetween(f, before, at), lowestBetween(f, at, after)]) {
    if (found.value < value - 1e-10) return found;
  }
  return { at, value };
}
