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
  /** Resolves when all that was written has left the program, or nobody reads it any more. */
  flushed(): Promise<void>;
}

const NARROWEST = 80;
const WIDEST = 100;

/** A writer to a stream that a reader such as `head` may close early: that is not an error. */
function quietWriter(stream: NodeJS.WriteStream, pending: Set<Promise<void>>) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') process.exitCode = 2;
  });
  return (text: string): void => {
    const written = new Promise<void>((done) => stream.write(text, () => done()));
    pending.add(written);
    void written.then(() => pending.delete(written));
  };
}

/** https://no-color.org: any value that is not empty turns colour off. */
const colourWanted = (): boolean => !process.env.NO_COLOR && process.env.TERM !== 'dumb';

export function makeTerminal(io: Io): Terminal {
  const pending = new Set<Promise<void>>();
  const isTTY = io.isTTY ?? (io.out === undefined && process.stdout.isTTY === true);
  const columns = io.columns ?? (isTTY ? process.stdout.columns : undefined) ?? WIDEST;
  return {
    cwd: io.cwd,
    out: io.out ?? quietWriter(process.stdout, pending),
    err: io.err ?? quietWriter(process.stderr, pending),
    colour: isTTY && colourWanted(),
    width: Math.min(WIDEST, Math.max(NARROWEST, columns)),
    async flushed() {
      await Promise.all(pending);
    },
  };
}
