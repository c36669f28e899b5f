/**
 * Saves a project: what stood in the file is copied beside it, then the new one takes its place, each whole.
 * At no moment is there neither.
 */
import { constants, type Stats } from 'node:fs';
import { basename, dirname } from 'node:path';
import { MAX_BODY } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import { BACKUP_SUFFIX, fileText } from '../../shared/project-text.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { SavedFile } from '../../shared/reports-files.ts';
import { type Disk, disk as realDisk } from './disk.ts';
import { codeOf, whyNotWritten } from './file-errors.ts';
import { Busy, type Patience, type SaveLock, takeLock } from './save-lock.ts';
import { fileOnDisk, isReadOnly, stampOf } from './stamp.ts';
import { sweepParts, writeWhole } from './write-whole.ts';

export interface Expected {
  /** Stamp of the content that may be replaced; null where nothing may be. */
  readonly expect: string | null;
  /** Replaces whatever stands there. */
  readonly over: boolean;
}

/** Leaves everything as it is and says so. */
class NotSaved extends Error {
  readonly reply: Reply<never>;
  constructor(reply: Reply<never>) {
    super();
    this.reply = reply;
  }
}

/** As `fileText`; closer together where that would be larger than a project may be when it is opened. */
function textOf(project: Project): string {
  const text = fileText(project);
  return Buffer.byteLength(text) > MAX_BODY ? `${JSON.stringify(project)}\n` : text;
}

interface Standing {
  readonly bytes: Uint8Array;
  readonly info: Stats;
}

/** What stands at the path; null when nothing does. */
function standingAt(path: string, disk: Disk): Standing | null {
  const name = basename(path);
  try {
    const info = disk.statSync(path) as Stats;
    if (info.isDirectory()) {
      throw new NotSaved(
        refuse('bad-input', '', `A folder has the name "${name}": choose another name.`),
      );
    }
    if (!info.isFile() || info.size > MAX_BODY) {
      throw new NotSaved(
        refuse(
          'bad-input',
          '',
          `"${name}" is there already and is no project: choose another name.`,
        ),
      );
    }
    return { bytes: disk.readFileSync(path) as Uint8Array, info };
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

const exists = (name: string): Reply<never> =>
  refuse('exists', '', `There is a file "${name}" already. Save over it, or under another name.`);
const changed = (name: string): Reply<never> =>
  refuse(
    'changed',
    '',
    `"${name}" is not as it was when it was opened here: another window or program has written it since. Save under another name, open it anew, or save over it.`,
  );
const busy = (name: string): Reply<never> =>
  refuse(
    'not-writable',
    '',
    `"${name}" is being saved by another window or program at this moment: save again. Nothing was changed on the disk by this one.`,
  );

function checkExpected(name: string, standing: Standing | null, wish: Expected): void {
  if (wish.over || standing === null) return;
  if (wish.expect === null) throw new NotSaved(exists(name));
  if (stampOf(standing.bytes) !== wish.expect) throw new NotSaved(changed(name));
}

function checkWritable(name: string, path: string, { info }: Standing, disk: Disk): void {
  if (isReadOnly(info)) {
    throw new NotSaved(
      refuse(
        'not-writable',
        '',
        `"${name}" may only be read: save under another name, or let it be written first.`,
      ),
    );
  }
  disk.accessSync(path, constants.W_OK);
}

/** @throws what the disk says, or that a folder is in the way */
function writeCopy(path: string, { bytes, info }: Standing, disk: Disk): void {
  const copy = path + BACKUP_SUFFIX;
  try {
    writeWhole(copy, bytes, { mode: info.mode & 0o777, disk });
  } catch (error) {
    // Of the copy, not of the project's own file, which may well be written.
    if (!disk.statSync(copy, { throwIfNoEntry: false })?.isDirectory()) throw error;
    const name = basename(path);
    throw new NotSaved(
      refuse(
        'bad-input',
        '',
        `"${name}" is not saved, for a folder has the name "${basename(copy)}", under which what stood in it is kept: rename that folder, or save under another name.`,
      ),
    );
  }
}

/** @param path where it really leads, and allowed */
export function saveProject(
  path: string,
  project: Project,
  wish: Expected,
  disk: Disk = realDisk,
  patience?: Patience,
): Reply<SavedFile> {
  const name = basename(path);
  const text = textOf(project);
  if (Buffer.byteLength(text) > MAX_BODY) {
    return refuse('bad-input', '', 'This project is larger than a project file may be.');
  }
  let lock: SaveLock | null = null;
  try {
    const before = standingAt(path, disk);
    checkExpected(name, before, wish);
    if (before) checkWritable(name, path, before, disk);
    sweepParts(dirname(path), Date.now(), disk);

    let backup: string | null = null;
    let isNew = false;
    writeWhole(path, text, {
      mode: before === null ? undefined : before.info.mode & 0o777,
      disk,
      beforeItCounts() {
        // From here to the renaming no other Lapwright writes this file.
        lock = takeLock(path, disk, patience);
        // Looked at again: the copy is of what is really replaced, and nothing newer is lost.
        const now = standingAt(path, disk);
        checkExpected(name, now, wish);
        if (now) {
          backup = name + BACKUP_SUFFIX;
          writeCopy(path, now, disk);
        }
        const last = standingAt(path, disk);
        checkExpected(name, last, wish);
        isNew = last === null && !wish.over;
        if (!lock.isHeld()) throw new Busy();
      },
      mayReplace: () => !isNew,
    });
    return ok({ file: fileOnDisk(path, stampOf(Buffer.from(text))), backup });
  } catch (error) {
    if (error instanceof NotSaved) return error.reply;
    if (error instanceof Busy) return busy(name);
    // Only where nothing may stand there: it came at the last moment.
    if (codeOf(error) === 'EEXIST') return wish.expect === null ? exists(name) : changed(name);
    const { code, why, remedy } = whyNotWritten(error);
    const what = remedy.charAt(0).toUpperCase() + remedy.slice(1);
    return refuse(
      code,
      '',
      `"${name}" could not be saved: ${why}. ${what}; nothing was changed on the disk.`,
    );
  } finally {
    // In this shape for the compiler, which sees no assignment in a function that is called elsewhere.
    (lock as SaveLock | null)?.release();
  }
}
