import { createRoot, createSignal } from 'solid-js';
import { expect, it } from 'vitest';
import { type Check, createCheck } from '../../src/renderer/state/check.ts';
import { createProject, type ProjectState } from '../../src/renderer/state/project.ts';
import { makeFakeBridge } from './support/fake-bridge.ts';
import { makeProject } from './support/project.ts';

function setUp(isActive = true) {
  const bridge = makeFakeBridge();
  return createRoot((dispose) => {
    const project: ProjectState = createProject();
    const [active, setActive] = createSignal(isActive);
    const check: Check = createCheck(bridge, project, active);
    const open = (name: string): void =>
      project.open({ document: makeProject({ name }), origin: name });
    return { bridge, project, check, setActive, open, dispose };
  });
}
const settled = (): Promise<unknown> => new Promise((done) => setTimeout(done));

it('does not show the report of a project that is no longer open', async () => {
  const { bridge, check, open, dispose } = setUp();
  bridge.hold();
  open('First');
  open('Second');
  await bridge.release();
  await settled();
  expect(check.report()?.project).toBe('Second');
  open('Third');
  expect(check.report()).toBeNull();
  dispose();
});

it('never passes through the report of the one before', async () => {
  const { bridge, check, open, dispose } = setUp();
  const seen = new Set<string | undefined>();
  bridge.answer('project.check', (input) => {
    seen.add(check.report()?.project);
    const { name, settings } = input.document as ReturnType<typeof makeProject>;
    return {
      ok: true,
      value: {
        project: name,
        targetMargin: settings.targetMargin,
        joints: [],
        counts: { fails: 0, low: 0, holds: 0 },
        modelVersion: '1',
      },
    };
  });
  bridge.hold();
  open('First');
  open('Second');
  await bridge.release();
  await settled();
  expect(seen).toEqual(new Set([undefined]));
  dispose();
});

it('asks only while somebody looks, and then once for what has changed', async () => {
  const { bridge, project, check, setActive, open, dispose } = setUp(false);
  open('First');
  project.edit(['joints', 0, 'overlap'], 31);
  expect(bridge.count('project.check')).toBe(0);
  setActive(true);
  await settled();
  expect(bridge.count('project.check')).toBe(1);
  expect(check.behind()).toBe(false);
  setActive(false);
  setActive(true);
  expect(bridge.count('project.check')).toBe(1);
  project.edit(['joints', 0, 'overlap'], 32);
  expect(check.behind()).toBe(true);
  await settled();
  expect(bridge.count('project.check')).toBe(2);
  dispose();
});

it('does not wait for the check of what has changed meanwhile, nor shows that it was stopped', async () => {
  const { bridge, project, check, open, dispose } = setUp();
  const shown: unknown[] = [];
  bridge.answer('project.check', () => {
    shown.push(check.refusal());
    const code = shown.length === 1 ? 'stopped' : 'bad-input';
    return { ok: false, error: { code, field: '', message: '' } };
  });
  bridge.hold();
  open('First');
  project.edit(['joints', 0, 'overlap'], 31);
  expect(bridge.count('job.stop')).toBe(1);
  await bridge.release();
  await settled();
  expect(shown).toEqual([null, null]);
  expect(check.refusal()?.code).toBe('bad-input');
  dispose();
});

it('asks once about one and the same, however often it is looked at', async () => {
  const { bridge, setActive, open, dispose } = setUp();
  bridge.hold();
  open('First');
  setActive(false);
  setActive(true);
  await bridge.release();
  await settled();
  expect(bridge.count('project.check')).toBe(1);
  expect(bridge.count('job.stop')).toBe(0);
  dispose();
});

it('stays stopped when it was stopped, until it is asked again', async () => {
  const { bridge, check, setActive, open, dispose } = setUp();
  bridge.refuse('project.check', { code: 'stopped' });
  open('First');
  await settled();
  expect(check.refusal()?.code).toBe('stopped');
  setActive(false);
  setActive(true);
  expect(bridge.count('project.check')).toBe(1);
  check.again();
  expect(check.refusal()).toBeNull();
  expect(bridge.count('project.check')).toBe(2);
  await settled();
  dispose();
});
