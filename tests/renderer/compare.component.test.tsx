import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { makeColumn, makeCompareReport } from './support/compare.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject, socket } from './support/project.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});

const long = { ...socket, id: 'tip-long', name: 'Boom tip, long', overlap: 60 };
const withVariant = (): Project => makeProject({ variants: [{ of: 'tip', joint: long }] });

async function openCompare(): Promise<void> {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '3', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Compare Boom tip' });
}
const press = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
/** What stands in a row, column by column. */
const cells = (label: RegExp | string): string[] =>
  within(screen.getByRole('rowheader', { name: label }).closest('tr')!)
    .getAllByRole('cell')
    .map((cell) => cell.textContent ?? '');
const asked = () => bridge.last('project.compare') as { columns: unknown; caseId?: string };
const compared = (times: number): Promise<void> =>
  waitFor(() => expect(bridge.count('project.compare')).toBe(times));

describe('a joint by itself', () => {
  it('asks what should stand beside it, and compares nothing yet', async () => {
    await openCompare();
    expect(screen.getByText('What should stand beside it?')).toBeTruthy();
    expect(screen.queryByRole('table')).toBeNull();
    expect(bridge.count('project.compare')).toBe(0);
  });

  it('is set beside its double lap at equal overlap, which becomes a variant of the project', async () => {
    await openCompare();
    press('Double lap at equal overlap');
    expect(
      await screen.findByText('“Boom tip, double lap at equal overlap” carries 2.40.'),
    ).toBeTruthy();
    expect(bridge.last('joint.variant')).toMatchObject({
      jointId: 'tip',
      lap: 'double',
      equal: 'overlap',
    });
    expect(asked().columns).toEqual([{ joint: 'tip' }, { variant: 'tip-double-overlap' }]);
    expect(cells(/bond fails in shear at/)).toEqual(['× 1.20', '× 2.40best']);
    expect(cells(/made from the joint by/)[1]).toMatch(/^A spigot inside the tube/);
    expect(screen.getByText('changes not saved')).toBeTruthy();
  });

  it('has the refusal said in its place, and goes on', async () => {
    await openCompare();
    bridge.refuse('joint.variant', { message: 'the mass is not known' });
    press('Double lap at equal added mass');
    expect((await screen.findByRole('alert')).textContent).toBe(
      'Double lap at equal added mass: The mass is not known.',
    );
    expect(screen.queryByText('changes not saved')).toBeNull();
    press('Boom tip');
    await compared(1);
    expect(asked().columns).toEqual([{ joint: 'tip' }, { variant: 'tip-by-hand' }]);
  });

  it('can be waited for, and stopped without a complaint', async () => {
    await openCompare();
    bridge.refuse('joint.variant', { code: 'stopped' });
    bridge.hold();
    press('Double lap at equal margin');
    expect(screen.getByRole('progressbar', { name: 'Double lap at equal margin' })).toBeTruthy();
    press('Stop: Double lap at equal margin');
    await bridge.release();
    await waitFor(() => expect(screen.queryByRole('progressbar')).toBeNull());
    expect(screen.queryByRole('alert')).toBeNull();
    expect(screen.getByText('What should stand beside it?')).toBeTruthy();
  });
});

