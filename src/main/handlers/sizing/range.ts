/** Steps and ranges of a sizing, where they are left out. */
import { bare, millimetres, say } from '../../../model/said.ts';
import { findPlateau, LONGEST_OVERLAP } from '../../../model/sweep/overlap-sweep.ts';
import type { Joint, Project } from '../../../shared/project.ts';
import { quantities } from '../../../shared/quantities.ts';
import { ok, type Reply, refuse } from '../../../shared/reply.ts';
import { bondsOf, type Vary, variedValue } from '../../../shared/vary-joint.ts';
import { questionOf } from '../margins.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { measureOf, quantityOf } from './context.ts';

export interface Range {
  /** Multiples of the step. */
  readonly first: number;
  readonly last: number;
  /** True when the end was chosen here, not asked for. */
  readonly chosen: boolean;
}

/** Walls from a quarter of the present one to four times it. */
const WALL_SPAN = 4;
/** Gaps for which shear properties are usually measured, where the adhesive has no table of them. */
const USUAL_GAP = { min: 0.05, max: 0.5 };
/** Overlaps end past the plateau by this. */
const PAST = 1.6;

const SMALL = 1e-9;
const multiples = (from: number, to: number, step: number): readonly [number, number] => [
  Math.max(1, Math.ceil(from / step - SMALL)),
  Math.floor(to / step + SMALL),
];

/** The gaps within the adhesive's table of strength against gap, with room for tolerance and offset. */
export function gapSpan(joint: Joint, resolved: ResolvedJoint): readonly [number, number] {
  const table = (resolved.adhesive.knockdowns?.gap ?? []).map(({ gap }) => gap);
  const spread =
    Math.max(...bondsOf(joint).map(({ tolerance }) => tolerance)) +
    ('offset' in joint ? joint.offset : 0);
  const [least, most] =
    table.length > 1 ? [Math.min(...table), Math.max(...table)] : [USUAL_GAP.min, USUAL_GAP.max];
  const span = [least + spread, most - spread] as const;
  // A table narrower than the fit leaves nothing: then from the thinnest gap that stays open.
  return span[1] > span[0] ? span : [spread + USUAL_GAP.min / 2, USUAL_GAP.max + spread];
}

function defaults(
  project: Project,
  resolved: ResolvedJoint,
  vary: Vary,
): readonly [number, number] {
  const { joint } = resolved;
  const present = variedValue(joint, vary);
  switch (vary) {
    case 'overlap': {
      const plateau = findPlateau(questionOf(resolved, project.settings)).overlap;
      const past = Math.max(plateau ?? LONGEST_OVERLAP, present) * PAST;
      return [quantities.overlap.min, Math.min(LONGEST_OVERLAP, Math.ceil(past / 10) * 10)];
    }
    case 'gap':
      return gapSpan(joint, resolved);
    default: {
      const { min, max } = quantities.wall;
      return [Math.max(min, present / WALL_SPAN), Math.min(max, present * WALL_SPAN)];
    }
  }
}

export function rangeOf(
  project: Project,
  resolved: ResolvedJoint,
  vary: Vary,
  step: number,
  asked: { readonly from?: number | undefined; readonly to?: number | undefined },
): Reply<Range> {
  const { min, max, label } = quantities[quantityOf[vary]];
  const mm = (value: number) => millimetres(value, undefined, measureOf(vary));
  for (const [name, value] of Object.entries({ from: asked.from, to: asked.to })) {
    if (value !== undefined && (value < min || value > max)) {
      return refuse(
        'bad-request',
        name,
        say`A ${label} lies from ${bare(mm(min))} to ${mm(max)}, not at ${mm(value)}.`,
      );
    }
  }
  if (asked.from !== undefined && asked.to !== undefined && asked.from >= asked.to) {
    return refuse(
      'bad-request',
      'to',
      say`The search must end above where it begins: ${mm(asked.to)} is not above ${mm(asked.from)}.`,
    );
  }
  const [least, most] =
    asked.from !== undefined && asked.to !== undefined
      ? [asked.from, asked.to]
      : defaults(project, resolved, vary);
  const from = asked.from ?? Math.min(least, asked.to ?? least);
  const to = asked.to ?? Math.max(most, from);
  const [first, last] = multiples(from, to, step);
  if (last <= first) {
    return refuse(
      'bad-request',
      'step',
      say`Between ${bare(mm(from))} and ${mm(to)} lie fewer than two multiples of ${mm(step)}: widen the range or take a smaller step.`,
    );
  }
  return ok({ first, last, chosen: asked.to === undefined });
}
