/** The files of the fuzzer: the demonstration, the example, older files and random projects, each changed. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { root } from '../../../src/launch/root.mjs';
import { fullProject } from '../../e2e/support/full-project.ts';
import { projects } from '../../support/random-projects.ts';
import { changeDocument } from './document.ts';
import { type Random, randomOf } from './random.ts';
import { bytesOf, textOf } from './text.ts';

const parse = (...place: string[]): object =>
  JSON.parse(readFileSync(join(root, ...place), 'utf8'));

const older = join('tests', 'project', 'older');
const whole: readonly object[] = [
  parse('src/main/demo/curlew.lapwright.json'),
  parse('docs/example.lapwright.json'),
  ...readdirSync(join(root, older)).map((name) => parse(older, name)),
  fullProject(),
];

type Joints = {
  readonly joints: readonly { readonly id: string }[];
  readonly gapChecks?: unknown;
  readonly variants?: unknown;
};

/** With one of its joints: as much to get wrong, and quicker to read. */
function smaller(project: object, which: number): object {
  const { joints, gapChecks: _checks, variants: _variants, ...rest } = project as Joints;
  return { ...rest, joints: [joints[which % joints.length]!] };
}

const small = whole.flatMap((project) => [0, 1, 2, 3].map((which) => smaller(project, which)));
const random = fc.sample(projects, { numRuns: 30, seed: 20261125 });

function seedOf(random_: Random): object {
  if (random_.chance(0.1)) return random_.pick(whole);
  return random_.pick(random_.chance(0.5) ? small : random);
}

export function fuzzed(seed: number, number: number): Buffer {
  const random_ = randomOf(seed, number);
  const document = structuredClone(seedOf(random_));
  if (random_.chance(0.8)) changeDocument(document, random_);
  return bytesOf(textOf(document, random_), random_);
}
