/**
 * A stretch of the lap by its end stiffness: forces at both ends from displacements at both ends,
 *
 *   f0 = k00·d0 + k01·d1 + p0     f1 = k10·d0 + k11·d1 + p1
 *
 * f the internal forces in the sense of layeredSystem, at both ends, and p what temperature and flow
 * add. Two stretches joined end to end make one, their middle condensed: joining equal ones again
 * and again ("doubling") covers any length from a short exact piece. No growing exponential appears.
 */
import { block, type Matrix, multiply, solveDense } from '../numerics/dense.ts';
import {
  type Balanced,
  balance,
  LONGEST_STEP,
  type Series,
  seriesOf,
  stateAt,
  transferOver,
} from './exponential.ts';

export interface EndStiffness {
  readonly k00: Matrix;
  readonly k01: Matrix;
  readonly k10: Matrix;
  readonly k11: Matrix;
  readonly p0: Matrix;
  readonly p1: Matrix;
}

export interface Stretch {
  readonly length: number;
  readonly half: number;
  readonly ends: EndStiffness;
  /**
   * States y = (d, f) at places from the stretch's start, in rising order.
   * @param share of the loads p that acts: 1, or 0 for the mechanical part alone
   * @param see called with the index of each place of `span` and its state
   */
  sample(span: Span, d0: Matrix, d1: Matrix, share: number, see: See): void;
}

/** y is the same array at the next place: copy what is to be kept. */
export type See = (index: number, y: Matrix) => void;

/** Places x[from] … x[to − 1], measured from `start`. */
export interface Span {
  readonly x: readonly number[];
  readonly from: number;
  readonly to: number;
  readonly start: number;
}

/** A stretch of constant coefficients, of any length. */
export const uniformStretch = (a: Matrix, g: Matrix, length: number): Stretch =>
  balancedStretch(balance(a, g), length);

export function balancedStretch(balanced: Balanced, length: number): Stretch {
  const doublings = Math.max(0, Math.ceil(Math.log2((balanced.rate * length) / LONGEST_STEP)));
  let stretch = shortStretch(balanced, length / 2 ** doublings);
  for (let i = 0; i < doublings; i++) stretch = join(stretch, stretch);
  return stretch;
}

function shortStretch(balanced: Balanced, length: number): Stretch {
  const half = balanced.size / 2;
  const { matrix, load } = transferOver(balanced, length);
  const ends = endStiffness(matrix, half);
  // d1 = Tdd·d0 + Tdf·f0 + td with d0 = d1 = 0 leaves f0 = −Tdf⁻¹·td.
  const p0 = multiply(ends.k01, load.slice(0, half), half, half, 1).map((value) => -value);
  const p1 = multiply(block(matrix, 2 * half, half, half, half, half), p0, half, half, 1);
  for (let i = 0; i < half; i++) p1[i]! += load[half + i]!;
  const whole: EndStiffness = { ...ends, p0, p1 };
  const seriesFrom = keptFor((d0, d1, share): Series => {
    const y = new Float64Array(2 * half);
    y.set(d0);
    y.set(endForce(whole.k00, d0, whole.k01, d1, whole.p0, share, half), half);
    return seriesOf(balanced, y, share, length);
  });
  return {
    length,
    half,
    ends: whole,
    sample: ({ x, from, to, start }, d0, d1, share, see) => {
      const series = seriesFrom(d0, d1, share);
      const y = new Float64Array(2 * half);
      for (let i = from; i < to; i++) {
        stateAt(series, Math.min(Math.max((x[i]! - start) / length, 0), 1), y);
        see(i, y);
      }
    },
  };
}

function endStiffness(t: Matrix, half: number): Omit<EndStiffness, 'p0' | 'p1'> {
  const size = 2 * half;
  const part = (row: number, column: number): Matrix =>
    block(t, size, row * half, column * half, half, half);
  const tff = part(1, 1);
  // f0 = Tdf⁻¹·(d1 − Tdd·d0)
  const right = new Float64Array(half * size);
  const tdd = part(0, 0);
  for (let i = 0; i < half; i++) {
    right[i * size + i] = 1;
    for (let j = 0; j < half; j++) right[i * size + half + j] = -tdd[i * half + j]!;
  }
  solveDense(part(0, 1), right, half, size);
  const k01 = block(right, size, 0, 0, half, half);
  const k00 = block(right, size, 0, half, half, half);
  const k11 = multiply(tff, k01, half, half, half);
  const k10 = multiply(tff, k00, half, half, half);
  const tfd = part(1, 0);
  for (let i = 0; i < k10.length; i++) k10[i]! += tfd[i]!;
  return { k00, k01, k10, k11 };
}

