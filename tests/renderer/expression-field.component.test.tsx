/** Expressions in number fields: what is understood is shown while it is typed, the figure after. */
import { fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import { beforeEach, describe, expect, it } from 'vitest';
import { NumberBox } from '../../src/renderer/coupons/NumberBox.tsx';
import { LooseNumber } from '../../src/renderer/parts/LooseNumber.tsx';
import { NumberField } from '../../src/renderer/size/NumberField.tsx';
import { createIssues, type Issues } from '../../src/renderer/state/issues.ts';
import { createProject, type ProjectState, valueAt } from '../../src/renderer/state/project.ts';
import type { QuantityName } from '../../src/shared/quantities.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

let project: ProjectState;
let issues: Issues;
beforeEach(() => {
  createRoot(() => {
    project = createProject();
    issues = createIssues();
  });
  project.open({ document: makeProject(), origin: 'test' });
});

const force = ['joints', 0, 'loads', 0, 'force'] as const;
const overlap = ['joints', 0, 'overlap'] as const;
const stored = (path: readonly (string | number)[]): unknown => valueAt(project.plain(), path);
const type = (field: HTMLInputElement, text: string): void => {
  fireEvent.focus(field);
  fireEvent.input(field, { target: { value: text } });
};
const described = (field: HTMLInputElement): string =>
  (field.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? `(${id} is nowhere)`)
    .join(' | ');

function renderField(
  path: readonly (string | number)[],
  quantity: 'force' | 'overlap',
): HTMLInputElement {
  render(() => (
    <NumberField project={project} issues={issues} input={{ path, quantity, name: 'Field' }} />
  ));
  return screen.getByRole('textbox', { name: 'Field' });
}

describe('an expression in a field of the document', () => {
  it('is stored as it is typed, said beneath, and gives way to its figure', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '1/2 in');
    expect(stored(overlap)).toBe(12.7);
    expect(field.value).toBe('1/2 in');
    expect(screen.getByRole('status').textContent).toBe('= 12.7 mm');
    expect(described(field)).toBe('= 12.7 mm | mm');
    expect(field.getAttribute('aria-invalid')).toBeNull();
    fireEvent.blur(field);
    expect(field.value).toBe('12.7');
    expect(screen.queryByRole('status')).toBeNull();
    expect(described(field)).toBe('mm');
    expect(stored(overlap)).toBe(12.7);
  });

  it('says which numbers took the unit of the field', () => {
    const field = renderField(force, 'force');
    type(field, '2 + 500 N');
    expect(stored(force)).toBe(2500);
    expect(screen.getByRole('status').textContent).toBe('= 2.5 kN, with “2” in kN');
    fireEvent.keyDown(field, { key: 'Enter' });
    expect(field.value).toBe('2.5');
    expect(screen.queryByRole('status')).toBeNull();
  });

  it('says nothing beneath a plain number', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '1/2 in');
    type(field, '31');
    expect(screen.queryByRole('status')).toBeNull();
    expect(stored(overlap)).toBe(31);
  });

  it('is refused in plain words, and stays in the field', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '5 MPa');
    expect(stored(overlap)).toBe(30);
    expect(described(field)).toBe('“5 MPa” is a stress; this field takes a length. | mm');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(screen.queryByRole('status')).toBeNull();
    fireEvent.blur(field);
    expect(field.value).toBe('5 MPa');
    expect(project.refused.all().map(({ text }) => text)).toEqual(['5 MPa']);
    expect(issues.stale()).toBe(false);
  });

  it('is taken back by Escape, and by a change from elsewhere', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '2 in');
    fireEvent.keyDown(field, { key: 'Escape' });
    expect(screen.queryByRole('status')).toBeNull();
    type(field, '1/2 in');
    project.edit(overlap, 42);
    expect(field.value).toBe('42.0');
    expect(screen.queryByRole('status')).toBeNull();
  });

  it('has a refusal of the core behind what was understood', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '10 in');
    expect(stored(overlap)).toBe(254);
    issues.setRefusal({ code: 'bad-input', field: 'joints.0.overlap', message: 'too long' });
    expect(described(field)).toBe('= 254.0 mm. Too long. | mm');
    expect(screen.queryByRole('status')).toBeNull();
  });

  it('keeps to the range, and says what it was out of it', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '100 in');
    expect(stored(overlap)).toBe(30);
    expect(described(field)).toBe('= 2540.0 mm. It lies between 1 and 500 mm. | mm');
  });

  it('leaves nothing of itself behind where it is of another kind, letter by letter', () => {
    const field = renderField(overlap, 'overlap');
    const before = JSON.stringify(project.plain());
    const seen: unknown[] = [];
    for (const text of ['5', '5 ', '5 M', '5 MP', '5 MPa']) {
      type(field, text);
      seen.push(stored(overlap));
    }
    // What can be read on the way is drawn at once.
    expect(seen).toEqual([5, 5, 30, 30, 30]);
    expect(JSON.stringify(project.plain())).toBe(before);
    expect(project.unsaved()).toBe(false);
    expect(project.history.undoes()).toBeNull();
    fireEvent.blur(field);
    expect(stored(overlap)).toBe(30);
    fireEvent.focus(field);
    type(field, '6');
    expect(stored(overlap)).toBe(6);
    fireEvent.blur(field);
    type(field, '7x');
    expect(stored(overlap)).toBe(6);
    expect(project.history.undoes()).toMatch(/30\.0 → 6\.0 mm/);
  });

  it('leaves what was done before it in peace, and what could be done again', async () => {
    const field = renderField(overlap, 'overlap');
    project.edit(overlap, 31);
    await Promise.resolve();
    project.edit(['joints', 0, 'tube', 'wall'], 3);
    project.history.undo();
    type(field, '4');
    expect(project.history.redoes()).toBeNull();
    type(field, '4 psi');
    expect(stored(overlap)).toBe(31);
    expect(project.history.redoes()).toMatch(/wall/);
    expect(project.history.undoes()).toMatch(/30\.0 → 31\.0/);
  });

  it('keeps what else was changed while it was typed', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '5');
    project.edit(['joints', 0, 'tube', 'wall'], 3);
    type(field, '5 MPa');
    expect(stored(overlap)).toBe(30);
    expect(stored(['joints', 0, 'tube', 'wall'])).toBe(3);
  });
});

