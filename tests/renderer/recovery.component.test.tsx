/** Unsaved changes outlive the page: kept within five seconds, dropped once they are safe, offered again. */
import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { ok, refuse } from '../../src/shared/reply.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { type FakeDisk, HOME, useDisk } from './support/files.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

const FILE = `${HOME}/frames/test.lapwright.json`;
let bridge: FakeBridge;
let disk: FakeDisk;
beforeEach(() => {
  bridge = makeFakeBridge();
  disk = useDisk(bridge);
  disk.chosen.add(`${HOME}/frames`);
  disk.put(FILE, makeProject());
  bridge.answer('project.initial', () =>
    ok({ document: makeProject(), origin: 'test.lapwright.json', file: disk.fileAt(FILE) }),
  );
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const pass = (ms: number): Promise<unknown> => vi.advanceTimersByTimeAsync(ms);
const show = async (name = 'Test frame'): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await pass(50);
  expect(screen.getByRole('heading', { name })).toBeTruthy();
};
const press = (key: string): void => void fireEvent.keyDown(window, { key, ctrlKey: true });
const change = (to: string): void => {
  press('2');
  fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: to } });
};
const kept = (): number[] =>
  [...disk.kept.values()].map(({ document }) => document.joints[0]!.overlap);
const isUnsaved = (): boolean => screen.queryByText('changes not saved') !== null;
const orphaned = (overlap: number, more: object = {}): void => {
  const document = makeProject();
  document.joints[0]!.overlap = overlap;
  disk.kept.set('of-another-page', {
    document,
    origin: 'test.lapwright.json',
    path: FILE,
    expect: disk.fileAt(FILE).stamp,
    at: '2026-03-01T14:32:00',
    orphan: true,
    ...more,
  });
};
const offer =
  /was not saved when (its window was closed or Lapwright stopped|this page was loaded anew)/;
const click = (name: string | RegExp): void =>
  void fireEvent.click(screen.getByRole('button', { name }));

describe('unsaved changes', () => {
  it('are on disk within five seconds, also in a steady stream of them', async () => {
    await show();
    expect(kept()).toEqual([]);
    change('30.5');
    for (let i = 1; i <= 24; i++) {
      await pass(1000);
      change(`${31 + i}`);
      const [latest = 0] = kept();
      // The change of five seconds ago, or a later one.
      if (i >= 5) expect(latest).toBeGreaterThanOrEqual(31 + i - 5);
    }
    await pass(5000);
    expect(kept()).toEqual([55]);
  });

  it('are dropped once they are saved, or taken back', async () => {
    await show();
    change('31');
    await pass(5000);
    expect(kept()).toEqual([31]);
    press('s');
    await pass(50);
    expect(isUnsaved()).toBe(false);
    expect(kept()).toEqual([]);
    change('32');
    await pass(5000);
    expect(kept()).toEqual([32]);
    click(/^Undo/);
    await pass(50);
    expect(isUnsaved()).toBe(false);
    expect(kept()).toEqual([]);
    await pass(20_000);
    expect(kept()).toEqual([]);
  });

  it('are dropped with the project that is put away', async () => {
    await show();
    change('31');
    await pass(5000);
    fireEvent.click(screen.getByRole('button', { name: 'File' }));
    fireEvent.click(screen.getByRole('menuitem', { name: 'Open the demonstration project' }));
    await pass(50);
    click('Open without saving');
    await pass(50);
    expect(kept()).toEqual([]);
  });

  it('that cannot be kept say so, and are tried again', async () => {
    await show();
    bridge.answer('recovery.keep', () => refuse('internal', '', 'The disk is full.'));
    change('31');
    await pass(5000);
    expect(screen.getByText('The disk is full.')).toBeTruthy();
    useDisk(bridge);
    await pass(5000);
    expect(screen.queryByText('The disk is full.')).toBeNull();
  });
});

