/** The bar over every page: the project and its file, the pages, and what is done to the project as a whole. */
import { For, type JSX, Show } from 'solid-js';
import type { Action } from './actions/action.ts';
import { HelpMenu } from './help/HelpMenu.tsx';
import { ThemeControl } from './parts/ThemeControl.tsx';
import { UndoControl } from './parts/UndoControl.tsx';
import { UnitsControl } from './parts/UnitsControl.tsx';
import { FileMenu } from './project-file/FileMenu.tsx';
import { FileState } from './project-file/FileState.tsx';
import type { ProjectFiles } from './state/files/project-files.ts';
import type { ProjectState } from './state/project.ts';
import type { Undoing } from './state/undoing.ts';
import type { Theme } from './theme.ts';
import type { Units } from './units.ts';
import { type WorkspaceName, workspaces } from './workspaces.ts';

export interface BarProps {
  readonly project: ProjectState;
  readonly files: ProjectFiles;
  /** Those of files are in the File menu. */
  readonly actions: readonly Action[];
  readonly undoing: Undoing;
  readonly theme: Theme;
  readonly units: Units;
  readonly onUnits: () => void;
  readonly workspace: WorkspaceName;
  readonly onWorkspace: (name: WorkspaceName) => void;
  readonly onKeys: () => void;
  readonly onGuide: () => void;
  readonly onNotes: () => void;
  readonly onAbout: () => void;
  /** No project is here and nobody answers: no file can be opened. */
  readonly stranded: boolean;
}

export function Bar(props: BarProps): JSX.Element {
  return (
    // biome-ignore lint/a11y/useAriaPropsSupportedByRole: outside of main a header is a banner, which may have a name.
    <header class="bar" data-pane aria-label="Bar">
      <Show when={!props.stranded}>
        <FileMenu files={props.files} actions={props.actions} />
      </Show>
      <div class="bar-project">
        <p class="bar-name">{props.project.document()?.name ?? 'Lapwright'}</p>
        <Show when={props.project.document()}>
          <FileState files={props.files} project={props.project} />
        </Show>
      </div>
      <Show when={props.project.document()}>
        <nav aria-label="Workspaces">
          <For each={workspaces}>
            {({ id, title }, i) => (
              <button
                type="button"
                class="tab"
                aria-current={props.workspace === id ? 'page' : undefined}
                aria-keyshortcuts={`Control+${i() + 1}`}
                title={`Ctrl+${i() + 1}`}
                onClick={() => props.onWorkspace(id)}
              >
                {title}
              </button>
            )}
          </For>
        </nav>
      </Show>
      <div class="bar-right">
        <Show when={props.project.document()}>
          <UndoControl project={props.project} undoing={props.undoing} />
        </Show>
        <UnitsControl units={props.units} onOpen={props.onUnits} />
        <ThemeControl theme={props.theme} />
        <HelpMenu
          onGuide={props.onGuide}
          onKeys={props.onKeys}
          onNotes={(props.project.document()?.joints.length ?? 0) > 0 ? props.onNotes : undefined}
          onAbout={props.onAbout}
        />
      </div>
    </header>
  );
}
