/** The whole project: every joint with its lowest margin. */
import { say } from '../../model/said.ts';
import { MODEL_VERSION } from '../../model/version.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply } from '../../shared/reply.ts';
import type { CheckReport, Flag, JointSummary } from '../../shared/reports.ts';
import { type JobContext, unwatched } from '../jobs/progress.ts';
import { mergeShares } from '../jobs/shares.ts';
import { lowestOfJoint } from './corners.ts';
import { effortOf } from './effort.ts';
import { jointFlags } from './flags.ts';
import { foundationOf, restsOnSaid } from './foundation.ts';
import { guarded } from './guarded.ts';
import { countStates, describeJoint } from './labels.ts';
import { allowableToday } from './ledger/coupon-sets.ts';
import { toMargin } from './margins.ts';
import { type ResolvedJoint, resolveJoint } from './resolve.ts';

/** Allowables that count here, and whose coupons are not those any more that they were taken from. */
export function couponFlags(project: Project, resolved: ResolvedJoint): Flag[] {
  const adhesive = project.adhesives.find(({ id }) => id === resolved.joint.adhesive)!;
  const counting = new Set(
    resolved.cases.flatMap(({ input }) => foundationOf(resolved, input).allowables),
  );
  return [...counting].flatMap((one): Flag[] => {
    const { set } = allowableToday(project, adhesive, one);
    if (set === 'as-taken') return [];
    const what =
      set === 'gone'
        ? 'that set of coupons is no longer in the project.'
        : 'the coupons have changed since it was taken; take it again.';
    const said = say`${restsOnSaid(one)}, “${one.setName}”: ${what}`;
    return [{ code: `coupons-${set}`, ...said }];
  });
}

/** @param judged told how many of the joint's states are judged, of how many */
function summarise(
  project: Project,
  index: number,
  judged: (states: number, of: number) => void,
): JointSummary {
  const joint = project.joints[index]!;
  const common = {
    jointId: joint.id,
    name: joint.name,
    description: describeJoint(joint),
    overlap: joint.overlap,
  };
  const { settings } = project;
  const reply = guarded(index, () => {
    const resolved = resolveJoint(project, index);
    const lowest = lowestOfJoint(resolved, settings, judged);
    return ok({
      lowest: lowest ? toMargin(lowest, resolved, settings.targetMargin, '') : null,
      flags: [...jointFlags(resolved), ...couponFlags(project, resolved)],
    });
  });
  return reply.ok
    ? { ...common, ...reply.value, refused: null }
    : { ...common, lowest: null, flags: [], refused: reply.error };
}

/**
 * Judges the quickest joints first, so that whoever watches sees the first margins soon; the report is in the order of
 * the project. Progress counts efforts: the last joints take the longest.
 * @param context with a `share`, only every so manyth joint is judged, and the report holds these
 * alone: `mergeChecks` puts the shares together
 */
export function check(project: Project, context: JobContext = unwatched): CheckReport {
  const { progress, share = { part: 0, of: 1 } } = context;
  const efforts = project.joints.map(effortOf);
  const total = efforts.reduce((sum, effort) => sum + effort, 0);
  const indices = [...project.joints.keys()].filter((index) => index % share.of === share.part);
  const judged = new Map<number, JointSummary>();
  let done = 0;
  for (const index of indices.toSorted((a, b) => efforts[a]! - efforts[b]!)) {
    const joint = project.joints[index]!;
    const steps = efforts[index]!;
    const told = (fraction: number): void => progress(done + steps * fraction, total, joint.name);
    told(0);
    const summary = summarise(project, index, (states, of) => told(states / of));
    judged.set(index, summary);
    context.found?.(summary);
    told(1);
    done += steps;
  }
  const joints = indices.map((index) => judged.get(index)!);
  return {
    project: project.name,
    targetMargin: project.settings.targetMargin,
    joints,
    counts: countStates(joints),
    modelVersion: MODEL_VERSION,
  };
}

/** The report of the whole project from those of its shares, in their order. */
export const mergeChecks = (replies: readonly Reply<CheckReport>[]): Reply<CheckReport> =>
  mergeShares(replies, (joints: readonly JointSummary[]) => ({ counts: countStates(joints) }));
