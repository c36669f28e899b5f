/** Project files out of the page. */

import { FILE_SUFFIX, safeName, stemLength } from '../shared/project-text.ts';

export { fileName, fileText } from '../shared/project-text.ts';

/** What the browser's own dialog offers to open; it looks at the last suffix alone. */
export const OPEN_KINDS = `${FILE_SUFFIX},.json,.previous,application/json`;

/** `Curlew B copy.lapwright`: a copy by the name of the file that it is of. */
export function copyName(name: string): string {
  const length = stemLength(name);
  return `${name.slice(0, length)} copy${name.slice(length) || FILE_SUFFIX}`;
}

/** `project-joint-what.csv`: what is taken out of a page, by where it is from. */
export function takenName(
  from: { readonly project: string; readonly joint: string | null },
  what: string,
  ending: 'csv' | 'png',
): string {
  const parts = [
    safeName(from.project) || 'project',
    safeName(from.joint ?? ''),
    safeName(what.toLowerCase()),
  ];
  return `${parts
    .filter((part) => part !== '')
    .map((part) => part.slice(0, 60))
    .join('-')}.${ending}`;
}

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
