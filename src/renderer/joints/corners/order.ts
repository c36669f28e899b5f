/** The order of the table of joints against load cases. */
import type { JointCorners } from '../../../shared/reports.ts';

export interface CornerOrder {
  /** `joint`, `margin`, or `case` and the id of a load case. */
  readonly by: string;
  readonly down: boolean;
}

export const lowestFirst: CornerOrder = { by: 'margin', down: false };
export const byCase = (caseId: string): string => `case ${caseId}`;

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** What cannot be computed first, then by margin, then what the column says nothing about. */
function rank(joint: JointCorners, by: string): number {
  if (joint.refused) return Number.NEGATIVE_INFINITY;
  const lowest =
    by === 'margin'
      ? joint.lowest
      : joint.cells.find(({ caseId }) => byCase(caseId) === by)?.lowest;
  return lowest?.margin ?? Number.POSITIVE_INFINITY;
}

export function sortedCorners(joints: readonly JointCorners[], order: CornerOrder): JointCorners[] {
  const ranks = new Map(joints.map((joint) => [joint, rank(joint, order.by)] as const));
  const list = joints.toSorted((a, b) => {
    const [left, right] = [ranks.get(a)!, ranks.get(b)!];
    if (order.by !== 'joint' && left !== right) return left < right ? -1 : 1;
    return byName.compare(a.name, b.name);
  });
  return order.down ? list.reverse() : list;
}
