/** Under the project's name: its file, and whether that has all of it. */
import { type JSX, Show } from 'solid-js';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { ProjectState } from '../state/project.ts';

export interface FileStateProps {
  readonly files: ProjectFiles;
  readonly project: ProjectState;
}

/** The ending that all projects have: the first to go where there is no room. */
const ENDING = /(\.lapwright)?\.(json|lapwright)$/i;

export function FileState(props: FileStateProps): JSX.Element {
  const file = () => props.files.file();
  const name = (): string => file()?.name ?? props.project.origin();
  const ending = (): string => ENDING.exec(name())?.[0] ?? '';
  return (
    <p class="file-state">
      <span
        class="origin"
        title={`${file()?.path ?? name()}${file()?.writable === false ? ' (read only)' : ''}`}
      >
        <span class="origin-stem">{name().slice(0, name().length - ending().length)}</span>
        <span class="origin-end">{ending()}</span>
      </span>
      <Show when={file()?.writable === false}>
        <span
          class="file-mark is-read-only"
          title={`Read only: this user may not write it in ${file()?.folder}. Use Save as`}
        >
          read only
        </span>
      </Show>
      <Show when={props.project.unsaved()}>
        <span class="file-mark is-unsaved">changes not saved</span>
      </Show>
      <Show when={props.files.saving()}>
        <span class="file-mark is-saving">saving …</span>
      </Show>
    </p>
  );
}
