/**
 * Shows the page: as a window of its own where a browser can do that, else in the default browser,
 * else not at all. None of it may fail the host: the address stands in the terminal anyway.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { browserPlaces, defaultOpener, hasScreen } from './find-browser.ts';

export interface Shown {
  readonly how: 'window' | 'browser' | 'not';
  /** Closes a window of our own; a tab in the user's browser is the user's. */
  close(): Promise<void>;
}

export interface ShowOptions {
  /** The user closed the window. */
  readonly onClosed: () => void;
  readonly platform?: NodeJS.Platform;
  readonly env?: NodeJS.ProcessEnv;
}

/** What a failing opener takes at most to fail. */
const OPENING = 2_000;
/** A window that ends sooner than this, or with an error, never was one. */
const SETTLED = 4_000;

const notShown: Shown = { how: 'not', close: async () => {} };

/** Resolves once it is known that the program runs, or false if it cannot. */
const started = (child: ChildProcess): Promise<boolean> =>
  new Promise((resolve) => {
    child.once('spawn', () => resolve(true));
    child.once('error', () => resolve(false));
  });

const ended = (child: ChildProcess): Promise<number | null> =>
  new Promise((resolve) => child.once('exit', (code) => resolve(code)));

async function showInDefault(address: string, options: ShowOptions): Promise<Shown> {
  const { platform = process.platform, env = process.env } = options;
  const [command, ...before] = defaultOpener(platform);
  const child = spawn(command, [...before, address], { env, stdio: 'ignore', detached: true });
  if (!(await started(child))) return notShown;
  child.unref();
  // An opener that finds no browser says so at once; one that finds it may stay as long as it.
  const code = await Promise.race([ended(child), setTimeout(OPENING, 0, { ref: false })]);
  return code === 0 ? { how: 'browser', close: async () => {} } : notShown;
}

export async function showPage(address: string, options: ShowOptions): Promise<Shown> {
  const { platform = process.platform, env = process.env, onClosed } = options;
  if (!hasScreen(platform, env)) return notShown;
  const program = browserPlaces(platform, env).find((place) => existsSync(place));
  if (program === undefined) return showInDefault(address, options);

  // A profile of its own makes the window ours: no extension reads the page, closing it is
  // seen, and stopping the host ends it without touching the user's other windows.
  const profile = mkdtempSync(join(tmpdir(), 'lapwright-'));
  const child = spawn(
    program,
    [
      `--app=${address}`,
      `--user-data-dir=${profile}`,
      '--no-first-run',
      '--no-default-browser-check',
      '--disable-sync',
      '--window-size=1360,900',
    ],
    { env, stdio: 'ignore' },
  );
  const exit = ended(child);
  const removeProfile = (): void => {
    try {
      rmSync(profile, { recursive: true, force: true, maxRetries: 3, retryDelay: 100 });
    } catch {
      // The system clears its temporary folder in the end.
    }
  };
  if (!(await started(child))) {
    removeProfile();
    return showInDefault(address, options);
  }

  let closing = false;
  let instead: Promise<Shown> | null = null;
  const since = performance.now();
  void exit.then((code) => {
    removeProfile();
    if (closing) return;
    if (code === 0 && performance.now() - since > SETTLED) onClosed();
    else instead = showInDefault(address, options);
  });
  return {
    how: 'window',
    async close() {
      closing = true;
      if (child.exitCode === null && child.signalCode === null) {
        child.kill();
        await exit;
      }
      await (await instead)?.close();
    },
  };
}
