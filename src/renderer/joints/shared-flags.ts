/** A remark that holds for every joint is made once, not once a row. */
import type { Flag, JointSummary } from '../../shared/reports.ts';

const same = (a: Flag, b: Flag): boolean => a.code === b.code && a.message === b.message;

export function sharedFlags(joints: readonly JointSummary[]): Flag[] {
  const computed = joints.filter((joint) => joint.refused === null);
  const [first, ...rest] = computed;
  if (!first) return [];
  return first.flags.filter((flag) =>
    rest.every((joint) => joint.flags.some((other) => same(flag, other))),
  );
}

export const ownFlags = (joint: JointSummary, shared: readonly Flag[]): Flag[] =>
  joint.flags.filter((flag) => !shared.some((other) => same(flag, other)));
