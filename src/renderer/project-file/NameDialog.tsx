/** Asks for a name: of the project, of a joint. */
import { createSignal, createUniqueId, type JSX, onMount } from 'solid-js';

export interface NameDialogProps {
  readonly title: string;
  readonly name: string;
  readonly onName: (name: string | null) => void;
}

/** Longest name that the project file takes. */
export const LONGEST_NAME = 120;

export function NameDialog(props: NameDialogProps): JSX.Element {
  const id = createUniqueId();
  let dialog!: HTMLDialogElement;
  let field!: HTMLInputElement;
  const [name, setName] = createSignal(props.name);
  onMount(() => {
    dialog.showModal?.();
    field.focus();
    field.select();
  });
  const answer = (given: string | null): void => {
    dialog.close?.();
    props.onName(given);
  };
  return (
    <dialog
      ref={dialog}
      class="ask"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        answer(null);
      }}
    >
      <form
        class="ask-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (name().trim() !== '') answer(name().trim());
        }}
      >
        <h2 id={id}>{props.title}</h2>
        <label class="ask-field">
          <span>Name</span>
          <input
            ref={field}
            type="text"
            autocomplete="off"
            required
            maxlength={LONGEST_NAME}
            value={name()}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <div class="ask-buttons">
          <button type="submit" class="plain is-first">
            Rename
          </button>
          <button type="button" class="plain" onClick={() => answer(null)}>
            Leave it
          </button>
        </div>
      </form>
    </dialog>
  );
}
