/** Asked before anything is written over; has the focus as soon as it is there. */
import { For, type JSX, onMount } from 'solid-js';

export interface Question {
  readonly words: string;
  readonly answers: readonly { readonly text: string; readonly run: () => void }[];
}

export function AskOver(props: Question): JSX.Element {
  let box!: HTMLDivElement;
  onMount(() => box.querySelector('button')?.focus());
  return (
    <div class="coupon-ask" ref={box} role="alertdialog" aria-label={props.words}>
      <p>{props.words}</p>
      <For each={props.answers}>
        {({ text, run }) => (
          <button type="button" class="plain" onClick={() => run()}>
            {text}
          </button>
        )}
      </For>
    </div>
  );
}
