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

export function readProjectFile(path: string): Reply<Opened> {
  const name = basename(path);
  let text: string;
  try {
    // Not to wait: a named pipe opens only when somebody writes to it.
    const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const info = fstatSync(file);
      if (info.isDirectory())
        return refuse('bad-input', '', `${name}: it is a folder, not a file.`);
      if (!info.isFile()) return refuse('bad-input', '', `${name}: it is not an ordinary file.`);
      if (info.size > MAX_BODY) {
        return refuse(
          'bad-input',
          '',
          `${name}: ${megabytes(info.size)} is too large for a project; the limit is ${megabytes(MAX_BODY)}.`,
        );
      }
      const bytes = readFileSync(file);
      text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    if (error instanceof TypeError)
      return refuse('bad-input', '', `${name}: it is not UTF-8 text.`);
    const code = (error as NodeJS.ErrnoException).code ?? '';
    return refuse('bad-input', '', `${name}: ${reasons[code] ?? 'it cannot be read'}.`);
  }
  const read = readProjectText(text);
  if (read.ok) return ok({ document: read.value, origin: name });
  const { code, field, message } = read.error;
  return refuse(
    code,
    field,
    field === '' ? `${name}: ${message}` : `${name}: ${field}: ${message}`,
  );
}
