/**
 * The regularised incomplete beta function I_x(a, b) and its inverse: the exact limits of a binomial
 * share. NIST Digital Library of Mathematical Functions 8.17: definition 8.17.2, symmetry 8.17.4,
 * continued fraction 8.17.22, summed by the method of Lentz (Applied Optics 15 (1976) 668) as changed by
 * Thompson and Barnett. Checked against scipy.
 */

const HALF_LN_TAU = 0.9189385332046728;
/** Stirling's series is used from here on; its next term is then below 1e-17. */
const STIRLING_FROM = 15;

/** ln Γ(x), x > 0: Stirling's series (DLMF 5.11.1), after stepping up by Γ(x + 1) = x·Γ(x). */
export function logGamma(x: number): number {
  let [z, shift] = [x, 1];
  for (; z < STIRLING_FROM; z++) shift *= z;
  const square = 1 / (z * z);
  const series =
    (1 / 12 -
      square *
        (1 / 360 -
          square *
            (1 / 1260 - square * (1 / 1680 - square * (1 / 1188 - (square * 691) / 360360))))) /
    z;
  return (z - 0.5) * Math.log(z) - z + HALF_LN_TAU + series - Math.log(shift);
}

const TINY = 1e-300;
const ACCURACY = 1e-15;
const MOST = 100_000;

/** Continued fraction of DLMF 8.17.22; converges fast for x below (a + 1)/(a + b + 2). */
function fraction(x: number, a: number, b: number): number {
  const awayFromZero = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= MOST; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    const step = c * d;
    value *= step;
    if (Math.abs(step - 1) <= ACCURACY) return value;
  }
  throw new RangeError('incomplete beta function: no convergence');
}

/**
 * I_x(a, b), a and b above 0, x from 0 to 1: 0 at x = 0, 1 at x = 1, rising between.
 * @throws RangeError when the fraction does not converge
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(1 - x, b, a)) / b;
}

/** The x at which I_x(a, b) = p, by halving in ln x where x is small: to the last digits of a double. */
export function inverseIncompleteBeta(p: number, a: number, b: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  let [low, high] = [0, 1];
  for (let step = 0; step < 2000; step++) {
    // Far below the other end halve the exponent, not the number.
    const middle = low > 0 && high > 4 * low ? Math.sqrt(low * high) : (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (incompleteBeta(middle, a, b) < p) low = middle;
    else high = middle;
    if (high - low <= 1e-15 * high) break;
  }
  return (low + high) / 2;
}
