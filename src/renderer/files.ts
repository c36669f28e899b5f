/** Project files out of the page. */

export { FILE_SUFFIX, fileName, fileText } from '../shared/project-text.ts';

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
