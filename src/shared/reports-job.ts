/** How far a long request is, what it has found so far, and whether it was stopped. */
import type { JointSummary } from './reports.ts';

export interface JobProgress {
  /** `unknown`: not asked yet, answered already, or another page's. */
  readonly state: 'waiting' | 'running' | 'unknown';
  /** Steps done of all there are; a total of 0 while their number is not known yet. */
  readonly done: number;
  readonly total: number;
  /** What is being computed, such as the name of a joint; empty when there is no more to say. */
  readonly what: string;
  /** Seconds since it began to run; 0 while it waits. */
  readonly elapsed: number;
  /** Seconds that it will still take; null until that can be told. */
  readonly left: number | null;
}

export interface JobFound {
  /** Joints that are judged, in the order in which they were; empty once the answer itself has come. */
  readonly joints: readonly JointSummary[];
}

export interface JobStopped {
  /** False when there was nothing to stop. */
  readonly stopped: boolean;
}
