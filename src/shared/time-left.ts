/** How long a long request will still take: the estimate, and its words. */

/** Below this a rate says too little, s. */
const SOON = 0.5;
/** The first steps say little about the others: an estimate wants this share of them, or this many s. */
const SHARE = 0.005;
const LONG = 10;

/**
 * Seconds left when the rest goes as fast as what is done; null while that cannot be told.
 * @param done steps done of `total`, at `elapsed` s after the start
 * @param since seconds that have passed since that was so
 */
export function secondsLeft(
  done: number,
  total: number,
  elapsed: number,
  since = 0,
): number | null {
  if (!(done > 0) || !(total >= done) || elapsed < SOON) return null;
  if (done < SHARE * total && elapsed < LONG) return null;
  return Math.max(0, (elapsed * (total - done)) / done - since);
}

/** Rounded so that the words change seldom and promise no more than an estimate can. */
export function timeLeft(seconds: number): string {
  if (seconds < 3) return 'a few seconds left';
  if (seconds < 20) return `about ${Math.ceil(seconds)} s left`;
  if (seconds < 57.5) return `about ${Math.round(seconds / 5) * 5} s left`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 90) return `about ${minutes} min left`;
  return `about ${Math.round(seconds / 3600)} h left`;
}

/** Whole per cent done, 100 only at the end; null while the number of steps is not known. */
export const percentDone = (done: number, total: number): number | null =>
  total > 0 ? Math.min(done < total ? 99 : 100, Math.floor((100 * done) / total)) : null;
