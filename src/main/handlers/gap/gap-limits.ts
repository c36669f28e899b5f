/** Gaps at which a joint reaches its target, gaps at which coupons exist, gaps that are set. */
import { ModelError } from '../../../model/errors.ts';
import { type GapRangeFound, gapRange } from '../../../model/gap/gap-range.ts';
import type { JointInput } from '../../../model/joint/types.ts';
import { MODEL_VERSION } from '../../../model/version.ts';
import { type BondToMeasure, measuringPlan } from '../../../shared/measuring-plan.ts';
import type { Project } from '../../../shared/project.ts';
import { ok, type Reply, refuse } from '../../../shared/reply.ts';
import type { Flag } from '../../../shared/reports.ts';
import type { BondRange, GapLimitsReport, GapRange } from '../../../shared/reports-gap.ts';
import { signed } from '../../../shared/words.ts';
import { type JobContext, unwatched } from '../../jobs/progress.ts';
import { lowestOfJoint } from '../corners.ts';
import { modeLabel } from '../labels.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { withGaps } from './gap-verdict.ts';
import { adhesiveOf, couponRange } from './limits.ts';

/** mm: the thinnest gap looked at, and the thickest at least. */
const SWEEP = { from: 0.02, to: 0.6, points: 25 } as const;

/** Where both hold; null when they do not meet. */
function common(a: GapRange | null, b: GapRange | null): GapRange | null {
  if (!a || !b) return null;
  const [from, to] = [Math.max(a.from, b.from), Math.min(a.to, b.to)];
  return from <= to ? { from, to } : null;
}

function rangeFlags(found: GapRangeFound, drawn: number, target: number): readonly Flag[] {
  if (found.range) {
    const ends = [...(found.open.from ? ['thinner'] : []), ...(found.open.to ? ['thicker'] : [])];
    if (ends.length === 0) return [];
    return [
      {
        code: 'range-open',
        message: `By the model still ${ends.join(' and ')} gaps would do; it was not looked further.`,
      },
    ];
  }
  const at = found.curve.find(({ gap }) => gap === drawn);
  return [
    {
      code: 'drawn-below-target',
      message: at
        ? `At the drawn gap of ${drawn} mm the margin is ${signed(at.margin)} (${at.mode}), below the target of ${signed(target)}: there is no range around it.`
        : `The joint has no margin at the drawn gap of ${drawn} mm: there is no range around it.`,
    },
  ];
}

export function gapLimits(
  project: Project,
  resolved: ResolvedJoint,
  { progress }: JobContext = unwatched,
): Reply<GapLimitsReport> {
  const { joint, index, input } = resolved;
  const plan = measuringPlan(joint);
  if (!plan) {
    return refuse(
      'bad-input',
      `joints.${index}.type`,
      `“${joint.name}” is a flat joint: its gap is set by spacers, and sized on the Size page.`,
    );
  }
  if (joint.loads.length === 0) {
    return refuse(
      'bad-input',
      `joints.${index}.loads`,
      `The joint "${joint.name}" has no load case: give it one.`,
    );
  }
  const { settings } = project;
  const adhesive = adhesiveOf(project, resolved);
  const coupons = couponRange(adhesive);
  const drawn = plan.bonds.map(({ gap }) => gap);
  /** Null where there is no such joint: a thick gap can leave no room for the spigot. */
  const lowestWith = (changed: JointInput) => {
    try {
      return lowestOfJoint({ ...resolved, input: changed }, settings);
    } catch (error) {
      if (error instanceof ModelError || error instanceof RangeError) return null;
      throw error;
    }
  };
  const rangeOf = ({ bond, key, gap }: BondToMeasure, i: number): BondRange => {
    const found = gapRange({
      drawn: gap,
      target: settings.targetMargin,
      from: Math.min(SWEEP.from, gap),
      to: Math.max(SWEEP.to, 2 * (coupons?.to ?? 0), 2 * gap),
      points: SWEEP.points,
      marginAt: (at) => {
        const gaps = drawn.map((other, k) => (k === i ? at : other));
        const lowest = lowestWith(withGaps(input, gaps));
        if (!lowest) return null;
        const { margin, mode, part, x } = lowest.result;
        return { margin, mode: modeLabel(mode, part, x < input.overlap / 2) };
      },
      told: (done, of) => progress(i + done / of, plan.bonds.length, bond),
    });
    return {
      bond,
      drawn: gap,
      curve: found.curve,
      model: found.range,
      open: found.open,
      coupons: coupons && { ...coupons, source: adhesive.knockdowns!.source },
      narrower: common(found.range, coupons),
      set: joint.bench?.limits?.[key] ?? null,
      flags: rangeFlags(found, gap, settings.targetMargin),
    };
  };
  return ok({
    jointId: joint.id,
    targetMargin: settings.targetMargin,
    bonds: plan.bonds.map(rangeOf),
    modelVersion: MODEL_VERSION,
  });
}
