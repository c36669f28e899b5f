import { fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it } from 'vitest';
import { NumberField } from '../../src/renderer/size/NumberField.tsx';
import { createIssues, type Issues } from '../../src/renderer/state/issues.ts';
import { createProject, type ProjectState, valueAt } from '../../src/renderer/state/project.ts';
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
    expect(issues.stale()).toBe(true);
  });

  it.each(['', 'abc', 'Infinity', '1e999'])('refuses %j', (text) => {
    type(renderField(overlap, 'overlap'), text);
    expect(issues.typedCount()).toBe(1);
    expect(stored(overlap)).toBe(30);
  });

  it('recovers by Escape, by good text, and by a change from elsewhere', () => {
    const field = renderField(overlap, 'overlap');
    type(field, 'x');
    fireEvent.keyDown(field, { key: 'Escape' });
    expect(field.value).toBe('30.0');
    expect(issues.typedCount()).toBe(0);
    type(field, 'x');
    type(field, '31');
    expect(issues.typedCount()).toBe(0);
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
