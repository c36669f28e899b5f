import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { JobProgress } from '../../src/renderer/parts/JobProgress.tsx';
import { createJob, type Job } from '../../src/renderer/state/job.ts';
import type { Bridge } from '../../src/shared/contract.ts';
import { ok, type Reply, refuse } from '../../src/shared/reply.ts';
import type { JobProgress as Progress } from '../../src/shared/reports.ts';

/** A host whose long requests are answered when the test says so. */
function makeHost() {
  const open = new Map<string, (reply: Reply<never>) => void>();
  const asked: [name: string, job: string | undefined][] = [];
  const froms: number[] = [];
  const host = {
    asked,
    /** From where it was asked what is found. */
    froms,
    found: [] as unknown[],
    seen: { state: 'running', done: 0, total: 0, what: '', elapsed: 0, left: null } as Progress,
    /** Set to false: a stop comes before the request it is about. */
    stops: true,
    count: (name: string) => asked.filter(([one]) => one === name).length,
    async answer(job: string, reply: Reply<unknown>): Promise<void> {
      open.get(job)?.(reply as Reply<never>);
      open.delete(job);
      await vi.advanceTimersByTimeAsync(0);
    },
    bridge: {
      carrier: 'loopback',
      ask: (name: string, { job = '', from = 0 }: { job?: string; from?: number }) => {
        asked.push([name, job]);
        if (name === 'job.progress') return Promise.resolve(ok(host.seen));
        if (name === 'job.found') {
          froms.push(from);
          return Promise.resolve(ok({ joints: host.found.slice(from) }));
        }
        if (name === 'job.stop') {
          const stopped = host.stops && open.has(job);
          if (stopped) void host.answer(job, refuse('stopped', '', 'Stopped.'));
          return Promise.resolve(ok({ stopped }));
        }
        return new Promise((resolve) => open.set(job, resolve));
      },
    } as unknown as Bridge,
  };
  return host;
}

const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);
const question = { document: {}, jointId: 'boom-tip' };

