/** Files through the loopback host: what a page may reach, and what it may not, whatever it sends. */
import { mkdirSync, realpathSync, symlinkSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { createHost } from '../../src/main/loopback/server.ts';
import type { RequestName } from '../../src/shared/contract.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type {
  FilePlaces,
  FolderView,
  OpenedFile,
  SavedFile,
} from '../../src/shared/reports-files.ts';
import {
  content,
  demo,
  filesAt,
  freshPlaces,
  named,
  names,
  put,
  text,
} from '../main/files/places.ts';
import { send } from './send.ts';

const TOKEN = 'a-token-for-these-tests';
const places = freshPlaces();
let server: Server;
let port: number;

async function start(): Promise<void> {
  const files = filesAt(places.data);
  const ask = createAsk({ carrier: 'loopback', files });
  server = createHost({
    ask: (name, input, caller) => ask(name, input, { client: caller?.client }),
    files: new Map(),
    token: TOKEN,
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  port = (server.address() as AddressInfo).port;
}
beforeEach(start);
afterEach(() => {
  server.closeAllConnections();
  server.close();
});

async function ask<T>(name: RequestName, input: unknown, page = 'page-a'): Promise<Reply<T>> {
  const answer = await send(port, {
    method: 'POST',
    path: `/ask/${name}`,
    headers: {
      origin: `http://127.0.0.1:${port}`,
      authorization: `Bearer ${TOKEN}`,
      'content-type': 'application/json',
      'x-lapwright-page': page,
    },
    body: JSON.stringify(input),
  });
  expect(answer.status).toBe(200);
  return JSON.parse(answer.body) as Reply<T>;
}
async function told<T>(name: RequestName, input: unknown, page?: string): Promise<T> {
  const reply = await ask<T>(name, input, page);
  if (!reply.ok) throw new Error(reply.error.message);
  return reply.value;
}
const anew = { expect: null };
const choose = (folder = places.work) => told<FolderView>('folder.choose', { folder });

describe('a page', () => {
  it('chooses a folder, saves in it, opens it again, also after another start', async () => {
    const path = join(places.work, 'curlew.lapwright.json');
    expect(await ask('file.save', { path, document: demo, ...anew })).toMatchObject({
      ok: false,
      error: { code: 'bad-input' },
    });
    expect(names(places.work)).toEqual([]);
    expect(await choose()).toMatchObject({ path: places.work, chosen: true });
    const saved = await told<SavedFile>('file.save', { path, document: demo, ...anew });
    expect(content(path)).toBe(text(demo));

    server.close();
    await start();
    const { folders, recent, dialogs } = await told<FilePlaces>('file.places', {});
    expect(dialogs).toBe(false);
    expect(folders).toEqual([{ path: places.work, name: 'work' }]);
    expect(recent).toMatchObject([{ path, project: 'Curlew', found: true }]);
    const opened = await told<OpenedFile>('file.open', { path });
    expect(opened).toEqual({
      document: demo,
      origin: 'curlew.lapwright.json',
      file: saved.file,
    });
    expect(await told('file.stamp', { path })).toEqual({
      stamp: saved.file.stamp,
      at: saved.file.at,
    });
  });

  it('has no dialog of the system', async () => {
    expect(await ask('file.choose', { purpose: 'open' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });

  it('is refused what is malformed', async () => {
    for (const [name, input] of [
      ['file.open', {}],
      ['file.open', { path: '' }],
      ['file.open', { path: 7 }],
      ['file.open', { path: 'x'.repeat(5000) }],
      ['file.save', { path: '/a', document: {}, expect: '' }],
      [
        'recovery.keep',
        { recovery: '../../x', document: {}, origin: '', path: null, expect: null },
      ],
      ['recovery.drop', { recovery: '../recovery' }],
    ] as const) {
      expect(await ask(name, input)).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    }
  });
});

describe('no page', () => {
  const secret = 'kestrel.lapwright.json';
  const escapes = (): Record<string, string> => ({
    'a folder not chosen': join(places.outside, secret),
    'up and out': `${places.work}/../outside/${secret}`,
    'up and out, twice': `${places.work}/deep/../../outside/${secret}`,
    'a link to a file outside': join(places.work, 'file-link.lapwright.json'),
    'a link to a folder outside': join(places.work, 'folder-link', secret),
    'a name that only begins like the folder': join(`${places.work}-not`, secret),
    'the folder above': join(places.top, secret),
    'a path with a NUL': `${join(places.work, 'a')}\0.lapwright.json`,
    'a path with a line end': `${join(places.work, 'a')}\n.lapwright.json`,
    'a path from here': `work/${secret}`,
    'a drive of Windows': `C:\\work\\${secret}`,
    'a share of Windows': `\\\\server\\share\\${secret}`,
    'a device of Windows': `\\\\?\\C:\\${secret}`,
    'an address': `file://${join(places.outside, secret)}`,
    'a folder that is not there': join(places.top, 'nowhere', secret),
    'a home written short': `~/${secret}`,
  });

  it.skipIf(process.platform === 'win32').each(Object.keys(escapes()))(
    'reads, writes or learns of %s',
    async (what) => {
      await choose();
      mkdirSync(join(places.work, 'deep'));
      mkdirSync(`${places.work}-not`);
      const before = text(named('Kestrel'));
      const guarded = [
        put(places.outside, secret, before),
        put(`${places.work}-not`, secret, before),
        put(places.top, secret, before),
      ];
      symlinkSync(guarded[0]!, join(places.work, 'file-link.lapwright.json'));
      symlinkSync(places.outside, join(places.work, 'folder-link'));
      const path = escapes()[what]!;
      const replies = [
        await ask('file.open', { path }),
        await ask('file.stamp', { path }),
        await ask('file.save', { path, document: demo, expect: null }),
        await ask('file.save', { path, document: demo, expect: null, over: true }),
      ];
      for (const reply of replies) {
        expect(reply).toMatchObject({ ok: false, error: { code: 'bad-input' } });
        expect(JSON.stringify(reply)).not.toContain('Kestrel');
      }
      for (const file of guarded) expect(content(file)).toBe(before);
      expect(names(places.outside)).toEqual([secret]);
      expect(names(places.top)).toEqual([secret, 'data', 'outside', 'work', 'work-not'].sort());
    },
  );

  it('reads what is no project file in a chosen folder', async () => {
    await choose();
    const path = put(places.work, 'secret.txt', text(demo));
    expect(await ask('file.open', { path })).toMatchObject({ ok: false });
    expect((await ask('file.stamp', { path })).ok).toBe(false);
  });

  it('chooses the whole disk, also by a link', async () => {
    const root = realpathSync.native('/');
    expect((await ask('folder.choose', { folder: root })).ok).toBe(false);
    symlinkSync(root, join(places.top, 'all'));
    expect((await ask('folder.choose', { folder: join(places.top, 'all') })).ok).toBe(false);
    expect((await told<FilePlaces>('file.places', {})).folders).toEqual([]);
  });
});
