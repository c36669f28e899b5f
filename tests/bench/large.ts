/** 500 joints under 20 load cases on all cores, in the threads of the built program: prints one line of JSON. */
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { makeBigProject } from '../../reference/big-project/make.mjs';
import { createAskWithJobs } from '../../src/main/jobs/ask-with-jobs.ts';
import type { CornersReport } from '../../src/shared/reports-corners.ts';

const [joints, cases] = [Number(process.argv[2] ?? 500), 20];
const threads = availableParallelism();
const worker = join(process.cwd(), 'out', 'main', 'worker.js');
const core = createAskWithJobs({ carrier: 'terminal', worker, threads });
const document = makeBigProject({ joints, cases });
const start = performance.now();
const reply = await core.ask(
  'project.corners',
  { document, job: 'bench' },
  {
    client: 'bench',
    progress: (done, total) => process.stderr.write(`\r${Math.round((100 * done) / total)} % `),
  },
);
const time = performance.now() - start;
process.stderr.write('\n');
core.close();
if (!reply.ok) throw new Error(reply.error.message);
const { states } = reply.value as CornersReport;
process.stdout.write(`${JSON.stringify({ joints, cases, states, threads, time })}\n`);
