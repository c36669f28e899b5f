/**
 * y′ = A·y + g over a short length: the transfer matrix e^(Aℓ) with its particular part, by Taylor's
 * series in blocks, on balanced unknowns so that millimetres and newtons weigh alike.
 */
import { type Matrix, multiply, rowNorm } from '../numerics/dense.ts';

/** Matrix and load in balanced unknowns z, y_i = scale_i·z_i. */
export interface Balanced {
  readonly size: number;
  readonly a: Matrix;
  readonly g: Matrix;
  readonly scale: Matrix;
  /** Largest row sum of the balanced matrix, 1/mm: how fast anything can change. */
  readonly rate: number;
}

const SWEEPS = 8;

export function balance(a: Matrix, g: Matrix): Balanced {
  const size = g.length;
  const balanced = Float64Array.from(a);
  const scale = new Float64Array(size).fill(1);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
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
  };
}

/** Longest step for the series below, as rate·length. */
export const LONGEST_STEP = 0.5;

/** 1/k! to k = 15: 0.5^16/16! is below rounding. */
const INVERSE_FACTORIAL: number[] = [1];
for (let k = 1; k < 16; k++) INVERSE_FACTORIAL.push(INVERSE_FACTORIAL[k - 1]! / k);

export interface Transfer {
  /** e^(Aℓ), unbalanced. */
  readonly matrix: Matrix;
  /** What g adds over the length. */
  readonly load: Matrix;
}

/** @param length with rate·length ≤ LONGEST_STEP */
export function transferOver({ size, a, g, scale }: Balanced, length: number): Transfer {
  const x = a.map((value) => value * length);
  const x2 = multiply(x, x, size, size, size);
  const x3 = multiply(x2, x, size, size, size);
  const x4 = multiply(x2, x2, size, size, size);
  const powers = [x, x2, x3];
  // Blocks of four, each a cubic in x, joined by Horner's rule in x⁴; φ₁ = Σ xᵏ/(k+1)! alongside.
  const series = (shift: number): Matrix => {
    let sum: Matrix = new Float64Array(size * size);
    for (let top = 12; top >= 0; top -= 4) {
      if (top < 12) sum = multiply(sum, x4, size, size, size);
      for (let i = 0; i < size; i++) sum[i * size + i]! += coefficient(top, shift);
      powers.forEach((power, k) => {
        const c = coefficient(top + k + 1, shift);
        if (c === 0) return;
        for (let i = 0; i < sum.length; i++) sum[i]! += c * power[i]!;
      });
    }
    return sum;
  };
  const matrix = series(0);
  const load = g.some((value) => value !== 0)
    ? multiply(series(1), g, size, size, 1).map((value) => value * length)
    : new Float64Array(size);
  for (let i = 0; i < size; i++) {
    load[i]! *= scale[i]!;
    for (let j = 0; j < size; j++) matrix[i * size + j]! *= scale[i]! / scale[j]!;
  }
  return { matrix, load };
}

const coefficient = (power: number, shift: number): number =>
  power + shift < INVERSE_FACTORIAL.length ? INVERSE_FACTORIAL[power + shift]! : 0;

/** The state a length further on, from the series on the vector alone. */
export function advance(
  { size, a, g, scale }: Balanced,
  y: Matrix,
  share: number,
  length: number,
): Matrix {
  const z = y.map((value, i) => value / scale[i]!);
  let term = Float64Array.from(z);
  for (let k = 1; k < 18; k++) {
    let largest = 0;
    let moved = 0;
    const next = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      let sum = k === 1 ? share * g[i]! : 0;
      for (let j = 0; j < size; j++) sum += a[i * size + j]! * term[j]!;
      next[i] = (sum * length) / k;
    }
    for (let i = 0; i < size; i++) {
      z[i]! += next[i]!;
      largest = Math.max(largest, Math.abs(z[i]!));
      moved = Math.max(moved, Math.abs(next[i]!));
    }
    if (moved <= 1e-18 * largest) break;
    term = next;
  }
  return z.map((value, i) => value * scale[i]!);
}
