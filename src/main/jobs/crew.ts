/** Worker threads that compute one request together, each its share of it. */
import { Worker } from 'node:worker_threads';
import type { LongRequestName } from '../../shared/contract.ts';
import type { Reply } from '../../shared/reply.ts';
import type { About, JointSummary } from '../../shared/reports.ts';
import type { Share, Tick } from './progress.ts';

export interface CrewOptions {
  /** The built worker's file. */
  readonly worker: string;
  readonly carrier: About['carrier'];
}

/** What goes to a thread. */
export interface JobMessage {
  readonly id: number;
  readonly name: LongRequestName;
  readonly input: unknown;
  readonly share?: Share | undefined;
}
/** What comes back, with the same number: how far it is, what it has found, and at the end the reply. */
export type JobNews =
  | { readonly id: number; readonly tick: Tick }
  | { readonly id: number; readonly found: JointSummary }
  | { readonly id: number; readonly reply: Reply<unknown> };

export interface Task {
  readonly name: LongRequestName;
  readonly input: unknown;
  /** Threads that share it. */
  readonly shares: number;
  /** How far all shares together are. */
  ticked(tick: Tick): void;
  found(joint: JointSummary): void;
  /** The replies of all shares, in their order. */
  answered(replies: readonly Reply<unknown>[]): void;
  /** A thread died. */
  lost(): void;
}

export interface Crew {
  /**
   * One task at a time.
   * @throws when the input cannot be copied or no thread started
   */
  start(task: Task): void;
  /** Starts the first thread before it is needed. */
  warm(): void;
  /** Ends all threads at once; the task hears nothing more. The next one starts new threads. */
  end(): Promise<unknown>;
}

interface Running {
  readonly id: number;
  readonly task: Task;
  readonly ticks: (Tick | undefined)[];
  readonly replies: (Reply<unknown> | undefined)[];
}

/** Steps done add up; how many there are in all, every share knows. */
const together = (ticks: readonly (Tick | undefined)[], what: string): Tick => ({
  done: ticks.reduce((sum, tick) => sum + (tick?.done ?? 0), 0),
  total: Math.max(...ticks.map((tick) => tick?.total ?? 0)),
  what,
});

export function makeCrew({ worker, carrier }: CrewOptions): Crew {
  let threads: Worker[] = [];
  let running: Running | null = null;
  let lastId = 0;

  const hear = (part: number, news: JobNews): void => {
    if (news.id !== running?.id) return;
    const { task, ticks, replies } = running;
    if ('tick' in news) {
      ticks[part] = news.tick;
      task.ticked(together(ticks, news.tick.what));
      return;
    }
    if ('found' in news) {
      task.found(news.found);
      return;
    }
    replies[part] = news.reply;
    const all = replies.filter((reply) => reply !== undefined);
    if (all.length < task.shares) return;
    release();
    task.answered(all);
  };

  const startThread = (part: number): Worker => {
    // Not what the program itself was started with, such as a script to evaluate.
    const started = new Worker(worker, { workerData: { carrier }, execArgv: [] });
    // Waiting for work must not keep the program alive.
    started.unref();
    started.on('message', (news: JobNews) => {
      if (threads[part] === started) hear(part, news);
    });
    const lost = (): void => {
      if (threads[part] !== started) return;
      const task = running?.task;
      void end();
      task?.lost();
    };
    started.on('error', lost);
    started.on('messageerror', lost);
    started.on('exit', lost);
    return started;
  };

  /** The task is done: what waits for the next one must not keep the program alive. */
  function release(): void {
    running = null;
    for (const thread of threads) thread.unref();
  }

  function end(): Promise<unknown> {
    const ended = threads;
    threads = [];
    running = null;
    return Promise.all(ended.map((thread) => thread.terminate()));
  }

  return {
    start(task) {
      lastId += 1;
      const { name, input, shares } = task;
      running = {
        id: lastId,
        task,
        ticks: Array.from({ length: shares }),
        replies: Array.from({ length: shares }),
      };
      try {
        for (let part = 0; part < shares; part++) {
          const thread = threads[part] ?? startThread(part);
          threads[part] = thread;
          const share = shares > 1 ? { part, of: shares } : undefined;
          thread.postMessage({ id: lastId, name, input, share } satisfies JobMessage);
          thread.ref();
        }
      } catch (error) {
        void end();
        throw error;
      }
    },
    warm() {
      threads[0] ??= startThread(0);
    },
    end,
  };
}
