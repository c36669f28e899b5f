/** Whether this user starts the program for the first time: a mark of its own in the data folder. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const FIRST_START_MARK = 'notes-shown';

/** @returns true once for each folder; where nothing can be written, always */
export function isFirstStart(folder: string): boolean {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch {
    return true;
  }
  try {
    writeFileSync(join(folder, FIRST_START_MARK), '', { flag: 'wx', mode: 0o600 });
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'EEXIST';
  }
}
