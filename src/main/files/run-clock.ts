/**
 * How long this program has run, counted in beats: a clock that is set does not change it, and a machine that sleeps
 * adds one beat at most, whatever its system calls time.
 */
export interface RunClock {
  /** Milliseconds. */
  ran(): number;
  close(): void;
}

const BEAT = 5_000;

export function startRunClock(): RunClock {
  let beats = 0;
  const beating = setInterval(() => {
    beats += 1;
  }, BEAT);
  beating.unref();
  return { ran: () => beats * BEAT, close: () => clearInterval(beating) };
}
