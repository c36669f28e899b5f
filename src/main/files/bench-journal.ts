/**
 * Keeps every check of measured parts on disk as it is typed, whether or not the project is saved:
 * nothing measured is lost when the window dies. One small JSON file for each check, in a folder of
 * this user. A file is written beside its place and renamed into it, so that there is always the old
 * or the new one, whole.
 */
import { createHash, randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type GapCheck, gapCheckSchema } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Kept, KeptCheck } from '../../shared/reports-gap.ts';

export interface BenchJournal {
  keep(project: string, check: GapCheck): Reply<{ readonly at: string }>;
  kept(project: string): Reply<Kept>;
  drop(project: string, checkId: string): Reply<{ readonly dropped: boolean }>;
}

/** Where programs of this user keep what they must not lose; `LAPWRIGHT_DATA` names another place. */
export function dataFolder(
  env: NodeJS.ProcessEnv = process.env,
  platform: NodeJS.Platform = process.platform,
  home: string = homedir(),
): string {
  if (env.LAPWRIGHT_DATA) return env.LAPWRIGHT_DATA;
  if (platform === 'win32') {
    return join(env.LOCALAPPDATA ?? join(home, 'AppData', 'Local'), 'Lapwright');
  }
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Lapwright');
  return join(env.XDG_STATE_HOME || join(home, '.local', 'state'), 'lapwright');
}

/** A name that every file system takes, whatever a project is called. */
const folderName = (project: string): string =>
  createHash('sha256').update(project).digest('hex').slice(0, 24);

const KEPT = '.json';
const PUT_AWAY = '.put-away.json';

const unkept = (error: unknown): Reply<never> => {
  const { code = '' } = error as NodeJS.ErrnoException;
  const why =
    code === 'ENOSPC'
      ? 'the disk is full'
      : code === 'EACCES' || code === 'EPERM' || code === 'EROFS'
        ? 'this user may not write there'
        : code || String(error);
  return refuse(
    'internal',
    '',
    `The measurements could not be kept: ${why}. Save a copy of the project.`,
  );
};

function writeWhole(path: string, text: string): void {
  const beside = `${path}.${randomBytes(6).toString('hex')}.part`;
  try {
    const file = openSync(beside, 'wx', 0o600);
    try {
      writeSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

function readKept(path: string): KeptCheck | null {
  try {
    const kept = JSON.parse(readFileSync(path, 'utf8')) as Partial<KeptCheck>;
    const check = gapCheckSchema.safeParse(kept.check);
    return check.success && typeof kept.project === 'string' && typeof kept.at === 'string'
      ? { project: kept.project, at: kept.at, check: check.data }
      : null;
  } catch {
    // What cannot be read cannot be offered; it stays where it is.
    return null;
  }
}

/** @param folder made when the first check is kept */
export function makeBenchJournal(folder: string, now: () => Date = () => new Date()): BenchJournal {
  const folderOf = (project: string): string => join(folder, 'bench', folderName(project));
  return {
    keep(project, check) {
      try {
        const place = folderOf(project);
        mkdirSync(place, { recursive: true, mode: 0o700 });
        const at = now().toISOString();
        const kept: KeptCheck = { project, at, check };
        writeWhole(join(place, check.id + KEPT), `${JSON.stringify(kept, null, 1)}\n`);
        return ok({ at });
      } catch (error) {
        return unkept(error);
      }
    },
    kept(project) {
      const place = folderOf(project);
      if (!existsSync(place)) return ok({ checks: [] });
      try {
        const names = readdirSync(place).filter(
          (name) => name.endsWith(KEPT) && !name.endsWith(PUT_AWAY),
        );
        const checks = names.flatMap((name) => readKept(join(place, name)) ?? []);
        return ok({ checks: checks.sort((a, b) => (a.at < b.at ? -1 : 1)) });
      } catch {
        return refuse('internal', '', 'What was kept of earlier measurements cannot be read.');
      }
    },
    drop(project, checkId) {
      // An id of another shape is no file of ours.
      if (!/^[a-z0-9][a-z0-9-]{0,63}$/.test(checkId)) return ok({ dropped: false });
      const path = join(folderOf(project), checkId);
      try {
        if (!existsSync(path + KEPT)) return ok({ dropped: false });
        renameSync(path + KEPT, path + PUT_AWAY);
        return ok({ dropped: true });
      } catch (error) {
        return unkept(error);
      }
    },
  };
}
