/** The one line at the foot of the window that tells what was just done, and goes away by itself. */
import { type Accessor, createSignal, onCleanup } from 'solid-js';

export interface Said {
  readonly words: Accessor<string>;
  /** True while it tells of something that is not as one would think. */
  readonly warns: Accessor<boolean>;
  tell(words: string): void;
  /** Stays longer: it was not asked for. */
  warn(words: string): void;
  clear(): void;
}

/** Milliseconds for which it is said. */
const TOLD = 6000;
const WARNED = 12_000;

export function createSaid(): Said {
  const [words, setWords] = createSignal('');
  const [warns, setWarns] = createSignal(false);
  let timer: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => clearTimeout(timer));
  const clear = (): void => {
    clearTimeout(timer);
    setWords('');
  };
  const say = (next: string, isWarning: boolean): void => {
    clear();
    setWarns(isWarning);
    setWords(next);
    timer = setTimeout(clear, isWarning ? WARNED : TOLD);
  };
  return {
    words,
    warns,
    tell: (next) => say(next, false),
    warn: (next) => say(next, true),
    clear,
  };
}
