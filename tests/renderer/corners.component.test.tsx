/** The Joints page by load case: its order, the way from a cell to its state, the conditions. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Focus } from '../../src/shared/contract.ts';
import type { Project } from '../../src/shared/project.ts';
import { ok, refuse } from '../../src/shared/reply.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';
import { makeCorner, makeCorners } from './support/reports.ts';

useBrowser();

const conditions = [{ id: 'cold', name: 'Cold soak', temperature: -20, moisture: 'dry' as const }];
const inConditions = (): Project => {
  const project = makeProject({ conditions });
  project.loadCases[1]!.everyCondition = true;
  return project;
};

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge(inConditions());
});

const view = (name: string): HTMLElement =>
  within(screen.getByRole('navigation', { name: 'Views of the joints' })).getByRole('button', {
    name,
  });
async function open(): Promise<void> {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.click(view('By case'));
  await screen.findByRole('table', { name: /against load cases/ });
}
const names = (): string[] =>
  screen.getAllByRole('rowheader').map((cell) => cell.firstChild?.textContent ?? '');
const cell = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
const sortBy = (name: string): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const focus = (): Focus => bridge.last('joint.analyse').focus as Focus;

describe('the table by case', () => {
  it('has a column for each case that acts, and says each state in words', async () => {
    await open();
    const table = within(screen.getByRole('table', { name: /against load cases/ }));
    expect(table.getAllByRole('columnheader').map((head) => head.textContent)).toEqual([
      'Joint',
      'Gust',
      'Hard landing',
      'Governing',
    ]);
    const worst = cell(/^Boom tip, Hard landing: fails −0\.20 ultimate strain ?, mouth, 0°/);
    expect(worst.textContent).toContain('gap max, governs the joint');
    expect(worst.querySelector('svg')?.getAttribute('class')).toContain('is-fails');
    expect(cell(/^Boom tip, Gust: holds \+0\.40/).textContent).not.toContain('governs');
    // Strips have no clocking.
    expect(cell(/^Tail lug, Gust/).textContent).not.toContain('°');
    const row = screen.getAllByRole('row').find((one) => one.textContent?.includes('Boom root'))!;
    expect(within(row).getByText('–')).toBeTruthy();
  });

  it('is in the order of its lowest margins, of a case, or of names', async () => {
    await open();
    expect(names()).toEqual(['Boom tip', 'Boom root', 'Tail lug']);
    expect(screen.getByRole('columnheader', { name: 'Governing' }).getAttribute('aria-sort')).toBe(
      'ascending',
    );
    sortBy('Gust');
    expect(names()).toEqual(['Boom root', 'Boom tip', 'Tail lug']);
    sortBy('Gust');
    expect(names()).toEqual(['Tail lug', 'Boom tip', 'Boom root']);
    const head = screen.getByRole('columnheader', { name: 'Gust' });
    expect(head.getAttribute('aria-sort')).toBe('descending');
    sortBy('Hard landing');
    // The others have nothing to say about that case: by name, after it.
    expect(names()).toEqual(['Boom tip', 'Boom root', 'Tail lug']);
    sortBy('Joint');
    expect(names()).toEqual(['Boom root', 'Boom tip', 'Tail lug']);
  });

  it('asks only for the view that is looked at', async () => {
    render(() => <App bridge={bridge} />);
    await screen.findByText(/Of three joints/);
    expect(bridge.count('project.corners')).toBe(0);
    fireEvent.click(view('By case'));
    await screen.findByRole('table', { name: /against load cases/ });
    expect(bridge.count('project.check')).toBe(1);
    expect(view('By case').getAttribute('aria-current')).toBe('true');
  });

  it('is one stop of the tab key, walked by arrow keys', async () => {
    await open();
    const cells = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('.corner')];
    expect(cells().map((one) => one.tabIndex)).toEqual([0, -1, -1, -1]);
    cells()[0]!.focus();
    const press = (key: string): void => {
      fireEvent.keyDown(document.activeElement!, { key });
    };
    const at = (): string => document.activeElement?.textContent ?? '';
    press('ArrowRight');
    expect(at()).toMatch(/^Boom tip, Hard landing/);
    press('ArrowRight');
    expect(at()).toMatch(/^Boom tip, Hard landing/);
    // Nothing below in this column: it stays.
    press('ArrowDown');
    expect(at()).toMatch(/^Boom tip, Hard landing/);
    press('Home');
    press('ArrowDown');
    expect(at()).toMatch(/^Boom root, Gust/);
    press('ArrowDown');
    press('ArrowDown');
    expect(at()).toMatch(/^Tail lug, Gust/);
    expect(cells().filter((one) => one.tabIndex === 0)).toEqual([document.activeElement]);
    press('ArrowUp');
    expect(at()).toMatch(/^Boom root, Gust/);
  });

  it('shows a joint that cannot be computed, first', async () => {
    bridge.answer('project.corners', (input) => {
      const report = makeCorners(input.document as Project, { 'tip gust': 0.4 });
      const refused = refuse('bad-input', 'joints.2.bond', 'the gap closes');
      const joints = report.joints.map((joint, i) =>
        i === 2 && !refused.ok
          ? { ...joint, cells: [], lowest: null, refused: refused.error }
          : joint,
      );
      return ok({ ...report, joints });
    });
    await open();
    expect(names()[0]).toBe('Tail lug');
    expect(screen.getByText('Cannot be computed. The gap closes.')).toBeTruthy();
    expect(screen.getAllByText('no load').length).toBeGreaterThan(0);
  });

  it('shows the rows of a long project a hundred at a time', async () => {
    const [tip] = makeProject().joints;
    const joints = Array.from({ length: 250 }, (_, i) => ({
      ...structuredClone(tip!),
      id: `tip-${i}`,
      name: `Tip ${i}`,
    }));
    bridge = makeFakeBridge(makeProject({ joints }));
    await open();
    expect(names()).toHaveLength(100);
    expect(screen.getByText(/100 of 250 joints are shown/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Show 100 more' }));
    fireEvent.click(screen.getByRole('button', { name: 'Show 50 more' }));
    expect(names()).toHaveLength(250);
    expect(screen.queryByText(/joints are shown/)).toBeNull();
  });
});

describe('a cell', () => {
  it('opens its joint at its very state', async () => {
    bridge.answer('project.corners', (input) => {
      const report = makeCorners(input.document as Project, {
        'tip gust': 0.4,
        'tip landing': 0.1,
      });
      const joints = report.joints.map((joint) => ({
        ...joint,
        cells: joint.cells.map((one) =>
          one.caseId === 'landing'
            ? {
                ...one,
                lowest: makeCorner(0.1, {
                  caseId: 'landing',
                  caseName: 'Hard landing',
                  conditionId: 'cold',
                  conditionName: 'Cold soak',
                  gapState: 'thin-side',
                  theta: 172,
                }),
              }
            : one,
        ),
      }));
      return ok({ ...report, joints });
    });
    await open();
    const corner = cell(/^Boom tip, Hard landing: low \+0\.10 ultimate strain, at Cold soak/);
    expect(corner.textContent).toContain('offset, thin side');
    expect(corner.title).toContain('at Cold soak');
    fireEvent.click(corner);
    await screen.findByRole('heading', { name: 'Size Boom tip' });
    await waitFor(() =>
      expect(focus()).toMatchObject({
        caseId: 'landing',
        conditionId: 'cold',
        gapState: 'thin-side',
        theta: 172,
      }),
    );
    expect(focus().loadFactor).toBeUndefined();
    // Another joint, though the same was open before: its own state, not the one left over.
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    fireEvent.click(await screen.findByRole('button', { name: /^Boom tip, Gust/ }));
    await waitFor(() => expect(focus()).toMatchObject({ caseId: 'gust', conditionId: null }));
  });

  it('of a joint that is not open yet draws its state at the first question', async () => {
    await open();
    fireEvent.click(cell(/^Tail lug, Gust/));
    await screen.findByRole('heading', { name: 'Size Tail lug' });
    await waitFor(() => expect(focus()).toMatchObject({ caseId: 'gust', gapState: 'max' }));
  });

  it('keeps the view and its order for the way back', async () => {
    await open();
    sortBy('Joint');
    fireEvent.click(cell(/^Boom root, Gust/));
    await screen.findByRole('heading', { name: 'Size Boom root' });
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    await screen.findByRole('table', { name: /against load cases/ });
    expect(names()).toEqual(['Boom root', 'Boom tip', 'Tail lug']);
  });
});

describe('the choice of what is drawn', () => {
  it('offers a case in each of its conditions', async () => {
    await open();
    fireEvent.click(cell(/^Boom tip, Gust/));
    const select = await screen.findByRole('combobox', { name: 'Load case drawn' });
    const options = within(select)
      .getAllByRole('option')
      .map((one) => one.textContent);
    expect(options.slice(1)).toEqual(['Gust', 'Hard landing', 'Hard landing, at Cold soak']);
    fireEvent.change(select, { target: { value: 'landing cold' } });
    await waitFor(() => expect(focus()).toMatchObject({ caseId: 'landing', conditionId: 'cold' }));
    fireEvent.change(select, { target: { value: 'landing' } });
    await waitFor(() => expect(focus()).toMatchObject({ caseId: 'landing', conditionId: null }));
    fireEvent.change(select, { target: { value: '' } });
    await waitFor(() => expect(focus().caseId).toBeUndefined());
    expect('conditionId' in focus()).toBe(false);
  });
});

describe('the conditions', () => {
  const stored = (): Project => bridge.last('project.corners').document as Project;

  it('are changed, added and taken away', async () => {
    await open();
    fireEvent.input(screen.getByRole('textbox', { name: 'Temperature of condition 1' }), {
      target: { value: '-35' },
    });
    await waitFor(() => expect(stored().conditions![0]!.temperature).toBe(-35));
    fireEvent.input(screen.getByRole('textbox', { name: 'Name of condition 1' }), {
      target: { value: 'Night' },
    });
    fireEvent.change(screen.getByRole('combobox', { name: 'Moisture of condition 1' }), {
      target: { value: 'wet' },
    });
    await waitFor(() =>
      expect(stored().conditions).toEqual([
        { id: 'cold', name: 'Night', temperature: -35, moisture: 'wet' },
      ]),
    );
    fireEvent.click(screen.getByRole('button', { name: 'Add a condition' }));
    await waitFor(() => expect(stored().conditions).toHaveLength(2));
    expect(stored().conditions![1]!.id).toBe('condition-2');
    fireEvent.click(screen.getByRole('button', { name: 'Remove condition 1, Night' }));
    await waitFor(() => expect(stored().conditions!.map(({ id }) => id)).toEqual(['condition-2']));
  });

  it('hold for the cases that are marked so', async () => {
    await open();
    const boxes = screen.getAllByRole('checkbox') as HTMLInputElement[];
    expect(boxes.map((box) => box.checked)).toEqual([false, true, false]);
    fireEvent.click(boxes[0]!);
    await waitFor(() => expect(stored().loadCases[0]!.everyCondition).toBe(true));
    fireEvent.click(boxes[1]!);
    await waitFor(() => expect('everyCondition' in stored().loadCases[1]!).toBe(false));
  });
});
