import { fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it } from 'vitest';
import { NumberField } from '../../src/renderer/size/NumberField.tsx';
import { createIssues, type Issues } from '../../src/renderer/state/issues.ts';
import { createProject, type ProjectState, valueAt } from '../../src/renderer/state/project.ts';
import { presets } from '../../src/shared/display-units.ts';
import { showUnitsOf } from '../../src/shared/shown-units.ts';
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

function renderField(
  path: readonly (string | number)[],
  quantity: 'force' | 'overlap',
): HTMLInputElement {
  render(() => (
    <NumberField project={project} issues={issues} input={{ path, quantity, name: 'Field' }} />
  ));
  return screen.getByRole('textbox', { name: 'Field' });
}
const type = (field: HTMLInputElement, text: string): void => {
  fireEvent.focus(field);
  fireEvent.input(field, { target: { value: text } });
};

describe('a number field', () => {
  it('shows what is stored in the unit of the screen, with the unit beside it', () => {
    const field = renderField(force, 'force');
    expect(field.value).toBe('16.0');
    expect(screen.getByText('kN')).toBeTruthy();
    expect(project.unsaved()).toBe(false);
  });

  it('stores good text at once, exactly, and leaves the text alone while it is typed', () => {
    const field = renderField(force, 'force');
    type(field, '.3');
    expect(stored(force)).toBe(300);
    expect(field.value).toBe('.3');
    fireEvent.blur(field);
    expect(field.value).toBe('0.3');
  });

  it('keeps bad text out of the document and says what to type instead', () => {
    const field = renderField(overlap, 'overlap');
    type(field, '1,5');
    expect(stored(overlap)).toBe(30);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    const message = screen.getByText(/write 1\.5/);
    expect(field.getAttribute('aria-describedby')?.split(' ')).toContain(message.id);
    fireEvent.blur(field);
    expect(field.value).toBe('1,5');
    expect(project.refused.all().length).toBe(1);
  });

  it.each(['', 'abc', 'Infinity', '1e999'])('refuses %j', (text) => {
    type(renderField(overlap, 'overlap'), text);
    expect(project.refused.all().length).toBe(1);
    expect(stored(overlap)).toBe(30);
  });

  it('recovers by Escape, by good text, and by a change from elsewhere', () => {
    const field = renderField(overlap, 'overlap');
    type(field, 'x');
    fireEvent.keyDown(field, { key: 'Escape' });
    expect(field.value).toBe('30.0');
    expect(project.refused.all().length).toBe(0);
    type(field, 'x');
    type(field, '31');
    expect(project.refused.all().length).toBe(0);
    type(field, 'x');
    project.edit(overlap, 42);
    expect(field.value).toBe('42.0');
    expect(issues.stale()).toBe(false);
    expect(field.getAttribute('aria-invalid')).toBeNull();
  });

  it('shows the refusal that names it, and only that', () => {
    const field = renderField(overlap, 'overlap');
    const refusal = { code: 'bad-input', message: 'too short' } as const;
    issues.setRefusal({ ...refusal, field: 'joints.0.tube.wall' });
    expect(field.getAttribute('aria-invalid')).toBeNull();
    expect(issues.elsewhere()?.message).toBe('too short');
    issues.setRefusal({ ...refusal, field: 'joints.0.overlap' });
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText('Too short.')).toBeTruthy();
    expect(issues.elsewhere()).toBeNull();
  });

  it('shows every digit to whoever comes to it, all of it selected', async () => {
    const back = showUnitsOf(() => presets.US);
    try {
      project.edit(overlap, 24);
      const field = renderField(overlap, 'overlap');
      expect(field.value).toBe('0.94488');
      field.focus();
      expect(field.value).toBe('0.9448818897637795');
      expect([field.selectionStart, field.selectionEnd]).toEqual([0, 18]);
      // What is stored becomes another under it: so it is still.
      project.edit(overlap, 20);
      await Promise.resolve();
      expect(field.value).toBe('0.7874015748031496');
      expect([field.selectionStart, field.selectionEnd]).toEqual([0, 18]);
      field.blur();
      expect(field.value).toBe('0.7874');
    } finally {
      back();
    }
  });

  it('is selected by a click into it, not by the next, nor by one that marks a part', () => {
    const field = renderField(overlap, 'overlap');
    const click = (from: number, to = from): (number | null)[] => {
      fireEvent.mouseDown(field);
      field.focus();
      field.setSelectionRange(from, to);
      fireEvent.mouseUp(field);
      return [field.selectionStart, field.selectionEnd];
    };
    expect(click(2)).toEqual([0, 4]);
    expect(click(2)).toEqual([2, 2]);
    field.blur();
    expect(click(1, 3)).toEqual([1, 3]);
  });

  it('has no step of what comes back to what it was, and keeps what could be done again', async () => {
    project.edit(overlap, 31);
    await Promise.resolve();
    project.history.undo();
    expect(project.history.redoes()).toMatch(/30\.0 → 31\.0/);
    const field = renderField(overlap, 'overlap');
    type(field, '3');
    expect(project.history.undoes()).toMatch(/30\.0 → 3\.0/);
    type(field, '30.00');
    expect(project.history.undoes()).toBeNull();
    expect(project.unsaved()).toBe(false);
    expect(project.history.redoes()).toMatch(/30\.0 → 31\.0/);
    fireEvent.keyDown(field, { key: 'Enter' });
    expect(project.history.undoes()).toBeNull();
  });

  it('counts one edit for one change, none for the same value typed again', () => {
    const field = renderField(overlap, 'overlap');
    const before = project.revision();
    type(field, '30');
    type(field, '3e1');
    expect(project.revision()).toBe(before);
    type(field, '31');
    expect(project.revision()).toBe(before + 1);
  });
});
