/** What the bond margins of a check rest on: once where it is the same for all of them, else by joint. */
import type { JointSummary } from '../shared/reports.ts';
import { paragraph } from './layout.ts';

type Rested = Pick<JointSummary, 'jointId' | 'lowest'>;

/** Joints by what their lowest margin rests on, in their order; a wall's rests on no coupon. */
function groupsOf(joints: readonly Rested[]): readonly (readonly [string, readonly string[]])[] {
  const by = new Map<string, string[]>();
  for (const { jointId, lowest } of joints) {
    if (!lowest || lowest.restsOn === '') continue;
    const ids = by.get(lowest.restsOn);
    if (ids) ids.push(jointId);
    else by.set(lowest.restsOn, [jointId]);
  }
  return [...by];
}

/** Every joint is named where they differ: none is hidden behind "and 3 more". */
export function restsOnText(joints: readonly Rested[], width: number): string {
  const groups = groupsOf(joints);
  const [first, ...others] = groups;
  if (!first) return '';
  if (others.length === 0) {
    return paragraph(`The bond margins above rest on ${first[0]}.`, width);
  }
  return [
    'The bond margins above rest on',
    ...groups.map(([words, ids]) => paragraph(`${words}: ${ids.join(', ')}`, width, '  ')),
  ].join('\n');
}