type FromEnds<T> = (d0: Matrix, d1: Matrix, share: number) => T;

/**
 * Keeps the last answer: a front is looked for at many places near each other, between the same ends.
 * What is given and what is answered must not be written into.
 */
function keptFor<T>(of: FromEnds<T>): FromEnds<T> {
  let known: { d0: Matrix; d1: Matrix; share: number; value: T } | null = null;
  return (d0, d1, share) => {
    if (known?.d0 !== d0 || known.d1 !== d1 || known.share !== share) {
      known = { d0, d1, share, value: of(d0, d1, share) };
    }
    return known.value;
  };
}

export function endForce(
  a: Matrix,
  d0: Matrix,
  b: Matrix,
  d1: Matrix,
  p: Matrix,
  share: number,
  half: number,
): Matrix {
  const out = new Float64Array(half);
  for (let i = 0; i < half; i++) {
    let sum = share * p[i]!;
    for (let j = 0; j < half; j++) sum += a[i * half + j]! * d0[j]! + b[i * half + j]! * d1[j]!;
    out[i] = sum;
  }
  return out;
}

/** Two stretches end to end, the first one's end being the second one's start. */
export function join(first: Stretch, second: Stretch): Stretch {
  const { half } = first;
  const [a, b] = [first.ends, second.ends];
  // (k11a − k00b)·dm = −k10a·d0 + k01b·d1 + (p0b − p1a)
  const middle = a.k11.map((value, i) => value - b.k00[i]!);
  const columns = 2 * half + 1;
  const right = new Float64Array(half * columns);
  for (let i = 0; i < half; i++) {
    for (let j = 0; j < half; j++) {
      right[i * columns + j] = -a.k10[i * half + j]!;
      right[i * columns + half + j] = b.k01[i * half + j]!;
    }
    right[i * columns + 2 * half] = b.p0[i]! - a.p1[i]!;
  }
  solveDense(middle, right, half, columns);
  const m0 = block(right, columns, 0, 0, half, half);
  const m1 = block(right, columns, 0, half, half, half);
  const mp = block(right, columns, 0, 2 * half, half, 1);
  const plus = (base: Matrix | null, k: Matrix, m: Matrix, width: number): Matrix => {
    const out = multiply(k, m, half, half, width);
    if (base) for (let i = 0; i < out.length; i++) out[i]! += base[i]!;
    return out;
  };
  const ends: EndStiffness = {
    k00: plus(a.k00, a.k01, m0, half),
    k01: plus(null, a.k01, m1, half),
    k10: plus(null, b.k10, m0, half),
    k11: plus(b.k11, b.k10, m1, half),
    p0: plus(a.p0, a.k01, mp, 1),
    p1: plus(b.p1, b.k10, mp, 1),
  };
  const middleOf = keptFor((d0, d1, share) => endForce(m0, d0, m1, d1, mp, share, half));
  return {
    length: first.length + second.length,
    half,
    ends,
    sample: ({ x, from, to, start }, d0, d1, share, see) => {
      const dm = middleOf(d0, d1, share);
      const middleAt = start + first.length;
      let split = from;
      while (split < to && x[split]! < middleAt) split++;
      if (split > from) first.sample({ x, from, to: split, start }, d0, dm, share, see);
      if (split < to) second.sample({ x, from: split, to, start: middleAt }, dm, d1, share, see);
    },
  };
}

/** Any number of stretches in a row, joined in a balanced tree. */
export function joinAll(stretches: readonly Stretch[]): Stretch {
  if (stretches.length === 1) return stretches[0]!;
  const middle = stretches.length >> 1;
  return join(joinAll(stretches.slice(0, middle)), joinAll(stretches.slice(middle)));
}
