/** What a window begins with: its own file when it is loaded anew, a word of the last one at a start. */
import { cleanup, fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { AT, type FakeDisk, HOME, useDisk } from './support/files.ts';
import { fileMenu, useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

const FRAMES = `${HOME}/frames`;
const FILE = `${FRAMES}/heron.lapwright.json`;
let bridge: FakeBridge;
let disk: FakeDisk;
beforeEach(() => {
  bridge = makeFakeBridge();
  disk = useDisk(bridge);
  disk.chosen.add(FRAMES);
  disk.put(FILE, makeProject({ name: 'Heron' }));
});

const begin = async (name = 'Test frame'): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name });
};
const loadAnew = (name: string): Promise<void> => {
  cleanup();
  return begin(name);
};
const click = (name: string | RegExp): void =>
  void fireEvent.click(screen.getByRole('button', { name }));
const press = (key: string, more: KeyboardEventInit = {}): void =>
  void fireEvent.keyDown(window, { key, ctrlKey: true, ...more });
const lately = (path = FILE): void => {
  disk.recent = [{ path, project: 'Heron', at: '2025-03-01T09:00:00' }];
};
const line = (): string | null => screen.queryByText(/^You last worked on/)?.textContent ?? null;
const settle = (): Promise<void> => new Promise((done) => setTimeout(done));

describe('a window that is loaded anew', () => {
  it('keeps the file that it has open, as that stands on the disk', async () => {
    lately();
    await begin();
    fileMenu('Heron');
    await screen.findByRole('heading', { name: 'Heron' });
    disk.put(FILE, makeProject({ name: 'Heron, by another' }));
    await loadAnew('Heron, by another');
    expect(bridge.last('file.open')).toEqual({ path: FILE });
    expect(bridge.count('project.initial')).toBe(1);
    expect(document.querySelector('.origin')?.textContent).toBe('heron.lapwright.json');
    expect(line()).toBeNull();
  });

  it('keeps the file that it was saved in', async () => {
    disk.last = FRAMES;
    await begin();
    press('s');
    const asked = await screen.findByRole('dialog');
    await within(asked).findByRole('option', { name: /^heron/ });
    fireEvent.click(within(asked).getByRole('button', { name: 'Save' }));
    await waitFor(() => expect(disk.files.has(`${FRAMES}/Test-frame.lapwright`)).toBe(true));
    await settle();
    await loadAnew('Test frame');
    expect(bridge.count('project.initial')).toBe(1);
    expect(document.querySelector('.origin')?.textContent).toBe('Test-frame.lapwright');
  });

  it('begins as at a start once it has another project, and says why where the file is gone', async () => {
    lately();
    await begin();
    fileMenu('Heron');
    await screen.findByRole('heading', { name: 'Heron' });
    disk.files.delete(FILE);
    await loadAnew('Test frame');
    expect((await screen.findByRole('alert')).textContent).toContain(
      'Could not open heron.lapwright.json: there is no such file.',
    );
    // It is asked for once.
    const asked = bridge.count('file.open');
    await loadAnew('Test frame');
    await settle();
    expect(bridge.count('file.open')).toBe(asked);
  });

  it('of no file keeps no file', async () => {
    lately();
    await begin();
    fileMenu('Heron');
    await screen.findByRole('heading', { name: 'Heron' });
    fileMenu('Open the demonstration project');
    await screen.findByRole('heading', { name: 'Curlew' });
    await loadAnew('Test frame');
  });
});

describe('a start without a file', () => {
  it('names the one that was open last, and opens it', async () => {
    lately();
    await begin();
    await waitFor(() =>
      expect(line()).toBe('You last worked on heron.lapwright.json (…/mira/frames, 1 Mar 2025).'),
    );
    // It is not of one page.
    press('2');
    expect(line()).not.toBeNull();
    click('Open it');
    await screen.findByRole('heading', { name: 'Heron' });
    expect(line()).toBeNull();
  });

  it('is told no more once it is closed, also when it is loaded anew', async () => {
    lately();
    await begin();
    await waitFor(() => expect(line()).not.toBeNull());
    click('Close');
    expect(line()).toBeNull();
    await loadAnew('Test frame');
    await settle();
    expect(line()).toBeNull();
  });

  it('says that it is gone, and can forget it', async () => {
    lately(`${FRAMES}/gone.lapwright.json`);
    await begin();
    await waitFor(() => expect(line()).toMatch(/1 Mar 2025\), which is not there any more\.$/));
    expect(screen.queryByRole('button', { name: 'Open it' })).toBeNull();
    click('Forget it');
    await waitFor(() => expect(line()).toBeNull());
    expect(disk.recent).toEqual([]);
  });

  it('is silent where nothing was open before, where a file was named, and once another is open', async () => {
    await begin();
    await settle();
    expect(line()).toBeNull();
    cleanup();
    lately();
    const file = disk.fileAt(FILE);
    bridge.answer('project.initial', () => ({
      ok: true,
      value: { document: makeProject({ name: 'Heron' }), origin: file.name, file },
    }));
    await begin('Heron');
    await settle();
    expect(line()).toBeNull();
  });

  it('is silent beside unsaved changes of that very file, until they are put away', async () => {
    lately();
    disk.kept.set('of-another-page', {
      document: makeProject({ name: 'Heron' }),
      origin: 'heron.lapwright.json',
      path: FILE,
      expect: disk.fileAt(FILE).stamp,
      at: AT,
      orphan: true,
    });
    await begin();
    await screen.findByText(/was not saved when/);
    await settle();
    expect(line()).toBeNull();
    click(/^Put away/);
    await waitFor(() => expect(line()).not.toBeNull());
  });
});
