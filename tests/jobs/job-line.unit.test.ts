import { join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { afterEach, describe, expect, it, vi } from 'vitest';
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
  readonly last?: 'die';
  readonly jointId?: string;
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

  it('survives a worker that dies while it waits', async () => {
    open();
    const before = await ask({ tell: 'before', last: 'die' });
    await vi.waitFor(async () => {
      const after = await ask({ tell: 'after' });
      expect(after).toMatchObject({ ok: true, value: { asked: 'after' } });
      expect(threadOf(after)).not.toBe(threadOf(before));
    });
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

  it('takes no sleep for a silence: what was done meanwhile is heard first', async () => {
    open(1000);
    expect(await ask({ tell: 'before' })).toMatchObject({ ok: true });
    const asked = ask({ tell: 'awake', delay: 50 });
    // As a machine that sleeps: nothing runs here, and then every timer is due before any message is heard.
    await turn();
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 1500);
    expect(await asked).toMatchObject({ ok: true, value: { asked: 'awake' } });
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
