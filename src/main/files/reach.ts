/**
 * Which paths this program may use: those in folders that the user chose, and the very files that the user
 * chose by themselves. What counts is where a path really leads, not how it is written.
 */
import { lstatSync, realpathSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { z } from 'zod';
import { BACKUP_SUFFIX } from '../../shared/project-text.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import { codeOf } from './file-errors.ts';
import { isInside, isOnShare, pathTrouble } from './path-form.ts';
import { makeSmallStore } from './small-store.ts';

export interface Reach {
  /** Where a path leads, if that may be used; nothing need stand there yet. */
  file(path: string): Reply<string>;
  /** Whether files in a folder may be used. */
  holds(folder: string): boolean;
  /** Youngest first. */
  folders(): readonly string[];
  /** For this run alone, or kept for the next ones. Both as the system writes them. */
  allowFolder(folder: string, kept: boolean): void;
  allowFile(path: string): void;
}

export interface ReachOptions {
  /** The data folder: what was chosen is kept there. */
  readonly data: string;
  /** Files that were chosen at an earlier time. */
  readonly known: (path: string) => boolean;
  readonly platform?: NodeJS.Platform;
}

/** Folders that are kept; the oldest goes. */
const MOST = 24;

const NOT_CHOSEN =
  'This is not in a folder that you chose for projects: choose its folder first, then try again.';

/** Where a path leads; the last part of it need not be there. */
export function whereItLeads(path: string): Reply<string> {
  try {
    return ok(realpathSync.native(path));
  } catch (error) {
    if (codeOf(error) !== 'ENOENT') return refuse('not-found', '', unreachable(error));
  }
  const name = basename(path);
  if (name === '..' || name === '.') return refuse('not-found', '', 'There is no such folder.');
  try {
    const folder = realpathSync.native(dirname(path));
    if (lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink()) {
      return refuse('bad-input', '', `"${name}" is a link that leads nowhere.`);
    }
    return ok(join(folder, name));
  } catch (error) {
    return refuse('not-found', '', unreachable(error));
  }
}

function unreachable(error: unknown): string {
  switch (codeOf(error)) {
    case 'EACCES':
    case 'EPERM':
      return 'This user may not look into that folder.';
    case 'ENAMETOOLONG':
      return 'The name is too long for this disk: choose a shorter one.';
    case 'ELOOP':
      return 'The links of this path go in a circle.';
    default:
      return 'There is no such folder.';
  }
}

const shape = z.array(z.string().min(1).max(4096));

export function makeReach(options: ReachOptions): Reach {
  const { data, known, platform = process.platform } = options;
  const store = makeSmallStore(
    join(data, 'folders.json'),
    (parsed) => {
      const found = shape.safeParse(parsed);
      // Whatever wrote it, what is no full path opens nothing.
      return found.success ? found.data.filter((path) => !pathTrouble(path, platform)) : null;
    },
    [] as string[],
  );
  const ofThisRun: string[] = [];
  const files = new Set<string>();

  const folders = (): string[] => [...new Set([...ofThisRun, ...store.read()])];
  const holds = (path: string): boolean =>
    folders().some((folder) => isInside(folder, path, platform));
  const isChosen = (path: string): boolean => {
    const whole = path.endsWith(BACKUP_SUFFIX) ? path.slice(0, -BACKUP_SUFFIX.length) : path;
    return holds(dirname(path)) || files.has(whole) || known(whole);
  };

  return {
    file(path) {
      const trouble = pathTrouble(path, platform);
      if (trouble !== null) return refuse('bad-input', '', trouble);
      // Not even looked at, unless the user chose it: looking would call the other machine.
      if (isOnShare(path, platform) && !isChosen(path)) return refuse('bad-input', '', NOT_CHOSEN);
      const leads = whereItLeads(path);
      if (!leads.ok) return isChosen(path) ? leads : refuse('bad-input', '', NOT_CHOSEN);
      return isChosen(leads.value) ? leads : refuse('bad-input', '', NOT_CHOSEN);
    },
    holds,
    folders,
    allowFolder(folder, kept) {
      if (!kept) {
        if (!ofThisRun.includes(folder)) ofThisRun.unshift(folder);
        return;
      }
      const others = store.read().filter((other) => other !== folder);
      store.write([folder, ...others].slice(0, MOST));
    },
    allowFile: (path) => void files.add(path),
  };
}
