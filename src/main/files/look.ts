/** What is in a folder, for whoever looks for a project where the system has no dialog of its own. */
import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { isProjectName } from '../../shared/project-text.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { FolderView } from '../../shared/reports-files.ts';
import { codeOf } from './file-errors.ts';

/** Entries that are shown at most. */
const MOST = 500;

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' }).compare;
/** The top of a disk has no other name than its path. */
export const folderName = (path: string): string => basename(path) || path;

const isHidden = (name: string): boolean => name.startsWith('.') || name.startsWith('$');

interface Found {
  readonly path: string;
  readonly name: string;
  /** Null for a folder. */
  readonly at: string | null;
}

/** @param mayUse a project in a chosen folder may be a link that leads out of it */
export function lookInto(
  path: string,
  chosen: boolean,
  mayUse: (project: string) => boolean,
): Reply<FolderView> {
  const unseen = (why: string): Reply<never> =>
    refuse('not-found', '', `The folder "${folderName(path)}" cannot be shown: ${why}.`);
  const found: Found[] = [];
  try {
    const entries = readdirSync(path, { withFileTypes: true }).filter(
      ({ name }) => !isHidden(name),
    );
    for (const entry of entries) {
      const place = join(path, entry.name);
      const mayBeProject = chosen && isProjectName(entry.name);
      if (!entry.isDirectory() && !entry.isSymbolicLink() && !mayBeProject) continue;
      // A link that leads nowhere, or what went while one looked.
      const info = statOf(place);
      if (info?.isDirectory()) found.push({ path: place, name: entry.name, at: null });
      else if (info?.isFile() && mayBeProject && mayUse(place)) {
        found.push({ path: place, name: entry.name, at: info.mtime.toISOString() });
      }
    }
  } catch (error) {
    const code = codeOf(error);
    if (code === 'EACCES' || code === 'EPERM') return unseen('this user may not look into it');
    if (code === 'ENOTDIR') return unseen('it is a file, not a folder');
    return unseen(code === 'ENOENT' ? 'it is not there' : 'it cannot be read');
  }
  // Projects first: they are what is looked for, where there is no room for all.
  found.sort((a, b) => Number(a.at === null) - Number(b.at === null) || byName(a.name, b.name));
  const shown = found.slice(0, MOST);
  const above = dirname(path);
  return ok({
    path,
    above: above === path ? null : above,
    chosen,
    folders: shown.flatMap(({ path, name, at }) => (at === null ? [{ path, name }] : [])),
    projects: shown.flatMap(({ path, name, at }) => (at === null ? [] : [{ path, name, at }])),
    more: found.length - shown.length,
  });
}

function statOf(path: string) {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}
