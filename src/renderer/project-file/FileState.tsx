/** Under the project's name: its file, and whether that has all of it. */
import { type JSX, Show } from 'solid-js';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { ProjectState } from '../state/project.ts';

export interface FileStateProps {
  readonly files: ProjectFiles;
  readonly project: ProjectState;
}

export function FileState(props: FileStateProps): JSX.Element {
  const file = () => props.files.file();
  return (
    <p class="file-state">
      <span class="origin" title={file()?.path}>
        {file()?.name ?? props.project.origin()}
      </span>
      <Show when={file()?.writable === false}>
        <span
          class="file-mark"
          title={`This user may not write it in ${file()?.folder}: save it elsewhere`}
        >
          read only: use Save as
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
