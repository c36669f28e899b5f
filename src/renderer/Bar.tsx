/** The bar over every page: the project's name, the pages, and what is done to the project as a whole. */
import { For, type JSX, Show } from 'solid-js';
import { OpenButton } from './parts/OpenButton.tsx';
import { ThemeControl } from './parts/ThemeControl.tsx';
import { UndoControl } from './parts/UndoControl.tsx';
import { UnitsControl } from './parts/UnitsControl.tsx';
import type { ProjectState } from './state/project.ts';
import type { Undoing } from './state/undoing.ts';
import type { Theme } from './theme.ts';
import type { Units } from './units.ts';
import { type WorkspaceName, workspaces } from './workspaces.ts';

export interface BarProps {
  readonly project: ProjectState;
  readonly undoing: Undoing;
  readonly theme: Theme;
  readonly units: Units;
  readonly onUnits: () => void;
  readonly workspace: WorkspaceName;
  readonly onWorkspace: (name: WorkspaceName) => void;
  readonly onFile: (file: File) => void;
  readonly onSave: () => void;
  readonly onKeys: () => void;
  /** Told how to open the system's dialog of files. */
  readonly onChooser: (choose: () => void) => void;
}

export function Bar(props: BarProps): JSX.Element {
  return (
    // biome-ignore lint/a11y/useAriaPropsSupportedByRole: outside of main a header is a banner, which may have a name.
    <header class="bar" data-pane aria-label="Bar">
      <p class="bar-name">{props.project.document()?.name ?? 'Lapwright'}</p>
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
          <span class="origin">
            <Show when={props.project.unsaved()} fallback={props.project.origin()}>
              changes not saved
            </Show>
          </span>
        </Show>
        <Show when={props.project.document()}>
          <UndoControl project={props.project} undoing={props.undoing} />
        </Show>
        <OpenButton onFile={props.onFile} onReady={props.onChooser} />
        <Show when={props.project.document()}>
          <button
            type="button"
            class="link"
            aria-keyshortcuts="Control+S"
            title="Ctrl+S"
            onClick={() => props.onSave()}
          >
            Save a copy
          </button>
        </Show>
        <UnitsControl units={props.units} onOpen={props.onUnits} />
        <ThemeControl theme={props.theme} />
        <button
          type="button"
          class="bar-keys"
          aria-label="Keys"
          aria-keyshortcuts="F1"
          title="Keys (F1)"
          onClick={() => props.onKeys()}
        >
          ?
        </button>
      </div>
    </header>
  );
}
