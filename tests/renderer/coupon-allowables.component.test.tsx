/** What is taken from coupons into the adhesive: only by a person, and as it was offered. */
import { fireEvent, render, screen, waitFor } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { ok } from '../../src/shared/reply.ts';
import type {
  AllowableOffer,
  CalibrationOffer,
  CouponsReport,
} from '../../src/shared/reports-coupons.ts';
import { makeCouponsReport } from './support/coupons.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const offer: AllowableOffer = {
  basis: 'B',
  method: 'weibull',
  value: 25.2,
  mean: 28,
  ratio: 1.1,
  mode: 'adhesive-strain',
  factor: 0.99,
  coupons: 18,
  batches: 3,
};

function withSet(): Project {
  const project = makeProject();
  const { coupons } = planCoupons(project, {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd3528', adherend: 'titanium' }],
    environments: [{ temperature: 60, moisture: 'dry' }],
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  coupons.sets[0]!.results = [{ coupon: '1', batch: 'A', load: 9000 }];
  return makeProject({ coupons });
}

let bridge: FakeBridge;
let factor: number;
let calibration: CalibrationOffer | null;
let extra: Partial<CouponsReport>;
beforeEach(() => {
  factor = offer.factor;
  calibration = null;
  extra = {};
  bridge = makeFakeBridge(withSet());
  bridge.answer('project.coupons', ({ document }) =>
    ok({
      ...makeCouponsReport(document as Project, {
        notOffered: '',
        offers: [{ ...offer, factor }],
        calibration,
      }),
      ...extra,
    }),
  );
});
async function open(name: string): Promise<void> {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '5', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Coupons' });
  fireEvent.click(screen.getByRole('button', { name }));
}
const asked = () => bridge.last('project.coupons').document as Project;
const allowables = () => asked().adhesives[0]!.allowables;

describe('an allowable', () => {
  it('is offered in words, taken by a person, named, and taken back', async () => {
    await open('Statistics');
    const take = await screen.findByRole('button', {
      name: 'Take the B value as the allowable',
    });
    expect(allowables()).toBeUndefined();
    expect(screen.getByText(/Nothing is taken yet: margins rest on/)).toBeTruthy();
    fireEvent.click(take);
    await waitFor(() => expect(allowables()).toHaveLength(1));
    expect(allowables()![0]).toMatchObject({
      basis: 'B',
      temperature: 60,
      moisture: 'dry',
      gap: 0.2,
      coupons: 18,
      factor: 0.99,
    });
    expect(readProject(asked()).ok).toBe(true);
    expect(screen.getByText(/^B-basis, 18 coupons, 60 °C dry,/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Remove the allowable at 60 °C dry' }));
    await waitFor(() => expect(allowables()).toBeUndefined());
  });

  it('can be the mean as a calibration, which is called no allowable', async () => {
    calibration = {
      mode: 'adhesive-strain',
      factor: 1.1,
      low: 1.05,
      high: 1.15,
      mean: 28,
      coupons: 18,
      batches: 3,
    };
    await open('Statistics');
    fireEvent.click(await screen.findByRole('button', { name: 'Take the mean as a calibration' }));
    await waitFor(() => expect(allowables()).toHaveLength(1));
    expect(allowables()![0]).toMatchObject({ basis: 'mean', factor: 1.1, value: 28, mean: 28 });
    expect(readProject(asked()).ok).toBe(true);
    expect(
      screen.getByText(/^mean, no allowable, 18 coupons, 60 °C dry, .* beside the knockdown/),
    ).toBeTruthy();
    expect(screen.queryByText(/changed since/)).toBeNull();
    // An allowable takes its place: one for each environment.
    fireEvent.click(screen.getByRole('button', { name: 'Take the B value as the allowable' }));
    await waitFor(() => expect(allowables()![0]!.basis).toBe('B'));
    expect(allowables()).toHaveLength(1);
  });

  it('says when its coupons have changed since', async () => {
    await open('Statistics');
    fireEvent.click(
      await screen.findByRole('button', { name: 'Take the B value as the allowable' }),
    );
    await waitFor(() => expect(allowables()).toHaveLength(1));
    expect(screen.queryByText(/changed since/)).toBeNull();
    factor = 0.9;
    fireEvent.click(screen.getByRole('button', { name: 'Results' }));
    fireEvent.input(screen.getByLabelText('coupon 1: load, N'), { target: { value: '8000' } });
    fireEvent.click(screen.getByRole('button', { name: 'Statistics' }));
    expect(await screen.findByText(/The coupons have changed since: take it again/)).toBeTruthy();
  });
});

describe('strength against gap', () => {
  it('is offered from all sets of the adhesive, and takes the place of the table', async () => {
    extra = {
      gapCurves: [
        {
          adhesive: 'paste',
          temperature: 60,
          moisture: 'dry',
          specimen: 'd3528',
          reference: 0.2,
          rows: [
            { gap: 0.1, factor: 1.05, n: 4 },
            { gap: 0.2, factor: 1, n: 6 },
            { gap: 0.5, factor: 0.72, n: 5 },
          ],
        },
      ],
    };
    await open('Measured over predicted');
    fireEvent.click(await screen.findByRole('radio', { name: 'all sets of the adhesive' }));
    fireEvent.click(
      await screen.findByRole('button', { name: 'Take it in place of the adhesive’s table' }),
    );
    await waitFor(() => expect(asked().adhesives[0]!.knockdowns?.gap).toHaveLength(3));
    expect(asked().adhesives[0]!.knockdowns).toMatchObject({
      gap: [
        { gap: 0.1, factor: 1 },
        { gap: 0.2, factor: 1 },
        { gap: 0.5, factor: 0.72 },
      ],
      source: { kind: 'tested', text: expect.stringContaining('15 coupons at 60 °C dry') },
    });
    expect(readProject(asked()).ok).toBe(true);
  });
});
