/** The project as a file: what is asked, what is said, and that nothing is lost or written over unasked. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Bridge } from '../../src/shared/contract.ts';
import type { MenuCommand } from '../../src/shared/menu-commands.ts';
import { ok } from '../../src/shared/reply.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { type FakeDisk, HOME, useDisk } from './support/files.ts';
import { fileMenu, useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

const FRAMES = `${HOME}/frames`;
const FILE = `${FRAMES}/test.lapwright`;

let bridge: FakeBridge;
let disk: FakeDisk;
beforeEach(() => {
  bridge = makeFakeBridge();
  disk = useDisk(bridge);
});

const heading = (name: string): Promise<HTMLElement> => screen.findByRole('heading', { name });
const show = async (more: Partial<Bridge> = {}): Promise<void> => {
  render(() => <App bridge={{ ...bridge, ...more }} />);
  await heading('Test frame');
};
/** The window opens with a project that stands on disk. */
const showFile = async (more: Partial<Bridge> = {}, path = FILE): Promise<void> => {
  disk.chosen.add(FRAMES);
  disk.put(path, makeProject());
  bridge.answer('project.initial', () =>
    ok({ document: makeProject(), origin: 'test.lapwright', file: disk.fileAt(path) }),
  );
  await show(more);
};
const press = (key: string, more: KeyboardEventInit = {}): void =>
  void fireEvent.keyDown(window, { key, ctrlKey: true, ...more });
const click = (name: string | RegExp, within_: HTMLElement = document.body): void =>
  void fireEvent.click(within(within_).getByRole('button', { name }));
const dialog = (): Promise<HTMLElement> => screen.findByRole('dialog');
const isOpen = (): boolean => screen.queryByRole('dialog') !== null;
const overlap = (): HTMLInputElement => screen.getByRole('textbox', { name: 'Overlap' });
const change = (to = '31'): void => {
  press('2');
  fireEvent.input(overlap(), { target: { value: to } });
};
const canSave = (asked: HTMLElement): boolean =>
  within(asked).getByRole('button', { name: 'Save' }).getAttribute('aria-disabled') !== 'true';
const isUnsaved = (): boolean => screen.queryByText('changes not saved') !== null;
const page = (): string => document.body.textContent ?? '';
const other = (): void => disk.put(`${FRAMES}/other.lapwright`, makeProject({ name: 'Heron' }));
const settle = (): Promise<void> => new Promise((done) => setTimeout(done));

