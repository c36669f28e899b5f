/** Before something goes away that cannot be had again: one more press. */
import { createUniqueId, type JSX, onMount } from 'solid-js';

export interface AskFirstProps {
  /** What is in the way, as a sentence. */
  readonly title: string;
  /** What goes with it. */
  readonly text: string;
  readonly keep: string;
  readonly remove: string;
  readonly onKeep: () => void;
  readonly onRemove: () => void;
}

export function AskFirst(props: AskFirstProps): JSX.Element {
  const id = createUniqueId();
  let dialog!: HTMLDialogElement;
  onMount(() => dialog.showModal?.());
  /** Closed by itself it gives the focus back to where it came from. */
  const then = (act: () => void): void => {
    dialog.close?.();
    act();
  };
  return (
    <dialog
      ref={dialog}
      class="ask"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        then(props.onKeep);
      }}
    >
      <h2 id={id}>{props.title}</h2>
      <p>{props.text}</p>
      <div class="ask-buttons">
        <button type="button" class="plain is-first" onClick={() => then(props.onKeep)}>
          {props.keep}
        </button>
        <button type="button" class="plain" onClick={() => then(props.onRemove)}>
          {props.remove}
        </button>
      </div>
    </dialog>
  );
}
