/** Project files in and out of the page. */
import type { Project } from '../shared/project.ts';

export const FILE_SUFFIX = '.lapwright.json';

/** The project's name as a file name that every system takes. */
export function fileName(project: Project): string {
  const safe = project.name
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
    .replace(/[<>:"/\\|?*\u0000-\u001f]+/g, ' ')
    .trim()
    .replace(/\s+/g, '-')
    .replace(/^\.+|[.-]+$/g, '')
    .slice(0, 80);
  return `${safe || 'project'}${FILE_SUFFIX}`;
}

export const fileText = (project: Project): string => `${JSON.stringify(project, null, 2)}\n`;

/** Hands the text to the browser as a download. */
export function download(name: string, text: string, type = 'application/json'): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser takes the file after this turn; the address may go once it has.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
