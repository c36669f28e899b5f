import { fireEvent, screen, waitFor, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { typicalPly } from '../../src/renderer/size/stack/new-laminate.ts';
import { refusedSentence } from '../../src/renderer/state/refused.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { choose, disclose, field, renderInputs, type } from './support/inputs.tsx';
import { laminate, makeLaminateProject, makeLaminateReport, ply } from './support/laminate.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const plies = (): Promise<HTMLElement> => screen.findByRole('img', { name: /pl(y|ies) from/i });
const press = (name: string): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const notes = (): string[] =>
  within(screen.getByRole('list', { name: 'Tube stack, to know' }))
    .getAllByRole('listitem')
    .map((item) => item.textContent!.trim());

describe('the stack as text', () => {
  it('is stored as written, as soon as it can be read', async () => {
    const { sent } = renderInputs(makeLaminateProject(), 'tip');
    expect(field('Tube stack').value).toBe('[0/±45/90]s');
    type('Tube stack', '[0, +-30, 0]');
    expect(sent().adherends[2]).toMatchObject({ stack: '[0, +-30, 0]' });
    expect(readProject(sent()).ok).toBe(true);
    await waitFor(async () =>
      expect((await plies()).getAttribute('aria-label')).toContain('0°, 30°, −30°, 0°'),
    );
  });

  it('offers its usual form, and takes it only when asked', () => {
    const { sent } = renderInputs(makeLaminateProject(), 'tip');
    expect(screen.queryByRole('button', { name: /Write the stack/ })).toBeNull();
    type('Tube stack', '[0,90,90,0]');
    fireEvent.blur(field('Tube stack'));
    expect(field('Tube stack').value).toBe('[0,90,90,0]');
    fireEvent.click(screen.getByRole('button', { name: 'Write the stack as [0/90]s' }));
    expect(field('Tube stack').value).toBe('[0/90]s');
    expect(sent().adherends[2]).toMatchObject({ stack: '[0/90]s' });
  });

  it('says what cannot be read and where, and keeps the last good stack', async () => {
    const { sent, project } = renderInputs(makeLaminateProject(), 'tip');
    await plies();
    type('Tube stack', '[0/±45/x]s');
    const said = screen.getByText(/^An angle is expected, not “x”\./);
    expect(field('Tube stack').getAttribute('aria-invalid')).toBe('true');
    expect(field('Tube stack').getAttribute('aria-describedby')).toContain(said.id);
    expect(said.querySelector('mark')?.textContent).toBe('x');
    expect(said.querySelector('mark')?.previousSibling?.textContent).toBe('[0/±45/');
    expect(sent().adherends[2]).toMatchObject({ stack: '[0/±45/90]s' });
    expect(refusedSentence(project.refused.all(), 'is saved')).toMatch(
      /^Tube stack of .* holds no stack: \[0\/±45\/90\]s is saved\.$/,
    );
    expect(await plies()).toBeTruthy();
    fireEvent.keyDown(field('Tube stack'), { key: 'Escape' });
    expect(field('Tube stack').value).toBe('[0/±45/90]s');
    expect(project.refused.all()).toEqual([]);
  });

  it('follows a change from elsewhere', () => {
    const { project } = renderInputs(makeLaminateProject(), 'tip');
    type('Tube stack', '[0/');
    project.edit(['adherends', 2, 'stack'], '[0_4]');
    expect(field('Tube stack').value).toBe('[0_4]');
    expect(field('Tube stack').getAttribute('aria-invalid')).toBeNull();
  });

  it('shows the refusal of the core that names it', () => {
    const { issues } = renderInputs(makeLaminateProject(), 'tip');
    issues.setRefusal({ code: 'bad-input', field: 'adherends.2.stack', message: 'too thick' });
    expect(screen.getByText('Too thick.')).toBeTruthy();
    expect(field('Tube stack').getAttribute('aria-invalid')).toBe('true');
  });
});

describe('the drawing', () => {
  const hatch = (drawing: HTMLElement): (string | null | undefined)[] =>
    [...drawing.querySelectorAll('.ply .fibres')].map((band) =>
      drawing
        .querySelector(`[id="${band.getAttribute('fill')?.slice(5, -1)}"]`)
        ?.getAttribute('patternTransform'),
    );
  const angles = (drawing: HTMLElement): (string | null)[] =>
    [...drawing.querySelectorAll('.ply-angle')].map((text) => text.textContent);

  it('has the outside on top and fibres that rise to the right where the angle is positive', async () => {
    renderInputs(makeLaminateProject('[0/45/-30]'), 'tip');
    const drawing = await plies();
    expect(angles(drawing)).toEqual(['−30°', '45°', '0°']);
    // On a screen y runs down: a turn by a positive angle would go down.
    expect(hatch(drawing)).toEqual(['rotate(30)', 'rotate(-45)', 'rotate(0)']);
    expect(drawing.textContent).toMatch(/^outside.*inside$/);
    expect(drawing.querySelectorAll('.half')).toHaveLength(0);
  });

  it('brackets the halves that mirror each other', async () => {
    renderInputs(makeLaminateProject(), 'tip');
    const drawing = await plies();
    expect(drawing.querySelectorAll('.half')).toHaveLength(2);
    expect(drawing.querySelectorAll('.mid-plane')).toHaveLength(1);
  });

  it('is shortened where the stack is long, and says so', async () => {
    renderInputs(makeLaminateProject('[(0/90)30]'), 'tip');
    const drawing = await plies();
    expect(angles(drawing)).toContain('40 plies');
    expect(screen.getByText(/60 plies.*drawn shortened, not to scale/)).toBeTruthy();
  });
});

describe('what the core says of it', () => {
  it('is asked with the wall, without the joints, and not again for an overlap', async () => {
    const { bridge, project } = renderInputs(makeLaminateProject(), 'tip');
    await plies();
    expect(bridge.last('laminate.describe')).toMatchObject({
      adherendId: 'plies',
      wall: 1.6,
      document: { joints: [], plies: [{ id: 'ud' }] },
    });
    type('Overlap', '31');
    expect(bridge.count('laminate.describe')).toBe(1);
    type('Tube wall', '2');
    await waitFor(() => expect(bridge.last('laminate.describe').wall).toBe(2));
    project.edit(['plies', 0, 'axialModulus'], 140_000);
    await waitFor(() => expect(bridge.count('laminate.describe')).toBe(3));
  });

  it('is flagged in words', async () => {
    renderInputs(makeLaminateProject('[0/45]'), 'tip');
    await plies();
    expect(notes()).toEqual([
      'The stack is not symmetric.',
      'The stack is not balanced.',
      'Plies scaled from 0.4 to 1.6 mm.',
    ]);
    type('Tube stack', '[0/±45/90]s');
    await waitFor(() => expect(screen.queryByText(/not symmetric/)).toBeNull());
    expect(screen.getByText(/8 plies, symmetric, balanced/)).toBeTruthy();
  });

  it('is read at a glance, in the units of the screen', async () => {
    renderInputs(makeLaminateProject(), 'tip');
    await plies();
    const shown = screen.getByLabelText('Laminate properties').textContent;
    for (const part of ['Ex45.0 GPa', 'Eθ33.4 GPa', 'νxθ0.31', 'αx1.25 µm/m/K', 'G134.10 GPa']) {
      expect(shown).toContain(part);
    }
    expect(screen.getByText(/E 45\.0 GPa along, 33\.4 GPa around/)).toBeTruthy();
  });

  it('has the constants of the free wall beside those held, where they differ', async () => {
    renderInputs(makeLaminateProject('[0/90]'), 'tip');
    await plies();
    const row = (symbol: string): string =>
      within(screen.getByLabelText('Laminate properties'))
        .getByText(symbol)
        .parentElement!.textContent!.trim();
    expect(row('Ex')).toBe('Ex70.0 GPa');
    expect(row('Ex, free')).toBe('Ex, free35.0 GPa');
    expect(row('νxθ, free')).toBe('νxθ, free0.15');
    expect(screen.queryByText('Eθ, free')).toBeNull();
    // The free figure stands right after the one held.
    expect(screen.getByLabelText('Laminate properties').textContent).toContain(
      'Ex70.0 GPaEx, free35.0 GPaEθ',
    );
    const label = screen.getByText('Ex, free').closest('[title]')!;
    expect(label.getAttribute('title')).toContain('free to bend and twist');
    expect(screen.getByText(/33\.4 GPa around; curvature suppressed/)).toBeTruthy();
    type('Tube stack', '[0/90]s');
    await waitFor(() => expect(screen.queryByText(/, free|suppressed/)).toBeNull());
  });

  it('has A, B and D in tables, and the moduli in bending', async () => {
    renderInputs(makeLaminateProject(), 'tip');
    await plies();
    expect(screen.queryByRole('table')).toBeNull();
    disclose('A, B, D and bending');
    const cells = (name: RegExp): string[] =>
      within(screen.getByRole('table', { name }))
        .getAllByRole('cell')
        .map((cell) => cell.textContent!)
        .filter((text) => text !== '');
    expect(cells(/^A kN\/mm/).slice(0, 3)).toEqual(['151', '32.0', '0.00']);
    // A stray rounding of the sum writes no sign.
    expect(cells(/^B kN/).at(-1)).toBe('0.00');
    expect(cells(/^D N·m/).at(-1)).toBe('10.1');
    expect(screen.getByLabelText('Moduli in bending').textContent).toContain('81.2 GPa');
  });

  it('names faces of a strip by their place, and its directions', async () => {
    const project = makeLaminateProject();
    const lug = project.joints[2];
    if (lug?.type !== 'flat-single') throw new Error('no strip');
    lug.strip.adherend = 'plies';
    renderInputs(project, 'lug');
    expect((await plies()).textContent).toMatch(/upper.*lower/);
    expect(screen.getByLabelText('Laminate properties').textContent).toContain('Ey');
    type('Strip stack', '[0/90]');
    expect(await screen.findByText(/not symmetric from its lower face/)).toBeTruthy();
  });

  it('is not shown of the laminate chosen before', async () => {
    const project = makeLaminateProject();
    project.adherends.push({ ...laminate, id: 'other', name: 'Other', stack: '[90]' });
    const { bridge } = renderInputs(project, 'tip');
    await plies();
    bridge.hold();
    choose('Tube material', 'Other');
    expect(screen.queryByRole('img', { name: /plies from/ })).toBeNull();
    await bridge.release();
    expect((await plies()).getAttribute('aria-label')).toMatch(/^One ply from/);
  });

  it('tells which other joints are made of it', async () => {
    renderInputs(makeLaminateProject(), 'tip');
    await plies();
    expect(screen.getByText(/also in Boom root/)).toBeTruthy();
  });
});

describe('a laminate', () => {
  it('can be made in a project without plies, of a typical one, marked so', async () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    expect(screen.queryByRole('textbox', { name: 'Tube stack' })).toBeNull();
    press('New laminate, of a typical ply');
    expect(field('Tube stack').value).toBe('[0/±45/90]s');
    const project = sent();
    expect(project.plies).toEqual([{ id: 'ply', ...typicalPly }]);
    expect(project.joints[0]).toMatchObject({ tube: { adherend: 'laminate' } });
    expect(project.adherends.at(-1)).toMatchObject({ kind: 'laminate', ply: 'ply' });
    expect(readProject(project)).toMatchObject({ ok: true });
    expect(screen.getAllByText('typical').length).toBeGreaterThan(1);
    await plies();
    // And back.
    choose('Tube material', 'Carbon tube (typical)');
    expect(screen.queryByRole('textbox', { name: 'Tube stack' })).toBeNull();
    expect(sent().joints[0]).toMatchObject({ tube: { adherend: 'carbon' } });
  });

  it('is offered for what is laid up, not for a sleeve', () => {
    renderInputs(makeProject(), 'root');
    expect(screen.getAllByRole('button', { name: /^New laminate/ })).toHaveLength(1);
  });

  it('takes the first ply of a project that has some, under an id of its own', () => {
    const { sent } = renderInputs(makeLaminateProject(), 'tip');
    for (let made = 0; made < 2; made++) {
      disclose('Laminate: name and source');
      press('New laminate from a stack');
    }
    const ids = sent().adherends.map(({ id }) => id);
    expect(ids).toEqual(['carbon', 'titanium', 'plies', 'laminate', 'laminate-2']);
    expect(sent().plies).toHaveLength(1);
    expect(readProject(sent()).ok).toBe(true);
    expect(sent().joints[0]).toMatchObject({ tube: { adherend: 'laminate-2' } });
  });

  it('does not write into the typical ply that the next project begins with', () => {
    const before = structuredClone(typicalPly);
    const { project } = renderInputs(makeProject(), 'tip');
    press('New laminate, of a typical ply');
    project.edit(['plies', 0, 'axialModulus'], 1000);
    project.edit(['plies', 0, 'source', 'text'], 'changed');
    expect(typicalPly).toEqual(before);
  });
});

