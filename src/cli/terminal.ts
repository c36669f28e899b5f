/** Where the text goes. Writing is asynchronous on a pipe: nothing ends before it is out. */
import type { ScreenLine } from './progress.ts';

export interface Io {
  /** Folder that relative paths start from. */
  readonly cwd: string;
  readonly out?: (text: string) => void;
  readonly err?: (text: string) => void;
  /** Whether a person sees `out` on a screen. */
  readonly isTTY?: boolean;
  /** Width of that screen in characters. */
  readonly columns?: number;
  /** Whether a person sees `err` on a screen as wide as `columns`. */
  readonly errIsTTY?: boolean;
  /** The built worker's file; null computes in this thread. Beside the program when left out. */
  readonly worker?: string | null;
  /** Listens for Ctrl+C until what it gives back is called. */
  readonly onInterrupt?: (stop: () => void) => () => void;
}

export interface Terminal {
  readonly cwd: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly colour: boolean;
  readonly width: number;
  /** Where progress can be drawn; null when nobody sees it. */
  readonly screen: ScreenLine | null;
  /**
   * Resolves when all that was written has left the program or nobody reads it any more; with the
   * reason when it could not be written.
   */
  flushed(): Promise<string | null>;
}

const NARROWEST = 80;
const WIDEST = 100;

type Failed = NodeJS.ErrnoException | null;

/** A writer to a stream that a reader such as `head` may close early: that is no failure. */
function writer(stream: NodeJS.WriteStream, pending: Promise<Failed>[]) {
  // What went wrong is told to each write below; without a listener it would end the program.
  stream.on('error', () => undefined);
  return (text: string): void => {
    const written = new Promise<Failed>((done) =>
      stream.write(text, (error: Failed | undefined) =>
        done(error && error.code !== 'EPIPE' ? error : null),
      ),
    );
    pending.push(written);
  };
}

/** https://no-color.org: any value that is not empty turns colour off. */
const colourWanted = (): boolean => !process.env.NO_COLOR && !isDumb();

/** Such a terminal does not clear a line: nothing can be drawn on it twice. */
const isDumb = (): boolean => process.env.TERM === 'dumb';

export function makeTerminal(io: Io): Terminal {
  const pending: Promise<Failed>[] = [];
  const isTTY = io.isTTY ?? (io.out === undefined && process.stdout.isTTY === true);
  const err = io.err ?? writer(process.stderr, pending);
  const errIsTTY = io.errIsTTY ?? (io.err === undefined && process.stderr.isTTY === true);
  const errColumns = (): number => io.columns ?? process.stderr.columns ?? NARROWEST;
  const columns = io.columns ?? (isTTY ? process.stdout.columns : undefined) ?? WIDEST;
  return {
    cwd: io.cwd,
    out: io.out ?? writer(process.stdout, pending),
    err,
    colour: isTTY && colourWanted(),
    width: Math.min(WIDEST, Math.max(NARROWEST, columns)),
    screen: errIsTTY && !isDumb() ? { write: err, columns: errColumns } : null,
    async flushed() {
      const failed = (await Promise.all(pending)).find((error) => error !== null);
      return failed?.message ?? null;
    },
  };
}
