import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeReport, makeStress } from './support/reports.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});
const open = async (joint = 'Boom tip'): Promise<void> => {
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: joint }));
  await screen.findByRole('img', { name: /Shear along/ });
};
const sent = (): Project => bridge.last('joint.analyse').document as Project;
const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const type = (name: string, text: string): void => {
  fireEvent.input(field(name), { target: { value: text } });
};
const choose = (name: string, value: string): void => {
  fireEvent.change(screen.getByRole('combobox', { name }), { target: { value } });
};
const margins = (): HTMLElement[] =>
  within(screen.getByRole('list', { name: 'Margins, lowest first' })).getAllByRole('listitem');
const quiet = (ms: number): Promise<unknown> => new Promise((done) => setTimeout(done, ms));

describe('what is asked', () => {
  it('is about this joint alone, whatever the others are', async () => {
    await open('Boom root');
    expect(sent().joints.map(({ id }) => id)).toEqual(['root']);
    expect(bridge.last('joint.analyse').jointId).toBe('root');
  });

  it('follows each good figure that is typed', async () => {
    await open();
    type('Overlap', '40');
    expect(sent().joints[0]?.overlap).toBe(40);
    await waitFor(() => expect(margins()[0]?.textContent).toContain('+0.60'));
    type('Gust, axial force', '12.5');
    await waitFor(() => expect(sent().joints[0]?.loads[0]?.force).toBe(12_500));
  });

  it('is never about what a field holds that is no number', async () => {
    await open();
    const before = bridge.count('joint.analyse');
    type('Gap', '0,2');
    expect(bridge.count('joint.analyse')).toBe(before);
    expect(margins()).toHaveLength(2);
    // The other fields go on: what stands in this one is what it last held.
    type('Overlap', '41');
    await waitFor(() => expect(bridge.count('joint.analyse')).toBe(before + 1));
    expect(sent().joints[0]).toMatchObject({ overlap: 41, bond: { gap: 0.2 } });
    expect(screen.queryByText('not recalculated')).toBeNull();
    type('Gap', '0.25');
    await waitFor(() =>
      expect(sent().joints[0]).toMatchObject({ overlap: 41, bond: { gap: 0.25 } }),
    );
  });

  it('has one question in flight, and the latest figure in the next', async () => {
    await open();
    bridge.hold();
    const before = bridge.count('joint.analyse');
    for (const overlap of ['31', '32', '33', '34']) type('Overlap', overlap);
    expect(bridge.count('joint.analyse')).toBe(before + 1);
    await bridge.release();
    await waitFor(() => expect(bridge.count('joint.analyse')).toBe(before + 2));
    expect(sent().joints[0]?.overlap).toBe(34);
    await waitFor(() => expect(margins()[0]?.textContent).toContain('+0.36'));
  });

  it('sweeps again for anything but the overlap', async () => {
    await open();
    await screen.findByRole('img', { name: /Strength over/ });
    type('Overlap', '35');
    fireEvent.keyDown(screen.getByRole('slider', { name: 'Drag overlap' }), { key: 'ArrowRight' });
    await quiet(350);
    expect(bridge.count('joint.sweep')).toBe(1);
    type('Tube wall', '1.7');
    type('Tube wall', '1.75');
    await quiet(350);
    expect(bridge.count('joint.sweep')).toBe(2);
  });

  it('sweeps further once an overlap beyond the sweep has come to rest', async () => {
    await open();
    await screen.findByRole('img', { name: /Strength over/ });
    type('Overlap', '90');
    await waitFor(() => expect(bridge.last('joint.sweep').to).toBe(120), { timeout: 2000 });
  });
});

describe('a refusal', () => {
  it('stands at its field, the figures stay, dimmed', async () => {
    await open('Boom root');
    bridge.refuse('joint.analyse', { field: 'joints.0.tube.wall', message: 'no bore is left' });
    type('Tube wall', '21');
    const message = await screen.findByText('No bore is left.');
    expect(field('Tube wall').getAttribute('aria-describedby')).toContain(message.id);
    expect(screen.getByText('not recalculated')).toBeTruthy();
    expect(margins()).toHaveLength(2);
    expect(within(screen.getByRole('main')).getByRole('status').closest('.is-stale')).toBeTruthy();
  });

  it('about no field of the form stands above it', async () => {
    await open();
    bridge.refuse('joint.analyse', { field: 'settings.factors', message: 'too few factors' });
    type('Overlap', '31');
    expect((await screen.findByRole('alert')).textContent).toBe('Too few factors.');
  });

  it('goes away with its joint', async () => {
    await open();
    bridge.refuse('joint.analyse', { field: 'joints.0.overlap', message: 'too long' });
    type('Overlap', '31');
    await screen.findByText('Too long.');
    bridge.answer('joint.analyse', (input) =>
      ok(makeReport((input.document as Project).joints[0]!)),
    );
    choose('Joint', 'lug');
    await screen.findByRole('heading', { name: 'Size Tail lug' });
    await waitFor(() => expect(screen.queryByText('not recalculated')).toBeNull());
  });
});

