/**
 * Keeps rows of coupon results on disk while they are in no file of the project: those that are not
 * complete, which no project takes, and those that are not saved yet. One small file for each set.
 */
import { join } from 'node:path';
import { z } from 'zod';
import { type KeptRow, type KeptSets, keptRowsSchema } from '../../shared/kept-rows.ts';
import { id } from '../../shared/project-fields.ts';
import { ok, type Reply } from '../../shared/reply.ts';
import { makeKeptFiles } from './kept-files.ts';

export interface RowJournal {
  /** In the place of what was kept of the set; without rows nothing is kept any more. */
  keep(
    project: string,
    setId: string,
    rows: readonly KeptRow[],
  ): Reply<{ readonly at: string | null }>;
  kept(project: string): Reply<KeptSets>;
  drop(project: string, setId: string): Reply<{ readonly dropped: boolean }>;
}

const filed = z.object({ setId: id, rows: keptRowsSchema });

/** @param folder made when the first row is kept */
export function makeRowJournal(folder: string, now: () => Date = () => new Date()): RowJournal {
  const files = makeKeptFiles<z.infer<typeof filed>>({
    folder: join(folder, 'coupons'),
    what: 'The rows',
    now,
    read(parsed) {
      const found = filed.safeParse(parsed);
      return found.success ? found.data : null;
    },
  });
  return {
    keep(project, setId, rows) {
      if (rows.length > 0) return files.keep(project, setId, { setId, rows: [...rows] });
      const cleared = files.clear(project, setId);
      return cleared.ok ? ok({ at: null }) : cleared;
    },
    kept(project) {
      const found = files.kept(project);
      return found.ok ? ok({ sets: found.value }) : found;
    },
    drop: files.drop,
  };
}