describe('what was kept', () => {
  it('of a project that has no file names none', async () => {
    orphaned(38, { path: null, expect: null });
    await show();
    expect(screen.getByText(offer).textContent).toMatch(
      /stopped: changes up to .*14:32 are kept\.$/,
    );
  });

  it('by a page that is gone is offered, opened unsaved and with nothing to take back', async () => {
    orphaned(38);
    await show();
    expect(screen.getByText(offer).textContent).toMatch(
      /when its window was closed or Lapwright stopped: changes of test\.lapwright\.json up to .*14:32 are kept\.$/,
    );
    expect(screen.getByText(offer).title).toBe(FILE);
    click(/^Open them/);
    await pass(50);
    press('2');
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Overlap' }).value).toBe('38.0');
    expect(isUnsaved()).toBe(true);
    expect(
      screen.getByRole<HTMLButtonElement>('button', { name: 'Undo' }).getAttribute('aria-disabled'),
    ).toBe('true');
    expect(screen.queryByText(offer)).toBeNull();
    // Under an id of this page from now on.
    expect(kept()).toEqual([38]);
    expect(disk.kept.has('of-another-page')).toBe(false);
    press('s');
    await pass(50);
    expect(disk.project(FILE).joints[0]?.overlap).toBe(38);
    expect(kept()).toEqual([]);
  });

  it('is put away on asking, which says where it lies and until when, and is taken back', async () => {
    orphaned(38);
    await show();
    click(/^Put away/);
    await pass(50);
    expect(screen.queryByText(offer)).toBeNull();
    expect(kept()).toEqual([]);
    const away = screen.getByText(/are put away/);
    expect(away.textContent).toMatch(
      /^The changes of Test frame up to .*14:32 are put away: they stay in Lapwright’s own folder until 30 May 2026\.$/,
    );
    expect(away.title).toBe('/disk/state/of-another-page.json');
    click(/^Take them back/);
    await pass(50);
    expect(screen.queryByText(/are put away/)).toBeNull();
    expect(kept()).toEqual([38]);
    click(/^Open them/);
    await pass(50);
    expect(isUnsaved()).toBe(true);
    press('s');
    await pass(50);
    expect(disk.project(FILE).joints[0]?.overlap).toBe(38);
  });

  it('is put away for good where one closes the line', async () => {
    orphaned(38);
    await show();
    click(/^Put away/);
    await pass(50);
    click('Close');
    expect(screen.queryByText(/are put away/)).toBeNull();
    expect(kept()).toEqual([]);
  });

  it('of this very page is still its own once it is taken back', async () => {
    await show();
    change('31');
    await pass(5000);
    cleanup();
    await show();
    expect(screen.getByText(/was not saved when this page was loaded anew/)).toBeTruthy();
    click(/^Put away/);
    await pass(50);
    click(/^Take them back/);
    await pass(50);
    cleanup();
    // The host offers it to nobody: its page is here.
    await show();
    expect(screen.getByText(offer)).toBeTruthy();
  });

  it('stays offered where it cannot be put away', async () => {
    orphaned(38);
    await show();
    bridge.answer('recovery.drop', () => refuse('internal', '', 'The disk is full.'));
    click(/^Put away/);
    await pass(50);
    expect(screen.getByText(offer)).toBeTruthy();
    expect(screen.getByText('The disk is full.')).toBeTruthy();
  });

  it('on a file that was changed since says so, and saving asks', async () => {
    orphaned(38, { expect: 'another' });
    await show();
    expect(screen.getByText(offer).textContent).toContain(
      'test.lapwright.json has been changed since.',
    );
    click(/^Open them/);
    await pass(50);
    press('s');
    await pass(50);
    expect(screen.getByRole('dialog').textContent).toContain(
      'was changed by another window of Lapwright or another program',
    );
  });

  it('asks about unsaved changes before it takes their place', async () => {
    orphaned(38);
    await show();
    change('31');
    click(/^Open them/);
    await pass(50);
    click('Stay here');
    await pass(50);
    expect(screen.getByText(offer)).toBeTruthy();
    expect(disk.kept.has('of-another-page')).toBe(true);
  });

  it('by this very page is offered after it was loaded anew, and not written over meanwhile', async () => {
    await show();
    change('31');
    await pass(5000);
    cleanup();
    await show();
    expect(screen.getByText(offer)).toBeTruthy();
    change('44');
    await pass(5000);
    expect(kept()).toEqual([31, 44]);
    click(/^Put away/);
    await pass(50);
    expect(kept()).toEqual([44]);
  });

  it('by this very page is offered once, and says where the file was changed since', async () => {
    await show();
    change('31');
    await pass(5000);
    cleanup();
    await show();
    change('44');
    await pass(5000);
    cleanup();
    // The host takes it for one whose page is gone, too.
    for (const [id, mine] of [...disk.kept]) disk.kept.set(id, { ...mine, orphan: true });
    expect(disk.kept.size).toBe(2);
    disk.put(FILE, makeProject({ name: 'By another' }));
    await show('By another');
    const offers = screen.getAllByText(offer);
    expect(offers).toHaveLength(2);
    for (const { textContent } of offers) expect(textContent).toContain('has been changed since');
  });
});
