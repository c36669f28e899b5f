/** Finds any action, joint, load case, field, adhesive or coupon set by a few letters, and does it. */
import { createEffect, createMemo, createSignal, For, type JSX, Show, untrack } from 'solid-js';
import type { WorkspaceName } from '../workspaces.ts';
import { type Action, groups } from './action.ts';
import { chordText } from './chord.ts';
import { KeysDialog } from './KeysDialog.tsx';
import { MOST, search } from './match.ts';
import { keepFocus } from './panes.ts';

export interface CommandBoxProps {
  readonly actions: readonly Action[];
  readonly page: WorkspaceName;
  readonly onClose: () => void;
}

const LIST = 'command-list';
const idOf = (at: number): string => `command-${at}`;

const about = ({ group, about: more }: Action): string =>
  more === undefined ? groups[group].one : `${groups[group].one} ${more}`;

export function CommandBox(props: CommandBoxProps): JSX.Element {
  let list: HTMLDivElement | undefined;
  const [text, setText] = createSignal('');
  const [at, setAt] = createSignal(0);
  // As they were when it was opened: nothing else goes on while it is.
  const actions = untrack(() => props.actions);
  const found = createMemo(() => search(actions, text(), props.page));
  const said = (): string => {
    const count = found().length;
    if (text().trim() === '') return 'Type a few letters of a name.';
    if (count === 0) return 'Nothing goes by these letters.';
    if (count === MOST) return `The best ${count}; more letters find fewer.`;
    return count === 1 ? 'One found.' : `${count} found.`;
  };
  createEffect(() => list?.children[at()]?.scrollIntoView?.({ block: 'nearest' }));

  const run = (action: Action | undefined): void => {
    if (!action) return;
    props.onClose();
    action.run();
    keepFocus();
  };
  const key = (event: KeyboardEvent): void => {
    const count = found().length;
    if (event.isComposing) return;
    if (event.key === 'Enter') run(found()[at()]);
    else if (event.key === 'ArrowDown' && count > 0) setAt((at() + 1) % count);
    else if (event.key === 'ArrowUp' && count > 0) setAt((at() + count - 1) % count);
    else if (event.key === 'PageDown') setAt(Math.max(0, Math.min(count - 1, at() + 8)));
    else if (event.key === 'PageUp') setAt(Math.max(0, at() - 8));
    else return;
    event.preventDefault();
  };

  return (
    <KeysDialog class="command" label="Find" onClose={props.onClose}>
      <input
        class="command-text"
        type="text"
        role="combobox"
        aria-label="Action, joint, load case, field, adhesive or coupon set"
        aria-expanded={found().length > 0}
        aria-controls={found().length > 0 ? LIST : undefined}
        aria-autocomplete="list"
        aria-activedescendant={found().length > 0 ? idOf(at()) : undefined}
        autocomplete="off"
        spellcheck={false}
        placeholder="Joint, load case, field, view …"
        value={text()}
        onInput={(event) => {
          setAt(0);
          setText(event.currentTarget.value);
        }}
        onKeyDown={key}
      />
      <Show when={found().length > 0}>
        <div class="command-list" id={LIST} role="listbox" aria-label="Found" ref={list}>
          <For each={found()}>
            {(action, i) => (
              // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the box.
              // biome-ignore lint/a11y/useFocusableInteractive: the focus stays in the box, which says which one is active.
              <div
                id={idOf(i())}
                role="option"
                aria-selected={i() === at()}
                onPointerDown={(event) => event.preventDefault()}
                onClick={() => run(action)}
              >
                <span class="command-title">{action.title()}</span>
                <span class="command-about">{about(action)}</span>
                <Show when={action.keys?.[0]}>{(chord) => <kbd>{chordText(chord())}</kbd>}</Show>
              </div>
            )}
          </For>
        </div>
      </Show>
      <p class="command-said" role="status">
        {said()}
      </p>
    </KeysDialog>
  );
}
