/** In the place of a project, where none could be opened: why, and what can be done about it. */
import { type JSX, Show } from 'solid-js';
import type { Trouble } from '../state/files/trouble.ts';

export interface NotOpenedProps {
  readonly trouble: Trouble;
  /** Nobody answers: nothing can be opened from here. */
  readonly gone: boolean;
  readonly onDemo: () => void;
  readonly onOther: () => void;
}

export function NotOpened(props: NotOpenedProps): JSX.Element {
  return (
    <>
      <h1>The project could not be opened</h1>
      <p role="alert">{props.trouble.text}</p>
      <Show
        when={!props.gone}
        fallback={
          <p>Start Lapwright again, or open the address that it printed when it started.</p>
        }
      >
        <div class="start-buttons">
          <Show when={props.trouble.deed}>
            {(deed) => (
              <button type="button" class="plain is-first" onClick={() => deed().act()}>
                {deed().text}
              </button>
            )}
          </Show>
          <button
            type="button"
            class="plain"
            classList={{ 'is-first': props.trouble.deed === undefined }}
            onClick={() => props.onDemo()}
          >
            Open the demonstration project
          </button>
          <button type="button" class="plain" onClick={() => props.onOther()}>
            Open another file …
          </button>
        </div>
      </Show>
    </>
  );
}
