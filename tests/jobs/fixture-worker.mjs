/** A worker that does as it is told: `die`, `throw`, `hang`, or answer after so many milliseconds. */
import { setTimeout } from 'node:timers/promises';
import { parentPort, threadId } from 'node:worker_threads';

parentPort?.on('message', async ({ id, input }) => {
  if (input.tell === 'die') process.exit(3);
  if (input.tell === 'throw') {
    queueMicrotask(() => {
      throw new Error('told to');
    });
    return;
  }
  if (input.tell === 'hang') for (;;);
  await setTimeout(input.delay ?? 0);
  parentPort?.postMessage({ id, reply: { ok: true, value: { threadId, asked: input.tell } } });
});
