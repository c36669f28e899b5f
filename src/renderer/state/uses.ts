/** Who uses a load case or a material of the project: asked before it is changed or taken away. */
import type { Joint, Project } from '../../shared/project.ts';
import { adherendsOf } from '../../shared/project-coupons-rules.ts';
import { adherendReferences } from '../../shared/project-rules.ts';
import { count } from '../../shared/words.ts';

/** Names of what uses it. */
export interface Uses {
  readonly joints: readonly string[];
  readonly variants: readonly string[];
  /** Test pieces, sets and lives of coupons. */
  readonly coupons: readonly string[];
}

const namesOf = (list: readonly { readonly name: string }[]): string[] =>
  list.map(({ name }) => name);

function uses(
  project: Project,
  byJoint: (joint: Joint) => boolean,
  coupons: readonly { readonly name: string }[] = [],
): Uses {
  const variants = (project.variants ?? []).map(({ joint }) => joint);
  return {
    joints: namesOf(project.joints.filter(byJoint)),
    variants: namesOf(variants.filter(byJoint)),
    coupons: namesOf(coupons),
  };
}

/** Also where it acts on a frame size of the joint alone. */
export const usesOfCase = (project: Project, id: string): Uses =>
  uses(project, ({ loads, sizes = [] }) =>
    [{ loads }, ...sizes].some((one) => one.loads?.some((load) => load.case === id)),
  );

export function usesOfAdhesive(project: Project, id: string): Uses {
  const { sets = [], life = [] } = project.coupons ?? {};
  return uses(
    project,
    (joint) => joint.adhesive === id,
    [...sets, ...life].filter(({ adhesive }) => adhesive === id),
  );
}

export const usesOfAdherend = (project: Project, id: string): Uses =>
  uses(
    project,
    (joint) => adherendReferences(joint).some(([, used]) => used === id),
    project.coupons?.specimens.filter(({ shape }) =>
      adherendsOf(shape).some(([, used]) => used === id),
    ),
  );

export const isUsed = ({ joints, variants, coupons }: Uses): boolean =>
  joints.length + variants.length + coupons.length > 0;

/** `three joints and one variant`. */
export function countedUses({ joints, variants }: Uses): string {
  const of = (n: number, one: string): string[] =>
    n === 0 ? [] : [`${count(n)} ${one}${n === 1 ? '' : 's'}`];
  return [...of(joints.length, 'joint'), ...of(variants.length, 'variant')].join(' and ');
}
