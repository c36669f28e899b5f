import { fireEvent, screen, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/shared/read-project.ts';
import type { Ledger } from '../../src/shared/reports.ts';
import { choose, disclose, field, renderInputs, type } from './support/inputs.tsx';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';
import { makeStress } from './support/reports.ts';

useBrowser();

const press = (name: string): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const ledger = (part: string, gap: number, left: number): Ledger => ({
  part,
  gap,
  rows: [
    { name: 'environment', factor: 0.95 },
    { name: 'gap', factor: 0.9 },
    { name: 'ageing', factor: 0.85 },
    { name: 'scatter', factor: 0.8 },
    { name: 'fitting', factor: 0.87 },
  ],
  strength: left * 1.15,
  left,
});

describe('the ledger of knockdowns', () => {
  it('is absent until it is added, and then takes nothing away', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    const summary = disclose(/^Knockdowns/).querySelector('summary');
    expect(summary?.textContent).toBe('Knockdowns none');
    expect(sent().adhesives[0]).not.toHaveProperty('knockdowns');
    expect(screen.queryByRole('textbox', { name: 'Knockdown, ageing' })).toBeNull();
    press('Add knockdowns');
    expect(sent().adhesives[0]?.knockdowns).toMatchObject({
      environment: 1,
      ageing: 1,
      scatter: 1,
      gap: [],
      source: { kind: 'typical' },
    });
    expect(readProject(sent()).ok).toBe(true);
    press('Remove knockdowns');
    expect(sent().adhesives[0]).not.toHaveProperty('knockdowns');
    expect(screen.getByRole('button', { name: 'Add knockdowns' })).toBeTruthy();
  });

  it('stores each step, with a word on what it is', () => {
    const { sent, project } = renderInputs(makeProject(), 'tip');
    disclose(/^Knockdowns/);
    press('Add knockdowns');
    for (const [step, text] of [
      ['environment', '0.95'],
      ['ageing', '0.9'],
      ['scatter', '.85'],
    ]) {
      type(`Knockdown, ${step}`, text!);
      expect(field(`Knockdown, ${step}`).title.length).toBeGreaterThan(10);
    }
    expect(sent().adhesives[0]?.knockdowns).toMatchObject({
      environment: 0.95,
      ageing: 0.9,
      scatter: 0.85,
    });
    fireEvent.blur(field('Knockdown, scatter'));
    type('Knockdown, scatter', '0,8');
    expect(project.refused.all().map(({ says }) => says)).toEqual([
      'Knockdown, scatter of Toughened paste holds no number',
    ]);
    expect(sent().adhesives[0]?.knockdowns?.scatter).toBe(0.85);
  });

  it('has a table of strength against gap whose rows come and go', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose(/^Knockdowns/);
    press('Add knockdowns');
    for (let row = 0; row < 3; row++) press('Add a gap');
    type('Knockdown, factor of row 2', '0.9');
    type('Knockdown, gap of row 3', '0.5');
    type('Knockdown, factor of row 3', '0.7');
    expect(sent().adhesives[0]?.knockdowns?.gap).toEqual([
      { gap: 0.2, factor: 1 },
      { gap: 0.3, factor: 0.9 },
      { gap: 0.5, factor: 0.7 },
    ]);
    expect(readProject(sent()).ok).toBe(true);
    press('Remove gap row 2');
    expect(sent().adhesives[0]?.knockdowns?.gap).toEqual([
      { gap: 0.2, factor: 1 },
      { gap: 0.5, factor: 0.7 },
    ]);
    expect(field('Knockdown, gap of row 2').value).toBe('0.50');
    expect(screen.queryByRole('textbox', { name: 'Knockdown, gap of row 3' })).toBeNull();
  });

  it('adds a row at a gap that is not in the table yet', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose(/^Knockdowns/);
    press('Add knockdowns');
    const gaps = (): (number | undefined)[] =>
      (sent().adhesives[0]?.knockdowns?.gap ?? []).map(({ gap }) => gap);
    for (let row = 0; row < 2; row++) press('Add a gap');
    type('Knockdown, gap of row 2', '0.1');
    // The last row is not the thickest: a step past it is taken.
    press('Add a gap');
    expect(gaps()).toEqual([0.2, 0.1, 0.3]);
    type('Knockdown, gap of row 3', '5');
    for (let row = 0; row < 2; row++) press('Add a gap');
    expect(gaps()).toEqual([0.2, 0.1, 5, 4.9, 4.8]);
    expect(readProject(sent()).ok).toBe(true);
  });

  it('does not keep bad text of a row that was taken away', () => {
    const { project } = renderInputs(makeProject(), 'tip');
    disclose(/^Knockdowns/);
    press('Add knockdowns');
    press('Add a gap');
    type('Knockdown, gap of row 1', 'x');
    expect(project.refused.all()).toHaveLength(1);
    press('Remove gap row 1');
    expect(project.refused.all()).toEqual([]);
  });

  it('edits the fitting factor of the project, with or without knockdowns', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose(/^Knockdowns/);
    type('Fitting factor', '1.25');
    expect(sent().settings.factors.fitting).toBe(1.25);
  });

  it('shows what is left as the core gives it, a column for each bond', () => {
    const column = renderInputs(makeProject(), 'root');
    disclose(/^Knockdowns/);
    expect(screen.queryByRole('table', { name: /^Left/ })).toBeNull();
    // Not the product of the rows, so that a page that multiplies is found out.
    // A gap of the core is a sum: 0.2 + 0.1 is not quite 0.3.
    const ledgers = [ledger('outer bond', 0.2 + 0.1, 0.123), ledger('inner bond', 0.25, 0.456)];
    column.setStress(makeStress(45, { ledgers }));
    const table = screen.getByRole('table', { name: 'Left at the gap drawn' });
    const heads = within(table).getAllByRole('columnheader');
    expect(heads.map((head) => head.textContent)).toEqual([
      'outer bond 0.30 mm',
      'inner bond 0.25 mm',
    ]);
    const row = (name: string): (string | null)[] =>
      within(within(table).getByRole('row', { name: new RegExp(`^${name}`) }))
        .getAllByRole('cell')
        .map((cell) => cell.textContent);
    expect(row('Gap')).toEqual(['0.90', '0.90']);
    expect(row('Left')).toEqual(['0.12', '0.46']);
    expect(row('Environment')).toEqual(['0.95', '0.95']);
    expect(row('1 / fitting')).toEqual(['0.87', '0.87']);
  });

  it('says what is left while it is closed', () => {
    const column = renderInputs(makeProject(), 'root');
    const details = disclose(/^Knockdowns/);
    press('Add knockdowns');
    const ledgers = [ledger('outer bond', 0.3, 0.123), ledger('inner bond', 0.25, 0.456)];
    column.setStress(makeStress(45, { ledgers }));
    expect(details.querySelector('summary')?.textContent).toBe('Knockdowns left 0.12, 0.46');
    // What is no number changes nothing; what the core refuses leaves the figures behind.
    type('Overlap', 'x');
    expect(details.querySelector('summary')?.textContent).toBe('Knockdowns left 0.12, 0.46');
    column.issues.setRefusal({ code: 'bad-input', field: 'joints.1.overlap', message: 'no' });
    expect(details.querySelector('summary')?.textContent).toBe('Knockdowns');
  });

  it('says so while what is left is not that of the inputs', () => {
    const column = renderInputs(makeProject(), 'tip');
    disclose(/^Knockdowns/);
    column.setStress(makeStress(30, { ledgers: [ledger('bond', 0.25, 0.6)] }));
    column.issues.setRefusal({ code: 'bad-input', field: 'joints.0.overlap', message: 'no' });
    expect(screen.getByRole('table', { name: 'Left, not recalculated' })).toBeTruthy();
  });
});

