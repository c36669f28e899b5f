/** All that is said of the coupons of a project: predicted, measured, statistics, correlation. */
import { MODEL_VERSION } from '../../../model/version.ts';
import type { Project } from '../../../shared/project.ts';
import type { CouponSet, Coupons, Specimen } from '../../../shared/project-coupons.ts';
import { ok, type Reply, refuse } from '../../../shared/reply.ts';
import type {
  CouponFlag,
  CouponLine,
  CouponSetReport,
  CouponsReport,
} from '../../../shared/reports-coupons.ts';
import { isSmallSingleLap } from '../../../shared/standard-specimens.ts';
import { type JobContext, unwatched } from '../../jobs/progress.ts';
import { lifeReport } from './life.ts';
import { linesOf } from './lines.ts';
import { misfit } from './misfit.ts';
import { calibrationOf, gapCurvesOf, offersOf } from './offers.ts';
import { predictCoupon } from './predict.ts';
import { areaOf, couponJoint } from './specimen-joint.ts';
import { correlationOf, statisticsOf } from './statistics.ts';

/** Grips for this many times the load that is expected (common practice, no source). */
const GRIP = 2;

const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

/** Gaps between which shear properties are usually measured, mm (common practice, no source). */
const USUAL_GAPS = [0.05, 0.5] as const;
const isUnusual = (gap: number): boolean => gap < USUAL_GAPS[0] || gap > USUAL_GAPS[1];

/** Of the set where its own gap is unusual, else of the coupons whose gap as measured is. */
function gapFlag(set: Pick<CouponSet, 'gap'>, lines: readonly CouponLine[]): CouponFlag[] {
  const measured = lines.filter(({ gap }) => isUnusual(gap)).length;
  if (!isUnusual(set.gap) && measured === 0) return [];
  const whose = isUnusual(set.gap)
    ? `The gap of the set is ${set.gap} mm`
    : `The gap of ${some(measured, 'coupon')} is not between ${USUAL_GAPS[0]} and ${USUAL_GAPS[1]} mm`;
  const message = `${whose}: shear properties are usually measured between ${USUAL_GAPS[0]} and ${USUAL_GAPS[1]} mm (common practice, no source). Look whether it is a slip.`;
  return [{ code: 'unusual-gap', message }];
}

function flagsOf(
  specimen: Specimen,
  set: Pick<CouponSet, 'gap'>,
  lines: readonly CouponLine[],
): readonly CouponFlag[] {
  const flags: CouponFlag[] = [];
  const surface = lines.filter(({ apart }) => apart === 'surface').length;
  const partly = lines.filter(
    ({ apart, adhesion }) => apart === null && (adhesion ?? 0) > 0,
  ).length;
  const adherend = lines.filter(({ apart }) => apart === 'adherend').length;
  const unseen = lines.filter(({ adhesion }) => adhesion === null).length;
  if (surface > 0) {
    flags.push({
      code: 'surface-failed',
      message: `${some(surface, 'coupon')} came off a surface: that tests the preparation, not the adhesive. They are kept apart; mend the preparation before you design to the others.`,
    });
  }
  if (partly > 0) {
    flags.push({
      code: 'surface-partly',
      message: `${some(partly, 'coupon')} that ${partly === 1 ? 'counts' : 'count'} came partly off a surface.`,
    });
  }
  if (adherend > 0) {
    flags.push({
      code: 'adherend-broke',
      message: `${some(adherend, 'coupon')} broke in the adherend: the bond is at least this strong. Kept apart.`,
    });
  }
  if (unseen > 0) {
    flags.push({
      code: 'modes-unseen',
      message: `Of ${some(unseen, 'coupon')} the failure mode is not recorded: nobody knows whether the adhesive or the surface was tested.`,
    });
  }
  flags.push(...gapFlag(set, lines));
  if (isSmallSingleLap(specimen.shape)) {
    flags.push({
      code: 'small-single-lap',
      message:
        'A small single lap bends and peels: its load over area compares coupons and is no design allowable (ASTM D4896).',
    });
  }
  if (specimen.source.kind === 'memory') {
    const { text } = specimen.source;
    // A source in one's own words need not say what its kind is.
    const message = /memory/i.test(text) ? text : `Sizes from memory: ${text || 'look them up.'}`;
    flags.push({ code: 'sizes-from-memory', message });
  }
  return flags;
}

function setReport(
  project: Project,
  specimen: Specimen,
  set: CouponSet,
  told: (share: number) => void,
): CouponSetReport {
  const coupon = couponJoint(project, specimen.shape, set, { gap: set.gap });
  const predicted = predictCoupon(project, coupon);
  const of = set.results.length + 1;
  told(1 / of);
  const lines = linesOf(project, specimen, set, (done) => told((1 + done) / of));
  const [statistics, correlation] = [statisticsOf(lines), correlationOf(lines)];
  const tested = {
    specimen,
    lines,
    statistics,
    bond: correlationOf(lines, 'bondRatio'),
    mode: predicted.bond?.mode ?? null,
  };
  const { id, name, planned, temperature, moisture, gap } = set;
  return {
    setId: id,
    name,
    specimen: { id: specimen.id, name: specimen.name, standard: specimen.standard },
    adhesive: {
      id: set.adhesive,
      name: project.adhesives.find((one) => one.id === set.adhesive)!.name,
    },
    temperature,
    moisture,
    gap,
    overlap: specimen.shape.overlap,
    area: areaOf(coupon),
    predicted,
    grip: predicted.load === null ? null : GRIP * predicted.load,
    planned: planned ? planned.batches * planned.each : 0,
    lines,
    statistics,
    correlation,
    bond: tested.bond,
    ...offersOf(tested),
    calibration: calibrationOf(tested),
    flags: flagsOf(specimen, set, lines),
  };
}

const nothing: Coupons = { specimens: [], sets: [] };

/** @param setId one set alone; all, and the lives, when left out */
export function couponsReport(
  project: Project,
  setId: string | undefined,
  { progress }: JobContext = unwatched,
): Reply<CouponsReport> {
  const { specimens, sets, life = [] } = project.coupons ?? nothing;
  const specimenOf = (id: string): Specimen => specimens.find((one) => one.id === id)!;
  const wanted = sets.filter(({ id }) => setId === undefined || id === setId);
  if (setId !== undefined && wanted.length === 0) {
    const list = sets.map(({ id }) => id).join(', ') || 'none';
    return refuse(
      'not-found',
      'coupons.sets',
      `There is no set of coupons "${setId}" in this project. It has: ${list}.`,
    );
  }
  const lives = setId === undefined ? life : [];
  const total = wanted.length + lives.length;
  const reports: CouponSetReport[] = [];
  for (const [i, set] of wanted.entries()) {
    try {
      const told = (share: number): void => progress(i + share, total, set.name);
      reports.push(setReport(project, specimenOf(set.specimen), set, told));
    } catch (error) {
      return misfit(error, { specimens, sets }, set);
    }
  }
  const adhesives = project.adhesives
    .filter(({ id }) => reports.some(({ adhesive }) => adhesive.id === id))
    .map(({ id, name }) => ({
      id,
      name,
      correlation: correlationOf(
        reports.flatMap(({ adhesive, lines }) => (adhesive.id === id ? lines : [])),
      ),
    }));
  return ok({
    sets: reports,
    adhesives,
    gapCurves: gapCurvesOf(project, reports),
    life: lives.map((set, i) => {
      const found = lifeReport(project, specimenOf(set.specimen), set);
      progress(wanted.length + i + 1, total, set.name);
      return found;
    }),
    modelVersion: MODEL_VERSION,
  });
}