let host: ReturnType<typeof makeHost>;
beforeEach(() => {
  vi.useFakeTimers();
  host = makeHost();
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

describe('a job', () => {
  const start = () => createRoot((dispose) => ({ job: createJob(host.bridge), dispose }));
  const idOf = (place: number): string => host.asked[place]![1]!;

  it('tells what is found before the answer, each once, until it has come', async () => {
    const { job } = start();
    const told: unknown[] = [];
    const reply = job.run('project.check', { document: {} }, (joints) => told.push(...joints));
    await pass(200);
    expect(told).toEqual([]);
    host.found.push('root');
    await pass(60);
    expect(told).toEqual(['root']);
    host.found.push('tip', 'lug');
    await pass(260);
    expect(told).toEqual(['root', 'tip', 'lug']);
    // Looked for often until there is something, and then as often as how far it is.
    const looks = host.froms.length;
    await pass(1000);
    expect(host.froms.length - looks).toBeLessThanOrEqual(5);
    expect(host.froms.at(-1)).toBe(3);
    await host.answer(idOf(0), ok('all'));
    await reply;
    host.found.push('late');
    const asked = host.asked.length;
    await pass(1000);
    expect(host.asked.length).toBe(asked);
    expect(told).toHaveLength(3);
  });

  it('tells nothing of what was found when it is stopped, and asks for nothing that nobody wants', async () => {
    const { job } = start();
    host.stops = false;
    const told = vi.fn();
    void job.run('project.check', { document: {} }, told);
    job.stop();
    host.found.push('root');
    await pass(1000);
    expect(told).not.toHaveBeenCalled();
    void job.run('joint.sweep', question);
    const looks = host.froms.length;
    await pass(1000);
    expect(host.froms.length).toBe(looks);
  });

  it('asks with an id of its own and gives back the answer', async () => {
    const { job } = start();
    const first = job.run('joint.sweep', question);
    expect(job.running()).toBe(true);
    expect(idOf(0)).toMatch(/^.{1,64}$/);
    await host.answer(idOf(0), ok('first'));
    expect(await first).toEqual(ok('first'));
    expect(job.running()).toBe(false);
    void job.run('joint.sweep', question);
    expect(idOf(1)).not.toBe(idOf(0));
  });

  it('looks how far it is, four times a second while it runs and not after', async () => {
    const { job } = start();
    void job.run('joint.sweep', question);
    host.seen = { ...host.seen, done: 1, total: 4 };
    await pass(249);
    expect(host.count('job.progress')).toBe(0);
    expect(job.progress()).toBeNull();
    await pass(1);
    expect(job.progress()).toMatchObject({ done: 1, total: 4 });
    await pass(750);
    expect(host.count('job.progress')).toBe(4);
    await host.answer(idOf(0), ok(0));
    expect(job.progress()).toBeNull();
    await pass(5000);
    expect(host.count('job.progress')).toBe(4);
  });

  it('keeps what it has seen when the host knows no more', async () => {
    const { job } = start();
    void job.run('joint.sweep', question);
    host.seen = { ...host.seen, done: 3, total: 4 };
    await pass(250);
    host.seen = { ...host.seen, state: 'unknown', done: 0, total: 0 };
    await pass(250);
    expect(job.progress()).toMatchObject({ done: 3 });
  });

  it('stops at once, and the reply says so', async () => {
    const { job } = start();
    const reply = job.run('joint.sweep', question);
    job.stop();
    expect(job.stopping()).toBe(true);
    expect(await reply).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect([job.running(), job.stopping()]).toEqual([false, false]);
    job.stop();
    expect(host.count('job.stop')).toBe(1);
  });

  it('says it again when the stop came before the request', async () => {
    const { job } = start();
    host.stops = false;
    const reply = job.run('joint.sweep', question);
    job.stop();
    job.stop();
    await pass(0);
    expect(host.count('job.stop')).toBe(1);
    expect(job.running()).toBe(true);
    host.stops = true;
    await pass(250);
    expect(await reply).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(host.count('job.stop')).toBe(2);
  });

  it('stops the older question when it is asked a newer one', async () => {
    const { job } = start();
    const older = job.run('project.check', { document: {} });
    const newer = job.run('joint.sweep', question);
    expect(await older).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(job.running()).toBe(true);
    const [, id] = host.asked.find(([name]) => name === 'joint.sweep')!;
    await host.answer(id!, ok('newer'));
    expect(await newer).toEqual(ok('newer'));
    expect(job.running()).toBe(false);
  });

  it('stops when nobody looks any more', async () => {
    const { job, dispose } = start();
    const reply = job.run('joint.sweep', question);
    dispose();
    expect(await reply).toMatchObject({ ok: false, error: { code: 'stopped' } });
    await pass(5000);
    expect(host.asked).toHaveLength(2);
  });
});

describe('its progress on the page', () => {
  function show(): Job {
    let job!: Job;
    render(() => {
      job = createJob(host.bridge);
      return <JobProgress job={job} label="Overlap sweep" />;
    });
    return job;
  }
  const bar = () => screen.getByRole<HTMLProgressElement>('progressbar', { name: 'Overlap sweep' });
  const words = () => bar().getAttribute('aria-valuetext');

  it('is there only while the job runs', async () => {
    const job = show();
    expect(screen.queryByRole('progressbar')).toBeNull();
    void job.run('joint.sweep', question);
    expect(bar().hasAttribute('value')).toBe(false);
    expect(words()).toBe('starting');
    await host.answer(host.asked[0]![1]!, ok(0));
    expect(screen.queryByRole('progressbar')).toBeNull();
  });

  it('shows the share, what is being done and the time left', async () => {
    const job = show();
    void job.run('joint.sweep', question);
    host.seen = { ...host.seen, done: 21, total: 50, what: 'overlap 34 mm', left: 21 };
    await pass(250);
    expect(words()).toBe('42 %, overlap 34 mm, about 20 s left');
    expect([bar().value, bar().max]).toEqual([42, 100]);
    for (const text of ['42 %', 'overlap 34 mm', 'about 20 s left']) {
      expect(screen.getByText(text)).toBeTruthy();
    }
    host.seen = { ...host.seen, done: 50, left: 0 };
    await pass(250);
    expect(bar().value).toBe(100);
  });

  it('says that it waits', async () => {
    const job = show();
    void job.run('joint.sweep', question);
    host.seen = { ...host.seen, state: 'waiting' };
    await pass(250);
    expect(words()).toBe('waits for another calculation');
    expect(bar().hasAttribute('value')).toBe(false);
  });

  it('has a button that stops it, once', async () => {
    const job = show();
    host.stops = false;
    const reply = job.run('joint.sweep', question);
    const stop = screen.getByRole<HTMLButtonElement>('button', { name: 'Stop: Overlap sweep' });
    expect(stop.textContent).toBe('Stop');
    fireEvent.click(stop);
    expect(stop.disabled).toBe(true);
    expect(words()).toBe('stopping');
    host.stops = true;
    await pass(250);
    expect(await reply).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(screen.queryByRole('progressbar')).toBeNull();
  });
});