describe('saving', () => {
  it('the first time asks for a folder and a name, then knows them', async () => {
    await show();
    change();
    press('s');
    const asked = await dialog();
    await within(asked).findByRole('option', { name: 'frames' });
    expect(asked.textContent).toContain('only inside folders that you choose');
    expect(canSave(asked)).toBe(false);
    const list = within(asked).getByRole('listbox');
    fireEvent.keyDown(list, { key: 'Enter' });
    await waitFor(() => expect(asked.textContent).toContain(FRAMES));
    click('Use this folder', asked);
    await waitFor(() => expect(canSave(asked)).toBe(true));
    const name = within(asked).getByRole<HTMLInputElement>('textbox', { name: 'File name' });
    expect(name.value).toBe('Test-frame.lapwright');
    fireEvent.input(name, { target: { value: 'a/b' } });
    click('Save', asked);
    expect(asked.textContent).toContain('A name has no / in it.');
    fireEvent.input(name, { target: { value: 'mine' } });
    click('Save', asked);
    await waitFor(() => expect(isUnsaved()).toBe(false));
    expect(disk.project(`${FRAMES}/mine.lapwright`).joints[0]?.overlap).toBe(31);
    expect(page()).toContain('mine.lapwright');
    change('32');
    press('s');
    await waitFor(() => expect(isUnsaved()).toBe(false));
    expect(disk.project(`${FRAMES}/mine.lapwright`).joints[0]?.overlap).toBe(32);
  });

  it('leaves a file the longer suffix that it has, and saves as another name under the new one', async () => {
    const old = `${FRAMES}/test.lapwright.json`;
    await showFile({}, old);
    change();
    press('s');
    await waitFor(() => expect(isUnsaved()).toBe(false));
    expect(disk.project(old).joints[0]?.overlap).toBe(31);
    press('s', { shiftKey: true });
    const asked = await dialog();
    const name = within(asked).getByRole<HTMLInputElement>('textbox', { name: 'File name' });
    expect(name.value).toBe('test.lapwright.json');
    // What one types next takes the place of the name before its suffix.
    await waitFor(() => expect(document.activeElement).toBe(name));
    expect([name.selectionStart, name.selectionEnd]).toEqual([0, 'test'.length]);
    fireEvent.input(name, { target: { value: ' mine ' } });
    click('Save', asked);
    await waitFor(() => expect(page()).toContain('mine.lapwright'));
    expect([...disk.files.keys()]).toEqual([old, `${FRAMES}/mine.lapwright`]);
  });

  it('by Enter in a folder that is not chosen says what is missing, and leads there', async () => {
    await show();
    press('s');
    const asked = await dialog();
    await within(asked).findByRole('option', { name: 'frames' });
    fireEvent.click(within(asked).getByRole('button', { name: 'Home folder' }));
    const name = within(asked).getByRole('textbox', { name: 'File name' });
    fireEvent.submit(name.closest('form')!);
    const alert = await within(asked).findByRole('alert');
    expect(alert.textContent).toContain('choose this folder first');
    const use = within(asked).getByRole('button', { name: 'Use this folder' });
    expect(document.activeElement).toBe(use);
    // Nothing is chosen but by that very button.
    expect([...disk.chosen]).toEqual([]);
    fireEvent.click(use);
    await waitFor(() => expect(canSave(asked)).toBe(true));
    expect(within(asked).queryByRole('alert')).toBeNull();
    fireEvent.submit(name.closest('form')!);
    await waitFor(() => expect(disk.files.has(`${HOME}/Test-frame.lapwright`)).toBe(true));
  });

  it('is begun in the folder of the last file that was opened or saved, not of a failed one', async () => {
    disk.last = FRAMES;
    disk.chosen.add(`${HOME}/music`);
    await show();
    change();
    press('s');
    const asked = await dialog();
    await waitFor(() => expect(asked.querySelector('.folders-path')?.textContent).toBe(FRAMES));
  });

  it('takes a name and Enter before the folder has come, once', async () => {
    await showFile();
    await waitFor(() => expect(page()).toContain('test.lapwright'));
    bridge.hold();
    press('s', { shiftKey: true });
    const asked = await dialog();
    const name = within(asked).getByRole<HTMLInputElement>('textbox', { name: 'File name' });
    expect(document.activeElement).toBe(name);
    fireEvent.input(name, { target: { value: 'early' } });
    fireEvent.submit(name.closest('form')!);
    fireEvent.submit(name.closest('form')!);
    expect(isOpen()).toBe(true);
    await bridge.release();
    await waitFor(() => expect(page()).toContain('early.lapwright'));
    expect([...disk.files.keys()]).toEqual([FILE, `${FRAMES}/early.lapwright`]);
    expect(isOpen()).toBe(false);
  });

  it('puts nothing where one left before the folder has come, nor answers for who asks next', async () => {
    await showFile();
    bridge.hold();
    press('s', { shiftKey: true });
    const asked = await dialog();
    fireEvent.submit(within(asked).getByRole('textbox', { name: 'File name' }).closest('form')!);
    click('Cancel', asked);
    await waitFor(() => expect(isOpen()).toBe(false));
    press('s', { shiftKey: true });
    await dialog();
    await bridge.release();
    await settle();
    expect(isOpen()).toBe(true);
    click('Cancel');
    await settle();
    expect([...disk.files.keys()]).toEqual([FILE]);
  });

  it('takes the name of a project that is pressed in the list, and of no folder', async () => {
    await showFile();
    other();
    disk.folders.add(`${FRAMES}/old`);
    press('s', { shiftKey: true });
    const asked = await dialog();
    const name = within(asked).getByRole<HTMLInputElement>('textbox', { name: 'File name' });
    const pressed = await within(asked).findByRole('option', { name: /^other/ });
    fireEvent.input(name, { target: { value: 'a/b' } });
    click('Save', asked);
    expect(within(asked).getByRole('alert').textContent).toContain('A name has no / in it.');
    fireEvent.click(pressed);
    expect(name.value).toBe('other.lapwright');
    expect(within(asked).queryByRole('alert')).toBeNull();
    fireEvent.click(await within(asked).findByRole('option', { name: /^old/ }));
    expect(name.value).toBe('other.lapwright');
  });

  it('as another asks before it replaces what is there', async () => {
    await showFile();
    other();
    press('s', { shiftKey: true });
    let asked = await dialog();
    await within(asked).findByRole('option', { name: /^other/ });
    const name = () => within(asked).getByRole('textbox', { name: 'File name' });
    fireEvent.input(name(), { target: { value: 'other' } });
    click('Save', asked);
    await screen.findByText('There is a file other.lapwright already.');
    click('Choose another name …');
    await screen.findByRole('textbox', { name: 'File name' });
    asked = await dialog();
    await waitFor(() => expect((name() as HTMLInputElement).value).toBe('other.lapwright'));
    await within(asked).findByRole('option', { name: /^other/ });
    expect(disk.project(`${FRAMES}/other.lapwright`).name).toBe('Heron');
    click('Save', asked);
    await screen.findByText('There is a file other.lapwright already.');
    click('Replace it');
    await waitFor(() => expect(page()).toContain('other.lapwright'));
    expect(disk.project(`${FRAMES}/other.lapwright`).name).toBe('Test frame');
  });

  it('saves what was sent: what is changed meanwhile is not saved yet', async () => {
    await showFile();
    change('31');
    bridge.hold();
    press('s');
    await settle();
    fireEvent.input(overlap(), { target: { value: '32' } });
    await bridge.release();
    await waitFor(() => expect(disk.project(FILE).joints[0]?.overlap).toBe(31));
    await settle();
    expect(isUnsaved()).toBe(true);
    press('s');
    await waitFor(() => expect(isUnsaved()).toBe(false));
    expect(disk.project(FILE).joints[0]?.overlap).toBe(32);
    expect(isOpen()).toBe(false);
  });

  it('of a copy leaves the changes unsaved where the project stands in a file', async () => {
    await showFile();
    change('31');
    const clicked = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue();
    fileMenu('Save a copy');
    expect(clicked).toHaveBeenCalledOnce();
    // By the name of the file, which need not be that of the project.
    expect((clicked.mock.contexts[0] as HTMLAnchorElement).download).toBe('test copy.lapwright');
    clicked.mockRestore();
    expect(isUnsaved()).toBe(true);
    expect(disk.project(FILE).joints[0]!.overlap).not.toBe(31);
  });

  it('is known again by taking back to what was saved', async () => {
    await showFile();
    change('31');
    press('s');
    await waitFor(() => expect(isUnsaved()).toBe(false));
    fireEvent.click(screen.getByRole('button', { name: /^Undo/ }));
    expect(isUnsaved()).toBe(true);
    fireEvent.click(screen.getByRole('button', { name: /^Redo/ }));
    expect(isUnsaved()).toBe(false);
  });

  it('that the disk refuses says why, and leaves the changes unsaved', async () => {
    await showFile();
    change();
    disk.refuses = { code: 'not-writable', field: '', message: 'The disk is full.' };
    press('s');
    expect((await screen.findByText('The disk is full.')).closest('[role="alert"]')).not.toBeNull();
    expect(isUnsaved()).toBe(true);
  });

  it('of a file that is read only offers another place', async () => {
    disk.put(FILE, makeProject());
    disk.files.get(FILE)!.writable = false;
    bridge.answer('project.initial', () =>
      ok({ document: makeProject(), origin: 'x', file: disk.fileAt(FILE) }),
    );
    disk.chosen.add(FRAMES);
    await show();
    expect(screen.getByText('read only')).toBeTruthy();
    press('s');
    expect((await dialog()).textContent).toContain('test.lapwright is read only.');
    click('Save as …');
    await screen.findByRole('textbox', { name: 'File name' });
    expect(bridge.count('file.save')).toBe(0);
  });

  it('uses the system’s dialog where there is one, which has asked about replacing', async () => {
    disk.dialogs = true;
    other();
    disk.chooses = `${FRAMES}/other.lapwright`;
    bridge.answer('file.choose', () => ok({ path: disk.chooses, over: true }));
    await show();
    press('s');
    await waitFor(() => expect(page()).toContain('other.lapwright'));
    expect(isOpen()).toBe(false);
    expect(bridge.last('file.choose')).toEqual({
      purpose: 'save',
      name: 'Test-frame.lapwright',
    });
    expect(disk.project(disk.chooses).name).toBe('Test frame');
  });
});

