/** What went wrong with a file while a project is open, with what can be done about it. */
import { type JSX, Show } from 'solid-js';
import type { Trouble } from '../state/files/trouble.ts';

export function TroubleNotice(props: {
  readonly trouble: Trouble;
  readonly onClose: () => void;
}): JSX.Element {
  return (
    <div class="notice" role="alert">
      <p>{props.trouble.text}</p>
      <Show when={props.trouble.deed}>
        {(deed) => (
          <button type="button" class="link" onClick={() => deed().act()}>
            {deed().text}
          </button>
        )}
      </Show>
      <button type="button" class="link" onClick={() => props.onClose()}>
        Close
      </button>
    </div>
  );
}
