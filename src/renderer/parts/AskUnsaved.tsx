/** Before another project takes the place of one with unsaved changes. */
import { type JSX, onMount } from 'solid-js';

export interface AskUnsavedProps {
  readonly name: string;
  readonly onSave: () => void;
  readonly onDiscard: () => void;
  readonly onStay: () => void;
}

export function AskUnsaved(props: AskUnsavedProps): JSX.Element {
  let dialog!: HTMLDialogElement;
  onMount(() => dialog.showModal?.());
  return (
    <dialog
      ref={dialog}
      class="ask"
      aria-labelledby="ask-title"
      onCancel={(event) => {
        event.preventDefault();
        props.onStay();
      }}
    >
      <h2 id="ask-title">{props.name} has changes that are not saved.</h2>
      <p>Opening another project puts this one away.</p>
      <div class="ask-buttons">
        <button type="button" class="plain is-first" onClick={() => props.onSave()}>
          Save a copy, then open
        </button>
        <button type="button" class="plain" onClick={() => props.onDiscard()}>
          Open without saving
        </button>
        <button type="button" class="plain" onClick={() => props.onStay()}>
          Stay here
        </button>
      </div>
    </dialog>
  );
}
