/** What was just done, at the foot of the window over the page: nothing moves for it. */
import { type JSX, Show } from 'solid-js';
import type { Said } from '../state/said.ts';

export function SaidLine(props: { readonly said: Said }): JSX.Element {
  return (
    <p class="said-line" classList={{ 'is-warning': props.said.warns() }} role="status">
      <Show when={props.said.words()}>{(words) => <span>{words()}</span>}</Show>
    </p>
  );
}
