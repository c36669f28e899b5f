/** The request `joint.size`: the size that reaches the target, or what stops it and what would help. */

import {
  ALIKE,
  type GridPoint,
  nearest,
  type Sized,
  type SizePlan,
  size,
} from '../../../model/sizing/size.ts';
import { LONGEST_OVERLAP } from '../../../model/sweep/overlap-sweep.ts';
import { MODEL_VERSION } from '../../../model/version.ts';
import type { Project } from '../../../shared/project.ts';
import { ok, type Reply, refuse } from '../../../shared/reply.ts';
import type {
  SizingCheck,
  SizingFound,
  SizingReport,
  SizingStop,
} from '../../../shared/reports-sizing.ts';
import { suggestionWords, varyWords } from '../../../shared/sizing-words.ts';
import { stepOf } from '../../../shared/usual-steps.ts';
import { type Vary, variedValue } from '../../../shared/vary-joint.ts';
import { type JobContext, unwatched } from '../../jobs/progress.ts';
import { jointFlags } from '../flags.ts';
import { governingModes, toMargin } from '../margins.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { type JointJudge, judgeJoint, type SizingContext } from './context.ts';
import { type Range, rangeOf } from './range.ts';
import { ladders, type Suggested, suggest } from './suggest.ts';

export interface SizeQuestion {
  readonly vary: Vary;
  readonly target?: number | undefined;
  readonly step?: number | undefined;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** About how many analyses a search takes, and the trial of one change. */
const SEARCH = 28;
const TRIAL = 24;

export function sizeJoint(
  project: Project,
  resolved: ResolvedJoint,
  {
    vary,
    target = project.settings.targetMargin,
    step = stepOf(project.settings, vary),
    ...asked
  }: SizeQuestion,
  { progress }: JobContext = unwatched,
): Reply<SizingReport> {
  const { joint, index } = resolved;
  progress(0, SEARCH, varyWords[vary].noun);
  const [present] = governingModes(resolved, project.settings, true);
  if (!present) return noLoad(resolved);
  const range = rangeOf(project, resolved, vary, step, asked);
  if (!range.ok) return range;
  const { first, last, chosen } = range.value;

  let done = 0;
  let [until, total] = [SEARCH, SEARCH];
  let what = varyWords[vary].noun;
  const onAnalysis = (): void => {
    done = Math.min(done + 1, until);
    progress(done, total, what);
  };
  const context: SizingContext = { project, joint, index, vary, target, step, onAnalysis };
  const judge = judgeJoint(context);
  const { plan, sized } = sizeUpTo(
    judge,
    { first, last, wanted: vary === 'gap' ? 'stretch' : 'smallest', drawn: true },
    vary === 'overlap' && chosen,
  );

  let suggested: Suggested = { suggestions: [], noHelp: [] };
  if (!sized.found) {
    const all = ladders(context, resolved);
    [done, total] = [SEARCH, SEARCH + TRIAL * all.length];
    const { row, multiple } = sized.best;
    const best = { margin: row.result.margin, multiple };
    suggested = suggest(context, all, plan, best, (kind) => {
      [done, until] = [until, until + TRIAL];
      what = suggestionWords[kind];
    });
  }
  return ok({
    jointId: joint.id,
    type: joint.type,
    vary,
    target,
    step,
    from: judge.value(first),
    to: judge.value(plan.last),
    present: { value: variedValue(joint, vary), margin: toMargin(present, resolved, target, '') },
    points: sized.points.map(({ multiple, row }) => {
      const { margin, mode, label } = judge.margin(row, multiple);
      return { value: judge.value(multiple), margin, mode, label };
    }),
    found: foundOf(sized, judge),
    stop: sized.found ? null : stopOf(sized, judge),
    ...suggested,
    flags: jointFlags(resolved),
    modelVersion: MODEL_VERSION,
  });
}

/**
 * Past the plateau little is gained, but "no overlap" must be true of the longest, too.
 * @param further true when the end of the range was not asked for
 */
export function sizeUpTo(
  judge: JointJudge,
  plan: SizePlan,
  further: boolean,
): { readonly plan: SizePlan; readonly sized: Sized } {
  const sized = size(judge, plan);
  const last = Math.floor(LONGEST_OVERLAP / judge.value(1));
  if (sized.found || !further || plan.last >= last || !judge.reaches(last)) return { plan, sized };
  const longer = { ...plan, last };
  return { plan: longer, sized: size(judge, longer) };
}

/** The shortest overlap of a joint, without a drawing; where none reaches the target, where it comes nearest. */
export function shortestOverlap(
  judge: JointJudge,
  { first, last, chosen }: Range,
): { readonly plan: SizePlan; readonly sized: Sized } {
  const begun = { first, last, wanted: 'smallest', drawn: false } as const;
  const { plan, sized } = sizeUpTo(judge, begun, chosen);
  return { plan, sized: sized.found ? sized : nearest(judge, plan) };
}

export const noLoad = ({ index, joint }: ResolvedJoint): Reply<never> =>
  refuse(
    'bad-input',
    `joints.${index}.loads`,
    `No load acts on the joint "${joint.name}" in any case: give it one to size it.`,
  );

export function checkAt(judge: JointJudge, multiple: number): SizingCheck {
  const row = judge.rows(multiple)?.[0];
  return {
    value: judge.value(multiple),
    reached: judge.verified(multiple),
    margin: row ? judge.margin(row, multiple) : null,
  };
}

function foundOf({ found }: Sized, judge: JointJudge): SizingFound | null {
  if (!found) return null;
  const { low, bounded, high, boundedAbove, lostAt } = found;
  const answer = high ?? low;
  const checked = [
    ...(bounded ? [low - 1] : []),
    low,
    ...(high !== null && high !== low ? [high] : []),
    ...(high !== null && boundedAbove ? [high + 1] : []),
  ];
  const margin = checkAt(judge, answer).margin;
  if (!margin) throw new RangeError('the answer has no margin');
  return {
    value: judge.value(answer),
    margin,
    low: judge.value(low),
    lowBounded: bounded,
    high: high === null ? null : judge.value(high),
    highBounded: boundedAbove,
    lostAt: lostAt === null ? null : judge.value(lostAt),
    checks: checked.map((multiple) => checkAt(judge, multiple)),
    joint: judge.joint(answer),
  };
}

function stopOf({ points, best }: Sized, judge: JointJudge): SizingStop {
  const marginOf = ({ row }: GridPoint): number => row.result.margin;
  const end = points.at(-1) ?? best;
  const before = points.at(-2) ?? end;
  const level = points.find((point) => marginOf(point) >= marginOf(best) - ALIKE) ?? best;
  const below = ({ multiple }: GridPoint) =>
    (judge.rows(multiple) ?? []).flatMap((row) => {
      const margin = judge.margin(row, multiple);
      return judge.target > margin.margin ? [margin] : [];
    });
  return {
    best: judge.value(best.multiple),
    margin: judge.margin(best.row, best.multiple),
    levelFrom: judge.value(level.multiple),
    rising: best === end && marginOf(end) - marginOf(before) > ALIKE,
    end: judge.value(end.multiple),
    endMargin: judge.margin(end.row, end.multiple),
    atBest: below(best),
    atEnd: below(end),
  };
}
