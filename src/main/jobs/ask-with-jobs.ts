/** Asks that know which requests are long: those go to the worker, all others are answered here. */
import type { RequestName } from '../../shared/contract.ts';
import type { Reply } from '../../shared/reply.ts';
import { type Ask, type AskOptions, createAsk } from '../ask.ts';
import { type Caller, type JobLine, type JobLineOptions, makeJobLine } from './job-line.ts';

export type AskFor = (name: unknown, input: unknown, caller?: Caller) => Promise<Reply<unknown>>;

const longRequests: ReadonlySet<unknown> = new Set<RequestName>(['joint.sweep']);
const isLong = (name: unknown): name is RequestName => longRequests.has(name);

/** Several windows, each with its own start, may share one line of jobs. */
export const withJobs =
  (ask: Ask, jobs: JobLine): AskFor =>
  (name, input, caller = {}) =>
    isLong(name) ? jobs.run(name, input, caller) : ask(name, input);

export interface AskWithJobs {
  readonly ask: AskFor;
  close(): Promise<void>;
}

export function createAskWithJobs(
  options: AskOptions & Omit<JobLineOptions, 'carrier'>,
): AskWithJobs {
  const jobs = makeJobLine(options);
  return { ask: withJobs(createAsk(options), jobs), close: () => jobs.close() };
}
