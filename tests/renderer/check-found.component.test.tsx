/** The table of joints fills while the project is checked. */
import { fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { createCheck } from '../../src/renderer/state/check.ts';
import { createProject } from '../../src/renderer/state/project.ts';
import type { Bridge } from '../../src/shared/contract.ts';
import { ok, type Reply, refuse } from '../../src/shared/reply.ts';
import type { CheckReport, JointSummary } from '../../src/shared/reports.ts';
import { useDialogs } from './support/dialogs.ts';
import { makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';
import { makeMargin, makeSummary } from './support/reports.ts';

useBrowser();
useDialogs();

const { joints } = makeProject();
const summaries = joints.map((joint, i) => makeSummary(joint, makeMargin([0.9, -0.12, 0.1][i]!)));
const [tip, root] = summaries as [JointSummary, JointSummary];

/** What the running check has found, and the answers of those that were asked for, in their order. */
let found: JointSummary[];
let checks: ((reply: Reply<unknown>) => void)[];
let bridge: Bridge;
beforeEach(() => {
  found = [];
  checks = [];
  const fake = makeFakeBridge();
  bridge = {
    ...fake,
    ask: (name, input) => {
      if (name === 'project.check') {
        return new Promise((answer) => checks.push(answer as (reply: Reply<unknown>) => void));
      }
      if (name === 'job.found') {
        const { from } = input as unknown as { from: number };
        return Promise.resolve(ok({ joints: structuredClone(found.slice(from)) }) as Reply<never>);
      }
      if (name === 'job.stop') {
        checks.at(-1)?.(refuse('stopped', '', 'Stopped.'));
        return Promise.resolve(ok({ stopped: true }) as Reply<never>);
      }
      return fake.ask(name, input);
    },
  };
});
const report = (): Reply<CheckReport> =>
  ok({
    project: 'Test frame',
    targetMargin: 0.25,
    joints: structuredClone(summaries),
    counts: { fails: 1, low: 1, holds: 1 },
    modelVersion: '1',
  });
const shown = (): (string | undefined)[] =>
  [...document.querySelectorAll('.joint-name')].map((name) => name.textContent ?? undefined);
const shows = (names: readonly string[]) => vi.waitFor(() => expect(shown()).toEqual(names));
const start = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await vi.waitFor(() => expect(checks).toHaveLength(1));
  found = [tip];
  await shows([tip.name]);
};

describe('the check of a project', () => {
  it('shows each joint that is judged, and how many of all these are', async () => {
    await start();
    expect(screen.getByText('1 of 3 joints checked so far.')).toBeTruthy();
    expect(screen.queryByText(/Of three joints/)).toBeNull();
    found = [tip, root];
    await shows([root.name, tip.name]);
    expect(screen.getByText('2 of 3 joints checked so far.')).toBeTruthy();
  });

  it('leaves the rows as they are when all are judged, with the focus among them', async () => {
    await start();
    const name = screen.getByRole('button', { name: tip.name });
    name.focus();
    checks[0]!(report());
    await vi.waitFor(() => expect(shown()).toHaveLength(3));
    expect(screen.getByText(/Of three joints, one fails/)).toBeTruthy();
    expect(screen.queryByText(/checked so far/)).toBeNull();
    expect(name.isConnected).toBe(true);
    expect(document.activeElement).toBe(name);
  });

  it('moves no row under the pointer, and puts all in order when it has gone', async () => {
    await start();
    const table = screen.getByRole('table');
    const sorting = (): (string | null)[] =>
      screen.getAllByRole('columnheader').map((head) => head.getAttribute('aria-sort'));
    expect(sorting()).toContain('ascending');
    fireEvent.pointerEnter(table);
    found = [tip, root];
    await shows([tip.name, root.name]);
    expect(sorting()).not.toContain('ascending');
    checks[0]!(report());
    await vi.waitFor(() => expect(shown()).toHaveLength(3));
    const third = summaries[2]!.name;
    expect(shown()).toEqual([tip.name, root.name, third]);
    fireEvent.pointerLeave(table);
    expect(shown()).toEqual([root.name, third, tip.name]);
    expect(sorting()).toContain('ascending');
  });

  it('moves no row while one has the focus, and puts them in order by a press', async () => {
    await start();
    screen.getByRole('button', { name: tip.name }).focus();
    found = [tip, root];
    await shows([tip.name, root.name]);
    fireEvent.click(screen.getByRole('button', { name: 'Lowest margin' }));
    expect(shown()).toEqual([root.name, tip.name]);
    fireEvent.click(screen.getByRole('button', { name: 'Lowest margin' }));
    expect(shown()).toEqual([tip.name, root.name]);
  });

  it('takes nothing out of a table that is not whole', async () => {
    await start();
    const table = screen.getByRole('table');
    const buttons = table.querySelectorAll('thead button').length;
    checks[0]!(report());
    await vi.waitFor(() => expect(shown()).toHaveLength(3));
    expect(screen.getByRole('table')).toBe(table);
    expect(table.querySelectorAll('thead button').length).toBeGreaterThan(buttons);
  });

  it('keeps what was found when it is stopped', async () => {
    await start();
    fireEvent.click(screen.getByRole('button', { name: 'Stop: Check of every joint' }));
    await screen.findByText('The check was stopped before it was done.');
    expect(shown()).toEqual([tip.name]);
    expect(screen.getByText('1 of 3 joints checked so far.')).toBeTruthy();
    expect(document.querySelector('.is-stale')).toBeNull();
    // And begins anew when asked to.
    found = [];
    fireEvent.click(screen.getByRole('button', { name: 'Check every joint' }));
    await shows([]);
    found = [root];
    await shows([root.name]);
  });

  it('does not say that it was stopped when it goes on after a change', async () => {
    const { project, check, dispose } = createRoot((dispose) => {
      const project = createProject();
      return { project, check: createCheck(bridge, project, () => true), dispose };
    });
    project.open({ document: makeProject(), origin: 'first' });
    await vi.waitFor(() => expect(checks).toHaveLength(1));
    check.job.stop();
    await vi.waitFor(() => expect(check.refusal()?.code).toBe('stopped'));
    project.edit(['joints', 0, 'overlap'], 31);
    await vi.waitFor(() => expect(checks).toHaveLength(2));
    expect(check.refusal()).toBeNull();
    dispose();
  });

  it('keeps nothing of it when it breaks off', async () => {
    await start();
    checks[0]!(refuse('internal', '', 'The calculation stopped unexpectedly.'));
    await screen.findByRole('alert');
    expect(shown()).toEqual([]);
  });

  it('forgets what was found of the project as it was, and of the one before', async () => {
    const { project, check, dispose } = createRoot((dispose) => {
      const project = createProject();
      return { project, check: createCheck(bridge, project, () => true), dispose };
    });
    const finds = (names: readonly string[]) =>
      vi.waitFor(() => expect(check.found().map(({ name }) => name)).toEqual(names));
    project.open({ document: makeProject(), origin: 'first' });
    found = [tip];
    await finds([tip.name]);
    found = [];
    project.edit(['joints', 0, 'overlap'], 31);
    expect(check.found()).toEqual([]);
    found = [tip, root];
    await finds([tip.name, root.name]);
    found = [];
    project.open({ document: makeProject({ name: 'Second' }), origin: 'second' });
    expect(check.found()).toEqual([]);
    found = [root];
    await finds([root.name]);
    checks.at(-1)!(report());
    await vi.waitFor(() => expect(check.report()?.joints).toHaveLength(3));
    expect(check.found()).toEqual([]);
    // A later check shows its report at once, not joint by joint.
    project.edit(['joints', 0, 'overlap'], 32);
    await new Promise((later) => setTimeout(later, 200));
    expect(check.found()).toEqual([]);
    expect(check.report()?.joints).toHaveLength(3);
    dispose();
  });
});
