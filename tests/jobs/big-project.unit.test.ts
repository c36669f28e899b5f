/** A small one of the large projects, checked in the worker that was built: followed, and stopped. */
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeBigProject } from '../../reference/big-project/make.mjs';
import { buildIsCurrent } from '../../src/launch/build.mjs';
import { createAsk } from '../../src/main/ask.ts';
import { type AskWithJobs, createAskWithJobs } from '../../src/main/jobs/ask-with-jobs.ts';
import { readProject } from '../../src/shared/read-project.ts';

const root = resolve(import.meta.dirname, '..', '..');
const worker = join(root, 'out', 'main', 'worker.js');
const carrier = 'loopback';
const one = { client: 'one' };

async function withCore(threads: number, run: (core: AskWithJobs) => Promise<void>): Promise<void> {
  const core = createAskWithJobs({ carrier, worker, threads });
  await run(core).finally(() => core.close());
}

describe('a large project', () => {
  it('is a project, the same each time, with all types of joints', () => {
    const project = makeBigProject({ joints: 500, cases: 20 });
    expect(makeBigProject()).toEqual(project);
    expect(makeBigProject({ seed: 2 })).not.toEqual(project);
    const read = readProject(project);
    expect(read.ok && [read.value.joints.length, read.value.loadCases.length]).toEqual([500, 20]);
    expect(new Set(project.joints.map(({ type }) => type)).size).toBe(4);
  });

  // `npm test` builds first; a test run by hand does not judge what was built from other sources.
  describe.skipIf(!buildIsCurrent(root))('checked in worker threads', () => {
    it('is followed up to the last case, and answered as without them', async () => {
      const document = makeBigProject({ joints: 6, cases: 3 });
      await withCore(1, async ({ ask }) => {
        const ticks: [done: number, total: number][] = [];
        const reply = await ask(
          'project.check',
          { document, job: 'big' },
          { ...one, progress: (done, total) => ticks.push([done, total]) },
        );
        expect(reply).toEqual(await createAsk({ carrier })('project.check', { document }));
        const [done, total] = ticks.at(-1)!;
        expect(done).toBe(total);
        expect(new Set(ticks.map(([, all]) => all))).toEqual(new Set([total]));
        expect(ticks.length).toBeGreaterThan(2);
        expect(ticks.every(([done], i) => i === 0 || done >= ticks[i - 1]![0])).toBe(true);
      });
    });

    it('is the same when threads share it', async () => {
      const document = makeBigProject({ joints: 8, cases: 1 });
      await withCore(2, async ({ ask }) => {
        const alone: [done: number, total: number] = [0, 0];
        const last: [done: number, total: number] = [0, 0];
        const progress = (done: number, total: number): void => {
          last.splice(0, 2, done, total);
        };
        const reply = await ask('project.check', { document }, { ...one, progress });
        const plain = await createAsk({ carrier })(
          'project.check',
          { document },
          { progress: (done, total) => alone.splice(0, 2, done, total) },
        );
        expect(reply).toEqual(plain);
        expect(last).toEqual(alone);
        expect(last[0]).toBe(last[1]);
      });
    });

    it('is stopped in the middle, and the next one is answered', async () => {
      const document = makeBigProject({ joints: 100, cases: 20 });
      const short = makeBigProject({ joints: 1, cases: 1 });
      await withCore(1, async ({ ask }) => {
        const seen: Promise<unknown>[] = [];
        const progress = (done: number): void => {
          if (done < 1 || seen.length > 0) return;
          seen.push(
            ask('job.progress', { job: 'big' }, one),
            ask('job.stop', { job: 'big' }, { client: 'two' }),
            ask('job.stop', { job: 'big' }, one),
          );
        };
        const stopped = ask('project.check', { document, job: 'big' }, { ...one, progress });
        const next = ask('project.check', { document: short, job: 'next' }, { client: 'two' });
        expect(await stopped).toMatchObject({ ok: false, error: { code: 'stopped' } });
        expect(await Promise.all(seen)).toMatchObject([
          {
            ok: true,
            value: {
              state: 'running',
              total: expect.any(Number),
              what: expect.stringMatching(/^Joint/),
            },
          },
          { ok: true, value: { stopped: false } },
          { ok: true, value: { stopped: true } },
        ]);
        expect(await next).toMatchObject({ ok: true });
        expect(await ask('job.progress', { job: 'big' }, one)).toMatchObject({
          value: { state: 'unknown' },
        });
      });
    });
  });
});
