/** The files of the project, as the next commit would have them. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../src/launch/root.mjs';

/** Paths from the top, with slashes. */
function list(which: string): string[] {
  const listed = execFileSync('git', ['ls-files', '-z', which, '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 16 * 1024 * 1024,
  });
  // Listed still, but deleted in the working tree.
  return listed.split('\0').filter((file) => file !== '' && existsSync(join(root, file)));
}

export const trackedFiles = (): string[] => list('-c');
/** With those that are not tracked yet. */
export const allFiles = (): string[] => list('-co');

export const read = (file: string): string => readFileSync(join(root, file), 'utf8');

const IMPORT = /\b(?:from|import)\s*\(?\s*(['"])([^'"\n]+)\1/g;

/** Every module that a file names, statically or not. */
export const importsOf = (file: string): string[] =>
  [...read(file).matchAll(IMPORT)].map(([, , name]) => name!);
