/** The row of views in the header of the section; the state of the choice is the page's. */
import { For, type JSX, Show } from 'solid-js';
import { views } from './views.ts';

export interface ViewRowProps {
  /** Id of the chosen view; `stress` for the first. */
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

export function ViewRow(props: ViewRowProps): JSX.Element {
  return (
    <Show when={views.length > 0}>
      <nav class="view-row" aria-label="Views of the joint">
        <For each={[{ id: 'stress', title: 'Stress' }, ...views]}>
          {({ id, title }) => (
            <button
              type="button"
              class="link"
              aria-current={props.chosen === id ? 'true' : undefined}
              onClick={() => props.onChoose(id)}
            >
              {title}
            </button>
          )}
        </For>
      </nav>
    </Show>
  );
}
