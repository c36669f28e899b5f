/** Coupons beside the ledger: what was taken from them and still stands so, what was not taken. No prediction. */
import type { Adhesive, Allowable, Project } from '../../../shared/project.ts';
import type { CouponSet, Specimen } from '../../../shared/project-coupons.ts';
import type { LedgerAllowable, LedgerOffer } from '../../../shared/reports-ledger.ts';
import { apartOf } from '../coupons/lines.ts';
import { barred } from '../coupons/offers.ts';
import { areaOf, couponJoint } from '../coupons/specimen-joint.ts';
import { isAt, sameGap } from './uses.ts';

const specimenOf = ({ coupons }: Project, { specimen }: CouponSet): Specimen =>
  coupons!.specimens.find(({ id }) => id === specimen)!;

/** Sets of an adhesive that have results. */
export const testedSets = ({ coupons }: Project, adhesive: string): readonly CouponSet[] =>
  (coupons?.sets ?? []).filter((set) => set.adhesive === adhesive && set.results.length > 0);

/** True where a set in this environment and at this gap has a result that counts. */
export const isTestedAt = (
  project: Project,
  { id }: Adhesive,
  place: Pick<CouponSet, 'temperature' | 'moisture'>,
  gap: number,
): boolean =>
  testedSets(project, id).some(
    (set) =>
      isAt(set, place) &&
      sameGap(set.gap) === sameGap(gap) &&
      set.results.some((result) => apartOf(result).apart === null),
  );

/** Rounding apart, two means are the same. */
const SLACK = 1e-9;

/** Load over area of the results that count, MPa, as the statistics have it. */
function meanOf(project: Project, set: CouponSet, counted: CouponSet['results']): number {
  const { shape } = specimenOf(project, set);
  const areas = new Map<string, number>();
  const strengths = counted.map(({ load, gap = set.gap, overlap = shape.overlap, width }) => {
    const key = `${gap} ${overlap} ${width}`;
    const area =
      areas.get(key) ?? areaOf(couponJoint(project, shape, set, { gap, overlap, width }));
    areas.set(key, area);
    return load / area;
  });
  return strengths.reduce((sum, one) => sum + one, 0) / strengths.length;
}

function isAsTaken(project: Project, adhesive: Adhesive, set: CouponSet, one: Allowable): boolean {
  const counted = set.results.filter((result) => apartOf(result).apart === null);
  const batches = new Set(counted.map(({ batch }) => batch)).size;
  const there = set.adhesive === adhesive.id && isAt(set, one) && set.gap === one.gap;
  if (!there || counted.length !== one.coupons || batches !== one.batches) return false;
  return Math.abs(meanOf(project, set, counted) - one.mean) <= SLACK * one.mean;
}

export function allowableToday(
  project: Project,
  adhesive: Adhesive,
  taken: Allowable,
): LedgerAllowable {
  const set = project.coupons?.sets.find(({ id }) => id === taken.set);
  if (!set) return { taken, tested: null, set: 'gone' };
  return {
    taken,
    tested: set.tested ?? null,
    set: isAsTaken(project, adhesive, set, taken) ? 'as-taken' : 'changed',
  };
}

/** Sets with results in an environment that the adhesive has no allowable from. */
export function offersAt(
  project: Project,
  { id, allowables = [] }: Adhesive,
  place: Pick<CouponSet, 'temperature' | 'moisture'>,
): readonly LedgerOffer[] {
  return testedSets(project, id)
    .filter((set) => isAt(set, place) && !allowables.some((one) => one.set === set.id))
    .map((set) => {
      const results = set.results.map(apartOf);
      return {
        setId: set.id,
        name: set.name,
        gap: set.gap,
        tested: set.tested ?? null,
        results: results.length,
        counted: results.filter(({ apart }) => apart === null).length,
        barred: barred(specimenOf(project, set), results),
      };
    });
}
