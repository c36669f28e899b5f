/**
 * From a uniform number to one of a distribution, by the inverse of its cumulative function. Only
 * additions, multiplications and divisions, which IEEE 754 and the language define to the last bit:
 * the language leaves the last digits of its own logarithm and root open, so both are written out.
 */

const { LN2, SQRT1_2 } = Math;

/**
 * Natural logarithm of 0 < x < ∞ to about an ulp: x = 2^k·m, ln m = 2·artanh((m − 1)/(m + 1)) by its
 * series, |(m − 1)/(m + 1)| < 0.172.
 */
export function plainLog(x: number): number {
  let [k, m] = [0, x];
  for (; m < SQRT1_2; k--) m *= 2;
  for (; m > 2 * SQRT1_2; k++) m /= 2;
  const s = (m - 1) / (m + 1);
  const square = s * s;
  let sum = 0;
  for (let i = 23; i >= 3; i -= 2) sum = (sum + 1 / i) * square;
  return k * LN2 + 2 * (s + s * sum);
}

/** Square root of x ≥ 0 to about an ulp, by Heron's rule from a quarter to one. */
export function plainRoot(x: number): number {
  if (x === 0) return 0;
  let [scale, m] = [1, x];
  for (; m < 0.25; scale /= 2) m *= 4;
  for (; m > 1; scale *= 2) m /= 4;
  let root = 0.5 * (1 + m);
  for (let i = 0; i < 6; i++) root = 0.5 * (root + m / root);
  return scale * root;
}

const ratio = (top: readonly number[], bottom: readonly number[], r: number): number => {
  const value = (of: readonly number[]): number => of.reduceRight((sum, c) => sum * r + c, 0);
  return value(top) / value(bottom);
};

// Coefficients of PPND16, lowest power first, to the digits that a double holds.
const A = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
];
const B = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852546,
];
const C = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
];
const D = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008,
  0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
];
const E = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
  0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
];
const F = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
];

/**
 * Standard normal quantile: M. J. Wichura, "Algorithm AS 241: the percentage points of the normal
 * distribution", Applied Statistics 37 (1988) 477, routine PPND16, about 1 part in 1e16.
 * @param u between 0 and 1, neither of them
 */
export function normalQuantile(u: number): number {
  const q = u - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(A, B, 0.180625 - q * q);
  const r = plainRoot(-plainLog(q < 0 ? u : 1 - u));
  const size = r <= 5 ? ratio(C, D, r - 1.6) : ratio(E, F, r - 5);
  return q < 0 ? -size : size;
}

/** Uniform from −1 to 1. */
export const uniformQuantile = (u: number): number => 2 * u - 1;

/** Triangular from −1 over 0 to 1. */
export const triangularQuantile = (u: number): number =>
  u < 0.5 ? plainRoot(2 * u) - 1 : 1 - plainRoot(2 * (1 - u));

export type Distribution = 'normal' | 'uniform' | 'triangular';

/** About the middle, in units of the spread: standard deviation (normal) or half-width. */
export const quantileOf: Readonly<Record<Distribution, (u: number) => number>> = {
  normal: normalQuantile,
  uniform: uniformQuantile,
  triangular: triangularQuantile,
};
