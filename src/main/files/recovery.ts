/**
 * Unsaved documents, kept on disk as they are changed: none is lost when its page or the program dies. They are
 * offered again when nobody works on them any more, and go only when they are saved, or put away and old.
 */
import { join } from 'node:path';
import { z } from 'zod';
import { readUnfinished } from '../../shared/read-project.ts';
import { ok, type Reply, type RequestError, refuse } from '../../shared/reply.ts';
import type { Recovered, RecoveryDropped, RecoveryKept } from '../../shared/reports-files.ts';
import { makeKeptFiles } from './kept-files.ts';
import type { Presence } from './presence.ts';
import type { RunningMark } from './running.ts';

const filed = z.object({
  recovery: z.string(),
  document: z.unknown(),
  origin: z.string(),
  path: z.string().nullable(),
  expect: z.string().nullable(),
  writer: z.object({ pid: z.int(), token: z.string() }),
});
type Entry = z.infer<typeof filed>;
export type Unsaved = Omit<Entry, 'writer'>;

export interface Recovery {
  keep(unsaved: Unsaved, client: string): Reply<{ readonly at: string }>;
  kept(own: readonly string[], client: string): Reply<RecoveryKept>;
  open(recovery: string): Reply<Recovered>;
  drop(recovery: string): Reply<RecoveryDropped>;
  takeBack(recovery: string): Reply<{ readonly back: boolean }>;
}

export interface RecoveryOptions {
  readonly data: string;
  readonly running: RunningMark;
  readonly presence: Presence;
  /** What stands at a path now; null where nothing does, or it may not be looked at. */
  readonly fileAt: (path: string) => Recovered['file'];
  readonly now: () => Date;
}

/** Milliseconds that something put away is kept at least: 90 days. */
const KEPT_FOR = 90 * 24 * 60 * 60 * 1000;
/** They are of no project, as the other kept files are: one folder holds them all. */
const ALL = 'unsaved';

/** A name to offer it by, even of a document that is no project any more. */
function nameOf(document: unknown): string {
  const { name } = (document ?? {}) as { name?: unknown };
  return typeof name === 'string' && name !== '' ? name.slice(0, 120) : 'Project without a name';
}

/** They stay where they are: another program may still make something of them. */
function damaged({ code, field, message }: RequestError): Reply<never> {
  const where = field === '' ? '' : `${field}: `;
  return refuse(
    code,
    field,
    `These changes are damaged and cannot be opened; they stay kept. ${where}${message}`,
  );
}

export function makeRecovery(options: RecoveryOptions): Recovery {
  const { data, running, presence, fileAt, now } = options;
  const files = makeKeptFiles<Entry>({
    folder: join(data, 'recovery'),
    what: 'The unsaved changes',
    now,
    read(parsed) {
      const found = filed.safeParse(parsed);
      return found.success ? found.data : null;
    },
  });
  const isOrphan = ({ recovery, writer }: Entry): boolean =>
    running.isOwn(writer) ? !presence.isHere(recovery) : !running.isAlive(writer);

  return {
    keep(unsaved, client) {
      presence.owns(unsaved.recovery, client);
      return files.keep(ALL, unsaved.recovery, { ...unsaved, writer: running.own() });
    },
    kept(own, client) {
      for (const recovery of own) presence.owns(recovery, client);
      files.clearAway(ALL, new Date(now().getTime() - KEPT_FOR));
      const found = files.kept(ALL);
      if (!found.ok) return found;
      const left = found.value.filter((entry) => !own.includes(entry.recovery) && isOrphan(entry));
      return ok({
        kept: left.reverse().map(({ recovery, document, origin, path, expect, at }) => {
          const file = path === null ? null : fileAt(path);
          return {
            recovery,
            project: nameOf(document),
            origin,
            path,
            at,
            changedSince: file !== null && file.stamp !== expect,
          };
        }),
      });
    },
    open(recovery) {
      const found = files.kept(ALL);
      if (!found.ok) return found;
      const entry = found.value.find((one) => one.recovery === recovery);
      if (!entry) return refuse('not-found', '', 'These changes are not kept any more.');
      const read = readUnfinished(entry.document);
      if (!read.ok) return read.error.field === 'version' ? read : damaged(read.error);
      return ok({
        document: read.value,
        origin: entry.origin,
        file: entry.path === null ? null : fileAt(entry.path),
        expect: entry.expect,
        at: entry.at,
      });
    },
    drop(recovery) {
      const reply = files.drop(ALL, recovery);
      if (!reply.ok) return reply;
      const away = reply.value.dropped ? files.away(ALL, recovery) : null;
      return ok({
        ...reply.value,
        at: away?.path ?? null,
        until: away ? new Date(away.written.getTime() + KEPT_FOR).toISOString() : null,
      });
    },
    takeBack: (recovery) => files.takeBack(ALL, recovery),
  };
}
