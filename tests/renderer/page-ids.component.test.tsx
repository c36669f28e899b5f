/** Which page keeps what: told by locks of the browser, also of pages that sleep and of tabs that were duplicated. */
import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { LINGERS } from '../../src/renderer/state/files/page-ids.ts';
import { AGAIN } from '../../src/renderer/state/files/recovery.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { type FakeDisk, useDisk } from './support/files.ts';
import { useLocks } from './support/locks.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

const KEY = 'lapwright-recovery';
const lockOf = (id: string): string => `lapwright-recovery ${id}`;
const OTHER = 'of-another-page';
const offer =
  /was not saved when (its window was closed or Lapwright stopped|this page was loaded anew)/;

let bridge: FakeBridge;
let disk: FakeDisk;
beforeEach(() => {
  bridge = makeFakeBridge();
  disk = useDisk(bridge);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const pass = (ms: number): Promise<unknown> => vi.advanceTimersByTimeAsync(ms);
const show = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await pass(50);
};
const change = (to: string): void => {
  fireEvent.keyDown(window, { key: '2', ctrlKey: true });
  fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: to } });
};
const own = (): string[] => JSON.parse(sessionStorage.getItem(KEY) ?? '[]') as string[];
/** The host takes its page for gone. */
const silent = (id: string): void =>
  void disk.kept.set(id, {
    document: makeProject(),
    origin: 'test.lapwright.json',
    path: null,
    expect: null,
    at: '2026-03-01T14:32:00',
    orphan: true,
  });

describe('what another page keeps', () => {
  it('is not offered while that is there, however silent, and once it is gone', async () => {
    const locks = useLocks();
    const leave = locks.take(lockOf(OTHER));
    silent(OTHER);
    await show();
    expect(bridge.count('recovery.kept')).toBe(1);
    expect(screen.queryByText(offer)).toBeNull();
    leave();
    await pass(AGAIN);
    expect(screen.getAllByText(offer)).toHaveLength(1);
  });

  it('is offered no more where the host says that it is somebody’s after all', async () => {
    silent(OTHER);
    await show();
    expect(screen.getAllByText(offer)).toHaveLength(1);
    disk.kept.delete(OTHER);
    await pass(AGAIN);
    expect(screen.queryByText(offer)).toBeNull();
  });

  it('is offered by the word of the host alone where the browser has no locks, or forbids them', async () => {
    silent(OTHER);
    await show();
    expect(screen.getByText(offer)).toBeTruthy();
    cleanup();
    useLocks();
    const forbidden = () => Promise.reject(new Error('forbidden'));
    Object.assign(navigator.locks, { request: forbidden, query: forbidden });
    await show();
    expect(screen.getByText(offer)).toBeTruthy();
    change('31');
    await pass(5000);
    expect(own()).toHaveLength(1);
    cleanup();
    await show();
    // Its own, from before, and that of the other.
    expect(screen.getAllByText(offer)).toHaveLength(2);
  });

  it('is not taken for its own by a copy of its tab', async () => {
    const locks = useLocks();
    locks.take(lockOf(OTHER));
    silent(OTHER);
    sessionStorage.setItem(KEY, JSON.stringify([OTHER]));
    await show();
    change('31');
    await pass(LINGERS + 5000);
    // It never said that it was its own: the host would believe it.
    expect(bridge.last('recovery.kept')).toEqual({ own: [] });
    expect(own()).toHaveLength(1);
    expect(own()).not.toContain(OTHER);
    expect([...disk.kept.keys()]).toEqual([OTHER, ...own()]);
    expect(screen.queryByText(offer)).toBeNull();
    expect(locks.held).toEqual(new Set([OTHER, ...own()].map(lockOf)));
  });
});

describe('what this page keeps', () => {
  it('is its own by a lock, until it is saved', async () => {
    const locks = useLocks();
    await show();
    change('31');
    await pass(5000);
    expect([...locks.held]).toEqual(own().map(lockOf));
    expect(own()).toHaveLength(1);
    fireEvent.click(screen.getByRole('button', { name: /^Undo/ }));
    await pass(50);
    expect(own()).toEqual([]);
    expect(locks.held.size).toBe(0);
  });

  it('is still its own after it was loaded anew, also where its lock goes late', async () => {
    const locks = useLocks();
    await show();
    change('31');
    await pass(5000);
    const [id = ''] = own();
    cleanup();
    await pass(10);
    expect(locks.held.size).toBe(0);
    const late = locks.take(lockOf(id));
    await show();
    expect(screen.queryByText(offer)).toBeNull();
    await pass(LINGERS / 2);
    late();
    await pass(50);
    expect(screen.getByText(offer)).toBeTruthy();
    expect(own()).toEqual([id]);
    expect(bridge.last('recovery.kept')).toEqual({ own: [id] });
    // A page that only waits for an answer gives signs, too.
    const before = bridge.count('app.about');
    await pass(20_000);
    expect(bridge.count('app.about')).toBeGreaterThan(before + 2);
  });
});
