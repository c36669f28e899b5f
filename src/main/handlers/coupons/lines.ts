/** Each result of a set beside its prediction, and whether it counts. */
import type { Project } from '../../../shared/project.ts';
import type { CouponResult, CouponSet, Specimen } from '../../../shared/project-coupons.ts';
import type {
  ApartBecause,
  CouponLine,
  CouponPrediction,
} from '../../../shared/reports-coupons.ts';
import { predictCoupon } from './predict.ts';
import { areaOf, couponJoint } from './specimen-joint.ts';

/** Per cent of the area from which a coupon tells of its surface or its adherend, not of the adhesive. */
export const TELLS = 50;

export function apartOf({ apart, modes }: CouponResult): {
  readonly apart: ApartBecause | null;
  readonly why: string;
} {
  if (apart !== undefined) return { apart: 'by-hand', why: apart };
  if ((modes?.adhesion ?? 0) >= TELLS) {
    return {
      apart: 'surface',
      why: 'came off a surface: the surface was tested, not the adhesive',
    };
  }
  if ((modes?.adherend ?? 0) >= TELLS) {
    return { apart: 'adherend', why: 'the adherend broke: the bond is at least this strong' };
  }
  return { apart: null, why: '' };
}

export function linesOf(
  project: Project,
  { shape }: Specimen,
  set: CouponSet,
  told: (done: number) => void,
): readonly CouponLine[] {
  const known = new Map<string, { readonly area: number; readonly predicted: CouponPrediction }>();
  return set.results.map((result, i) => {
    const gap = result.gap ?? set.gap;
    const overlap = result.overlap ?? shape.overlap;
    const key = `${gap} ${overlap} ${result.width}`;
    let found = known.get(key);
    if (!found) {
      const sizes = { gap, overlap, width: result.width };
      const coupon = couponJoint(project, shape, set, sizes);
      found = { area: areaOf(coupon), predicted: predictCoupon(project, coupon) };
      known.set(key, found);
    }
    told(i + 1);
    const predicted = found.predicted.load;
    return {
      coupon: result.coupon,
      batch: result.batch,
      load: result.load,
      gap,
      overlap,
      strength: result.load / found.area,
      predicted,
      ratio: predicted === null ? null : result.load / predicted,
      bondRatio: found.predicted.bond ? result.load / found.predicted.bond.load : null,
      adhesion: result.modes ? (result.modes.adhesion ?? 0) : null,
      ...apartOf(result),
    };
  });
}
