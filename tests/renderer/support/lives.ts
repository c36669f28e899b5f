/** A project with coupons under cycles: the reference's first sample that has run-outs. */
import { makeLifeSet, planCoupons } from '../../../src/shared/coupon-plan.ts';
import type { Project } from '../../../src/shared/project.ts';
import type { LifeResult } from '../../../src/shared/project-coupons.ts';
import { lifeFixture } from '../../support/coupons.ts';
import { makeProject } from './project.ts';

/** Newtons of load for each MPa of the reference: low enough to stay elastic. */
const NEWTONS = 200;

export const someLives = (): LifeResult[] =>
  lifeFixture()
    .cases.find(({ results }) => results.some(({ runOut }) => runOut))!
    .results.map(({ stress, cycles, runOut }, i) => ({
      coupon: String(i + 1),
      batch: 'A',
      peak: Number((stress * NEWTONS).toFixed(3)),
      cycles,
      runOut,
    }));

/** @param lists results of each set of lives; no static set among them */
export function withLives(...lists: readonly LifeResult[][]): Project {
  const { coupons } = planCoupons(makeProject(), {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd3528', adherend: 'titanium' }],
    environments: [{ temperature: 60, moisture: 'dry' }],
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  const life = (lists.length > 0 ? lists : [someLives()]).map((results, i) => ({
    ...makeLifeSet([], coupons.specimens[0]!, {
      adhesive: 'paste',
      temperature: 60,
      moisture: 'dry',
      gap: 0.2,
      ratio: [0.1, -1][i]!,
    }),
    results,
  }));
  return makeProject({ coupons: { specimens: coupons.specimens, sets: [], life } });
}
