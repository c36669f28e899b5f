/** Entry of the worker thread: the same core as the main thread, answering one job after another. */
import { parentPort, workerData } from 'node:worker_threads';
import { createAsk } from '../ask.ts';
import type { JobAnswer, JobMessage } from './job-line.ts';

const port = parentPort;
if (!port) throw new Error('This file is the worker of Lapwright and runs only as one.');

const ask = createAsk({ carrier: workerData.carrier });
port.on('message', async ({ id, name, input }: JobMessage) => {
  port.postMessage({ id, reply: await ask(name, input) } satisfies JobAnswer);
});
