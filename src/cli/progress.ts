/** How far a long request is: one line on the screen that is gone when it is done. */
import type { TellProgress } from '../main/jobs/progress.ts';
import { percentDone, secondsLeft, timeLeft } from '../shared/time-left.ts';
import { printable } from './figures.ts';

/** Where the line is drawn: a terminal that a person looks at. */
export interface ScreenLine {
  write(text: string): void;
  /** Width in characters, as it is now. */
  columns(): number;
}

export interface ProgressLine {
  readonly show: TellProgress;
  /** Takes the line away. */
  end(): void;
}

/** Milliseconds before anything is drawn: what is soon done needs no bar. */
const PATIENCE = 400;
/** Milliseconds between two drawings. */
const PACE = 100;
const BAR = 24;

/** Back to the start of the line, and clear it. */
const CLEAR = '\r\u001B[K';

// Scripts and pictures that a terminal draws two characters wide; a few narrow ones among them only
// end the line a little early.
const wide =
  /[\u1100-\u11FF\u2E80-\uD7FF\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFFEF]|[\u{10000}-\u{10FFFF}]/u;

/** A line that breaks could not be cleared: it ends before the last column. */
function cut(text: string, columns: number): string {
  let width = 0;
  let fits = '';
  for (const letter of text) {
    width += wide.test(letter) ? 2 : 1;
    if (width >= columns) return fits;
    fits += letter;
  }
  return fits;
}

/** One line such as `██████░░░░  42 %  about 20 s left  Boom root`. */
export function progressText(
  done: number,
  total: number,
  what: string,
  seconds: number | null,
): string {
  const percent = percentDone(done, total);
  const full = Math.round((BAR * (percent ?? 0)) / 100);
  const bar = '█'.repeat(full) + '░'.repeat(BAR - full);
  const share = percent === null ? '     ' : `${percent} %`.padStart(5);
  const left = seconds === null ? '' : timeLeft(seconds);
  return [bar, share, left, printable(what)].filter((part) => part !== '').join('  ');
}

/** @param screen null when nobody looks: then nothing is ever drawn */
export function progressLine(
  screen: ScreenLine | null,
  now: () => number = () => performance.now(),
): ProgressLine {
  if (!screen) return { show: () => undefined, end: () => undefined };
  const begun = now();
  let drawn = '';
  let last = begun + PATIENCE - PACE;
  return {
    show(done, total, what = '') {
      const time = now();
      if (time - last < PACE) return;
      last = time;
      const seconds = secondsLeft(done, total, (time - begun) / 1000);
      const text = cut(progressText(done, total, what, seconds), screen.columns());
      if (text !== drawn) screen.write(CLEAR + text);
      drawn = text;
    },
    end() {
      if (drawn !== '') screen.write(CLEAR);
      drawn = '';
    },
  };
}
