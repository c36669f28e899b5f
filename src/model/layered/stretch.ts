/**
 * A stretch of the lap by its end stiffness: forces at both ends from displacements at both ends,
 *
 *   f0 = k00·d0 + k01·d1 + p0     f1 = k10·d0 + k11·d1 + p1
 *
 * f the internal forces in the sense of layeredSystem, at both ends, and p what temperature and flow
 * add. Two stretches joined end to end make one, their middle condensed: joining equal ones again
 * and again ("doubling") covers any length from a short exact piece. No growing exponential appears.
 */
import { addProduct, block, type Matrix, solveDense } from '../numerics/dense.ts';
import {
  type Balanced,
  balance,
  LONGEST_STEP,
  readingsOf,
  type Series,
  seriesOf,
  stateAt,
  type Transfer,
  transferOver,
} from './exponential.ts';
import { type Readings, read } from './readings.ts';

/** Forces at each end by rows over (d0, d1, share): half × (2·half + 1). */
export interface EndStiffness {
  /** k00, k01, p0 */
  readonly start: Matrix;
  /** k10, k11, p1 */
  readonly end: Matrix;
}

/** @typeParam What how what is to be read of its states is told */
export interface Stretch<What = Readings> {
  readonly length: number;
  readonly half: number;
  readonly ends: EndStiffness;
  /**
   * States at places from the stretch's start, in rising order: what is asked for of them, or y = (d, f) as a whole.
   * @param acting displacements of both ends and the share of the loads p that acts
   * @param see called with the index of each place of `span` and what is read there
   */
  sample(span: Span, acting: Acting, see: See, what?: What): void;
}

/** `values` may be the same array at the next place: copy what is to be kept. */
export type See = (place: number, values: Matrix) => void;

/** Displacements at both ends of one stretch, with what has been found from them: it serves all places. */
export class Acting {
  /** Of the two stretches that it is joined of. */
  parts: readonly [Acting, Acting] | null = null;
  series: Series | null = null;
  read: { readonly what: Readings; readonly series: Series } | null = null;
  readonly d0: Matrix;
  readonly d1: Matrix;
  /** Of the loads p: 1, or 0 for the mechanical part alone. */
  readonly share: number;

  constructor(d0: Matrix, d1: Matrix, share: number) {
    this.d0 = d0;
    this.d1 = d1;
    this.share = share;
  }
}

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
  const ends = endStiffness(transferOver(balanced, length), half);
  const seriesFrom = (acting: Acting): Series => {
    acting.series ??= seriesOf(balanced, stateAtStart(ends, acting), acting.share, length);
    return acting.series;
  };
  const readFrom = (acting: Acting, what: Readings): Series => {
    if (acting.read?.what !== what) {
      acting.read = { what, series: readingsOf(seriesFrom(acting), what, acting.share) };
    }
    return acting.read.series;
  };
  return {
    length,
    half,
    ends,
    sample: ({ x, from, to, start }, acting, see, what) => {
      const isShort = what !== undefined && saves(what, to - from, 2 * half);
      const series = isShort ? readFrom(acting, what) : seriesFrom(acting);
      const values = new Float64Array(series.size);
      for (let i = from; i < to; i++) {
        stateAt(series, Math.min(Math.max((x[i]! - start) / length, 0), 1), values);
        see(i, what && !isShort ? read(what, values, acting.share) : values);
      }
    },
  };
}

/** True where it takes less to make the series of what is read than to read the state at each place. */
const saves = ({ count }: Readings, places: number, size: number): boolean =>
  count * size < places * (size - count);

/** The same stretch, asked in another way for what it reads. */
export const readBy = <What>(stretch: Stretch, what: (asked: What) => Readings): Stretch<What> => ({
  ...stretch,
  sample: (span, acting, see, asked) =>
    stretch.sample(span, acting, see, asked === undefined ? undefined : what(asked)),
});

