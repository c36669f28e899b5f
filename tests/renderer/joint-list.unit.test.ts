import { createRoot } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { addJoint, copyJoint, goesWith, removeJoint } from '../../src/renderer/state/joint-list.ts';
import { createProject, type ProjectState } from '../../src/renderer/state/project.ts';
import type { Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { makeProject, socket } from './support/project.ts';

const withProject = (document: Project, run: (project: ProjectState) => void): void =>
  createRoot((dispose) => {
    const project = createProject();
    project.open({ document, origin: 'test' });
    run(project);
    dispose();
  });
const plain = (project: ProjectState): Project => structuredClone(project.plain()!);
const ids = (project: ProjectState): string[] => plain(project).joints.map(({ id }) => id);
const isWhole = (project: ProjectState): void =>
  expect(readProject(plain(project))).toMatchObject({ ok: true });

describe('joints of a project', () => {
  it('are added under ids and names of their own, and taken back', () => {
    withProject(makeProject(), (project) => {
      expect(addJoint(project, 'spigot')).toBe('joint-4');
      project.history.undo();
      expect(ids(project)).toEqual(['tip', 'root', 'lug']);
      project.history.redo();
      expect(ids(project)).toEqual(['tip', 'root', 'lug', 'joint-4']);
      expect(project.history.undoes()).toBe('joint added: “Joint 4”');
      isWhole(project);
    });
  });

  it('get materials where the project has none, in the same step', () => {
    const { adherends, adhesives } = makeProject();
    const bare = makeProject({ adherends: [], adhesives: [], joints: [] });
    withProject(bare, (project) => {
      expect(addJoint(project, 'socket')).toBeNull();
      expect(addJoint(project, 'socket', { adherends, adhesives })).toBe('joint-1');
      isWhole(project);
      project.history.undo();
      expect(plain(project)).toEqual(makeProject({ adherends: [], adhesives: [], joints: [] }));
    });
  });

  it('are copied behind themselves', () => {
    withProject(makeProject(), (project) => {
      expect(copyJoint(project, 'tip')).toBe('tip-copy');
      expect(copyJoint(project, 'tip')).toBe('tip-copy-2');
      expect(plain(project).joints.map(({ name }) => name)).toEqual([
        'Boom tip',
        'Boom tip (copy) (2)',
        'Boom tip (copy)',
        'Boom root',
        'Tail lug',
      ]);
      expect(plain(project).joints[1]).toEqual({
        ...plain(project).joints[0],
        id: 'tip-copy-2',
        name: 'Boom tip (copy) (2)',
      });
      isWhole(project);
    });
  });

  it('go with their variants, and come back with them', () => {
    const variants = [
      { of: 'tip', joint: { ...structuredClone(socket), id: 'tip-long', name: 'Longer' } },
    ];
    const before = makeProject({ variants });
    withProject(structuredClone(before), (project) => {
      expect(goesWith(plain(project), 'tip')).toEqual({ variants: 1, checks: 0 });
      removeJoint(project, 'tip');
      expect(ids(project)).toEqual(['root', 'lug']);
      expect(plain(project)).not.toHaveProperty('variants', expect.anything());
      isWhole(project);
      project.history.undo();
      expect(plain(project)).toEqual(before);
    });
  });

  it('never come into the records of one that is gone', () => {
    const gapChecks = [{ id: 'check-1', joint: 'joint-1', name: 'First', surfaces: [] }] as never;
    withProject(makeProject({ joints: [], gapChecks: undefined }), (project) => {
      project.edit(['gapChecks'], gapChecks);
      expect(goesWith(plain(project), 'joint-1').checks).toBe(1);
      expect(addJoint(project, 'socket')).toBe('joint-1-2');
    });
  });
});

describe('what is saved', () => {
  it('is told from what is not, in steps', () => {
    withProject(makeProject(), (project) => {
      expect([project.unsaved(), project.unsavedChanges()]).toEqual([false, 0]);
      project.edit(['joints', 0, 'overlap'], 31);
      project.seal();
      project.edit(['joints', 0, 'overlap'], 32);
      expect([project.unsaved(), project.unsavedChanges()]).toEqual([true, 2]);
    });
  });

  it('is reached by taking back, also where one went on typing in the same field', () => {
    withProject(makeProject(), (project) => {
      project.edit(['joints', 0, 'overlap'], 31);
      const sent = project.seal();
      project.edit(['joints', 0, 'overlap'], 32);
      project.markSaved(sent);
      expect([project.unsaved(), project.unsavedChanges()]).toEqual([true, 1]);
      project.history.undo();
      expect(project.unsaved()).toBe(false);
      expect(plain(project).joints[0]!.overlap).toBe(31);
      project.history.undo();
      // Before what is saved: a change, though not one that can be counted.
      expect([project.unsaved(), project.unsavedChanges()]).toEqual([true, null]);
    });
  });

  it('is nothing where the document is adrift, until it is saved', () => {
    withProject(makeProject(), (project) => {
      const state = project.markAdrift();
      expect(project.unsaved()).toBe(true);
      project.markSaved(state);
      expect(project.unsaved()).toBe(false);
      project.open({ document: makeProject(), origin: 'kept' }, true);
      expect([project.unsaved(), project.history.undoes()]).toEqual([true, null]);
      project.markSaved();
      expect(project.unsaved()).toBe(false);
    });
  });
});
