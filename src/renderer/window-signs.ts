/** What the window itself shows of a project: its name in the title, and a question before changes are left. */
import { createEffect, onCleanup, onMount } from 'solid-js';
import type { ProjectState } from './state/project.ts';

export function showInWindow(project: ProjectState): void {
  const leaving = (event: BeforeUnloadEvent): void => {
    // A browser asks by itself then; in Electron the shell does.
    if (project.unsaved()) event.preventDefault();
  };
  onMount(() => window.addEventListener('beforeunload', leaving));
  onCleanup(() => window.removeEventListener('beforeunload', leaving));
  createEffect(() => {
    const name = project.document()?.name;
    document.title = name ? `${name}${project.unsaved() ? ' *' : ''} · Lapwright` : 'Lapwright';
  });
}
