/** A question with a verb on each button. The first is what is meant mostly, the last changes nothing. */
import { createUniqueId, For, type JSX, onMount } from 'solid-js';

export interface Verb {
  readonly text: string;
  readonly act: () => void;
}

export interface AskVerbsProps {
  /** What is in the way, as a sentence. */
  readonly title: string;
  /** What the verbs do. */
  readonly text: string;
  readonly verbs: readonly Verb[];
}

export function AskVerbs(props: AskVerbsProps): JSX.Element {
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
        const stay = props.verbs.at(-1);
        if (stay) then(stay.act);
      }}
    >
      <h2 id={id}>{props.title}</h2>
      <p>{props.text}</p>
      <div class="ask-buttons">
        <For each={props.verbs}>
          {({ text, act }, i) => (
            <button
              type="button"
              class="plain"
              classList={{ 'is-first': i() === 0 }}
              onClick={() => then(act)}
            >
              {text}
            </button>
          )}
        </For>
      </div>
    </dialog>
  );
}
