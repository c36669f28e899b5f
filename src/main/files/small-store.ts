/** A small thing that is remembered between two starts: one file in the data folder, written whole. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { readKept } from './read-kept.ts';
import { writeWhole } from './write-whole.ts';

export interface SmallStore<T> {
  /** What is remembered; `nothing` where that is missing or damaged. */
  read(): T;
  /** False where it could not be written: it is then remembered no longer than this run. */
  write(value: T): boolean;
}

/** @param check the thing out of what stands in the file; null where it is none */
export function makeSmallStore<T>(
  path: string,
  check: (parsed: unknown) => T | null,
  nothing: T,
): SmallStore<T> {
  /** What could not be written holds as long as the program runs. */
  let unwritten: T | null = null;
  return {
    read() {
      if (unwritten !== null) return unwritten;
      try {
        return check(JSON.parse(readKept(path))) ?? nothing;
      } catch {
        return nothing;
      }
    },
    write(value) {
      try {
        mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
        writeWhole(path, `${JSON.stringify(value, null, 1)}\n`, { mode: 0o600 });
        unwritten = null;
        return true;
      } catch {
        unwritten = value;
        return false;
      }
    },
  };
}
