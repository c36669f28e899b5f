/** Undo and redo as a person has them: done, said for a while, and shown where it was. */
import { type Accessor, createEffect, createSignal, on, onCleanup } from 'solid-js';
import type { Moved } from './history.ts';
import type { Path, ProjectState } from './project.ts';

export interface Undoing {
  undo(): void;
  redo(): void;
  /** What was just taken back or done again; empty when that is old. */
  readonly said: Accessor<string>;
}

/** Milliseconds for which the page says what was taken back. */
const SAID = 6000;

/** @param onMoved told where the document was changed */
export function createUndoing(project: ProjectState, onMoved: (path: Path) => void): Undoing {
  const [said, setSaid] = createSignal('');
  let timer: ReturnType<typeof setTimeout> | undefined;
  let own = false;
  const tell = (words: string): void => {
    setSaid(words);
    clearTimeout(timer);
    timer = setTimeout(() => setSaid(''), SAID);
  };
  const move = (moved: Moved | null, what: string): void => {
    if (!moved) return;
    own = true;
    tell(`${what}: ${moved.words}`);
    onMoved(moved.path);
  };

  // Another change makes the words old.
  createEffect(
    on(
      project.revision,
      () => {
        if (!own) setSaid('');
        own = false;
      },
      { defer: true },
    ),
  );
  onCleanup(() => clearTimeout(timer));

  return {
    undo: () => move(project.history.undo(), 'Undone'),
    redo: () => move(project.history.redo(), 'Done again'),
    said,
  };
}