describe('what thermal stress and fracture need of an adhesive', () => {
  it('is the temperature at which it is free of stress', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose('Thermal and fracture');
    expect(field('Stress-free temperature').value).toBe('60');
    type('Stress-free temperature', '75');
    expect(sent().adhesives[0]?.stressFreeTemperature).toBe(75);
    expect(screen.getByText(/^stress-free at 75 °C/)).toBeTruthy();
  });

  it('is its expansion', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose('Thermal and fracture');
    type('Adhesive expansion', '50');
    expect(sent().adhesives[0]?.expansion).toBe(5e-5);
    type('Adhesive expansion', '');
    expect(sent().adhesives[0]).not.toHaveProperty('expansion');
  });

  it('are fracture energies, typical until they say otherwise', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose('Thermal and fracture');
    press('Add fracture energies');
    expect(sent().adhesives[0]?.fracture?.source.kind).toBe('typical');
    type('Fracture energy, opening', '0.8');
    type('Fracture energy, sliding', '2.5');
    type('Mode-mix exponent', '1.5');
    choose('Fracture energies, kind of source', 'published');
    expect(sent().adhesives[0]?.fracture).toMatchObject({
      modeI: 0.8,
      modeII: 2.5,
      exponent: 1.5,
      source: { kind: 'published' },
    });
    expect(readProject(sent()).ok).toBe(true);
    press('Remove fracture energies');
    expect(sent().adhesives[0]).not.toHaveProperty('fracture');
    press('Add fracture energies');
    // The last one did not write into what the next begins with.
    expect(sent().adhesives[0]?.fracture).toMatchObject({ modeI: 1, source: { kind: 'typical' } });
  });

  it('is closed at first: the column stays calm', () => {
    renderInputs(makeProject(), 'tip');
    expect(screen.queryByRole('textbox', { name: 'Adhesive expansion' })).toBeNull();
    const details = disclose('Thermal and fracture');
    expect(field('Adhesive expansion')).toBeTruthy();
    details.open = false;
    fireEvent(details, new Event('toggle'));
    expect(screen.queryByRole('textbox', { name: 'Adhesive expansion' })).toBeNull();
  });
});

