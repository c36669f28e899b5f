/** Times and folders as they stand beside a file. */

const two = (n: number): string => String(n).padStart(2, '0');
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `14:32` today, `3 Mar, 14:32` this year, `3 Mar 2025` before; empty for what is no time. */
export function whenText(iso: string, now: Date = new Date()): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return '';
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`;
  if (at.toDateString() === now.toDateString()) return time;
  const day = `${at.getDate()} ${months[at.getMonth()]}`;
  return at.getFullYear() === now.getFullYear() ? `${day}, ${time}` : `${day} ${at.getFullYear()}`;
}

/** `3 Mar 2025`: a day that is far enough for its year to count. */
export function dayText(iso: string): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return '';
  return `${at.getDate()} ${months[at.getMonth()]} ${at.getFullYear()}`;
}

const parts = (path: string): string[] => path.split(/[\\/]/).filter((part) => part !== '');
/** The mark between the parts of a path on this system. */
export const separatorOf = (path: string): string =>
  path.includes('\\') && !path.startsWith('/') ? '\\' : '/';

/** The end of a folder's path, by which one knows it: `…/frames/curlew`. */
export function shortFolder(path: string, most = 2): string {
  const all = parts(path);
  const mark = separatorOf(path);
  return all.length <= most ? path : `…${mark}${all.slice(-most).join(mark)}`;
}

export const lastPart = (path: string): string => parts(path).at(-1) ?? path;
/** Of a file. */
export const folderOf = (path: string): string =>
  path.slice(0, path.lastIndexOf(lastPart(path))).replace(/(.)[\\/]$/, '$1');

export const inFolder = (folder: string, name: string): string =>
  `${folder}${/[\\/]$/.test(folder) ? '' : separatorOf(folder)}${name}`;

/** Why a name cannot be that of a file or a folder; null when it can. */
export function nameTrouble(name: string): string | null {
  if (name.trim() === '') return 'Type a name.';
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what no name has
  const sign = /[<>:"/\\|?*\u0000-\u001f]/.exec(name)?.[0];
  if (sign !== undefined) return `A name has no ${sign.trim() === '' ? 'such sign' : sign} in it.`;
  return /^\.|[. ]$/.test(name) ? 'A name neither begins nor ends with a point.' : null;
}
