/** A coupon as a joint under a pull: what the model needs to predict it. */
import { assemble } from '../../../model/joint/assembly.ts';
import type { Joint, Project } from '../../../shared/project.ts';
import type { CouponSet, SpecimenShape } from '../../../shared/project-coupons.ts';
import { type ResolvedJoint, resolveJoint } from '../resolve.ts';

/** Sizes as measured, mm; what is left out is as drawn. */
export interface CouponSizes {
  readonly gap: number;
  readonly overlap?: number | undefined;
  readonly width?: number | undefined;
}

function withGap(shape: SpecimenShape, gap: number): SpecimenShape {
  const bond = { gap, tolerance: 0 };
  switch (shape.type) {
    case 'flat-single':
      return { ...shape, bond };
    case 'flat-double':
      return { ...shape, lowerBond: bond, upperBond: bond };
    case 'sleeve-single':
      return { ...shape, bond, offset: 0 };
    case 'sleeve-double':
      return { ...shape, innerBond: bond, outerBond: bond, offset: 0 };
  }
}

/** Any pull would do: what a mode is reached at does not hang on it. */
const PULL = 1000;

/**
 * Mean strengths: the adhesive without its knockdowns, an ultimate case without a fitting factor, so
 * that the factor that is reached times the pull is the load at which the coupon breaks.
 */
export function couponJoint(
  project: Project,
  shape: SpecimenShape,
  { adhesive, temperature, moisture }: Pick<CouponSet, 'adhesive' | 'temperature' | 'moisture'>,
  { gap, overlap, width }: CouponSizes,
): ResolvedJoint {
  const load =
    shape.type === 'flat-single' || shape.type === 'flat-double'
      ? { case: 'pull', force: PULL }
      : { case: 'pull', force: PULL, moment: 0, torque: 0, shear: 0 };
  const joint = {
    ...withGap(shape, gap),
    ...(overlap === undefined ? {} : { overlap }),
    ...(width === undefined || !('width' in shape) ? {} : { width }),
    id: 'coupon',
    name: 'coupon',
    adhesive,
    loads: [load],
  } as unknown as Joint;
  const { conditions: _, ...rest } = project;
  return resolveJoint(
    {
      ...rest,
      adhesives: project.adhesives.map(({ knockdowns: _k, allowables: _a, ...kept }) => kept),
      loadCases: [{ id: 'pull', name: 'pull', kind: 'ultimate', temperature, moisture }],
      joints: [joint],
    },
    0,
  );
}

export const PREDICTING = { limit: 1, ultimate: 1, fitting: 1 } as const;

/** Bonded area of all bonds together, mm². */
export function areaOf({ input }: ResolvedJoint): number {
  const { bonds, overlap } = assemble(input, 'nominal');
  return bonds.reduce((sum, { width }) => sum + width * overlap, 0);
}

export const pullOf = PULL;
