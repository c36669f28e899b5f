/** Test pieces into the document and out of it; their sizes changed, and their claims with them. */
import { batch } from 'solid-js';
import type { Lap } from '../../shared/convert-lap.ts';
import { claimAfter, copyPiece, newPiece, usesOf } from '../../shared/coupon-pieces.ts';
import type { Specimen } from '../../shared/project-coupons.ts';
import type { Path, ProjectState } from './project.ts';

export interface PieceEdits {
  /** The project for the fields of a piece: what is changed of a shape takes its claims along. */
  readonly fields: ProjectState;
  /** Ids of what was made; null where the project takes no more, or has no material. */
  add(lap: Lap): string | null;
  copy(id: string): string | null;
  rename(id: string, name: string): void;
  /** The piece, for it to be put back; null where a set uses it: then it stays. */
  remove(id: string): Specimen | null;
  putBack(piece: Specimen): void;
}

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
const claimOf = ({ standard, source }: Specimen) => ({ standard, source });

/** Pieces as they were before their sizes were changed, so that typing a size back costs no claim. */
interface Changed {
  readonly before: Specimen;
  readonly claim: Pick<Specimen, 'standard' | 'source'>;
}

export function createPieceEdits(project: ProjectState): PieceEdits {
  const all = (): readonly Specimen[] => project.plain()?.coupons?.specimens ?? [];
  const memory = new Map<string, Changed>();

  const put = (piece: Specimen): string => {
    // At its place alone: the other pieces stay the same objects, and their rows with them.
    if (project.plain()?.coupons) {
      project.edit(['coupons', 'specimens', all().length], plain(piece));
    } else project.edit(['coupons'], { specimens: [plain(piece)], sets: [] });
    return piece.id;
  };

  const reshape = (place: number, path: Path, value: unknown): void => {
    const now = plain(all()[place]!);
    const key = `${project.opening()} ${now.id}`;
    const known = memory.get(key);
    // What was written by hand since is its own claim.
    const before = known && same(claimOf(now), known.claim) ? known.before : now;
    batch(() => {
      project.edit(path, value);
      const claim = claimAfter(before, plain(all()[place]!.shape));
      if (same(claim, claimOf(before))) memory.delete(key);
      else memory.set(key, { before, claim });
      if (same(claim, claimOf(now))) return;
      project.edit(['coupons', 'specimens', place, 'standard'], claim.standard);
      project.edit(['coupons', 'specimens', place, 'source'], plain(claim.source));
    });
  };

  return {
    fields: {
      ...project,
      edit(path, value) {
        const [top, list, place, part] = path;
        const isShape = top === 'coupons' && list === 'specimens' && part === 'shape';
        if (isShape) reshape(Number(place), path, value);
        else project.edit(path, value);
      },
    },
    add(lap) {
      const piece = newPiece(lap, project.plain()?.adherends ?? [], all());
      return piece && put(piece);
    },
    copy(id) {
      const from = all().find((one) => one.id === id);
      const piece = from ? copyPiece(plain(from), all()) : null;
      return piece && put(piece);
    },
    rename(id, name) {
      const place = all().findIndex((one) => one.id === id);
      const trimmed = name.trim().slice(0, 120);
      if (place >= 0 && trimmed !== '') {
        project.edit(['coupons', 'specimens', place, 'name'], trimmed);
      }
    },
    remove(id) {
      const coupons = project.plain()?.coupons;
      const piece = all().find((one) => one.id === id);
      if (!coupons || !piece || usesOf(coupons, id).names.length > 0) return null;
      const gone = plain(piece);
      project.edit(
        ['coupons', 'specimens'],
        all().filter((one) => one.id !== id),
      );
      return gone;
    },
    putBack(piece) {
      if (!all().some(({ id }) => id === piece.id)) put(piece);
    },
  };
}
