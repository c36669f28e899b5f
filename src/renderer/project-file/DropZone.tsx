/** A project file dragged onto the window is opened. Whatever is dropped, the page stays where it is. */
import { createSignal, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { FILE_SUFFIX, isOpenName, LONG_SUFFIX } from '../../shared/project-text.ts';
import type { ProjectFiles } from '../state/files/project-files.ts';

export interface DropZoneProps {
  readonly files: ProjectFiles;
  /** Path of a file that was dropped, where the window can tell it; empty where it cannot. */
  readonly pathOf: ((file: File) => string) | undefined;
  readonly onTrouble: (message: string) => void;
}

const holdsFiles = (event: DragEvent): boolean =>
  [...(event.dataTransfer?.types ?? [])].includes('Files');
/** A dialog asks something: nothing comes in past it. */
const isHeld = (): boolean => document.querySelector('dialog[open]') !== null;

export function DropZone(props: DropZoneProps): JSX.Element {
  const [over, setOver] = createSignal(false);

  const take = (dropped: readonly File[]): void => {
    const [file] = dropped;
    if (!file) {
      props.onTrouble('Nothing that was dropped is a file.');
    } else if (dropped.length > 1) {
      props.onTrouble(
        `${dropped.length} files were dropped. Drop one project file: one is open at a time.`,
      );
    } else if (!isOpenName(file.name)) {
      props.onTrouble(
        `${file.name} is no project file: those end in “${FILE_SUFFIX}” or “${LONG_SUFFIX}”.`,
      );
    } else {
      const path = props.pathOf?.(file) ?? '';
      void (path === '' ? props.files.openText(file) : props.files.openPath(path));
    }
  };

  const drag = (event: DragEvent): void => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    if (event.dataTransfer) event.dataTransfer.dropEffect = isHeld() ? 'none' : 'copy';
    setOver(!isHeld());
  };
  const leave = (event: DragEvent): void => {
    // Out of the window, not from one part of it into another.
    if (!event.relatedTarget) setOver(false);
  };
  const drop = (event: DragEvent): void => {
    setOver(false);
    if (!holdsFiles(event)) return;
    event.preventDefault();
    if (!isHeld()) take([...(event.dataTransfer?.files ?? [])]);
  };
  onMount(() => {
    const listeners = { dragenter: drag, dragover: drag, dragleave: leave, drop } as const;
    for (const [name, listener] of Object.entries(listeners)) {
      window.addEventListener(name as 'drop', listener);
    }
    onCleanup(() => {
      for (const [name, listener] of Object.entries(listeners)) {
        window.removeEventListener(name as 'drop', listener);
      }
    });
  });
  return (
    <Show when={over()}>
      <div class="drop-zone">
        <p>Drop the project file to open it</p>
      </div>
    </Show>
  );
}
