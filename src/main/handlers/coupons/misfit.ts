/** A set that cannot be computed, told at its place in the project: its test piece, or the set itself. */
import { ModelError } from '../../../model/errors.ts';
import type { CouponSet, Coupons } from '../../../shared/project-coupons.ts';
import { type Reply, refuse } from '../../../shared/reply.ts';

/** @throws what is no fault of the project */
export function misfit(
  error: unknown,
  { specimens, sets }: Pick<Coupons, 'specimens' | 'sets'>,
  set: CouponSet,
): Reply<never> {
  if (!(error instanceof ModelError)) throw error;
  const place = specimens.findIndex(({ id }) => id === set.specimen);
  const [part = ''] = error.input.split('.');
  const field =
    part in specimens[place]!.shape
      ? `coupons.specimens.${place}.shape.${error.input}`
      : `coupons.sets.${sets.indexOf(set)}`;
  return refuse('bad-input', field, error.message);
}
