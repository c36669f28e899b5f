/** Undo and redo of document changes. */
import fc from 'fast-check';
import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it } from 'vitest';
import { createHistory } from '../../src/renderer/state/history.ts';
import { createProject, type ProjectState } from '../../src/renderer/state/project.ts';
import type { Project } from '../../src/shared/project.ts';
import { makeProject } from './support/project.ts';

const text = (project: ProjectState): string => JSON.stringify(project.plain());
/** The next event: what was edited until now is a step. */
const later = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

let project: ProjectState;
let before: string;
beforeEach(() => {
  project = createRoot(() => createProject());
  project.open({ document: makeProject(), origin: 'test' } as never);
  before = text(project);
});

describe('undo', () => {
  it('takes a change back by its name, and does it again', async () => {
    expect(project.history.undo()).toBeNull();
    expect(project.history.undoes()).toBeNull();
    const from = project.document()!.joints[0]!.overlap;
    const { name } = project.document()!.joints[0]!;
    project.edit(['joints', 0, 'overlap'], 31.5);
    const after = text(project);
    expect(project.history.undoes()).toBe(`overlap ${from.toFixed(1)} → 31.5 mm, ${name}`);
    expect(project.unsaved()).toBe(true);
    expect(project.history.undo()).toEqual({
      words: `overlap ${from.toFixed(1)} → 31.5 mm, ${name}`,
      path: ['joints', 0, 'overlap'],
    });
    expect(text(project)).toBe(before);
    expect(project.unsaved()).toBe(false);
    expect(project.history.undoes()).toBeNull();
    expect(project.history.redoes()).toBe(`overlap ${from.toFixed(1)} → 31.5 mm, ${name}`);
    project.history.redo();
    expect(text(project)).toBe(after);
    expect(project.unsaved()).toBe(true);
  });

  it('takes a drag as one change, and all edits of one act together', async () => {
    for (let mm = 20; mm < 40; mm++) {
      project.edit(['joints', 0, 'overlap'], mm);
      await later();
    }
    project.edit(['joints', 0, 'offset'], 0.01);
    project.edit(['joints', 1, 'offset'], 0.02);
    project.history.undo();
    expect(project.document()!.joints[0]!.overlap).toBe(39);
    project.history.undo();
    expect(text(project)).toBe(before);
  });

  it('keeps two acts on the same field apart when there is a pause between them', () => {
    let clock = 0;
    let document: Project = makeProject();
    const history = createRoot(() =>
      createHistory(
        {
          plain: () => document,
          put: (_path, value) => {
            document = { ...document, name: value as string };
          },
        },
        () => clock,
      ),
    );
    const name = async (to: string, wait: number): Promise<void> => {
      clock += wait;
      history.before(['name']);
      document = { ...document, name: to };
      await later();
    };
    return (async () => {
      const first = document.name;
      await name('A', 0);
      await name('Ab', 400);
      await name('Abc', 1500);
      history.undo();
      expect(document.name).toBe('Ab');
      history.undo();
      expect(document.name).toBe(first);
      history.redo();
      // Right after an undo the same field starts a step of its own.
      await name('Abd', 10);
      expect(history.redoes()).toBeNull();
      history.undo();
      expect(document.name).toBe('Ab');
    })();
  });

  it('has no step of a drag that ends where it began, nor of what is put there once more', async () => {
    project.edit(['name'], 'One');
    await later();
    project.edit(['joints', 0, 'offset'], 0.5);
    await later();
    project.history.undo();
    const { overlap } = project.document()!.joints[0]!;
    for (const mm of [overlap + 1, overlap + 2, overlap + 1, overlap, overlap]) {
      project.edit(['joints', 0, 'overlap'], mm);
      await later();
    }
    expect(project.history.undoes()).toMatch(/^name/);
    expect(project.history.redoes()).toMatch(/offset/);
    // On from there it is a step again.
    project.edit(['joints', 0, 'overlap'], overlap + 3);
    expect(project.history.undoes()).toMatch(/^overlap/);
    project.history.undo();
    project.history.undo();
    expect(text(project)).toBe(before);
  });

  it('knows again what is saved', async () => {
    project.edit(['name'], 'One');
    await later();
    project.markSaved();
    project.edit(['joints', 0, 'overlap'], 22);
    expect(project.unsaved()).toBe(true);
    project.history.undo();
    expect(project.unsaved()).toBe(false);
    project.history.undo();
    expect(project.unsaved()).toBe(true);
    project.history.redo();
    expect(project.unsaved()).toBe(false);
    project.history.redo();
    expect(project.unsaved()).toBe(true);
    expect(project.document()!.joints[0]!.overlap).toBe(22);
  });

  it('takes an entry out of a list without a hole, and what was not there away', async () => {
    const loads = project.document()!.joints[0]!.loads.length;
    project.edit(['joints', 0, 'loads', loads], { case: 'gust', force: 1 });
    await later();
    project.edit(['note'], 'a note');
    await later();
    project.history.undo();
    project.history.undo();
    expect(text(project)).toBe(before);
    expect(project.document()!.joints[0]!.loads).toHaveLength(loads);
    project.history.redo();
    project.history.redo();
    expect(project.document()!.note).toBe('a note');
    expect(project.document()!.joints[0]!.loads).toHaveLength(loads + 1);
  });

  it('reaches 200 steps back and no further', async () => {
    for (let i = 0; i < 230; i++) {
      project.edit(['joints', i % 2, 'overlap'], 20 + i / 10);
      await later();
    }
    let steps = 0;
    while (project.history.undo()) steps += 1;
    expect(steps).toBe(200);
    expect(project.document()!.joints[1]!.overlap).toBe(20 + 29 / 10);
  });

  it('is of the project that is open alone', () => {
    project.edit(['name'], 'One');
    project.open({ document: makeProject(), origin: 'other' } as never);
    expect(project.history.undoes()).toBeNull();
    expect(project.unsaved()).toBe(false);
  });

  it('never takes a recorded verdict back', async () => {
    project.edit(['gapChecks'], [{ id: 'one' }]);
    await later();
    project.edit(['gapChecks', 0, 'note'], 'x');
    await later();
    project.edit(['name'], 'Renamed');
    await later();
    project.edit(['gapChecks', 0, 'result'], { verdict: 'accept' });
    project.edit(['gapChecks', 0, 'recorded'], '2026-03-01T08:00:00Z');
    await later();
    expect(project.history.undo()?.path).toEqual(['name']);
    expect(project.history.undo()).toBeNull();
    expect(JSON.stringify(project.plain()!.gapChecks)).toContain('recorded');
  });

  it('leaves no trace, whatever was edited in whatever order', async () => {
    const edit = fc.oneof(
      fc.record({ path: fc.constant(['joints', 0, 'overlap']), value: fc.integer() }),
      fc.record({
        path: fc.constant(['joints', 1]),
        value: fc.constantFrom({ name: 'x', overlap: 3 }),
      }),
      fc.record({ path: fc.constant(['joints', 1, 'overlap']), value: fc.integer() }),
      fc.record({
        path: fc.constant(['settings', 'edgeMoment']),
        value: fc.constantFrom('a', undefined),
      }),
      fc.record({
        path: fc.constant(['conditions']),
        value: fc.array(fc.record({ name: fc.string() })),
      }),
      fc.record({
        path: fc.constant(['joints']),
        value: fc.constantFrom([{ name: 'p' }, { name: 'q' }]),
      }),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(edit, { maxLength: 12 }),
        fc.infiniteStream(fc.boolean()),
        async (edits, waits) => {
          project.open({ document: makeProject(), origin: 'test' } as never);
          const start = text(project);
          for (const { path, value } of edits) {
            project.edit(path, structuredClone(value));
            if (waits.next().value) await later();
          }
          const end = text(project);
          await later();
          while (project.history.undo());
          expect(text(project)).toBe(start);
          expect(project.unsaved()).toBe(false);
          while (project.history.redo());
          expect(text(project)).toBe(end);
        },
      ),
      { numRuns: 150 },
    );
  });
});