describe('its ply', () => {
  it('has every figure as a field, in the units of the screen', async () => {
    const { sent } = renderInputs(makeLaminateProject(), 'tip');
    disclose('Ply properties');
    expect(field('Tube ply, E1 along').value).toBe('130');
    type('Tube ply, E1 along', '140.5');
    type('Tube ply, α1 along', '-0.4');
    type('Tube ply, Thickness', '0.125');
    expect(sent().plies?.[0]).toEqual({
      ...ply,
      axialModulus: 140_500,
      axialExpansion: -0.4e-6,
      thickness: 0.125,
    });
    const figures = Object.values(ply).filter((value) => typeof value === 'number').length;
    // Besides its figures the name, the source, and the density that it has not.
    expect(screen.getAllByRole('textbox', { name: /^Tube ply, .*/ })).toHaveLength(figures + 3);
    for (const one of screen.getAllByRole('textbox', { name: /^Tube ply, / })) {
      if (one.className === 'figure') expect(one.title.length).toBeGreaterThan(10);
    }
  });

  it('loses its mark once its source is a test', () => {
    const { sent } = renderInputs(makeLaminateProject(), 'tip');
    disclose('Ply properties');
    const row = screen.getByRole('combobox', { name: 'Tube ply' }).closest<HTMLElement>('.row')!;
    expect(within(row).getByText('typical')).toBeTruthy();
    choose('Tube ply, kind of source', 'tested, our own');
    type('Tube ply, source in words', 'Coupons 3 to 9');
    expect(within(row).queryByText('typical')).toBeNull();
    expect(sent().plies?.[0]?.source).toEqual({ kind: 'tested', text: 'Coupons 3 to 9' });
  });

  it('is chosen among those of the project, or added', () => {
    const project = makeLaminateProject();
    project.plies!.push({ ...ply, id: 'fabric', name: 'Fabric', thickness: 0.3 });
    const { sent } = renderInputs(project, 'tip');
    choose('Tube ply', 'Fabric (typical)');
    expect(sent().adherends[2]).toMatchObject({ ply: 'fabric' });
    expect(screen.getByText(/0\.3 mm thick/)).toBeTruthy();
    disclose('Ply properties');
    press('Add a typical ply');
    expect(sent().adherends[2]).toMatchObject({ ply: 'ply' });
    expect(sent().plies?.map(({ id }) => id)).toEqual(['ud', 'fabric', 'ply']);
    expect(readProject(sent()).ok).toBe(true);
  });
});

describe('an orthotropic wall', () => {
  it('takes and loses what peel needs of it', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose('Through the thickness');
    expect(field('Tube, E3').value).toBe('');
    expect(field('Tube, E3').placeholder).toBe('not set');
    type('Tube, E3', '9.5');
    type('Tube, Zt between plies', '45');
    expect(sent().adherends[0]).toMatchObject({ throughModulus: 9500, interlaminarTension: 45 });
    expect(readProject(sent()).ok).toBe(true);
    type('Tube, E3', '');
    fireEvent.blur(field('Tube, E3'));
    expect(sent().adherends[0]).not.toHaveProperty('throughModulus');
    expect(field('Tube, E3').getAttribute('aria-invalid')).toBeNull();
    type('Tube, Zt between plies', 'x');
    expect(field('Tube, Zt between plies').getAttribute('aria-invalid')).toBe('true');
  });
});

it('reports what the fake core is asked about', () => {
  // The stand-in itself: a test of notes is worth no more than it.
  const report = makeLaminateReport(makeLaminateProject('[0/90]s'), 'plies', undefined);
  expect(report).toMatchObject({ symmetric: true, balanced: true, notes: [], wall: 0.8 });
});