describe('columns', () => {
  beforeEach(() => {
    bridge = makeFakeBridge(withVariant());
  });

  it('are at first the joint and the variants that the project has of it', async () => {
    await openCompare();
    await compared(1);
    expect(asked().columns).toEqual([{ joint: 'tip' }, { variant: 'tip-long' }]);
    expect(asked()).not.toHaveProperty('caseId');
  });

  it('are calculated the first time, not recalculated', async () => {
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    bridge.hold();
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    await screen.findByText('Calculating …');
    // Longer than what is late takes to be marked so.
    await new Promise((done) => setTimeout(done, 400));
    expect(screen.queryByText('recalculating …')).toBeNull();
    expect(screen.getByRole('progressbar', { name: 'Comparison' })).toBeTruthy();
    await bridge.release();
    await waitFor(() => expect(screen.queryByText('Calculating …')).toBeNull());
  });

  it('are added to by another joint, to no more than four', async () => {
    await openCompare();
    await compared(1);
    const add = (): void => {
      press('Add a column');
      press('Add');
    };
    add();
    await compared(2);
    expect(asked().columns).toEqual([{ joint: 'tip' }, { variant: 'tip-long' }, { joint: 'root' }]);
    expect(document.activeElement?.textContent).toBe('Add a column');
    add();
    await compared(3);
    press('Add a column');
    expect(screen.getByText(/Four columns are the most/)).toBeTruthy();
    fireEvent.keyDown(document.activeElement ?? document.body, { key: 'Escape' });
  });

  it('are taken away, and stay in the project', async () => {
    await openCompare();
    await compared(1);
    press('Take away B Boom tip, long');
    expect(await screen.findByText('What should stand beside it?')).toBeTruthy();
    expect(screen.queryByText('changes not saved')).toBeNull();
    // Found again among what the project has.
    const list = screen.getByRole('combobox', { name: 'Another joint or variant' });
    expect(list.textContent).toContain('variant: Boom tip, long');
  });

  it('are deleted from the project only after a plain question', async () => {
    await openCompare();
    await compared(1);
    press('Delete B Boom tip, long from the project');
    expect(document.activeElement?.textContent).toBe('Keep it');
    press('Keep it');
    expect(screen.queryByRole('alertdialog')).toBeNull();
    expect(screen.queryByText('changes not saved')).toBeNull();
    press('Delete B Boom tip, long from the project');
    press('Delete it');
    expect(await screen.findByText('What should stand beside it?')).toBeTruthy();
    expect(screen.getByText('changes not saved')).toBeTruthy();
    expect(
      screen.getByRole('combobox', { name: 'Another joint or variant' }).textContent,
    ).not.toContain('variant');
  });

  it('follow the joint that is chosen, here and on the other pages', async () => {
    await openCompare();
    await compared(1);
    fireEvent.change(screen.getByRole('combobox', { name: 'Joint' }), { target: { value: 'lug' } });
    expect(await screen.findByRole('heading', { name: 'Compare Tail lug' })).toBeTruthy();
    expect(screen.getByText('What should stand beside it?')).toBeTruthy();
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    expect(await screen.findByRole('heading', { name: 'Size Tail lug' })).toBeTruthy();
  });

  it('are compared in the case that is chosen, among those that all of them carry', async () => {
    await openCompare();
    await compared(1);
    const list = await screen.findByRole('combobox', { name: 'Load case compared' });
    await waitFor(() =>
      expect([...(list as HTMLSelectElement).options].map(({ text }) => text)).toEqual([
        'Governing: Gust',
        'Gust',
        'Hard landing',
      ]),
    );
    fireEvent.change(list, { target: { value: 'landing' } });
    await compared(2);
    expect(asked().caseId).toBe('landing');
  });

  it('lead to the Size page where they are joints', async () => {
    await openCompare();
    await compared(1);
    expect(screen.queryByRole('button', { name: 'Size B Boom tip, long' })).toBeNull();
    press('Size A Boom tip');
    expect(await screen.findByRole('heading', { name: 'Size Boom tip' })).toBeTruthy();
  });
});

describe('inputs', () => {
  beforeEach(() => {
    bridge = makeFakeBridge(withVariant());
  });
  const overlap = (): HTMLInputElement => screen.getByRole('textbox', { name: 'overlap, B' });

  it('of a variant are changed in their place, and the figures follow', async () => {
    await openCompare();
    expect(await screen.findByText('“Boom tip, long” carries 2.40.')).toBeTruthy();
    expect(screen.queryByRole('textbox', { name: 'overlap, A' })).toBeNull();
    fireEvent.input(overlap(), { target: { value: '50' } });
    expect(await screen.findByText('“Boom tip, long” carries 2.00.')).toBeTruthy();
    expect(asked()).toMatchObject({ document: { variants: [{ joint: { overlap: 50 } }] } });
  });

  it('are marked where they differ, and stay when they no longer do', async () => {
    await openCompare();
    const row = (): HTMLElement => screen.getByRole('rowheader', { name: /^overlap/ });
    expect(row().textContent).toContain('(differs)');
    fireEvent.input(overlap(), { target: { value: '30' } });
    expect(row().textContent).not.toContain('(differs)');
    expect(overlap().value).toBe('30');
  });

  it('are all shown on asking, with the name and the loads', async () => {
    await openCompare();
    expect(screen.queryByRole('rowheader', { name: /Gust, axial force/ })).toBeNull();
    fireEvent.click(screen.getByRole('checkbox', { name: 'all inputs' }));
    expect(screen.getByRole('rowheader', { name: /Gust, axial force/ })).toBeTruthy();
    fireEvent.input(screen.getByRole('textbox', { name: 'name, B' }), {
      target: { value: 'The long one' },
    });
    expect(await screen.findByText('“The long one” carries 2.40.')).toBeTruthy();
  });

  it('change the lap of a variant as the Size page does', async () => {
    await openCompare();
    await compared(1);
    fireEvent.change(screen.getByRole('combobox', { name: 'lap, B' }), {
      target: { value: 'sleeve-double' },
    });
    expect(await screen.findByText('“Boom tip, long” carries 4.80.')).toBeTruthy();
    expect(screen.getByRole('textbox', { name: /^spigot, wall at the root, B/ })).toBeTruthy();
  });

  it('that are no figure change nothing, whatever else is changed', async () => {
    await openCompare();
    expect(await screen.findByText('“Boom tip, long” carries 2.40.')).toBeTruthy();
    const asks = bridge.count('project.compare');
    fireEvent.input(overlap(), { target: { value: '1,5' } });
    fireEvent.input(screen.getByRole('textbox', { name: 'socket, wall at the root, B' }), {
      target: { value: '1.3' },
    });
    await waitFor(() => expect(bridge.count('project.compare')).toBe(asks + 1));
    const asked = bridge.last('project.compare').document as Project;
    expect(asked.variants?.[0]?.joint).toMatchObject({ overlap: 60, sleeve: { atRoot: 1.3 } });
    expect(overlap().value).toBe('1,5');
    expect(screen.queryByText('not recalculated')).toBeNull();
    fireEvent.input(overlap(), { target: { value: '50' } });
    expect(await screen.findByText('“Boom tip, long” carries 2.00.')).toBeTruthy();
    expect(bridge.count('project.compare')).toBe(asks + 2);
  });

  it('that the core refuses are told at their field', async () => {
    await openCompare();
    await compared(1);
    bridge.refuse('project.compare', {
      field: 'variants.0.joint.overlap',
      message: 'overlap must be from 1 to 500 mm',
    });
    fireEvent.input(overlap(), { target: { value: '400' } });
    await waitFor(() => expect(overlap().getAttribute('aria-invalid')).toBe('true'));
    expect(screen.getByText('not recalculated')).toBeTruthy();
    expect(screen.queryByText(/cannot be compared/)).toBeNull();
  });
});

