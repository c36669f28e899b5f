/** Measured parts: what is missing, what looks wrong, the gap between them, the adhesive to fill it. */
import { measureGap } from '../../../model/gap/measure-gap.ts';
import { summarise } from '../../../model/gap/summary.ts';
import { bareEnds, ovalIsSeen } from '../../../model/gap/surface.ts';
import type * as model from '../../../model/gap/types.ts';
import { surfaceWords } from '../../../shared/bench-words.ts';
import { findMistakes } from '../../../shared/measured-mistakes.ts';
import {
  type MeasuringPlan,
  measuringPlan,
  usualInstrument,
} from '../../../shared/measuring-plan.ts';
import type { MeasuredSurface, Project } from '../../../shared/project.ts';
import { ok, type Reply, refuse } from '../../../shared/reply.ts';
import type { Flag } from '../../../shared/reports.ts';
import type {
  BenchAmounts,
  BondGap,
  GapReport,
  GapSpan,
  PlacedGap,
  SurfaceShape,
  Uncertain,
} from '../../../shared/reports-gap.ts';
import { degrees, radians } from '../margins.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { amountsOf, drawnVolume } from './amounts.ts';
import { adhesiveOf, limitFlags, limitsOf } from './limits.ts';

/** Of the expanded uncertainties: about 95 % of a normal distribution. */
export const COVERAGE = 2;
/** Share of the overlap that the end stations may leave bare unsaid. */
const BARE = 0.2;

/** What was asked about, as the model takes it; null until it is complete. */
export interface GapQuestion {
  readonly plan: MeasuringPlan;
  readonly model: model.MeasuredJoint | null;
}

export interface GapAnswer {
  readonly report: GapReport;
  readonly question: GapQuestion;
  /** As the model found them; empty until everything is measured. */
  readonly gaps: readonly model.MeasuredGap[];
}

const toModel = (surface: MeasuredSurface): model.MeasuredSurface => ({
  stations: surface.stations,
  clockings: surface.clockings.map(radians),
  diameters: surface.diameters as number[][],
  error: surface.instrument.error,
  repeatability: surface.instrument.repeatability,
});

const uncertain = ({ value, standard }: model.Spread): Uncertain => ({
  value,
  uncertainty: COVERAGE * standard,
});
const placed = (spread: model.PlacedSpread): PlacedGap => ({
  ...uncertain(spread),
  x: spread.x,
  theta: degrees(spread.theta),
});
const span = ({ min, mean, max }: model.Span): GapSpan => ({
  min: placed(min),
  mean: uncertain(mean),
  max: placed(max),
});

/**
 * As far as the held gap can be by its uncertainty; no thinner than the spacers that the parts rest on.
 * @param sampled intervals of the Monte Carlo; where they reach further, they count
 */
export function reachOf(
  { held }: Pick<model.MeasuredGap, 'held'>,
  spacer: number,
  sampled?: { readonly min: model.Interval; readonly max: model.Interval },
): BondGap['reach'] {
  const thin = Math.min(
    held.min.value - COVERAGE * held.min.standard,
    sampled?.min.low ?? Number.POSITIVE_INFINITY,
  );
  const thick = held.max.value + COVERAGE * held.max.standard;
  return {
    from: Math.max(thin, Math.min(spacer, held.min.value)),
    to: Math.max(thick, sampled?.max.high ?? thick),
  };
}

function shapeOf(surface: MeasuredSurface, overlap: number): SurfaceShape {
  const { mean, ovality, taper } = summarise(toModel(surface), overlap);
  return { surface: surface.surface, mean: uncertain(mean), ovality, taper };
}

/** Surfaces that are not of this joint, or there twice. */
function strange(plan: MeasuringPlan, measured: readonly MeasuredSurface[]): Reply<never> | null {
  const known = plan.surfaces.map(({ surface }) => surface);
  for (const [i, { surface }] of measured.entries()) {
    const field = `measured.${i}.surface`;
    if (!known.includes(surface)) {
      const list = known.map((one) => surfaceWords[one]).join('; ');
      return refuse(
        'bad-input',
        field,
        `This joint has no surface “${surfaceWords[surface]}”: it has ${list}.`,
      );
    }
    if (measured.findIndex((one) => one.surface === surface) < i) {
      return refuse('bad-input', field, `“${surfaceWords[surface]}” is there twice: keep one.`);
    }
  }
  return null;
}

const isUsual = ({ instrument: { error, repeatability } }: MeasuredSurface): boolean =>
  error === usualInstrument.error && repeatability === usualInstrument.repeatability;

