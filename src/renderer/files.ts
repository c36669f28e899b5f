/** Project files in and out of the page. */
import type { Project } from '../shared/project.ts';

export const FILE_SUFFIX = '.lapwright.json';

/** A name as a part of a file name that every system takes; empty where nothing of it can be. */
const safe = (name: string): string =>
  name
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
    .replace(/[<>:"/\\|?*\u0000-\u001f]+/g, ' ')
    .trim()
    .replace(/\s+/g, '-')
    .replace(/^\.+|[.-]+$/g, '')
    .slice(0, 80);

/** The project's name as a file name that every system takes. */
export const fileName = (project: Project): string =>
  `${safe(project.name) || 'project'}${FILE_SUFFIX}`;

/** `project-joint-what.csv`: what is taken out of a page, by where it is from. */
export function takenName(
  from: { readonly project: string; readonly joint: string | null },
  what: string,
  ending: 'csv' | 'png',
): string {
  const parts = [safe(from.project) || 'project', safe(from.joint ?? ''), safe(what.toLowerCase())];
  return `${parts
    .filter((part) => part !== '')
    .map((part) => part.slice(0, 60))
    .join('-')}.${ending}`;
}

export const fileText = (project: Project): string => `${JSON.stringify(project, null, 2)}\n`;

/** Hands a text or a picture to the browser as a download. */
export function download(name: string, text: string | Blob, type = 'application/json'): void {
  const blob = typeof text === 'string' ? new Blob([text], { type }) : text;
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser takes the file after this turn; the address may go once it has.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