describe('answers', () => {
  beforeEach(() => {
    bridge = makeFakeBridge(withVariant());
  });

  it('that take long can be stopped, and are not asked for again by themselves', async () => {
    bridge.refuse('project.compare', { code: 'stopped' });
    await openCompare();
    expect(await screen.findByText('The comparison was stopped before it was done.')).toBeTruthy();
    const asks = bridge.count('project.compare');
    fireEvent.input(screen.getByRole('textbox', { name: 'overlap, B' }), {
      target: { value: '50' },
    });
    await new Promise((done) => setTimeout(done, 500));
    expect(bridge.count('project.compare')).toBe(asks);
    bridge.answer('project.compare', (input) =>
      ok(makeCompareReport(input.document as Project, input)),
    );
    press('Compare again');
    expect(await screen.findByText('“Boom tip, long” carries 2.00.')).toBeTruthy();
  });

  it('that took long are asked for by hand the next time', async () => {
    let time = 0;
    const clock = vi.spyOn(performance, 'now').mockImplementation(() => {
      time += 9000;
      return time;
    });
    await openCompare();
    expect(await screen.findByText('“Boom tip, long” carries 2.40.')).toBeTruthy();
    fireEvent.input(screen.getByRole('textbox', { name: 'overlap, B' }), {
      target: { value: '50' },
    });
    expect(await screen.findByText('not recalculated')).toBeTruthy();
    await new Promise((done) => setTimeout(done, 500));
    expect(bridge.count('project.compare')).toBe(1);
    press('Compare again');
    expect(await screen.findByText('“Boom tip, long” carries 2.00.')).toBeTruthy();
    clock.mockRestore();
  });

  it('that refuse one column say so in it, and leave the others', async () => {
    bridge.answer('project.compare', (input) => {
      const report = makeCompareReport(input.document as Project, input);
      const refused = {
        code: 'bad-input',
        field: 'variants.0.joint.sleeve.atRoot',
        message: 'the socket does not fit',
      } as const;
      const columns = [
        report.columns[0]!,
        makeColumn(long, { refused, margins: [], lowest: null, stress: null }),
      ];
      return ok({ ...report, columns, sentences: [] });
    });
    await openCompare();
    const alert = await screen.findByRole('alert');
    expect(alert.textContent).toBe('The socket does not fit.');
    expect(cells(/bond fails in shear at/)).toEqual(['× 1.20', '–none']);
    const field = screen.getByRole('textbox', { name: 'socket, wall at the root, B' });
    expect(field.getAttribute('aria-invalid')).toBe('true');
  });

  it('have their curves named for those who do not see them, and as a table', async () => {
    await openCompare();
    expect(
      await screen.findByRole('img', {
        name: /^Shear along the bonds over one another, Gust\. A, Boom tip/,
      }),
    ).toBeTruthy();
    expect(
      screen.getByRole('img', { name: /^Peel along the bonds over one another/ }),
    ).toBeTruthy();
    expect(screen.getByRole('radio', { name: 'from the root' })).toBeTruthy();
  });

  it('are not asked for while nobody looks', async () => {
    await openCompare();
    await compared(1);
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    fireEvent.input(await screen.findByRole('textbox', { name: 'Overlap' }), {
      target: { value: '31' },
    });
    await new Promise((done) => setTimeout(done, 500));
    expect(bridge.count('project.compare')).toBe(1);
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    await compared(2);
    expect(asked()).toMatchObject({ document: { joints: [{ overlap: 31 }] } });
  });
});
