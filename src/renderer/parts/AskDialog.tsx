/** The frame of every question that the page puts: a heading, what it says, and a way out by Escape. */
import { createUniqueId, type JSX, onMount } from 'solid-js';

export interface AskDialogProps {
  /** What is in the way, as a sentence; or what is asked for. */
  readonly title: string;
  /** Escape: what changes nothing. */
  readonly onCancel: () => void;
  /** What stands under the heading; `then` closes the question before it acts. */
  readonly children: (then: (act: () => void) => void) => JSX.Element;
}

export function AskDialog(props: AskDialogProps): JSX.Element {
  const id = createUniqueId();
  let dialog!: HTMLDialogElement;
  onMount(() => {
    dialog.showModal?.();
    // A name is asked for to be typed over.
    const field = dialog.querySelector<HTMLInputElement>('input[type="text"]');
    field?.focus();
    field?.select();
  });
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
        then(props.onCancel);
      }}
    >
      <h2 id={id}>{props.title}</h2>
      {props.children(then)}
    </dialog>
  );
}
