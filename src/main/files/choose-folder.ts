/** The user chooses a folder by the page's own dialog. */
import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import { codeOf, whyNotWritten } from './file-errors.ts';
import { folderName } from './look.ts';
import { isOnShare, pathTrouble } from './path-form.ts';
import { whereItLeads } from './reach.ts';

/** Where a folder that may be looked into leads. */
export function folderAt(path: string): Reply<string> {
  const trouble = pathTrouble(path);
  if (trouble !== null) return refuse('bad-input', '', trouble);
  if (isOnShare(path)) {
    return refuse(
      'bad-input',
      '',
      'Folders of another machine are not opened by their name: give the share the letter of a drive.',
    );
  }
  return whereItLeads(path);
}

/** @param make makes the last part of it, where only that is missing */
export function folderToChoose(path: string, make: boolean): Reply<string> {
  const leads = folderAt(path);
  if (!leads.ok) return leads;
  const folder = leads.value;
  const name = folderName(folder);
  if (dirname(folder) === folder) {
    return refuse(
      'bad-input',
      '',
      'The whole disk cannot be chosen: choose the folder that the projects are in.',
    );
  }
  try {
    const info = statSync(folder, { throwIfNoEntry: false });
    if (!info && !make) return refuse('not-found', '', `There is no folder "${name}".`);
    if (!info) mkdirSync(folder);
    else if (!info.isDirectory()) {
      return refuse('bad-input', '', `"${name}" is a file, not a folder: choose a folder.`);
    }
    return ok(folder);
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return ok(folder);
    const { code, why } = whyNotWritten(error);
    return refuse(code, '', `The folder "${name}" could not be made: ${why}.`);
  }
}
