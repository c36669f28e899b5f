/** A project file on the disk, as it is told to the page. */
import { createHash } from 'node:crypto';
import { accessSync, constants, type Stats, statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import type { FileOnDisk } from '../../shared/reports-files.ts';

/** Of the content alone: a file that another program writes again unchanged is the same. */
export const stampOf = (bytes: Uint8Array): string =>
  createHash('sha256').update(bytes).digest('hex');

/** Whoever may do everything still asks before writing what nobody may write. */
export const isReadOnly = (info: Pick<Stats, 'mode'>): boolean => (info.mode & 0o222) === 0;

function mayWrite(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    accessSync(dirname(path), constants.W_OK);
    return !isReadOnly(statSync(path));
  } catch {
    return false;
  }
}

export function fileOnDisk(path: string, stamp: string): FileOnDisk {
  const info = statSync(path, { throwIfNoEntry: false });
  return {
    path,
    name: basename(path),
    folder: dirname(path),
    stamp,
    at: (info?.mtime ?? new Date()).toISOString(),
    writable: mayWrite(path),
  };
}
