/** Random choices that a number gives again: each file of the fuzzer is known by the seed and its own number. */

export interface Random {
  /** From 0 to below 1. */
  next(): number;
  /** From 0 to below `n`. */
  below(n: number): number;
  pick<T>(list: readonly T[]): T;
  chance(share: number): boolean;
}

/** Mulberry32: small, quick, and the same everywhere. */
export function randomOf(seed: number, number: number): Random {
  let state = (Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(number + 1, 0xc2b2ae35)) >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return {
    next,
    below,
    pick: (list) => list[below(list.length)]!,
    chance: (share) => next() < share,
  };
}
