/** Plain words for joints and modes. */
import type { Mode } from '../../model/margins/asked.ts';
import type { Joint } from '../../shared/project.ts';
import type { MarginState } from '../../shared/reports.ts';

export function describeJoint(joint: Joint): string {
  switch (joint.type) {
    case 'sleeve-single':
      return joint.side === 'socket'
        ? 'single lap, tube in socket'
        : 'single lap, tube over spigot';
    case 'sleeve-double':
      return 'double lap, tube between spigot and socket';
    case 'flat-single':
      return 'flat single lap';
    case 'flat-double':
      return 'flat double lap, strip between straps';
  }
}

/** Walls of a flat joint: it has no tube. */
const flatParts: ReadonlySet<string> = new Set(['strip', 'plate', 'lower strap', 'upper strap']);

/** What a margin is called; walls are named, bonds only where there are two. */
export function modeLabel(mode: Mode, part: string, atRoot = false): string {
  switch (mode) {
    case 'adhesive-yield':
      return 'adhesive, yield';
    case 'adhesive-strain':
      return 'adhesive, ultimate strain';
    case 'adhesive-peel':
      return 'adhesive, peel';
    case 'peel-shear':
      return 'adhesive, peel with shear';
    case 'interlaminar':
      return 'laminate, between plies';
    case 'fracture':
      return 'adhesive, fracture energy';
    case 'first-ply':
      return `${part}, first ply at the ${atRoot ? `${flatParts.has(part) ? 'strip' : 'tube'} end` : 'mouth'}`;
    case 'durability-trough':
      return 'durability trough';
    case 'cyclic-shear':
      return 'adhesive, cyclic shear';
    case 'cyclic-damage':
      return 'adhesive, all cycles together';
    case 'metal-yield':
      return `${part}, yield`;
    case 'metal-ultimate':
      return `${part}, ultimate`;
    case 'laminate-strength':
      return `${part}, laminate strength`;
  }
}

/** The state follows the margin as computed, not as rounded for display. */
export const marginState = (margin: number, target: number): MarginState =>
  margin < 0 ? 'fails' : margin < target ? 'low' : 'holds';

/** How many joints stand in each state; one without a margin in none. */
export function countStates(
  joints: readonly { readonly lowest: { readonly state: MarginState } | null }[],
): Record<MarginState, number> {
  const counts: Record<MarginState, number> = { fails: 0, low: 0, holds: 0 };
  for (const { lowest } of joints) if (lowest) counts[lowest.state]++;
  return counts;
}
