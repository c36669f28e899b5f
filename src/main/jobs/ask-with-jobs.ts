/**
 * Asks that know which requests are long: those go to a worker, all others are answered here.
 * Each kind of long request has a line of its own, so that a table of margins never waits for a
 * sweep.
 */
import type { RequestName } from '../../shared/contract.ts';
import type { Reply } from '../../shared/reply.ts';
import { type Ask, type AskOptions, createAsk } from '../ask.ts';
import { type Caller, type JobLine, type JobLineOptions, makeJobLine } from './job-line.ts';

export type AskFor = (name: unknown, input: unknown, caller?: Caller) => Promise<Reply<unknown>>;

export interface Jobs {
  readonly lines: ReadonlyMap<unknown, JobLine>;
  /** Starts the threads before they are needed. */
  warm(): void;
  close(): Promise<void>;
}

const longRequests: readonly RequestName[] = ['project.check', 'joint.sweep', 'joint.explain'];

export function makeJobs(options: JobLineOptions): Jobs {
  const lines = new Map(longRequests.map((name) => [name, makeJobLine(options)]));
  return {
    lines,
    warm() {
      for (const line of lines.values()) line.warm();
    },
    async close() {
      await Promise.all([...lines.values()].map((line) => line.close()));
    },
  };
}

/** Several windows, each with its own start, may share the same jobs. */
export const withJobs =
  (ask: Ask, { lines }: Jobs): AskFor =>
  (name, input, caller = {}) =>
    lines.get(name)?.run(name as RequestName, input, caller) ?? ask(name, input);

export interface AskWithJobs {
  readonly ask: AskFor;
  warm(): void;
  close(): Promise<void>;
}

export function createAskWithJobs(
  options: AskOptions & Omit<JobLineOptions, 'carrier'>,
): AskWithJobs {
  const jobs = makeJobs(options);
  return { ...jobs, ask: withJobs(createAsk(options), jobs) };
}
