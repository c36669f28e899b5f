/**
 * Edge-moment factors of a single lap of two equal adherends in tension. The load comes in along one
 * adherend and leaves along the other; the joint turns towards the line of the load, and of the
 * moment P·e/2 of the undeformed shape only k·P·e/2 is left at each end of the overlap.
 *
 * Common to both: c half the overlap, P the load per unit width, D the bending stiffness of one
 * adherend per unit width, Et³/12(1 − ν²) when it is homogeneous; run-outs long against 1/ξ, ξ² = P/D.
 */

/** Root of the overlap's bending stiffness over an adherend's: two equal plates as one, 8D over D. */
export const SOLID_PAIR = 2 * Math.SQRT2;

/**
 * M. Goland, E. Reissner (1944), formula from memory: the overlap bends as one solid plate.
 *
 *   k = cosh(uc) / (cosh(uc) + 2√2·sinh(uc)),  u² = P/8D
 *
 * written k = 1/(1 + 2√2·tanh(uc)), which cannot overflow. Limits: k → 1 as P → 0, and
 * 1/(1 + 2√2) = 0.261 as uc → ∞. Too high for long overlaps of thin walls with a compliant adhesive.
 */
export const golandReissnerFactor = (uc: number, ratio = SOLID_PAIR): number =>
  1 / (1 + ratio * Math.tanh(uc));

/**
 * L. J. Hart-Smith (1973, NASA CR-112236), formula from memory: each adherend bends by itself.
 *
 *   k = 1 / (1 + ξc + (ξc)²/6),  ξ² = P/D
 *
 * Limits: k → 1 as P → 0, and 0 as ξc → ∞.
 */
export const hartSmithFactor = (xiC: number): number => 1 / (1 + xiC + (xiC * xiC) / 6);
