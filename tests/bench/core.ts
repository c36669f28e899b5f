/** The core's part of the benchmark, in one process: prints one line of JSON. */
import { parseArgs } from 'node:util';
import {
  analyses,
  exponentials,
  growths,
  oneBond,
  plastic,
  requests,
  STATIONS,
  scatter,
  shearAlong,
  strengths,
} from './core-tasks.ts';
import { exponentOf, type Measured, measure } from './measure.ts';

export interface CoreFigures {
  readonly tasks: readonly Measured[];
  readonly growths: readonly {
    readonly name: string;
    readonly points: readonly (readonly [size: number, median: number])[];
    readonly exponent: number;
  }[];
  /** What scipy is given, and what came out here, for comparison. */
  readonly oneBond: typeof oneBond & { readonly stations: number; readonly shear: number[] };
}

const { values } = parseArgs({ options: { samples: { type: 'string', default: '100000' } } });

const tasks: Measured[] = [];
for (const task of [...analyses, plastic, exponentials, strengths, ...requests])
  tasks.push(await measure(task));
const samples = Number(values.samples);
if (samples > 0) tasks.push(await measure(scatter(samples), 1));

const grown: CoreFigures['growths'][number][] = [];
for (const { name, sizes, task } of growths) {
  const points: (readonly [number, number])[] = [];
  for (const size of sizes) {
    const { median } = await measure({ name: `${size} ${name}`, run: task(size) }, 300);
    points.push([size, median]);
  }
  grown.push({ name, points, exponent: exponentOf(points) });
}
const figures: CoreFigures = {
  tasks,
  growths: grown,
  oneBond: { ...oneBond, stations: STATIONS, shear: shearAlong() },
};
process.stdout.write(`${JSON.stringify(figures)}\n`);
