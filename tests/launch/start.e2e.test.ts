/** npm start and the command line on a fresh copy of the project. */
import { spawn } from 'node:child_process';
import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Reply } from '../../src/shared/reply.ts';
import { addressFrom, type RunningHost } from '../e2e/support/host.ts';
import { type Copy, freshCopy, outcome } from './fresh-copy.ts';

const FALLBACK = /^Opening in a browser, not in Electron: .*$/gm;
/** Generous: the machine may be busy. Without a build to make it takes half a second. */
const SECONDS = 60_000;

async function initial(host: RunningHost): Promise<Reply<{ origin: string }>> {
  const response = await fetch(`${host.origin}/ask/project.initial`, {
    method: 'POST',
    headers: {
      origin: host.origin,
      authorization: `Bearer ${host.token}`,
      'content-type': 'application/json',
    },
    body: '{}',
  });
  return (await response.json()) as Reply<{ origin: string }>;
}

describe('npm start', () => {
  let copy: Copy;
  beforeAll(() => {
    copy = freshCopy();
  });
  afterAll(() => copy.remove());

  /** Starts, waits for the address, asks for the project, stops; what was said meanwhile. */
  async function start(args: readonly string[] = [], cwd = copy.root) {
    const since = Date.now();
    const child = copy.run('start.mjs', args, { cwd });
    const ended = outcome(child);
    const host = await addressFrom(child);
    const took = Date.now() - since;
    const project = await initial(host);
    await host.stop();
    return { ...(await ended), took, project };
  }

  // Elsewhere than on Linux a start without a display would still open a browser.
  const quiet = process.platform === 'linux' ? [] : ['--no-open'];

  it('installs, builds, says in one line why not Electron, and prints the address', async () => {
    const first = await start(quiet);
    expect(copy.npmCalls()).toEqual(['ci --include=dev --no-audit --no-fund --loglevel=error']);
    expect(first.progress).toContain('Building');
    if (quiet.length === 0) {
      expect(first.progress.match(FALLBACK)).toHaveLength(1);
      expect(first.out).toContain('No browser was found to open it in');
    }
    expect(first.took).toBeLessThan(SECONDS);
    expect(first.project).toMatchObject({ ok: true, value: { origin: 'Curlew (demonstration)' } });
    if (process.platform !== 'win32') expect(first.code).toBe(0);
  });

  it('does neither again', async () => {
    const again = await start(['--no-open']);
    expect(copy.npmCalls()).toHaveLength(1);
    expect(again.progress).toBe('');
    expect(again.out).toMatch(/^Lapwright is open at http:\/\/127\.0\.0\.1:\d+\/#token=\S+\n/);
  });

  it('builds again when a source has changed', async () => {
    appendFileSync(join(copy.root, 'src', 'main', 'policy.ts'), '\n// changed\n');
    expect((await start(['--no-open'])).progress).toContain('Building');
    expect((await start(['--no-open'])).progress).not.toContain('Building');
  });

  it('opens a file named from where the user stands, and says when it cannot', async () => {
    const folder = join(copy.root, 'docs', 'a folder');
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'none.json'), '{}');
    const demo = join('..', '..', 'src', 'main', 'demo', 'curlew.lapwright.json');
    expect((await start(['--no-open', demo], folder)).project).toMatchObject({
      ok: true,
      value: { origin: 'curlew.lapwright.json' },
    });
    expect((await start(['none.json', '--no-open'], folder)).project).toMatchObject({
      ok: false,
      error: { message: expect.stringContaining('none.json') },
    });
    expect((await start(['missing.json', '--no-open'], folder)).project).toMatchObject({
      ok: false,
      error: { message: 'missing.json: there is no such file.' },
    });
  });

  it.each([[['--no-such-option']], [['one.json', 'two.json']]])(
    'explains itself when called wrongly: %s',
    async (args) => {
      const { out, progress, code } = await outcome(copy.run('start.mjs', args));
      expect(out).toBe('');
      expect(progress).toContain('npm start -- [FILE]');
      expect(code).toBe(2);
    },
  );

  it('says when the packages cannot be installed, and stops', async () => {
    const broken = freshCopy();
    try {
      const npm = join(broken.root, 'npm-that-fails.cjs');
      writeFileSync(npm, 'console.error("no network"); process.exit(1);');
      const child = broken.run('start.mjs', [], { env: { npm_execpath: npm } });
      const { progress, code } = await outcome(child);
      expect(progress).toContain('no network');
      expect(progress).toContain('npm ci failed');
      expect(code).toBe(1);
    } finally {
      broken.remove();
    }
  });

  // On Windows nothing tells a program that its parent is gone.
  it.skipIf(process.platform === 'win32')('stops with the shell that npm ran it in', async () => {
    const script = join(copy.root, 'src', 'launch', 'start.mjs');
    const shell = spawn('sh', ['-c', '"$0" "$1" --no-open; true', process.execPath, script], {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...copy.env, npm_lifecycle_event: 'start' },
    });
    const host = await addressFrom(shell);
    expect((await fetch(host.origin)).status).toBe(200);
    shell.kill('SIGKILL');
    await vi.waitFor(() => expect(fetch(host.origin)).rejects.toThrow(), 10_000);
  });

  it('runs the command line with nothing but its own words on the output', async () => {
    const { out, progress, code } = await outcome(copy.run('lapwright.mjs', ['--help']));
    expect(out).not.toContain('Building');
    expect(out.length).toBeGreaterThan(0);
    expect(progress).toBe('');
    expect(code).toBe(0);
  });
});
