/**
 * y′ = A·y + g over a short length: the transfer matrix e^(Aℓ) with its particular part, by Taylor's
 * series in blocks, on balanced unknowns so that millimetres and newtons weigh alike.
 */
import { type Matrix, multiply, rowNorm } from '../numerics/dense.ts';
import { type Mirrored, mirroredExponential, mirroredOf } from './mirrored.ts';
import type { Readings } from './readings.ts';

/** Matrix and load in balanced unknowns z, y_i = scale_i·z_i. */
export interface Balanced {
  readonly size: number;
  readonly a: Matrix;
  readonly g: Matrix;
  readonly scale: Matrix;
  /** Largest row sum of the balanced matrix, 1/mm: how fast anything can change. */
  readonly rate: number;
  /** The entries of `a` that are not zero, a third of them at most: what a step along has to look at. */
  readonly sparse: Sparse;
  /** Where the section is its own mirror image along x. */
  readonly mirrored: Mirrored | null;
}

/** Row i has its entries at starts[i] … starts[i + 1] − 1, in rising columns. */
interface Sparse {
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly values: Matrix;
}

function sparseOf(a: Matrix, size: number): Sparse {
  const starts = new Int32Array(size + 1);
  const columns = new Int32Array(size * size);
  const values = new Float64Array(size * size);
  let count = 0;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      const value = a[i * size + j]!;
      if (value === 0) continue;
      columns[count] = j;
      values[count++] = value;
    }
    starts[i + 1] = count;
  }
  return { starts, columns: columns.slice(0, count), values: values.slice(0, count) };
}

const SWEEPS = 8;

export function balance(a: Matrix, g: Matrix): Balanced {
  const size = g.length;
  const balanced = Float64Array.from(a);
  const scale = new Float64Array(size).fill(1);
  for (let sweep = 0, changed = true; sweep < SWEEPS && changed; sweep++) {
    changed = false;
    for (let i = 0; i < size; i++) {
      let row = 0;
      let column = 0;
      for (let j = 0; j < size; j++) {
        if (i === j) continue;
        row += Math.abs(balanced[i * size + j]!);
        column += Math.abs(balanced[j * size + i]!);
      }
      if (row === 0 || column === 0) continue;
      // Powers of two change no digit.
      const factor = 2 ** Math.round(Math.log2(row / column) / 2);
      if (factor === 1) continue;
      changed = true;
      scale[i]! *= factor;
      for (let j = 0; j < size; j++) {
        balanced[i * size + j]! /= factor;
        balanced[j * size + i]! *= factor;
      }
    }
  }
  return {
    size,
    a: balanced,
    g: g.map((value, i) => value / scale[i]!),
    scale,
    rate: rowNorm(balanced, size),
    sparse: sparseOf(balanced, size),
    mirrored: mirroredOf(balanced, size),
  };
}

/** Longest step for the series below, as rate·length. */
const SERIES_STEP = 0.5;
/**
 * Longest step of a transfer: squared four times from the series'. Rates are row sums, several times
 * what grows, so nothing grows by more than a few times over a step; and the longer the first piece,
 * the fewer joins, each of which costs a soft joint (a long flat lap that bends as a whole) some digits.
 */
export const LONGEST_STEP = 16 * SERIES_STEP;

/** How often the series' step is to be doubled for a length; four times for the longest. */
const squaringsFor = ({ rate }: Balanced, length: number): number =>
  Math.max(0, Math.ceil(Math.log2((rate * length) / SERIES_STEP)));

/** 1/k! to k = 15: 0.5^16/16! is below rounding. */
const INVERSE_FACTORIAL: number[] = [1];
for (let k = 1; k < 16; k++) INVERSE_FACTORIAL.push(INVERSE_FACTORIAL[k - 1]! / k);

export interface Transfer {
  /** e^(Aℓ), unbalanced. */
  readonly matrix: Matrix;
  /** What g adds over the length. */
  readonly load: Matrix;
}

/** e^(Aℓ) of any matrix, by Taylor's series in blocks. */
function exponentialOf({ size, a }: Balanced, length: number, squarings: number): Matrix {
  const x = new Float64Array(size * size);
  for (let i = 0; i < x.length; i++) x[i] = (a[i]! * length) / 2 ** squarings;
  const x2 = multiply(x, x, size, size, size);
  const x3 = multiply(x2, x, size, size, size);
  const x4 = multiply(x2, x2, size, size, size);
  const powers = [x, x2, x3];
  // Blocks of four, each a cubic in x, joined by Horner's rule in x⁴.
  let matrix: Matrix = new Float64Array(size * size);
  for (let top = 12; top >= 0; top -= 4) {
    if (top < 12) matrix = multiply(matrix, x4, size, size, size);
    for (let i = 0; i < size; i++) matrix[i * size + i]! += INVERSE_FACTORIAL[top]!;
    for (let k = 1; k < 4; k++) {
      const c = INVERSE_FACTORIAL[top + k]!;
      const power = powers[k - 1]!;
      for (let i = 0; i < matrix.length; i++) matrix[i]! += c * power[i]!;
    }
  }
  for (let i = 0; i < squarings; i++) matrix = multiply(matrix, matrix, size, size, size);
  return matrix;
}

