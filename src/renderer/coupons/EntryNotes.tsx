/** What is asked and told while results come in: see `createEntry`. */
import { For, type JSX, Show } from 'solid-js';
import { sentence } from '../../shared/words.ts';
import { AskOver } from './AskOver.tsx';
import type { Entry } from './entry.ts';

export function EntryNotes(props: { readonly entry: Entry }): JSX.Element {
  return (
    <>
      <Show when={props.entry.question()} keyed>
        {(one) => <AskOver {...one} />}
      </Show>
      <For each={props.entry.errors()}>
        {({ line, message }) => (
          <p class="refused" role="alert">
            Line {line}: {sentence(message)}
          </p>
        )}
      </For>
      <Show when={props.entry.errors().length > 0}>
        <p class="units">Nothing was taken in.</p>
      </Show>
      <p class="coupon-said" role="status">
        {props.entry.said()}
        <Show when={props.entry.removed()}>
          {(coupon) => (
            <>
              Coupon {coupon()} was removed.{' '}
              <button type="button" class="plain" onClick={() => props.entry.putBack()}>
                Put it back
              </button>
            </>
          )}
        </Show>
      </p>
    </>
  );
}
