/** A project from a path, or one clear line. Never reads more than a project can be. */
import { closeSync, constants, fstatSync, openSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { MAX_BODY } from '../../shared/contract.ts';
import { inPlace } from '../../shared/place-words.ts';
import { openProjectText } from '../../shared/read-project.ts';
import { ok, type Reply, type RequestError, refuse } from '../../shared/reply.ts';
import type { Opened } from '../../shared/reports.ts';
import { textOf } from '../../shared/utf8-text.ts';
import { whyNotRead } from './file-errors.ts';

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1024 / 1024)} MB`;

/**
 * The content of an ordinary file, or one clear line that begins with its name.
 * @param most bytes
 * @param what it would be, such as `a project`
 */
export function readBytes(path: string, most: number, what: string): Reply<Uint8Array> {
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
      return ok(readFileSync(file));
    } finally {
      closeSync(file);
    }
  } catch (error) {
    return refuse('bad-input', '', `${name}: ${whyNotRead(error)}.`);
  }
}

/** As `readBytes`, of a text. */
export function readTextFile(path: string, most: number, what: string): Reply<string> {
  const bytes = readBytes(path, most, what);
  return bytes.ok ? textOf(basename(path), bytes.value) : bytes;
}

/** What is wrong with its place: by its fields for whoever mends the file in an editor, else in plain words. */
type Tell = (text: string, error: RequestError) => string;
const byFields: Tell = (_text, { field, message }) =>
  field === '' ? message : `${field}: ${message}`;
const inWords: Tell = (text, { field, message }) => {
  // Of what is no project, or of another version, nothing more is to be said than that.
  if (field === '' || field === 'format' || field === 'version') return message;
  return inPlace(JSON.parse(text.replace(/^\uFEFF/, '')), field, message);
};

function projectIn(name: string, text: string, tell: Tell): Reply<Opened> {
  const read = openProjectText(text);
  if (read.ok) return ok({ ...read.value, origin: name });
  const { code, field } = read.error;
  return refuse(code, field, `${name}: ${tell(text, read.error)}`);
}

/** A project out of a text; what is wrong is said after the file's name and the place in plain words. */
export const projectOfText = (name: string, text: string): Reply<Opened> =>
  projectIn(name, text, inWords);

/** As `projectOfText`, out of the bytes of its file. */
export function projectOf(name: string, bytes: Uint8Array): Reply<Opened> {
  const text = textOf(name, bytes);
  return text.ok ? projectOfText(name, text.value) : text;
}

/** For the terminal: the place is told by its fields. */
export function readProjectFile(path: string): Reply<Opened> {
  const text = readTextFile(path, MAX_BODY, 'a project');
  return text.ok ? projectIn(basename(path), text.value, byFields) : text;
}
