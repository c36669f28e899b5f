/** A question that is computed before it is asked: it is answered once, and only for the very same question. */
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { openDemo } from '../../src/main/demo/demo.ts';
import { makeJobs } from '../../src/main/jobs/ask-with-jobs.ts';
import { type Caller, type JobLine, makeJobLine } from '../../src/main/jobs/job-line.ts';
import type { Reply } from '../../src/shared/reply.ts';

const worker = join(import.meta.dirname, 'fixture-worker.mjs');
const name = 'project.check';
const page: Caller = { client: 'page' };
const document = { name: 'Curlew', joints: [{ id: 'root', overlap: 30 }] };

/** Milliseconds after which a thread has started and answered, on a busy machine too. */
const DONE = 1500;

let line: JobLine;
const open = (): void => {
  line = makeJobLine({ worker, carrier: 'loopback', timeLimit: 10_000 });
};
afterEach(() => line.close());

const ask = (input: object, caller = page): Promise<Reply<unknown>> =>
  line.run(name, input, caller);
const stateOf = (job: string): string => line.desk('page').progress(job).state;
/** Which question it was to its thread, and which thread. */
const madeBy = (reply: Reply<unknown>) => reply as { value: { nth: number; threadId: number } };

describe('what is computed ahead', () => {
  it('answers the same question while it runs, which is then followed like any other', async () => {
    open();
    // A thread that was ended would begin to count anew.
    await ask({ tell: 'before' });
    line.ahead(name, { tell: 'x', document, steps: 3, pace: 50 });
    const told = vi.fn();
    const input = { pace: 50, steps: 3, document, tell: 'x', job: 'mine' };
    const reply = ask(input, { ...page, progress: told });
    expect(stateOf('mine')).toBe('running');
    expect(madeBy(await reply).value.nth).toBe(2);
    expect(told).toHaveBeenCalledWith(3, 3, 'step 3');
    expect(stateOf('mine')).toBe('unknown');
  });

  it('shows what was found before it was asked for', async () => {
    open();
    const input = { tell: 'hang after', document, steps: 2, finds: 'joint' };
    line.ahead(name, input);
    await setTimeout(DONE);
    const reply = ask({ ...input, job: 'mine' });
    expect(line.desk('page').found('mine', 0)).toEqual(['joint 1', 'joint 2']);
    line.desk('page').stop('mine');
    await reply;
  });

  it('answers the same question when it is done, and the next one anew', async () => {
    open();
    line.ahead(name, { tell: 'x', document });
    await setTimeout(DONE);
    const first = madeBy(await ask({ tell: 'x', document }));
    const second = madeBy(await ask({ tell: 'x', document }));
    expect([first.value.nth, second.value.nth]).toEqual([1, 2]);
    expect(second.value.threadId).toBe(first.value.threadId);
  });

  it('makes way for another question, and is then forgotten', async () => {
    open();
    line.ahead(name, { tell: 'hang', document });
    const other = { ...document, joints: [{ id: 'root', overlap: 31 }] };
    expect(await ask({ tell: 'x', document: other })).toMatchObject({ ok: true });
    line.ahead(name, { tell: 'x', document });
    await setTimeout(DONE);
    expect(madeBy(await ask({ tell: 'x', document: other })).value.nth).toBe(3);
    expect(madeBy(await ask({ tell: 'x', document })).value.nth).toBe(4);
  });

  it('can be stopped by whoever took it over', async () => {
    open();
    line.ahead(name, { tell: 'hang', document });
    const reply = ask({ tell: 'hang', document, job: 'mine' });
    expect(line.desk('page').stop('mine')).toBe(true);
    expect(await reply).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(await ask({ tell: 'x', document })).toMatchObject({ ok: true });
  });

  it('keeps no refusal', async () => {
    open();
    line.ahead(name, { tell: 'refuse', document });
    await setTimeout(DONE);
    const error = { message: 'question 2' };
    expect(await ask({ tell: 'refuse', document })).toMatchObject({ ok: false, error });
  });
});

describe('the margins of what the page opens', () => {
  it('are computed while it loads', async () => {
    const jobs = makeJobs({ worker, carrier: 'loopback' });
    onTestFinished(() => jobs.close());
    const opening = openDemo();
    jobs.warm(opening);
    await setTimeout(DONE);
    // As it comes back from the page.
    const { document } = JSON.parse(JSON.stringify(opening.ok ? opening.value : null));
    const check = (): Promise<Reply<unknown>> =>
      jobs.lines['project.check'].run('project.check', { document, job: 'job-1' }, page);
    expect(madeBy(await check()).value.nth).toBe(1);
    expect(madeBy(await check()).value.nth).toBe(2);
  });
});
