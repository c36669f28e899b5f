/** Test pieces on the Plan view: made, copied, their sizes changed, and what they may claim then. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import type { CouponResult, Specimen } from '../../src/shared/project-coupons.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { ok, refuse } from '../../src/shared/reply.ts';
import { makeCouponsReport } from './support/coupons.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

let bridge: FakeBridge;
/** A lap shear of titanium and a tube in its sleeve, each a set, with these results of the first. */
function projectWith(
  results: readonly CouponResult[] = [],
  temperatures: readonly number[] = [23],
): Project {
  const { coupons } = planCoupons(makeProject(), {
    adhesive: 'paste',
    pieces: [
      { kind: 'standard', id: 'd1002', adherend: 'titanium' },
      { kind: 'sleeve', joint: 'tip' },
    ],
    environments: temperatures.map((temperature) => ({ temperature, moisture: 'dry' as const })),
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  coupons.sets[0]!.results = [...results];
  return makeProject({ coupons });
}
async function open(project: Project = projectWith()): Promise<void> {
  bridge = makeFakeBridge(project);
  await start();
}
async function start(): Promise<void> {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '5', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Coupons' });
}
const list = (): HTMLElement => screen.getByRole('region', { name: 'Test pieces' });
const button = (name: string | RegExp): HTMLButtonElement =>
  within(list()).getByRole('button', { name });
const click = (name: string | RegExp): void => {
  fireEvent.click(button(name));
};
const field = (name: string): HTMLInputElement => within(list()).getByLabelText(name);
const type = (name: string, text: string): void => {
  fireEvent.input(field(name), { target: { value: text } });
};
const choose = (name: string, value: string): void => {
  fireEvent.change(field(name), { target: { value } });
};
const rows = (): string[] =>
  [...list().querySelectorAll('tbody tr:not(.piece-edit)')].map((row) => {
    const name = row.querySelector('input')!.value;
    return [name, ...[...row.querySelectorAll('.units, td')].map((one) => one.textContent)].join(
      ' | ',
    );
  });
/** As the core was last told of it. */
const sent = (id: string): Specimen | undefined =>
  (bridge.last('project.coupons').document as Project).coupons!.specimens.find(
    (one) => one.id === id,
  );
const MEMORY = 'Sizes from memory: look them up in ASTM D1002.';
const CHANGED = 'Own sizes, changed from those of ASTM D1002.';

describe('the list of test pieces', () => {
  it('tells sizes, materials, where the sizes are from and who uses them', async () => {
    await open(projectWith([{ coupon: '1', batch: 'A', load: 4100 }]));
    const [lap, tube] = rows();
    expect(lap).toContain('Lap shear, thin metal | ASTM D1002 · flat single lap');
    expect(lap).toContain('width 25.4, overlap 12.7, strip 1.6, plate 1.6 mm');
    expect(lap).toContain('Printed titanium');
    expect(lap).toContain(MEMORY);
    expect(lap).toContain('1 set, 1 result');
    expect(tube).toContain('tube in a socket');
    expect(tube).toContain('tube 32 × 1.6, overlap 30, sleeve 1.2 mm');
    expect(tube).toContain('As the joint “Boom tip” is drawn.');
  });

  it('renames, and takes no empty name', async () => {
    await open();
    const name = field('Name of test piece Lap shear, thin metal');
    fireEvent.change(name, { target: { value: 'Thin lap ' } });
    expect(field('Name of test piece Thin lap').value).toBe('Thin lap');
    fireEvent.change(field('Name of test piece Thin lap'), { target: { value: ' ' } });
    expect(field('Name of test piece Thin lap').value).toBe('Thin lap');
    await waitFor(() => expect(sent('d1002')?.name).toBe('Thin lap'));
  });

  it('makes one of each kind, with all its sizes to type', async () => {
    await open(makeProject());
    expect(list().textContent).toContain('None yet');
    const sizes: Record<string, string[]> = {
      'flat-single': [
        'Overlap',
        'Width',
        'Strip thickness',
        'Plate wall at root',
        'Plate wall at mouth',
      ],
      'flat-double': [
        'Overlap',
        'Width',
        'Strip thickness',
        'Upper strap wall at root',
        'Upper strap wall at mouth',
        'Lower strap wall at root',
        'Lower strap wall at mouth',
      ],
      socket: [
        'Overlap',
        'Outside diameter',
        'Tube wall',
        'Sleeve wall at root',
        'Sleeve wall at mouth',
      ],
      spigot: [
        'Overlap',
        'Outside diameter',
        'Tube wall',
        'Sleeve wall at root',
        'Sleeve wall at mouth',
      ],
      'sleeve-double': [
        'Overlap',
        'Outside diameter',
        'Tube wall',
        'Socket wall at root',
        'Socket wall at mouth',
        'Spigot wall at root',
        'Spigot wall at mouth',
      ],
    };
    for (const [lap, names] of Object.entries(sizes)) {
      choose('Kind of the new test piece', lap);
      click('New test piece');
      const form = within(list()).getByRole('form', { name: /^Test piece Own/ });
      const fields = [...form.querySelectorAll<HTMLInputElement>('input.figure')];
      expect(fields.map((one) => one.getAttribute('aria-label'))).toEqual(names);
      // On with its name, which is there to be typed over.
      expect(document.activeElement?.getAttribute('aria-label')).toMatch(/^Name of test piece Own/);
    }
    expect(rows()).toHaveLength(5);
    expect(screen.getByText('changes not saved')).toBeTruthy();
    // Each can be chosen for the matrix.
    expect(screen.getAllByRole('checkbox', { name: /^Own / })).toHaveLength(5);
    fireEvent.click(screen.getByRole('checkbox', { name: 'Own flat double lap' }));
    fireEvent.click(screen.getByRole('button', { name: 'Make 1 set' }));
    await waitFor(() => expect(sent('own-flat-double')?.shape.type).toBe('flat-double'));
    const { document: asked } = bridge.last('project.coupons');
    expect(readProject(asked)).toMatchObject({ ok: true });
    expect(list().querySelectorAll('tbody tr:not(.piece-edit)')).toHaveLength(5);
  });

  it('removes what no set uses, and puts it back', async () => {
    await open();
    click('Remove test piece Lap shear, thin metal');
    expect(list().textContent).toContain(
      '“Lap shear, thin metal” stays: a set uses it: “Lap shear, thin metal, 23 °C dry, gap 0.2”.',
    );
    expect(rows()).toHaveLength(2);
    click('Copy Lap shear, thin metal');
    click('Remove test piece Lap shear, thin metal, own');
    expect(rows()).toHaveLength(2);
    click('Put it back');
    expect(rows()[2]).toContain('Lap shear, thin metal, own');
  });

  it('does not count a piece in the matrix that is gone', async () => {
    await open(makeProject());
    click('New test piece');
    fireEvent.click(screen.getByRole('checkbox', { name: 'Own flat single lap' }));
    expect(document.querySelector('.coupon-sum')!.textContent).toContain('1 specimen ×');
    click('Remove test piece Own flat single lap');
    expect(document.querySelector('.coupon-sum')!.textContent).toBe('Choose a specimen.');
  });
});

describe('the sizes of a piece', () => {
  it('are changed as they are typed; what is no number stays in its cell', async () => {
    await open(makeProject());
    click('New test piece');
    fireEvent.click(screen.getByRole('checkbox', { name: 'Own flat single lap' }));
    fireEvent.click(screen.getByRole('button', { name: 'Make 1 set' }));
    type('Width', '20');
    await waitFor(() => expect(sent('own-flat-single')?.shape).toMatchObject({ width: 20 }));
    fireEvent.blur(field('Width'));
    type('Width', '20,5');
    expect(field('Width').value).toBe('20,5');
    expect(field('Width').getAttribute('aria-invalid')).toBe('true');
    expect(list().textContent).toContain('“20,5” is ambiguous: write 20.5.');
    type('Overlap', '600');
    expect(list().textContent).toContain('It lies between 1 and 500 mm.');
    type('Strip thickness', '3.5');
    await waitFor(() =>
      expect(sent('own-flat-single')?.shape).toMatchObject({
        width: 20,
        overlap: 25,
        strip: { thickness: 3.5 },
      }),
    );
    // They are still there after the other field was typed into.
    expect(field('Width').value).toBe('20,5');
    expect(field('Overlap').value).toBe('600');
    expect(rows()[0]).toContain('width 20, overlap 25, strip 3.5, plate 3 mm');
    expect(rows()[0]).toContain('Own sizes.');
  });

  it('are of materials of the project, and of a source that is noted', async () => {
    await open();
    click('Copy Lap shear, thin metal');
    choose('Strip material', 'carbon');
    choose('Test piece, kind of source', 'tested');
    type('Test piece, source in words', 'Drawing 12');
    const row = rows()[2];
    expect(row).toContain('Carbon tube, Printed titanium');
    expect(row).toContain('Drawing 12');
  });

  it('put the sleeve of a tube outside or inside', async () => {
    await open();
    click('Copy Tube in sleeve, as Boom tip');
    choose('Sleeve of the test piece', 'spigot');
    expect(rows()[2]).toContain('tube over a spigot');
  });

  it('of a standard are better copied: that is offered first, and a change costs the claim', async () => {
    await open();
    click('Sizes of Lap shear, thin metal');
    expect(list().textContent).toContain(
      'These are sizes of ASTM D1002. Changed, they are that standard’s no longer, and the piece is one of your own.',
    );
    expect(within(list()).queryByLabelText('Width')).toBeNull();
    const answers = list().querySelector('.piece-answers')!;
    expect([...answers.querySelectorAll('button')].map((one) => one.textContent)).toEqual([
      'Copy it and change the copy',
      'Change these sizes',
    ]);
    click('Change these sizes');
    expect(document.activeElement).toBe(field('Overlap'));
    type('Width', '2');
    type('Width', '20');
    await waitFor(() => expect(sent('d1002')?.shape).toMatchObject({ width: 20 }));
    expect(sent('d1002')).toMatchObject({
      standard: '',
      source: { kind: 'typical', text: CHANGED },
    });
    expect(rows()[0]).not.toContain('ASTM D1002 ·');
  });

  it('typed back are that standard’s again, but not where the source was written anew', async () => {
    await open();
    click('Sizes of Lap shear, thin metal');
    click('Change these sizes');
    type('Width', '30');
    expect(rows()[0]).toContain(CHANGED);
    type('Width', '25.4');
    expect(rows()[0]).toContain(MEMORY);
    expect(rows()[0]).toContain('ASTM D1002 ·');
    type('Width', '30');
    type('Test piece, source in words', 'Drawing 12');
    type('Width', '25.4');
    expect(rows()[0]).toContain('Drawing 12');
    expect(rows()[0]).not.toContain('ASTM D1002');
  });

  it('are that standard’s in any material', async () => {
    await open();
    click('Sizes of Lap shear, thin metal');
    choose('Strip material', 'carbon');
    expect(rows()[0]).toContain('ASTM D1002 ·');
    expect(rows()[0]).toContain(MEMORY);
  });

  it('with results say plainly what hangs on them, and what a copy does not', async () => {
    const results = [1, 2, 3].map((n) => ({ coupon: String(n), batch: 'A', load: 4000 + n }));
    const project = projectWith(results);
    project.coupons!.specimens[0]!.standard = '';
    project.coupons!.specimens[0]!.source = { kind: 'tested', text: 'Drawing 12' };
    await open(project);
    click('Sizes of Lap shear, thin metal');
    expect(list().textContent).toContain(
      '1 set of it has 3 results: their strengths are load over the area of these sizes',
    );
    expect(within(list()).queryByLabelText('Width')).toBeNull();
    click('Copy it and change the copy');
    // The copy has no results: its sizes are open at once, and the first stays as it was.
    type('Width', '20');
    expect(rows()[0]).toContain('width 25.4');
    expect(rows()[2]).toContain('width 20');
    expect(list().textContent).not.toContain('3 results: their strengths');
  });

  it('show a standard that is typed without locking what is being worked on', async () => {
    await open(makeProject());
    click('New test piece');
    type('Standard whose sizes they are', 'ISO 4587');
    expect(list().textContent).not.toContain('These are sizes of');
    type('Width', '20');
    expect(field('Standard whose sizes they are').value).toBe('');
    expect(rows()[0]).toContain('Own sizes, changed from those of ISO 4587.');
  });

  it('that do not fit are told at their field, and cost the other sets nothing', async () => {
    const project = projectWith([], [23, 60]);
    const { shape } = project.coupons!.specimens[1]!;
    if (shape.type !== 'sleeve-single') throw new Error('no sleeve');
    shape.tube.wall = 20;
    bridge = makeFakeBridge(project);
    bridge.answer('project.coupons', (input) => {
      const { coupons } = input.document as Project;
      const at = coupons!.specimens.findIndex(
        ({ shape }) => shape.type === 'sleeve-single' && shape.tube.wall > 10,
      );
      return at < 0
        ? ok(makeCouponsReport(input.document as Project))
        : refuse(
            'bad-input',
            `coupons.specimens.${at}.shape.tube.wall`,
            'a wall of 20 mm leaves no bore',
          );
    });
    await start();
    const sets = () => document.querySelector('.coupon-sets')!.textContent!;
    // The first set is asked about alone, the other three together.
    await waitFor(() => expect(sets().match(/4\.00 kN/g)).toHaveLength(2));
    expect(sets().match(/A wall of 20 mm leaves no bore\./g)).toHaveLength(2);
    click('Sizes of Tube in sleeve, as Boom tip');
    expect(field('Tube wall').getAttribute('aria-invalid')).toBe('true');
    expect(list().querySelector('.callout')!.textContent).toBe('A wall of 20 mm leaves no bore.');
    type('Tube wall', '1.6');
    await waitFor(() => expect(sets().match(/4\.00 kN/g)).toHaveLength(4));
    expect(field('Tube wall').getAttribute('aria-invalid')).toBeNull();
  });
});
