/** Before a set goes away with what was measured of it. */
import { type JSX, onMount } from 'solid-js';
import { some } from './coupon-format.ts';

export interface AskRemoveProps {
  /** Of static results or of lives. */
  readonly set: { readonly name: string; readonly results: readonly unknown[] };
  readonly onRemove: () => void;
  readonly onKeep: () => void;
}

export function AskRemove(props: AskRemoveProps): JSX.Element {
  let dialog!: HTMLDialogElement;
  onMount(() => dialog.showModal?.());
  const results = (): string => some(props.set.results.length, 'result');
  return (
    <dialog
      ref={dialog}
      class="ask"
      aria-labelledby="ask-remove-title"
      onCancel={(event) => {
        event.preventDefault();
        props.onKeep();
      }}
    >
      <h2 id="ask-remove-title">{props.set.name} has results.</h2>
      <p>They go with it: {results()}, measured and typed.</p>
      <div class="ask-buttons">
        <button type="button" class="plain is-first" onClick={() => props.onKeep()}>
          Keep the set
        </button>
        <button type="button" class="plain" onClick={() => props.onRemove()}>
          Remove it with {results()}
        </button>
      </div>
    </dialog>
  );
}
