/** Stiffness of a bond, and its slips at yield and failure. */
import { type Step, step } from '../card.ts';
import { PLASTIC_STRAIN, SHEAR_MODULUS, SHEAR_YIELD } from '../joint/adhesive-state.card.ts';
import type { Part } from '../joint/assembly.ts';
import {
  failureSlip,
  stiffnessOfDouble,
  stiffnessOfLayer,
  stiffnessOfSingle,
  yieldSlip,
} from '../joint/bond-law.card.ts';
import { axialProperties } from '../joint/types.ts';
import { slipAtYield } from '../lap/problem.ts';
import { knockdownSteps, propertyStep } from './adhesive.ts';
import type { Given } from './context.ts';

/** Knockdowns, yield shear and shear modulus, then the stiffness that they make. */
export function bondSteps(given: Given, j: number): Step[] {
  return [
    ...knockdownSteps(given, j),
    propertyStep(given, j, SHEAR_YIELD, 'shearYield'),
    propertyStep(given, j, SHEAR_MODULUS, 'shearModulus'),
    stiffnessStep(given, j),
  ];
}

function stiffnessStep({ state, settings }: Given, j: number): Step {
  const { assembly, adhesives, bonds } = state;
  const own = { h: assembly.bonds[j]!.gap, G: adhesives[j]!.shearModulus };
  const { stiffness } = bonds[j]!;
  if (!settings.adherendShear) return step(stiffnessOfLayer, own, stiffness);
  const wall = ({ root, mouth, material }: Part) => ({
    thickness: (root.thickness + mouth.thickness) / 2,
    modulus: axialProperties(material).throughShearModulus,
  });
  const [tube, outer] = [wall(assembly.tube), wall(assembly.outers[j]!)];
  const values = {
    ...own,
    t_t: tube.thickness,
    G_t: tube.modulus,
    t_s: outer.thickness,
    G_s: outer.modulus,
  };
  return step(bonds.length === 2 ? stiffnessOfDouble : stiffnessOfSingle, values, stiffness);
}

export function slipSteps(given: Given, j: number): Step[] {
  const { assembly, adhesives, bonds } = given.state;
  const bond = bonds[j]!;
  const atYield = slipAtYield(bond);
  return [
    propertyStep(given, j, PLASTIC_STRAIN, 'plasticStrain'),
    step(yieldSlip, { tau_p: bond.shearYield, k: bond.stiffness }, atYield),
    step(
      failureSlip,
      {
        s_e: atYield,
        h: assembly.bonds[j]!.gap,
        gamma_p: adhesives[j]!.plasticStrain,
      },
      bond.slipAtFailure,
    ),
  ];
}
