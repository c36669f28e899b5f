/**
 * Shear stiffness and strength of a bond in terms of the slip between the walls' middles.
 *
 *   1/k = h/G + Σ f·t/G13,  f = 1/3 for a wall bonded on one face, 1/6 for one bonded on both
 *
 * The second term is the adherends' own shear: the mean displacement of a wall lags that of its
 * pulled face by t/3G when the shear falls linearly to a free face, t/6G when it is pulled on both.
 * Checked against finite elements in the tests. It stays elastic when the adhesive yields, so the
 * slip at failure is the slip at yield plus h·γp.
 */
import type { BondLaw } from '../lap/problem.ts';
import type { AdhesiveState } from './adhesive-state.ts';
import type { Assembly, Part } from './assembly.ts';
import { axialProperties } from './types.ts';

const throughFlexibility = (part: Part): number =>
  (part.root.thickness + part.mouth.thickness) /
  2 /
  axialProperties(part.material).throughShearModulus;

/** Shear flexibility of the walls at bond j, mm/MPa. */
export function adherendFlexibility(assembly: Assembly, j: number): number {
  const tubeShare = assembly.bonds.length === 2 ? 1 / 6 : 1 / 3;
  return (
    tubeShare * throughFlexibility(assembly.tube) + throughFlexibility(assembly.outers[j]!) / 3
  );
}

/** @param adhesives state of the adhesive in each bond, knockdowns taken off */
export function bondLaws(
  assembly: Assembly,
  adhesives: readonly AdhesiveState[],
  adherendShear: boolean,
): BondLaw[] {
  return assembly.bonds.map((bond, j) => {
    const adhesive = adhesives[j]!;
    const flexibility =
      bond.gap / adhesive.shearModulus + (adherendShear ? adherendFlexibility(assembly, j) : 0);
    return {
      width: bond.width,
      stiffness: 1 / flexibility,
      shearYield: adhesive.shearYield,
      slipAtFailure: adhesive.shearYield * flexibility + bond.gap * adhesive.plasticStrain,
    };
  });
}

/** Shear strain of the adhesive alone for a slip of the bond: γ = (s − τ·f)/h. */
export function adhesiveStrain(
  slip: number,
  stress: number,
  gap: number,
  adherendFlex: number,
): number {
  return (slip - stress * adherendFlex) / gap;
}
