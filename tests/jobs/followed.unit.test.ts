/** A job on its way: how far it is, who sees it, how it is stopped, and threads that share it. */
import { join } from 'node:path';
import { afterEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import {
  type Caller,
  type Division,
  type JobLine,
  type JobLineOptions,
  makeJobLine,
} from '../../src/main/jobs/job-line.ts';
import { ok, type Reply } from '../../src/shared/reply.ts';

const fixture = join(import.meta.dirname, 'fixture-worker.mjs');
const notComputable = { ok: false, error: { code: 'not-computable' } };
const isStopped = { ok: false, error: { code: 'stopped' } };

let line: JobLine;
const open = (options: Partial<JobLineOptions> = {}, division?: Division): void => {
  line = makeJobLine({ worker: fixture, carrier: 'loopback', ...options }, division);
};
afterEach(() => line.close());

interface Told {
  readonly tell: unknown;
  readonly jointId?: string;
  readonly job?: string;
  readonly steps?: number;
  readonly of?: number;
  readonly pace?: number;
  /** What it finds at each step. */
  readonly finds?: string;
  /** Which share is told so; all when left out. */
  readonly part?: number;
}
const ask = (input: Told, caller: Caller = {}): Promise<Reply<unknown>> =>
  line.run('joint.sweep', input, caller);

describe('a job that is followed', () => {
  const one = { client: 'one' };
  const stateOf = (job: string, client: string | undefined = 'one') =>
    line.desk(client).progress(job).state;
  const running = (job: string) =>
    vi.waitFor(() => expect(line.desk('one').progress(job).done).toBeGreaterThan(0));

  it('tells how far it is while it runs, and whoever waits that it waits', async () => {
    open();
    const first = ask({ tell: 'hang after', steps: 3, job: 'first', jointId: 'root' }, one);
    const second = ask({ tell: 'second', job: 'second', jointId: 'tip' }, one);
    expect(stateOf('second')).toBe('waiting');
    await vi.waitFor(() => expect(line.desk('one').progress('first').done).toBe(3));
    const seen = line.desk('one').progress('first');
    expect(seen).toMatchObject({ state: 'running', total: 3, what: 'step 3' });
    expect(seen.elapsed).toBeGreaterThan(0);
    expect(line.desk('one').progress('second')).toMatchObject({ elapsed: 0, left: null });
    line.desk('one').stop('first');
    expect(await first).toMatchObject(isStopped);
    expect(await second).toMatchObject({ ok: true });
    expect([stateOf('first'), stateOf('second')]).toEqual(['unknown', 'unknown']);
  });

  it('shows its client what is found while it runs, and nothing after', async () => {
    open();
    const found = (from: number, client: string | undefined = 'one') =>
      line.desk(client).found('first', from);
    const first = ask({ tell: 'hang after', steps: 3, finds: 'joint', job: 'first' }, one);
    const second = ask({ tell: 'x', steps: 1, finds: 'other', job: 'second', jointId: 'x' }, one);
    await vi.waitFor(() => expect(found(0)).toEqual(['joint 1', 'joint 2', 'joint 3']));
    expect(found(2)).toEqual(['joint 3']);
    expect(found(0, 'two')).toEqual([]);
    expect(line.desk('one').found('second', 0)).toEqual([]);
    line.desk('one').stop('first');
    expect(found(0)).toEqual([]);
    expect(await first).toMatchObject(isStopped);
    expect(await second).toMatchObject({ ok: true });
    expect(line.desk('one').found('second', 0)).toEqual([]);
  });

  it('says how long it will take once it has gone on for a while', async () => {
    open();
    const job = ask({ tell: 'hang after', steps: 3, of: 4, pace: 200, job: 'a' }, one);
    const seen = () => line.desk('one').progress('a');
    await vi.waitFor(() => expect(seen().done).toBe(3), 60_000);
    const { left, elapsed } = seen();
    // A quarter of the work is left: a third of the time that the rest took, and no more.
    expect(left).toBeLessThanOrEqual(elapsed / 3);
    expect(left).toBeGreaterThanOrEqual(0);
    line.desk('one').stop('a');
    await job;
  });

  it('calls whoever asked at every sign of progress', async () => {
    open();
    const told: unknown[] = [];
    await ask({ tell: 'a', steps: 3 }, { progress: (...tick) => told.push(tick) });
    expect(told).toEqual([
      [1, 3, 'step 1'],
      [2, 3, 'step 2'],
      [3, 3, 'step 3'],
    ]);
  });

  it('is stopped at once, running or waiting, and the next one runs', async () => {
    open();
    const first = ask({ tell: 'hang after', steps: 1, job: 'a', jointId: 'root' }, one);
    const second = ask({ tell: 'waits', job: 'b', jointId: 'tip' }, one);
    const third = ask({ tell: 'third', job: 'c', jointId: 'mast' }, one);
    await running('a');
    expect(line.desk('one').stop('b')).toBe(true);
    expect(await second).toMatchObject(isStopped);
    expect(stateOf('a')).toBe('running');
    expect(line.desk('one').stop('a')).toBe(true);
    expect(await first).toMatchObject(isStopped);
    expect(await third).toMatchObject({ ok: true, value: { asked: 'third' } });
    expect(line.desk('one').stop('a')).toBe(false);
  });

  it('is hidden from other clients, named or not', async () => {
    open();
    const job = ask({ tell: 'hang after', steps: 1, job: 'a' }, one);
    const nameless = ask({ tell: 'waits', job: 'n' });
    await running('a');
    expect([stateOf('a', 'two'), line.desk(undefined).progress('a').state]).toEqual([
      'unknown',
      'unknown',
    ]);
    expect([line.desk('two').stop('a'), line.desk(undefined).stop('a')]).toEqual([false, false]);
    expect(line.desk(undefined).progress('n').state).toBe('waiting');
    expect(line.desk('one').stop('n')).toBe(false);
    line.desk('one').stop('a');
    expect(await job).toMatchObject(isStopped);
    expect(await nameless).toMatchObject({ ok: true });
  });

  it('may take as long as it likes while it goes on', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    onTestFinished(() => void vi.useRealTimers());
    open({ timeLimit: 1000 });
    const steps = vi.fn(() => vi.advanceTimersByTime(900));
    const job = ask({ tell: 'done', steps: 3 }, { progress: steps });
    expect(await job).toMatchObject({ ok: true, value: { asked: 'done' } });
    expect(steps).toHaveBeenCalledTimes(3);
    const late = ask({ tell: 'hang after', steps: 1 }, { progress: steps });
    await vi.waitUntil(() => steps.mock.calls.length === 4);
    vi.advanceTimersByTime(100);
    expect(await late).toMatchObject(notComputable);
  });

  it('is dropped when its client leaves', async () => {
    open();
    const gone = [
      ask({ tell: 'hang', jointId: 'root' }, one),
      ask({ tell: 'waits', jointId: 'tip' }, one),
    ];
    const other = ask({ tell: 'other' }, { client: 'two' });
    line.leave('one');
    expect(await Promise.all(gone)).toMatchObject([notComputable, notComputable]);
    expect(await other).toMatchObject({ ok: true });
  });
});

