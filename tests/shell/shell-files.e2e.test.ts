/** Files in the built shell, run on the stand-in for Electron: dialogs, menu, dropped and kept files. */
import { mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { GIVEN_CHANNEL } from '../../src/shared/channel.ts';
import type { Opened } from '../../src/shared/reports.ts';
import type {
  FilePlaces,
  OpenedFile,
  RecoveryKept,
  SavedFile,
} from '../../src/shared/reports-files.ts';
import { describeInBrowser } from '../e2e/support/browser.ts';
import { app, BrowserWindow, ipcMain, standIn } from '../stand-in/electron.ts';
import { toBrowser } from '../stand-in/pages.ts';
import { PATHS } from '../stand-in/preload-script.ts';
import {
  asked,
  menuItems,
  PAGE,
  refused,
  soon,
  startShell,
  type WithBridge,
} from './built-shell.ts';

const recentLabels = () => menuItems('Open recent', menuItems('File')).map(({ label }) => label);

describeInBrowser('files in the built shell', () => {
  let window: BrowserWindow;
  let page: Page;
  const place = realpathSync.native(mkdtempSync(join(tmpdir(), 'lapwright-')));
  beforeAll(async () => {
    ({ window, page } = await startShell());
  });
  afterAll(() => rmSync(place, { recursive: true, force: true }));

  it('saves and opens what is chosen in the dialogs of the system, and nothing else', async () => {
    const path = join(place, 'kestrel.lapwright');
    const document = (await asked<Opened>(page, 'project.demo', {})).document;
    const saving = { path, document: { ...document, name: 'Kestrel' }, expect: null };
    expect(await refused(page, 'file.save', saving)).toContain('not in a folder that you chose');
    expect(await refused(page, 'folder.choose', { folder: place })).toContain(
      'dialog of the system',
    );
    expect(await refused(page, 'folder.look', {})).toContain('dialog of the system');

    standIn.chosen = null;
    expect(await asked(page, 'file.choose', { purpose: 'save' })).toEqual({ path: null });
    standIn.chosen = join(place, 'kestrel');
    expect(await asked(page, 'file.choose', { purpose: 'save', name: '../x.lapwright' })).toEqual({
      path,
    });
    expect(standIn.dialogs.at(-1)).toMatchObject({
      purpose: 'save',
      defaultPath: 'x.lapwright',
    });
    const saved = await asked<SavedFile>(page, 'file.save', saving);
    expect(saved.file).toMatchObject({ path, name: 'kestrel.lapwright' });
    expect(standIn.recent.at(-1)).toBe(path);
    standIn.chosen = path;
    expect(await asked(page, 'file.choose', { purpose: 'save' })).toEqual({ path, over: true });

    const other = join(place, 'other.lapwright');
    writeFileSync(other, readFileSync(path));
    expect(await refused(page, 'file.open', { path: other })).toContain('not in a folder');
    standIn.chosen = other;
    expect(await asked(page, 'file.choose', { purpose: 'open' })).toEqual({ path: other });
    expect(await asked<OpenedFile>(page, 'file.open', { path: other })).toMatchObject({
      document: { name: 'Kestrel' },
      file: { path: other, stamp: saved.file.stamp },
    });
    const places = await asked<FilePlaces>(page, 'file.places', {});
    expect(places).toMatchObject({
      dialogs: true,
      folders: [],
      recent: [{ path: other }, { path }],
    });
    expect(recentLabels()).toEqual([`other.lapwright (${place})`, `kestrel.lapwright (${place})`]);
    await asked(page, 'recent.forget', { path: other });
    expect(recentLabels()).toHaveLength(1);
  });

  it('may use a file that is dropped on its page, and only that', async () => {
    const dropped = join(place, 'dropped.lapwright');
    const beside = join(place, 'beside.lapwright');
    for (const file of [dropped, beside]) writeFileSync(file, '{"half":');
    const found = await page.evaluate(
      ([key, path]) => {
        Object.assign(globalThis, { [key!]: { 'dropped.lapwright': path } });
        const { pathOf } = (globalThis as unknown as WithBridge).lapwright;
        return [
          pathOf!(new File([], 'dropped.lapwright')),
          pathOf!(new File([], 'made-by-the-page.lapwright')),
          pathOf!('no file' as unknown as File),
        ];
      },
      [PATHS, dropped],
    );
    expect(found).toEqual([dropped, '', '']);
    expect(await refused(page, 'file.open', { path: dropped })).toMatch(
      /^dropped\.lapwright: The file is not JSON: it stops in the middle, at line 1/,
    );
    expect(await refused(page, 'file.open', { path: beside })).toContain('not in a folder');
    // From a frame that is not the page of the window it counts for nothing.
    await ipcMain.deliver(window.webContents, { url: PAGE }, GIVEN_CHANNEL, [beside]);
    expect(await refused(page, 'file.open', { path: beside })).toContain('not in a folder');
  });

  it('keeps what is not saved, and offers it once its window is gone', async () => {
    const keep = (recovery: string) => ({
      recovery,
      document: { name: recovery },
      origin: 'a file',
      path: null,
      expect: null,
    });
    await asked(page, 'recovery.keep', keep('first-window'));
    app.emit('second-instance', {}, [], '', { file: join(root, 'no-such-project.json') });
    const [, second] = BrowserWindow.getAllWindows();
    const other = await second!.webContents.ready;
    await other.waitForURL(toBrowser(PAGE));
    await other.evaluate(
      (input) => (globalThis as unknown as WithBridge).lapwright.ask('recovery.keep', input),
      keep('second-window'),
    );
    const offered = async (...own: string[]): Promise<string[]> =>
      (await asked<RecoveryKept>(page, 'recovery.kept', { own })).kept.map(
        ({ recovery }) => recovery,
      );
    expect(await offered()).toEqual([]);
    await second!.close();
    await soon(() => expect(BrowserWindow.getAllWindows()).toHaveLength(1));
    expect(await offered('first-window')).toEqual(['second-window']);
    await asked(page, 'recovery.drop', { recovery: 'second-window' });
    expect(await offered()).toEqual([]);
    await asked(page, 'recovery.drop', { recovery: 'first-window' });
  });

  it('opens a file that macOS hands over in a window of its own', async () => {
    const path = join(place, 'handed.lapwright');
    writeFileSync(path, readFileSync(join(root, 'src/main/demo/curlew.lapwright.json')));
    let prevented = false;
    app.emit('open-file', { preventDefault: () => (prevented = true) }, path);
    const [, second] = BrowserWindow.getAllWindows();
    const other = await second!.webContents.ready;
    await other.waitForURL(toBrowser(PAGE));
    const initial = await other.evaluate(() =>
      (globalThis as unknown as WithBridge).lapwright.ask('project.initial', {}),
    );
    expect(prevented).toBe(true);
    expect(initial).toMatchObject({ ok: true, value: { file: { path } } });
    // As a page does once it has saved.
    await other.evaluate(() => window.close());
    await soon(() => expect(BrowserWindow.getAllWindows()).toHaveLength(1));
  });

  it('keeps the file of a window that is loaded anew, and leads out of a damaged one', async () => {
    const path = join(place, 'heron.lapwright.json');
    const text = readFileSync(join(root, 'docs/example.lapwright.json'), 'utf8');
    writeFileSync(path, text);
    app.emit('second-instance', {}, [], '', { file: path });
    const [, second] = BrowserWindow.getAllWindows();
    const other = await second!.webContents.ready;
    await other.getByRole('heading', { name: 'Camera mast' }).waitFor();
    // By its own dialog it opens another one, and keeps that.
    const next = join(place, 'gull.lapwright.json');
    writeFileSync(next, text.replace('Camera mast', 'Gull'));
    standIn.chosen = next;
    await other.keyboard.press('Control+o');
    await other.getByRole('heading', { name: 'Gull' }).waitFor();
    await other.reload();
    await other.getByRole('heading', { name: 'Gull' }).waitFor();
    expect(await other.locator('.origin').textContent()).toBe('gull.lapwright.json');

    writeFileSync(`${next}.previous`, text.replace('Camera mast', 'Gull before'));
    writeFileSync(next, text.slice(0, 500));
    await other.reload();
    await other.getByText(/^Could not open gull\.lapwright\.json: The file is not JSON/).waitFor();
    await other.getByRole('button', { name: 'Open the version before' }).click();
    await other.getByRole('heading', { name: 'Gull before' }).waitFor();
    // The dialog of the system begins at the damaged file, and asks before it goes.
    standIn.chosen = next;
    await other.keyboard.press('Control+s');
    await other.getByText('changes not saved').waitFor({ state: 'detached' });
    expect(standIn.dialogs.at(-1)).toMatchObject({ purpose: 'save', defaultPath: next });
    expect(readFileSync(next, 'utf8')).toContain('Gull before');
    await second!.close();
    await soon(() => expect(BrowserWindow.getAllWindows()).toHaveLength(1));
  });

  it('puts the next window where the last one was', async () => {
    window.bounds = { x: 300, y: 200, width: 900, height: 700 };
    window.maximised = true;
    window.emit('close', {});
    app.emit('second-instance', {}, [], '', { file: join(root, 'no-such-project.json') });
    const [, second] = BrowserWindow.getAllWindows();
    expect(second!.options).toMatchObject({ x: 328, y: 228, width: 900, height: 700 });
    await soon(() => expect(second!.maximised).toBe(true));
    await second!.close();
    await soon(() => expect(BrowserWindow.getAllWindows()).toHaveLength(1));
  });
});
