/** A new folder in the one that is seen: a word, then a field in its place. */
import { createSignal, type JSX, Show } from 'solid-js';
import { nameTrouble } from './file-words.ts';

export interface MakeFolderProps {
  /** True when it is there. */
  readonly onMake: (name: string) => Promise<boolean>;
}

export function MakeFolder(props: MakeFolderProps): JSX.Element {
  const [open, setOpen] = createSignal(false);
  const [name, setName] = createSignal('');
  let field: HTMLInputElement | undefined;
  let button: HTMLButtonElement | undefined;
  const begin = (): void => {
    setName('');
    setOpen(true);
    field?.focus();
  };
  const end = (): void => {
    setOpen(false);
    button?.focus();
  };
  const make = async (): Promise<void> => {
    if (nameTrouble(name()) === null && (await props.onMake(name().trim()))) end();
  };
  const keys = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    // Neither is for the dialog.
    event.preventDefault();
    event.stopPropagation();
    if (event.key === 'Enter') void make();
    else end();
  };
  return (
    <Show
      when={open()}
      fallback={
        <button ref={button} type="button" class="link" onClick={begin}>
          New folder …
        </button>
      }
    >
      <span class="folders-make">
        <input
          ref={field}
          type="text"
          autocomplete="off"
          spellcheck={false}
          aria-label="Name of the new folder"
          placeholder="Name of the new folder"
          value={name()}
          onInput={(event) => setName(event.currentTarget.value)}
          onKeyDown={keys}
        />
        <button
          type="button"
          class="link"
          disabled={nameTrouble(name()) !== null}
          onClick={() => void make()}
        >
          Make it
        </button>
      </span>
    </Show>
  );
}