describe('opening', () => {
  it('walks the folders by keys', async () => {
    disk.chosen.add(HOME);
    other();
    await show();
    press('o');
    const asked = await dialog();
    const list = within(asked).getByRole('listbox');
    const chosen = (): string =>
      within(list).queryByRole('option', { selected: true })?.textContent ?? '';
    await waitFor(() => expect(chosen()).toBe('frames'));
    fireEvent.keyDown(list, { key: 'ArrowDown' });
    expect(chosen()).toBe('music');
    fireEvent.keyDown(list, { key: 'Enter' });
    await screen.findByText('No folder and no project file in here.');
    fireEvent.keyDown(list, { key: 'Backspace' });
    await waitFor(() => expect(chosen()).toBe('music'));
    fireEvent.keyDown(list, { key: 'f' });
    fireEvent.keyDown(list, { key: 'Enter' });
    await waitFor(() => expect(chosen()).toMatch(/^other.lapwright/));
    fireEvent.keyDown(list, { key: 'ArrowUp', altKey: true });
    await waitFor(() => expect(chosen()).toBe('frames'));
    fireEvent.keyDown(list, { key: 'Enter' });
    await waitFor(() => expect(chosen()).toMatch(/^other.lapwright/));
    fireEvent.keyDown(list, { key: 'Enter' });
    await heading('Heron');
    expect(isOpen()).toBe(false);
  });

  it('makes a folder, and is left by Escape', async () => {
    await show();
    press('o');
    const asked = await dialog();
    await within(asked).findByRole('option', { name: 'frames' });
    click('New folder …', asked);
    const name = within(asked).getByRole('textbox', { name: 'Name of the new folder' });
    fireEvent.input(name, { target: { value: 'gliders' } });
    fireEvent.keyDown(name, { key: 'Enter' });
    await waitFor(() => expect(asked.textContent).toContain(`${HOME}/gliders`));
    expect([...disk.chosen]).toEqual([`${HOME}/gliders`]);
    fireEvent.keyDown(asked, { key: 'Escape' });
    await waitFor(() => expect(isOpen()).toBe(false));
    expect(page()).toContain('Test frame');
  });

  it('of a file that was open lately; one that is lost can be forgotten', async () => {
    other();
    disk.recent = [
      { path: `${FRAMES}/other.lapwright`, project: 'Heron', at: '2025-03-01T09:00:00Z' },
      { path: `${FRAMES}/gone.lapwright`, project: 'Gone', at: '2025-03-01T09:00:00Z' },
    ];
    await show();
    click('File');
    // As the guide has it, and the menu of the program's own window.
    expect(screen.getByRole('menu').textContent).toContain('Open recent');
    const lines = screen.getAllByRole('menuitem').map(({ textContent }) => textContent);
    expect(lines).toContain('Heronother.lapwright, …/mira/frames1 Mar 2025');
    expect(lines).toContain('Gonegone.lapwright, …/mira/framesnot there any more');
    fireEvent.keyDown(screen.getByRole('menu'), { key: 'Escape' });
    fileMenu('Gone');
    expect((await dialog()).textContent).toContain('gone.lapwright is not there any more.');
    click('Forget it');
    await waitFor(() => expect(disk.recent).toHaveLength(1));
    fileMenu('Heron');
    await heading('Heron');
  });

  it('that fails says so and leaves all as it is', async () => {
    await show();
    disk.recent = [];
    bridge.answer('file.open', () => ({
      ok: false,
      error: { code: 'bad-input', field: '', message: 'It is not in a folder that you chose.' },
    }));
    other();
    disk.chosen.add(FRAMES);
    press('o');
    fireEvent.keyDown(within(await dialog()).getByRole('listbox'), { key: 'f' });
    await screen.findByRole('option', { name: 'frames' });
    fireEvent.keyDown(screen.getByRole('listbox'), { key: 'Enter' });
    fireEvent.keyDown(
      await screen.findByRole('option', { name: /^other/ }).then((one) => one.parentElement!),
      { key: 'Enter' },
    );
    expect((await screen.findByRole('alert')).textContent).toContain(
      'Could not open other.lapwright: It is not in a folder that you chose.',
    );
    await heading('Test frame');
  });

  it('never puts changes away without a word: saves first where asked', async () => {
    await showFile();
    change();
    fileMenu('Open the demonstration project');
    expect((await dialog()).textContent).toContain('Test frame has changes that are not saved.');
    click('Stay here');
    await waitFor(() => expect(isOpen()).toBe(false));
    expect(isUnsaved()).toBe(true);
    fileMenu('Open the demonstration project');
    await dialog();
    click('Save, then open');
    await heading('Curlew');
    expect(disk.project(FILE).joints[0]?.overlap).toBe(31);
  });

  it('stays where the saving before it fails', async () => {
    await showFile();
    change();
    disk.refuses = { code: 'not-writable', field: '', message: 'The disk is full.' };
    fileMenu('Open the demonstration project');
    await dialog();
    click('Save, then open');
    await screen.findByText('The disk is full.');
    expect(isUnsaved()).toBe(true);
    expect(screen.queryByRole('heading', { name: 'Curlew' })).toBeNull();
  });

  it('of an older version says that it becomes a newer one, until it is saved', async () => {
    disk.put(FILE, makeProject());
    bridge.answer('project.initial', () =>
      ok({ document: makeProject(), origin: 'x', file: disk.fileAt(FILE), olderVersion: 0 }),
    );
    await show();
    const said = 'test.lapwright was written by an older Lapwright';
    expect(page()).toContain(said);
    press('s');
    await waitFor(() => expect(page()).not.toContain(said));
  });
});

