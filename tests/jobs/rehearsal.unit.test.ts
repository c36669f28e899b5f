/** The first moves of a hand are answered as fast as later ones: what they ask was rehearsed while nobody asked. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openDemo } from '../../src/main/demo/demo.ts';
import { makeJobs, withJobs } from '../../src/main/jobs/ask-with-jobs.ts';
import { makeRehearsal, type Rehearsal } from '../../src/main/jobs/rehearsal.ts';
import type { Project } from '../../src/shared/project.ts';
import { ok, refuse } from '../../src/shared/reply.ts';

const { document } = (openDemo() as { value: { document: Project } }).value;
const state = { caseId: 'gust', conditionId: null, gapState: 'min', theta: 30 };
const analysed = ok({ stress: { ...state, loadFactor: 1, flags: [] } });
const questionOf = (jointId: string) => ({
  document: { ...document, joints: document.joints.filter(({ id }) => id === jointId) },
  jointId,
});

interface Asked {
  readonly jointId: string;
  readonly focus: object;
  readonly document: Project;
}
const ask = vi.fn(async (_name: unknown, _input: unknown) => ok(null));
const asked = (): Asked[] => ask.mock.calls.map(([, input]) => input as Asked);
const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);
/** More than all of it takes. */
const LONG = 10_000;

let rehearsal: Rehearsal;
beforeEach(() => {
  vi.useFakeTimers();
  ask.mockClear();
  rehearsal = makeRehearsal(ask);
});
afterEach(() => {
  rehearsal.close();
  vi.useRealTimers();
});

describe('a rehearsal', () => {
  it('asks for the stresses of the joint that was analysed, of no two overlaps alike', async () => {
    rehearsal.analysed(questionOf('boom-root'), analysed);
    await pass(LONG);
    expect(new Set(ask.mock.calls.map(([name]) => name))).toEqual(new Set(['joint.stress']));
    expect(asked().length).toBeGreaterThan(50);
    expect(asked()[0]).toMatchObject({ jointId: 'boom-root', focus: state });
    const overlaps = asked().map(({ document: { joints } }) => joints[0]!.overlap);
    expect(new Set(overlaps).size).toBe(overlaps.length);
    expect(Math.min(...overlaps)).toBeGreaterThanOrEqual(45);
    expect(Math.max(...overlaps)).toBeLessThan(45.5);
  });

  it('is held once for each kind of joint', async () => {
    rehearsal.analysed(questionOf('boom-tip'), analysed);
    rehearsal.analysed(questionOf('landing-leg'), analysed);
    rehearsal.analysed(questionOf('tail-strut'), analysed);
    await pass(LONG);
    const joints = asked().map(({ jointId }) => jointId);
    expect(new Set(joints)).toEqual(new Set(['boom-tip', 'tail-strut']));
    const count = joints.length;
    rehearsal.analysed(questionOf('tail-strut'), analysed);
    await pass(LONG);
    expect(ask).toHaveBeenCalledTimes(count);
  });

  it('waits while somebody asks, but not for looks at a job', async () => {
    rehearsal.analysed(questionOf('boom-root'), analysed);
    for (let i = 0; i < 20; i++) {
      rehearsal.asked('joint.stress');
      await pass(200);
    }
    expect(ask).not.toHaveBeenCalled();
    for (let i = 0; i < 20; i++) {
      rehearsal.asked('job.progress');
      rehearsal.asked('job.found');
      await pass(200);
    }
    expect(ask.mock.calls.length).toBeGreaterThan(50);
  });

  it('is given up where an answer is slow, or all of them together', async () => {
    const slowly = (ms: number) =>
      ask.mockImplementation(async () => {
        await new Promise((later) => setTimeout(later, ms));
        return ok(null);
      });
    slowly(400);
    rehearsal.analysed(questionOf('boom-root'), analysed);
    await pass(LONG);
    expect(ask).toHaveBeenCalledTimes(1);
    slowly(100);
    rehearsal.analysed(questionOf('tail-strut'), analysed);
    await pass(LONG);
    expect(ask.mock.calls.length).toBeGreaterThan(10);
    expect(ask.mock.calls.length).toBeLessThan(20);
    const before = ask.mock.calls.length;
    slowly(200);
    rehearsal.analysed(questionOf('boom-tip'), analysed);
    await pass(LONG);
    expect(ask).toHaveBeenCalledTimes(before + 2);
    ask.mockImplementation(async () => ok(null));
  });

  it('is not held for what was refused, or has no load, or is closed', async () => {
    rehearsal.analysed(questionOf('boom-root'), refuse('bad-input', '', 'No.'));
    rehearsal.analysed(questionOf('boom-root'), ok({ stress: null }));
    await pass(LONG);
    rehearsal.analysed(questionOf('boom-root'), analysed);
    rehearsal.close();
    await pass(LONG);
    expect(ask).not.toHaveBeenCalled();
  });

  it('is told of what a page asks and of each analysis', async () => {
    const jobs = makeJobs({ worker: 'none', carrier: 'loopback' });
    const told: unknown[][] = [];
    const line = { ...jobs.lines['joint.analyse'], run: async () => analysed };
    const noting = {
      ...jobs,
      lines: { ...jobs.lines, 'joint.analyse': line },
      rehearsal: {
        asked: (name: unknown) => told.push(['asked', name]),
        analysed: (...one: unknown[]) => told.push(['analysed', ...one]),
        close: () => told.push(['closed']),
      } as Rehearsal,
    };
    const input = questionOf('boom-root');
    await withJobs(ask, noting)('joint.analyse', input);
    await withJobs(ask, noting)('app.about', {});
    expect(told).toEqual([
      ['asked', 'joint.analyse'],
      ['analysed', input, analysed],
      ['asked', 'app.about'],
    ]);
    const closed = vi.spyOn(jobs.rehearsal, 'close');
    await jobs.close();
    expect(closed).toHaveBeenCalledOnce();
  });
});
