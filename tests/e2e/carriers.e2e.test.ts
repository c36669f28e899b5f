/** The built loopback host and its page, as a user starts them. */
import { mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { RequestName } from '../../src/shared/contract.ts';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { Opened, SweepReport } from '../../src/shared/reports.ts';
import type { SavedFile } from '../../src/shared/reports-files.ts';
import { describeInBrowser } from './support/browser.ts';
import { type RunningHost, startHost } from './support/host.ts';
import { type OpenedApp, openApp } from './support/open-app.ts';

const place = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
afterAll(() => rmSync(place, { recursive: true }));

describe('the built host', () => {
  let host: RunningHost;
  let project: Project;

  const ask = async <T>(name: RequestName, input: unknown, page?: string): Promise<Reply<T>> => {
    const response = await fetch(`${host.origin}/ask/${name}`, {
      method: 'POST',
      headers: {
        origin: host.origin,
        authorization: `Bearer ${host.token}`,
        'content-type': 'application/json',
        ...(page === undefined ? {} : { 'x-lapwright-page': page }),
      },
      body: JSON.stringify(input),
    });
    return (await response.json()) as Reply<T>;
  };

  beforeAll(async () => {
    host = await startHost();
    const demo = await ask<Opened>('project.demo', {});
    if (!demo.ok) throw new Error(demo.error.message);
    project = demo.value.document;
  });
  afterAll(() => host.stop());

  it('has a token of 32 bytes, another one for each run', async () => {
    expect(Buffer.from(host.token, 'base64url')).toHaveLength(32);
    const other = await startHost();
    expect(other.token).not.toBe(host.token);
    await other.stop();
  });

  it('saves in the folders that its start names, and tells where its file stands', async () => {
    const [ours, theirs] = ['ours', 'theirs'].map((name) => {
      mkdirSync(join(place, name));
      return realpathSync.native(join(place, name));
    }) as [string, string];
    const file = join(ours, 'kestrel.lapwright.json');
    writeFileSync(file, JSON.stringify({ ...project, name: 'Kestrel' }));
    const before = host;
    const other = await startHost(file, theirs);
    host = other;
    const initial = await ask<Opened>('project.initial', {});
    const stamp = initial.ok ? initial.value.file!.stamp : '';
    expect(initial).toMatchObject({ ok: true, value: { file: { path: file, folder: ours } } });
    const save = (path: string, expect: string | null): Promise<Reply<SavedFile>> =>
      ask('file.save', { path, document: { ...project, name: 'Saved' }, expect });
    const copy = join(theirs, 'copy.lapwright.json');
    const replies = [
      await save(file, stamp),
      await save(copy, null),
      await save(join(place, 'outside.lapwright.json'), null),
    ];
    await other.stop();
    host = before;
    expect(replies.map(({ ok }) => ok)).toEqual([true, true, false]);
    expect(replies[0]).toMatchObject({ value: { backup: 'kestrel.lapwright.json.previous' } });
    expect(readFileSync(file)).toEqual(readFileSync(copy));
    expect(JSON.parse(readFileSync(`${file}.previous`, 'utf8')).name).toBe('Kestrel');
  });

  /** Of the joint that is quickest to compute: what is tested here is who waits for whom. */
  const sweep = (points: number, page?: string): Promise<Reply<SweepReport>> =>
    ask('joint.sweep', { document: project, jointId: 'landing-leg', points }, page);

  it('answers at once while it sweeps', async () => {
    let swept = false;
    const sweeping = sweep(100).then((reply) => {
      swept = true;
      return reply;
    });
    for (let i = 0; i < 5; i += 1) {
      expect(await ask('app.about', {})).toMatchObject({
        ok: true,
        value: { carrier: 'loopback' },
      });
    }
    expect(swept).toBe(false);
    expect(await sweeping).toMatchObject({ ok: true, value: { points: { length: 100 } } });
  });

  it('lets the latest sweep of a page win', async () => {
    const [older, latest] = await Promise.all([sweep(500, 'p1'), sweep(5, 'p1')]);
    expect(older).toMatchObject({ ok: false, error: { code: 'not-computable' } });
    expect(latest).toMatchObject({ ok: true, value: { points: { length: 5 } } });
  });

  it('checks a project in a worker too', async () => {
    expect(await ask('project.check', { document: project })).toMatchObject({
      ok: true,
      value: { joints: { length: project.joints.length } },
    });
  });

  it.skipIf(process.platform === 'win32').each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
    'stops cleanly at %s, even while it computes',
    async (signal) => {
      const other = await startHost();
      const before = host;
      host = other;
      const cut = sweep(500).catch(() => 'cut off');
      host = before;
      await vi.waitFor(() => fetch(other.origin), 5_000);
      other.process.kill(signal);
      await vi.waitFor(() => expect(other.process.exitCode).toBe(0), 5_000);
      await cut;
      await expect(fetch(other.origin)).rejects.toThrow();
    },
  );
});

describeInBrowser('the page in a browser', () => {
  let app: OpenedApp | undefined;
  afterEach(async () => {
    await app?.close();
    app = undefined;
  });

  it('opens the demonstration project without a complaint', async () => {
    app = await openApp();
    await vi.waitFor(
      async () => expect(await app!.page.title()).toBe('Curlew · Lapwright'),
      10_000,
    );
    expect(app.problems).toEqual([]);
  });

  it('takes the token out of the address bar and still answers after a reload', async () => {
    app = await openApp();
    const { page, host } = app;
    await vi.waitFor(async () => expect(await page.title()).toBe('Curlew · Lapwright'), 10_000);
    expect(page.url()).toBe(`${host.origin}/`);
    await page.reload();
    await vi.waitFor(async () => expect(await page.title()).toBe('Curlew · Lapwright'), 10_000);
  });

  it('opens the file that it was started with', async () => {
    const file = join(place, 'kestrel.lapwright.json');
    const demo = await readDemo();
    writeFileSync(file, JSON.stringify({ ...demo, name: 'Kestrel' }));
    app = await openApp({ file });
    await vi.waitFor(
      async () => expect(await app!.page.title()).toBe('Kestrel · Lapwright'),
      10_000,
    );
  });

  it.each([
    ['missing.json', 'there is no such file', null],
    ['empty.json', 'empty', ''],
    ['broken.json', 'not JSON', '{"name": '],
  ])('shows why it cannot open %s', async (name, message, content) => {
    const file = join(place, name);
    if (content !== null) writeFileSync(file, content);
    app = await openApp({ file });
    const alert = app.page.getByRole('alert');
    await alert.waitFor();
    expect(await alert.textContent()).toContain(message);
  });

  it('stays a page of this host only: a foreign page cannot ask or frame it', async () => {
    app = await openApp();
    const { page, host } = app;
    await page.route('http://elsewhere.test/', (route) =>
      route.fulfill({ contentType: 'text/html', body: '<h1>Elsewhere</h1>' }),
    );
    await page.goto('http://elsewhere.test/');
    const asked = await page.evaluate(
      async ([origin, token]) => {
        try {
          const response = await fetch(`${origin}/ask/app.about`, {
            method: 'POST',
            headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
            body: '{}',
          });
          return response.status;
        } catch {
          return 'blocked';
        }
      },
      [host.origin, host.token] as const,
    );
    expect(asked).toBe('blocked');
  });
});

async function readDemo(): Promise<Project> {
  const file = '../../src/main/demo/curlew.lapwright.json';
  return (await import(file)).default;
}
