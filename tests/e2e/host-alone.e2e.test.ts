/** The built loopback host by itself: where it listens, when it stops, what it leaves behind. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { browser, describeInBrowser } from './support/browser.ts';
import { addressFrom, type RunningHost } from './support/host.ts';

let host: RunningHost;
const start = async (...args: string[]): Promise<RunningHost> => {
  const program = join(root, 'out', 'main', 'host.js');
  const child = spawn(process.execPath, [program, '--no-open', ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  host = await addressFrom(child);
  return host;
};
afterEach(() => host.stop());

const ask = (name: string, input: unknown): Promise<Response> =>
  fetch(`${host.origin}/ask/${name}`, {
    method: 'POST',
    headers: {
      origin: host.origin,
      authorization: `Bearer ${host.token}`,
      'content-type': 'application/json',
    },
    body: JSON.stringify(input),
  });

/** Processes that this one has started, threads apart. */
const children = (pid: number): string[] =>
  readdirSync(`/proc/${pid}/task`).flatMap((task) =>
    readFileSync(`/proc/${pid}/task/${task}/children`, 'utf8').split(' ').filter(Boolean),
  );
const sweep = async (jointId = 'boom-root', points = 500): Promise<unknown> => {
  const demo = (await (await ask('project.demo', {})).json()) as { value: { document: unknown } };
  const { document } = demo.value;
  return ask('joint.sweep', { document, jointId, points }).catch(() => 'cut off');
};

describe('the built host', () => {
  it('listens at 127.0.0.1 and at no other address of this machine', async () => {
    const { origin } = await start();
    const port = Number(new URL(origin).port);
    const opens = (address: string): Promise<boolean> =>
      new Promise((resolve) => {
        const socket = connect({ port, host: address, timeout: 5_000 });
        const answer = (opened: boolean): void => {
          socket.destroy();
          resolve(opened);
        };
        socket.on('connect', () => answer(true));
        for (const event of ['error', 'timeout']) socket.on(event, () => answer(false));
      });
    expect(await opens('127.0.0.1')).toBe(true);
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .map(({ address, family, scopeid }) =>
        family === 'IPv6' && scopeid ? `${address}%${scopeid}` : address,
      )
      .filter((address) => address !== '127.0.0.1');
    for (const address of [...others, '127.0.0.2', '::1']) {
      expect([address, await opens(address)]).toEqual([address, false]);
    }
  });

  it('stops once no page has asked for long, worker and all', async () => {
    const { process: child } = await start('--idle=3');
    await sweep('landing-leg', 5);
    if (child.exitCode === null) await once(child, 'exit');
    expect(child.exitCode).toBe(0);
  });

  it.skipIf(process.platform === 'win32')(
    'goes on after a sleep that is longer than it waits for pages',
    async () => {
      const { process: child } = await start('--idle=2');
      await ask('app.about', {});
      child.kill('SIGSTOP');
      await new Promise((resolve) => setTimeout(resolve, 3_000));
      child.kill('SIGCONT');
      await new Promise((resolve) => setTimeout(resolve, 200));
      expect((await ask('app.about', {})).status).toBe(200);
      expect(child.exitCode).toBeNull();
    },
  );

  it('waits as long as it takes for its first page', async () => {
    const { process: child, origin } = await start('--idle=0.1');
    // Not asked: looked at, as a browser does that fetches the page.
    for (let i = 0; i < 10; i++) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      expect((await fetch(origin)).status).toBe(200);
    }
    expect(child.exitCode).toBeNull();
  });

  it.skipIf(process.platform !== 'linux').each(['SIGTERM', 'SIGKILL'] as const)(
    'leaves no process behind at %s, though it computes',
    async (signal) => {
      const { process: child } = await start();
      const cut = sweep();
      await vi.waitFor(() => ask('app.about', {}), 10_000);
      // It computes in threads of its own: there is no other process that could stay.
      expect(children(child.pid!)).toEqual([]);
      const gone = once(child, 'exit');
      child.kill(signal);
      await gone;
      await cut;
      expect(existsSync(`/proc/${child.pid}`)).toBe(false);
      await expect(fetch(host.origin)).rejects.toThrow();
    },
  );
});

describeInBrowser('the built host with a tab of a browser', () => {
  it('stops once the tab is closed for good', async () => {
    const { address, process: child } = await start('--idle=3');
    const context = await (await browser()).newContext();
    const page = await context.newPage();
    await page.goto(address);
    await vi.waitFor(async () => expect(await page.title()).toBe('Curlew · Lapwright'), 60_000);
    await context.close();
    if (child.exitCode === null) await once(child, 'exit');
    expect(child.exitCode).toBe(0);
  });
});
