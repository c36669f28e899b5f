/** Load cases put in and changed: from a joint that they act on, and as a list of the project. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { refusedSentence } from '../../src/renderer/state/refused.ts';
import type { Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import {
  choose,
  disclose,
  field,
  type InputColumn,
  renderInputs,
  type,
} from './support/inputs.tsx';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const press = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};
/** A dialog of jsdom is never shown as one. */
const dialog = (): HTMLElement => screen.getByRole('dialog', { hidden: true });
const answer = (name: string): void => {
  fireEvent.click(within(dialog()).getByRole('button', { name, hidden: true }));
};
const isAsked = (): boolean => screen.queryByRole('dialog', { hidden: true }) !== null;
const noField = (name: string): boolean => screen.queryByRole('textbox', { name }) === null;
const list = (name: string): HTMLSelectElement =>
  screen.getByRole<HTMLSelectElement>('combobox', { name });

describe('a load case on a joint', () => {
  const { loads } = makeProject().joints[0]!;

  it('is made there, acts there, and is ready to be named', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    choose('Add a load case', 'New load case …');
    expect(sent().loadCases[3]).toEqual({
      id: 'case-4',
      name: 'Load case 4',
      kind: 'limit',
      temperature: 20,
      moisture: 'dry',
    });
    expect(sent().joints[0]?.loads).toEqual([
      ...loads,
      { case: 'case-4', force: 0, moment: 0, torque: 0, shear: 0 },
    ]);
    expect(document.activeElement).toBe(field('Name of Load case 4'));
    type('Name of Load case 4', 'Flutter');
    choose('Kind of Flutter', 'cyclic');
    type('Temperature of Flutter', '-20');
    choose('Moisture of Flutter', 'wet');
    type('Cycles of Flutter', '2e6');
    type('Load ratio R of Flutter', '-1');
    fireEvent.click(screen.getByRole('checkbox', { name: /^Judged in every condition too/ }));
    type('Flutter, axial force', '1.5');
    expect(sent().loadCases[3]).toEqual({
      id: 'case-4',
      name: 'Flutter',
      kind: 'cyclic',
      temperature: -20,
      moisture: 'wet',
      everyCondition: true,
      cycles: 2e6,
      ratio: -1,
    });
    expect(screen.getByRole('heading', { name: 'Flutter' })).toBeTruthy();
    expect(screen.getByText('cyclic, 2e6 cycles · −20 °C wet')).toBeTruthy();
    expect(sent().joints[0]?.loads[2]).toMatchObject({ force: 1500 });
    expect(readProject(sent()).ok).toBe(true);
    type('Load ratio R of Flutter', '');
    expect(sent().loadCases[3]).not.toHaveProperty('ratio');
    fireEvent.click(screen.getByRole('checkbox', { name: /^Judged in every condition too/ }));
    expect(sent().loadCases[3]).not.toHaveProperty('everyCondition');
    choose('Kind of Flutter', 'limit');
    expect(noField('Cycles of Flutter')).toBe(true);
    expect(sent().loadCases[3]).not.toHaveProperty('cycles');
  });

  it('leaves the list that adds it as it was, for the next one', () => {
    const { sent } = renderInputs(makeProject(), 'lug');
    const texts = (): string[] => [...list('Add a load case').options].map(({ text }) => text);
    expect(texts()).toEqual(['Add a load case …', 'Hard landing', 'Rotor', 'New load case …']);
    choose('Add a load case', 'Hard landing');
    expect(list('Add a load case').value).toBe('');
    choose('Add a load case', 'Rotor');
    choose('Add a load case', 'New load case …');
    choose('Add a load case', 'New load case …');
    expect(sent().joints[2]?.loads.map((load) => load.case)).toEqual([
      'gust',
      'landing',
      'rotor',
      'case-4',
      'case-5',
    ]);
    expect(texts()).toEqual(['Add a load case …', 'New load case …']);
    expect(readProject(sent()).ok).toBe(true);
  });

  it('is closed, and builds nothing, until it is opened', () => {
    renderInputs(makeProject(), 'tip');
    expect(noField('Name of Gust')).toBe(true);
    disclose('limit · 20 °C dry');
    expect(field('Temperature of Gust').title).toBe('Of the joint in this case.');
    expect(screen.getByText(/^Acts on Boom root and Tail lug as well/)).toBeTruthy();
    expect(noField('Name of Hard landing')).toBe(true);
  });

  it('keeps text that is no number in its field, and shows refusals at their place', () => {
    const { sent, issues, project } = renderInputs(makeProject(), 'tip');
    const details = disclose('limit · 20 °C dry');
    type('Temperature of Gust', '2o');
    expect(field('Temperature of Gust').getAttribute('aria-invalid')).toBe('true');
    expect(refusedSentence(project.refused.all(), 'is saved')).toBe(
      'Temperature of Gust holds no number: 20 °C is saved.',
    );
    expect(sent().loadCases[0]?.temperature).toBe(20);
    type('Temperature of Gust', '390');
    issues.setRefusal({
      code: 'bad-input',
      field: 'loadCases.0.temperature',
      message: 'too hot',
    });
    const said = screen.getByText('Too hot.');
    expect(field('Temperature of Gust').getAttribute('aria-describedby')).toContain(said.id);
    details.open = false;
    fireEvent(details, new Event('toggle'));
    // The field is gone: its line says it instead.
    expect(screen.getByRole('alert').closest('summary')?.textContent).toContain('390 °C dry');
    expect(issues.elsewhere()).toBeNull();
  });

  const remove = (column: InputColumn, summary: string): void => {
    disclose(summary);
    press('Remove this case from the project');
    expect(column.sent().loadCases).toHaveLength(3);
  };

  it('is removed from every joint after one more press, and never before', () => {
    const column = renderInputs(makeProject(), 'tip');
    remove(column, 'limit · 20 °C dry');
    expect(dialog().textContent).toContain('Gust acts on three joints.');
    expect(dialog().textContent).toContain('Boom tip, Boom root and Tail lug');
    answer('Keep the case');
    expect(isAsked()).toBe(false);
    expect(column.sent()).toEqual(makeProject());
    press('Remove this case from the project');
    answer('Remove it with its loads');
    expect(isAsked()).toBe(false);
    expect(column.sent().loadCases.map(({ id }) => id)).toEqual(['landing', 'rotor']);
    expect(column.sent().joints.map((joint) => joint.loads.length)).toEqual([1, 0, 0]);
    expect(readProject(column.sent()).ok).toBe(true);
    expect(screen.queryByRole('heading', { name: 'Gust' })).toBeNull();
    // What stands at its place now is the case that came after it.
    disclose('ultimate · 60 °C wet');
    type('Name of Hard landing', 'Landing');
    expect(column.sent().loadCases[0]?.name).toBe('Landing');
  });
});

