/** How long it takes to judge a joint, against others: for the order of a check, and for how far it is. */
import type { Joint } from '../../shared/project.ts';
import { sleeveWalls } from '../../shared/vary-joint.ts';

/**
 * Milliseconds for a load case with all of its gap states, where the walls are even and where they taper: medians of
 * a project made by a script, on one machine. Only their ratios matter, and nothing hangs on them but order and time.
 */
const FOR_A_CASE: Readonly<Record<Joint['type'], readonly [even: number, tapered: number]>> = {
  'flat-single': [17, 32],
  'flat-double': [13, 71],
  'sleeve-single': [20, 160],
  'sleeve-double': [35, 380],
};

/** A joint without a load case is a step too. */
export function effortOf(joint: Joint): number {
  const isTapered = sleeveWalls(joint).some(({ atRoot, atMouth }) => atRoot !== atMouth);
  const [even, tapered] = FOR_A_CASE[joint.type];
  return (isTapered ? tapered : even) * Math.max(1, joint.loads.length);
}
