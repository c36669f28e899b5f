/**
 * Long requests, one at a time, in a worker thread: whoever drags a handle meanwhile is answered
 * by the main thread at once. A newer request of the same client for the same thing takes the
 * place of the older one, which is answered with a refusal and stopped if it runs. A worker that
 * dies costs its request an `internal` refusal; the next request starts a new one.
 */
import { Worker } from 'node:worker_threads';
import type { RequestName } from '../../shared/contract.ts';
import { type Reply, refuse } from '../../shared/reply.ts';
import type { About } from '../../shared/reports.ts';

export interface Caller {
  /** Who asks: only requests of one and the same client replace each other. */
  readonly client?: string | undefined;
  /** Aborted when nobody waits for the answer any more. */
  readonly signal?: AbortSignal | undefined;
}

export interface JobLineOptions {
  /** The built worker's file. */
  readonly worker: string;
  readonly carrier: About['carrier'];
  /** Milliseconds that one request may take. */
  readonly timeLimit?: number;
}

export interface JobLine {
  run(name: RequestName, input: unknown, caller: Caller): Promise<Reply<unknown>>;
  /** Starts the thread before it is needed. */
  warm(): void;
  close(): Promise<void>;
}

/** What goes to the worker, and what comes back with the same number. */
export interface JobMessage {
  readonly id: number;
  readonly name: RequestName;
  readonly input: unknown;
}
export interface JobAnswer {
  readonly id: number;
  readonly reply: Reply<unknown>;
}

interface Job extends JobMessage {
  /** Jobs with equal keys replace each other; null replaces nothing. */
  readonly key: string | null;
  answer(reply: Reply<unknown>): void;
}

const MAX_WAITING = 64;
const TIME_LIMIT = 120_000;

const died = () =>
  refuse('internal', '', 'The calculation stopped unexpectedly. Change an input or try again.');
const replaced = () =>
  refuse('not-computable', '', 'A newer request for the same joint took the place of this one.');
const abandoned = () => refuse('not-computable', '', 'Nobody waits for this answer any more.');

function keyOf(name: RequestName, input: unknown, client: string | undefined): string | null {
  if (client === undefined) return null;
  const jointId =
    typeof input === 'object' && input !== null && 'jointId' in input ? input.jointId : null;
  return JSON.stringify([client, name, typeof jointId === 'string' ? jointId : null]);
}

export function makeJobLine(options: JobLineOptions): JobLine {
  const waiting: Job[] = [];
  let worker: Worker | null = null;
  let running: Job | null = null;
  let timer: NodeJS.Timeout | undefined;
  let closed = false;
  let lastId = 0;

  /** Ends what runs, if anything does, and lets the next one run. */
  const finish = (reply: Reply<unknown>): void => {
    clearTimeout(timer);
    const job = running;
    running = null;
    job?.answer(reply);
    next();
  };

  const start = (): Worker => {
    const started = new Worker(options.worker, { workerData: { carrier: options.carrier } });
    // Waiting for work must not keep the program alive.
    started.unref();
    started.on('message', ({ id, reply }: JobAnswer) => {
      if (started === worker && running?.id === id) finish(reply);
    });
    const lost = (): void => {
      if (started !== worker) return;
      void stopWorker();
      finish(died());
    };
    started.on('error', lost);
    started.on('messageerror', lost);
    started.on('exit', lost);
    return started;
  };

  const stopWorker = (): Promise<unknown> => {
    const stopped = worker;
    worker = null;
    return stopped ? stopped.terminate() : Promise.resolve();
  };

  /** Takes a job out of the line, running or not. */
  const drop = (job: Job, reply: Reply<unknown>): void => {
    const place = waiting.indexOf(job);
    if (place >= 0) {
      waiting.splice(place, 1);
      job.answer(reply);
    } else if (running === job) {
      void stopWorker();
      finish(reply);
    }
  };

  function next(): void {
    const job = running === null && !closed ? waiting.shift() : undefined;
    if (!job) return;
    running = job;
    const limit = options.timeLimit ?? TIME_LIMIT;
    timer = setTimeout(() => {
      const text = `This took longer than ${limit / 1000} s and was stopped.`;
      drop(job, refuse('not-computable', '', text));
    }, limit);
    try {
      worker ??= start();
      const { id, name, input } = job;
      worker.postMessage({ id, name, input } satisfies JobMessage);
    } catch {
      // The input could not be copied, or no thread could be started.
      finish(died());
    }
  }

  return {
    run(name, input, { client, signal }) {
      if (closed || signal?.aborted) return Promise.resolve(abandoned());
      if (waiting.length >= MAX_WAITING) {
        return Promise.resolve(
          refuse('not-computable', '', 'Too much waits to be computed: try again in a moment.'),
        );
      }
      return new Promise((resolve) => {
        lastId += 1;
        const abort = (): void => drop(job, abandoned());
        const job: Job = {
          id: lastId,
          name,
          input,
          key: keyOf(name, input, client),
          answer(reply) {
            signal?.removeEventListener('abort', abort);
            resolve(reply);
          },
        };
        signal?.addEventListener('abort', abort, { once: true });
        const older = [...waiting, ...(running ? [running] : [])].filter(
          ({ key }) => key !== null && key === job.key,
        );
        waiting.push(job);
        for (const other of older) drop(other, replaced());
        next();
      });
    },
    warm() {
      if (!closed) worker ??= start();
    },
    async close() {
      closed = true;
      const left = waiting.splice(0);
      for (const job of left) job.answer(abandoned());
      const stopped = stopWorker();
      finish(abandoned());
      await stopped;
    },
  };
}
