/** Between which gaps a bond may be made: what the coupons cover, what the engineer and the spacers say. */

import type { BondToMeasure } from '../../../shared/measuring-plan.ts';
import type { Adhesive, Bench, Joint, Project } from '../../../shared/project.ts';
import type { Flag } from '../../../shared/reports.ts';
import type { GapLimits, GapRange } from '../../../shared/reports-gap.ts';
import type { ResolvedJoint } from '../resolve.ts';

export const adhesiveOf = (project: Project, { joint }: ResolvedJoint): Adhesive =>
  project.adhesives.find(({ id }) => id === joint.adhesive)!;

/** From the thinnest to the thickest gap of the adhesive's table of strength against gap. */
export function couponRange({ knockdowns }: Adhesive): GapRange | null {
  const gaps = (knockdowns?.gap ?? []).map(({ gap }) => gap);
  return gaps.length === 0 ? null : { from: Math.min(...gaps), to: Math.max(...gaps) };
}

type By = NonNullable<GapLimits['fromBy']>;
interface Bound<B extends By> {
  readonly at: number;
  readonly by: B;
}

/** Of bounds that name the same gap the first one says it. */
const tightest = <B extends By>(
  bounds: readonly (Bound<B> | null)[],
  tighter: (a: number, b: number) => boolean,
): Bound<B> | null =>
  bounds.reduce<Bound<B> | null>(
    (held, bound) => (bound && (!held || tighter(bound.at, held.at)) ? bound : held),
    null,
  );

export function limitsOf(
  adhesive: Adhesive,
  bench: Bench | undefined,
  { bond, key }: BondToMeasure,
): GapLimits {
  const coupons = couponRange(adhesive);
  const set = bench?.limits?.[key];
  const spacer = bench?.spacer;
  const from = tightest<By>(
    [
      set ? { at: set.from, by: 'engineer' } : null,
      coupons ? { at: coupons.from, by: 'coupons' } : null,
      // A spacer alone is no range: it says how thin a gap is made, not what was tested.
      spacer && (set || coupons) ? { at: spacer.size, by: 'spacer' } : null,
    ],
    (a, b) => a > b,
  );
  const to = tightest<'engineer' | 'coupons'>(
    [
      set ? { at: set.to, by: 'engineer' } : null,
      coupons ? { at: coupons.to, by: 'coupons' } : null,
    ],
    (a, b) => a < b,
  );
  return {
    bond,
    from: from?.at ?? null,
    to: to?.at ?? null,
    fromBy: from?.by ?? null,
    toBy: to?.by ?? null,
  };
}

const wordOf = { typical: 'typical', memory: 'from memory', published: 'published' } as const;

const bondWords = { bond: 'bond', innerBond: 'inner bond', outerBond: 'outer bond' } as const;

/** What was set for another lap or a longer joint. */
function unusedFlags(
  bench: Bench | undefined,
  overlap: number,
  bonds: readonly BondToMeasure[],
): readonly Flag[] {
  const flags: Flag[] = [];
  const strange = (['bond', 'innerBond', 'outerBond'] as const).filter(
    (key) => bench?.limits?.[key] && !bonds.some((bond) => bond.key === key),
  );
  for (const key of strange) {
    const { from, to } = bench!.limits![key]!;
    flags.push({
      code: 'limits-of-another-lap',
      message: `Limits of ${from} to ${to} mm are set for the ${bondWords[key]} of another lap: they are not used here.`,
    });
  }
  const beyond = (bench?.stations ?? []).filter((x) => x > overlap);
  if (beyond.length > 0) {
    flags.push({
      code: 'stations-beyond',
      message: `Set to be measured at ${beyond.join(', ')} mm, beyond the overlap of ${overlap} mm: left out.`,
    });
  }
  return flags;
}

/** What the limits rest on, where it is not the user's own coupons. */
export function limitFlags(
  adhesive: Adhesive,
  { bench, overlap }: Joint,
  bonds: readonly BondToMeasure[],
): readonly Flag[] {
  const flags: Flag[] = [...unusedFlags(bench, overlap, bonds)];
  const coupons = couponRange(adhesive);
  if (!coupons) {
    flags.push({
      code: 'no-coupons',
      message: `“${adhesive.name}” has no strength at any gap from coupons: no range is qualified.`,
    });
  } else {
    const { kind } = adhesive.knockdowns!.source;
    if (kind !== 'tested') {
      flags.push({
        code: 'typical-gaps',
        message: `The range of ${coupons.from} to ${coupons.to} mm and the strength in it are ${wordOf[kind]}, not from your coupons.`,
      });
    }
    for (const { bond, key } of bonds) {
      const set = bench?.limits?.[key];
      if (!set || (set.from >= coupons.from && set.to <= coupons.to)) continue;
      flags.push({
        code: 'limits-outside-coupons',
        message: `The limits set for the ${bond}, ${set.from} to ${set.to} mm, reach outside the range of coupons, ${coupons.from} to ${coupons.to} mm: the narrower counts.`,
      });
    }
  }
  if (!bench?.spacer && bench?.jigOffset === undefined) {
    flags.push({
      code: 'not-held',
      message:
        'Neither spacers nor a jig are set for this joint: the tube is taken to touch the sleeve on its worst side.',
    });
  }
  return flags;
}
