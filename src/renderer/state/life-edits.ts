/** Sets of coupons under cycles into the document and out of it. */
import { MOST_LIVES, makeLifeSet } from '../../shared/coupon-plan.ts';
import type { Coupons, LifeSet, Specimen } from '../../shared/project-coupons.ts';
import type { CouponsState } from './coupons.ts';
import type { ProjectState } from './project.ts';

export interface LifeEdits {
  /** One set of a specimen of the project, and it is looked at; nothing where a project takes no more. */
  add(specimen: Specimen, set: Parameters<typeof makeLifeSet>[2]): void;
  rename(id: string, name: string): void;
  /** The set with its results; its specimen stays, for the next set is likely to be of it. */
  remove(id: string): void;
  set(id: string, key: 'tested' | 'note', value: string | undefined): void;
}

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

export function createLifeEdits(project: ProjectState, state: CouponsState): LifeEdits {
  const now = (): Coupons | null => plain(project.document()?.coupons ?? null);
  const place = (id: string): number => state.lives.sets().findIndex((set) => set.id === id);
  const put = (coupons: Coupons, life: LifeSet[]): void => {
    const { life: _old, ...rest } = coupons;
    project.edit(['coupons'], life.length > 0 ? { ...rest, life } : rest);
  };

  return {
    add(specimen, wanted) {
      const coupons = now();
      if (!coupons || (coupons.life ?? []).length >= MOST_LIVES) return;
      const set = makeLifeSet(coupons.life ?? [], specimen, wanted);
      put(coupons, [...(coupons.life ?? []), set]);
      state.lives.choose(set.id);
    },
    rename(id, name) {
      const trimmed = name.trim().slice(0, 120);
      if (trimmed !== '' && place(id) >= 0) {
        project.edit(['coupons', 'life', place(id), 'name'], trimmed);
      }
    },
    remove(id) {
      const coupons = now();
      if (coupons) {
        put(
          coupons,
          (coupons.life ?? []).filter((set) => set.id !== id),
        );
      }
    },
    set(id, key, value) {
      const at = place(id);
      if (at < 0) return;
      const { [key]: _old, ...others } = now()!.life![at]!;
      // What is undefined is left out: a file has no place for it.
      project.edit(
        ['coupons', 'life', at],
        value === undefined ? others : { ...others, [key]: value },
      );
    },
  };
}
