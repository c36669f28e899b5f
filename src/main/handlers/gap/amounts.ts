/** How much adhesive to mix for a joint. */
import { assemble } from '../../../model/joint/assembly.ts';
import { usualWaste } from '../../../shared/measuring-plan.ts';
import type { Project } from '../../../shared/project.ts';
import type { BenchAmounts } from '../../../shared/reports-gap.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { adhesiveOf } from './limits.ts';

/** g per mm³ of 1 kg/m³. */
const GRAMS = 1e-6;

/** Of the bonds as drawn, mm³. */
export const drawnVolume = ({ input }: ResolvedJoint): number => {
  const { bonds, overlap } = assemble(input, 'nominal');
  return bonds.reduce((sum, { width, gap }) => sum + width * gap * overlap, 0);
};

/** @param volume of the bonds, mm³ */
export function amountsOf(project: Project, resolved: ResolvedJoint, volume: number): BenchAmounts {
  const { density, process } = adhesiveOf(project, resolved);
  const waste = resolved.joint.bench?.waste ?? usualWaste;
  const mixVolume = volume * waste;
  const mixMass = density === undefined ? null : mixVolume * density * GRAMS;
  const mix = process?.mix;
  const part = (parts: number): number | null =>
    mix && mixMass !== null ? (mixMass * parts) / (mix.resin + mix.hardener) : null;
  return {
    volume,
    mixVolume,
    mixMass,
    resin: mix ? part(mix.resin) : null,
    hardener: mix ? part(mix.hardener) : null,
    waste,
  };
}
