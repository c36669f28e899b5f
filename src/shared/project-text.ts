/** A project as the text of its file, and the name of that file: the same wherever it is written. */
import type { Project } from './project.ts';

/** What a new file ends in: one suffix of its own, by which every system tells whose file it is. */
export const FILE_SUFFIX = '.lapwright';
/** What files ended in before: those open as ever, and are saved under their own name. */
export const LONG_SUFFIX = '.lapwright.json';
/** The copy of what stood in a file before it was saved, beside it. */
export const BACKUP_SUFFIX = '.previous';

/** Whether a name, or the last part of a path, is one that projects are saved under. */
export const isProjectName = (name: string): boolean => /[^\\/]\.lapwright(\.json)?$/i.test(name);

/** Whether a file of that name may be opened: a project, whatever else is JSON, the copy beside a project. */
export const isOpenName = (name: string): boolean =>
  /\.json$/i.test(name) ||
  isProjectName(name) ||
  (name.toLowerCase().endsWith(BACKUP_SUFFIX) &&
    isProjectName(name.slice(0, -BACKUP_SUFFIX.length)));

/** What one typed as the name of a file, ending as projects do; an ending that they have stays. */
export function withSuffix(name: string): string {
  if (isProjectName(name)) return name;
  return /\.json$/i.test(name) ? name.replace(/\.json$/i, LONG_SUFFIX) : name + FILE_SUFFIX;
}

/** How much of a name one would change when one names a project anew. */
export const stemLength = (name: string): number =>
  name.replace(/(\.lapwright)?(\.json)?$/i, '').length;

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
