/** A project from a path, or one clear line. Never reads more than a project can be. */
import { closeSync, constants, fstatSync, openSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { MAX_BODY } from '../../shared/contract.ts';
import { readProjectText } from '../../shared/read-project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Opened } from '../../shared/reports.ts';

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1024 / 1024)} MB`;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'this user may not read it',
  EPERM: 'this user may not read it',
  EISDIR: 'it is a folder, not a file',
  ENOTDIR: 'part of its path is not a folder',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links go in a circle',
};

/**
 * The text of an ordinary file, or one clear line that begins with its name.
 * @param most bytes
 * @param what it would be, such as `a project`
 */
export function readTextFile(path: string, most: number, what: string): Reply<string> {
  const name = basename(path);
  try {
    // Not to wait: a named pipe opens only when somebody writes to it.
    const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const info = fstatSync(file);
      if (info.isDirectory())
        return refuse('bad-input', '', `${name}: it is a folder, not a file.`);
      if (!info.isFile()) return refuse('bad-input', '', `${name}: it is not an ordinary file.`);
      if (info.size > most) {
        return refuse(
          'bad-input',
          '',
          `${name}: ${megabytes(info.size)} is too large for ${what}; the limit is ${megabytes(most)}.`,
        );
      }
      const bytes = readFileSync(file);
      return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    } finally {
      closeSync(file);
    }
  } catch (error) {
    if (error instanceof TypeError)
      return refuse('bad-input', '', `${name}: it is not UTF-8 text.`);
    const code = (error as NodeJS.ErrnoException).code ?? '';
    return refuse('bad-input', '', `${name}: ${reasons[code] ?? 'it cannot be read'}.`);
  }
}

export function readProjectFile(path: string): Reply<Opened> {
  const name = basename(path);
  const text = readTextFile(path, MAX_BODY, 'a project');
  if (!text.ok) return text;
  const read = readProjectText(text.value);
  if (read.ok) return ok({ document: read.value, origin: name });
  const { code, field, message } = read.error;
  return refuse(
    code,
    field,
    field === '' ? `${name}: ${message}` : `${name}: ${field}: ${message}`,
  );
}