/** From d1 = Tdd·d0 + Tdf·f0 + td and f1 = Tfd·d0 + Tff·f0 + tf. */
function endStiffness({ matrix: t, load }: Transfer, half: number): EndStiffness {
  const size = 2 * half;
  const width = size + 1;
  const start = new Float64Array(half * width);
  const end = new Float64Array(half * width);
  for (let i = 0; i < half; i++) {
    for (let j = 0; j < half; j++) {
      start[i * width + j] = -t[i * size + j]!;
      end[i * width + j] = t[(half + i) * size + j]!;
    }
    start[i * width + half + i] = 1;
    start[i * width + size] = -load[i]!;
    end[i * width + size] = load[half + i]!;
  }
  solveDense(block(t, size, 0, half, half, half), start, half, width);
  addProduct(end, block(t, size, half, half, half, half), start, half, half, width);
  return { start, end };
}

/** The state y = (d, f) at the start of a stretch. */
export function stateAtStart({ start }: EndStiffness, acting: Acting): Matrix {
  const half = acting.d0.length;
  const y = new Float64Array(2 * half);
  y.set(acting.d0);
  y.set(fromEnds(start, acting), half);
  return y;
}

/** What rows over (d0, d1, share) give. */
function fromEnds(rows: Matrix, { d0, d1, share }: Acting): Matrix {
  const half = d0.length;
  const width = 2 * half + 1;
  const out = new Float64Array(half);
  for (let i = 0; i < half; i++) {
    const at = i * width;
    let sum = share * rows[at + 2 * half]!;
    for (let j = 0; j < half; j++) sum += rows[at + j]! * d0[j]! + rows[at + half + j]! * d1[j]!;
    out[i] = sum;
  }
  return out;
}

/** Two stretches end to end, the first one's end being the second one's start. */
export function join<What>(first: Stretch<What>, second: Stretch<What>): Stretch<What> {
  const { half } = first;
  const size = 2 * half;
  const width = size + 1;
  const [a, b] = [first.ends, second.ends];
  // (k11a − k00b)·dm = −k10a·d0 + k01b·d1 + (p0b − p1a)
  const stiffness = new Float64Array(half * half);
  const middle = new Float64Array(half * width);
  const start = new Float64Array(half * width);
  const end = new Float64Array(half * width);
  for (let i = 0; i < half; i++) {
    const at = i * width;
    for (let j = 0; j < half; j++) {
      stiffness[i * half + j] = a.end[at + half + j]! - b.start[at + j]!;
      middle[at + j] = -a.end[at + j]!;
      middle[at + half + j] = b.start[at + half + j]!;
      start[at + j] = a.start[at + j]!;
      end[at + half + j] = b.end[at + half + j]!;
    }
    middle[at + size] = b.start[at + size]! - a.end[at + size]!;
    start[at + size] = a.start[at + size]!;
    end[at + size] = b.end[at + size]!;
  }
  solveDense(stiffness, middle, half, width);
  addProduct(start, a.start, middle, half, half, width, width, half);
  addProduct(end, b.end, middle, half, half, width, width, 0);
  const partsOf = (acting: Acting): readonly [Acting, Acting] => {
    if (!acting.parts) {
      const { d0, d1, share } = acting;
      const dm = fromEnds(middle, acting);
      acting.parts = [new Acting(d0, dm, share), new Acting(dm, d1, share)];
    }
    return acting.parts;
  };
  return {
    length: first.length + second.length,
    half,
    ends: { start, end },
    sample: ({ x, from, to, start: origin }, acting, see, what) => {
      const [before, after] = partsOf(acting);
      const middleAt = origin + first.length;
      let split = from;
      while (split < to && x[split]! < middleAt) split++;
      if (split > from) first.sample({ x, from, to: split, start: origin }, before, see, what);
      if (split < to) second.sample({ x, from: split, to, start: middleAt }, after, see, what);
    },
  };
}

/** Any number of stretches in a row, joined in a balanced tree. */
export function joinAll<What>(stretches: readonly Stretch<What>[]): Stretch<What> {
  if (stretches.length === 1) return stretches[0]!;
  const middle = stretches.length >> 1;
  return join(joinAll(stretches.slice(0, middle)), joinAll(stretches.slice(middle)));
}
