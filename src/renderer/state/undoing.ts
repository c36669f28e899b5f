/** Undo and redo as a person has them: done, said for a while, and shown where it was. */
import { createEffect, on } from 'solid-js';
import type { Moved } from './history.ts';
import type { Path, ProjectState } from './project.ts';
import type { Said } from './said.ts';

export interface Undoing {
  undo(): void;
  redo(): void;
}

/** @param onMoved told where the document was changed */
export function createUndoing(
  project: ProjectState,
  said: Said,
  onMoved: (path: Path) => void,
): Undoing {
  let own = false;
  const move = (moved: Moved | null, what: string): void => {
    if (!moved) return;
    own = true;
    said.tell(`${what}: ${moved.words}`);
    onMoved(moved.path);
  };

  // Another change makes the words old.
  createEffect(
    on(
      project.revision,
      () => {
        if (!own) said.clear();
        own = false;
      },
      { defer: true },
    ),
  );

  return {
    undo: () => move(project.history.undo(), 'Undone'),
    redo: () => move(project.history.redo(), 'Done again'),
  };
}
