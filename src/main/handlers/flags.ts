/** What a reader must know about a joint's figures beside the figures. */

import { adhesiveStateAt } from '../../model/joint/adhesive-state.ts';
import { type Assembly, assemble } from '../../model/joint/assembly.ts';
import { axialProperties } from '../../model/joint/types.ts';
import { outerAdherendPeel } from '../../model/peel/outer-adherend.ts';
import type { Flag } from '../../shared/reports.ts';
import type { ResolvedJoint } from './resolve.ts';

/** Thinnest tube for which its wall may be taken as a membrane (common practice, no source). */
const THIN_WALL = 5;
/** Bondlines for which adhesives' shear properties are usually measured, mm (common practice, no source). */
const USUAL_GAP = { min: 0.05, max: 0.5 };

export function jointFlags(resolved: ResolvedJoint): Flag[] {
  const { input, adhesive, cases } = resolved;
  const flags: Flag[] = [
    {
      code: 'no-peel',
      message:
        'Shear only: peel, bending of the walls, hoop stress and failure between plies are not checked here. A bonded laminate often fails by these first.',
    },
  ];
  for (const { loadCase, input: loaded } of cases) {
    const state = adhesiveStateAt(adhesive, loaded.temperature, loaded.moisture);
    if (state.outsideTable) {
      flags.push({
        code: 'outside-table',
        message: `${loadCase.name}: ${minus(loadCase.temperature)} °C lies beyond the adhesive's ${loadCase.moisture} properties; the nearest row is used, not an extrapolation.`,
      });
    }
    if (loaded.kind === 'cyclic' && !adhesive.fatigue) {
      flags.push({
        code: 'no-fatigue',
        message: `${loadCase.name}: the adhesive has no S-N line, so cyclic shear is not checked; first yield is, and that is not enough for a long life. Give the adhesive one from coupons.`,
      });
    }
    const { force, moment, torque, shear } = loaded.loads;
    if (force === 0 && moment === 0 && torque === 0 && shear === 0) {
      flags.push({
        code: 'no-load',
        message: `${loadCase.name}: no load acts on this joint, so it has no margin in that case; only thermal stress is there.`,
      });
    }
  }
  const assembly = assemble(input, 'nominal');
  const peel = peelEstimate(resolved, assembly);
  if (peel) flags.push(peel);
  for (const part of [assembly.tube, ...assembly.outers]) {
    const ratio = part.root.meanRadius / part.root.thickness;
    if (!assembly.flat && ratio < THIN_WALL) {
      flags.push({
        code: 'thick-wall',
        message: `The ${part.name}'s mean radius is ${ratio.toFixed(1)} times its wall; below ${THIN_WALL} the stress varies through the wall, which shear lag does not see.`,
      });
    }
  }
  for (const bond of assembly.bonds) {
    if (bond.gap < USUAL_GAP.min || bond.gap > USUAL_GAP.max) {
      flags.push({
        code: 'unusual-gap',
        message: `The ${bond.name} is ${bond.gap} mm thick; shear properties are usually measured between ${USUAL_GAP.min} and ${USUAL_GAP.max} mm and change outside.`,
      });
    }
  }
  return flags;
}

/** Double laps: how large peel may be at the free ends of the outers once the bond has yielded there. */
function peelEstimate({ adhesive, cases }: ResolvedJoint, assembly: Assembly): Flag | null {
  if (assembly.bonds.length !== 2 || cases.length === 0) return null;
  let worst = { stress: 0, part: '' };
  for (const { input } of cases) {
    const state = adhesiveStateAt(adhesive, input.temperature, input.moisture);
    assembly.outers.forEach((part, j) => {
      const { poisson } = part.material;
      const { modulus } = axialProperties(part.material);
      const stress = outerAdherendPeel(
        state.shearYield,
        state.modulus,
        part.mouth.thickness,
        modulus,
        poisson,
        assembly.bonds[j]!.gap,
      );
      if (stress > worst.stress) worst = { stress, part: part.name };
    });
  }
  return {
    code: 'peel-estimate',
    message: `With the bond at yield, peel at the free end of the ${worst.part} may reach about ${worst.stress.toFixed(0)} MPa (plate on an elastic foundation, a first estimate only). Compare it with the through-thickness strength of the laminate.`,
  };
}

/** With the sign that the rest of the page uses. */
const minus = (value: number): string => String(value).replace('-', '−');
