/** Where a caller asks about its own jobs. */
import { ok, type Reply } from '../../shared/reply.ts';
import type { JobFound, JobProgress, JobStopped, JointSummary } from '../../shared/reports.ts';

export interface JobDesk {
  progress(job: string): JobProgress;
  /** What a running job has found, without the first `from`. */
  found(job: string, from: number): readonly JointSummary[];
  /** True when there was something to stop. */
  stop(job: string): boolean;
}

const unknown: JobProgress = {
  state: 'unknown',
  done: 0,
  total: 0,
  what: '',
  elapsed: 0,
  left: null,
};

/** Without workers nothing is ever on its way while somebody asks. */
export const emptyDesk: JobDesk = {
  progress: () => unknown,
  found: () => [],
  stop: () => false,
};

export const progressOf = (desk: JobDesk, job: string): Reply<JobProgress> =>
  ok(desk.progress(job));
export const foundBy = (desk: JobDesk, job: string, from: number): Reply<JobFound> =>
  ok({ joints: desk.found(job, from) });
export const stopAt = (desk: JobDesk, job: string): Reply<JobStopped> =>
  ok({ stopped: desk.stop(job) });

/** One desk for several lines: the one that knows the job answers. */
export const joinDesks = (desks: readonly JobDesk[]): JobDesk => ({
  progress(job) {
    const seen = desks.map((desk) => desk.progress(job));
    return seen.find(({ state }) => state !== 'unknown') ?? unknown;
  },
  found: (job, from) => desks.flatMap((desk) => desk.found(job, from)),
  // Not `some`: an id that was given twice stops both.
  stop: (job) => desks.filter((desk) => desk.stop(job)).length > 0,
});
