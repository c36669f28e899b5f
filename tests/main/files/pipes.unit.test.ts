/** What another program may put in the data folder in place of a file: nothing there is waited for. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { describe, expect, it } from 'vitest';
import { makeKeptFiles } from '../../../src/main/files/kept-files.ts';
import { makeSmallStore } from '../../../src/main/files/small-store.ts';
import { freshPlaces, names, put, told } from './places.ts';

const places = freshPlaces();
/** Opens a pipe for writing a second later, so that a reader that waits is let go and seen. */
function pipe(path: string): { readonly wasWaitedFor: () => Promise<boolean> } {
  execFileSync('mkfifo', [path]);
  const code = `const fs = require('node:fs'); setTimeout(() => { let open = true;
    try { fs.closeSync(fs.openSync(${JSON.stringify(path)}, fs.constants.O_WRONLY | fs.constants.O_NONBLOCK)); }
    catch { open = false; } require('node:worker_threads').parentPort.postMessage(open); }, 1000);`;
  const worker = new Worker(code, { eval: true });
  return {
    wasWaitedFor: () => new Promise((resolve) => worker.once('message', resolve)),
  };
}

describe.skipIf(process.platform === 'win32')('a named pipe', () => {
  it('in place of a small thing is taken for none', async () => {
    const path = join(places.data, 'folders.json');
    const { wasWaitedFor } = pipe(path);
    expect(makeSmallStore<unknown>(path, (parsed) => parsed, 'nothing').read()).toBe('nothing');
    expect(await wasWaitedFor()).toBe(false);
  });

  it('among what is kept is passed over', async () => {
    const folder = join(places.data, 'recovery');
    const files = makeKeptFiles<object>({
      folder,
      read: ({ thing }) => ({ thing }),
      what: 'The things',
      now: () => new Date(0),
    });
    told(files.keep('one', 'a', { thing: 7 }));
    const { wasWaitedFor } = pipe(join(folder, names(folder)[0]!, 'b.json'));
    expect(told(files.kept('one'))).toMatchObject([{ thing: 7 }]);
    expect(await wasWaitedFor()).toBe(false);
  });
});

it('a file larger than anything kept is not read', () => {
  mkdirSync(places.data, { recursive: true });
  const path = put(places.data, 'folders.json', '7');
  const store = makeSmallStore<unknown>(path, (parsed) => parsed, 'nothing');
  expect(store.read()).toBe(7);
  put(places.data, 'folders.json', `7${' '.repeat(40 * 1024 * 1024)}`);
  expect(store.read()).toBe('nothing');
  truncateSync(path, 1);
  expect(store.read()).toBe(7);
});
