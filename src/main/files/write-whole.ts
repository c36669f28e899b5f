/**
 * Writes a file whole or not at all: beside its place, on to the disk, then renamed into it. Whatever happens
 * meanwhile, the old or the new one stands there, and nothing of a failure stays behind.
 */
import { randomBytes } from 'node:crypto';
import { dirname, join } from 'node:path';
import { type Disk, disk as realDisk } from './disk.ts';
import { codeOf } from './file-errors.ts';

export interface WriteOptions {
  /** Who may read and write it; what the system gives a new file when left out. */
  readonly mode?: number | undefined;
  /** Called when all is written but the name is still that of the old file: throws to leave it so. */
  readonly beforeItCounts?: (() => void) | undefined;
  /** Asked then: false where nothing may stand there, and what comes at that very moment is not replaced. */
  readonly mayReplace?: (() => boolean) | undefined;
  readonly disk?: Disk | undefined;
}

/** Of our own making, so that what a crash left is known from what is the user's. */
const isPart = (name: string): boolean => /^\.lapwright-[0-9a-f]{12}\.part$/.test(name);
export const partName = (hex: string = randomBytes(6).toString('hex')): string =>
  `.lapwright-${hex}.part`;

/** A part older than this is no other program's work under way. Milliseconds. */
const FORGOTTEN = 60 * 60 * 1000;

/** A disk may take less at a time than it is given. */
function writeAll(disk: Disk, file: number, bytes: Uint8Array): void {
  let done = 0;
  while (done < bytes.length) {
    done += disk.writeSync(file, bytes, done, bytes.length - done);
  }
}

/** What the user's mask takes from a new file, it does not take from one that is replaced. */
function widen(disk: Disk, file: number, mode: number): void {
  try {
    disk.fchmodSync(file, mode);
  } catch {
    // Some disks know no modes: the file is then as narrow as it was made, never wider.
  }
}

/** So that a loss of power does not undo the renaming; not every system can. */
function syncFolder(disk: Disk, folder: string): void {
  try {
    const handle = disk.openSync(folder, 'r');
    try {
      disk.fsyncSync(handle);
    } finally {
      disk.closeSync(handle);
    }
  } catch {
    // The new file stands whole in its place; only the moment at which it is safe there is the system's own.
  }
}

/** Disks without a second name for a file. The last is what Windows says of them. */
const NO_LINKS = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EISDIR'];

/** A renaming replaces whatever stands there; a second name is refused where anything does (EEXIST). */
function putAsNew(disk: Disk, part: string, path: string): void {
  try {
    disk.linkSync(part, path);
  } catch (error) {
    if (!NO_LINKS.includes(codeOf(error))) throw error;
    // The look just before is then all there is: a program that knows no lock could come between.
    disk.renameSync(part, path);
    return;
  }
  try {
    disk.rmSync(part, { force: true });
  } catch {
    // It stands whole in its place; its other name is swept later.
  }
}

/** @throws what the disk says, with nothing changed */
export function writeWhole(
  path: string,
  content: string | Uint8Array,
  options: WriteOptions = {},
): void {
  const { mode, beforeItCounts, mayReplace, disk = realDisk } = options;
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const folder = dirname(path);
  const part = join(folder, partName());
  try {
    const file = disk.openSync(part, 'wx', mode ?? 0o666);
    try {
      if (mode !== undefined) widen(disk, file, mode);
      writeAll(disk, file, bytes);
      disk.fsyncSync(file);
    } finally {
      disk.closeSync(file);
    }
    beforeItCounts?.();
    if (mayReplace?.() ?? true) disk.renameSync(part, path);
    else putAsNew(disk, part, path);
  } catch (error) {
    try {
      disk.rmSync(part, { force: true });
    } catch {
      // What cannot be removed now, the next saving removes.
    }
    throw error;
  }
  syncFolder(disk, folder);
}

/** Removes what a crash in the middle of writing left in a folder. */
export function sweepParts(folder: string, now: number = Date.now(), disk: Disk = realDisk): void {
  try {
    for (const name of disk.readdirSync(folder)) {
      if (!isPart(name)) continue;
      const path = join(folder, name);
      if (now - disk.statSync(path).mtimeMs > FORGOTTEN) disk.rmSync(path, { force: true });
    }
  } catch {
    // It takes a little room and is in nobody's way.
  }
}
