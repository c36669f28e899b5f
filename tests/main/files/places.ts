/** A folder of a user with projects in it, for the tests of files. */
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import curlew from '../../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import {
  makeProjectFiles,
  type ProjectFilesOptions,
} from '../../../src/main/files/project-files.ts';
import type { Project } from '../../../src/shared/project.ts';
import { fileText } from '../../../src/shared/project-text.ts';
import { readProject } from '../../../src/shared/read-project.ts';
import type { Reply } from '../../../src/shared/reply.ts';

export { told } from './told.ts';

/** As it is read: its fields in the order of the schema. */
export const demo = readDemo();

function readDemo(): Project {
  const read = readProject(curlew);
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

export const named = (name: string): Project => ({ ...demo, name });
export const text = fileText;

/** Not what runs as root: nothing is forbidden to it. */
export const isBound = process.getuid?.() !== 0 && process.platform !== 'win32';

export interface Places {
  /** Of all of them; nothing else is on the disk. */
  readonly top: string;
  readonly data: string;
  /** A folder for projects, chosen by nobody yet. */
  readonly work: string;
  readonly outside: string;
}

/** Fresh for each test. */
export function freshPlaces(): Places {
  const made = { top: '', data: '', work: '', outside: '' };
  beforeEach(() => {
    made.top = realpathSync.native(mkdtempSync(join(tmpdir(), 'lapwright-')));
    for (const name of ['data', 'work', 'outside'] as const) {
      made[name] = join(made.top, name);
      mkdirSync(made[name]);
    }
  });
  afterEach(() => rmSync(made.top, { recursive: true, force: true }));
  return made;
}

export const put = (folder: string, name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
export const content = (path: string): string => readFileSync(path, 'utf8');
export const names = (folder: string): string[] => readdirSync(folder).sort();

export const filesAt = (data: string, more: Partial<ProjectFilesOptions> = {}) =>
  makeProjectFiles({ data, dialogs: false, silence: 15_000, ...more });

/** Code and message of a refusal, which is one or more whole sentences. */
export function refusalOf(reply: Reply<unknown>): string {
  if (reply.ok) throw new Error('It was not refused.');
  const { code, message } = reply.error;
  if (!/[.!?]$/.test(message)) throw new Error(`No sentence: ${message}`);
  return `${code}: ${message}`;
}
