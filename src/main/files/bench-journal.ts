/**
 * Keeps every check of measured parts on disk as it is typed, whether or not the project is saved:
 * nothing measured is lost when the window dies. One small JSON file for each check, in a folder of
 * this user.
 */
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type GapCheck, gapCheckSchema } from '../../shared/project.ts';
import { ok, type Reply } from '../../shared/reply.ts';
import type { Kept, KeptCheck } from '../../shared/reports-gap.ts';
import { makeKeptFiles } from './kept-files.ts';

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

/** @param folder made when the first check is kept */
export function makeBenchJournal(folder: string, now: () => Date = () => new Date()): BenchJournal {
  const files = makeKeptFiles<Pick<KeptCheck, 'check'>>({
    folder: join(folder, 'bench'),
    what: 'The measurements',
    now,
    read({ check: found }) {
      const check = gapCheckSchema.safeParse(found);
      return check.success ? { check: check.data } : null;
    },
  });
  return {
    keep: (project, check) => files.keep(project, check.id, { check }),
    kept(project) {
      const found = files.kept(project);
      return found.ok ? ok({ checks: found.value }) : found;
    },
    drop: files.drop,
  };
}