describe('the load cases of the project', () => {
  let bridge: FakeBridge;
  const stored = (): Project => bridge.last('project.corners').document as Project;
  async function open(): Promise<void> {
    bridge = makeFakeBridge(makeProject());
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.click(screen.getByRole('button', { name: 'By case' }));
    await screen.findByRole('table', { name: /against load cases/ });
  }

  it('are added, changed, and changed in kind', async () => {
    await open();
    expect(noField('Cycles of load case 1')).toBe(true);
    expect(field('Cycles of load case 3').value).toBe('10000000');
    press('Add a load case');
    expect(document.activeElement).toBe(field('Name of load case 4'));
    type('Name of load case 4', 'Flutter');
    type('Temperature of load case 4', '-35');
    choose('Moisture of load case 4', 'wet');
    choose('Kind of load case 4', 'cyclic');
    type('Load ratio R of load case 4', '-1');
    await waitFor(() =>
      expect(stored().loadCases[3]).toEqual({
        id: 'case-4',
        name: 'Flutter',
        kind: 'cyclic',
        temperature: -35,
        moisture: 'wet',
        cycles: 1e6,
        ratio: -1,
      }),
    );
    choose('Kind of load case 3', 'ultimate');
    await waitFor(() => expect(stored().loadCases[2]).not.toHaveProperty('cycles'));
    choose('Kind of load case 3', 'cyclic');
    await waitFor(() => expect(stored().loadCases[2]).toMatchObject({ cycles: 1e7 }));
  });

  it('go at once where they act on nothing, else after one more press', async () => {
    await open();
    press('Remove load case 3, Rotor');
    expect(isAsked()).toBe(false);
    await waitFor(() => expect(stored().loadCases).toHaveLength(2));
    press('Remove load case 1, Gust');
    expect(dialog().textContent).toContain('Gust acts on three joints.');
    answer('Remove it with its loads');
    await waitFor(() => expect(stored().loadCases.map(({ id }) => id)).toEqual(['landing']));
    // Nobody asked about the case that stands at its place now.
    expect(isAsked()).toBe(false);
    expect(stored().joints.map(({ loads }) => loads.length)).toEqual([1, 0, 0]);
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Add a load case' }));
  });

  it('show the refusal that names them', async () => {
    await open();
    bridge.refuse('project.corners', { field: 'loadCases.2.ratio', message: 'too high' });
    type('Load ratio R of load case 3', '0.9');
    const said = await screen.findByText('Too high.');
    expect(field('Load ratio R of load case 3').getAttribute('aria-describedby')).toContain(
      said.id,
    );
  });
});