describe('an expression in a box of a question', () => {
  const [text, setText] = createSignal('');
  beforeEach(() => setText(''));

  it.each([
    [
      'on its own line',
      () => (
        <LooseNumber
          label="Field"
          text={text()}
          onText={setText}
          placeholder="auto"
          quantity="gap"
        />
      ),
    ],
    [
      'beside its words',
      () => <NumberBox name="Field" text={text()} onText={setText} unit="mm" quantity="gap" />,
    ],
  ] as const)('%s is understood, and gives way to its figure', (_where, box) => {
    render(box);
    const field: HTMLInputElement = screen.getByRole('textbox', { name: 'Field' });
    type(field, '1/100 in');
    expect(text()).toBe('1/100 in');
    expect(described(field)).toBe('= 0.254 mm');
    fireEvent.blur(field);
    expect(text()).toBe('0.254');
    expect(screen.queryByRole('status')).toBeNull();
    type(field, '1 in');
    expect(described(field)).toMatch(/lies between/i);
    fireEvent.blur(field);
    expect(text()).toBe('1 in');
    type(field, '0.30');
    fireEvent.blur(field);
    expect(text()).toBe('0.30');
  });

  it('counts in whole numbers, however they are worked out', () => {
    const count: QuantityName = 'couponCount';
    render(() => <NumberBox name="Field" text={text()} onText={setText} quantity={count} whole />);
    const field: HTMLInputElement = screen.getByRole('textbox', { name: 'Field' });
    type(field, '3*2');
    fireEvent.blur(field);
    expect(text()).toBe('6');
    type(field, '3/2');
    expect(described(field)).toBe('A whole number is needed here.');
    fireEvent.blur(field);
    expect(text()).toBe('3/2');
  });
});
