/** What can be said of a path before the disk is asked. */
import { posix, win32 } from 'node:path';
import {
  BACKUP_SUFFIX,
  FILE_SUFFIX,
  isOpenName,
  isProjectName,
  LONG_SUFFIX,
} from '../../shared/project-text.ts';

const pathsOf = (platform: NodeJS.Platform) => (platform === 'win32' ? win32 : posix);

/** Names that are devices on Windows, whatever follows after a point. */
const DEVICE = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\.|$)/i;

/** On a share of another machine: to look at it at all is to call that machine. */
export const isOnShare = (path: string, platform: NodeJS.Platform = process.platform): boolean =>
  platform === 'win32' && /^[\\/]{2}/.test(path);

function troubleOnWindows(path: string): string | null {
  if (/^[\\/]{2}[?.][\\/]/.test(path)) return 'Paths to devices are not taken.';
  const rest = isOnShare(path, 'win32') ? path : path.slice(2);
  if (!isOnShare(path, 'win32') && !/^[a-z]:[\\/]/i.test(path)) {
    return 'The path must be a full one, beginning with the letter of its drive.';
  }
  if (rest.includes(':')) return 'A path has no colon after the letter of its drive.';
  const device = rest.split(/[\\/]/).find((part) => DEVICE.test(part));
  return device === undefined ? null : `"${device}" is the name of a device: choose another.`;
}

/** What is wrong with a path, as a sentence; null when the disk may be asked. */
export function pathTrouble(
  path: string,
  platform: NodeJS.Platform = process.platform,
): string | null {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is refused
  if (/[\u0000-\u001f]/.test(path)) return 'The path has a character in it that no path has.';
  if (platform === 'win32') return troubleOnWindows(path);
  return posix.isAbsolute(path) ? null : 'The path must be a full one, from the top of the disk.';
}

/** Bytes that a file's name may have, on nearly every disk. */
const LONGEST = 255;

/** What is wrong with the name of a file that is to be saved. */
export function saveNameTrouble(
  path: string,
  platform: NodeJS.Platform = process.platform,
): string | null {
  const name = pathsOf(platform).basename(path);
  if (!isProjectName(name)) {
    return `Projects are saved under names that end in "${FILE_SUFFIX}" or "${LONG_SUFFIX}": "${name}" is none. Save it under another name.`;
  }
  // The copy beside it has the longer name.
  const most = LONGEST - BACKUP_SUFFIX.length;
  return Buffer.byteLength(name) > most
    ? `The name is too long: it may have ${most} letters, fewer if they are not plain. Choose a shorter one.`
    : null;
}

/** What is wrong with the name of a file that is to be opened. */
export function openNameTrouble(
  path: string,
  platform: NodeJS.Platform = process.platform,
): string | null {
  const name = pathsOf(platform).basename(path);
  return isOpenName(name)
    ? null
    : `Project files end in "${FILE_SUFFIX}" or ".json": "${name}" is none.`;
}

/** Whether a path lies in a folder, both as the system writes them; the folder itself does. */
export function isInside(
  folder: string,
  path: string,
  platform: NodeJS.Platform = process.platform,
): boolean {
  const { relative, isAbsolute, sep } = pathsOf(platform);
  const way = relative(folder, path);
  return way === '' || !(way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way));
}