describe('a new project', () => {
  it('has a name, materials and a joint, and asks about the one before', async () => {
    await show();
    change();
    press('n', { ctrlKey: false, altKey: true });
    const asked = await dialog();
    fireEvent.input(within(asked).getByRole('textbox', { name: 'Name' }), {
      target: { value: 'Heron' },
    });
    fireEvent.click(within(asked).getByRole('radio', { name: /^Double lap: strip/ }));
    click('Begin', asked);
    await screen.findByText('Beginning a new project puts this one away.');
    click('Begin without saving');
    await heading('Heron');
    expect(isUnsaved()).toBe(false);
    await waitFor(() =>
      expect(bridge.last('project.check').document).toMatchObject({ name: 'Heron' }),
    );
    const { document } = bridge.last('project.check') as {
      document: ReturnType<typeof makeProject>;
    };
    expect(document.joints.map(({ type }) => type)).toEqual(['flat-double']);
    expect(document.adhesives).not.toEqual([]);
  });

  it('is renamed, which can be taken back', async () => {
    await show();
    fileMenu('Rename the project …');
    const asked = await dialog();
    fireEvent.input(within(asked).getByRole('textbox', { name: 'Name' }), {
      target: { value: 'Heron' },
    });
    click('Rename', asked);
    await heading('Heron');
    press('z');
    await heading('Test frame');
  });
});

