/** A host that is there and does not answer, as one that is stopped: it is said while it lasts. */
import { fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { SIGN_OF_LIFE } from '../../src/renderer/sign-of-life.ts';
import { watchHost } from '../../src/renderer/state/host.ts';
import type { Bridge, RequestName } from '../../src/shared/contract.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import type { FakeDisk } from './support/files.ts';
import { useOpenedFile } from './support/opened-file.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
let disk: FakeDisk;
let stopped: boolean;
let goOn: (() => void)[];
beforeEach(() => {
  stopped = false;
  goOn = [];
  bridge = makeFakeBridge();
  disk = useOpenedFile(bridge);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] });
});
afterEach(() => {
  vi.useRealTimers();
});

/** What is asked while it is stopped is answered once it goes on. */
const stoppable = (which: (name: RequestName) => boolean = () => true): Bridge => ({
  ...bridge,
  ask: async (name, input) => {
    if (stopped && which(name)) await new Promise<void>((go) => goOn.push(go));
    return bridge.ask(name, input);
  },
});
const wake = (): void => {
  stopped = false;
  for (const go of goOn.splice(0)) go();
};
const pass = (ms: number): Promise<unknown> => vi.advanceTimersByTimeAsync(ms);
const press = (key: string): void => void fireEvent.keyDown(window, { key, ctrlKey: true });
const change = (to: string): void => {
  press('2');
  fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: to } });
};
const warnings = (): (string | null)[] =>
  [...document.querySelectorAll('.strip.is-warning')].map(({ textContent }) => textContent);
const keptOverlaps = () => [...disk.kept.values()].map((kept) => kept.document.joints[0]?.overlap);

const SAID =
  'Lapwright does not answer at the moment: nothing is calculated or saved here until it does.';

describe('a page whose host is stopped', () => {
  it('says so in one line until somebody answers, and loses nothing', async () => {
    render(() => <App bridge={stoppable()} />);
    await pass(50);
    change('31');
    await pass(5000);
    stopped = true;
    change('32');
    await pass(14_000);
    expect(warnings()).toEqual([]);
    await pass(7000);
    expect(warnings()).toEqual([`${SAID} Save a copy: it has all of your changes.Save a copy`]);
    await pass(60_000);
    expect(warnings()).toHaveLength(1);
    expect(keptOverlaps()).not.toContain(32);
    wake();
    await pass(50);
    expect(warnings()).toEqual([]);
    await pass(5000);
    expect(keptOverlaps()).toContain(32);
  });

  it('says so too where nothing is unsaved, with nothing to press', async () => {
    render(() => <App bridge={stoppable()} />);
    await pass(50);
    stopped = true;
    await pass(SIGN_OF_LIFE + 16_000);
    expect(warnings()).toEqual([SAID]);
    wake();
    await pass(50);
    expect(warnings()).toEqual([]);
  });

  it('is no page that asked for something long, nor one that slept', async () => {
    const host = watchHost(stoppable());
    stopped = true;
    void host.bridge.ask('project.check', { document: makeProject() });
    await pass(600_000);
    expect(host.silent()).toBe(false);
    wake();
    await pass(0);
    stopped = true;
    void host.bridge.ask('app.about', {});
    await pass(5000);
    // A night by the clock, in which nothing ticks.
    vi.spyOn(Date, 'now').mockReturnValue(Date.now() + 1e8);
    await pass(5000);
    expect(host.silent()).toBe(false);
    wake();
    await pass(20_000);
    expect(host.silent()).toBe(false);
    vi.restoreAllMocks();
  });

  it('waits longer for a sign that waits for its turn behind long requests', async () => {
    const host = watchHost(stoppable());
    stopped = true;
    for (let n = 0; n < 6; n++) {
      void host.bridge.ask('project.check', { document: makeProject() });
    }
    void host.bridge.ask('app.about', {});
    await pass(50_000);
    expect(host.silent()).toBe(false);
    await pass(15_000);
    expect(host.silent()).toBe(true);
    wake();
    await pass(0);
    expect(host.silent()).toBe(false);
  });
});
