/** Entry of the worker thread: the same core as the main thread, answering one job after another. */
import { parentPort, workerData } from 'node:worker_threads';
import { createAsk } from '../ask.ts';
import type { JobMessage, JobNews } from './crew.ts';
import { makeTeller, type TellFound } from './progress.ts';

const port = parentPort;
if (!port) throw new Error('This file is the worker of Lapwright and runs only as one.');
const post = (news: JobNews): void => port.postMessage(news);

const ask = createAsk({ carrier: workerData.carrier });
port.on('message', async ({ id, name, input, share }: JobMessage) => {
  const teller = makeTeller((tick) => post({ id, tick }));
  const found: TellFound = (joint) => post({ id, found: joint });
  const reply = await ask(name, input, { progress: teller.tell, found, share });
  teller.flush();
  post({ id, reply });
});
