/**
 * Takes changes of the document back, and back again; each says which change it is about. With nothing
 * to do they are only marked so: a button that is disabled would lose the focus of who pressed it last.
 */
import { createMemo, type JSX } from 'solid-js';
import type { ProjectState } from '../state/project.ts';
import type { Undoing } from '../state/undoing.ts';

export interface UndoControlProps {
  readonly project: ProjectState;
  readonly undoing: Undoing;
}

function Arrow(props: { readonly path: string }): JSX.Element {
  return (
    <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      <path d={props.path} />
    </svg>
  );
}

const BACK = 'M5.5 3 L2.5 6 L5.5 9 M2.5 6 H9.5 A3.5 3.5 0 0 1 9.5 13 H6';
const FORWARD = 'M10.5 3 L13.5 6 L10.5 9 M13.5 6 H6.5 A3.5 3.5 0 0 0 6.5 13 H10';

export function UndoControl(props: UndoControlProps): JSX.Element {
  // Told once for each change: a list is compared to find the words.
  const undoes = createMemo(() => props.project.history.undoes());
  const redoes = createMemo(() => props.project.history.redoes());
  return (
    <div class="undo">
      <button
        type="button"
        aria-label={undoes() === null ? 'Undo' : `Undo ${undoes()}`}
        aria-keyshortcuts="Control+Z"
        title={undoes() === null ? undefined : `Undo ${undoes()} (Ctrl+Z)`}
        aria-disabled={undoes() === null ? 'true' : undefined}
        onClick={() => props.undoing.undo()}
      >
        <Arrow path={BACK} />
      </button>
      <button
        type="button"
        aria-label={redoes() === null ? 'Redo' : `Redo ${redoes()}`}
        aria-keyshortcuts="Control+Shift+Z"
        title={redoes() === null ? undefined : `Redo ${redoes()} (Ctrl+Shift+Z)`}
        aria-disabled={redoes() === null ? 'true' : undefined}
        onClick={() => props.undoing.redo()}
      >
        <Arrow path={FORWARD} />
      </button>
    </div>
  );
}
