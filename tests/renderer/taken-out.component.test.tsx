/** Every plot and every table has what takes it out of the page; what comes out is what is drawn. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { RangeChart } from '../../src/renderer/gap/RangeChart.tsx';
import { Tornado } from '../../src/renderer/size/matters/Tornado.tsx';
import { ScatterAnswer } from '../../src/renderer/size/scatter/ScatterAnswer.tsx';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import type { MattersReport, ScatterReport } from '../../src/shared/reports-scatter.ts';
import { EIGHTEEN } from '../support/coupons-published.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { someLives, withLives } from './support/lives.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';
import { takable, untaken } from './support/untaken.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});
const open = async (key: string, heading: string | RegExp, project?: Project): Promise<void> => {
  if (project) bridge = makeFakeBridge(project);
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key, ctrlKey: true });
  await screen.findByRole('heading', { name: heading });
};
const press = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const couponView = (name: string): void => {
  const views = screen.getByRole('navigation', { name: 'Views of the coupons' });
  fireEvent.click(within(views).getByRole('button', { name }));
};
const main = (): HTMLElement => screen.getByRole('main');
/** Once there are so many plots and tables on the page, none of them is without its control. */
async function allTaken(atLeast: number): Promise<void> {
  await waitFor(() => expect(takable(main())).toBeGreaterThanOrEqual(atLeast), { timeout: 20_000 });
  // A plot that has nothing to draw yet has nothing to take.
  await waitFor(() => expect(untaken(main())).toEqual([]), { timeout: 20_000 });
}

