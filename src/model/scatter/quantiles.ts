/**
 * From a uniform number to one of a distribution, by the inverse of its cumulative function. Only
 * additions, multiplications and divisions, which IEEE 754 and the language define to the last bit:
 * the language leaves the last digits of its own logarithm and root open, so both are written out.
 */

const LN_2 = 0.6931471805599453;
const SQRT_HALF = 0.7071067811865476;

/**
 * Natural logarithm of 0 < x < ∞ to about an ulp: x = 2^k·m, ln m = 2·artanh((m − 1)/(m + 1)) by its
 * series, |(m − 1)/(m + 1)| < 0.172.
 */
export function plainLog(x: number): number {
  let [k, m] = [0, x];
  for (; m < SQRT_HALF; k--) m *= 2;
  for (; m > 2 * SQRT_HALF; k++) m /= 2;
  const s = (m - 1) / (m + 1);
  const square = s * s;
  let sum = 0;
  for (let i = 23; i >= 3; i -= 2) sum = (sum + 1 / i) * square;
  return k * LN_2 + 2 * (s + s * sum);
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

// Coefficients of PPND16, lowest power first.
const A = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
  45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
];
const B = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
  39307.89580009271061, 28729.085735721942674, 5226.495278852545925,
];
const C = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833,
  7.7454501427834140764e-4,
];
const D = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455,
  0.14810397642748007459, 0.0151986665636164571966, 5.475938084995344946e-4,
  1.05075007164441684324e-9,
];
const E = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
  0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5,
  2.01033439929228813265e-7,
];
const F = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525,
  7.868691311456132591e-4, 1.8463183175100546818e-5, 1.4215117583164458887e-7,
  2.04426310338993978564e-15,
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
