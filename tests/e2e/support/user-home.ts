/** The user's own folder, for the host alone: the browser is the machine's own. */
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import { root } from '../../../src/launch/root.mjs';
import { browser } from './browser.ts';

export const home = join(root, 'node_modules/.cache/lapwright/home');
export const frames = join(home, 'frames');
const owns = ['HOME', 'USERPROFILE'] as const;

/** Empty for each test, but for the folders `frames` and `music`. */
export function useHome(): void {
  const before = owns.map((name) => process.env[name]);
  beforeEach(async () => {
    await browser();
    rmSync(home, { recursive: true, force: true });
    mkdirSync(join(home, 'music'), { recursive: true });
    mkdirSync(frames);
    for (const name of owns) process.env[name] = home;
  });
  afterEach(() => {
    for (const [i, name] of owns.entries()) {
      if (before[i] === undefined) delete process.env[name];
      else process.env[name] = before[i];
    }
  });
}
