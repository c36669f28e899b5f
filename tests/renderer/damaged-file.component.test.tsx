/** A file that cannot be read: the version before its last saving is at hand, and nothing is written unasked. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
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
const HALF = '{"format":';
let bridge: FakeBridge;
let disk: FakeDisk;
beforeEach(() => {
  bridge = makeFakeBridge();
  disk = useDisk(bridge);
  disk.chosen.add(FRAMES);
  disk.files.set(FILE, { text: HALF, at: AT, writable: true });
  disk.put(`${FILE}.previous`, makeProject({ name: 'Heron before' }));
  disk.recent = [{ path: FILE, project: 'Heron', at: AT }];
});

const click = (name: string | RegExp): void =>
  void fireEvent.click(screen.getByRole('button', { name }));
const begin = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
};

describe('a damaged file', () => {
  it('is said once, with the version before at hand, which is saved back after asking', async () => {
    await begin();
    fileMenu('Heron');
    const said = await screen.findByRole('alert');
    expect(said.textContent).toContain(
      'Could not open heron.lapwright.json: The file is not JSON: it stops in the middle.',
    );
    expect(said.textContent?.match(/heron/g)).toHaveLength(1);
    click('Open the version before');
    await screen.findByRole('heading', { name: 'Heron before' });
    expect(screen.queryByRole('alert')).toBeNull();
    expect(screen.getByText('changes not saved')).toBeTruthy();
    expect(document.querySelector('.origin')?.textContent).toBe('heron.lapwright.json.previous');
    expect(disk.files.get(FILE)?.text).toBe(HALF);

    fireEvent.keyDown(window, { key: 's', ctrlKey: true });
    const asked = await screen.findByRole('dialog');
    await waitFor(() => expect(asked.textContent).toContain(FRAMES));
    expect(within(asked).getByRole<HTMLInputElement>('textbox', { name: 'File name' }).value).toBe(
      'heron.lapwright.json',
    );
    fireEvent.click(within(asked).getByRole('button', { name: 'Save' }));
    await screen.findByText('There is a file heron.lapwright.json already.');
    expect(disk.files.get(FILE)?.text).toBe(HALF);
    click('Replace it');
    await waitFor(() => expect(screen.queryByText('changes not saved')).toBeNull());
    expect(disk.project(FILE).name).toBe('Heron before');
    expect(document.querySelector('.origin')?.textContent).toBe('heron.lapwright.json');
  });

  it('has no such button where there is no version before', async () => {
    disk.files.delete(`${FILE}.previous`);
    await begin();
    fileMenu('Heron');
    await screen.findByRole('alert');
    expect(screen.queryByRole('button', { name: 'Open the version before' })).toBeNull();
  });

  it('that the start names has it in the place of the project', async () => {
    bridge.answer('project.initial', () => ({
      ok: false,
      error: {
        code: 'bad-input',
        field: '',
        message: 'heron.lapwright.json: The file is empty.',
        before: `${FILE}.previous`,
      },
    }));
    render(() => <App bridge={bridge} />);
    expect((await screen.findByRole('alert')).textContent).toBe(
      'heron.lapwright.json: The file is empty.',
    );
    click('Open the version before');
    await screen.findByRole('heading', { name: 'Heron before' });
    expect(screen.getByText('changes not saved')).toBeTruthy();
  });
});
