/** The box that finds, in the window: by keys, with the focus where it belongs. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
beforeEach(() => {
  const project = makeProject();
  const { coupons } = planCoupons(project, {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd1002', adherend: 'titanium' }],
    environments: [
      { temperature: 23, moisture: 'dry' },
      { temperature: 60, moisture: 'wet' },
    ],
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  bridge = makeFakeBridge(makeProject({ coupons }));
  vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
const open = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
};
const press = (key: string, more: KeyboardEventInit = {}): void => {
  fireEvent.keyDown(document.activeElement ?? window, { key, ...more });
};
const text = (): HTMLElement => screen.getByRole('combobox', { name: /^Action, joint/ });
const options = (): string[] =>
  screen.getAllByRole('option', { hidden: false }).flatMap((option) => {
    const title = option.querySelector('.command-title');
    return title ? [title.textContent!] : [];
  });
const active = (): string | null =>
  document.getElementById(text().getAttribute('aria-activedescendant')!)?.querySelector('span')
    ?.textContent ?? null;
function find(typed: string): void {
  press('k', { ctrlKey: true });
  fireEvent.input(text(), { target: { value: typed } });
}

describe('the box', () => {
  it('shows what is likely, walks it round by arrows, and says which one is active', async () => {
    await open();
    press('k', { ctrlKey: true });
    expect(document.activeElement).toBe(text());
    const shown = options();
    expect(shown.slice(0, 3)).toEqual(['Boom tip', 'Boom root', 'Tail lug']);
    expect(active()).toBe('Boom tip');
    press('ArrowDown');
    expect(active()).toBe('Boom root');
    press('ArrowUp');
    press('ArrowUp');
    expect(active()).toBe(shown.at(-1));
    press('ArrowDown');
    expect(active()).toBe('Boom tip');
    expect(screen.getAllByRole('option', { selected: true })).toHaveLength(1);
    press('PageDown');
    expect(active()).not.toBe('Boom tip');
    fireEvent.input(text(), { target: { value: 'gust' } });
    expect(active()).toBe('Gust');
    expect(screen.getByRole('option', { name: /Gust.*Load case drawn on Boom tip/ })).toBeTruthy();
    fireEvent.input(text(), { target: { value: 'qqqq' } });
    expect(screen.queryByRole('listbox')).toBeNull();
    expect(text().getAttribute('aria-expanded')).toBe('false');
    expect(screen.getByText('Nothing goes by these letters.')).toBeTruthy();
    press('Enter');
    expect(text()).toBeTruthy();
  });

  it('shows the keys of what it finds', async () => {
    await open();
    find('save');
    const [first] = screen.getAllByRole('option');
    expect(within(first!).getByText('Ctrl+S')).toBeTruthy();
  });

  it('gives the focus back, by Escape and by its own key once more', async () => {
    await open();
    const row = await screen.findByRole('button', { name: 'Boom root' });
    for (const close of [() => press('Escape'), () => press('k', { ctrlKey: true })]) {
      row.focus();
      press('k', { ctrlKey: true });
      expect(document.activeElement).toBe(text());
      close();
      expect(screen.queryByRole('dialog')).toBeNull();
      expect(document.activeElement).toBe(row);
    }
  });

  it('changes places with the list of keys, which gives the focus back where it was first', async () => {
    await open();
    const row = await screen.findByRole('button', { name: 'Boom root' });
    row.focus();
    press('k', { ctrlKey: true });
    press('F1');
    expect(screen.getAllByRole('dialog')).toEqual([screen.getByRole('dialog', { name: 'Keys' })]);
    fireEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(document.activeElement).toBe(row);
    fireEvent.click(screen.getByRole('button', { name: 'Help' }));
    fireEvent.click(screen.getByRole('button', { name: 'Keys' }));
    expect(screen.getByRole('dialog', { name: 'Keys' })).toBeTruthy();
  });
});

describe('what is chosen', () => {
  it('is a joint: opened on the Size page, the focus in its first part', async () => {
    await open();
    find('boom root');
    press('Enter');
    expect(await screen.findByRole('heading', { name: 'Size Boom root' })).toBeTruthy();
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Inputs and materials');
    // Only while it is gone to can it have the focus.
    (document.activeElement as HTMLElement).blur();
    expect(document.querySelector('.inputs-column')?.hasAttribute('tabindex')).toBe(false);
  });

  it('is a load case: drawn', async () => {
    await open();
    find('landing hard');
    press('Enter');
    expect(await screen.findByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
    await waitFor(() =>
      expect(bridge.last('joint.analyse').focus).toMatchObject({ caseId: 'landing' }),
    );
  });

  it('is a set of coupons: its results', async () => {
    await open();
    find('coupon wet');
    const chosen = active()!;
    press('Enter');
    expect(await screen.findByRole('region', { name: 'Results' })).toBeTruthy();
    const sets = screen.getByRole<HTMLSelectElement>('combobox', { name: 'Set' });
    expect(sets.selectedOptions[0]!.textContent).toContain(chosen);
    expect(sets.selectedIndex).toBe(1);
  });

  it('is an adhesive: at the joint that is bonded with it', async () => {
    await open();
    find('toughened');
    press('Enter');
    expect(document.activeElement).toBe(screen.getByRole('combobox', { name: 'Adhesive' }));
  });

  it('is a field, even one that is folded away', async () => {
    await open();
    find('fitting');
    press('Enter');
    await waitFor(() =>
      expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Fitting factor' })),
    );
    find('target margin to find');
    press('Enter');
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Target' }));
    find('gap tolerance');
    press('Enter');
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Gap tolerance' }));
  });

  it.each([
    ['peel strength', 'Stiffness and strength'],
    ['ageing', 'Knockdowns'],
    ['hardener', 'Mix and cure'],
    ['fracture energy', 'Thermal and fracture'],
    ['fatigue', 'Cycles'],
  ])('is a fold of the adhesive, by what is set in it: %s', async (typed, fold) => {
    await open();
    find(typed);
    expect(active()).toBe(`Adhesive: ${fold[0]!.toLowerCase()}${fold.slice(1)}`);
    press('Enter');
    await waitFor(() => expect(document.activeElement?.tagName).toBe('SUMMARY'));
    expect(document.activeElement!.textContent).toContain(fold);
    expect(document.activeElement!.closest('details')!.open).toBe(true);
  });

  it('is a setting of the project: on the Joints page, unfolded', async () => {
    await open();
    press('2', { ctrlKey: true });
    find('target margin');
    press('Enter');
    await waitFor(() =>
      expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Target margin' })),
    );
    find('project settings');
    press('Enter');
    expect(document.activeElement?.tagName).toBe('SUMMARY');
    expect(document.activeElement?.textContent).toContain('Project settings');
    find('conditions of');
    press('Enter');
    await waitFor(() =>
      expect(document.activeElement).toBe(screen.getByRole('region', { name: 'Conditions' })),
    );
  });

  it.each([
    ['titanium', 'Printed titanium'],
    ['laminate', 'Tube material'],
    ['poisson', 'Tube material'],
    ['letter', 'Sheet on Letter …'],
    ['a4', 'Sheet on A4 …'],
    ['bench card', 'Bench card'],
    ['working', 'Working of the lowest margin'],
    ['load cases', 'Load cases of the project'],
  ])('by %s finds %s', async (typed, title) => {
    await open();
    find(typed);
    expect(options()).toContain(title);
  });

  it('keeps the focus on the page when a page or a joint goes away', async () => {
    await open();
    for (const key of ['2', '3', '1', '2']) {
      press(key, { ctrlKey: true });
      await waitFor(() => {
        const held = document.activeElement!;
        expect(held).not.toBe(document.body);
        expect(held.closest('main')).not.toBeNull();
      });
    }
  });

  it('is a change: taken back, from within its own field too', async () => {
    await open();
    find('overlap');
    press('Enter');
    const overlap = screen.getByRole<HTMLInputElement>('textbox', { name: 'Overlap' });
    expect(document.activeElement).toBe(overlap);
    fireEvent.input(overlap, { target: { value: '31' } });
    press('z', { ctrlKey: true });
    expect(overlap.value).toBe('31');
    find('undo');
    press('Enter');
    expect(overlap.value).toBe('30.0');
    expect(document.activeElement).toBe(overlap);
  });

  it('is a theme', async () => {
    await open();
    find('dark');
    press('Enter');
    expect(document.documentElement.dataset.theme).toBe('night');
  });
});

it('F6 goes round the named parts of every page', async () => {
  await open();
  const nameOf = (pane: Element): string | null =>
    pane.getAttribute('aria-label') ??
    document.getElementById(pane.getAttribute('aria-labelledby') ?? '')?.textContent ??
    null;
  for (const page of ['1', '2', '3', '4', '5']) {
    (document.activeElement as HTMLElement).blur();
    press(page, { ctrlKey: true });
    const panes = [...document.querySelectorAll('[data-pane]')];
    expect(panes.length).toBeGreaterThan(1);
    const names = panes.map(nameOf);
    expect(names.every((name) => name !== null && name.length > 2)).toBe(true);
    const round = panes.map(() => {
      press('F6');
      return nameOf(document.activeElement!);
    });
    expect(round).toEqual([...names.slice(1), names[0]]);
    press('F6', { shiftKey: true });
    expect(nameOf(document.activeElement!)).toBe(names.at(-1));
  }
});
