import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { cautionShort } from '../../src/shared/cautions.ts';
import { refuse } from '../../src/shared/reply.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { fileMenu, useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';
import { makeMargin, makeSummary } from './support/reports.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});
const open = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
};
const rows = (): string[] =>
  screen
    .getAllByRole('rowheader')
    .map((cell) => within(cell).getByRole('button').textContent ?? '');

describe('the start', () => {
  it('opens the project on its joints, the caution in view', async () => {
    await open();
    expect(
      await screen.findByText(/Of three joints, one fails, one is low and one holds/),
    ).toBeTruthy();
    expect(screen.getByText(cautionShort)).toBeTruthy();
    expect(document.title).toBe('Test frame · Lapwright');
  });

  it('shows only the workspaces that there are', async () => {
    await open();
    const bar = screen.getByRole('navigation', { name: 'Workspaces' });
    expect(
      within(bar)
        .getAllByRole('button')
        .map((tab) => tab.textContent),
    ).toEqual(['Joints', 'Size', 'Compare', 'Gap check', 'Coupons']);
  });

  it('says plainly what is wrong with a project that cannot be opened, and leads on', async () => {
    const message = 'curlew.json: joint 3 (Lug), overlap: This must be a number.';
    bridge.refuse('project.initial', { field: 'joints.2.overlap', message });
    render(() => <App bridge={bridge} />);
    // Once, and the name of the file as it is.
    expect((await screen.findByRole('alert')).textContent).toBe(message);
    fireEvent.click(screen.getByRole('button', { name: 'Open the demonstration project' }));
    expect(await screen.findByRole('heading', { name: 'Curlew' })).toBeTruthy();
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('the joints', () => {
  it('stand lowest margin first, with mark, word and signed figure', async () => {
    await open();
    await screen.findByRole('table');
    expect(rows()).toEqual(['Boom root', 'Tail lug', 'Boom tip']);
    const first = screen.getAllByRole('row')[1];
    expect(first?.textContent).toContain('fails−0.12');
    expect(first?.querySelector('svg')?.getAttribute('class')).toContain('is-fails');
  });

  it('are sorted by name on asking, and turned round', async () => {
    await open();
    const head = await screen.findByRole('button', { name: 'Joint' });
    fireEvent.click(head);
    expect(rows()).toEqual(['Boom root', 'Boom tip', 'Tail lug']);
    expect(screen.getByRole('columnheader', { name: 'Joint' }).getAttribute('aria-sort')).toBe(
      'ascending',
    );
    fireEvent.click(head);
    expect(rows()).toEqual(['Tail lug', 'Boom tip', 'Boom root']);
  });

  it('are walked by arrow keys, one stop for the tab key', async () => {
    await open();
    const first = await screen.findByRole('button', { name: 'Boom root' });
    expect(
      screen.getAllByRole('rowheader').map((cell) => within(cell).getByRole('button').tabIndex),
    ).toEqual([0, -1, -1]);
    first.focus();
    fireEvent.keyDown(first, { key: 'ArrowDown' });
    expect(document.activeElement?.textContent).toBe('Tail lug');
    fireEvent.keyDown(document.activeElement!, { key: 'End' });
    expect(document.activeElement?.textContent).toBe('Boom tip');
    expect((document.activeElement as HTMLElement).tabIndex).toBe(0);
  });

  it('say in place why one cannot be computed, and that nothing loads another', async () => {
    const refusal = refuse('bad-input', 'joints.1.spigot', 'no bore is left');
    bridge.answer('project.check', () => ({
      ok: true,
      value: {
        project: 'Test frame',
        targetMargin: 0.25,
        joints: [
          makeSummary({ id: 'tip', name: 'Boom tip', overlap: 30 }, null),
          makeSummary({ id: 'root', name: 'Boom root', overlap: 45 }, null, {
            refused: refusal.ok ? null : refusal.error,
          }),
          makeSummary({ id: 'lug', name: 'Tail lug', overlap: 25 }, makeMargin(1), {
            flags: [{ code: 'thick-wall', message: 'The wall is thick.' }],
          }),
        ],
        counts: { fails: 0, low: 0, holds: 1 },
        modelVersion: '1',
      },
    }));
    await open();
    expect(await screen.findByText('No bore is left.')).toBeTruthy();
    expect(screen.getByText('no load case acts on it')).toBeTruthy();
    expect(screen.getByText('The wall is thick.')).toBeTruthy();
    expect(
      screen.getByText(/one holds, one has no load case and one cannot be computed/),
    ).toBeTruthy();
  });

  it('lead to the joint that stops the whole project', async () => {
    bridge.refuse('project.check', { field: 'joints.2.overlap', message: 'overlap is too long' });
    await open();
    expect((await screen.findByRole('alert')).textContent).toContain(
      'Tail lug: Overlap is too long.',
    );
    fireEvent.click(screen.getByRole('button', { name: 'Open Tail lug' }));
    expect(await screen.findByRole('heading', { name: 'Size Tail lug' })).toBeTruthy();
  });

  it('whose calculation broke off say so, and can be asked for again', async () => {
    const message = 'The calculation stopped unexpectedly. Change an input or try again.';
    bridge.answer('project.check', () => refuse('internal', '', message));
    await open();
    expect((await screen.findByRole('alert')).textContent).toContain(
      `The project is not checked. ${message}`,
    );
    bridge.refuse('project.check', { message: 'overlap is too long' });
    fireEvent.click(screen.getByRole('button', { name: 'Check every joint' }));
    expect(await screen.findByText(/^The project cannot be checked\./)).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'Check every joint' })).toBeNull();
  });

  it('can be stopped while they are calculated, and asked for again', async () => {
    bridge.refuse('project.check', { code: 'stopped' });
    await open();
    expect(await screen.findByText('The check was stopped before it was done.')).toBeTruthy();
    expect(screen.queryByRole('alert')).toBeNull();
    bridge.hold();
    fireEvent.click(screen.getByRole('button', { name: 'Check every joint' }));
    expect(screen.getByRole('progressbar', { name: 'Check of every joint' })).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Stop: Check of every joint' }));
    expect(bridge.count('job.stop')).toBe(1);
    await bridge.release();
    expect(await screen.findByText('The check was stopped before it was done.')).toBeTruthy();
  });

  it('have a word for an empty project', async () => {
    bridge = makeFakeBridge(makeProject({ joints: [] }));
    await open();
    expect(await screen.findByText(/nothing to size yet/)).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Add a joint' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    expect(await screen.findByText(/no joint to size/)).toBeTruthy();
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    expect(await screen.findByText(/no joint to compare/)).toBeTruthy();
  });
});

describe('a joint of the table', () => {
  const more = (name: string, what: string | RegExp): void => {
    fireEvent.click(screen.getByRole('button', { name: `More of ${name}` }));
    fireEvent.click(screen.getByRole('menuitem', { name: what }));
  };
  const isThere = (name: string): boolean => screen.queryByRole('button', { name }) !== null;

  it('is added by its lap, and opened', async () => {
    await open();
    await screen.findByRole('table');
    fireEvent.click(screen.getByRole('button', { name: 'Add a joint' }));
    const menu = screen.getByRole('menu', { name: 'Add a joint' });
    fireEvent.keyDown(menu, { key: 'End' });
    expect(document.activeElement?.textContent).toBe('Double lap: strip between two straps');
    fireEvent.keyDown(menu, { key: 'ArrowDown' });
    expect(document.activeElement?.textContent).toBe('Single lap: tube in a socket');
    fireEvent.keyDown(menu, { key: 'd' });
    fireEvent.click(document.activeElement!);
    expect(await screen.findByRole('heading', { name: 'Size Joint 4' })).toBeTruthy();
    fireEvent.keyDown(window, { key: 'z', ctrlKey: true });
    expect(await screen.findByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
  });

  it('is copied, renamed by F2, and removed by Delete after one press more', async () => {
    await open();
    await screen.findByRole('table');
    more('Tail lug', 'Copy');
    const copied = await screen.findByRole('button', { name: 'Tail lug (copy)' });
    // The rows were built anew; the focus is where it was.
    expect(document.activeElement?.textContent).toBe('Tail lug');
    copied.focus();
    fireEvent.keyDown(document.activeElement!, { key: 'F2' });
    fireEvent.input(await screen.findByRole('textbox', { name: 'Name' }), {
      target: { value: 'Nose lug' },
    });
    fireEvent.click(screen.getByRole('button', { name: 'Rename' }));
    const renamed = await screen.findByRole('button', { name: 'Nose lug' });
    renamed.focus();
    fireEvent.keyDown(renamed, { key: 'Delete' });
    expect((await screen.findByRole('dialog')).textContent).toContain('Remove Nose lug?');
    fireEvent.click(screen.getByRole('button', { name: 'Keep the joint' }));
    expect(isThere('Nose lug')).toBe(true);
    more('Nose lug', /^Remove/);
    fireEvent.click(await screen.findByRole('button', { name: 'Remove it' }));
    await waitFor(() => expect(isThere('Nose lug')).toBe(false));
    expect(rows()).toHaveLength(3);
    fireEvent.keyDown(window, { key: 'z', ctrlKey: true });
    await waitFor(() => expect(isThere('Nose lug')).toBe(true));
  });
});

describe('the way between', () => {
  it('opens a joint by its row, and goes by Ctrl and a figure', async () => {
    await open();
    fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
    expect(await screen.findByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Test frame' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Compare Boom tip' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '4', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Gap check Boom tip' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Coupons' })).toBeTruthy();
    fireEvent.keyDown(window, { key: '6', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Coupons' })).toBeTruthy();
  });

  it('goes on from the table with the joint that has the focus', async () => {
    await open();
    (await screen.findByRole('button', { name: 'Boom root' })).focus();
    fireEvent.keyDown(window, { key: '4', ctrlKey: true });
    expect(screen.getByRole('heading', { name: 'Gap check Boom root' })).toBeTruthy();
  });
});

const chooseFile = (text: string, name = 'other.lapwright.json'): void => {
  const file = Object.assign(new File([text], name), {
    arrayBuffer: async () => new TextEncoder().encode(text).buffer,
  });
  const input = screen.getByLabelText('Open a project file');
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  fireEvent.change(input);
};

describe('files', () => {
  it('are opened', async () => {
    await open();
    chooseFile(JSON.stringify(makeProject({ name: 'Other frame' })));
    expect(await screen.findByRole('heading', { name: 'Other frame' })).toBeTruthy();
    expect(bridge.last('project.read').origin).toBe('other.lapwright.json');
  });

  it('that cannot be read leave the open project alone', async () => {
    await open();
    bridge.refuse('project.read', {
      field: 'joints.2.overlap',
      message: 'bad.json: joint 3 (Lug), overlap: This must be a number.',
    });
    chooseFile('{}', 'bad.json');
    expect((await screen.findByRole('alert')).textContent).toBe(
      'Could not open bad.json: joint 3 (Lug), overlap: This must be a number.Close',
    );
    expect(screen.getByRole('heading', { name: 'Test frame' })).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('never put away unsaved changes without a word', async () => {
    await open();
    fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
    fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: '31' } });
    expect(screen.getByText('changes not saved')).toBeTruthy();
    expect(document.title).toContain('*');
    chooseFile(JSON.stringify(makeProject({ name: 'Other frame' })));
    const dialog = await screen.findByRole('dialog');
    fireEvent.click(within(dialog).getByRole('button', { name: 'Stay here' }));
    expect(screen.getByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
    chooseFile(JSON.stringify(makeProject({ name: 'Other frame' })));
    fireEvent.click(await screen.findByRole('button', { name: 'Open without saving' }));
    expect(await screen.findByRole('heading', { name: 'Other frame' })).toBeTruthy();
  });

  it('are saved as they stand', async () => {
    const blobs: Blob[] = [];
    vi.stubGlobal(
      'URL',
      Object.assign(URL, {
        createObjectURL: (blob: Blob) => {
          blobs.push(blob);
          return 'blob:x';
        },
        revokeObjectURL: () => {},
      }),
    );
    const clicked = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue();
    await open();
    fileMenu('Save a copy');
    expect((clicked.mock.contexts[0] as HTMLAnchorElement).download).toBe('Test-frame.lapwright');
    const reader = new FileReader();
    reader.readAsText(blobs[0]!);
    await waitFor(() => expect(JSON.parse(String(reader.result))).toEqual(makeProject()));
  });
});

describe('the theme', () => {
  it('is the choice of the reader, remembered', async () => {
    await open();
    expect(document.documentElement.dataset.theme).toBe('system');
    fireEvent.click(screen.getByRole('radio', { name: 'Night' }));
    expect(document.documentElement.dataset.theme).toBe('night');
    expect(localStorage.getItem('lapwright-theme')).toBe('night');
  });
});