/** Three batches of lap shear coupons of one set. */
function withCoupons(): Project {
  const { coupons } = planCoupons(makeProject(), {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd1002', adherend: 'titanium' }],
    environments: [{ temperature: 23, moisture: 'dry' }],
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  coupons.sets[0]!.results = EIGHTEEN.map((value, i) => ({
    coupon: String(i + 1),
    batch: 'ABC'[Math.floor(i / 6)]!,
    load: Math.round(30 * value),
  }));
  return makeProject({ coupons });
}

const at = (margin: number) => ({ margin, label: 'a mode', caseName: 'a case' });
const common = {
  jointId: 'tip',
  targetMargin: 0.15,
  tolerances: [
    {
      input: 'load',
      label: 'loads',
      unit: '1',
      distribution: 'normal',
      spread: 0.05,
      middle: 0,
      origin: 'typical',
    },
  ],
  middle: at(0.3),
  own: at(0.1),
  flags: [],
} as const;
const matters: MattersReport = {
  ...common,
  bars: [
    {
      input: 'load',
      label: 'loads',
      low: at(0.5),
      high: at(-0.1),
      from: -0.1,
      to: 0.1,
      swing: 0.6,
    },
  ],
};
const scatter: ScatterReport = {
  ...common,
  samples: 6,
  seed: 1,
  method: 'each',
  below: { count: 1, share: 1 / 6, low: 0.01, high: 0.5 },
  confidence: 0.95,
  mean: 0.2,
  deviation: 0.1,
  lowest: -0.1,
  highest: 0.4,
  percentiles: [{ share: 0.01, value: -0.1, low: -0.1, high: 0 }],
  histogram: { from: -0.1, width: 0.1, counts: [1, 2, 3] },
  governs: [{ label: 'a mode', caseName: 'a case', count: 6 }],
  exact: 6,
  check: null,
};

describe('every plot and every table can be taken out', () => {
  it('of the joints, by list and by case', async () => {
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    await allTaken(1);
    press('By case');
    await screen.findByRole('heading', { name: 'Load cases' });
    await allTaken(2);
  });

  it('of a joint: along the bond, around it, its margins and loads, its sizing and sizes', async () => {
    await open('2', 'Size Boom tip');
    await allTaken(3);
    for (const name of ['CSV, Margins', 'CSV, Loads']) {
      expect(screen.getByRole('button', { name })).toBeTruthy();
    }
    press('Around the bond');
    await screen.findByRole('button', { name: /^PNG, Peel around/ });
    await allTaken(3);
    const views = () => screen.getByRole('navigation', { name: 'Views of the joint' });
    fireEvent.click(within(views()).getByRole('button', { name: 'Find' }));
    fireEvent.click(
      within(await screen.findByRole('region', { name: 'Find' })).getByRole('button', {
        name: 'Find',
      }),
    );
    await screen.findByRole('region', { name: 'Lowest margin against size' });
    await allTaken(2);
    fireEvent.click(within(views()).getByRole('button', { name: 'Sizes' }));
    press('Add a size');
    await allTaken(1);
  });

  it('of what matters and of the scatter', () => {
    for (const page of [
      () => <Tornado report={matters} />,
      () => <ScatterAnswer report={scatter} />,
    ]) {
      const { container, unmount } = render(page);
      expect(takable(container)).toBeGreaterThan(0);
      expect(untaken(container)).toEqual([]);
      expect(container.querySelector('[data-takes="png"]')).toBeTruthy();
      unmount();
    }
  });

  it('of the comparison', async () => {
    await open('3', 'Compare Boom tip');
    press('Double lap at equal overlap');
    await allTaken(3);
  });

  it('of the gap: readings, and margin against gap', async () => {
    await open('4', 'Gap check Boom tip');
    press('Start measuring');
    await allTaken(2);
    const range = {
      bond: 'bond',
      curve: [
        { gap: 0, margin: 0.1, mode: 'a mode' },
        { gap: 0.4, margin: -0.1, mode: 'a mode' },
      ],
      narrower: null,
    } as unknown as Parameters<typeof RangeChart>[0]['range'];
    const { container } = render(() => <RangeChart range={range} target={0.15} />);
    expect(takable(container)).toBe(1);
    expect(untaken(container)).toEqual([]);
  });

  it('of coupons: plan, results, statistics, agreement, ledger', async () => {
    await open('5', 'Coupons', withCoupons());
    await allTaken(2);
    couponView('Results');
    await allTaken(1);
    couponView('Statistics');
    await screen.findByRole('heading', { name: 'Probability plot' });
    await allTaken(4);
    couponView('Measured over predicted');
    await screen.findByRole('heading', { name: 'Measured over predicted' });
    await allTaken(2);
    couponView('Ledger');
    await screen.findByRole('button', { name: 'Ledger as CSV' });
    await allTaken(2);
  });

  it('of lives', async () => {
    await open('5', 'Coupons', withLives(someLives()));
    couponView('Lives');
    await screen.findByRole('heading', { name: 'S-N plot' });
    await allTaken(3);
  });

  it('and one without its control would be seen', async () => {
    await open('2', 'Size Boom tip');
    await allTaken(3);
    const controls = [...main().querySelectorAll('.figures-column .take-out')];
    expect(controls.length).toBeGreaterThanOrEqual(3);
    controls[1]!.remove();
    expect(untaken(main())).toHaveLength(1);
  });
});

describe('what is saved', () => {
  it('is named by project, joint and what it is, and holds the figures', async () => {
    const blobs: Blob[] = [];
    Object.assign(URL, {
      createObjectURL: (blob: Blob) => `blob:${blobs.push(blob)}`,
      revokeObjectURL: () => {},
    });
    const names: string[] = [];
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
      this: HTMLAnchorElement,
    ) {
      names.push(this.download);
    });
    const [first, ...others] = makeProject().joints;
    await open(
      '1',
      'Test frame',
      makeProject({ joints: [{ ...first!, name: '=1+1, "tip"' }, ...others] }),
    );
    fireEvent.click(await screen.findByRole('button', { name: 'CSV, Joints' }));
    expect(names).toEqual(['Test-frame-joints.csv']);
    const text = await new Promise<string>((done) => {
      const reader = new FileReader();
      reader.onload = () => done(String(reader.result));
      reader.readAsText(blobs[0]!);
    });
    expect(text.split('\r\n')[0]).toContain('joint,kind,"overlap, mm",target,margin');
    expect(text).toContain(`"'=1+1, ""tip"""`);
    expect(text).toContain(',-0.12,');
    expect(text).not.toContain('−');
  });
});
