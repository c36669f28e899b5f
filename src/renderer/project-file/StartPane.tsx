/** In place of the pages while no project is open: it is being opened, or why it could not be. */
import { type JSX, Show } from 'solid-js';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { Trouble } from '../state/files/trouble.ts';
import { NotOpened } from './NotOpened.tsx';

export function StartPane(props: {
  readonly files: ProjectFiles;
  readonly trouble: Trouble | null;
  readonly starting: boolean;
  readonly gone: boolean;
}): JSX.Element {
  return (
    <div class="start">
      <Show
        when={props.trouble}
        fallback={
          <Show when={props.starting}>
            <p class="figure-empty">Opening …</p>
          </Show>
        }
      >
        {(what) => (
          <NotOpened
            trouble={what()}
            gone={props.gone}
            onDemo={() => void props.files.openDemo()}
            onOther={() => void props.files.open()}
          />
        )}
      </Show>
    </div>
  );
}
