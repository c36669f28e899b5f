/**
 * Ratios as polynomials in the inputs: of each input alone up to the fourth power, of each pair its
 * product, so that many samples can be judged at once. Where the model is known to bend, a hinge too. Legendre polynomials of t, the input over the reach
 * of the design (−1 … 1), make the terms nearly independent of each other.
 */
import { leastSquares } from './least-squares.ts';

/** Highest power of one input alone. */
const POWER = 4;

/** A plane across which the ratios bend, Σ weights·t = at: a term ⟨Σ weights·t − at⟩. */
export interface Hinge {
  readonly weights: readonly number[];
  readonly at: number;
}

/** What the ratios are followed by. */
export interface Basis {
  readonly inputs: number;
  readonly hinges: readonly Hinge[];
}

export const termCount = ({ inputs, hinges }: Basis): number =>
  1 + POWER * inputs + (inputs * (inputs - 1)) / 2 + hinges.length;

/** P₁ … P₄ of each input, the products of pairs, the hinges. */
export function terms(t: ArrayLike<number>, { inputs, hinges }: Basis, into: Float64Array): void {
  into[0] = 1;
  let k = 1;
  for (let i = 0; i < inputs; i++) {
    const x = t[i]!;
    const square = x * x;
    into[k++] = x;
    into[k++] = 1.5 * square - 0.5;
    into[k++] = (2.5 * square - 1.5) * x;
    into[k++] = (4.375 * square - 3.75) * square + 0.375;
  }
  for (let i = 0; i < inputs; i++) {
    for (let j = i + 1; j < inputs; j++) into[k++] = t[i]! * t[j]!;
  }
  for (const { weights, at } of hinges) {
    let sum = -at;
    for (let i = 0; i < inputs; i++) sum += weights[i]! * t[i]!;
    into[k++] = Math.max(sum, 0);
  }
}

export interface Surface {
  readonly coefficients: Float64Array;
  /** True when the polynomial is of the ratio's logarithm. */
  readonly ofLogarithm: boolean;
  /** Root mean square of what each point of the design is off when the fit does not know it, over 1. */
  readonly leftOut: number;
}

/** The ratio from the terms at a place. */
export function ratioAt({ coefficients, ofLogarithm }: Surface, at: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < coefficients.length; k++) sum += coefficients[k]! * at[k]!;
  return ofLogarithm ? Math.exp(sum) : sum;
}

/**
 * One surface for each row: of the ratio or of its logarithm, whichever would have met points that it
 * did not know more nearly.
 * @param points t of every point, one list each
 * @param rows ratios of each row at the points
 */
export function surfaces(
  points: readonly ArrayLike<number>[],
  basis: Basis,
  rows: readonly Float64Array[],
): Surface[] {
  const count = termCount(basis);
  const matrix = new Float64Array(points.length * count);
  points.forEach((t, i) => {
    terms(t, basis, matrix.subarray(i * count, (i + 1) * count));
  });
  const solve = leastSquares(matrix, points.length, count);
  return rows.map((ratios) => {
    const plain = solve(ratios);
    const off = rms(plain.leftOut);
    const straight = { coefficients: plain.coefficients, ofLogarithm: false, leftOut: off };
    if (!ratios.every((ratio) => ratio > 0)) return straight;
    const logarithm = solve(ratios.map(Math.log));
    const offLogarithm = rms(logarithm.leftOut.map((miss, i) => miss * ratios[i]!));
    return offLogarithm < off
      ? { coefficients: logarithm.coefficients, ofLogarithm: true, leftOut: offLogarithm }
      : straight;
  });
}

const rms = (values: Float64Array): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
