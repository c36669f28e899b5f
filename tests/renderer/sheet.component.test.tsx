/** The sheet before it is printed: what stands on it, what is asked for it, what is kept of it. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { cautions } from '../../src/shared/cautions.ts';
import type { Bridge } from '../../src/shared/contract.ts';
import { ok } from '../../src/shared/reply.ts';
import { signed } from '../../src/shared/words.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { HOME, useDisk } from './support/files.ts';
import { useBrowser } from './support/page.ts';
import { makeProject, socket } from './support/project.ts';
import { makeReport, makeSheet } from './support/reports.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
const print = vi.fn();
beforeEach(() => {
  bridge = makeFakeBridge();
  print.mockClear();
  vi.stubGlobal('print', print);
});

async function open(on: Bridge = bridge): Promise<void> {
  render(() => <App bridge={on} />);
  await screen.findByRole('heading', { name: 'Test frame' });
}
const laid = (): Promise<HTMLElement> => screen.findByText(/^\d+ pages?, (A4|Letter)/);
async function openSheet(on: Bridge = bridge): Promise<void> {
  await open(on);
  fireEvent.click(await screen.findByRole('button', { name: 'Sheet …' }));
  await laid();
}
const paper = (): string =>
  [...document.querySelectorAll('.sheet-pages > .sheet-page')]
    .map((page) => page.textContent)
    .join('\n');
const press = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const tick = (name: string | RegExp): void => {
  fireEvent.click(screen.getByLabelText(name));
};
const sheetsAsked = (): unknown[] =>
  bridge.asked.filter(({ name }) => name === 'joint.sheet').map(({ input }) => input.jointId);

describe('the sheet of a project', () => {
  it('has the table of all joints, the details of each, cautions and who signs', async () => {
    await openSheet();
    expect(screen.getByRole('heading', { name: 'All joints, lowest margin first' })).toBeTruthy();
    expect(sheetsAsked()).toEqual(['tip', 'root', 'lug']);
    for (const name of ['Boom tip', 'Boom root', 'Tail lug']) {
      expect(screen.getByRole('heading', { level: 1, name })).toBeTruthy();
    }
    for (const text of cautions) expect(paper()).toContain(text);
    for (const role of ['Prepared', 'Checked', 'Approved']) {
      expect(screen.getByRole('rowheader', { name: role })).toBeTruthy();
    }
    expect(paper()).toContain('Lapwright 9.9.9, model 1');
    expect(paper()).toContain('test.lapwright.json');
    expect(paper()).toContain('typical: replace by your coupons');
  });

  it('lists every margin as the reply has it', async () => {
    await openSheet();
    const { margins } = makeReport(socket);
    const [table] = document.querySelectorAll('.margins-table');
    const rows = [...table!.querySelectorAll('tbody tr')].map((row) => row.textContent ?? '');
    expect(rows).toHaveLength(margins.length);
    margins.forEach((margin, i) => {
      expect(rows[i]).toContain(signed(margin.margin));
      expect(rows[i]).toContain(margin.label);
      expect(rows[i]).toContain(margin.state);
    });
  });

  it('numbers its pages, all of them', async () => {
    await openSheet();
    const pages = [...document.querySelectorAll('.sheet-pages > .sheet-page')];
    expect(pages.length).toBeGreaterThan(3);
    pages.forEach((page, i) => {
      expect(page.querySelector('.sheet-number')?.textContent).toBe(
        `page ${i + 1} of ${pages.length}`,
      );
    });
  });

  it('draws curves in lines, not on a canvas', async () => {
    await openSheet();
    expect(document.querySelectorAll('.sheet-page canvas')).toHaveLength(0);
    const plots = screen.getAllByRole('img', { name: /^Shear along/ });
    expect(plots[0]!.querySelectorAll('polyline').length).toBeGreaterThan(0);
    expect(screen.getAllByRole('img', { name: /^Strength over the load/ })).toHaveLength(3);
  });

  it('says of a joint that cannot be computed why, and prints the others', async () => {
    bridge.answer('joint.sheet', (input) =>
      input.jointId === 'root'
        ? { ok: false, error: { code: 'bad-input', field: 'joints.0', message: 'too short' } }
        : ok(makeSheet(socket, input)),
    );
    await openSheet();
    expect(paper()).toContain('This joint cannot be computed. Too short.');
    expect(document.querySelectorAll('.margins-table')).toHaveLength(2);
  });
});

describe('the file on it', () => {
  const FRAMES = `${HOME}/frames`;
  const inBar = (): string => document.querySelector('.bar .origin')?.textContent ?? '';
  const inHead = (): string => document.querySelector('.title-file dd')?.textContent ?? '';
  const feet = (): (string | null)[] =>
    [...document.querySelectorAll('.sheet-pages > .sheet-page > .sheet-foot')].map(
      ({ textContent }) => textContent,
    );
  const write = (job: string): void => {
    fireEvent.input(screen.getByLabelText('Revision'), { target: { value: job } });
  };
  const saveAs = async (name: string): Promise<void> => {
    fireEvent.keyDown(window, { key: 's', ctrlKey: true, shiftKey: true });
    await waitFor(() =>
      expect(document.querySelector('.folders [type=submit][aria-disabled=false]')).toBeTruthy(),
    );
    fireEvent.input(screen.getByLabelText('File name'), { target: { value: name } });
    fireEvent.submit(document.querySelector('.folders form')!);
    await waitFor(() => expect(inBar()).toBe(`${name}.lapwright`));
  };
  const isOf = async (text: string): Promise<void> => {
    await waitFor(() => expect(inHead()).toBe(text));
    expect(feet().length).toBeGreaterThan(1);
    for (const foot of feet()) expect(foot).toContain(`${text} · printed`);
  };

  it('is the one in the bar, as soon as it is saved, and says when it has not all of it', async () => {
    bridge = makeFakeBridge(makeProject({ joints: [socket] }));
    const disk = useDisk(bridge);
    disk.chosen.add(FRAMES);
    disk.last = FRAMES;
    await openSheet();
    await isOf('test.lapwright.json');
    write('B');
    await isOf('test.lapwright.json, with changes not saved');
    await saveAs('Curlew B');
    await isOf('Curlew B.lapwright');
    write('C');
    await isOf('Curlew B.lapwright, with changes not saved');
    await saveAs('Curlew C');
    await isOf('Curlew C.lapwright');
    press(/^Close/);
    fireEvent.click(await screen.findByRole('button', { name: 'Sheet …' }));
    await laid();
    await isOf('Curlew C.lapwright');
  });
});

describe('what stands on it', () => {
  it('is chosen, and asked for once', async () => {
    await openSheet();
    press('None');
    await waitFor(() => expect(document.querySelector('.margins-table')).toBeNull());
    tick('Boom root');
    await screen.findByRole('heading', { level: 1, name: 'Boom root' });
    expect(sheetsAsked()).toEqual(['tip', 'root', 'lug']);
    tick('Table, lowest margin first');
    await waitFor(() => expect(document.querySelector('.joints-table')).toBeNull());
  });

  it('has the working on request, without the rest being computed again', async () => {
    await openSheet();
    press('None');
    tick('Boom tip');
    await waitFor(() => expect(document.querySelectorAll('.margins-table')).toHaveLength(1));
    tick('of the three lowest margins');
    await waitFor(() => expect(document.querySelector('.sheet-page .card')).toBeTruthy());
    expect(bridge.last('joint.sheet')).toMatchObject({ jointId: 'tip', workings: 3, sweep: false });
    // Strength against overlap is still there.
    expect(screen.getByRole('img', { name: /^Strength over the load/ })).toBeTruthy();
    const asked = bridge.count('joint.sheet');
    tick('none');
    await waitFor(() => expect(document.querySelector('.sheet-page .card')).toBeNull());
    expect(bridge.count('joint.sheet')).toBe(asked);
  });

  it('is of many joints only what is chosen of them', async () => {
    const joints = Array.from({ length: 12 }, (_, i) => ({
      ...socket,
      id: `j${i}`,
      name: `Joint ${i}`,
    }));
    bridge = makeFakeBridge(makeProject({ joints }));
    await openSheet();
    expect(sheetsAsked()).toEqual([]);
    expect(document.querySelectorAll('.joints-table tbody[data-joint-id]')).toHaveLength(12);
    press('Below the target');
    await waitFor(() => expect(sheetsAsked()).toEqual(['j1', 'j2']));
  });

  it('lies on the paper that is remembered', async () => {
    localStorage.setItem('lapwright-paper', 'A4');
    await openSheet();
    expect(document.querySelector('.sheet-pages > .is-a4')).toBeTruthy();
    tick('Letter');
    await waitFor(() => expect(document.querySelector('.sheet-pages > .is-letter')).toBeTruthy());
    expect(document.querySelector('.sheet-pages > .is-a4')).toBeNull();
    expect(localStorage.getItem('lapwright-paper')).toBe('Letter');
  });

  it('waits while it is computed, can be stopped, and goes on', async () => {
    await open();
    bridge.answer('joint.sheet', () => ({
      ok: false,
      error: { code: 'stopped', field: '', message: 'stopped' },
    }));
    fireEvent.click(await screen.findByRole('button', { name: 'Sheet …' }));
    await screen.findByText('The sheet was stopped before it was done.');
    expect(document.querySelector('.sheet-pages > .sheet-page')).toBeNull();
    press('Print …');
    expect(print).not.toHaveBeenCalled();
    bridge.answer('joint.sheet', (input) => ok(makeSheet(socket, input)));
    press('Go on');
    await laid();
  });
});

describe('words of the head and the sign-off', () => {
  it('stand in the project, on the paper, and can be taken back', async () => {
    await openSheet();
    const checks = bridge.count('project.check');
    fireEvent.input(screen.getByLabelText('Revision'), { target: { value: 'B' } });
    fireEvent.input(screen.getByLabelText('Prepared by'), { target: { value: 'A. Writer' } });
    await waitFor(() => expect(paper()).toContain('revision B'));
    expect(paper()).toContain('A. Writer');
    expect(paper()).toContain('with changes not saved');
    // No figure depends on them.
    expect(bridge.count('project.check')).toBe(checks);
    expect(bridge.count('joint.sheet')).toBe(3);
    press('Add a revision');
    fireEvent.input(screen.getByLabelText('Change, row 1'), { target: { value: 'first issue' } });
    await waitFor(() => expect(paper()).toContain('first issue'));
    press('Remove row 1');
    await waitFor(() => expect(paper()).not.toContain('first issue'));
  });
});

describe('printing', () => {
  it('is begun by the key, of what is looked at, and ended by Escape', async () => {
    await open();
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    await screen.findByRole('heading', { name: 'Size Boom tip' });
    fireEvent.keyDown(window, { key: 'p', ctrlKey: true });
    await laid();
    expect(print).not.toHaveBeenCalled();
    expect(sheetsAsked()).toEqual(['tip']);
    expect(document.querySelector('.joints-table')).toBeNull();
    expect(document.activeElement?.textContent).toBe('Print …');
    fireEvent.keyDown(window, { key: 'p', ctrlKey: true });
    expect(print).toHaveBeenCalledTimes(1);
    fireEvent.keyDown(window, { key: 'Escape' });
    expect(await screen.findByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
  });

  it('is of joint and variants where they are compared', async () => {
    const variant = { ...socket, id: 'tip-long', name: 'Boom tip, long', overlap: 60 };
    bridge = makeFakeBridge(makeProject({ variants: [{ of: 'tip', joint: variant }] }));
    await open();
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    await screen.findByRole('heading', { name: 'Compare Boom tip' });
    fireEvent.click(await screen.findByRole('button', { name: 'Sheet …' }));
    await laid();
    expect(sheetsAsked()).toEqual(['tip', 'tip-long']);
    expect(paper()).toContain('variant of Boom tip: no part of the frame');
  });

  it('saves a PDF in the program’s own window alone', async () => {
    await openSheet();
    expect(screen.queryByRole('button', { name: 'Save as PDF …' })).toBeNull();
  });

  it('saves it under the name of what it is of', async () => {
    await openSheet({ ...bridge, carrier: 'electron' });
    press('Save as PDF …');
    await screen.findByText(/Saved as Test-frame\.pdf\./);
    expect(bridge.last('sheet.pdf')).toEqual({ name: 'Test-frame' });
    bridge.refuse('sheet.pdf', { message: 'the disk is full' });
    press('Save as PDF …');
    expect(within(await screen.findByRole('alert')).getByText('The disk is full.')).toBeTruthy();
  });
});