describe('a job that threads share', () => {
  const division: Division = {
    most: (input) => (input as { most?: number }).most ?? 9,
    merge: (replies) => ok(replies.map((reply) => reply.ok && reply.value)),
  };
  const openShared = (): void => open({ threads: 3 }, division);

  it('is put together from its shares, in their order, each from a thread of its own', async () => {
    openShared();
    const reply = await ask({ tell: 'a' });
    const shares = reply.ok ? (reply.value as { threadId: number; share: unknown }[]) : [];
    expect(shares.map(({ share }) => share)).toEqual([
      { part: 0, of: 3 },
      { part: 1, of: 3 },
      { part: 2, of: 3 },
    ]);
    expect(new Set(shares.map(({ threadId }) => threadId)).size).toBe(3);
  });

  it('is not divided further than is worth while, nor without a way to divide it', async () => {
    openShared();
    const two = await line.run('joint.sweep', { tell: 'a', most: 2 }, {});
    expect(two.ok && (two.value as unknown[]).length).toBe(2);
    expect(await line.run('joint.sweep', { tell: 'a', most: 0 }, {})).toMatchObject({
      ok: true,
      value: { asked: 'a' },
    });
    await line.close();
    open({ threads: 3 });
    expect(await ask({ tell: 'a' })).toMatchObject({ ok: true, value: { asked: 'a' } });
  });

  it('is as far as its shares together', async () => {
    openShared();
    const told: [number, number][] = [];
    await ask(
      { tell: 'a', steps: 2, of: 6 },
      { progress: (done, total) => told.push([done, total]) },
    );
    expect(told.map(([done]) => done)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(new Set(told.map(([, total]) => total))).toEqual(new Set([6]));
  });

  it('ends as a whole when it is stopped or one thread dies, and the next one runs', async () => {
    openShared();
    const one = { client: 'one' };
    const job = ask({ tell: 'hang after', steps: 1, job: 'a' }, one);
    await vi.waitFor(() => expect(line.desk('one').progress('a').done).toBe(3), 60_000);
    line.desk('one').stop('a');
    expect(await job).toMatchObject(isStopped);
    expect(await ask({ tell: 'die', part: 1 })).toMatchObject({
      ok: false,
      error: { code: 'internal' },
    });
    const reply = await ask({ tell: 'after' });
    expect(reply.ok && (reply.value as unknown[]).length).toBe(3);
  });
});
