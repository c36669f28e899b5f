import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import type { JointReport } from '../../src/shared/reports.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import {
  makeBond,
  makeLayered,
  makeLedger,
  makeMargin,
  makeReport,
  makeStress,
} from './support/reports.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});
const answer = (change: Partial<JointReport>): void =>
  bridge.answer('joint.analyse', (input) =>
    ok(makeReport((input.document as Project).joints[0]!, change)),
  );
const open = async (joint = 'Boom tip'): Promise<void> => {
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: joint }));
  await screen.findByRole('img', { name: /Shear along/ });
};

describe('peel along the bond', () => {
  it('stands under the shear, with its peak and its strength in words', async () => {
    await open();
    const label = screen.getByRole('img', { name: /^Peel along/ }).getAttribute('aria-label');
    expect(label).toContain('opens most, 11.0 MPa, at the mouth');
    expect(label).toContain('peel strength 42.0 MPa');
    expect(screen.queryByText('no peel strength given')).toBeNull();
    expect(await screen.findByText(/Peel peak 11\.0 MPa, peel strength 42\.0 MPa/)).toBeTruthy();
  });

  it('says so where no strength is given', async () => {
    const bond = makeBond(30, { layered: makeLayered(30, { strength: null }) });
    answer({ stress: makeStress(30, { bonds: [bond] }) });
    await open();
    expect(screen.getByText('no peel strength given')).toBeTruthy();
  });

  it('names what is not a peak', async () => {
    const bond = makeBond(30, { layered: makeLayered(30, { peak: { x: 0, value: -1 } }) });
    answer({ stress: makeStress(30, { bonds: [bond] }) });
    await open();
    expect(screen.getByText('nothing opens')).toBeTruthy();
  });
});

describe('the knockdowns', () => {
  it('stand under the choice of state, with what they leave', async () => {
    await open();
    expect(screen.getByText(/environment 1\.00 × gap 0\.90 × ageing 0\.80/).textContent).toBe(
      'Knockdowns environment 1.00 × gap 0.90 × ageing 0.80 × scatter 1.00 = 0.72 ÷ fitting 1.15 = 0.63',
    );
  });

  it('share a line where both bonds have the same, and have one each where not', async () => {
    const ledgers = [makeLedger({ part: 'inner bond' }), makeLedger({ part: 'outer bond' })];
    answer({ stress: makeStress(30, { ledgers }) });
    await open();
    expect(screen.getByText('Knockdowns, both bonds')).toBeTruthy();
    answer({
      stress: makeStress(30, { ledgers: [ledgers[0]!, { ...ledgers[1]!, left: 0.5 }] }),
    });
    fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: '31' } });
    expect(await screen.findByText('Knockdowns, outer bond')).toBeTruthy();
    expect(screen.getByText('Knockdowns, inner bond')).toBeTruthy();
  });
});

it('says above the list what governs, and how the rest stands', async () => {
  const peel = makeMargin(0.12, { mode: 'adhesive-peel', caseName: 'Gust, cold soak' });
  answer({ margins: [peel, makeMargin(0.9)] });
  await open();
  expect(screen.getByText('Peel at the mouth governs: +0.12 in Gust, cold soak')).toBeTruthy();
  expect(screen.getByText(/one of two margins is below the target/)).toBeTruthy();
});

describe('around the bond', () => {
  const showMap = async (): Promise<HTMLElement> => {
    fireEvent.click(screen.getByRole('button', { name: 'Around the bond' }));
    return screen.findByRole('application', { name: /^shear around the bond/ });
  };
  const reading = (map: HTMLElement): string => within(map).getByRole('status').textContent ?? '';

  it('is asked for only when it is wanted, in the drawn state', async () => {
    await open();
    expect(bridge.count('joint.stress')).toBe(0);
    await showMap();
    expect(bridge.last('joint.stress').focus).toMatchObject({
      map: 36,
      caseId: 'gust',
      gapState: 'max',
      theta: 0,
    });
    expect(screen.getByRole('button', { name: 'Around the bond' }).ariaPressed ?? '').not.toBe(
      'false',
    );
    expect(screen.getByRole('img', { name: /^Elastic shear around the bond/ })).toBeTruthy();
    expect(screen.getByRole('img', { name: /^Elastic peel around the bond/ })).toBeTruthy();
    expect(screen.queryByRole('img', { name: /^Peel along/ })).toBeNull();
  });

  it('is read by arrow keys, from the largest stress on, and round and round', async () => {
    await open();
    const map = await showMap();
    expect(reading(map)).toBe('30.0 MPa at 30.0 mm, 0°');
    fireEvent.keyDown(map, { key: 'ArrowLeft' });
    expect(reading(map)).toMatch(/at 27\.5 mm, 0°$/);
    fireEvent.keyDown(map, { key: 'ArrowUp' });
    expect(reading(map)).toMatch(/at 27\.5 mm, 10°$/);
    for (let i = 0; i < 17; i += 1) fireEvent.keyDown(map, { key: 'ArrowUp' });
    expect(reading(map)).toMatch(/, 180°$/);
    fireEvent.keyDown(map, { key: 'ArrowUp' });
    expect(reading(map)).toMatch(/, −170°$/);
    fireEvent.keyDown(map, { key: 'ArrowRight', shiftKey: true });
    expect(reading(map)).toMatch(/at 30\.0 mm/);
    fireEvent.keyDown(map, { key: 'Home' });
    expect(reading(map)).toBe('30.0 MPa at 30.0 mm, 0°');
  });

  it('follows the inputs, and has its figures in two tables', async () => {
    await open();
    await showMap();
    fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: '40' } });
    await screen.findByText('30.0 MPa at 40.0 mm, 0°');
    const details = screen.getAllByText('Table')[0]?.closest('details') as HTMLDetailsElement;
    details.open = true;
    fireEvent(details, new Event('toggle'));
    const caption = await screen.findByText(/^Elastic peel around the bond, MPa, Gust/);
    expect(within(caption.closest('table')!).getAllByRole('row', { hidden: true })).toHaveLength(
      14,
    );
  });

  it('says why it cannot be drawn', async () => {
    bridge.refuse('joint.stress', { message: 'no bore is left' });
    await open();
    fireEvent.click(screen.getByRole('button', { name: 'Around the bond' }));
    expect(await screen.findByText('The map cannot be drawn. No bore is left.')).toBeTruthy();
  });

  it('goes away again', async () => {
    await open();
    await showMap();
    fireEvent.click(screen.getByRole('button', { name: 'Around the bond' }));
    await screen.findByRole('img', { name: /^Peel along/ });
    fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: '41' } });
    await waitFor(() =>
      expect(bridge.last('joint.analyse').document).toMatchObject({ joints: [{ overlap: 41 }] }),
    );
    await waitFor(() =>
      expect(bridge.last('joint.stress').document).toMatchObject({ joints: [{ overlap: 41 }] }),
    );
    const after = bridge.asked.filter(({ name, input }) => {
      const { document } = input as { document: { joints: { overlap: number }[] } };
      return name === 'joint.stress' && document.joints[0]?.overlap === 41;
    });
    expect(after).toHaveLength(1);
    expect(after[0]?.input.focus).not.toHaveProperty('map');
  });
});
