/** May these parts be bonded: the gap as measured, the margins at it, the verdict. */
import { ModelError } from '../../../model/errors.ts';
import { gapScatter } from '../../../model/gap/gap-scatter.ts';
import type { MeasuredGap } from '../../../model/gap/types.ts';
import { judgeGap } from '../../../model/gap/verdict.ts';
import type { JointInput } from '../../../model/joint/types.ts';
import { MODEL_VERSION } from '../../../model/version.ts';
import type { MeasuredSurface, Project } from '../../../shared/project.ts';
import { ok, type Reply } from '../../../shared/reply.ts';
import type { Margin } from '../../../shared/reports.ts';
import type { GapReport, GapScatter, GapVerdict, Reason } from '../../../shared/reports-gap.ts';
import { count, sentence } from '../../../shared/words.ts';
import { type JobContext, unwatched } from '../../jobs/progress.ts';
import { lowestOfJoint } from '../corners.ts';
import { type Governing, toMargin } from '../margins.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { COVERAGE, type GapAnswer, gapOf, reachOf } from './gap.ts';
import { sayFinding } from './gap-words.ts';

/** Of the Monte Carlo beside the uncertainties; the same seed gives the same figures. */
export const SCATTER = { samples: 2000, seed: 1 } as const;

/** The joint with these gaps all the way round, the outer bond's last. */
export function withGaps(joint: JointInput, gaps: readonly number[]): JointInput {
  const bond = (i: number) => ({ gap: gaps[i]!, tolerance: 0 });
  if (joint.type === 'sleeve-single') return { ...joint, bond: bond(0), offset: 0 };
  if (joint.type === 'sleeve-double') {
    return { ...joint, innerBond: bond(0), outerBond: bond(1), offset: 0 };
  }
  return joint;
}

interface Ends {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}

/** Gaps to judge: all bonds thin, mean and thick; of two bonds also one thin where the other is thick. */
function combinations(bonds: readonly Ends[]): readonly (readonly number[])[] {
  const all = (['min', 'mean', 'max'] as const).map((end) => bonds.map((bond) => bond[end]));
  if (bonds.length < 2) return all;
  const [inner, outer] = bonds as [Ends, Ends];
  return [...all, [inner.min, outer.max], [inner.max, outer.min]];
}

const measuredEnds = ({ held }: MeasuredGap): Ends => ({
  min: held.min.value,
  mean: held.mean.value,
  max: held.max.value,
});

/** The lowest margin, or why there is none, as it stands in a sentence. */
export interface Strength {
  readonly margin: Margin | null;
  readonly why: string;
}

/** @param told after each combination of gaps */
function lowestAt(
  resolved: ResolvedJoint,
  { settings }: Project,
  bonds: readonly Ends[],
  told: (judged: number, of: number) => void,
): Strength {
  const list = combinations(bonds);
  if (list.some((gaps) => gaps.some((gap) => !(gap > 0)))) {
    return { margin: null, why: 'the parts touch' };
  }
  let lowest: { readonly governing: Governing; readonly at: ResolvedJoint } | null = null;
  for (const [i, gaps] of list.entries()) {
    const at = { ...resolved, input: withGaps(resolved.input, gaps) };
    try {
      const governing = lowestOfJoint(at, settings, (states, of) =>
        told(i + states / of, list.length),
      );
      if (governing && (!lowest || governing.result.margin < lowest.governing.result.margin)) {
        lowest = { governing, at };
      }
    } catch (error) {
      // A gap so far from the drawing that there is no such joint is an answer, not a fault.
      if (!(error instanceof ModelError || error instanceof RangeError)) throw error;
      const message = error.message.replace(/\.$/, '');
      return { margin: null, why: message.charAt(0).toLowerCase() + message.slice(1) };
    }
  }
  return lowest
    ? { margin: toMargin(lowest.governing, lowest.at, settings.targetMargin, ''), why: '' }
    : { margin: null, why: 'it carries no load' };
}

const notYet = ({ missing, mistakes }: GapReport, of: number): Reason | null => {
  const [wrong] = mistakes.filter(({ level }) => level === 'wrong');
  const common = { state: 'unknown', bond: null } as const;
  if (wrong) return { ...common, code: 'reading', message: wrong.message };
  const left = missing.reduce((sum, one) => sum + one.count, 0);
  if (left === 0) return null;
  const message = `${sentence(count(left)).slice(0, -1)} of ${of} readings ${left === 1 ? 'is' : 'are'} still to be taken.`;
  return { ...common, code: 'not-measured', message };
};

/** Readings that the check will have in all. */
const readingsOf = (measured: readonly MeasuredSurface[], { question }: GapAnswer): number =>
  question.plan.surfaces.reduce((sum, { surface }) => {
    const { stations, clockings } =
      measured.find((one) => one.surface === surface) ?? question.plan;
    return sum + stations.length * clockings.length;
  }, 0);