describe('a file dropped onto the window', () => {
  const transfer = (files: readonly File[]) => ({ types: ['Files'], files, dropEffect: '' });
  const file = (name: string): File => {
    const text = JSON.stringify(makeProject({ name: 'Heron' }));
    return Object.assign(new File([text], name), {
      arrayBuffer: async () => new TextEncoder().encode(text).buffer,
    });
  };
  const drop = (...names: string[]): boolean =>
    fireEvent.drop(window, { dataTransfer: transfer(names.map(file)) });

  it('is opened, an overlay says so before', async () => {
    await show();
    fireEvent.dragEnter(window, { dataTransfer: transfer([]) });
    expect(page()).toContain('Drop the project file to open it');
    fireEvent.dragLeave(window, { dataTransfer: transfer([]) });
    expect(page()).not.toContain('Drop the project file to open it');
    // The browser does nothing of its own.
    expect(drop('heron.lapwright')).toBe(false);
    await heading('Heron');
    expect(bridge.count('file.open')).toBe(0);
  });

  it.each(['old.lapwright.json', 'bare.json', 'HERON.LAPWRIGHT', 'heron.lapwright.previous'])(
    'may be %s as well',
    async (name) => {
      await show();
      drop(name);
      await heading('Heron');
    },
  );

  it('is refused where it is not UTF-8: no letter becomes another', async () => {
    await show();
    const bytes = Uint8Array.from([0x7b, 0x22, 0xe9, 0x22, 0x7d]);
    const file = Object.assign(new File([bytes], 'old.lapwright'), {
      arrayBuffer: async () => bytes.buffer,
    });
    fireEvent.drop(window, { dataTransfer: transfer([file]) });
    await waitFor(() => expect(page()).toContain('it is not UTF-8 text'));
    expect(bridge.count('project.read')).toBe(0);
  });

  it('is opened where it lies, where the window knows that', async () => {
    other();
    await show({ pathOf: () => `${FRAMES}/other.lapwright` });
    drop('other.lapwright');
    await heading('Heron');
    expect(bridge.last('file.open')).toEqual({ path: `${FRAMES}/other.lapwright` });
  });

  it('is refused in words where it is none, or several, and waits for no dialog', async () => {
    await show();
    expect(drop('photo.jpg')).toBe(false);
    expect((await screen.findByRole('alert')).textContent).toContain(
      'photo.jpg is no project file: those end in “.lapwright” or “.lapwright.json”.',
    );
    drop('a.json', 'b.json');
    expect((await screen.findByRole('alert')).textContent).toContain('2 files were dropped.');
    fileMenu('Rename the project …');
    await dialog();
    expect(drop('heron.lapwright')).toBe(false);
    await settle();
    expect(screen.queryByRole('heading', { name: 'Heron' })).toBeNull();
  });
});

