/**
 * Sets all of Electron's fuses in its program before the builder signs it. The builder sets those that it knows,
 * which are not all: its tool is older than Electron. A fuse that nobody decided about ends the packing.
 */
import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { fuses } from './fuses.mjs';

/** Stands in Electron's program before its fuses: a version, how many there are, then a letter for each. */
export const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const VERSION = 1;
const ON = '1'.charCodeAt(0);
const OFF = '0'.charCodeAt(0);
/** Of a fuse that this Electron has no more. */
const REMOVED = 'r'.charCodeAt(0);

/**
 * @param {Buffer} program
 * @param {Readonly<Record<string, boolean>>} [wanted] in the order of the program
 * @returns {{ at: number, letters: Buffer }[]} what to write where: a program for two processors has it twice
 */
export function fusesIn(program, wanted = fuses) {
  const all = Object.values(wanted);
  const found = [];
  for (let at = program.indexOf(SENTINEL); at !== -1; at = program.indexOf(SENTINEL, at + 1)) {
    const head = at + SENTINEL.length;
    const [version, count = 0] = program.subarray(head, head + 2);
    if (version !== VERSION) throw new Error(`Electron's fuses are of version ${version}.`);
    if (count > all.length) {
      throw new Error(
        `Electron has ${count} fuses, of which ${all.length} are decided about: see src/package/fuses.mjs.`,
      );
    }
    const letters = Buffer.from(program.subarray(head + 2, head + 2 + count));
    letters.forEach((letter, i) => {
      if (letter !== REMOVED) letters[i] = all[i] ? ON : OFF;
    });
    found.push({ at: head + 2, letters });
  }
  if (found.length === 0) throw new Error("Electron's program has no fuses.");
  return found;
}

/**
 * @param {string} file
 * @returns {number} how many fuses it has
 */
export function burnFuses(file) {
  const found = fusesIn(readFileSync(file));
  const handle = openSync(file, 'r+');
  try {
    for (const { at, letters } of found) writeSync(handle, letters, 0, letters.length, at);
  } finally {
    closeSync(handle);
  }
  return found[0]?.letters.length ?? 0;
}

/**
 * @typedef {object} Packed what the builder tells of a program that it has put together
 * @property {string} appOutDir
 * @property {string} electronPlatformName
 * @property {{ executableName?: string, appInfo: { productFilename: string } }} packager
 */

/**
 * The file that holds the fuses.
 * @param {Packed} packed
 */
export function fuseFile({ appOutDir, electronPlatformName, packager }) {
  const { productFilename } = packager.appInfo;
  if (electronPlatformName === 'win32') return join(appOutDir, `${productFilename}.exe`);
  if (electronPlatformName === 'linux') {
    return join(appOutDir, packager.executableName ?? productFilename);
  }
  const framework = 'Electron Framework';
  const inside = ['Contents', 'Frameworks', `${framework}.framework`, framework];
  return join(appOutDir, `${productFilename}.app`, ...inside);
}

/** @param {Packed} packed */
export const afterPack = (packed) => void burnFuses(fuseFile(packed));
