/** The request `joint.sizes`: one joint in its frame sizes, and the overlap that each or all of them need. */
import { MODEL_VERSION } from '../../../model/version.ts';
import { atSize } from '../../../shared/frame-sizes.ts';
import type { Project } from '../../../shared/project.ts';
import { ok, type Reply, refuse } from '../../../shared/reply.ts';
import type { SizeResult, SizesReport } from '../../../shared/reports-sizing.ts';
import { stepOf } from '../../../shared/usual-steps.ts';
import { type JobContext, unwatched } from '../../jobs/progress.ts';
import { guarded } from '../guarded.ts';
import { governingModes, toMargin } from '../margins.ts';
import { type ResolvedJoint, resolveAlone } from '../resolve.ts';
import { type JointJudge, judgeJoint } from './context.ts';
import { rangeOf } from './range.ts';
import { noLoad, shortestOverlap } from './size-joint.ts';

/** About how many analyses the sizing of one size takes. */
const STEPS = 20;

interface Sized {
  readonly result: SizeResult;
  /** Null where the size could not be computed. */
  readonly judge: JointJudge | null;
  /** Multiple of the step that it needs; null when none reaches the target. */
  readonly needs: number | null;
  /** Last multiple that was looked at. */
  readonly last: number;
}

export function sizesOf(
  project: Project,
  resolved: ResolvedJoint,
  { each }: { readonly each: boolean },
  { progress }: JobContext = unwatched,
): Reply<SizesReport> {
  const { joint, index } = resolved;
  const sizes = joint.sizes ?? [];
  if (sizes.length === 0) {
    return refuse(
      'bad-input',
      `joints.${index}.sizes`,
      `The joint "${joint.name}" has no frame sizes: give it some to analyse them together.`,
    );
  }
  const total = STEPS * sizes.length;
  const sized = sizes.map((size, i) => {
    let done = 0;
    const one = sizeOne(project, resolved, size, () => {
      done = Math.min(done + 1, STEPS);
      progress(STEPS * i + done, total, size.name);
    });
    const { refused } = one.result;
    // The fault is the size's: the joint itself may be sound.
    const field = `joints.${index}.sizes.${i}`;
    return refused ? { ...one, result: { ...one.result, refused: { ...refused, field } } } : one;
  });
  const results = sized.map(({ result }) => result);
  const lowest = results.reduce<SizeResult | null>(
    (low, one) =>
      one.lowest && (!low?.lowest || one.lowest.margin < low.lowest.margin) ? one : low,
    null,
  );
  return ok({
    jointId: joint.id,
    overlap: joint.overlap,
    target: project.settings.targetMargin,
    step: stepOf(project.settings, 'overlap'),
    each,
    sizes: results,
    worst: lowest?.sizeId ?? null,
    common: each ? null : commonOf(sized),
    modelVersion: MODEL_VERSION,
  });
}

function sizeOne(
  project: Project,
  { joint, index }: ResolvedJoint,
  size: NonNullable<ResolvedJoint['joint']['sizes']>[number],
  onAnalysis: () => void,
): Sized {
  const named = { sizeId: size.id, name: size.name };
  const target = project.settings.targetMargin;
  const reply = guarded(index, (): Reply<Sized> => {
    const own = resolveAlone(project, atSize(joint, size), index);
    const [present] = governingModes(own, project.settings, true);
    onAnalysis();
    if (!present) return noLoad(own);
    const step = stepOf(project.settings, 'overlap');
    const range = rangeOf(project, own, 'overlap', step, {});
    if (!range.ok) return range;
    const judge = judgeJoint({ ...own, project, vary: 'overlap', target, step, onAnalysis });
    const { plan, sized: end } = shortestOverlap(judge, range.value);
    const at = end.found?.low ?? end.best.multiple;
    return ok({
      judge,
      needs: end.found?.low ?? null,
      last: plan.last,
      result: {
        ...named,
        lowest: toMargin(present, own, target, ''),
        overlap: end.found ? judge.value(at) : null,
        there: judge.margin(judge.lowest(at) ?? end.best.row, at),
        at: judge.value(at),
        refused: null,
      },
    });
  });
  if (reply.ok) return reply.value;
  const nothing = { lowest: null, overlap: null, there: null, at: null };
  return {
    judge: null,
    needs: null,
    last: 0,
    result: { ...named, ...nothing, refused: reply.error },
  };
}

/** The largest of the sizings, or the next one past it, at which every size passes the full analysis. */
function commonOf(sized: readonly Sized[]): SizesReport['common'] {
  const all = sized.flatMap(({ judge, needs, last, result }) =>
    judge && needs !== null ? [{ judge, needs, last, result }] : [],
  );
  const [one] = all;
  if (!one || all.length < sized.length) return null;
  const asks = all.reduce((most, next) => (next.needs > most.needs ? next : most), one);
  const end = Math.max(...all.map(({ last }) => last));
  for (let multiple = asks.needs; multiple <= end; multiple++) {
    if (!all.every(({ judge }) => judge.reaches(multiple))) continue;
    if (!all.every(({ judge }) => judge.verified(multiple))) continue;
    return {
      overlap: asks.judge.value(multiple),
      by: asks.result.sizeId,
      checks: all.flatMap(({ judge, result }) => {
        const row = judge.rows(multiple)?.[0];
        return row ? [{ sizeId: result.sizeId, margin: judge.margin(row, multiple) }] : [];
      }),
    };
  }
  return null;
}
