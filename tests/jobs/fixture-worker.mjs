/**
 * A worker that does as it is told: `die`, `throw`, `hang`, `refuse`, tell of so many steps, of each as `found` where it is to, and then answer or
 * `hang after` them, or answer after so many milliseconds, and die as the `last` thing.
 */
import { setTimeout } from 'node:timers/promises';
import { parentPort, threadId } from 'node:worker_threads';

/** Questions that this thread was given. */
let nth = 0;
parentPort?.on('message', async ({ id, input: told, share }) => {
  nth += 1;
  const mine = nth;
  // Told to one share alone, the others just answer.
  const input = (told.part ?? share?.part) === share?.part ? told : { tell: 'nothing' };
  if (input.tell === 'die') process.exit(3);
  if (input.tell === 'throw') {
    queueMicrotask(() => {
      throw new Error('told to');
    });
    return;
  }
  if (input.tell === 'hang') for (;;);
  const { steps = 0, of = steps } = input;
  for (let done = 1; done <= steps; done++) {
    await setTimeout(input.pace ?? 0);
    parentPort?.postMessage({ id, tick: { done, total: of, what: `step ${done}` } });
    if (input.finds) parentPort?.postMessage({ id, found: `${input.finds} ${done}` });
  }
  if (input.tell === 'hang after') for (;;);
  await setTimeout(input.delay ?? 0);
  if (input.tell === 'refuse') {
    const error = { code: 'internal', field: '', message: `question ${mine}` };
    parentPort?.postMessage({ id, reply: { ok: false, error } });
    return;
  }
  const value = { threadId, asked: input.tell, share, nth: mine };
  parentPort?.postMessage({ id, reply: { ok: true, value } });
  if (input.last === 'die') setTimeout(20).then(() => process.exit(3));
});
