/** At which pull a coupon breaks, and by which mode: the same model as for the joints. */
import { ModelError } from '../../../model/errors.ts';
import { FAILURE_MODES } from '../../../model/margins/asked.ts';
import { UNLOADED } from '../../../model/margins/result.ts';
import type { Project } from '../../../shared/project.ts';
import type { CouponPrediction } from '../../../shared/reports-coupons.ts';
import { modeLabel } from '../labels.ts';
import { governingModes } from '../margins.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { PREDICTING, pullOf } from './specimen-joint.ts';

const none = (why: string): CouponPrediction => ({ load: null, mode: '', modes: [], why });

export function predictCoupon({ settings }: Project, coupon: ResolvedJoint): CouponPrediction {
  try {
    const rows = governingModes(coupon, { ...settings, factors: PREDICTING }, false, FAILURE_MODES);
    const modes = rows
      .filter(({ result }) => result.reached < UNLOADED)
      .map(({ result: { mode, part, x, reached } }) => ({
        mode: modeLabel(mode, part, x < coupon.input.overlap / 2),
        load: reached * pullOf,
      }))
      .sort((a, b) => a.load - b.load);
    const [first] = modes;
    if (!first) return none('No mode of the model ends this coupon.');
    return first.load > 0
      ? { load: first.load, mode: first.mode, modes, why: '' }
      : none(`Temperature alone breaks it (${first.mode}).`);
  } catch (error) {
    if (!(error instanceof ModelError || error instanceof RangeError)) throw error;
    return none(error.message);
  }
}
