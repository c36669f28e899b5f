/**
 * The normal distribution: chance, and the logarithm of the chance of its tail, which stays finite
 * where the chance itself has vanished. NIST Digital Library of Mathematical Functions 7.6.2 (series
 * of positive terms) and 7.9.1 (continued fraction of the tail, summed by Lentz's method).
 */

const ROOT_TAU = 2.5066282746310002;
const LN_ROOT_TAU = 0.9189385332046728;
/** From here on the fraction; below it the series, which loses 1/tail of its digits. */
const FRACTION_FROM = 2.5;

export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / ROOT_TAU;

/** Φ(z) − ½ for |z| below `FRACTION_FROM`. */
function aboveHalf(z: number): number {
  const square = z * z;
  let [term, sum] = [z, z];
  for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
    term *= square / k;
    sum += term;
  }
  return sum * normalDensity(z);
}

/** Tail over density (Mills' ratio), z ≥ `FRACTION_FROM`: 1/(z + 1/(z + 2/(z + 3/(z + …)))). */
function millsRatio(z: number): number {
  let [c, d] = [z, 0];
  let value = z;
  for (let k = 1; k < 1000; k++) {
    d = 1 / (z + k * d);
    c = z + k / c;
    const step = c * d;
    value *= step;
    if (Math.abs(step - 1) < 1e-16) break;
  }
  return 1 / value;
}

/** Chance of more than z, to about 1e-14 of itself. */
export function normalTail(z: number): number {
  if (z < -FRACTION_FROM) return 1 - normalTail(-z);
  return z < FRACTION_FROM ? 0.5 - aboveHalf(z) : normalDensity(z) * millsRatio(z);
}

/** Chance of z or less. */
export const normalChance = (z: number): number => normalTail(-z);

/** ln of the chance of more than z: finite for every finite z up to 1e150. */
export function logNormalTail(z: number): number {
  if (z < FRACTION_FROM) return z < 0 ? Math.log1p(-normalTail(-z)) : Math.log(normalTail(z));
  return -0.5 * z * z - LN_ROOT_TAU + Math.log(millsRatio(z));
}

/** Density over tail, the derivative of −ln(tail): the pull of a result known only to be more than z. */
export const normalHazard = (z: number): number =>
  z < FRACTION_FROM ? normalDensity(z) / normalTail(z) : 1 / millsRatio(z);
