import { join } from 'node:path';
import { afterEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { type Caller, type JobLine, makeJobLine } from '../../src/main/jobs/job-line.ts';
import type { Reply } from '../../src/shared/reply.ts';

const fixture = join(import.meta.dirname, 'fixture-worker.mjs');
const internal = { ok: false, error: { code: 'internal' } };
const notComputable = { ok: false, error: { code: 'not-computable' } };

let line: JobLine;
const open = (timeLimit = 10_000): void => {
  line = makeJobLine({ worker: fixture, carrier: 'loopback', timeLimit });
};
afterEach(() => line.close());

interface Told {
  readonly tell: unknown;
  readonly delay?: number;
  readonly jointId?: string;
  readonly job?: string;
  readonly steps?: number;
  readonly of?: number;
  readonly pace?: number;
}
const ask = (input: Told, caller: Caller = {}): Promise<Reply<unknown>> =>
  line.run('joint.sweep', input, caller);
const threadOf = (reply: Reply<unknown>): unknown =>
  reply.ok ? (reply.value as { threadId: number }).threadId : reply;

describe('a line of jobs', () => {
  it('answers in order, all from one thread', async () => {
    open();
    const done: unknown[] = [];
    const replies = await Promise.all(
      ['a', 'b', 'c'].map(async (tell, i) => {
        const reply = await ask({ tell, delay: 30 - 10 * i });
        done.push(tell);
        return reply;
      }),
    );
    expect(done).toEqual(['a', 'b', 'c']);
    expect(new Set(replies.map(threadOf)).size).toBe(1);
    expect(replies[1]).toMatchObject({ ok: true, value: { asked: 'b' } });
  });

  it.each(['die', 'throw'])('survives a worker that is told to %s', async (tell) => {
    open();
    const before = ask({ tell: 'before' });
    const killed = ask({ tell });
    const after = ask({ tell: 'after' });
    expect(await before).toMatchObject({ ok: true });
    expect(await killed).toMatchObject(internal);
    expect(await after).toMatchObject({ ok: true, value: { asked: 'after' } });
    expect(threadOf(await after)).not.toBe(threadOf(await before));
  });

  it('refuses what cannot be sent to a thread and goes on', async () => {
    open();
    expect(await ask({ tell: () => 0 })).toMatchObject(internal);
    expect(await ask({ tell: 'next' })).toMatchObject({ ok: true });
  });

  it('refuses when there is no worker at all', async () => {
    line = makeJobLine({
      worker: join(import.meta.dirname, 'no-such-worker.mjs'),
      carrier: 'loopback',
    });
    expect(await ask({ tell: 'x' })).toMatchObject(internal);
    expect(await ask({ tell: 'x' })).toMatchObject(internal);
  });

  it('lets the latest of one client and joint win, even over one that runs', async () => {
    open();
    const one = { client: 'one' };
    const running = ask({ tell: 'hang', jointId: 'root' }, one);
    const waiting = ask({ tell: 'waits', jointId: 'root' }, one);
    const latest = ask({ tell: 'latest', jointId: 'root' }, one);
    expect(await running).toMatchObject(notComputable);
    expect(await waiting).toMatchObject(notComputable);
    expect(await latest).toMatchObject({ ok: true, value: { asked: 'latest' } });
  });

  it('replaces nothing of another joint, another client, or nobody in particular', async () => {
    open();
    const replies = await Promise.all([
      ask({ tell: 1, delay: 20, jointId: 'root' }, { client: 'one' }),
      ask({ tell: 2, jointId: 'tip' }, { client: 'one' }),
      ask({ tell: 3, jointId: 'root' }, { client: 'two' }),
      ask({ tell: 4, jointId: 'root' }),
      ask({ tell: 5, jointId: 'root' }),
    ]);
    expect(replies.map(({ ok }) => ok)).toEqual([true, true, true, true, true]);
  });

  it('drops what nobody waits for, running or not', async () => {
    open();
    const [first, second] = [new AbortController(), new AbortController()];
    const running = ask({ tell: 'hang' }, { signal: first.signal });
    const waiting = ask({ tell: 'waits' }, { signal: second.signal });
    const last = ask({ tell: 'last' });
    second.abort();
    first.abort();
    expect(await running).toMatchObject(notComputable);
    expect(await waiting).toMatchObject(notComputable);
    expect(await last).toMatchObject({ ok: true });
    expect(await ask({ tell: 'x' }, { signal: first.signal })).toMatchObject(notComputable);
  });

  it('stops what gives no sign of progress for longer than it may', async () => {
    open(100);
    expect(await ask({ tell: 'hang' })).toMatchObject({
      ok: false,
      error: {
        code: 'not-computable',
        message: 'This made no progress for 0.1 s and was stopped. Make it smaller and try again.',
      },
    });
    line.close();
    open();
    expect(await ask({ tell: 'next' })).toMatchObject({ ok: true });
  });

  it('holds no more than it can and says so', async () => {
    open();
    const many = Array.from({ length: 80 }, (_, i) => ask({ tell: i }));
    const replies = await Promise.all(many);
    expect(replies.filter(({ ok }) => ok)).toHaveLength(65);
    expect(replies[79]).toMatchObject(notComputable);
  });

  it('answers everybody when it closes, and nobody after', async () => {
    open();
    const replies = [ask({ tell: 'hang' }), ask({ tell: 'waits' })];
    await line.close();
    expect(await Promise.all(replies)).toMatchObject([notComputable, notComputable]);
    expect(await ask({ tell: 'late' })).toMatchObject(notComputable);
  });
});

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
    expect(await first).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(await second).toMatchObject({ ok: true });
    expect([stateOf('first'), stateOf('second')]).toEqual(['unknown', 'unknown']);
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
    expect(await second).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(stateOf('a')).toBe('running');
    expect(line.desk('one').stop('a')).toBe(true);
    expect(await first).toMatchObject({ ok: false, error: { code: 'stopped' } });
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
    expect(await job).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(await nameless).toMatchObject({ ok: true });
  });

  it('may take as long as it likes while it goes on', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    onTestFinished(() => void vi.useRealTimers());
    open(1000);
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
