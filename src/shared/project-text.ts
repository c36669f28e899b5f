/** A project as the text of its file, and the name of that file: the same wherever it is written. */
import type { Project } from './project.ts';

/** Files are saved under names that end so; opened are all that end in `.json`. */
export const FILE_SUFFIX = '.lapwright.json';
/** The copy of what stood in a file before it was saved, beside it. */
export const BACKUP_SUFFIX = '.previous';

/** A name as a part of a file name that every system takes; empty where nothing of it can be. */
export const safeName = (name: string): string =>
  name
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
    .replace(/[<>:"/\\|?*\u0000-\u001f]+/g, ' ')
    .trim()
    .replace(/\s+/g, '-')
    .replace(/^\.+|[.-]+$/g, '')
    .slice(0, 80);

/** The project's name as a file name that every system takes. */
export const fileName = (project: Project): string =>
  `${safeName(project.name) || 'project'}${FILE_SUFFIX}`;

export const fileText = (project: Project): string => `${JSON.stringify(project, null, 2)}\n`;
