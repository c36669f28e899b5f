/** Coupons under cycles through the door: the fit of the reference, its bound used by a joint like the coupons. */
import { describe, expect, it } from 'vitest';
import { couponsReport } from '../../src/main/handlers/coupons/report.ts';
import type { Joint, Project } from '../../src/shared/project.ts';
import type { LifeSet } from '../../src/shared/project-coupons.ts';
import type { JointReport } from '../../src/shared/reports.ts';
import type { CouponsReport } from '../../src/shared/reports-coupons.ts';
import { standardSpecimen, standardSpecimens } from '../../src/shared/standard-specimens.ts';
import { expectClose } from '../support/close.ts';
import { lifeFixture } from '../support/coupons.ts';
import { curlew, value } from './asking.ts';

const specimen = standardSpecimen(
  standardSpecimens.find(({ id }) => id === 'd3528')!,
  'titanium-printed',
);
const [whole] = lifeFixture().cases;

async function report(results: LifeSet['results'], change: Partial<LifeSet> = {}) {
  const base = await curlew();
  // Tested where the bond is free of thermal stress: the shear goes straight with the load.
  const { stressFreeTemperature } = base.adhesives[0]!;
  const set: LifeSet = {
    id: 'life',
    name: 'Life',
    specimen: 'd3528',
    adhesive: 'toughened-paste',
    temperature: stressFreeTemperature,
    moisture: 'dry',
    gap: 0.2,
    ratio: 0.1,
    results,
    ...change,
  };
  const document: Project = { ...base, coupons: { specimens: [specimen], sets: [], life: [set] } };
  const { life } = await value<CouponsReport>('project.coupons', { document });
  return { document, life: life[0]!, stressFreeTemperature };
}
/** Loads of the reference's stresses, over one that is low enough to stay elastic. */
const SCALE = 300;
const results = (): LifeSet['results'] =>
  whole!.results.map(({ stress, cycles, runOut }, i) => ({
    coupon: String(i),
    batch: 'a',
    peak: stress * SCALE,
    cycles,
    runOut,
  }));

describe('lives of coupons', () => {
  it('have the line and the scatter of the reference, whatever the stress is measured in', async () => {
    const { life } = await report(results());
    expect(life.why).toBe('');
    expectClose(-1 / life.fit!.median!.exponent, whole!.slope, { relative: 1e-6 }, 'slope');
    expectClose(life.fit!.deviation, whole!.deviation, { relative: 1e-6 }, 'scatter');
    const [first] = life.lines;
    const last = life.lines.at(-1)!;
    expectClose(first!.share! / last.share!, first!.peak / last.peak, { relative: 1e-9 }, 'shares');
    expect(life.fit!.shares).toEqual([last.share, first!.share]);
    expect([life.fit!.failures, life.fit!.runOuts]).toEqual([12, 0]);
  });

  it('have a bound that the line offered nowhere passes among the stresses tested', async () => {
    const { life } = await report(results());
    const { bound, curve } = life.fit!;
    const lives = curve.map(({ share }) => (share / bound!.coefficient) ** (-1 / bound!.exponent));
    curve.forEach(({ bound: allowed, median }, i) => {
      expect(lives[i]!).toBeLessThanOrEqual(allowed * (1 + 1e-9));
      expect(allowed).toBeLessThan(median);
    });
    expect(curve.some(({ bound: allowed }, i) => lives[i]! > allowed * (1 - 1e-9))).toBe(true);
  });

  it('give a joint like them no margin at the life and load of that line', async () => {
    const { document, life, stressFreeTemperature } = await report(results());
    const { bound } = life.fit!;
    const [first] = life.lines;
    const cycles = 1e6;
    const share = bound!.coefficient * cycles ** -bound!.exponent;
    const joint = {
      ...specimen.shape,
      id: 'like',
      name: 'Like the coupons',
      adhesive: 'toughened-paste',
      loads: [{ case: 'hum', force: (first!.peak * share) / first!.share! }],
    } as unknown as Joint;
    const { coupons: _, ...rest } = document;
    const analysed = await value<JointReport>('joint.analyse', {
      jointId: 'like',
      focus: {},
      document: {
        ...rest,
        settings: { ...rest.settings, factors: { limit: 1, ultimate: 1, fitting: 1 } },
        adhesives: rest.adhesives.map(({ knockdowns: _k, ...one }) => ({
          ...one,
          fatigue: { ...bound!, source: { kind: 'tested', text: 'coupons' } },
        })),
        loadCases: [
          {
            id: 'hum',
            name: 'hum',
            kind: 'cyclic',
            cycles,
            temperature: stressFreeTemperature,
            moisture: 'dry',
          },
        ],
        joints: [joint],
      },
    });
    const margin = analysed.margins.find(({ mode }) => mode === 'cyclic-shear')!;
    expectClose(margin.margin, 0, { absolute: 1e-5 }, 'margin');
  });

  it('are carried over to another ratio as the margins carry them, worked by hand', async () => {
    const { life } = await report(results());
    // From 0.1 to −1 and to 0 the amplitude stays: (1 − 0.1)/(1 + 1) and (1 − 0.1)/1.
    expect(life.goodman.map(({ ratio }) => ratio)).toEqual([-1, 0]);
    expectClose(life.goodman[0]!.factor, 0.45, { relative: 1e-12 }, 'reversed');
    expectClose(life.goodman[1]!.factor, 0.9, { relative: 1e-12 }, 'released');
  });

  it('are told as they are worked out, one step for each set', async () => {
    const { document } = await report(results());
    const [set] = document.coupons!.life!;
    const steps: (readonly [number, number, string])[] = [];
    const two = [set!, { ...set!, id: 'second', name: 'Second' }];
    const reply = couponsReport(
      { ...document, coupons: { ...document.coupons!, life: two } },
      undefined,
      { progress: (done, total, what = '') => steps.push([done, total, what]) },
    );
    expect(reply.ok && reply.value.life.map(({ setId }) => setId)).toEqual(['life', 'second']);
    expect(steps).toEqual([
      [1, 2, 'Life'],
      [2, 2, 'Second'],
    ]);
  });

  it('that are too few are told', async () => {
    const { life } = await report(results().slice(0, 2));
    expect(life.fit).toBeNull();
    expect(life.why).toMatch(/fail/);
    expect((await report([])).life.why).toBe('There are no results yet.');
  });
});
