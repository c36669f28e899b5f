/**
 * First estimate of the peel at the free end of an outer adherend of a double lap: a semi-infinite
 * plate on an elastic foundation, bent by the shear τ on its face (L. J. Hart-Smith, double laps).
 *
 *   σ = τ·(3·E_c·(1 − ν²)·t / (E·h))^(1/4)
 *
 * E_c is the adhesive's modulus through the bond, t, E and ν the outer adherend's wall, modulus and
 * Poisson ratio, h the gap. Valid where the wall is thin and long against its decay length; says
 * nothing of a single lap, where the eccentric load path adds its own moment.
 *
 * @returns peel stress, MPa
 */
export function outerAdherendPeel(
  shear: number,
  adhesiveModulus: number,
  thickness: number,
  modulus: number,
  poisson: number,
  gap: number,
): number {
  const stiffness = (3 * adhesiveModulus * (1 - poisson * poisson) * thickness) / (modulus * gap);
  return shear * stiffness ** 0.25;
}