/** @param length with rate·length ≤ LONGEST_STEP */
export function transferOver(balanced: Balanced, length: number): Transfer {
  const { size, scale, mirrored } = balanced;
  const squarings = squaringsFor(balanced, length);
  const matrix = mirrored
    ? mirroredExponential(mirrored, length, squarings)
    : exponentialOf(balanced, length, squarings);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) matrix[i * size + j]! *= scale[i]! / scale[j]!;
  }
  return { matrix, load: advance(balanced, new Float64Array(size), 1, length) };
}

/**
 * The series of the state over a length, z(t) = Σ terms_k·t^k with t the share of the length: taken once,
 * it gives the state at any place on the way for a few products of each unknown.
 */
export interface Series {
  readonly size: number;
  readonly scale: Matrix;
  /** Terms in rows of `size`, balanced, from the constant up. */
  readonly terms: Matrix;
  readonly count: number;
}

/** With rate·length ≤ LONGEST_STEP the terms are below rounding long before. */
const MOST_TERMS = 64;

/** Room for the terms while their number is unknown, kept from call to call. */
let room = new Float64Array(0);

/**
 * @param share of g that acts
 * @param length with rate·length ≤ LONGEST_STEP
 */
export function seriesOf(balanced: Balanced, y: Matrix, share: number, length: number): Series {
  const { size, scale } = balanced;
  const count = fillTerms(balanced, y, share, length);
  return { size, scale, terms: room.slice(0, count * size), count };
}

/** Terms into `room`, until they are below rounding; how many. */
function fillTerms(balanced: Balanced, y: Matrix, share: number, length: number): number {
  const { size, g, scale } = balanced;
  const { starts, columns, values } = balanced.sparse;
  if (room.length < MOST_TERMS * size) room = new Float64Array(MOST_TERMS * size);
  const terms = room;
  let reach = 0;
  for (let i = 0; i < size; i++) {
    const value = y[i]! / scale[i]!;
    terms[i] = value;
    reach = Math.max(reach, Math.abs(value));
  }
  let count = 1;
  for (; count < MOST_TERMS; count++) {
    const from = (count - 1) * size;
    const to = count * size;
    const factor = length / count;
    let moved = 0;
    for (let i = 0, at = 0; i < size; i++) {
      let sum = count === 1 ? share * g[i]! : 0;
      for (const end = starts[i + 1]!; at < end; at++) {
        sum += values[at]! * terms[from + columns[at]!]!;
      }
      const value = sum * factor;
      terms[to + i] = value;
      const step = Math.abs(value);
      if (!(step <= moved)) moved = step;
    }
    // The state is as large as its largest term at least somewhere on the way.
    if (moved > reach) reach = moved;
    if (!(moved > 1e-17 * reach)) break;
  }
  return count;
}

/** The series of what is read of a state, from that of the state: the same values for fewer sums. */
export function readingsOf(
  series: Series,
  { count, rows, constants }: Readings,
  share: number,
): Series {
  const { size, scale, terms } = series;
  const read = new Float64Array(series.count * count);
  const scaled = new Float64Array(size);
  for (let r = 0; r < count; r++) {
    for (let i = 0; i < size; i++) scaled[i] = rows[r * size + i]! * scale[i]!;
    for (let k = 0; k < series.count; k++) {
      const from = k * size;
      let sum = k === 0 ? share * constants[r]! : 0;
      for (let i = 0; i < size; i++) sum += scaled[i]! * terms[from + i]!;
      read[k * count + r] = sum;
    }
  }
  return { size: count, scale: new Float64Array(count).fill(1), terms: read, count: series.count };
}

/** The state a share of the series' length on, into `z`. */
export function stateAt({ size, scale, terms, count }: Series, t: number, z: Matrix): void {
  let from = (count - 1) * size;
  for (let i = 0; i < size; i++) z[i] = terms[from + i]!;
  for (let k = count - 2; k >= 0; k--) {
    from -= size;
    for (let i = 0; i < size; i++) z[i] = z[i]! * t + terms[from + i]!;
  }
  for (let i = 0; i < size; i++) z[i]! *= scale[i]!;
}

/** The state a length further on, from the series on the vector alone. */
export function advance(balanced: Balanced, y: Matrix, share: number, length: number): Matrix {
  const { size, scale } = balanced;
  const count = fillTerms(balanced, y, share, length);
  const z = new Float64Array(size);
  stateAt({ size, scale, terms: room, count }, 1, z);
  return z;
}
