/** What the core would say of sets of coupons: every coupon on 320 mm², every one predicted at 4000 N. */
import { lifeReport } from '../../../src/main/handlers/coupons/life.ts';
import { correlationOf, statisticsOf } from '../../../src/main/handlers/coupons/statistics.ts';
import type { Project } from '../../../src/shared/project.ts';
import type { CouponSet } from '../../../src/shared/project-coupons.ts';
import type {
  CouponLine,
  CouponSetReport,
  CouponsReport,
} from '../../../src/shared/reports-coupons.ts';

export const AREA = 320;
export const PREDICTED = 4000;

const linesOf = ({ results, gap }: CouponSet): readonly CouponLine[] =>
  results.map((one) => ({
    coupon: one.coupon,
    batch: one.batch,
    load: one.load,
    gap: one.gap ?? gap,
    overlap: one.overlap ?? 12.7,
    strength: one.load / AREA,
    predicted: PREDICTED,
    ratio: one.load / PREDICTED,
    bondRatio: one.load / PREDICTED,
    adhesion: one.modes?.adhesion ?? null,
    apart:
      one.apart !== undefined ? 'by-hand' : (one.modes?.adhesion ?? 0) >= 50 ? 'surface' : null,
    why: one.apart ?? ((one.modes?.adhesion ?? 0) >= 50 ? 'came off a surface' : ''),
  }));

export function makeSetReport(
  { coupons, adhesives }: Project,
  set: CouponSet,
  change: Partial<CouponSetReport> = {},
): CouponSetReport {
  const specimen = coupons!.specimens.find(({ id }) => id === set.specimen)!;
  const lines = linesOf(set);
  const { id, name, standard } = specimen;
  return {
    setId: set.id,
    name: set.name,
    specimen: { id, name, standard },
    adhesive: {
      id: set.adhesive,
      name: adhesives.find((one) => one.id === set.adhesive)!.name,
    },
    temperature: set.temperature,
    moisture: set.moisture,
    gap: set.gap,
    overlap: 12.7,
    area: AREA,
    predicted: {
      load: PREDICTED,
      mode: 'adhesive, peel',
      bond: { load: PREDICTED, mode: 'adhesive-peel' as const },
      modes: [],
      why: '',
    },
    grip: 2 * PREDICTED,
    planned: 18,
    lines,
    statistics: statisticsOf(lines),
    correlation: correlationOf(lines),
    bond: correlationOf(lines, 'bondRatio'),
    offers: [],
    calibration: null,
    notOffered: 'There are no results yet.',
    flags: [{ code: 'small-single-lap', message: 'A small single lap bends and peels.' }],
    ...change,
  };
}

export function makeCouponsReport(
  project: Project,
  change: Partial<CouponSetReport> = {},
): CouponsReport {
  const sets = project.coupons!.sets.map((set) => makeSetReport(project, set, change));
  return {
    sets,
    adhesives: project.adhesives.map(({ id, name }) => ({
      id,
      name,
      correlation: correlationOf(
        sets.flatMap(({ adhesive, lines }) => (adhesive.id === id ? lines : [])),
      ),
    })),
    gapCurves: [],
    // The model's own answer: it takes milliseconds.
    life: (project.coupons!.life ?? []).map((set) =>
      lifeReport(project, project.coupons!.specimens.find(({ id }) => id === set.specimen)!, set),
    ),
    modelVersion: '7',
  };
}