function measuringFlags(
  project: Project,
  measured: readonly MeasuredSurface[],
  overlap: number,
): readonly Flag[] {
  const flags: Flag[] = [];
  const named = (list: readonly MeasuredSurface[]): string =>
    list.map(({ surface }) => surfaceWords[surface]).join('; ');
  const unseen = measured.filter(({ clockings }) => !ovalIsSeen(clockings.map(radians)));
  if (unseen.length > 0) {
    flags.push({
      code: 'ovality-unseen',
      message: `${named(unseen)}: too few clockings to see how out of round it is; measure at 0°, 60° and 120°.`,
    });
  }
  const bare = measured.filter(({ stations }) => {
    const ends = bareEnds(stations, overlap);
    return Math.max(ends.mouth, ends.root) > BARE * overlap + 1e-9;
  });
  if (bare.length > 0) {
    flags.push({
      code: 'ends-bare',
      message: `${named(bare)}: more than a fifth of the joint lies beyond the end stations; the gap is taken straight on there.`,
    });
  }
  if (!project.instruments?.length && measured.some(isUsual)) {
    flags.push({
      code: 'usual-instrument',
      message: `The accuracy of the caliper, ±${usualInstrument.error} mm, is from memory: put your own instruments into the project.`,
    });
  }
  return flags;
}

/** g: less than this is hard to weigh and to mix evenly (common practice, no source). */
const LEAST_MIX = 5;

const mixFlags = ({ mixMass, resin }: BenchAmounts): readonly Flag[] =>
  mixMass === null || resin === null || mixMass >= LEAST_MIX
    ? []
    : [
        {
          code: 'small-mix',
          message: `${mixMass.toFixed(2)} g are hard to weigh and to mix evenly (common practice): mix at least ${LEAST_MIX} g, and make the witness coupons of the rest.`,
        },
      ];

const readingsLeft = ({ diameters, stations, clockings }: MeasuredSurface): number =>
  stations.length * clockings.length - diameters.flat().filter((one) => one !== null).length;

export function gapOf(
  project: Project,
  resolved: ResolvedJoint,
  measured: readonly MeasuredSurface[],
): Reply<GapAnswer> {
  const { joint, index } = resolved;
  const plan = measuringPlan(joint);
  if (!plan) {
    return refuse(
      'bad-input',
      `joints.${index}.type`,
      `“${joint.name}” is a flat joint: it has no diameters to measure. Its gap is set by spacers and read with feeler gauges.`,
    );
  }
  const wrong = strange(plan, measured);
  if (wrong) return wrong;
  const mistakes = findMistakes(joint, measured);
  const missing = plan.surfaces.flatMap(({ surface }) => {
    const one = measured.find((here) => here.surface === surface);
    const count = one ? readingsLeft(one) : plan.stations.length * plan.clockings.length;
    return count > 0 ? [{ surface, count }] : [];
  });
  const whole = missing.length === 0 && !mistakes.some(({ level }) => level === 'wrong');
  const bySurface = new Map(measured.map((one) => [one.surface, one]));
  const question: model.MeasuredJoint | null = whole
    ? {
        overlap: joint.overlap,
        bonds: plan.bonds.map(({ inside, outside, tubeInside }) => ({
          inside: toModel(bySurface.get(inside)!),
          outside: toModel(bySurface.get(outside)!),
          tubeInside,
        })),
        holding: {
          spacer: joint.bench?.spacer?.size ?? 0,
          offset: joint.bench?.jigOffset ?? Number.POSITIVE_INFINITY,
        },
      }
    : null;
  const gaps = question ? measureGap(question) : [];
  const bonds = gaps.map((gap, i): BondGap => {
    const { bond, inside, outside } = plan.bonds[i]!;
    return {
      bond,
      inside,
      outside,
      centred: span(gap.centred),
      held: span(gap.held),
      reach: reachOf(gap, question!.holding.spacer),
      offset: { value: gap.offset.value, theta: degrees(gap.offset.theta) },
      stoppedBy: gap.stoppedBy,
      map: { ...gap.map, theta: gap.map.theta.map(degrees) },
      volume: gap.volume,
    };
  });
  const adhesive = adhesiveOf(project, resolved);
  const volume = question ? gaps.reduce((sum, gap) => sum + gap.volume, 0) : drawnVolume(resolved);
  const amounts = amountsOf(project, resolved, volume);
  const report: GapReport = {
    jointId: joint.id,
    missing,
    mistakes,
    shapes: whole ? measured.map((surface) => shapeOf(surface, joint.overlap)) : [],
    bonds,
    limits: plan.bonds.map((bond) => limitsOf(adhesive, joint.bench, bond)),
    amounts,
    flags: [
      ...limitFlags(adhesive, joint, plan.bonds),
      ...measuringFlags(project, measured, joint.overlap),
      ...mixFlags(amounts),
    ],
  };
  return ok({ report, question: { plan, model: question }, gaps });
}
