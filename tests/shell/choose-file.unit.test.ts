/** The system's own dialog: where it begins, and what may be used once it is closed. */
import { join } from 'node:path';
import type { BrowserWindow } from 'electron';
import { beforeEach, describe, expect, it } from 'vitest';
import { makeReach, type Reach } from '../../src/main/files/reach.ts';
import { chooserOf, type FileDialogs } from '../../src/main/shell/choose-file.ts';
import { takeGiven } from '../../src/main/shell/given-files.ts';
import { freshPlaces, put, told } from '../main/files/places.ts';

const places = freshPlaces();
const asked: Record<string, unknown>[] = [];
let chosen: string | null;
let reach: Reach;
const dialogs = {
  showOpenDialog: async (_window: unknown, options: Record<string, unknown>) => {
    asked.push(options);
    return { canceled: chosen === null, filePaths: chosen === null ? [] : [chosen] };
  },
  showSaveDialog: async (_window: unknown, options: Record<string, unknown>) => {
    asked.push(options);
    return { canceled: chosen === null, filePath: chosen ?? '' };
  },
} as unknown as FileDialogs;
const choose = (...[wish]: Parameters<ReturnType<typeof chooserOf>>) =>
  chooserOf({} as BrowserWindow, dialogs, reach)(wish);

beforeEach(() => {
  asked.length = 0;
  chosen = null;
  reach = makeReach({ data: places.data, known: () => false });
});

describe('the dialog', () => {
  it('gives a name its ending, and leaves the longer one to a file that has it', async () => {
    for (const [typed, path] of [
      ['x', 'x.lapwright'],
      ['x.lapwright', 'x.lapwright'],
      ['x.lapwright.json', 'x.lapwright.json'],
      ['x.v2', 'x.v2.lapwright'],
    ] as const) {
      chosen = join(places.work, typed);
      expect(told(await choose({ purpose: 'save' }))).toEqual({ path: join(places.work, path) });
    }
  });

  it('shows what can be opened, and the new suffix first when it saves', async () => {
    await choose({ purpose: 'open' });
    await choose({ purpose: 'save' });
    expect(asked.map(({ filters }) => filters)).toEqual([
      [
        { name: 'Lapwright project', extensions: ['lapwright', 'lapwright.json', 'json'] },
        { name: 'Version before the last saving', extensions: ['previous'] },
      ],
      [{ name: 'Lapwright project', extensions: ['lapwright', 'lapwright.json'] }],
    ]);
  });

  it('lets the chosen file be used, and no other', async () => {
    const path = join(places.work, 'x.lapwright');
    expect(reach.file(path).ok).toBe(false);
    chosen = join(places.work, 'x');
    expect(told(await choose({ purpose: 'save' }))).toEqual({ path });
    expect(reach.file(path).ok).toBe(true);
    expect(reach.file(`${path}.previous`).ok).toBe(true);
    expect(reach.file(join(places.work, 'y.lapwright')).ok).toBe(false);
    chosen = put(places.outside, 'z.json', '');
    expect(told(await choose({ purpose: 'open' }))).toEqual({ path: chosen });
    expect(reach.file(chosen).ok).toBe(true);
  });

  it('tells that the user has let go of what stood there, only of the name that was asked', async () => {
    chosen = put(places.work, 'x.lapwright', '');
    expect(told(await choose({ purpose: 'save' }))).toEqual({ path: chosen, over: true });
    expect(told(await choose({ purpose: 'open' }))).toEqual({ path: chosen });
    const path = chosen;
    chosen = join(places.work, 'x');
    expect(told(await choose({ purpose: 'save' }))).toEqual({ path });
  });

  it('begins where it is told to, but calls no other machine and leaves no folder', async () => {
    await choose({ purpose: 'save', name: 'x.lapwright', folder: places.work });
    await choose({ purpose: 'save', name: '../../x.lapwright' });
    await choose({ purpose: 'save', name: '..\\x.lapwright', folder: 'here' });
    await choose({ purpose: 'open', folder: places.work });
    await choose({ purpose: 'open' });
    expect(asked.map(({ defaultPath }) => defaultPath)).toEqual([
      join(places.work, 'x.lapwright'),
      'x.lapwright',
      'x.lapwright',
      places.work,
      undefined,
    ]);
  });

  it('is one at a time, also after one that failed', async () => {
    let fail: (error: Error) => void = () => {};
    const waiting = chooserOf(
      {} as BrowserWindow,
      { ...dialogs, showOpenDialog: () => new Promise((_done, failed) => (fail = failed)) },
      reach,
    );
    const first = waiting({ purpose: 'open' });
    expect(await waiting({ purpose: 'save' })).toMatchObject({
      ok: false,
      error: { message: 'The dialog is open already.' },
    });
    fail(new Error('of the system'));
    await expect(first).rejects.toThrow('of the system');
    expect(told(await waiting({ purpose: 'save' }))).toEqual({ path: null });
  });
});

describe('a file that is given to the page', () => {
  it('may be used where it is one that can be opened', () => {
    const allowed: string[] = [];
    const take = (path: unknown): void =>
      takeGiven(path, { allowFile: (one) => allowed.push(one) });
    const path = put(places.work, 'x.lapwright', '');
    for (const other of [
      7,
      null,
      '',
      'x.json',
      places.work,
      put(places.work, 'secret.txt', ''),
      join(places.work, 'none.json'),
      `${path}\0`,
      'x'.repeat(5000),
    ]) {
      take(other);
    }
    expect(allowed).toEqual([]);
    take(path);
    expect(allowed).toEqual([path]);
  });
});
