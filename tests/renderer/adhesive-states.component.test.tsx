/** The states of an adhesive on the page, its name and source, copies of it. */
import { fireEvent, screen, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/shared/read-project.ts';
import { choose, disclose, field, renderInputs, type } from './support/inputs.tsx';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const press = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
const fields = (): HTMLElement[] => screen.queryAllByRole('textbox');
const summaries = (): (string | null)[] =>
  [...document.querySelectorAll('.state summary')].map((one) => one.textContent);
const answer = (name: string): void => {
  const dialog = screen.getByRole('dialog', { hidden: true });
  fireEvent.click(within(dialog).getByRole('button', { name, hidden: true }));
};

describe('the states of an adhesive', () => {
  it('are a line each, closed, and a field for every figure when opened', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    const before = fields().length;
    disclose('Stiffness and strength');
    expect(summaries()).toEqual([
      '20 °C dry G 876, yield 38, peel – MPa',
      '60 °C wet G 360, yield 20, peel – MPa',
    ]);
    expect(fields()).toHaveLength(before);
    disclose('60 °C wet');
    for (const [name, text] of [
      ['Modulus', '1100'],
      ['Shear modulus', '395.5'],
      ['Shear yield', '10'],
      ['Plastic strain', '0.65'],
      ['Peel strength', '22.5'],
    ]) {
      expect(field(`${name} at 60 °C wet`).title.length).toBeGreaterThan(10);
      type(`${name} at 60 °C wet`, text!);
    }
    type('State 2, temperature', '55');
    expect(field('Shear yield at 55 °C wet').value).toBe('10');
    choose('State 2, moisture', 'dry');
    expect(sent().adhesives[0]?.states).toEqual([
      makeProject().adhesives[0]!.states[0],
      {
        temperature: 55,
        moisture: 'dry',
        modulus: 1100,
        shearModulus: 395.5,
        shearYield: 10,
        plasticStrain: 0.65,
        peelStrength: 22.5,
      },
    ]);
    expect(summaries()[1]).toBe('55 °C dry G 395.5, yield 10, peel 22.5 MPa');
    type('Peel strength at 55 °C dry', '');
    expect(sent().adhesives[0]?.states[1]).not.toHaveProperty('peelStrength');
  });

  it('are added, ready to be changed, and removed; one stays', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    const outer = disclose('Stiffness and strength');
    press('Add a state');
    expect(sent().adhesives[0]?.states[2]).toEqual({
      ...makeProject().adhesives[0]!.states[1],
      temperature: 70,
    });
    expect(document.activeElement).toBe(field('State 3, temperature'));
    expect(outer.querySelector('summary')?.textContent).toBe('Stiffness and strength 3 states');
    expect(readProject(sent()).ok).toBe(true);
    type('State 3, temperature', '8o');
    disclose('60 °C wet');
    press('Remove 20 °C dry, state 1');
    expect(sent().adhesives[0]?.states.map(({ temperature }) => temperature)).toEqual([60, 70]);
    // Rows are told apart by place: none stays open over another state's figures.
    expect(screen.queryByRole('textbox', { name: 'State 2, temperature' })).toBeNull();
    press('Remove 70 °C wet, state 2');
    expect(screen.queryByRole('button', { name: /^Remove .* state/ })).toBeNull();
    expect(sent().adhesives[0]?.states).toHaveLength(1);
    expect(outer.querySelector('summary')?.textContent).toBe('Stiffness and strength 1 state');
  });

  it('keep text that is no number, and say what the core refuses at its place', () => {
    const { sent, issues } = renderInputs(makeProject(), 'tip');
    const outer = disclose('Stiffness and strength');
    const inner = disclose('60 °C wet');
    type('Shear yield at 60 °C wet', '1,5');
    expect(field('Shear yield at 60 °C wet').getAttribute('aria-invalid')).toBe('true');
    expect(sent().adhesives[0]?.states[1]?.shearYield).toBe(20);
    type('Shear yield at 60 °C wet', '20');
    type('State 2, temperature', '20');
    choose('State 2, moisture', 'dry');
    // As the core has it of such a document.
    const reading = readProject(sent());
    if (reading.ok) throw new Error('Two states of one temperature and moisture are refused.');
    issues.setRefusal(reading.error);
    const said = screen.getByText('"Toughened paste" has two dry states at 20 °C: keep one.');
    expect(field('State 2, temperature').getAttribute('aria-describedby')).toContain(said.id);
    const close = (details: HTMLDetailsElement): void => {
      details.open = false;
      fireEvent(details, new Event('toggle'));
    };
    const saidIn = (): Element | null => screen.getByText(/has two dry states/).closest('details');
    close(inner);
    expect(saidIn()).toBe(inner);
    close(outer);
    expect(saidIn()).toBe(outer);
    expect(issues.elsewhere()).toBeNull();
  });
});

describe('an adhesive', () => {
  it('has a name and a source, and loses its mark once that is a test', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    const mark = (): HTMLElement | null =>
      within(
        screen.getByRole('combobox', { name: 'Adhesive' }).closest<HTMLElement>('.row')!,
      ).queryByText('typical');
    expect(mark()).toBeTruthy();
    disclose('Adhesive: name and source');
    expect(screen.getByText(/^Also in Boom root and Tail lug/)).toBeTruthy();
    type('Adhesive, name', 'Our paste');
    choose('Adhesive, kind of source', 'tested, our own');
    type('Adhesive, source in words', 'Thick adherends, batch 4');
    expect(sent().adhesives[0]).toMatchObject({
      name: 'Our paste',
      source: { kind: 'tested', text: 'Thick adherends, batch 4' },
    });
    expect(mark()).toBeNull();
  });

  it('is copied for this joint, and its copy is ready to be named', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    disclose('Adhesive: name and source');
    press('Copy this adhesive');
    expect(sent().adhesives.map(({ name }) => name)).toEqual([
      'Toughened paste',
      'Toughened paste (copy)',
    ]);
    expect(sent().joints.map(({ adhesive }) => adhesive)).toEqual(['paste-copy', 'paste', 'paste']);
    expect(document.activeElement).toBe(field('Adhesive, name'));
    expect(field('Adhesive, name').value).toBe('Toughened paste (copy)');
    expect(screen.queryByText(/^Also in/)).toBeNull();
    // The first is in use elsewhere: it cannot be taken away.
    expect(screen.queryByText(/^Not used by any/)).toBeNull();
    // Chosen once more it does not open, and takes no focus.
    choose('Adhesive', 'Toughened paste (typical)');
    choose('Adhesive', 'Toughened paste (copy) (typical)');
    expect(screen.queryByRole('textbox', { name: 'Adhesive, name' })).toBeNull();
  });

  it('is taken away where nothing is made of it, after one more press', () => {
    const document = makeProject();
    document.adhesives.unshift({
      ...structuredClone(document.adhesives[0]!),
      id: 'old',
      name: 'Old paste',
    });
    const { sent } = renderInputs(document, 'tip');
    disclose('Adhesive: name and source');
    press('Remove Old paste');
    expect(sent().adhesives).toHaveLength(2);
    answer('Keep it');
    press('Remove Old paste');
    answer('Remove it');
    expect(sent().adhesives.map(({ id }) => id)).toEqual(['paste']);
    expect(readProject(sent()).ok).toBe(true);
    // Its fields moved up with it, and are still open.
    type('Adhesive, name', 'Paste');
    expect(sent().adhesives[0]?.name).toBe('Paste');
  });
});
