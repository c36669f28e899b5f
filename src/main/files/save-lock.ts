/**
 * One program at a time replaces a file: whoever holds the lock beside it. It is held from the last look at what
 * stands there to the renaming, some milliseconds; between programs that know nothing of it, it changes nothing.
 */
import { createHash } from 'node:crypto';
import { basename, dirname, join } from 'node:path';
import type { Disk } from './disk.ts';
import { codeOf } from './file-errors.ts';
import { partName } from './write-whole.ts';

/** Milliseconds. */
export interface Patience {
  /** A lock that stands unchanged for so long is that of a program that was killed. By no clock that can be set. */
  readonly dead: number;
  /** For locks of others altogether. */
  readonly all: number;
}
const PATIENCE: Patience = { dead: 2_000, all: 4_000 };
const LOOK = 10;

export interface SaveLock {
  /** False where it was taken for that of a dead program meanwhile. */
  isHeld(): boolean;
  release(): void;
}

/** The lock is another program's, and stays so. */
export class Busy extends Error {}

/** Has the name of a part, so that it is swept as one; the same for names that some disks take for the same. */
const lockPath = (path: string): string => {
  const name = basename(path).normalize('NFC').toLowerCase();
  const digest = createHash('sha256').update(name).digest('hex').slice(0, 12);
  return join(dirname(path), partName(digest));
};

const pause = (): void => {
  try {
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, LOOK);
  } catch {
    // Not every program lets its first thread wait so: it looks on until then.
    for (const start = performance.now(); performance.now() - start < LOOK; );
  }
};

/** Which file it is: a number may be used again, but not with the same time. */
const who = ({ ino, mtimeNs }: { readonly ino: bigint; readonly mtimeNs: bigint }): string =>
  `${ino} ${mtimeNs}`;

function whoStands(path: string, disk: Disk): string | null {
  try {
    return who(disk.statSync(path, { bigint: true }));
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

function remove(path: string, disk: Disk): void {
  // Twice: a scanner may hold it for a moment. What stays is taken for dead by the next one.
  for (let left = 2; left > 0; left -= 1) {
    try {
      disk.rmSync(path, { force: true });
      return;
    } catch {
      // Once more.
    }
  }
}

/** Null where another one has it. */
function tryTake(path: string, disk: Disk): string | null {
  let file: number;
  try {
    file = disk.openSync(path, 'wx', 0o600);
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return null;
    throw error;
  }
  try {
    try {
      return who(disk.fstatSync(file, { bigint: true }));
    } finally {
      disk.closeSync(file);
    }
  } catch (error) {
    remove(path, disk);
    throw error;
  }
}

/** Taken aside first: of two that find it dead, the slower must not remove the lock of the faster. */
function removeDead(path: string, dead: string, disk: Disk): void {
  const aside = join(dirname(path), partName());
  try {
    disk.renameSync(path, aside);
    if (whoStands(aside, disk) !== dead) disk.linkSync(aside, path);
  } catch {
    // Gone already, or another one stands there.
  }
  remove(aside, disk);
}

/** @throws Busy, or what the disk says */
export function takeLock(path: string, disk: Disk, patience: Patience = PATIENCE): SaveLock {
  const place = lockPath(path);
  const start = performance.now();
  let seen = { other: '', since: start };
  for (;;) {
    const mine = tryTake(place, disk);
    if (mine !== null) {
      return {
        isHeld: () => whoStands(place, disk) === mine,
        release() {
          // Where it cannot be read, it is ours for all that is known.
          let other = mine;
          try {
            other = whoStands(place, disk) ?? mine;
          } catch {}
          if (other === mine) remove(place, disk);
        },
      };
    }
    const now = performance.now();
    const other = whoStands(place, disk);
    if (other === null) continue;
    if (other !== seen.other) seen = { other, since: now };
    if (now - seen.since >= patience.dead) removeDead(place, other, disk);
    else if (now - start >= patience.all) throw new Busy();
    else pause();
  }
}
