/** The Ledger view: what strengths rest on, plainly marked, with ways to the joint and to the coupons. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { ledgerReport } from '../../src/main/handlers/ledger/ledger.ts';
import { App } from '../../src/renderer/App.tsx';
import { createLedger } from '../../src/renderer/state/ledger.ts';
import { createProject } from '../../src/renderer/state/project.ts';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { Allowable, Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const allowable: Allowable = {
  set: 'gone',
  setName: 'Long ago',
  temperature: 60,
  moisture: 'wet',
  gap: 0.2,
  basis: 'B',
  coupons: 18,
  batches: 3,
  method: 'weibull',
  value: 25.2,
  mean: 28,
  ratio: 1.1,
  factor: 0.9,
  taken: '2026-03-01T08:00:00Z',
};

/** One set with a result at 60 °C dry, and an allowable at 60 °C wet whose set is gone. */
function withCoupons(): Project {
  const project = makeProject();
  const { coupons } = planCoupons(project, {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd3528', adherend: 'titanium' }],
    environments: [{ temperature: 60, moisture: 'dry' }],
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  coupons.sets[0]!.results = [{ coupon: '1', batch: 'A', load: 9000 }];
  const [paste, ...others] = project.adhesives;
  return makeProject({ coupons, adhesives: [{ ...paste!, allowables: [allowable] }, ...others] });
}

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});
async function open(project?: Project): Promise<void> {
  if (project) bridge = makeFakeBridge(project);
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '5', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Coupons' });
  fireEvent.click(screen.getByRole('button', { name: 'Ledger' }));
  await screen.findByRole('region', { name: 'Ledger' });
  await screen.findAllByRole('table');
}
const group = (name: RegExp): HTMLElement =>
  screen.getByRole('rowheader', { name }).closest('tbody')!;

describe('the ledger', () => {
  it('is there without a set of coupons, and marks what is no allowable', async () => {
    await open();
    const views = screen.getByRole('navigation', { name: 'Views of the coupons' });
    expect(
      within(views)
        .getAllByRole('button')
        .map((one) => one.textContent),
    ).toEqual(['Plan', 'Lives', 'Ledger']);
    const marked = document.querySelectorAll('.ledger-basis');
    expect(marked.length).toBeGreaterThan(0);
    for (const one of marked) {
      expect(one.textContent).toBe('typical values, no allowable');
      expect(one.classList.contains('typical')).toBe(true);
    }
    expect(screen.queryByRole('combobox', { name: 'Set' })).toBeNull();
  });

  it('goes to a joint', async () => {
    await open();
    fireEvent.click(screen.getAllByRole('button', { name: 'Boom root' })[0]!);
    await waitFor(() =>
      expect(screen.getByRole('button', { name: 'Size' }).getAttribute('aria-current')).toBe(
        'page',
      ),
    );
    await waitFor(() =>
      expect((bridge.last('joint.analyse').document as Project).joints[0]!.id).toBe('root'),
    );
  });

  it('tells an allowable with its set, and coupons that nothing was taken from', async () => {
    await open(withCoupons());
    const hot = group(/^60 °C wet/);
    expect(hot.textContent).toContain('B-basis, 18 coupons, 60 °C wet');
    expect(hot.textContent).toContain(
      'Long ago: 18 coupons in 3 batches at gap 0.2 mm, taken 2026-03-01. Its set is no longer in the project.',
    );
    expect(hot.querySelector('.ledger-basis')!.classList.contains('typical')).toBe(false);
    expect(within(hot).queryByRole('button', { name: 'Long ago' })).toBeNull();
    const dry = group(/^60 °C dry/);
    expect(dry.textContent).toContain('typical values, no allowable');
    expect(dry.textContent).toContain('1 result at gap 0.2 mm: no allowable is taken.');
    fireEvent.click(within(dry).getByRole('button', { name: /^Double lap shear/ }));
    await screen.findByRole('combobox', { name: 'Set' });
    expect(screen.getByRole('button', { name: 'Statistics' }).getAttribute('aria-current')).toBe(
      'true',
    );
  });

  it('leaves out on wish what no joint uses', async () => {
    await open(withCoupons());
    const heads = () => screen.getAllByRole('rowheader').map((one) => one.textContent!);
    expect(heads().some((head) => head.startsWith('60 °C dry'))).toBe(true);
    fireEvent.click(screen.getByRole('checkbox', { name: 'only what joints use' }));
    expect(heads().some((head) => head.startsWith('60 °C dry'))).toBe(false);
    expect(document.querySelector('.ledger-table')!.textContent).not.toContain('no joint');
    expect(heads().length).toBeGreaterThan(0);
  });

  it('is saved as a table that a spreadsheet reads', async () => {
    const saved: Blob[] = [];
    vi.stubGlobal(
      'URL',
      Object.assign(URL, {
        createObjectURL: (blob: Blob) => {
          saved.push(blob);
          return 'blob:ledger';
        },
        revokeObjectURL: () => {},
      }),
    );
    const clicked = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue();
    await open(withCoupons());
    fireEvent.click(screen.getByRole('button', { name: 'Ledger as CSV' }));
    expect((clicked.mock.contexts[0] as HTMLAnchorElement).download).toBe('Test-frame-ledger.csv');
    expect(saved[0]!.type).toBe('text/csv');
    expect(saved[0]!.size).toBeGreaterThan(1000);
  });

  it('says what is wrong with the document', async () => {
    await open();
    bridge.refuse('project.ledger', { message: 'the adhesive is gone' });
    fireEvent.click(screen.getByRole('button', { name: 'Plan' }));
    fireEvent.click(screen.getByRole('button', { name: 'Ledger' }));
    expect((await screen.findByRole('alert')).textContent).toBe('The adhesive is gone.');
  });

  it('can be stopped, and goes on', async () => {
    bridge.refuse('project.ledger', { code: 'stopped' });
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    fireEvent.click(await screen.findByRole('button', { name: 'Ledger' }));
    const on = await screen.findByRole('button', { name: 'Go on' });
    bridge.answer('project.ledger', ({ document }) => ok(ledgerReport(document as Project)));
    fireEvent.click(on);
    expect(await screen.findAllByRole('table')).not.toHaveLength(0);
    expect(screen.queryByRole('button', { name: 'Go on' })).toBeNull();
  });

  it('is of the document as it stands, and says so while it is not', async () => {
    const project = createProject();
    project.open({ document: makeProject(), origin: 'test' });
    await createRoot(async (dispose) => {
      const ledger = createLedger(bridge, project);
      await waitFor(() => expect(ledger.report()?.project).toBe('Test frame'));
      expect(ledger.old()).toBe(false);
      project.edit(['name'], 'Other frame');
      expect(ledger.old()).toBe(true);
      await waitFor(() => expect(ledger.report()?.project).toBe('Other frame'));
      expect(ledger.old()).toBe(false);
      dispose();
    });
  });
});
