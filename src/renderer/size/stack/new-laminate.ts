/** A laminate to begin with, and a ply for it: typical figures, to be replaced, marked so. */
import { batch } from 'solid-js';
import type { Laminate, Ply } from '../../../shared/project.ts';
import type { Path, ProjectState } from '../../state/project.ts';

/** Carbon fibre in epoxy of standard modulus, 60 % fibre; from memory. */
export const typicalPly: Omit<Ply, 'id'> = {
  name: 'Carbon and epoxy, unidirectional',
  axialModulus: 130_000,
  transverseModulus: 9000,
  shearModulus: 4800,
  poisson: 0.3,
  transverseShearModulus: 3200,
  axialExpansion: -0.3e-6,
  transverseExpansion: 30e-6,
  thickness: 0.2,
  tensileStrength: 2000,
  compressiveStrength: 1200,
  transverseTensileStrength: 50,
  transverseCompressiveStrength: 180,
  shearStrength: 80,
  interlaminarTension: 45,
  interlaminarShear: 75,
  source: { kind: 'typical', text: 'Typical, from memory: replace by your coupons.' },
};

export const FIRST_STACK = '[0/±45/90]s';

/** `ply`, or `ply-2` where that is taken, and so on. */
export function freeId(wanted: string, taken: readonly { readonly id: string }[]): string {
  for (let n = 1; ; n++) {
    const id = n === 1 ? wanted : `${wanted}-${n}`;
    if (!taken.some((item) => item.id === id)) return id;
  }
}

/** @returns the id of the new ply, null when no project is open */
export function addTypicalPly(project: ProjectState): string | null {
  const document = project.document();
  if (!document) return null;
  const plies = document.plies ?? [];
  const id = freeId('ply', plies);
  // A copy: the store writes into what it is given.
  const ply: Ply = { id, ...typicalPly, source: { ...typicalPly.source } };
  project.edit(['plies'], [...plies, ply]);
  return id;
}

/** Adds a laminate of the first ply, or of a typical one, and makes the part at `path` of it. */
export function addLaminate(project: ProjectState, path: Path): void {
  batch(() => {
    const ply = project.document()?.plies?.[0]?.id ?? addTypicalPly(project);
    const adherends = project.document()?.adherends ?? [];
    if (ply === null) return;
    const id = freeId('laminate', adherends);
    const number = id.slice('laminate-'.length);
    const laminate: Laminate = {
      id,
      name: number === '' ? 'New laminate' : `New laminate ${number}`,
      kind: 'laminate',
      ply,
      stack: FIRST_STACK,
      source: { kind: 'typical', text: 'Stack to begin with: replace by your own.' },
    };
    project.edit(['adherends', adherends.length], laminate);
    project.edit(path, id);
  });
}
