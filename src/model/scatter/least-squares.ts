/**
 * Least squares by Householder reflections: coefficients that bring A·c nearest to b, and how far off
 * each point would be were it left out of the fit (its residual over 1 − its leverage). Coefficients
 * are held to 0 by a trifle, so that columns that say the same share what they say.
 */

export interface LeastSquares {
  readonly coefficients: Float64Array;
  /** Differences at each point of a fit that does not know that point. */
  readonly leftOut: Float64Array;
}

const TRIFLE = 1e-7;

/**
 * @param a points × columns, row by row
 * @returns a solver of right-hand sides of that matrix
 */
export function leastSquares(
  a: Float64Array,
  points: number,
  columns: number,
): (b: Float64Array) => LeastSquares {
  const rows = points + columns;
  const r = new Float64Array(rows * columns);
  r.set(a);
  for (let k = 0; k < columns; k++) r[(points + k) * columns + k] = TRIFLE;
  const at = (i: number, k: number): number => i * columns + k;
  const diagonal = new Float64Array(columns);
  for (let k = 0; k < columns; k++) {
    let square = 0;
    for (let i = k; i < rows; i++) square += r[at(i, k)]! ** 2;
    const norm = Math.sqrt(square);
    const pivot = r[at(k, k)]!;
    const turned = pivot > 0 ? -norm : norm;
    diagonal[k] = turned;
    // The reflector stands below the diagonal, its first entry on it.
    r[at(k, k)] = pivot - turned;
    const scale = 1 / (norm * (norm + Math.abs(pivot)));
    for (let j = k + 1; j < columns; j++) {
      let sum = 0;
      for (let i = k; i < rows; i++) sum += r[at(i, k)]! * r[at(i, j)]!;
      sum *= scale;
      for (let i = k; i < rows; i++) r[at(i, j)]! -= sum * r[at(i, k)]!;
    }
  }
  const reflect = (v: Float64Array, k: number): void => {
    let sum = 0;
    let square = 0;
    for (let i = k; i < rows; i++) {
      sum += r[at(i, k)]! * v[i]!;
      square += r[at(i, k)]! ** 2;
    }
    sum *= 2 / square;
    for (let i = k; i < rows; i++) v[i]! -= sum * r[at(i, k)]!;
  };
  const leverage = leverages(rows, columns, reflect);
  return (b) => {
    const v = new Float64Array(rows);
    v.set(b);
    for (let k = 0; k < columns; k++) reflect(v, k);
    const coefficients = new Float64Array(columns);
    for (let k = columns - 1; k >= 0; k--) {
      let sum = v[k]!;
      for (let j = k + 1; j < columns; j++) sum -= r[at(k, j)]! * coefficients[j]!;
      coefficients[k] = sum / diagonal[k]!;
    }
    const leftOut = Float64Array.from(b, (value, i) => {
      let sum = value;
      for (let k = 0; k < columns; k++) sum -= a[at(i, k)]! * coefficients[k]!;
      return sum / Math.max(1 - leverage[i]!, 1e-9);
    });
    return { coefficients, leftOut };
  };
}

/** Sum of squares of each row of Q's first columns: Q = H₀·H₁·… applied to the first unit vectors. */
function leverages(
  rows: number,
  columns: number,
  reflect: (v: Float64Array, k: number) => void,
): Float64Array {
  const leverage = new Float64Array(rows);
  for (let j = 0; j < columns; j++) {
    const v = new Float64Array(rows);
    v[j] = 1;
    for (let k = columns - 1; k >= 0; k--) reflect(v, k);
    for (let i = 0; i < rows; i++) leverage[i]! += v[i]! * v[i]!;
  }
  return leverage;
}
