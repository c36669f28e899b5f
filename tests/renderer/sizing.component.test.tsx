/** The views Find and Sizes of the Size page. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { presets } from '../../src/shared/display-units.ts';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeStopped } from './support/sizing.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});

const views = (): HTMLElement => screen.getByRole('navigation', { name: 'Views of the joint' });
const open = async (view: string, joint = 'Boom tip'): Promise<void> => {
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: joint }));
  await screen.findByRole('list', { name: 'Margins, lowest first' });
  fireEvent.click(within(views()).getByRole('button', { name: view }));
};
const body = (name: string): HTMLElement => screen.getByRole('region', { name });
const find = (): void => {
  fireEvent.click(within(body('Find')).getByRole('button', { name: 'Find' }));
};
const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const type = (name: string, text: string): void => {
  fireEvent.input(field(name), { target: { value: text } });
};
const sent = (name: 'joint.analyse' | 'joint.size' | 'joint.sizes'): Project =>
  bridge.last(name).document as Project;

describe('Find', () => {
  it('asks about this joint alone, with what was typed and the step that the field shows', async () => {
    await open('Find');
    find();
    await screen.findByText(/24\.0 mm is the shortest overlap that reaches the target of \+0\.25/);
    const { document, jointId, job, ...question } = bridge.last('joint.size');
    expect((document as Project).joints.map(({ id }) => id)).toEqual(['tip']);
    expect([jointId, typeof job]).toEqual(['tip', 'string']);
    expect(field('Step').placeholder).toBe('1');
    expect(question).toEqual({ vary: 'overlap', step: 1 });
    type('Target', '0.4');
    fireEvent.click(screen.getByRole('radio', { name: 'Sleeve wall' }));
    type('Step', '0.2');
    type('Look from', '0.6');
    type('to', '2');
    find();
    await waitFor(() => expect(bridge.count('joint.size')).toBe(2));
    const { document: _document, jointId: _id, job: _job, ...next } = bridge.last('joint.size');
    expect(next).toEqual({ vary: 'sleeve-wall', target: 0.4, step: 0.2, from: 0.6, to: 2 });
  });

  it('takes its step in the unit of what is looked for', async () => {
    localStorage.setItem('lapwright-units', JSON.stringify(presets.US));
    await open('Find');
    const unit = (): string => field('Step').nextElementSibling?.textContent ?? '';
    for (const [what, symbol, usual, step] of [
      ['Overlap', 'in', '0.05', 1.27],
      ['Sleeve wall', 'in', '0.005', 0.127],
      ['Gap', 'mil', '2', 0.0508],
    ] as const) {
      fireEvent.click(screen.getByRole('radio', { name: what }));
      expect([what, unit(), field('Step').placeholder]).toEqual([what, symbol, usual]);
      const before = bridge.count('joint.size');
      find();
      await waitFor(() => expect(bridge.count('joint.size')).toBe(before + 1));
      expect(bridge.last('joint.size')).toMatchObject({ step });
      await screen.findByText(/is the shortest overlap/);
    }
    type('Step', '2');
    type('Look from', '4');
    find();
    await waitFor(() => expect(bridge.count('joint.size')).toBe(4));
    expect(bridge.last('joint.size')).toMatchObject({ vary: 'gap', step: 0.0508, from: 0.1016 });
  });

  it('asks nothing while a field says what no number is', async () => {
    await open('Find');
    type('Target', '0,4');
    const button = within(body('Find')).getByRole('button', { name: 'Find' });
    expect((button as HTMLButtonElement).disabled).toBe(true);
    expect(field('Target').getAttribute('aria-invalid')).toBe('true');
    fireEvent.submit(button.closest('form')!);
    expect(bridge.count('joint.size')).toBe(0);
    type('Target', '30');
    expect(screen.getByText(/lies between −?-?0\.5 and 20/)).toBeTruthy();
    type('Target', '');
    expect((button as HTMLButtonElement).disabled).toBe(false);
  });

  it('shows the check at the answer and one step below it, and the curve as a table', async () => {
    await open('Find');
    find();
    const table = await screen.findByRole('table', { name: /full analysis/ });
    const rows = within(table).getAllByRole('row').slice(1);
    expect(rows.map((row) => row.textContent)).toEqual([
      expect.stringMatching(/^23\.0 mm\+0\.23missed/),
      expect.stringMatching(/^24\.0 mm\+0\.28reached/),
    ]);
    const canvas = screen.getByRole('img', { name: /Lowest margin against size/ });
    expect(canvas.getAttribute('aria-label')).toContain('from 1.0 mm, −0.90, to 60.0 mm, +0.90');
  });

  it('puts the answer into the joint, says what it was, and puts it back', async () => {
    await open('Find');
    const before = field('Overlap').value;
    find();
    fireEvent.click(await screen.findByRole('button', { name: 'Use it: 24.0 mm' }));
    expect(field('Overlap').value).toBe('24.0');
    expect(screen.getByText(`In the joint now: overlap ${before} mm → 24.0 mm.`)).toBeTruthy();
    // The answer is now of an older document: it is dimmed, and cannot be used.
    expect(screen.getByText(/Of the joint before its last change/)).toBeTruthy();
    const use = screen.getByRole('button', { name: 'Use it: 24.0 mm' }) as HTMLButtonElement;
    expect(use.disabled).toBe(true);
    await waitFor(() => expect(sent('joint.analyse').joints[0]?.overlap).toBe(24));
    fireEvent.click(screen.getByRole('button', { name: 'Put back' }));
    expect(field('Overlap').value).toBe(before);
    expect(screen.queryByText(/In the joint now/)).toBeNull();
  });

  it('says what stops it, and uses a change that helps', async () => {
    bridge.answer('joint.size', ({ document }) =>
      ok(makeStopped((document as Project).joints[0]!)),
    );
    await open('Find');
    find();
    await screen.findByText(
      /No overlap from 1\.0 mm to 60\.0 mm reaches the target of \+0\.25; the best is \+0\.06 at 60\.0 mm\. .* stops it: past 30\.0 mm more overlap does not raise it\./,
    );
    const table = screen.getByRole('table', { name: 'Changes that help' });
    const rows = within(table).getAllByRole('row');
    expect(rows.map((row) => row.textContent)).toEqual([
      'gap 0.20 → 0.30 mmreaches the target with an overlap of 19.0 mm: +0.26Use it',
      'double lap in place of singlehelps by 0.09, to +0.15 at 60.0 mmUse it',
    ]);
    expect(screen.getByText('Tried and of no help: a thicker sleeve wall.')).toBeTruthy();
    fireEvent.click(within(rows[0]!).getByRole('button', { name: /Use it: gap/ }));
    expect(screen.getByText(/In the joint now: gap 0\.20 → 0\.30 mm; overlap/)).toBeTruthy();
    await waitFor(() => expect(sent('joint.analyse').joints[0]?.overlap).toBe(19));
    expect(sent('joint.analyse').joints[0]?.name).toBe('thicker gap');
  });

  it('keeps the answer while another view is looked at', async () => {
    await open('Find');
    find();
    await screen.findByText(/24\.0 mm is the shortest/);
    fireEvent.click(within(views()).getByRole('button', { name: 'Stress' }));
    expect(screen.queryByText(/24\.0 mm is the shortest/)).toBeNull();
    fireEvent.click(within(views()).getByRole('button', { name: 'Find' }));
    expect(screen.getByText(/24\.0 mm is the shortest/)).toBeTruthy();
    expect(bridge.count('joint.size')).toBe(1);
  });

  it('can be stopped, and tells a refusal in words', async () => {
    bridge.hold();
    await bridge.release();
    await open('Find');
    bridge.hold();
    find();
    fireEvent.click(await screen.findByRole('button', { name: 'Stop: Sizing' }));
    bridge.refuse('joint.size', { code: 'stopped' });
    await bridge.release();
    await screen.findByText('Stopped before an answer was found.');
    bridge.refuse('joint.size', { code: 'bad-input', message: 'no load acts on it' });
    find();
    await screen.findByText('No load acts on it.');
  });
});

describe('Sizes', () => {
  const add = (): void => {
    fireEvent.click(screen.getByRole('button', { name: 'Add a size' }));
  };

  it('starts empty; a size is added, given what differs, and taken away', async () => {
    await open('Sizes');
    expect(screen.getByText(/The same joint in other sizes of the frame/)).toBeTruthy();
    add();
    add();
    type('Size 2, Diameter', '40');
    type('Size 2, Loads ×', '1.5');
    type('Name of size 2', 'Large');
    await waitFor(() =>
      expect(sent('joint.analyse').joints[0]?.sizes).toEqual([
        { id: 'size-1', name: 'Size 1' },
        { id: 'size-2', name: 'Large', outsideDiameter: 40, loadFactor: 1.5 },
      ]),
    );
    fireEvent.click(screen.getByRole('button', { name: 'Remove Size 1' }));
    await waitFor(() =>
      expect(sent('joint.analyse').joints[0]?.sizes?.map(({ name }) => name)).toEqual(['Large']),
    );
    expect(field('Large, Diameter').value).toBe('40.0');
    // What is left out is the joint's own, and shown so.
    type('Large, Diameter', '');
    expect(field('Large, Diameter').placeholder).toBe('32');
    await waitFor(() =>
      expect(sent('joint.analyse').joints[0]?.sizes?.[0]).toEqual({
        id: 'size-2',
        name: 'Large',
        loadFactor: 1.5,
      }),
    );
  });

  it('gives a size loads of its own', async () => {
    await open('Sizes');
    add();
    fireEvent.click(screen.getByRole('checkbox', { name: 'Size 1, loads of its own' }));
    type('Size 1, Gust, axial force', '3.5');
    await waitFor(() =>
      expect(sent('joint.analyse').joints[0]?.sizes?.[0]?.loads?.[0]).toMatchObject({
        case: 'gust',
        force: 3500,
      }),
    );
    fireEvent.click(screen.getByRole('checkbox', { name: 'Size 1, loads of its own' }));
    await waitFor(() =>
      expect(sent('joint.analyse').joints[0]?.sizes?.[0]).toEqual({
        id: 'size-1',
        name: 'Size 1',
      }),
    );
  });

  it('shows margins and needs in the same table, the worst marked, and one overlap for all', async () => {
    await open('Sizes');
    add();
    add();
    fireEvent.click(screen.getByRole('button', { name: 'Analyse' }));
    await screen.findByText(/21\.0 mm for all reaches the target of \+0\.25 in every size/);
    expect(bridge.last('joint.sizes')).toMatchObject({ each: false, jointId: 'tip' });
    const table = screen.getByRole('table', { name: /Frame sizes of/ });
    const bodies = within(table)
      .getAllByRole('rowgroup')
      .filter((group) => group.tagName === 'TBODY');
    expect(bodies.map((group) => group.textContent?.includes('worst'))).toEqual([false, true]);
    expect(bodies[1]?.textContent).toContain('−0.07');
    expect(bodies[1]?.textContent).toContain('21.0 mm');
    fireEvent.click(screen.getByRole('button', { name: 'Use it: 21.0 mm' }));
    expect(field('Overlap').value).toBe('21.0');
    expect(screen.getByText(/Figures of the joint before its last change/)).toBeTruthy();
    fireEvent.click(screen.getByRole('radio', { name: 'One each' }));
    fireEvent.click(screen.getByRole('button', { name: 'Analyse' }));
    await screen.findByText('Each size reaches the target of +0.25 with the overlap of its own.');
    expect(bridge.last('joint.sizes')).toMatchObject({ each: true });
  });

  it('of a flat joint has widths and thicknesses', async () => {
    await open('Sizes', 'Tail lug');
    add();
    type('Size 1, Width', '30');
    type('Size 1, Strip', '4');
    await waitFor(() =>
      expect(sent('joint.analyse').joints[0]?.sizes).toEqual([
        { id: 'size-1', name: 'Size 1', width: 30, thickness: 4 },
      ]),
    );
  });
});
