/** What the handler of a long request tells while it works, and to whom. */
import type { JointSummary } from '../../shared/reports.ts';

/** @param what in plain words, such as the name of a joint */
export type TellProgress = (done: number, total: number, what?: string) => void;

/** Told of each joint when it is judged. */
export type TellFound = (joint: JointSummary) => void;

/** One of several equal shares of the work, for a request that threads may divide. */
export interface Share {
  readonly part: number;
  readonly of: number;
}

/** Second argument of the handler of a long request. */
export interface JobContext {
  /** To be called at every step, however short: whoever passes it on sees that it is not too often. */
  readonly progress: TellProgress;
  /** Left out where nobody wants to see a part of the answer before all of it. */
  readonly found?: TellFound | undefined;
  /** All of the work when left out. */
  readonly share?: Share | undefined;
}

/** Nobody looks on: for a handler that is called directly. */
export const unwatched: JobContext = { progress: () => undefined };

export interface Tick {
  readonly done: number;
  readonly total: number;
  readonly what: string;
}

/** Milliseconds between two messages about progress. */
const PACE = 100;

export interface Teller {
  readonly tell: TellProgress;
  /** Sends the last step if it was held back. */
  flush(): void;
}

/** Passes progress on at once, then at most ten times a second. */
export function makeTeller(
  send: (tick: Tick) => void,
  now: () => number = () => performance.now(),
): Teller {
  let last = Number.NEGATIVE_INFINITY;
  let held: Tick | null = null;
  return {
    tell(done, total, what = '') {
      const time = now();
      held = { done, total, what };
      if (time - last < PACE) return;
      last = time;
      send(held);
      held = null;
    },
    flush() {
      if (held) send(held);
      held = null;
    },
  };
}
