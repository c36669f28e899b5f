/**
 * Long requests, one at a time, in worker threads: whoever drags a handle meanwhile is answered
 * by the main thread at once. A newer request of the same client for the same thing takes the
 * place of the older one, which is answered with a refusal and stopped if it runs. A worker that
 * dies costs its request an `internal` refusal; the next request starts a new one.
 */
import { isDeepStrictEqual } from 'node:util';
import type { LongRequestName } from '../../shared/contract.ts';
import { type Reply, refuse } from '../../shared/reply.ts';
import type { JobProgress, JointSummary } from '../../shared/reports.ts';
import { secondsLeft } from '../../shared/time-left.ts';
import { type CrewOptions, makeCrew } from './crew.ts';
import { emptyDesk, type JobDesk } from './desk.ts';
import type { TellProgress, Tick } from './progress.ts';

export interface Caller {
  /** Who asks: only requests of one and the same client replace, see and stop each other. */
  readonly client?: string | undefined;
  /** Aborted when nobody waits for the answer any more. */
  readonly signal?: AbortSignal | undefined;
  /** Told how far a long request is. */
  readonly progress?: TellProgress | undefined;
}

/** How a request is divided among threads, and put together again. */
export interface Division {
  /** How many shares are worth while at most. */
  most(input: unknown): number;
  /** From the replies of all shares, in their order. */
  merge(replies: readonly Reply<unknown>[]): Reply<unknown>;
}

export interface JobLineOptions extends CrewOptions {
  /** Milliseconds that a request may take from one sign of progress to the next. */
  readonly timeLimit?: number;
  /** Threads that one request may use, where it can be divided; 1 when left out. */
  readonly threads?: number;
}

export interface JobLine {
  run(name: LongRequestName, input: unknown, caller: Caller): Promise<Reply<unknown>>;
  /**
   * Computes what is about to be asked. The next request takes it over where it is the same question, running or
   * answered; where it is another, this is forgotten.
   */
  ahead(name: LongRequestName, input: unknown): void;
  /** What a client sees of its own jobs. */
  desk(client: string | undefined): JobDesk;
  /** Drops all that a client asked for: it is gone. */
  leave(client: string): void;
  /** Starts the thread before it is needed. */
  warm(): void;
  close(): Promise<void>;
}

interface Job {
  readonly name: LongRequestName;
  readonly input: unknown;
  readonly client: string | undefined;
  /** The id that the caller chose for it. */
  readonly id: unknown;
  /** Jobs with equal keys replace each other; null replaces nothing. */
  readonly key: string | null;
  readonly told: TellProgress | undefined;
  answer(reply: Reply<unknown>): void;
}

/** The job that runs, how far it is and what it has found. Times in milliseconds of the performance clock. */
interface Running {
  /** Another, once what was computed ahead is asked for. */
  job: Job;
  readonly begun: number;
  tick: Tick;
  ticked: number;
  readonly found: JointSummary[];
}

/** What was computed before anybody asked. */
interface Ahead {
  readonly job: Job;
  readonly question: unknown;
  /** Null while it runs. */
  readonly reply: Reply<unknown> | null;
}

const MAX_WAITING = 64;
const TIME_LIMIT = 120_000;
/**
 * Looks until a silence counts: where the machine slept, or this thread was busy, one look is late and not all of them,
 * and what the worker said meanwhile is heard before the next.
 */
const LOOKS = 10;

const died = () =>
  refuse('internal', '', 'The calculation stopped unexpectedly. Change an input or try again.');
const replaced = () =>
  refuse('not-computable', '', 'A newer request for the same joint took the place of this one.');
const abandoned = () => refuse('not-computable', '', 'Nobody waits for this answer any more.');
const stopped = () => refuse('stopped', '', 'This was stopped before it was done.');
const tooLong = (limit: number) =>
  refuse(
    'not-computable',
    '',
    `This made no progress for ${limit / 1000} s and was stopped. Make it smaller and try again.`,
  );

const fieldOf = (input: unknown, name: string): unknown =>
  typeof input === 'object' && input !== null ? (input as Record<string, unknown>)[name] : null;

/** What is asked, as it is after its way as JSON, without the name that its caller gave it. */
function questionOf(name: string, input: unknown): unknown {
  try {
    const { job: _job, ...asked } = input as { job?: unknown };
    return JSON.parse(JSON.stringify([name, asked]));
  } catch {
    // Like no other.
    return undefined;
  }
}

function keyOf(name: string, input: unknown, client: string | undefined): string | null {
  if (client === undefined) return null;
  const jointId = fieldOf(input, 'jointId');
  return JSON.stringify([client, name, typeof jointId === 'string' ? jointId : null]);
}

function seen({ begun, tick, ticked }: Running): JobProgress {
  const now = performance.now();
  const left = secondsLeft(tick.done, tick.total, (ticked - begun) / 1000, (now - ticked) / 1000);
  return { state: 'running', ...tick, elapsed: (now - begun) / 1000, left };
}

