/** Small dense matrices, row by row in a Float64Array: enough linear algebra for a dozen unknowns. */

export type Matrix = Float64Array;

/** a (rows × inner) times b (inner × columns). */
export function multiply(
  a: Matrix,
  b: Matrix,
  rows: number,
  inner: number,
  columns: number,
): Matrix {
  const out = new Float64Array(rows * columns);
  multiplyInto(out, a, b, rows, inner, columns);
  return out;
}

/** The same into `out`, which is neither of the two. */
export function multiplyInto(
  out: Matrix,
  a: Matrix,
  b: Matrix,
  rows: number,
  inner: number,
  columns: number,
): void {
  out.fill(0, 0, rows * columns);
  addProduct(out, a, b, rows, inner, columns);
}

/**
 * Adds a·b to `out`, three columns at a time, so that sums stay in registers.
 * @param width of a, where its `inner` columns from `first` on are taken
 */
export function addProduct(
  out: Matrix,
  a: Matrix,
  b: Matrix,
  rows: number,
  inner: number,
  columns: number,
  width = inner,
  first = 0,
): void {
  for (let i = 0; i < rows; i++) {
    const from = i * width + first;
    const to = i * columns;
    let j = 0;
    for (; j + 2 < columns; j += 3) {
      let one = 0;
      let two = 0;
      let three = 0;
      for (let k = 0, at = j; k < inner; k++, at += columns) {
        const factor = a[from + k]!;
        one += factor * b[at]!;
        two += factor * b[at + 1]!;
        three += factor * b[at + 2]!;
      }
      out[to + j]! += one;
      out[to + j + 1]! += two;
      out[to + j + 2]! += three;
    }
    for (; j < columns; j++) {
      let sum = 0;
      for (let k = 0, at = j; k < inner; k++, at += columns) sum += a[from + k]! * b[at]!;
      out[to + j]! += sum;
    }
  }
}

/**
 * Solves a·X = b for `columns` right-hand sides at once, by elimination with row pivoting. Both
 * `a` (size × size) and `b` (size × columns) are overwritten; the answer stands in `b`.
 * @throws RangeError when the matrix is singular
 */
export function solveDense(a: Matrix, b: Matrix, size: number, columns: number): Matrix {
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(a[i * size + k]!) > Math.abs(a[pivot * size + k]!)) pivot = i;
    }
    const largest = a[pivot * size + k]!;
    if (largest === 0 || !Number.isFinite(largest)) throw new RangeError('singular system');
    if (pivot !== k) {
      swapRows(a, pivot, k, size);
      swapRows(b, pivot, k, columns);
    }
    for (let i = k + 1; i < size; i++) {
      const factor = a[i * size + k]! / largest;
      if (factor === 0) continue;
      const [row, top] = [i * size, k * size];
      for (let j = k + 1; j < size; j++) a[row + j]! -= factor * a[top + j]!;
      const [right, above] = [i * columns, k * columns];
      for (let j = 0; j < columns; j++) b[right + j]! -= factor * b[above + j]!;
    }
  }
  for (let k = size - 1; k >= 0; k--) {
    const pivot = a[k * size + k]!;
    const row = k * columns;
    for (let i = k + 1; i < size; i++) {
      const factor = a[k * size + i]!;
      const other = i * columns;
      for (let j = 0; j < columns; j++) b[row + j]! -= factor * b[other + j]!;
    }
    for (let j = 0; j < columns; j++) b[row + j]! /= pivot;
  }
  return b;
}

function swapRows(a: Matrix, i: number, k: number, columns: number): void {
  for (let j = 0; j < columns; j++) {
    const held = a[i * columns + j]!;
    a[i * columns + j] = a[k * columns + j]!;
    a[k * columns + j] = held;
  }
}

/** The block of rows × columns that starts at (row, column) of a matrix `width` wide. */
export function block(
  a: Matrix,
  width: number,
  row: number,
  column: number,
  rows: number,
  columns: number,
): Matrix {
  const out = new Float64Array(rows * columns);
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < columns; j++) out[i * columns + j] = a[(row + i) * width + column + j]!;
  }
  return out;
}

/** Largest sum of sizes along a row. */
export function rowNorm(a: Matrix, size: number): number {
  let largest = 0;
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += Math.abs(a[i * size + j]!);
    largest = Math.max(largest, sum);
  }
  return largest;
}

/** Row of a matrix, from index `from`, times a vector. */
export function dot(rows: Matrix, from: number, vector: ArrayLike<number>, length: number): number {
  let sum = 0;
  for (let i = 0; i < length; i++) sum += rows[from + i]! * vector[i]!;
  return sum;
}
