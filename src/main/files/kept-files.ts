/**
 * What must not be lost when the window dies, as small JSON files of this user: a folder for each project,
 * a file for each thing. A file is written beside its place and renamed into it, so that there is always
 * the old or the new one, whole.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import { whyNotWritten } from './file-errors.ts';
import { readKept } from './read-kept.ts';
import { writeWhole } from './write-whole.ts';

/** A thing as it stands in its file, with whose it is and when it was written. */
export type Filed<T> = T & { readonly project: string; readonly at: string };

export interface KeptFiles<T> {
  keep(project: string, id: string, thing: T): Reply<{ readonly at: string }>;
  /** Oldest first; what is damaged is passed over and stays where it is. */
  kept(project: string): Reply<readonly Filed<T>[]>;
  /** Puts it away: it is kept, but not found again. */
  drop(project: string, id: string): Reply<{ readonly dropped: boolean }>;
  /** Where something lies that was put away, and when it was last written; null where nothing is. */
  away(project: string, id: string): { readonly path: string; readonly written: Date } | null;
  /** What was put away is found again. False where nothing was, or something stands in its place. */
  takeBack(project: string, id: string): Reply<{ readonly back: boolean }>;
  /** Takes it from the disk, where it is in safe hands. */
  clear(project: string, id: string): Reply<{ readonly dropped: boolean }>;
  /** Takes from the disk what was put away, where it was last written before that time. */
  clearAway(project: string, time: Date): void;
}

export interface KeptFilesOptions<T> {
  /** Made when the first thing is kept. */
  readonly folder: string;
  /** The thing out of what stands in its file; null where it is none. */
  readonly read: (parsed: Readonly<Record<string, unknown>>) => T | null;
  /** What cannot be kept, as a sentence begins: `The measurements`. */
  readonly what: string;
  readonly now: () => Date;
}

/** A name that every file system takes, whatever a project is called. */
const folderName = (project: string): string =>
  createHash('sha256').update(project).digest('hex').slice(0, 24);

const KEPT = '.json';
const PUT_AWAY = '.put-away.json';
/** An id of another shape is no file of ours. */
const isId = (id: string): boolean => /^[a-z0-9][a-z0-9-]{0,63}$/.test(id);

export function makeKeptFiles<T extends object>(options: KeptFilesOptions<T>): KeptFiles<T> {
  const { folder, read, what, now } = options;
  const folderOf = (project: string): string => join(folder, folderName(project));

  const unkept = (error: unknown): Reply<never> => {
    const { why } = whyNotWritten(error);
    return refuse('internal', '', `${what} could not be kept: ${why}. Save a copy of the project.`);
  };
  const readFiled = (path: string): Filed<T> | null => {
    try {
      const filed = JSON.parse(readKept(path)) as Partial<Filed<object>>;
      const thing = read(filed as Record<string, unknown>);
      return thing && typeof filed.project === 'string' && typeof filed.at === 'string'
        ? { project: filed.project, at: filed.at, ...thing }
        : null;
    } catch {
      // What cannot be read cannot be offered; it stays where it is.
      return null;
    }
  };
  const take = (
    project: string,
    id: string,
    away: (path: string) => void,
  ): Reply<{ readonly dropped: boolean }> => {
    if (!isId(id)) return ok({ dropped: false });
    const path = join(folderOf(project), id);
    try {
      if (!existsSync(path + KEPT)) return ok({ dropped: false });
      away(path);
      return ok({ dropped: true });
    } catch (error) {
      return unkept(error);
    }
  };

  return {
    keep(project, id, thing) {
      try {
        const place = folderOf(project);
        mkdirSync(place, { recursive: true, mode: 0o700 });
        const at = now().toISOString();
        const filed: Filed<T> = { project, at, ...thing };
        writeWhole(join(place, id + KEPT), `${JSON.stringify(filed, null, 1)}\n`, { mode: 0o600 });
        return ok({ at });
      } catch (error) {
        return unkept(error);
      }
    },
    kept(project) {
      const place = folderOf(project);
      if (!existsSync(place)) return ok([]);
      try {
        const names = readdirSync(place).filter(
          (name) => name.endsWith(KEPT) && !name.endsWith(PUT_AWAY),
        );
        const things = names.flatMap((name) => readFiled(join(place, name)) ?? []);
        return ok(things.sort((a, b) => (a.at < b.at ? -1 : 1)));
      } catch {
        return refuse('internal', '', `${what} that were kept earlier cannot be read.`);
      }
    },
    drop: (project, id) => take(project, id, (path) => renameSync(path + KEPT, path + PUT_AWAY)),
    away(project, id) {
      const path = join(folderOf(project), id + PUT_AWAY);
      const info = isId(id) ? statSync(path, { throwIfNoEntry: false }) : undefined;
      return info ? { path, written: info.mtime } : null;
    },
    takeBack(project, id) {
      const path = join(folderOf(project), id);
      if (!isId(id) || existsSync(path + KEPT) || !existsSync(path + PUT_AWAY)) {
        return ok({ back: false });
      }
      try {
        renameSync(path + PUT_AWAY, path + KEPT);
        return ok({ back: true });
      } catch (error) {
        return unkept(error);
      }
    },
    clear: (project, id) => take(project, id, (path) => rmSync(path + KEPT)),
    clearAway(project, time) {
      const place = folderOf(project);
      try {
        for (const name of existsSync(place) ? readdirSync(place) : []) {
          // By a clock that is years ahead all is old: what nobody decided about stays.
          if (!name.endsWith(PUT_AWAY)) continue;
          const path = join(place, name);
          if (statSync(path).mtimeMs < time.getTime()) rmSync(path);
        }
      } catch {
        // Another window may have taken it first; nobody waits for the room.
      }
    },
  };
}
