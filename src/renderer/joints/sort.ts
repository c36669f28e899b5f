/** The order of the joints' table. */
import type { JointSummary } from '../../shared/reports.ts';

export type SortKey = 'margin' | 'name';

export interface Order {
  readonly by: SortKey;
  readonly down: boolean;
}

/** What needs attention first: what cannot be computed, then by margin, then what nothing loads. */
const rank = (joint: JointSummary): number =>
  joint.refused ? Number.NEGATIVE_INFINITY : (joint.lowest?.margin ?? Number.POSITIVE_INFINITY);

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

export function sorted(joints: readonly JointSummary[], order: Order): JointSummary[] {
  const compare = (a: JointSummary, b: JointSummary): number => {
    const [left, right] = [rank(a), rank(b)];
    if (order.by === 'margin' && left !== right) return left < right ? -1 : 1;
    return byName.compare(a.name, b.name);
  };
  const list = joints.toSorted(compare);
  return order.down ? list.reverse() : list;
}

/** A second press turns the order round. */
export const pressed = <K extends string>(
  order: { readonly by: K; readonly down: boolean },
  by: K,
): { readonly by: K; readonly down: boolean } => ({
  by,
  down: order.by === by ? !order.down : false,
});
