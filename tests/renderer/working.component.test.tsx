import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import {
  makeBond,
  makeCard,
  makeMargin,
  makeReport,
  makeStress,
  makeWorking,
} from './support/reports.ts';

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
const button = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
const press = (name: RegExp): HTMLElement => {
  const one = button(name);
  one.focus();
  fireEvent.click(one);
  return one;
};
const sheet = (name: RegExp = /working of/): Promise<HTMLElement> =>
  screen.findByRole('region', { name });
const type = (name: string, text: string): void => {
  fireEvent.input(screen.getByRole('textbox', { name }), { target: { value: text } });
};

describe('the working of a margin', () => {
  it('is asked in the state that sets it, by mode, part and place', async () => {
    await open();
    press(/^\+1\.20\s*, sleeve, yield, working$/);
    const region = await sheet(/working of metal-yield/);
    expect(bridge.last('joint.explain')).toMatchObject({
      jointId: 'tip',
      subject: 'metal-yield',
      part: 'sleeve',
      place: 'root',
      focus: { caseId: 'landing', gapState: 'min', theta: 180 },
    });
    const { joints } = bridge.last('joint.explain').document as Project;
    expect(joints.map(({ id }) => id)).toEqual(['tip']);
    expect(within(region).getAllByRole('heading', { level: 3 })).toHaveLength(2);
  });

  it('shows each card: statement, formula, figures, source, and where it holds', async () => {
    await open();
    press(/adhesive, ultimate strain, working/);
    const region = await sheet();
    const card = within(region).getByText('Shear at the mouth').closest('article')!;
    expect(within(card).getByText(/Shear lag in a lap/)).toBeTruthy();
    const formulas = within(card)
      .getAllByRole('math')
      .map((math) => math.getAttribute('aria-label'));
    expect(formulas[0]).toMatch(/^τ max equals F over \(2 times π times R\)/);
    expect(formulas[1]).toMatch(/^22\.0 equals 16000 over/);
    const row = within(card).getByRole('row', { name: /axial force/ });
    expect(row.textContent).toContain('16000 N');
    expect(within(card).getByText('Volkersen (1938), equation 12')).toBeTruthy();
    const domain = within(card).getByRole('list', { name: /Where Shear at the mouth holds/ });
    expect(
      within(domain)
        .getAllByRole('listitem')
        .map((item) => item.textContent),
    ).toEqual(['inside: adhesive elastic', 'outside: wall thinner than a tenth of the radius']);
  });

  it('tells what lies outside the method there and in the row, in words', async () => {
    const outside = makeMargin(0.2, {
      flags: [{ code: 'thin', message: 'the wall is too thick for a shell' }],
    });
    bridge.answer('joint.analyse', (input) =>
      ok(
        makeReport((input.document as Project).joints[0]!, {
          margins: [outside, makeMargin(1, { part: 'other' })],
        }),
      ),
    );
    bridge.answer('joint.explain', () => ok(makeWorking({ margin: outside })));
    await open();
    const rows = within(screen.getByRole('list', { name: /Margins/ })).getAllByRole('listitem');
    expect(within(rows[0]!).getByText('outside domain').title).toBe(
      'the wall is too thick for a shell',
    );
    expect(within(rows[1]!).queryByText('outside domain')).toBeNull();
    fireEvent.click(within(rows[0]!).getByRole('button', { name: /working/ }));
    const region = await sheet(/adhesive, ultimate strain/);
    expect(within(region).getByText('The wall is too thick for a shell.')).toBeTruthy();
  });
});

describe('the working of a drawn figure', () => {
  it.each([
    [/^peak 26\.0/, 'peak-shear', 'bond'],
    [/^peak 11\.0/, 'peak-peel', 'bond'],
  ])('%s', async (name, subject, part) => {
    bridge.answer('joint.analyse', (input) => {
      const [joint] = (input.document as Project).joints;
      const stress = makeStress(30, {
        bonds: [makeBond(30, { peak: { x: 30, value: 26 } })],
        theta: 12,
        loadFactor: 1,
      });
      return ok(makeReport(joint!, { stress }));
    });
    await open();
    press(name);
    await sheet(new RegExp(`working of ${subject}`));
    expect(bridge.last('joint.explain')).toMatchObject({
      subject,
      part,
      focus: { caseId: 'gust', gapState: 'max', theta: 12, loadFactor: 1 },
    });
  });

  it('is there for the strength and the plateau of the sweep', async () => {
    await open();
    await screen.findByRole('img', { name: /Strength over/ });
    press(/^plateau 38 mm/);
    await sheet(/working of plateau/);
    expect(bridge.last('joint.explain').focus).toEqual({});
    press(/^bond 1\.4\d/);
    await sheet(/working of bond-strength/);
    expect(screen.getAllByRole('region', { name: /working of/ })).toHaveLength(1);
  });

  it('is there for the edge moment of a flat single lap, which shows both factors', async () => {
    const edgeMoment = {
      chosen: 'hart-smith',
      golandReissner: { root: 0.42, mouth: 0.45 },
      hartSmith: { root: 0.38, mouth: 0.38 },
    } as const;
    bridge.answer('joint.analyse', (input) => {
      const [joint] = (input.document as Project).joints;
      return ok(makeReport(joint!, { stress: makeStress(25, { edgeMoment }) }));
    });
    await open('Tail lug');
    press(/Hart-Smith 0\.38 \(used\); Goland and Reissner 0\.42 root, 0\.45 mouth/);
    await sheet(/working of edge-moment/);
    expect(screen.queryByRole('button', { name: 'Around the bond' })).toBeNull();
  });
});

