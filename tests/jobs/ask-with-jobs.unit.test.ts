import { describe, expect, it } from 'vitest';
import { type Ask, createAsk } from '../../src/main/ask.ts';
import { type Jobs, withJobs } from '../../src/main/jobs/ask-with-jobs.ts';
import { emptyDesk, type JobDesk, joinDesks } from '../../src/main/jobs/desk.ts';
import type { JobLine } from '../../src/main/jobs/job-line.ts';
import { longRequestNames, requestNames, requests } from '../../src/shared/contract.ts';
import { ok } from '../../src/shared/reply.ts';
import type { JointSummary } from '../../src/shared/reports.ts';

const lineCalled = (name: string): JobLine => ({
  run: async (asked) => ok(`${name} line: ${asked}`),
  desk: () => emptyDesk,
  leave() {},
  warm() {},
  ahead() {},
  close: async () => {},
});

const judged = (jointId: string): JointSummary => ({
  jointId,
  name: jointId,
  description: '',
  overlap: 30,
  lowest: null,
  flags: [],
  refused: null,
});
const [root, tip] = [judged('root'), judged('tip')];
const deskOf = (own: string): JobDesk => ({
  progress: (job) =>
    job === own
      ? { state: 'running', done: 1, total: 4, what: 'tip', elapsed: 2, left: 6 }
      : emptyDesk.progress(job),
  found: (job, from) => (job === own ? [root, tip].slice(from) : []),
  stop: (job) => job === own,
});

const jobs: Jobs = {
  lines: Object.fromEntries(longRequestNames.map((name) => [name, lineCalled(name)])) as Record<
    (typeof longRequestNames)[number],
    JobLine
  >,
  desk: (client) => (client === 'one' ? deskOf('mine') : emptyDesk),
  rehearsal: { asked() {}, analysed() {}, close() {} },
  leave() {},
  warm() {},
  close: async () => {},
};
const here: Ask = async (name) => ok(`here: ${name}`);

describe('asking with jobs', () => {
  const ask = withJobs(here, jobs);

  it.each(longRequestNames)('sends %s to a line of its own', async (name) => {
    expect(await ask(name, {})).toEqual(ok(`${name} line: ${name}`));
  });

  it.each([
    ...requestNames.filter((name) => !(longRequestNames as string[]).includes(name)),
    'no.such',
    7,
    undefined,
  ])('answers %s at once', async (name) => {
    expect(await ask(name, {})).toEqual(ok(`here: ${name}`));
  });

  it('takes an id of its caller with every long request, and with no other but those about jobs', () => {
    const withJob = requestNames.filter((name) => 'job' in requests[name].shape);
    expect(withJob.sort()).toEqual(
      [...longRequestNames, 'job.progress', 'job.found', 'job.stop'].sort(),
    );
  });
});

describe('following and stopping', () => {
  const ask = withJobs(createAsk({ carrier: 'loopback' }), jobs);

  it('tells a client of its own jobs, and nobody else', async () => {
    const progress = (client?: string) => ask('job.progress', { job: 'mine' }, { client });
    const nothing = ok({ state: 'unknown', done: 0, total: 0, what: '', elapsed: 0, left: null });
    expect(await progress('one')).toEqual(
      ok({ state: 'running', done: 1, total: 4, what: 'tip', elapsed: 2, left: 6 }),
    );
    expect(await progress('two')).toEqual(nothing);
    expect(await progress()).toEqual(nothing);
  });

  it('shows a client what its own jobs have found so far, from where it knows it', async () => {
    const found = (from: number, client?: string) =>
      ask('job.found', { job: 'mine', from }, { client });
    expect(await found(0, 'one')).toEqual(ok({ joints: [root, tip] }));
    expect(await found(1, 'one')).toEqual(ok({ joints: [tip] }));
    expect(await found(0, 'two')).toEqual(ok({ joints: [] }));
    expect(await found(0)).toEqual(ok({ joints: [] }));
    expect(await found(-1, 'one')).toMatchObject({ ok: false, error: { field: 'from' } });
  });

  it('stops for a client its own jobs, and no other', async () => {
    const stop = (job: string, client?: string) => ask('job.stop', { job }, { client });
    expect(await stop('mine', 'one')).toEqual(ok({ stopped: true }));
    expect(await stop('other', 'one')).toEqual(ok({ stopped: false }));
    expect(await stop('mine', 'two')).toEqual(ok({ stopped: false }));
  });

  it.each([{}, { job: '' }, { job: 'x'.repeat(65) }, { job: 7 }])(
    'refuses %j, which names no job',
    async (input) => {
      for (const name of ['job.progress', 'job.stop']) {
        expect(await ask(name, input)).toMatchObject({
          ok: false,
          error: { code: 'bad-request', field: 'job' },
        });
      }
    },
  );

  it('knows of no job where there are no workers', async () => {
    const alone = createAsk({ carrier: 'terminal' });
    expect(await alone('job.progress', { job: 'mine' })).toMatchObject({
      ok: true,
      value: { state: 'unknown' },
    });
    expect(await alone('job.found', { job: 'mine', from: 0 })).toEqual(ok({ joints: [] }));
    expect(await alone('job.stop', { job: 'mine' })).toEqual(ok({ stopped: false }));
  });
});

describe('several desks as one', () => {
  it('finds the one that knows, and stops everywhere', () => {
    const stopped: string[] = [];
    const noting = (name: string): JobDesk => ({
      ...deskOf('mine'),
      stop: () => stopped.push(name) > 0,
    });
    const desk = joinDesks([emptyDesk, noting('a'), noting('b')]);
    expect(desk.progress('mine').state).toBe('running');
    expect(joinDesks([emptyDesk, deskOf('mine')]).found('mine', 1)).toEqual([tip]);
    expect(desk.progress('other').state).toBe('unknown');
    expect(desk.stop('mine')).toBe(true);
    expect(stopped).toEqual(['a', 'b']);
    expect(joinDesks([emptyDesk]).stop('mine')).toBe(false);
  });
});
