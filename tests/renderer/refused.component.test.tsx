/** Text that could not be taken changes nothing, and whoever saves or prints is told of it. */
import { fireEvent, render, screen, waitFor } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
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
beforeEach(async () => {
  bridge = makeFakeBridge();
  disk = useDisk(bridge);
  disk.chosen.add(`${HOME}/frames`);
  disk.put(FILE, makeProject());
  bridge.answer('project.initial', () =>
    ok({ document: makeProject(), origin: 'test.lapwright.json', file: disk.fileAt(FILE) }),
  );
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
  await screen.findByRole('img', { name: /Shear along/ });
  await screen.findByRole('img', { name: /Strength over/ });
});

const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const type = (name: string, text: string): void => {
  field(name).focus();
  fireEvent.input(field(name), { target: { value: text } });
};
/** Letter by letter, as it reaches the page. */
const typeAll = (name: string, text: string): void => {
  for (let n = 1; n <= text.length; n += 1) type(name, text.slice(0, n));
};
const press = (key: string, more: KeyboardEventInit = {}): void =>
  void fireEvent.keyDown(window, { key, ctrlKey: true, ...more });
const sent = (): Project => bridge.last('joint.analyse').document as Project;
const drawn = (): string =>
  screen.getByRole('slider', { name: 'Drag overlap' }).getAttribute('aria-valuetext') ?? '';
const swept = (): string =>
  screen.getByRole('img', { name: /Strength over/ }).getAttribute('aria-label') ?? '';
const said = (): string => document.querySelector('.said-line')?.textContent ?? '';

describe('text that is no number', () => {
  it.each(['25,5', '1/', '5 MPa'])('leaves no prefix of itself behind: %s', async (text) => {
    type('Overlap', '22');
    fireEvent.keyDown(field('Overlap'), { key: 'Enter' });
    await waitFor(() => expect(sent().joints[0]?.overlap).toBe(22));
    typeAll('Overlap', text);
    field('Gap').focus();
    expect(field('Overlap').value).toBe(text);
    expect(field('Overlap').getAttribute('aria-invalid')).toBe('true');
    await waitFor(() => expect(sent().joints[0]?.overlap).toBe(22));
    expect(drawn()).toBe('22.0 mm');
    expect(swept()).toContain('At the present 22.0 mm');
    expect(screen.queryByText('not recalculated')).toBeNull();
    // The margins are of what stands: the report of 22 mm.
    await waitFor(() =>
      expect(screen.getByRole('list', { name: /^Margins/ }).textContent).toContain('−0.12'),
    );
  });

  it('is told by every way of saving, and the file holds what stands', async () => {
    type('Overlap', '22');
    fireEvent.keyDown(field('Overlap'), { key: 'Enter' });
    typeAll('Overlap', '30,5');
    press('s');
    await waitFor(() =>
      expect(said()).toBe('Overlap of Boom tip holds no number: 22.0 mm is saved.'),
    );
    expect(disk.project(FILE).joints[0]?.overlap).toBe(22);
    // Put right, the line has nothing more to say.
    type('Overlap', '30.5');
    expect(said()).toBe('');
    press('s');
    await waitFor(() => expect(disk.project(FILE).joints[0]?.overlap).toBe(30.5));
    expect(said()).toBe('');
    type('Gap', '9');
    press('k');
    fireEvent.input(screen.getByRole('combobox', { name: /^Action, joint/ }), {
      target: { value: 'save a copy' },
    });
    Object.assign(URL, { createObjectURL: () => 'blob:x', revokeObjectURL: () => {} });
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue(undefined);
    fireEvent.keyDown(screen.getByRole('combobox', { name: /^Action, joint/ }), { key: 'Enter' });
    expect(said()).toBe('Gap of Boom tip is out of its range: 0.20 mm is saved.');
  });

  it('stands on the sheet as what it was, and the sheet says so', async () => {
    typeAll('Overlap', '3x');
    field('Overlap').blur();
    press('p');
    expect(
      await screen.findByText('Overlap of Boom tip holds no number: 30.0 mm stands on the sheet.'),
    ).toBeTruthy();
    fireEvent.keyDown(window, { key: 'Escape' });
    await screen.findByRole('textbox', { name: 'Overlap' });
    expect(field('Overlap').value).toBe('3x');
    fireEvent.keyDown(field('Overlap'), { key: 'Escape' });
    field('Overlap').blur();
    press('p');
    await screen.findByRole('heading', { name: 'Sheet' });
    expect(screen.queryByText(/stands on the sheet/)).toBeNull();
  });

  it('is there again after a look at another page, another joint, and saving from there', async () => {
    typeAll('Overlap', '30,5');
    press('1');
    press('s');
    await waitFor(() => expect(said()).toMatch(/^Overlap of Boom tip holds no number: 30\.0 mm/));
    press('2');
    expect(field('Overlap').value).toBe('30,5');
    expect(field('Overlap').getAttribute('aria-invalid')).toBe('true');
    fireEvent.change(screen.getByRole('combobox', { name: 'Joint' }), { target: { value: 'lug' } });
    await screen.findByRole('heading', { name: 'Size Tail lug' });
    expect(field('Overlap').value).toBe('25.0');
    fireEvent.change(screen.getByRole('combobox', { name: 'Joint' }), { target: { value: 'tip' } });
    await screen.findByRole('heading', { name: 'Size Boom tip' });
    expect(field('Overlap').value).toBe('30,5');
  });

  it('goes where what stands there has become another', async () => {
    typeAll('Overlap', '30,5');
    press('1');
    press('2');
    fireEvent.keyDown(screen.getByRole('slider', { name: 'Drag overlap' }), { key: 'ArrowRight' });
    expect(field('Overlap').value).toBe('30.5');
    expect(field('Overlap').getAttribute('aria-invalid')).toBeNull();
    press('s');
    await waitFor(() => expect(disk.project(FILE).joints[0]?.overlap).toBe(30.5));
    expect(said()).toBe('');
  });
});
