/** How the built host shows its page, with programs that stand for browsers. */
import { spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { addressFrom } from '../e2e/support/host.ts';

// Only there are browsers found along the path, where a test can put its own.
describe.skipIf(process.platform !== 'linux')('the built host', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  /** A program that notes its arguments and its number, and then does as the code says. */
  const program = (name: string, code: string): void => {
    const notes = JSON.stringify(join(folder, `${name}.json`));
    const note = `require('node:fs').writeFileSync(${notes}, JSON.stringify({ args: process.argv.slice(2), pid: process.pid }));`;
    writeFileSync(join(folder, name), `#!${process.execPath}\n${note}\n${code}\n`);
    chmodSync(join(folder, name), 0o755);
  };
  const noted = (name: string): Promise<{ args: string[]; pid: number }> =>
    vi.waitFor(() => JSON.parse(readFileSync(join(folder, `${name}.json`), 'utf8')), 10_000);
  const start = (env: NodeJS.ProcessEnv = {}) =>
    spawn(process.execPath, [join(root, 'out', 'main', 'host.js')], {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, PATH: folder, DISPLAY: ':0', ...env },
    });
  const isAlive = (pid: number): boolean => {
    try {
      return process.kill(pid, 0);
    } catch {
      return false;
    }
  };

  it('opens a window of its own and leaves nothing behind', async () => {
    program('chromium', 'setInterval(() => {}, 1000);');
    const host = await addressFrom(start());
    const { args, pid } = await noted('chromium');
    expect(args[0]).toBe(`--app=${host.address}`);
    const profile = args[1]?.replace('--user-data-dir=', '') ?? '';
    expect(existsSync(profile)).toBe(true);
    await host.stop();
    expect(host.process.exitCode).toBe(0);
    expect(isAlive(pid)).toBe(false);
    expect(existsSync(profile)).toBe(false);
  });

  it('stops when its window is closed', async () => {
    program('google-chrome', 'setTimeout(() => {}, 5000);');
    const host = await addressFrom(start());
    await vi.waitFor(() => expect(host.process.exitCode).toBe(0), 20_000);
  });

  it('takes the default browser when no window can be opened', async () => {
    program('chromium', 'process.exit(1);');
    program('xdg-open', '');
    const host = await addressFrom(start());
    expect((await noted('xdg-open')).args).toEqual([host.address]);
    expect((await fetch(host.origin)).status).toBe(200);
    await host.stop();
  });

  it('takes the default browser when there is none that opens windows', async () => {
    program('xdg-open', '');
    const host = await addressFrom(start());
    expect((await noted('xdg-open')).args).toEqual([host.address]);
    await host.stop();
  });

  it.each([
    ['there is no browser at all', {}, null],
    ['the opener finds none', {}, 'process.exit(3);'],
    ['there is no screen', { DISPLAY: '', WAYLAND_DISPLAY: '' }, ''],
  ])('only prints its address when %s', async (_why, env, opener) => {
    if (opener !== null) program('xdg-open', opener);
    const child = start(env);
    // From the start: the sentence may come together with the address.
    let out = '';
    child.stdout.on('data', (part) => {
      out += part;
    });
    const host = await addressFrom(child);
    const enough = 'No browser was found to open it in: copy the address.';
    await vi.waitFor(() => expect(out).toContain(enough), 10_000);
    expect((await fetch(host.origin)).status).toBe(200);
    await host.stop();
  });
});
