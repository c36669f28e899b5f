import { expect, it, vi } from 'vitest';
import { makeLatest } from '../../src/renderer/latest.ts';

/** A question whose answers come when the test says so. */
function makeRun() {
  const open: { input: number; answer: () => Promise<void> }[] = [];
  const run = vi.fn(
    (input: number) =>
      new Promise<string>((resolve) => {
        open.push({
          input,
          answer: async () => {
            resolve(`answer ${input}`);
            await Promise.resolve();
            await new Promise((done) => setTimeout(done));
          },
        });
      }),
  );
  return { run, open };
}

it('asks one at a time, and of those that wait only the latest', async () => {
  const { run, open } = makeRun();
  const delivered: string[] = [];
  const latest = makeLatest(run, (output) => delivered.push(output));
  latest.ask(1);
  latest.ask(2);
  latest.ask(3);
  expect(run.mock.calls).toEqual([[1]]);
  expect(latest.busy()).toBe(true);
  await open[0]?.answer();
  expect(run.mock.calls).toEqual([[1], [3]]);
  await open[1]?.answer();
  expect(delivered).toEqual(['answer 1', 'answer 3']);
  expect(latest.busy()).toBe(false);
});

it('shows what comes in between, so that a long drag is not blind', async () => {
  const { run, open } = makeRun();
  const delivered: string[] = [];
  const latest = makeLatest(run, (output) => delivered.push(output));
  for (let i = 0; i < 5; i += 1) {
    latest.ask(i);
    latest.ask(i + 0.5);
    await open.at(-1)?.answer();
  }
  expect(delivered).toHaveLength(5);
});

it('drops the answer in flight and what waits when the subject changes', async () => {
  const { run, open } = makeRun();
  const delivered: string[] = [];
  const latest = makeLatest(run, (output) => delivered.push(output));
  latest.ask(1);
  latest.ask(2);
  latest.drop();
  latest.ask(3);
  await open[0]?.answer();
  expect(run.mock.calls).toEqual([[1], [3]]);
  await open[1]?.answer();
  expect(delivered).toEqual(['answer 3']);
});

it('tells which question an answer belongs to', async () => {
  const { run, open } = makeRun();
  const deliver = vi.fn();
  makeLatest(run, deliver).ask(7);
  await open[0]?.answer();
  expect(deliver).toHaveBeenCalledExactlyOnceWith('answer 7', 7);
});
