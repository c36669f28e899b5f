/** Times of a task and how they grow, by tinybench. */
import { Session } from 'node:inspector/promises';
import { Bench } from 'tinybench';
import type { Task } from './core-tasks.ts';

export interface Measured {
  readonly name: string;
  readonly runs: number;
  /** Milliseconds. */
  readonly median: number;
  readonly p95: number;
  /** Bytes of objects for each run, dead or alive; memory of typed arrays outside the heap is not among them. */
  readonly allocated: number;
}

/** How long a task is measured at least, ms, and how often. */
const TIME = 1500;
const RUNS = 5;

export async function measure({ name, run }: Task, time = TIME): Promise<Measured> {
  const bench = new Bench({
    time,
    iterations: RUNS,
    retainSamples: true,
    warmupTime: time / 3,
    warmupIterations: 1,
  });
  bench.add(name, async () => {
    await run();
  });
  const [task] = await bench.run();
  const { result } = task!;
  if (result.state !== 'completed') throw new Error(`${name}: ${JSON.stringify(result)}`);
  const { samplesCount, p50, samples = [] } = result.latency;
  const p95 = samples[Math.floor(0.95 * (samples.length - 1))] ?? p50;
  return { name, runs: samplesCount, median: p50, p95, allocated: await allocatedBy(run) };
}

/** Bytes between two samples of what is allocated, and milliseconds that are sampled at least. */
const EVERY = 8192;
const SAMPLED = 300;

interface ProfileNode {
  readonly selfSize: number;
  readonly children: readonly ProfileNode[];
}
const sizeOf = (node: ProfileNode): number =>
  node.children.reduce((sum, child) => sum + sizeOf(child), node.selfSize);

/** Estimated by the engine's own samples, with what the collector has taken meanwhile. */
async function allocatedBy(run: Task['run']): Promise<number> {
  const session = new Session();
  session.connect();
  await session.post('HeapProfiler.startSampling', {
    samplingInterval: EVERY,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  } as object);
  let runs = 0;
  for (const start = performance.now(); runs === 0 || performance.now() - start < SAMPLED; runs++) {
    await run();
  }
  const { profile } = await session.post('HeapProfiler.stopSampling');
  session.disconnect();
  return sizeOf(profile.head as ProfileNode) / runs;
}

/** Exponent b of time ≈ a·size^b, by least squares in logarithms. */
export function exponentOf(points: readonly (readonly [size: number, time: number])[]): number {
  const logs = points.map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const mean = (at: 0 | 1): number => logs.reduce((sum, one) => sum + one[at], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const up = logs.reduce((sum, one) => sum + (one[0] - x) * (one[1] - y), 0);
  return up / logs.reduce((sum, one) => sum + (one[0] - x) ** 2, 0);
}
