/** Solves A·X = B in place for small dense A (n × n, row-major) and B (n × w); false when singular. */
export function solveSmall(a: Float64Array, b: Float64Array, n: number, w: number): boolean {
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) {
      if (Math.abs(a[i * n + k]!) > Math.abs(a[pivot * n + k]!)) pivot = i;
    }
    const top = a[pivot * n + k]!;
    if (top === 0 || !Number.isFinite(top)) return false;
    if (pivot !== k) {
      for (let c = k; c < n; c++) {
        const swap = a[k * n + c]!;
        a[k * n + c] = a[pivot * n + c]!;
        a[pivot * n + c] = swap;
      }
      for (let c = 0; c < w; c++) {
        const swap = b[k * w + c]!;
        b[k * w + c] = b[pivot * w + c]!;
        b[pivot * w + c] = swap;
      }
    }
    for (let i = k + 1; i < n; i++) {
      const factor = a[i * n + k]! / top;
      if (factor === 0) continue;
      for (let c = k + 1; c < n; c++) a[i * n + c]! -= factor * a[k * n + c]!;
      for (let c = 0; c < w; c++) b[i * w + c]! -= factor * b[k * w + c]!;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let c = 0; c < w; c++) {
      let sum = b[k * w + c]!;
      for (let i = k + 1; i < n; i++) sum -= a[k * n + i]! * b[i * w + c]!;
      b[k * w + c] = sum / a[k * n + k]!;
    }
  }
  return true;
}