describe('the sheet', () => {
  it('takes the focus, Escape closes it, and the focus goes back to its figure', async () => {
    await open();
    const figure = press(/adhesive, ultimate strain, working/);
    const region = await sheet();
    await waitFor(() => expect(document.activeElement).toBe(region));
    expect(figure.getAttribute('aria-expanded')).toBe('true');
    expect(screen.getByText('Margins').closest('section')?.inert).toBe(true);
    fireEvent.keyDown(region, { key: 'Escape' });
    expect(screen.queryByRole('region', { name: /working of/ })).toBeNull();
    expect(document.activeElement).toBe(figure);
    expect(screen.getByText('Margins').closest('section')?.inert).toBeFalsy();
    expect(figure.getAttribute('aria-expanded')).toBe('false');
  });

  it('leaves the focus alone when it is elsewhere', async () => {
    await open();
    press(/adhesive, ultimate strain, working/);
    await sheet();
    const field = screen.getByRole('textbox', { name: 'Overlap' });
    field.focus();
    fireEvent.keyDown(field, { key: 'Escape' });
    expect(screen.queryByRole('region', { name: /working of/ })).toBeNull();
    expect(document.activeElement).toBe(field);
  });

  it('asks again when an input changes, the latest state wins', async () => {
    await open();
    press(/adhesive, ultimate strain, working/);
    await sheet();
    bridge.answer('joint.explain', ({ document }) =>
      ok(
        makeWorking({
          title: `working at ${(document as Project).joints[0]?.overlap}`,
          cards: [makeCard()],
        }),
      ),
    );
    for (const overlap of ['31', '32', '33']) type('Overlap', overlap);
    const region = await sheet(/working at 33/);
    expect(within(region).getAllByRole('article')).toHaveLength(1);
  });

  it('waits until the overlap is let go', async () => {
    await open();
    press(/adhesive, ultimate strain, working/);
    await sheet();
    const before = bridge.count('joint.explain');
    const handle = screen.getByRole('slider', { name: 'Drag overlap' });
    const at = (type: string, clientX: number): boolean =>
      fireEvent(
        handle,
        Object.assign(new Event(type, { bubbles: true }), { clientX, button: 0, pointerId: 1 }),
      );
    const governing = (): string => screen.getByText(/governs:/).textContent ?? '';
    const held = governing();
    at('pointerdown', 100);
    at('pointermove', 140);
    // The margins have followed the hand; the working has not been asked for.
    await waitFor(() => expect(governing()).not.toBe(held));
    expect(bridge.count('joint.explain')).toBe(before);
    at('pointerup', 140);
    await waitFor(() => expect(bridge.count('joint.explain')).toBeGreaterThan(before));
  });

  it('says that it waits, and why it cannot', async () => {
    await open();
    bridge.refuse('joint.explain', { message: 'the wall has no strength' });
    bridge.hold();
    press(/adhesive, ultimate strain, working/);
    const region = await sheet(/Working of this figure/);
    expect(within(region).getByText('Calculating …')).toBeTruthy();
    await bridge.release();
    expect((await within(region).findByRole('alert')).textContent).toContain(
      'The wall has no strength.',
    );
    expect(within(region).queryByText('Calculating …')).toBeNull();
  });

  it('says when its figure is no longer there', async () => {
    await open();
    press(/sleeve, yield, working/);
    await sheet();
    bridge.answer('joint.analyse', (input) =>
      ok(makeReport((input.document as Project).joints[0]!, { margins: [makeMargin(0.5)] })),
    );
    type('Overlap', '33');
    expect(await screen.findByText(/not among the results any more/)).toBeTruthy();
  });

  it('goes with its joint', async () => {
    await open();
    press(/adhesive, ultimate strain, working/);
    await sheet();
    fireEvent.change(screen.getByRole('combobox', { name: 'Joint' }), { target: { value: 'lug' } });
    await screen.findByRole('heading', { name: 'Size Tail lug' });
    expect(screen.queryByRole('region', { name: /working of/ })).toBeNull();
  });

  it('dims with the rest while a value is refused', async () => {
    await open();
    press(/adhesive, ultimate strain, working/);
    const region = await sheet();
    bridge.refuse('joint.analyse', { field: 'joints.0.bond.gap', message: 'too thin' });
    type('Gap', '0.2001');
    expect(await within(region).findByText('not recalculated')).toBeTruthy();
  });
});
