/** Sets of coupons, static and under cycles: what the figures of each hang on, and what is sent about them. */
import type { Project } from '../../shared/project.ts';

/** Where sets are in the coupons of a project. */
export type SetList = 'sets' | 'life';
export const setLists: readonly SetList[] = ['sets', 'life'];

/** By id of the set, all that its figures hang on, as one text. */
export type SetKeys = ReadonlyMap<string, string>;

export function keysOf(document: Project, opening: number): Readonly<Record<SetList, SetKeys>> {
  const { adherends, plies, settings, coupons } = document;
  // No figure of a coupon hangs on the S-N line of its adhesive: to take one asks nothing anew.
  const adhesives = document.adhesives.map(({ fatigue: _, ...rest }) => rest);
  const around = JSON.stringify([opening, adhesives, adherends, plies, settings]);
  const shapes = new Map((coupons?.specimens ?? []).map((one) => [one.id, JSON.stringify(one)]));
  const keys = (list: SetList): SetKeys =>
    new Map(
      (coupons?.[list] ?? []).map(({ note: _note, tested: _tested, ...set }) => [
        set.id,
        `${JSON.stringify(set)}${shapes.get(set.specimen)}${around}`,
      ]),
    );
  return { sets: keys('sets'), life: keys('life') };
}

/** The document with these sets alone: no joint is needed, and its mistakes would be in the way. */
export function withSets(project: Project, list: SetList, ids: readonly string[]): Project {
  const { variants: _v, gapChecks: _g, coupons, ...rest } = project;
  const wanted = <T extends { id: string }>(from: SetList, all: readonly T[] = []): T[] =>
    from === list ? all.filter(({ id }) => ids.includes(id)) : [];
  const sets = wanted('sets', coupons?.sets);
  const life = wanted('life', coupons?.life);
  const used = new Set([...sets, ...life].map(({ specimen }) => specimen));
  const specimens = (coupons?.specimens ?? []).filter(({ id }) => used.has(id));
  return {
    ...rest,
    joints: [],
    coupons: { specimens, sets, ...(life.length > 0 ? { life } : {}) },
  };
}

/** Sets of a list that an error about such a document is about: one, or all of a test piece; null where it is not told. */
export function setsAtFault(
  { coupons }: Project,
  list: SetList,
  field: string,
): readonly string[] | null {
  const [, from, place] = /^coupons\.(sets|life|specimens)\.(\d+)/.exec(field) ?? [];
  if (from === undefined) return null;
  const at = Number(place);
  const faulty = (coupons?.[list] ?? []).filter((set, i) =>
    from === 'specimens' ? set.specimen === coupons!.specimens[at]?.id : from === list && i === at,
  );
  return faulty.length === 0 ? null : faulty.map(({ id }) => id);
}