/** @param division for a line of requests that threads may share */
export function makeJobLine(options: JobLineOptions, division?: Division): JobLine {
  const { timeLimit = TIME_LIMIT, threads = 1 } = options;
  const waiting: Job[] = [];
  const crew = makeCrew(options);
  let running: Running | null = null;
  let early: Ahead | null = null;
  let timer: NodeJS.Timeout | undefined;
  let closed = false;

  /** Ends what runs, if anything does, and lets the next one run. */
  const finish = (reply: Reply<unknown>): void => {
    clearInterval(timer);
    const job = running?.job;
    running = null;
    job?.answer(reply);
    next();
  };

  /** Takes a job out of the line, running or not. */
  const drop = (job: Job, reply: Reply<unknown>): void => {
    const place = waiting.indexOf(job);
    if (place >= 0) {
      waiting.splice(place, 1);
      job.answer(reply);
    } else if (running?.job === job) {
      void crew.end();
      finish(reply);
    }
  };

  const watch = (run: Running): void => {
    clearInterval(timer);
    if (!Number.isFinite(timeLimit)) return;
    let looks = 0;
    timer = setInterval(() => {
      looks += 1;
      if (looks >= LOOKS) drop(run.job, tooLong(timeLimit));
    }, timeLimit / LOOKS);
  };

  function next(): void {
    const job = running === null && !closed ? waiting.shift() : undefined;
    if (!job) return;
    const begun = performance.now();
    const tick = { done: 0, total: 0, what: '' };
    const run: Running = { job, begun, tick, ticked: begun, found: [] };
    running = run;
    watch(run);
    const { name, input } = job;
    try {
      crew.start({
        name,
        input,
        shares: Math.max(1, Math.min(threads, division?.most(input) ?? 1)),
        ticked(tick) {
          run.tick = tick;
          run.ticked = performance.now();
          watch(run);
          run.job.told?.(tick.done, tick.total, tick.what);
        },
        found: (joint) => run.found.push(joint),
        answered: (replies) =>
          finish(replies.length > 1 && division ? division.merge(replies) : replies[0]!),
        lost: () => finish(died()),
      });
    } catch {
      // The input could not be copied, or no thread could be started.
      finish(died());
    }
  }

  /** Puts a job in the place of the same question that was computed ahead; false where there is none. */
  const takeOver = (job: Job): boolean => {
    if (!early) return false;
    const { job: ahead, question, reply } = early;
    early = null;
    const isSame = isDeepStrictEqual(questionOf(job.name, job.input), question);
    if (isSame && reply) job.answer(reply);
    else if (isSame && running?.job === ahead) running.job = job;
    else {
      drop(ahead, abandoned());
      return false;
    }
    return true;
  };

  const all = (): Job[] => [...waiting, ...(running ? [running.job] : [])];

  return {
    run(name, input, { client, signal, progress }) {
      if (closed || signal?.aborted) return Promise.resolve(abandoned());
      if (waiting.length >= MAX_WAITING) {
        return Promise.resolve(
          refuse('not-computable', '', 'Too much waits to be computed: try again in a moment.'),
        );
      }
      return new Promise((resolve) => {
        const abort = (): void => drop(job, abandoned());
        const job: Job = {
          name,
          input,
          client,
          id: fieldOf(input, 'job'),
          key: keyOf(name, input, client),
          told: progress,
          answer(reply) {
            signal?.removeEventListener('abort', abort);
            resolve(reply);
          },
        };
        signal?.addEventListener('abort', abort, { once: true });
        if (takeOver(job)) return;
        const older = all().filter(({ key }) => key !== null && key === job.key);
        waiting.push(job);
        for (const other of older) drop(other, replaced());
        next();
      });
    },
    ahead(name, input) {
      // Whoever has asked already goes first.
      if (closed || running || early) return;
      const question = questionOf(name, input);
      const answer = (reply: Reply<unknown>): void => {
        if (early?.job === job) early = reply.ok ? { job, question, reply } : null;
      };
      const job: Job = {
        name,
        input,
        answer,
        client: undefined,
        id: null,
        key: null,
        told: undefined,
      };
      early = { job, question, reply: null };
      waiting.push(job);
      next();
    },
    desk(client) {
      const own = (id: string): Job[] =>
        all().filter((job) => job.client === client && job.id === id);
      return {
        progress(id) {
          const jobs = own(id);
          if (running && jobs.includes(running.job)) return seen(running);
          const unknown = emptyDesk.progress(id);
          return jobs.length > 0 ? { ...unknown, state: 'waiting' } : unknown;
        },
        found: (id, from) =>
          running && own(id).includes(running.job) ? running.found.slice(from) : [],
        stop(id) {
          const jobs = own(id);
          for (const job of jobs) drop(job, stopped());
          return jobs.length > 0;
        },
      };
    },
    leave(client) {
      for (const job of all()) if (job.client === client) drop(job, abandoned());
    },
    warm() {
      if (!closed) crew.warm();
    },
    async close() {
      closed = true;
      const left = waiting.splice(0);
      for (const job of left) job.answer(abandoned());
      const ended = crew.end();
      finish(abandoned());
      await ended;
    },
  };
}
