/**
 * Opens or saves where the system has no dialog for the page: folders that the user chose, a walk from there,
 * projects with their time. Nothing outside of chosen folders is read or written.
 */
import {
  createEffect,
  createSignal,
  createUniqueId,
  For,
  type JSX,
  on,
  onMount,
  Show,
} from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { stemLength, withSuffix } from '../../shared/project-text.ts';
import { sentence } from '../../shared/words.ts';
import { OPEN_KINDS } from '../files.ts';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { BrowseWish } from '../state/files/questions.ts';
import { FolderList } from './FolderList.tsx';
import { inFolder, nameTrouble } from './file-words.ts';
import { createFolderState, type FolderEntry } from './folder-state.ts';
import { MakeFolder } from './MakeFolder.tsx';

export interface FolderDialogProps {
  readonly bridge: Bridge;
  readonly files: ProjectFiles;
  readonly wish: BrowseWish;
  readonly onAnswer: (answer: string | File | null) => void;
}

const ONLY =
  'Lapwright reads and writes only project files, and only inside folders that you choose.';

export function FolderDialog(props: FolderDialogProps): JSX.Element {
  const id = createUniqueId();
  let dialog!: HTMLDialogElement;
  let field: HTMLInputElement | undefined;
  let list: HTMLElement | undefined;
  let upload!: HTMLInputElement;
  const isSaving = props.wish.purpose === 'save';
  const [name, setName] = createSignal(props.wish.name);
  const [wrong, setWrong] = createSignal<string | null>(null);
  const folders = () => props.files.places().folders;
  const state = createFolderState(props.bridge, () => void props.files.lookAtPlaces());
  const { view, current } = state;
  const isChosen = (): boolean => view()?.chosen ?? false;
  let use: HTMLButtonElement | undefined;
  /** Nothing is done in a folder that the user has not chosen; the button that chooses it is at hand. */
  const [unused, setUnused] = createSignal(false);
  const askToUse = (): void => {
    if (!use) return;
    setUnused(true);
    use.focus();
  };
  createEffect(on(view, () => setUnused(false)));

  const answer = (given: string | File | null): void => {
    dialog.close?.();
    props.onAnswer(given);
  };
  const start = async (): Promise<void> => {
    await state.go(props.wish.folder ?? folders()[0]?.path);
    // That folder may be gone: there is always the user's own.
    if (view() === null) await state.go(undefined);
    if (!isSaving) list?.focus();
  };
  let started: Promise<void> | undefined;
  onMount(() => {
    dialog.showModal?.();
    // A name may be typed before the folder is seen: what is typed stays.
    if (isSaving) field?.focus();
    field?.setSelectionRange(0, stemLength(field.value));
    started = start();
  });

  const save = (): void => {
    const here = view();
    const typed = name().trim();
    const trouble = nameTrouble(typed);
    setWrong(trouble);
    if (trouble !== null) field?.focus();
    else if (here) answer(inFolder(here.path, withSuffix(typed)));
  };
  const useName = (entry: FolderEntry): void => {
    if (entry.kind !== 'project') return;
    setName(entry.name);
    setWrong(null);
  };
  const take = (entry: FolderEntry | undefined): void => {
    if (!entry) {
      if (!isChosen()) askToUse();
    } else if (entry.kind === 'folder') void state.go(entry.path).then(() => list?.focus());
    else if (isSaving) {
      useName(entry);
      field?.focus();
    } else answer(entry.path);
  };
  const doIt = (): void => {
    if (!isChosen()) askToUse();
    else if (isSaving) save();
    else take(current());
  };
  /** Enter may come before the folder that was asked for: it counts when that is seen. */
  let isWaiting = false;
  const submit = async (): Promise<void> => {
    if (isWaiting) return;
    if (view() !== null && !state.isGoing()) return doIt();
    isWaiting = true;
    const before = state.trouble();
    await started;
    await state.settled();
    isWaiting = false;
    const isRefused = state.trouble() !== null && state.trouble() !== before;
    if (!isRefused) doIt();
  };
  const chooseFolder = async (): Promise<void> => {
    await state.choose();
    if (isSaving) field?.focus();
    else list?.focus();
  };
  const keys = (event: KeyboardEvent): void => {
    if (event.key === 'ArrowUp' && event.altKey) {
      event.preventDefault();
      void state.up();
    } else if (event.key === 'Escape') {
      event.preventDefault();
      answer(null);
    }
  };

  return (
    <dialog
      ref={dialog}
      class="folders"
      aria-labelledby={id}
      onKeyDown={keys}
      onCancel={(event) => {
        event.preventDefault();
        answer(null);
      }}
    >
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void submit();
        }}
      >
        <header class="folders-head">
          <h2 id={id}>{isSaving ? `Save ${props.wish.project}` : 'Open a project'}</h2>
          <div class="folders-path">
            <button
              type="button"
              class="folders-up"
              aria-label="The folder above"
              aria-keyshortcuts="Alt+ArrowUp"
              title="The folder above (Alt+Up)"
              disabled={view()?.above === null || view() === null}
              onClick={() => void state.up()}
            >
              <svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
                <path d="M7 12 V3 M3 6.5 L7 2.5 L11 6.5" />
              </svg>
            </button>
            <p title={view()?.path}>{view()?.path}</p>
          </div>
        </header>

        <div class="folders-body">
          <nav class="folders-places" aria-label="Folders that you chose">
            <h3>Chosen folders</h3>
            <For each={folders()} fallback={<p class="units">None yet.</p>}>
              {(folder) => (
                <button
                  type="button"
                  title={folder.path}
                  aria-current={view()?.path === folder.path ? 'true' : undefined}
                  onClick={() => void state.go(folder.path)}
                >
                  {folder.name}
                </button>
              )}
            </For>
            <button type="button" class="folders-own" onClick={() => void state.go(undefined)}>
              Home folder
            </button>
          </nav>
          <div class="folders-main">
            <FolderList
              state={state}
              name={isSaving ? 'Folders and projects, to save among' : 'Folders and projects'}
              onReady={(element) => {
                list = element;
              }}
              onTake={take}
              {...(isSaving ? { onPress: useName } : {})}
            />
            <Show when={view() !== null && !isChosen()}>
              <div class="folders-choose">
                <p>{ONLY}</p>
                <button
                  ref={use}
                  type="button"
                  class="plain is-first"
                  aria-describedby={unused() ? `${id}-unused` : undefined}
                  onClick={() => void chooseFolder()}
                >
                  Use this folder
                </button>
              </div>
            </Show>
          </div>
        </div>

        <Show when={unused() && view() !== null && !isChosen()}>
          <p class="folders-trouble" id={`${id}-unused`} role="alert">
            {isSaving ? 'To save here' : 'To open what is in here'}, choose this folder first: Use
            this folder.
          </p>
        </Show>
        <Show when={state.trouble()}>
          {(message) => (
            <p class="folders-trouble" role="alert">
              {sentence(message())}
            </p>
          )}
        </Show>
        <Show when={isSaving}>
          <label class="folders-name">
            <span>File name</span>
            <input
              ref={field}
              type="text"
              autocomplete="off"
              spellcheck={false}
              value={name()}
              aria-invalid={wrong() === null ? undefined : 'true'}
              aria-describedby={wrong() === null ? undefined : `${id}-wrong`}
              onInput={(event) => {
                setName(event.currentTarget.value);
                setWrong(null);
              }}
            />
          </label>
          <Show when={wrong()}>
            {(message) => (
              <p class="folders-trouble" id={`${id}-wrong`} role="alert">
                {message()}
              </p>
            )}
          </Show>
        </Show>
        <footer class="folders-foot">
          <MakeFolder onMake={state.make} />
          <Show when={!isSaving}>
            <input
              ref={upload}
              class="hidden"
              type="file"
              accept={OPEN_KINDS}
              tabindex="-1"
              aria-label="A project file, through the browser"
              onChange={() => {
                const [chosen] = upload.files ?? [];
                if (chosen) answer(chosen);
              }}
            />
            <button
              type="button"
              class="link"
              title="It then has no place on disk that Lapwright knows: Save asks where"
              onClick={() => upload.click()}
            >
              From this computer through the browser …
            </button>
          </Show>
          <span class="folders-end">
            <button type="button" class="plain" onClick={() => answer(null)}>
              Cancel
            </button>
            <button
              type="submit"
              class="plain is-first"
              aria-disabled={!isChosen() || (!isSaving && current() === undefined)}
            >
              {isSaving ? 'Save' : 'Open'}
            </button>
          </span>
        </footer>
      </form>
    </dialog>
  );
}
