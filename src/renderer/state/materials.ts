/** Materials copied, to be changed from there, and taken away where nothing uses them. */
import { batch } from 'solid-js';
import { unwrap } from 'solid-js/store';
import type { Adherend, Adhesive, Project } from '../../shared/project.ts';
import { asCopy } from './free-names.ts';
import type { Path, ProjectState } from './project.ts';
import { isUsed, usesOfAdherend, usesOfAdhesive } from './uses.ts';

export type MaterialList = 'adherends' | 'adhesives';
export type AnyMaterial = Adherend | Adhesive;

const MOST: Readonly<Record<MaterialList, number>> = { adherends: 500, adhesives: 200 };

export const isFull = (project: Project, list: MaterialList): boolean =>
  project[list].length >= MOST[list];

/**
 * Puts a copy of the material behind the others and has whoever names it at `path` made of the copy.
 * What coupons allow stays behind: they are of the adhesive that they were bonded with.
 */
export function copyMaterial(
  project: ProjectState,
  list: MaterialList,
  index: number,
  path: Path,
  /** Told the id before whoever shows the copy is built. */
  before: (id: string) => void,
): string | null {
  const document = project.document();
  const one: AnyMaterial | undefined = document?.[list][index];
  if (!document || !one || isFull(document, list)) return null;
  const plain = JSON.parse(JSON.stringify(unwrap(one))) as AnyMaterial;
  if ('allowables' in plain) delete plain.allowables;
  const made = asCopy(document[list] as readonly AnyMaterial[], plain);
  batch(() => {
    before(made.id);
    project.edit([list, document[list].length], made);
    project.edit(path, made.id);
  });
  return made.id;
}

const usesIn = { adherends: usesOfAdherend, adhesives: usesOfAdhesive } as const;

/** Those that no joint, variant or coupon is made of. */
export const unusedOf = (project: Project, list: MaterialList): readonly AnyMaterial[] =>
  (project[list] as readonly AnyMaterial[]).filter(({ id }) => !isUsed(usesIn[list](project, id)));

/** Does nothing to one that is used. */
export function removeUnused(project: ProjectState, list: MaterialList, id: string): void {
  const document = project.document();
  if (!document || isUsed(usesIn[list](document, id))) return;
  project.edit(
    [list],
    (document[list] as readonly AnyMaterial[]).filter((one) => one.id !== id),
  );
}
