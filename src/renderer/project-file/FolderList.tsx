/** What is in the folder. Arrows walk, Enter goes in or takes, Backspace goes up, letters jump. */
import { createEffect, createUniqueId, For, type JSX, Show } from 'solid-js';
import { whenText } from './file-words.ts';
import type { FolderEntry, FolderState } from './folder-state.ts';

export interface FolderListProps {
  readonly state: FolderState;
  readonly name: string;
  readonly onReady: (list: HTMLElement) => void;
  /** Undefined where there is nothing to take. */
  readonly onTake: (entry: FolderEntry | undefined) => void;
  /** Given where a name is typed beside the list: an entry that is pressed may become that name. */
  readonly onPress?: (entry: FolderEntry) => void;
}

const FOLDER = 'M1.5 4 V12 H14.5 V5.5 H7.5 L6 4 Z';
const PROJECT = 'M3.5 1.5 H9.5 L12.5 4.5 V14.5 H3.5 Z M9.5 1.5 V4.5 H12.5';

/** How long letters belong together, ms. */
const TYPING = 800;

export function FolderList(props: FolderListProps): JSX.Element {
  const id = createUniqueId();
  let list!: HTMLDivElement;
  const { view, entries, at } = props.state;
  let typed = '';
  let typedAt = 0;
  const idOf = (k: number): string => `${id}-${k}`;
  createEffect(() => list.children[at()]?.scrollIntoView?.({ block: 'nearest' }));

  const jump = (letter: string): void => {
    const now = performance.now();
    typed = now - typedAt < TYPING ? typed + letter : letter;
    typedAt = now;
    const text = typed.toLowerCase();
    const found = entries().findIndex(({ name }) => name.toLowerCase().startsWith(text));
    if (found >= 0) props.state.setAt(found);
  };
  const keys = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
    const last = entries().length - 1;
    const entry = entries()[at()];
    if (event.key === 'Backspace') void props.state.up();
    else if (event.key === 'Enter') props.onTake(entry);
    else if (event.key === 'ArrowDown') props.state.setAt(Math.min(last, at() + 1));
    else if (event.key === 'ArrowUp') props.state.setAt(Math.max(Math.min(0, last), at() - 1));
    else if (event.key === 'Home') props.state.setAt(Math.min(0, last));
    else if (event.key === 'End') props.state.setAt(last);
    else if (event.key.length === 1) jump(event.key);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const nothing = (): string => {
    const here = view();
    if (!here) return 'Looking …';
    return here.chosen ? 'No folder and no project file in here.' : 'No folder in here.';
  };

  return (
    <div class="folders-list" classList={{ 'is-aside': props.onPress !== undefined }}>
      {/* biome-ignore lint/a11y/useAriaActivedescendantWithTabindex: it has the lower case that the DOM wants. */}
      <div
        ref={(element) => {
          list = element;
          props.onReady(element);
        }}
        role="listbox"
        tabindex="0"
        aria-label={props.name}
        aria-activedescendant={at() >= 0 ? idOf(at()) : undefined}
        onKeyDown={keys}
      >
        <For each={entries()}>
          {(entry, k) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the list.
            // biome-ignore lint/a11y/useFocusableInteractive: the focus stays on the list, which says which one is active.
            <div
              id={idOf(k())}
              role="option"
              aria-selected={k() === at()}
              classList={{ 'is-project': entry.kind === 'project' }}
              onClick={() => {
                props.state.setAt(k());
                props.onPress?.(entry);
              }}
              onDblClick={() => props.onTake(entry)}
            >
              <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
                <path d={entry.kind === 'folder' ? FOLDER : PROJECT} />
              </svg>
              <span class="folders-entry">{entry.name}</span>
              <Show when={entry.kind === 'project' && entry.at}>
                {(time) => <time dateTime={time()}>{whenText(time())}</time>}
              </Show>
            </div>
          )}
        </For>
      </div>
      <Show when={entries().length === 0}>
        <p class="folders-none">{nothing()}</p>
      </Show>
      <Show when={view()?.more}>
        {(more) => <p class="folders-none">And {more()} more, which are not shown.</p>}
      </Show>
    </div>
  );
}
