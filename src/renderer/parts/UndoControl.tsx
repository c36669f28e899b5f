/** Takes changes of the document back, and back again; each says which change it is about. */
import { createEffect, createSignal, type JSX, on, onCleanup, onMount, Show } from 'solid-js';
import type { Moved } from '../state/history.ts';
import type { Path, ProjectState } from '../state/project.ts';

export interface UndoControlProps {
  readonly project: ProjectState;
  /** Told where the document was changed. */
  readonly onMoved: (path: Path) => void;
}

/** Milliseconds for which the page says what was taken back. */
const SAID = 6000;

/** Fields have an undo of their own while they are written in. */
function isWriting(): boolean {
  const here = document.activeElement;
  if (here instanceof HTMLTextAreaElement) return true;
  return (
    here instanceof HTMLInputElement &&
    !['radio', 'checkbox', 'range', 'button'].includes(here.type)
  );
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
  const history = () => props.project.history;
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
    props.onMoved(moved.path);
  };
  const undo = (): void => move(history().undo(), 'Undone');
  const redo = (): void => move(history().redo(), 'Done again');

  // Another change makes the words old.
  createEffect(
    on(
      props.project.revision,
      () => {
        if (!own) setSaid('');
        own = false;
      },
      { defer: true },
    ),
  );

  const keys = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || isWriting()) return;
    const key = event.key.toLowerCase();
    const back = key === 'z' && !event.shiftKey;
    if (!back && key !== 'y' && key !== 'z') return;
    event.preventDefault();
    if (back) undo();
    else redo();
  };
  onMount(() => window.addEventListener('keydown', keys));
  onCleanup(() => {
    clearTimeout(timer);
    window.removeEventListener('keydown', keys);
  });

  return (
    <div class="undo">
      <button
        type="button"
        aria-label={history().undoes() === null ? 'Undo' : `Undo ${history().undoes()}`}
        aria-keyshortcuts="Control+Z"
        title={history().undoes() === null ? undefined : `Undo ${history().undoes()} (Ctrl+Z)`}
        disabled={history().undoes() === null}
        onClick={undo}
      >
        <Arrow path={BACK} />
      </button>
      <button
        type="button"
        aria-label={history().redoes() === null ? 'Redo' : `Redo ${history().redoes()}`}
        aria-keyshortcuts="Control+Shift+Z"
        title={
          history().redoes() === null ? undefined : `Redo ${history().redoes()} (Ctrl+Shift+Z)`
        }
        disabled={history().redoes() === null}
        onClick={redo}
      >
        <Arrow path={FORWARD} />
      </button>
      <p class="undo-said" role="status">
        <Show when={said()}>{(words) => <span>{words()}</span>}</Show>
      </p>
    </div>
  );
}
