/** Short ways to write a lap for a test. */
import type { BondLaw, Channel, Member } from '../../src/model/lap/problem.ts';

export const member = (stiffness: number, thermalStrain = 0): Member => ({
  stiffness,
  thermalStrain,
});

export const channel = (
  load: number,
  tube: Member,
  outers: readonly Member[],
  levers: readonly number[] = outers.map(() => 1),
): Channel => ({ load, tube, outers, levers });

/** A bond from the adhesive's G, gap and width; yield and failure out of reach unless given. */
export const bond = (
  shearModulus: number,
  gap: number,
  width: number,
  law: { readonly yieldStrain?: number; readonly plasticStrain?: number } = {},
): BondLaw => {
  const yieldStrain = law.yieldStrain ?? 1e6;
  return {
    width,
    stiffness: shearModulus / gap,
    shearYield: shearModulus * yieldStrain,
    slipAtFailure: gap * (yieldStrain + (law.plasticStrain ?? 1e6)),
  };
};