describe('what another program does to the file', () => {
  const byOther = (name = 'By another'): void =>
    disk.put(FILE, makeProject({ name }), '2026-03-01T14:35:00');
  const look = async (): Promise<void> => {
    fireEvent.focus(window);
    await settle();
  };
  const changed =
    /^test\.lapwright was changed by another window of Lapwright or another program at/;

  it('is looked at every few seconds, and said', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
    try {
      await showFile();
      byOther();
      expect(screen.queryByText(changed)).toBeNull();
      await vi.advanceTimersByTimeAsync(5000);
      expect(await screen.findByText(changed)).toBeTruthy();
      click('Open that version');
      await heading('By another');
      expect(screen.queryByText(changed)).toBeNull();
    } finally {
      vi.useRealTimers();
    }
  });

  it('says what opening that version would lose', async () => {
    await showFile();
    change('31');
    press('1');
    fireEvent.click(await screen.findByRole('button', { name: 'More of Tail lug' }));
    fireEvent.click(screen.getByRole('menuitem', { name: 'Copy' }));
    byOther();
    await look();
    click('Open that version, losing two changes');
    await heading('By another');
    expect(isUnsaved()).toBe(false);
  });

  it('is asked about again when one saves what one kept', async () => {
    await showFile();
    byOther();
    await look();
    click('Keep mine');
    expect(screen.queryByText(changed)).toBeNull();
    expect(isUnsaved()).toBe(true);
    press('s');
    expect((await dialog()).textContent).toContain(
      'was changed by another window of Lapwright or another program since',
    );
    click('Stay here');
    await waitFor(() => expect(isOpen()).toBe(false));
    expect(disk.project(FILE).name).toBe('By another');
    // Yet another version is said anew.
    byOther('By a third');
    await look();
    expect(screen.getByText(changed)).toBeTruthy();
    press('s');
    await dialog();
    click('Replace it');
    await waitFor(() => expect(isUnsaved()).toBe(false));
    expect(disk.project(FILE).name).toBe('Test frame');
    expect(screen.queryByText(changed)).toBeNull();
  });

  it('may be that it is gone: saving writes it anew', async () => {
    await showFile();
    const standing = disk.files.get(FILE)!;
    disk.files.delete(FILE);
    await look();
    expect(page()).toContain('test.lapwright is not on the disk any more.');
    expect(isUnsaved()).toBe(true);
    // Back as it was, nothing is unsaved.
    disk.files.set(FILE, standing);
    await look();
    expect(isUnsaved()).toBe(false);
    disk.files.delete(FILE);
    await look();
    click('Save it again');
    await waitFor(() => expect(isUnsaved()).toBe(false));
    expect(disk.files.has(FILE)).toBe(true);
    expect(page()).not.toContain('not on the disk');
  });
});

describe('the menu of the window', () => {
  it('has its commands carried out by the page, but not past a dialog', async () => {
    let command = (_command: MenuCommand): void => {};
    const closed = vi.spyOn(window, 'close').mockReturnValue();
    await showFile({
      onCommand(listener) {
        command = listener;
        return () => {};
      },
    });
    change();
    command({ name: 'new' });
    await dialog();
    command({ name: 'save' });
    await settle();
    expect(bridge.count('file.save')).toBe(0);
    click('Stay here');
    await waitFor(() => expect(isOpen()).toBe(false));
    command({ name: 'save-and-close' });
    await waitFor(() => expect(closed).toHaveBeenCalledOnce());
    expect(isUnsaved()).toBe(false);
    other();
    command({ name: 'open-file', path: `${FRAMES}/other.lapwright` });
    await heading('Heron');
  });
});
