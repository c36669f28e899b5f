/** Student's t and Fisher's F by the incomplete beta function: DLMF 8.17; Abramowitz, Stegun 26.5.27, 26.6.2. */
import { incompleteBeta, inverseIncompleteBeta } from '../scatter/incomplete-beta.ts';

/** The t that is exceeded with the chance `tail` (0 to ½). */
export function studentUpper(tail: number, freedom: number): number {
  // Both tails together: 2·tail = I_x(ν/2, ½) with x = ν/(ν + t²).
  const x = inverseIncompleteBeta(2 * tail, freedom / 2, 0.5);
  return Math.sqrt((freedom * (1 - x)) / x);
}

/** Chance that F with (between, within) degrees of freedom is more than f. */
export const fisherTail = (f: number, between: number, within: number): number =>
  incompleteBeta(within / (within + between * f), within / 2, between / 2);

/** The F that is exceeded with the chance `tail`. */
export function fisherUpper(tail: number, between: number, within: number): number {
  const x = inverseIncompleteBeta(tail, within / 2, between / 2);
  return (within * (1 - x)) / (between * x);
}
