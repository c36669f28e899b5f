/** At which pull a coupon breaks, and by which mode: the same model as for the joints. */
import { ModelError } from '../../../model/errors.ts';
import { FAILURE_MODES, type Mode } from '../../../model/margins/asked.ts';
import { UNLOADED } from '../../../model/margins/result.ts';
import { type BondMode, bondModes, type Project } from '../../../shared/project.ts';
import type { CouponPrediction } from '../../../shared/reports-coupons.ts';
import { modeLabel } from '../labels.ts';
import { governingModes } from '../margins.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { PREDICTING, pullOf } from './specimen-joint.ts';

const none = (why: string): CouponPrediction => ({
  load: null,
  mode: '',
  bond: null,
  modes: [],
  why,
});

const isBond = (mode: Mode): mode is BondMode => (bondModes as readonly Mode[]).includes(mode);

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
    const bonds = rows.flatMap(({ result: { mode, reached } }) =>
      isBond(mode) && reached > 0 && reached < UNLOADED ? [{ mode, load: reached * pullOf }] : [],
    );
    const [bond = null] = bonds.sort((a, b) => a.load - b.load);
    const [first] = modes;
    if (!first) return none('No mode of the model ends this coupon.');
    return first.load > 0
      ? { load: first.load, mode: first.mode, bond, modes, why: '' }
      : none(`Temperature alone breaks it (${first.mode}).`);
  } catch (error) {
    if (!(error instanceof ModelError || error instanceof RangeError)) throw error;
    return none(error.message);
  }
}