describe('the edge moment of a flat single lap', () => {
  it('is by Goland and Reissner until chosen otherwise', () => {
    const column = renderInputs(makeProject(), 'lug');
    const list = screen.getByRole<HTMLSelectElement>('combobox', { name: 'Edge moment' });
    expect(list.value).toBe('goland-reissner');
    choose('Edge moment', 'Hart-Smith');
    expect(column.sent().settings.edgeMoment).toBe('hart-smith');
    expect(readProject(column.sent()).ok).toBe(true);
    expect(list.value).toBe('hart-smith');
    column.setStress(
      makeStress(25, {
        edgeMoment: {
          chosen: 'hart-smith',
          golandReissner: { root: 0.41, mouth: 0.38 },
          hartSmith: { root: 0.33, mouth: 0.33 },
        },
      }),
    );
    expect(screen.getByText(/0\.41 root, 0\.38 mouth.*0\.33$/)).toBeTruthy();
  });

  it('is not asked of a sleeve', () => {
    renderInputs(makeProject(), 'tip');
    expect(screen.queryByRole('combobox', { name: 'Edge moment' })).toBeNull();
  });
});

describe('mix and cure', () => {
  it('are absent until they are added, marked as typical, and edited', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose('Mix and cure');
    expect(sent().adhesives[0]).not.toHaveProperty('process');
    press('Add a process');
    expect(sent().adhesives[0]?.process).toMatchObject({
      mix: { resin: 100, hardener: 50 },
      source: { kind: 'typical' },
    });
    type('Parts of hardener', '38');
    type('Open time', '30');
    type('Adhesive density', '1210');
    press('Add a cure step');
    type('Hours of cure step 2', '4');
    type('Temperature of cure step 2', '65');
    expect(sent().adhesives[0]).toMatchObject({
      density: 1210,
      process: {
        mix: { resin: 100, hardener: 38 },
        openTime: 30,
        cure: [
          { temperature: 23, hours: 16 },
          { temperature: 65, hours: 4 },
        ],
      },
    });
    press('Remove cure step 1');
    expect(sent().adhesives[0]?.process?.cure).toEqual([{ temperature: 65, hours: 4 }]);
    press('One part: no mix ratio');
    expect(sent().adhesives[0]?.process).not.toHaveProperty('mix');
    press('Add a mix ratio');
    expect(readProject(sent()).ok).toBe(true);
    press('Remove the process');
    expect(sent().adhesives[0]).not.toHaveProperty('process');
  });
});
