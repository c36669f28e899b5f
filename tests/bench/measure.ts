/** Times of a task and how they grow, by tinybench. */
import { Bench } from 'tinybench';
import type { Task } from './core-tasks.ts';

export interface Measured {
  readonly name: string;
  readonly runs: number;
  /** Milliseconds. */
  readonly median: number;
  readonly p95: number;
  /** Bytes for each run; null where they were not counted. */
  readonly allocated: number | null;
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

/** Counted where the collector can be called, and did not come by itself meanwhile. */
async function allocatedBy(run: Task['run']): Promise<number | null> {
  if (!globalThis.gc) return null;
  globalThis.gc();
  const before = process.memoryUsage().heapUsed;
  await run();
  const more = process.memoryUsage().heapUsed - before;
  return more > 0 ? more : null;
}

/** Exponent b of time ≈ a·size^b, by least squares in logarithms. */
export function exponentOf(points: readonly (readonly [size: number, time: number])[]): number {
  const logs = points.map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const mean = (at: 0 | 1): number => logs.reduce((sum, one) => sum + one[at], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const up = logs.reduce((sum, one) => sum + (one[0] - x) * (one[1] - y), 0);
  return up / logs.reduce((sum, one) => sum + (one[0] - x) ** 2, 0);
}
