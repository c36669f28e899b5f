/**
 * Asks that know which requests are long: those go to a worker, all others are answered here.
 * Each kind of long request has a line of its own, so that a table of margins never waits for a
 * sweep.
 */
import { availableParallelism } from 'node:os';
import { isLongRequest, type LongRequestName, longRequestNames } from '../../shared/contract.ts';
import type { Reply } from '../../shared/reply.ts';
import type { CheckReport, CornersReport, Opened } from '../../shared/reports.ts';
import { type Ask, type AskOptions, createAsk } from '../ask.ts';
import { mergeChecks } from '../handlers/check.ts';
import { mergeCorners } from '../handlers/corners.ts';
import { type JobDesk, joinDesks } from './desk.ts';
import {
  type Caller,
  type Division,
  type JobLine,
  type JobLineOptions,
  makeJobLine,
} from './job-line.ts';
import { makeRehearsal, type Rehearsal } from './rehearsal.ts';

export type AskFor = (name: unknown, input: unknown, caller?: Caller) => Promise<Reply<unknown>>;

export interface Jobs {
  readonly lines: Readonly<Record<LongRequestName, JobLine>>;
  /** Of what is answered by the thread that answers at once. */
  readonly rehearsal: Rehearsal;
  /** Where a client follows and stops its own jobs. */
  desk(client: string | undefined): JobDesk;
  /** Drops all that a client asked for: it is gone. */
  leave(client: string): void;
  /**
   * Starts the threads that every page needs before they are needed.
   * @param opening what the page will open: its margins are computed while it loads
   */
  warm(opening: Reply<Opened>): void;
  close(): Promise<void>;
}

/** Asked for by a page as soon as it opens. */
const FIRST: LongRequestName = 'project.check';
/** Asked for at a click that wants its answer at once. */
const SOON: readonly LongRequestName[] = ['joint.analyse', 'joint.sweep', 'joint.explain'];
/** Milliseconds after which these are started too. */
const SOON_AFTER = 1500;

/** Joints that are worth a thread of their own: one that starts has the program to load first. */
const JOINTS_A_THREAD = 4;

function jointsIn(input: unknown): number {
  const { document } = (input ?? {}) as { document?: { joints?: unknown } | null };
  return Array.isArray(document?.joints) ? document.joints.length : 0;
}

const isOfOneJoint = (input: unknown): boolean =>
  (input as { jointId?: unknown } | null)?.jointId !== undefined;

/** Requests that several threads may compute together; each computes the share it is given. */
const divisions: Partial<Record<LongRequestName, Division>> = {
  'project.check': {
    most: (input) => Math.floor(jointsIn(input) / JOINTS_A_THREAD),
    merge: (replies) => mergeChecks(replies as readonly Reply<CheckReport>[]),
  },
  'project.corners': {
    // Of one joint alone there is nothing to share.
    most: (input) => (isOfOneJoint(input) ? 1 : Math.floor(jointsIn(input) / JOINTS_A_THREAD)),
    merge: (replies) => mergeCorners(replies as readonly Reply<CornersReport>[]),
  },
};

/** All cores but the one that draws; each thread holds the program once more. */
const spareThreads = (): number => Math.max(1, Math.min(4, availableParallelism() - 1));

export function makeJobs(asked: JobLineOptions): Jobs {
  const options = { threads: spareThreads(), ...asked };
  const lines = Object.fromEntries(
    longRequestNames.map((name) => [name, makeJobLine(options, divisions[name])]),
  ) as Record<LongRequestName, JobLine>;
  const all = Object.values(lines);
  const rehearsal = makeRehearsal(createAsk({ carrier: options.carrier }));
  return {
    lines,
    rehearsal,
    desk: (client) => joinDesks(all.map((line) => line.desk(client))),
    leave(client) {
      for (const line of all) line.leave(client);
    },
    warm(opening) {
      if (opening.ok) lines[FIRST].ahead(FIRST, { document: opening.value.document });
      else lines[FIRST].warm();
      // Threads that start all at once take the time of the one that is waited for.
      const soon = (): void => {
        for (const name of SOON) lines[name].warm();
      };
      setTimeout(soon, SOON_AFTER).unref();
    },
    async close() {
      rehearsal.close();
      await Promise.all(all.map((line) => line.close()));
    },
  };
}

/** Several windows, each with its own start, may share the same jobs. */
export const withJobs =
  (ask: Ask, jobs: Jobs): AskFor =>
  async (name, input, caller = {}) => {
    jobs.rehearsal.asked(name);
    if (!isLongRequest(name)) {
      const { client } = caller;
      return ask(name, input, { desk: jobs.desk(client), client });
    }
    const reply = await jobs.lines[name].run(name, input, caller);
    if (name === 'joint.analyse') jobs.rehearsal.analysed(input, reply);
    return reply;
  };

export interface AskWithJobs {
  readonly ask: AskFor;
  warm(opening: Reply<Opened>): void;
  close(): Promise<void>;
}

export function createAskWithJobs(
  options: AskOptions & Omit<JobLineOptions, 'carrier'>,
): AskWithJobs {
  const jobs = makeJobs(options);
  return { ...jobs, ask: withJobs(createAsk(options), jobs) };
}
