/** Sets of coupons into the document and out of it. */
import { makeCouponSet, type PlannedSets } from '../../shared/coupon-plan.ts';
import type { CouponSet, Coupons, Specimen } from '../../shared/project-coupons.ts';
import type { CouponsState } from './coupons.ts';
import type { ProjectState } from './project.ts';

export interface CouponEdits {
  take(planned: PlannedSets): void;
  /** One set of a specimen of the project; its id. */
  add(specimen: Specimen, set: Parameters<typeof makeCouponSet>[2]): string;
  rename(id: string, name: string): void;
  /** The set with its results; a specimen that no set needs and that can be had again goes with it. */
  remove(id: string): void;
  set(id: string, key: 'tested' | 'note' | 'planned', value: unknown): void;
}

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** True of a piece out of the catalog or of a joint: it can be made again at any time. */
export const isMade = ({ source }: Specimen): boolean =>
  (source.kind === 'memory' && source.text.startsWith('Sizes from memory')) ||
  (source.kind === 'typical' && source.text.startsWith('As the joint'));

export function createCouponEdits(project: ProjectState, state: CouponsState): CouponEdits {
  const now = (): Coupons =>
    plain(project.document()?.coupons ?? { specimens: [], sets: [] as CouponSet[] });
  const put = (coupons: Coupons): void => project.edit(['coupons'], coupons);
  const place = (id: string): number => state.sets().findIndex((set) => set.id === id);

  return {
    take: ({ coupons }) => put(plain(coupons)),
    add(specimen, wanted) {
      const coupons = now();
      const set = makeCouponSet(coupons.sets, specimen, wanted);
      put({ ...coupons, sets: [...coupons.sets, plain(set)] });
      return set.id;
    },
    rename(id, name) {
      const trimmed = name.trim().slice(0, 120);
      if (trimmed !== '' && place(id) >= 0) {
        project.edit(['coupons', 'sets', place(id), 'name'], trimmed);
      }
    },
    remove(id) {
      const { specimens, sets, ...rest } = now();
      const kept = sets.filter((set) => set.id !== id);
      const used = new Set([...kept, ...(rest.life ?? [])].map(({ specimen }) => specimen));
      const gone = sets.find((set) => set.id === id)?.specimen;
      put({
        ...rest,
        specimens: specimens.filter((one) => one.id !== gone || used.has(one.id) || !isMade(one)),
        sets: kept,
      });
    },
    set(id, key, value) {
      const at = place(id);
      if (at < 0) return;
      const { [key]: _old, ...others } = now().sets[at]!;
      // What is undefined is left out: a file has no place for it.
      const next = value === undefined ? others : { ...others, [key]: value };
      project.edit(['coupons', 'sets', at], next);
    },
  };
}
