/** Rows of results that are not complete: told, not counted, not lost. */
import { cleanup, fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { KeptSet } from '../../src/shared/kept-rows.ts';
import type { Project } from '../../src/shared/project.ts';
import type { CouponResult } from '../../src/shared/project-coupons.ts';
import { ok, refuse } from '../../src/shared/reply.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { fileMenu, useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const FIRST = 'd1002-23dry-0-20';
/** Lap shear of titanium, warm and cold; these results of the first set. */
function projectWith(results: readonly CouponResult[] = []): Project {
  const { coupons } = planCoupons(makeProject(), {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd1002', adherend: 'titanium' }],
    environments: [23, -20].map((temperature) => ({ temperature, moisture: 'dry' as const })),
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  coupons.sets[0]!.results = [...results];
  return makeProject({ coupons });
}

/** What is on disk, by set: it outlives the window. */
type Disk = Map<string, KeptSet>;
function bridgeOver(disk: Disk, project: Project): FakeBridge {
  const bridge = makeFakeBridge(project);
  bridge.answer('rows.keep', ({ project: name, setId, rows }) => {
    const at = '2026-03-01T09:00:00Z';
    if (rows.length === 0) disk.delete(setId);
    else disk.set(setId, { project: name, at, setId, rows: structuredClone(rows) });
    return ok({ at: rows.length === 0 ? null : at });
  });
  bridge.answer('rows.kept', () => ok({ sets: structuredClone([...disk.values()]) }));
  bridge.answer('rows.drop', ({ setId }) => ok({ dropped: disk.delete(setId) }));
  return bridge;
}
/** A window; one that was open before has died. */
async function open(project: Project = projectWith(), disk: Disk = new Map()) {
  cleanup();
  const bridge = bridgeOver(disk, project);
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '5', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Coupons' });
  await waitFor(() => expect(bridge.count('rows.kept')).toBe(1));
  return { bridge, disk };
}
/** What was asked has been answered. */
const answered = () => new Promise((done) => setTimeout(done, 20));
const view = (name: string): void => {
  const views = screen.getByRole('navigation', { name: 'Views of the coupons' });
  fireEvent.click(within(views).getByRole('button', { name }));
};
const chooseSet = (i: number): void => {
  const set = screen.getByLabelText<HTMLSelectElement>('Set');
  fireEvent.change(set, { target: { value: set.options[i]!.value } });
};
const cell = (row: string, column: string): HTMLInputElement =>
  screen.getByLabelText(`${row}: ${column}`);
const type = (input: HTMLInputElement, text: string): void => {
  fireEvent.input(input, { target: { value: text } });
};
const page = (): string => document.querySelector('.coupon-page')!.textContent!;
const offers = (): string[] =>
  [...document.querySelectorAll('.coupon-ask p')].map((one) => one.textContent!);
const click = (name: string): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const kept = (disk: Disk, id = FIRST): string[] =>
  (disk.get(id)?.rows ?? []).map(({ text }) => `${text.coupon} ${text.load_n}`);

describe('rows that are not complete', () => {
  it('are told on every view of their set, and do not count', async () => {
    await open();
    view('Results');
    type(cell('row 1', 'load, N'), '4100');
    type(cell('row 2', 'cohesive, per cent'), '100');
    type(cell('row 3', 'batch'), 'A');
    expect(page()).toContain('2 rows are not complete: they do not count.');
    expect(page()).toContain('1 result of 18 planned');
    type(cell('coupon 1', 'load, N'), '41OO');
    expect(page()).toContain(
      '1 row has a change that is not complete: what was there before counts.',
    );
    view('Statistics');
    expect(page()).toContain('2 rows are not complete: they do not count.');
    view('Plan');
    expect(page()).not.toContain('not complete');
    expect(document.querySelector('.coupon-sets')!.textContent).toContain('1 of 18');
  });

  it('are still there after another set, another view and another page', async () => {
    await open(projectWith([{ coupon: '9', batch: 'A', load: 4900 }]));
    view('Results');
    type(cell('row 2', 'cohesive, per cent'), '100');
    type(cell('coupon 10', 'note'), 'looked at first');
    type(cell('coupon 9', 'load, N'), '49OO');
    chooseSet(1);
    expect(page()).not.toContain('not complete');
    type(cell('row 1', 'batch'), 'B');
    view('Plan');
    view('Results');
    expect(cell('coupon 1', 'batch').value).toBe('B');
    // Also where something else of the project changes meanwhile.
    fireEvent.change(screen.getByLabelText('Tested on'), { target: { value: '2026-03-01' } });
    chooseSet(0);
    expect(cell('coupon 9', 'load, N').value).toBe('49OO');
    expect(cell('coupon 10', 'note').value).toBe('looked at first');
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    await screen.findByRole('heading', { name: 'Coupons' });
    view('Results');
    expect(cell('coupon 10', 'cohesive, per cent').value).toBe('100');
    expect(cell('coupon 9', 'load, N').value).toBe('49OO');
    expect(page()).toContain('1 row is not complete: it does not count.');
    type(cell('coupon 10', 'load, N'), '4100');
    type(cell('coupon 9', 'load, N'), '4950');
    expect(page()).toContain('2 results of 18 planned');
    expect(page()).not.toContain('not complete');
  });

  it('are on disk as they are typed, and offered by the next window', async () => {
    const { disk } = await open();
    view('Results');
    type(cell('row 1', 'cohesive, per cent'), '100');
    type(cell('coupon 1', 'load, N'), '4,1');
    await waitFor(() => expect(kept(disk)).toEqual(['1 4,1']));
    expect(page()).toMatch(/Kept on this computer, /);

    const { bridge } = await open(projectWith(), disk);
    await waitFor(() => expect(offers()).toHaveLength(1));
    expect(offers()[0]).toMatch(
      /^Typed of “Lap shear, thin metal, 23 °C dry, gap 0.2” until .* and not in this file: 1 row that is not complete\.$/,
    );
    click('Take them in');
    // It shows them in their set.
    expect(cell('coupon 1', 'load, N').value).toBe('4,1');
    expect(cell('coupon 1', 'cohesive, per cent').value).toBe('100');
    expect(page()).toContain('1 row is not complete: it does not count.');
    expect(offers()).toEqual([]);
    expect(kept(disk)).toEqual(['1 4,1']);
    type(cell('coupon 1', 'load, N'), '4100');
    await waitFor(() => expect(kept(disk)).toEqual(['1 4100']));
    expect(bridge.count('rows.drop')).toBe(0);
  });

  it('stay on disk while other rows of their set are typed, until they are put away', async () => {
    const { disk } = await open();
    view('Results');
    type(cell('row 1', 'batch'), 'A');
    await waitFor(() => expect(kept(disk)).toEqual(['1 ']));
    await open(projectWith(), disk);
    await waitFor(() => expect(offers()).toHaveLength(1));
    view('Results');
    type(cell('row 1', 'coupon'), '7');
    await waitFor(() => expect(kept(disk)).toEqual(['1 ', '7 ']));
    click('Put away');
    await waitFor(() => expect(offers()).toEqual([]));
    expect(cell('coupon 7', 'coupon').value).toBe('7');
    // What was typed now is kept on.
    await waitFor(() => expect(kept(disk)).toEqual(['7 ']));
  });

  it('write over nothing before it is known what is on disk', async () => {
    const disk: Disk = new Map();
    await open(projectWith(), disk);
    view('Results');
    type(cell('row 1', 'batch'), 'A');
    await waitFor(() => expect(kept(disk)).toEqual(['1 ']));
    cleanup();
    const bridge = bridgeOver(disk, projectWith());
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    bridge.hold();
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    await screen.findByRole('heading', { name: 'Coupons' });
    view('Results');
    type(cell('row 1', 'coupon'), '9');
    expect(bridge.count('rows.keep')).toBe(0);
    await bridge.release();
    await waitFor(() => expect(kept(disk)).toEqual(['1 ', '9 ']));
  });

  it('are gone from the disk once they are removed', async () => {
    const { disk } = await open();
    view('Results');
    type(cell('row 1', 'batch'), 'A');
    await waitFor(() => expect(kept(disk)).toEqual(['1 ']));
    click('Remove coupon 1');
    await waitFor(() => expect(disk.size).toBe(0));
  });

  it('say it where they cannot be kept', async () => {
    const { bridge } = await open();
    bridge.answer('rows.keep', () =>
      refuse('internal', '', 'The rows could not be kept: the disk is full.'),
    );
    view('Results');
    type(cell('row 1', 'batch'), 'A');
    expect((await screen.findByText(/the disk is full/)).getAttribute('role')).toBe('alert');
  });
});

describe('results that are not saved', () => {
  it('are kept like rows that are not complete, until the project is saved', async () => {
    const { disk } = await open(projectWith([{ coupon: '1', batch: 'A', load: 4000 }]));
    view('Results');
    type(cell('row 2', 'load, N'), '4100');
    await waitFor(() => expect(kept(disk)).toEqual(['2 4100']));
    type(cell('coupon 1', 'load, N'), '4050');
    await waitFor(() => expect(kept(disk)).toEqual(['1 4050', '2 4100']));
    type(cell('row 3', 'batch'), 'B');
    await waitFor(() => expect(kept(disk)).toHaveLength(3));
    Object.assign(URL, { createObjectURL: () => 'blob:x', revokeObjectURL: () => {} });
    fileMenu('Save a copy');
    // What no file takes is kept on.
    await waitFor(() => expect(kept(disk)).toEqual(['3 ']));
  });

  it('are offered by the next window, and written over what is here only when told so', async () => {
    const before = projectWith([{ coupon: '1', batch: 'A', load: 4000 }]);
    const { disk } = await open(structuredClone(before));
    view('Results');
    type(cell('coupon 1', 'load, N'), '4050');
    type(cell('row 2', 'load, N'), '4100');
    await waitFor(() => expect(kept(disk)).toEqual(['1 4050', '2 4100']));
    await open(structuredClone(before), disk);
    await waitFor(() => expect(offers()).toHaveLength(1));
    expect(offers()[0]).toContain('1 result and 1 result that is here with other figures.');
    expect(screen.queryByText('changes not saved')).toBeNull();
    click('Take them in');
    expect(page()).toContain('2 results of 18 planned');
    expect(cell('coupon 1', 'load, N').value).toBe('4050');
    expect(screen.getByText('changes not saved')).toBeTruthy();
  });

  it('are not offered of a set that the project has not, nor where they are in it', async () => {
    const { disk } = await open();
    view('Results');
    type(cell('row 1', 'load, N'), '4100');
    await waitFor(() => expect(kept(disk)).toEqual(['1 4100']));
    await open(makeProject(), disk);
    await answered();
    expect(offers()).toEqual([]);
    await open(projectWith([{ coupon: '1', batch: '', load: 4100 }]), disk);
    await answered();
    expect(offers()).toEqual([]);
    // Looked at, they are in safe hands: nothing is kept of them any more.
    view('Results');
    await waitFor(() => expect(disk.size).toBe(0));
  });
});
