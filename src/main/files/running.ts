/**
 * Which process of ours is still alive. A number of a process is given out again once it is gone, so each
 * also has a file with a token of its own, and touches it as long as it runs. After a sleep, or where the clock was
 * set, the files of all seem untouched for long, or touched in the future: they are given time to touch them.
 */
import { randomBytes } from 'node:crypto';
import { mkdirSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Running {
  readonly pid: number;
  readonly token: string;
}

export interface RunningMark {
  /** Of this process; from now on others see that it is alive. */
  own(): Running;
  isOwn(running: Running): boolean;
  /** Whether it is this process, or another one that still runs. */
  isAlive(running: Running): boolean;
  close(): void;
}

/** Milliseconds between two touches, and without one until a process counts as gone. */
const BEAT = 5_000;
const SILENT = 60_000;
/** Beats after a jump of the time in which the others may not have touched their files again. */
const GRACE = 2;
/** A file that nobody has touched for so long is removed. */
const FORGOTTEN = 24 * 60 * 60 * 1000;

const isToken = (text: string): boolean => /^[0-9a-f]{24}$/.test(text);

function exists(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Another user's process is one too.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

export function markRunning(
  data: string,
  now: () => Date = () => new Date(),
  pid: number = process.pid,
): RunningMark {
  const folder = join(data, 'running');
  const token = randomBytes(12).toString('hex');
  let owning = false;
  /** Time of the last beat, and beats that are left of a grace. */
  let last = now().getTime();
  let grace = 0;

  /** Milliseconds since the last touch; infinite where there is no file. */
  const silence = (file: string): number => {
    const info = statSync(join(folder, file), { throwIfNoEntry: false });
    return info ? now().getTime() - info.mtimeMs : Number.POSITIVE_INFINITY;
  };
  /** It went on by more than beats take, or back. */
  const jumped = (): boolean => Math.abs(now().getTime() - last) > SILENT / 2;
  const touch = (): void => {
    const path = join(folder, token);
    try {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      writeFileSync(path, `${pid}\n`, { mode: 0o600 });
      const time = now();
      utimesSync(path, time, time);
    } catch {
      // Others then take what is kept here for left behind, and offer it: nothing is lost by that.
    }
  };
  const tidy = (): void => {
    try {
      for (const name of readdirSync(folder)) {
        if (isToken(name) && name !== token && silence(name) > FORGOTTEN) {
          rmSync(join(folder, name), { force: true });
        }
      }
    } catch {
      // There is nothing to tidy, or another process was quicker.
    }
  };

  const beating = setInterval(() => {
    grace = jumped() ? GRACE : Math.max(0, grace - 1);
    last = now().getTime();
    if (owning) touch();
  }, BEAT);
  beating.unref();

  return {
    own() {
      if (!owning) {
        owning = true;
        touch();
        tidy();
      }
      return { pid, token };
    },
    isOwn: (running) => running.token === token,
    isAlive(running) {
      if (running.token === token) return true;
      if (!isToken(running.token) || !exists(running.pid)) return false;
      const silent = Math.abs(silence(running.token));
      return silent < SILENT || (silent < Number.POSITIVE_INFINITY && (grace > 0 || jumped()));
    },
    close() {
      clearInterval(beating);
      if (owning) rmSync(join(folder, token), { force: true });
      owning = false;
    },
  };
}
