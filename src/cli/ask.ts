/**
 * Asks as the command line does: long requests in worker threads, so that Ctrl+C ends them at once,
 * with a bar for a person who waits.
 */
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { createAsk } from '../main/ask.ts';
import { type AskFor, type AskWithJobs, createAskWithJobs } from '../main/jobs/ask-with-jobs.ts';
import { isLongRequest } from '../shared/contract.ts';
import { progressLine } from './progress.ts';
import type { Io, Terminal } from './terminal.ts';

/** What a shell reports of a program that Ctrl+C ended: 128 and the number of the signal. */
export const INTERRUPTED = 130;

/** Ctrl+C was pressed while it was computing. */
export class Interrupted extends Error {}

const carrier = 'terminal';

/** The worker that was built beside this program; none when it runs from its sources. */
function builtWorker(): string | null {
  const file = join(import.meta.dirname, 'worker.js');
  return existsSync(file) ? file : null;
}

/** Without a worker all is computed in this thread. */
function openCore(worker: string | null): Pick<AskWithJobs, 'ask' | 'close'> {
  if (worker === null) return { ask: createAsk({ carrier }), close: async () => undefined };
  // Whoever looks on can end it; a script may wait as long as it likes.
  const timeLimit = Number.POSITIVE_INFINITY;
  const threads = Math.min(8, availableParallelism());
  return createAskWithJobs({ carrier, worker, timeLimit, threads });
}

function onSigint(stop: () => void): () => void {
  process.on('SIGINT', stop);
  return () => process.off('SIGINT', stop);
}

export interface CliAsk {
  /** @throws Interrupted */
  readonly ask: AskFor;
  close(): Promise<void>;
}

export function openAsk(io: Io, terminal: Terminal): CliAsk {
  const core = openCore(io.worker === undefined ? builtWorker() : io.worker);
  const listen = io.onInterrupt ?? onSigint;
  const askLong: AskFor = async (name, input) => {
    const line = progressLine(terminal.screen);
    const stop = new AbortController();
    // Only now: elsewhere Ctrl+C ends the program by itself.
    const unlisten = listen(() => stop.abort());
    try {
      const reply = await core.ask(name, input, { progress: line.show, signal: stop.signal });
      if (stop.signal.aborted) throw new Interrupted();
      return reply;
    } finally {
      unlisten();
      line.end();
    }
  };
  return {
    ask: (name, input) => (isLongRequest(name) ? askLong(name, input) : core.ask(name, input)),
    close: core.close,
  };
}