describe('the margins', () => {
  it('draw the state that sets them', async () => {
    await open();
    const second = within(margins()[1]!).getByRole('button', { name: /sleeve, yield.*holds/ });
    fireEvent.click(second);
    await waitFor(() =>
      expect(bridge.last('joint.analyse').focus).toMatchObject({
        caseId: 'landing',
        gapState: 'min',
        theta: 180,
      }),
    );
    expect(second.getAttribute('aria-pressed')).toBe('true');
    fireEvent.click(second);
    await waitFor(() => expect(bridge.last('joint.analyse').focus).not.toHaveProperty('caseId'));
  });

  it('mark what rests on typical values, and name the target', async () => {
    await open();
    expect(within(margins()[0]!).getByText('typical')).toBeTruthy();
    expect(within(margins()[1]!).queryByText('typical')).toBeNull();
    expect(screen.getByText('target 0.25')).toBeTruthy();
    expect(screen.getByText('Shear only: peel is not checked here.')).toBeTruthy();
  });
});

describe('what is drawn', () => {
  it('is chosen by case and gap, as applied or as asked', async () => {
    await open();
    choose('Load case drawn', 'landing');
    choose('Gap drawn', 'nominal');
    await waitFor(() =>
      expect(bridge.last('joint.analyse').focus).toMatchObject({
        caseId: 'landing',
        gapState: 'nominal',
      }),
    );
    fireEvent.click(screen.getByRole('radio', { name: '× 1.73 asked' }));
    await waitFor(() =>
      expect(bridge.last('joint.analyse').focus).toMatchObject({ loadFactor: 1.725 }),
    );
  });

  it('says plainly when the bond cannot carry the load', async () => {
    bridge.answer('joint.analyse', (input) =>
      ok(
        makeReport((input.document as Project).joints[0]!, {
          stress: makeStress(30, { carried: false, capacity: 0.83 }),
        }),
      ),
    );
    await open();
    expect(
      screen.getByText(/cannot carry this load: curve at the most it carries/).textContent,
    ).toContain('× 0.83');
  });

  it('has its figures in a table', async () => {
    await open();
    const [summary] = screen.getAllByText('Table');
    const details = summary?.closest('details') as HTMLDetailsElement;
    expect(screen.queryByText('Shear and peel along the bond, Gust')).toBeNull();
    details.open = true;
    fireEvent(details, new Event('toggle'));
    const table = screen.getByText('Shear and peel along the bond, Gust').closest('table');
    expect(within(table!).getAllByRole('row', { hidden: true })).toHaveLength(14);
  });
});

describe('the lap', () => {
  it('changes the joint and loses none of its loads', async () => {
    await open();
    choose('Lap', 'sleeve-double');
    await waitFor(() => expect(sent().joints[0]?.type).toBe('sleeve-double'));
    expect(sent().joints[0]).toMatchObject({
      spigot: { atRoot: 1.2 },
      socket: { atRoot: 1.2 },
      innerBond: { gap: 0.2 },
      loads: [{ force: 16_000 }, { force: -3000 }],
    });
    expect(sent().joints[0]).not.toHaveProperty('sleeve');
    expect(field('Inner gap tolerance').value).toBe('0.05');
  });

  it('remembers the second wall when it comes back', async () => {
    await open('Boom root');
    choose('Lap', 'spigot');
    await screen.findByRole('textbox', { name: 'Sleeve wall at root' });
    choose('Lap', 'sleeve-double');
    await waitFor(() => expect(sent().joints[0]).toMatchObject({ socket: { atRoot: 1.4 } }));
  });
});

describe('loads', () => {
  it('are added and taken away by case', async () => {
    await open();
    choose('Add a load case', 'rotor');
    await waitFor(() => expect(sent().joints[0]?.loads).toHaveLength(3));
    expect(screen.getByText(/cyclic, 1e7 cycles · 20 °C dry/)).toBeTruthy();
    type('Rotor, torque', '12');
    fireEvent.click(screen.getByRole('button', { name: 'Remove Gust' }));
    await waitFor(() =>
      expect(sent().joints[0]?.loads.map((load) => load.case)).toEqual(['landing', 'rotor']),
    );
    expect(field('Rotor, torque').value).toBe('12');
    expect(sent().joints[0]?.loads[1]).toMatchObject({ torque: 12_000 });
    expect(screen.queryByRole('textbox', { name: 'Gust, axial force' })).toBeNull();
  });

  it('can all be gone: the page says what is missing', async () => {
    await open('Tail lug');
    fireEvent.click(screen.getByRole('button', { name: 'Remove Gust' }));
    expect(await screen.findByText(/No load case acts on this joint/)).toBeTruthy();
    expect(screen.getByText('No load acts: there is no stress to draw.')).toBeTruthy();
  });
});

it('keeps the figures of a joint while another page is looked at', async () => {
  await open();
  fireEvent.keyDown(window, { key: '1', ctrlKey: true });
  const before = bridge.count('joint.analyse');
  fireEvent.keyDown(window, { key: '2', ctrlKey: true });
  expect(margins()).toHaveLength(2);
  await quiet(20);
  expect(bridge.count('joint.analyse')).toBeLessThanOrEqual(before + 1);
});
