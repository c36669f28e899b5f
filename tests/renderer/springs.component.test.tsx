import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import type { SpringsReport } from '../../src/shared/reports-springs.ts';
import { springsCsv } from '../../src/shared/springs-text.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const makeSprings = (change: Partial<SpringsReport> = {}): SpringsReport => ({
  jointId: 'boom-tip',
  name: 'Boom tip',
  description: 'single lap, tube in socket',
  flat: false,
  overlap: 30,
  states: [
    {
      temperature: 20,
      moisture: 'dry',
      names: ['Gust'],
      springs: [
        { kind: 'axial', stiffness: 629_000, tube: 1.07e7, atRoot: null, tubeLength: 17 },
        { kind: 'bending', stiffness: 8.086e7, tube: 1.2e9, atRoot: 4.5e8, tubeLength: 14.8 },
        { kind: 'torsion', stiffness: 5.463e7, tube: 5.1e8, atRoot: null, tubeLength: 9.3 },
      ],
      shear: 1.1e5,
    },
  ],
  mass: {
    tube: { part: 'tube', volume: 1, mass: null },
    walls: [],
    bonds: [],
    adhesiveVolume: 607,
    added: null,
    without: ['Carbon'],
  },
  print: { layerThickness: 0.06, height: 30, layers: 500 },
  typical: false,
  flags: [],
  ...change,
});

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
  bridge.answer('joint.springs', () => ok(makeSprings()));
});
const open = async (): Promise<HTMLElement> => {
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
  fireEvent.click(await screen.findByRole('button', { name: 'Springs' }));
  return screen.findByRole('table', { name: /Stiffness of Boom tip/ });
};

describe('the view of springs', () => {
  it('stands in the place of the stress, with units and what the springs are between', async () => {
    const table = await open();
    const rows = within(table).getAllByRole('row');
    expect(rows[1]!.textContent).toContain('axial6.290 × 105N/mmnone17.0');
    expect(rows[2]!.textContent).toContain('bending8.086 × 107N·mm/rad4.500 × 10814.8');
    expect(rows[4]!.textContent).toContain('across1.100 × 105N/mm');
    expect(screen.queryByRole('img', { name: /Shear along/ })).toBeNull();
    expect(screen.getByRole('img', { name: /the spring joins it to the tube/ })).toBeTruthy();
    expect(screen.getByText(/“Carbon” has no density/)).toBeTruthy();
  });

  it('asks about the joint alone, and again at every change', async () => {
    const project = makeProject();
    const tip = project.joints.find(({ id }) => id === 'tip')!;
    bridge = makeFakeBridge({ ...project, variants: [{ of: 'tip', joint: { ...tip, id: 'b' } }] });
    bridge.answer('joint.springs', () => ok(makeSprings()));
    await open();
    const first = bridge.last('joint.springs');
    expect(first).toMatchObject({ jointId: 'tip' });
    expect((first.document as Project).joints).toHaveLength(1);
    expect(first.document as Project).not.toHaveProperty('variants');
    const before = bridge.count('joint.springs');
    fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: '33' } });
    await waitFor(() => expect(bridge.count('joint.springs')).toBeGreaterThan(before));
    const again = bridge.last('joint.springs').document as Project;
    expect(again.joints[0]!.overlap).toBe(33);
  });

  it('copies the table as it is saved', async () => {
    const written: string[] = [];
    vi.stubGlobal('navigator', {
      ...navigator,
      clipboard: { writeText: async (text: string) => void written.push(text) },
    });
    await open();
    fireEvent.click(screen.getByRole('button', { name: 'Copy' }));
    await screen.findByText('Copied.');
    expect(written).toEqual([springsCsv(makeSprings())]);
  });

  it('says so where the clipboard cannot be reached', async () => {
    await open();
    fireEvent.click(screen.getByRole('button', { name: 'Copy' }));
    expect(await screen.findByText(/save the file instead/)).toBeTruthy();
  });

  it('keeps the last figures, marked, while the joint is refused', async () => {
    await open();
    bridge.refuse('joint.springs', { message: 'The gap closes.' });
    fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), { target: { value: '34' } });
    await waitFor(() => expect(screen.getAllByText('not recalculated').length).toBeGreaterThan(0));
    expect(screen.getByRole('table', { name: /Stiffness of Boom tip/ })).toBeTruthy();
  });
});