const strengthUnknown = (why: string): Reason => ({
  code: 'no-margin',
  state: 'hold',
  bond: null,
  message: `The gap is within its limits, but whether the joint is strong enough at it cannot be told: ${why}.`,
});

/** Readings that leave something unseen decide nothing by themselves. */
const UNSEEN: ReadonlySet<string> = new Set(['ovality-unseen', 'ends-bare']);

/** Shares of the progress: Monte Carlo, margins as measured, at the ends of the uncertainty. */
const TOTAL = 100;
const PARTS = { measured: 45, guarded: 45, scatter: 10 } as const;

export function gapVerdict(
  project: Project,
  resolved: ResolvedJoint,
  measured: readonly MeasuredSurface[],
  { progress }: JobContext = unwatched,
  now: () => Date = () => new Date(),
): Reply<GapVerdict> {
  const reply = gapOf(project, resolved, measured);
  if (!reply.ok) return reply;
  const { report, question, gaps } = reply.value;
  const { joint } = resolved;
  const target = project.settings.targetMargin;
  const common = {
    jointId: joint.id,
    gap: report,
    targetMargin: target,
    modelVersion: MODEL_VERSION,
    at: now().toISOString(),
  };
  const reason = notYet(report, readingsOf(measured, reply.value));
  if (reason || !question.model) {
    const reasons = reason ? [reason] : [];
    return ok({
      ...common,
      state: 'unknown',
      reasons,
      scatter: [],
      measured: null,
      guarded: null,
    });
  }
  const { holding } = question.model;
  const doubts = report.mistakes.filter(({ level }) => level === 'doubt').length;
  const part = (before: number, share: number, what: string) => (done: number, of: number) =>
    progress(before + (share * done) / of, TOTAL, what);
  const scattered = gapScatter(
    question.model,
    SCATTER,
    part(0, PARTS.scatter, 'uncertainty by Monte Carlo'),
  );
  const reaches = gaps.map((gap, i) => reachOf(gap, holding.spacer, scattered[i]!));
  const marginAt = (bonds: readonly Ends[], before: number, share: number, what: string) =>
    // Of readings in doubt no margin is worth its time.
    doubts > 0
      ? { margin: null, why: '' }
      : lowestAt(resolved, project, bonds, part(before, share, what));
  const atMeasured = marginAt(
    gaps.map(measuredEnds),
    PARTS.scatter,
    PARTS.measured,
    'margins at the gap as measured',
  );
  const atGuarded = marginAt(
    reaches.map(({ from, to }, i) => ({ min: from, mean: gaps[i]!.held.mean.value, max: to })),
    PARTS.scatter + PARTS.measured,
    PARTS.guarded,
    'margins within the uncertainty',
  );
  const findings = judgeGap({
    bonds: gaps.map((gap, i) => {
      const { centredMin: room, min, max } = scattered[i]!;
      return { gap, ...report.limits[i]!, sampled: { room, min, max } };
    }),
    holding,
    coverage: COVERAGE,
    target,
    measured: atMeasured.margin?.margin ?? null,
    guarded: atGuarded.margin?.margin ?? null,
    doubts,
    unseen: report.flags.some(({ code }) => UNSEEN.has(code)),
  });
  const said = {
    bonds: report.bonds,
    limits: report.limits,
    bench: joint.bench,
    measured: atMeasured.margin,
    guarded: atGuarded.margin,
    target,
  };
  const reasons = findings.map(
    (finding): Reason => ({
      code: finding.code,
      state: finding.state,
      bond: finding.bond === null ? null : report.bonds[finding.bond]!.bond,
      message: sayFinding(finding, said),
    }),
  );
  // Never accepted on geometry alone: a strength that nobody has asked for is not known to be enough.
  const unknown = [atMeasured, atGuarded].find(({ margin }) => margin === null);
  const decided =
    unknown && doubts === 0 && reasons[0]!.state === 'accept'
      ? [strengthUnknown(unknown.why)]
      : reasons;
  const bonds = report.bonds.map((bond, i) => ({ ...bond, reach: reaches[i]! }));
  return ok({
    ...common,
    gap: { ...report, bonds },
    state: decided[0]!.state,
    reasons: decided,
    scatter: scattered.map(
      ({ min, mean, max }, i): GapScatter => ({
        bond: report.bonds[i]!.bond,
        min: { low: min.low, high: min.high },
        mean: { low: mean.low, high: mean.high },
        max: { low: max.low, high: max.high },
        ...SCATTER,
      }),
    ),
    measured: atMeasured.margin,
    guarded: atGuarded.margin,
  });
}
