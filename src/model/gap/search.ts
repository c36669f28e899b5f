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

/** Part of a list that goes around: its first place and how many. */
export interface Stretch {
  readonly first: number;
  readonly count: number;
}

/** How many places of a rising list lie below an angle. */
function countBelow(places: readonly number[], angle: number): number {
  let [from, to] = [0, places.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (places[middle]! < angle) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** The places of a rising list around a turn that lie this near to an angle; less than half a turn. */
export function stretchAbout(places: readonly number[], at: number, half: number): Stretch {
  const n = places.length;
  const turn = 2 * Math.PI;
  const from = (((at - half) % turn) + turn) % turn;
  const to = from + 2 * half;
  const below = countBelow(places, from);
  const count =
    to > turn ? n - below + countBelow(places, to - turn) : countBelow(places, to) - below;
  return { first: below % n, count };
}

/**
 * Lowest value of a function around a turn, known to lie at a place of a rising list or between it
 * and its neighbours. The place wins where nothing between is lower.
 */
export function lowestBeside(
  f: (at: number) => number,
  places: ArrayLike<number>,
  { place, value }: { readonly place: number; readonly value: number },
): Lowest {
  const n = places.length;
  const before = places[place - 1] ?? places[n - 1]! - 2 * Math.PI;
  const after = places[place + 1] ?? places[0]! + 2 * Math.PI;
  const at = places[place]!;
  // The bottom of the parabola through the three: the functions here are smooth between two places.
  const [left, right] = [(f(before) - value) / (before - at), (f(after) - value) / (after - at)];
  const bend = (right - left) / (after - before);
  if (!(bend > 0)) return { at, value };
  const lowest = at - (left - bend * (before - at)) / (2 * bend);
  if (!(lowest > before && lowest < after)) return { at, value };
  const found = f(lowest);
  return found < value - 1e-10 ? { at: lowest, value: found } : { at, value };
}

/** Lower by more than the last digit: ties go to the first place. */
export const isLower = (here: number, value: number): boolean => here < value - 1e-12;
