/** The three notes: shown once, of the project as it is, on request again, and out of the way. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { jointNote, numbersNote, overlapNote } from '../../src/renderer/help/tour-words.ts';
import { ok } from '../../src/shared/reply.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';
import { makeMargin, makeReport, makeSummary } from './support/reports.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
  bridge.answer('app.first-start', () => ok({ first: true }));
});
const open = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  await screen.findByRole('table');
};
/** Answers that were on their way are in by then. */
const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 20));
const note = (): HTMLElement | null => screen.queryByRole('note');

/** The check says of each joint what the test wants. */
function checked(margins: readonly number[]): void {
  const { joints, name } = makeProject();
  bridge.answer('project.check', () =>
    ok({
      project: name,
      targetMargin: 0.25,
      joints: joints.map((joint, i) => makeSummary(joint, makeMargin(margins[i]!))),
      counts: { fails: 1, low: 0, holds: 2 },
      modelVersion: '1',
    }),
  );
}

describe('the notes of the first start', () => {
  it('begin under the joint that fails, whichever it is', async () => {
    for (const [margins, name] of [
      [[-0.3, 0.5, 0.9], 'Boom tip'],
      [[0.5, 0.9, -0.01], 'Tail lug'],
    ] as const) {
      localStorage.clear();
      checked(margins);
      const { unmount } = render(() => <App bridge={bridge} />);
      const shown = await screen.findByRole('note');
      expect(shown.textContent).toContain(`${name} fails: its lowest margin is`);
      const row = screen.getByRole('button', { name }).closest('tbody');
      expect(row?.nextElementSibling?.contains(shown)).toBe(true);
      unmount();
    }
  });

  it('take no focus, and are told politely', async () => {
    await open();
    await screen.findByRole('note');
    expect(document.activeElement).toBe(document.body);
    const said = screen.getAllByRole('status').find((one) => one.textContent?.startsWith('Note 1'));
    expect(said?.textContent).toContain('Boom root fails');
  });

  it('go on from the joint to its overlap, and from there to the figures', async () => {
    await open();
    fireEvent.click(await screen.findByRole('button', { name: 'Open Boom root' }));
    expect(await screen.findByRole('heading', { name: 'Size Boom root' })).toBeTruthy();
    expect(note()?.textContent).toContain('Drag the end of the overlap');
    fireEvent.click(within(note()!).getByRole('button', { name: 'Next' }));
    expect(note()?.textContent).toContain('Press any underlined figure');
    expect(note()?.closest('.margins-column')).toBeTruthy();
    expect(within(note()!).queryByRole('button', { name: 'Next' })).toBeNull();
    fireEvent.click(within(note()!).getByRole('button', { name: 'Got it' }));
    expect(note()).toBeNull();
  });

  it('follow whoever opens a joint by themselves, and wait where they have nothing to say', async () => {
    await open();
    await screen.findByRole('note');
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    expect(note()).toBeNull();
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    fireEvent.click(await screen.findByRole('button', { name: 'Tail lug' }));
    expect(note()?.textContent).toContain('Drag the end of the overlap');
  });

  it('are gone by Escape from within, and only from there', async () => {
    await open();
    await screen.findByRole('note');
    fireEvent.keyDown(document.body, { key: 'Escape' });
    expect(note()).not.toBeNull();
    const gotIt = screen.getByRole('button', { name: 'Got it' });
    gotIt.focus();
    fireEvent.keyDown(gotIt, { key: 'Escape' });
    expect(note()).toBeNull();
  });

  it('come once: remembered here, and by the host', async () => {
    const { unmount } = render(() => <App bridge={bridge} />);
    await screen.findByRole('note');
    unmount();
    await open();
    await settled();
    expect(note()).toBeNull();
    localStorage.clear();
    bridge.answer('app.first-start', () => ok({ first: false }));
    await open();
    await settled();
    expect(note()).toBeNull();
  });

  it('come all the same where the browser may keep nothing', async () => {
    vi.spyOn(Storage.prototype, 'getItem').mockImplementation(() => {
      throw new Error('forbidden');
    });
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new Error('forbidden');
    });
    await open();
    expect(await screen.findByRole('note')).toBeTruthy();
  });

  it('are shown again from the box that finds and from the menu of help', async () => {
    bridge.answer('app.first-start', () => ok({ first: false }));
    vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
    await open();
    await settled();
    expect(note()).toBeNull();
    fireEvent.keyDown(window, { key: 'k', ctrlKey: true });
    const box = screen.getByRole('combobox', { name: /^Action, joint/ });
    fireEvent.input(box, { target: { value: 'three notes' } });
    fireEvent.keyDown(box, { key: 'Enter' });
    expect(note()?.textContent).toContain('Boom root fails');
    fireEvent.click(screen.getByRole('button', { name: 'Got it' }));
    fireEvent.keyDown(window, { key: '4', ctrlKey: true });
    fireEvent.click(screen.getByRole('button', { name: 'Help' }));
    fireEvent.click(screen.getByRole('button', { name: 'Show the three notes again' }));
    await waitFor(() => expect(note()?.textContent).toContain('Boom root fails'));
  });
});

describe('what they say', () => {
  const report = (margins: readonly number[]) => ({
    project: 'x',
    targetMargin: 0.25,
    joints: makeProject().joints.map((joint, i) => makeSummary(joint, makeMargin(margins[i]!))),
    counts: { fails: 0, low: 0, holds: 0 },
    modelVersion: '1',
  });
  it('is so of a project that fails, is low, or holds', () => {
    expect(jointNote(report([0.9, -0.12, 0.1]))).toMatchObject({ name: 'Boom root' });
    expect(jointNote(report([0.9, 0.12, 0.4]))?.text).toMatch(
      /is low: .*\+0\.12, below the target of 0\.25/,
    );
    expect(jointNote(report([0.9, 0.5, 0.4]))?.text).toMatch(
      /^Every joint reaches .*Tail lug .*\+0\.40/,
    );
    expect(jointNote({ ...report([]), joints: [] })).toBeNull();
  });
  it('speaks of a double lap only to a single one, and of printing once it holds', () => {
    expect(overlapNote({ type: 'sleeve-single' })).toContain('change the lap to double');
    expect(overlapNote({ type: 'sleeve-double' })).not.toContain('double');
    expect(numbersNote({ state: 'holds' })).toContain('It holds: save and print.');
    expect(numbersNote({ state: 'fails' })).toContain('It still fails: once it holds');
    expect(numbersNote(makeReport(makeProject().joints[0]!).margins[0])).toContain('decide');
  });
});
