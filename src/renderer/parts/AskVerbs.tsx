/** A question with a verb on each button. The first is what is meant mostly, the last changes nothing. */
import { For, type JSX } from 'solid-js';
import { AskDialog } from './AskDialog.tsx';

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
  /** Escape; the last verb when left out. */
  readonly onCancel?: () => void;
}

export function AskVerbs(props: AskVerbsProps): JSX.Element {
  return (
    <AskDialog title={props.title} onCancel={() => (props.onCancel ?? props.verbs.at(-1)?.act)?.()}>
      {(then) => (
        <>
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
        </>
      )}
    </AskDialog>
  );
}
