/**
 * Whether any page is still there. A tab of the user's own browser says nothing when it is closed, so a host
 * without a window of its own stops once no page has asked anything for long. Time is counted in looks, not by the
 * clock: a machine that slept, or whose clock was set, has not been silent for longer than it ran.
 */

/** Milliseconds; a page gives a sign twice a minute, one in the background every minute or two. */
export const IDLE = 15 * 60_000;
/** Looks until it counts. */
const LOOKS = 30;

export interface WatchedPages {
  /** A page asks; call what is given back once it has its answer. */
  asked(): () => void;
  /** Nothing is waited for any more. */
  end(): void;
}

/** @param gone called once; never before the first page has asked */
export function watchPages(idle: number, gone: () => void): WatchedPages {
  let silent: number | null = null;
  let waiting = 0;
  const timer = setInterval(() => {
    if (silent === null || waiting > 0) return;
    silent += 1;
    if (silent < LOOKS) return;
    clearInterval(timer);
    gone();
  }, idle / LOOKS);
  timer.unref();
  return {
    asked() {
      silent = 0;
      waiting += 1;
      return () => {
        silent = 0;
        waiting -= 1;
      };
    },
    end: () => clearInterval(timer),
  };
}
