/** The demonstration with something on every page: frame sizes, a variant, coupons with results, lives. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../../src/launch/root.mjs';
import { makeLifeSet, planCoupons } from '../../../src/shared/coupon-plan.ts';
import type { Project } from '../../../src/shared/project.ts';
import { EIGHTEEN } from '../../support/coupons-published.ts';

/** Lives that fall as the load rises, the last of them a run-out. */
const lives = [
  [4200, 900],
  [4000, 2100],
  [3600, 11_000],
  [3300, 42_000],
  [3000, 210_000],
  [2800, 900_000],
] as const;

export function fullProject(): Project {
  const demo = JSON.parse(
    readFileSync(join(root, 'src/main/demo/curlew.lapwright.json'), 'utf8'),
  ) as Project;
  const adhesive = demo.adhesives[0]!.id;
  const metal = demo.adherends.find(({ kind }) => kind === 'isotropic')!.id;
  const { coupons } = planCoupons(demo, {
    adhesive,
    pieces: [{ kind: 'standard', id: 'd1002', adherend: metal }],
    environments: [{ temperature: 23, moisture: 'dry' }],
    gaps: [0.1, 0.2],
    planned: { batches: 3, each: 6 },
  });
  const results = EIGHTEEN.map((value, i) => ({
    coupon: String((i % 6) + 1),
    batch: 'ABC'[Math.floor(i / 6)]!,
    load: Math.round(30 * value),
  }));
  coupons.sets[0]!.results = results;
  coupons.sets[1]!.results = results.map((one) => ({ ...one, load: Math.round(0.9 * one.load) }));
  const life = makeLifeSet([], coupons.specimens[0]!, {
    adhesive,
    temperature: 23,
    moisture: 'dry',
    gap: 0.2,
    ratio: 0.1,
  });
  life.results = lives.map(([peak, cycles], i) => ({
    coupon: String(i + 1),
    batch: 'A',
    peak,
    cycles,
    runOut: i === lives.length - 1,
  }));
  const leg = demo.joints.find(({ id }) => id === 'landing-leg')!;
  return {
    ...demo,
    joints: demo.joints.map((joint) =>
      joint.id === 'landing-leg'
        ? { ...joint, sizes: [{ id: 'small', name: 'Small', loadFactor: 0.7 }] }
        : joint,
    ),
    variants: [
      {
        of: leg.id,
        joint: { ...leg, id: 'landing-leg-long', name: 'Landing leg, long', overlap: 30 },
      },
    ],
    coupons: { ...coupons, life: [life] },
  };
}

/** @returns the path of the file */
export function writeFullProject(): string {
  const folder = join(root, 'tests/artefacts');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'full.lapwright.json');
  writeFileSync(file, JSON.stringify(fullProject()));
  return file;
}
