/** What must hold between coupons and the rest of the project. */
import type { Project } from './project.ts';
import type { Broken } from './project-rules.ts';

const firstRepeated = (list: readonly string[]): number =>
  list.findIndex((one, i) => list.indexOf(one) < i);

const hundred = 100;

/** Ids of adherends that a specimen names, with their place in its shape. */
export function adherendsOf(shape: object): readonly (readonly [field: string, id: string])[] {
  return Object.entries(shape).flatMap(([key, part]) =>
    typeof part === 'object' && part !== null && 'adherend' in part
      ? [[`${key}.adherend`, String(part.adherend)] as const]
      : [],
  );
}

function brokenSpecimens({ coupons, adherends }: Project): Broken | null {
  for (const [i, { shape }] of (coupons?.specimens ?? []).entries()) {
    for (const [field, id] of adherendsOf(shape)) {
      if (!adherends.some((adherend) => adherend.id === id)) {
        return {
          field: `coupons.specimens.${i}.shape.${field}`,
          message: `there is no adherend with the id "${id}"`,
        };
      }
    }
  }
  return null;
}

export function brokenCoupons(project: Project): Broken | null {
  const { coupons } = project;
  if (!coupons) return null;
  const lists = [
    ['specimens', coupons.specimens],
    ['sets', coupons.sets],
    ['life', coupons.life ?? []],
  ] as const;
  for (const [key, list] of lists) {
    const twice = firstRepeated(list.map(({ id }) => id));
    if (twice >= 0) {
      return {
        field: `coupons.${key}.${twice}.id`,
        message: `the id "${list[twice]!.id}" is used twice: choose another`,
      };
    }
  }
  const broken = brokenSpecimens(project);
  if (broken) return broken;
  for (const [key, list] of [lists[1], lists[2]] as const) {
    for (const [i, { specimen, adhesive }] of list.entries()) {
      const where = `coupons.${key}.${i}`;
      if (!coupons.specimens.some(({ id }) => id === specimen)) {
        return {
          field: `${where}.specimen`,
          message: `there is no specimen with the id "${specimen}"`,
        };
      }
      if (!project.adhesives.some(({ id }) => id === adhesive)) {
        return {
          field: `${where}.adhesive`,
          message: `there is no adhesive with the id "${adhesive}"`,
        };
      }
    }
  }
  for (const [i, { results }] of coupons.sets.entries()) {
    for (const [k, { modes, coupon }] of results.entries()) {
      if (!modes) continue;
      const sum = Object.values(modes).reduce<number>((total, share) => total + (share ?? 0), 0);
      if (Math.abs(sum - hundred) > 0.5) {
        return {
          field: `coupons.sets.${i}.results.${k}.modes`,
          message: `the failure modes of coupon "${coupon}" make ${sum} %, not 100 %`,
        };
      }
    }
  }
  return null;
}
