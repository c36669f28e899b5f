/**
 * Square banded matrix with `lower` diagonals below and `upper` above the main one, solved by
 * Gaussian elimination with partial pivoting inside the band (Golub and Van Loan, Matrix
 * Computations, 4th ed., section 4.3.5). Row pivoting fills `lower` more diagonals above: room is
 * kept for them.
 */
export class BandedMatrix {
  readonly size: number;
  readonly lower: number;
  readonly upper: number;
  private readonly stride: number;
  private readonly data: Float64Array;
  /** Row that came to each place. */
  private readonly pivots: Int32Array;

  constructor(size: number, lower: number, upper: number) {
    this.size = size;
    this.lower = lower;
    this.upper = upper;
    this.stride = 2 * lower + upper + 1;
    this.data = new Float64Array(size * this.stride);
    this.pivots = new Int32Array(size);
  }

  clear(): void {
    this.data.fill(0);
  }

  /** Adds to an entry. The entry must lie inside the band. */
  add(row: number, column: number, value: number): void {
    const at = column - row + this.lower;
    if (at < 0 || at > this.lower + this.upper) {
      throw new RangeError(`(${row}, ${column}) lies outside the band`);
    }
    this.data[row * this.stride + at]! += value;
  }

  /**
   * Overwrites `rhs` by the solution; the matrix is destroyed.
   * @returns false when a pivot vanishes: the matrix is singular to working precision
   */
  solve(rhs: Float64Array): boolean {
    if (!this.factorize()) return false;
    this.solveFactored(rhs);
    return true;
  }

  /**
   * Overwrites the matrix by its factors, for any number of right-hand sides.
   * @returns false when a pivot vanishes
   */
  factorize(): boolean {
    const { size: n, lower, stride, data, pivots } = this;
    const reach = lower + this.upper;
    for (let k = 0; k < n; k++) {
      const last = Math.min(n - 1, k + lower);
      let pivot = k;
      let best = Math.abs(data[k * stride + lower]!);
      for (let i = k + 1; i <= last; i++) {
        const size = Math.abs(data[i * stride + (k - i + lower)]!);
        if (size > best) {
          best = size;
          pivot = i;
        }
      }
      if (!(best > 0) || !Number.isFinite(best)) return false;
      pivots[k] = pivot;
      const end = Math.min(n - 1, k + reach);
      if (pivot !== k) {
        const a = k * stride + lower - k;
        const b = pivot * stride + lower - pivot;
        for (let j = k; j <= end; j++) {
          const swap = data[a + j]!;
          data[a + j] = data[b + j]!;
          data[b + j] = swap;
        }
      }
      const rowK = k * stride + lower - k;
      const diagonal = data[rowK + k]!;
      for (let i = k + 1; i <= last; i++) {
        const rowI = i * stride + lower - i;
        const factor = data[rowI + k]! / diagonal;
        // In the place that it empties.
        data[rowI + k] = factor;
        if (factor === 0) continue;
        for (let j = k + 1; j <= end; j++) data[rowI + j]! -= factor * data[rowK + j]!;
      }
    }
    return true;
  }

  /** Overwrites `rhs` by the solution, after `factorize`. */
  solveFactored(rhs: Float64Array): void {
    const { size: n, lower, stride, data, pivots } = this;
    const reach = lower + this.upper;
    for (let k = 0; k < n; k++) {
      const pivot = pivots[k]!;
      const value = rhs[pivot]!;
      rhs[pivot] = rhs[k]!;
      rhs[k] = value;
      const last = Math.min(n - 1, k + lower);
      for (let i = k + 1; i <= last; i++) rhs[i]! -= data[i * stride + (k - i + lower)]! * value;
    }
    for (let k = n - 1; k >= 0; k--) {
      const row = k * stride + lower - k;
      const end = Math.min(n - 1, k + reach);
      let sum = rhs[k]!;
      for (let j = k + 1; j <= end; j++) sum -= data[row + j]! * rhs[j]!;
      rhs[k] = sum / data[row + k]!;
    }
  }
}
