/** Where the text goes. Writing is asynchronous on a pipe: nothing ends before it is out. */

export interface Io {
  /** Folder that relative paths start from. */
  readonly cwd: string;
  readonly out?: (text: string) => void;
  readonly err?: (text: string) => void;
  /** Whether a person sees `out` on a screen. */
  readonly isTTY?: boolean;
  /** Width of that screen in characters. */
  readonly columns?: number;
}

export interface Terminal {
  readonly cwd: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly colour: boolean;
  readonly width: number;
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
const colourWanted = (): boolean => !process.env.NO_COLOR && process.env.TERM !== 'dumb';

export function makeTerminal(io: Io): Terminal {
  const pending: Promise<Failed>[] = [];
  const isTTY = io.isTTY ?? (io.out === undefined && process.stdout.isTTY === true);
  const columns = io.columns ?? (isTTY ? process.stdout.columns : undefined) ?? WIDEST;
  return {
    cwd: io.cwd,
    out: io.out ?? writer(process.stdout, pending),
    err: io.err ?? writer(process.stderr, pending),
    colour: isTTY && colourWanted(),
    width: Math.min(WIDEST, Math.max(NARROWEST, columns)),
    async flushed() {
      const failed = (await Promise.all(pending)).find((error) => error !== null);
      return failed?.message ?? null;
    },
  };
}
