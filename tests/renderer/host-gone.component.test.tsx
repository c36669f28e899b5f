/** Nobody answers the page any more: it is said once, with what still works. */
import { fireEvent, render, screen, waitFor } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Bridge } from '../../src/shared/contract.ts';
import { refuse } from '../../src/shared/reply.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { AT, type FakeDisk } from './support/files.ts';
import { useOpenedFile } from './support/opened-file.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
let disk: FakeDisk;
let dead: boolean;
beforeEach(() => {
  dead = false;
  bridge = makeFakeBridge();
  disk = useOpenedFile(bridge);
  disk.kept.set('of-another-page', {
    document: makeProject({ name: 'Heron' }),
    origin: 'heron.lapwright.json',
    path: null,
    expect: null,
    at: AT,
    orphan: true,
  });
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const mortal = (): Bridge => ({
  ...bridge,
  ask: async (name, input) =>
    dead ? refuse('unreachable', '', 'There is no answer.') : bridge.ask(name, input),
});
const pass = (ms: number): Promise<unknown> => vi.advanceTimersByTimeAsync(ms);
const press = (key: string): void => void fireEvent.keyDown(window, { key, ctrlKey: true });
const change = (to: string): void => {
  press('2');
  fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: to } });
};
const strips = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('.strip')];

describe('a page that nobody answers', () => {
  it('says so in one line that stays, with a copy that rescues everything', async () => {
    render(() => <App bridge={mortal()} />);
    await pass(50);
    change('31');
    await pass(5000);
    expect([...disk.kept.values()].map(({ document }) => document.joints[0]?.overlap)).toContain(
      31,
    );
    dead = true;
    change('32');
    await pass(500);
    const [line] = strips();
    expect(strips()).toHaveLength(1);
    expect(line?.textContent).toMatch(
      /^Lapwright does not answer: nothing is calculated or saved here any more\. Save a copy: it has all of your changes\. Started again, Lapwright offers those up to .*\d\d:\d\d\.Save a copy$/,
    );
    const said = line?.textContent;
    for (let i = 0; i < 12; i++) {
      await pass(1000);
      press('s');
      await pass(10);
      // The very same line, and nothing beside it.
      expect(strips()).toEqual([line]);
      expect(line?.textContent).toBe(said);
      expect(document.querySelector('.notice')).toBeNull();
      expect(screen.queryByRole('button', { name: 'Save now' })).toBeNull();
    }
    let text = '';
    const taken = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
      this: HTMLAnchorElement,
    ) {
      text = this.download;
    });
    fireEvent.click(screen.getByRole('button', { name: 'Save a copy' }));
    expect(text).toBe('Curlew B copy.lapwright.json');
    taken.mockRestore();

    dead = false;
    await pass(6000);
    expect(document.querySelector('.strip.is-warning')).toBeNull();
    expect(screen.getByText(/^Heron was not saved/)).toBeTruthy();
  });

  it('and that has nothing unsaved says how to go on', async () => {
    render(() => <App bridge={mortal()} />);
    await pass(50);
    dead = true;
    await pass(6000);
    expect(strips().map(({ textContent }) => textContent)).toEqual([
      'Lapwright does not answer: nothing is calculated or saved here any more. Start it again and open the address that it prints.',
    ]);
  });

  it('and that has no project offers nothing that cannot work', async () => {
    vi.useRealTimers();
    dead = true;
    render(() => <App bridge={mortal()} />);
    await screen.findByText('There is no answer.');
    expect(document.body.textContent).toContain('Start Lapwright again');
    for (const name of ['Open the demonstration project', 'Open another file …', 'File']) {
      expect(screen.queryByRole('button', { name })).toBeNull();
    }
    await waitFor(() => expect(strips()).toEqual([]));
  });
});
