/** Gaps and uncertainties of measured parts against brute force and another library's sampler. */
import { describe, expect, it } from 'vitest';
import { gapScatter } from '../../src/model/gap/gap-scatter.ts';
import { measureGap } from '../../src/model/gap/measure-gap.ts';
import { expectClose } from '../support/close.ts';
import { measuredCases, measuredJoint } from '../support/measured-fixture.ts';

const cases = measuredCases();

// The reference tries places and directions one by one: it finds extremes to about 2e-5 mm.
const near = { absolute: 3e-5 };
// Off axis each radius is taken at its own angle: of an oval of 0.03 mm moved by 0.2 mm in a radius of
// 20 mm that leaves up to 2 · 0.03 · 0.2 / 20 = 6e-4 mm.
const ovalOffAxis = { absolute: 6e-4 };

describe.each(cases.map((one) => [one.name, one] as const))('%s', (_, one) => {
  const gaps = measureGap(measuredJoint(one));
  const scatter = gapScatter(measuredJoint(one), { samples: 1500, seed: 3 });

  it('has the gaps of polygons moved and met by brute force', () => {
    expect(gaps.length).toBe(one.found.length);
    one.found.forEach(({ cmin, cmax, mean, hmin, hmax }, b) => {
      const { centred, held } = gaps[b]!;
      expectClose(centred.min.value, cmin, near, 'thinnest, centred');
      expectClose(centred.max.value, cmax, near, 'thickest, centred');
      expectClose(centred.mean.value, mean, near, 'mean');
      expectClose(held.min.value, hmin, ovalOffAxis, 'thinnest, as held');
      expectClose(held.max.value, hmax, ovalOffAxis, 'thickest, as held');
    });
  });

  it('is as uncertain as the samples of another library scatter', () => {
    one.deviation.forEach(({ cmin, cmax, mean }, b) => {
      const { centred } = gaps[b]!;
      // A mean is a sum: it must agree within the 3 % that 4000 samples leave. The extreme of several
      // places scatters a little less than any one of them, so that the law's figure is on the safe side.
      expectClose(centred.mean.standard, mean, { relative: 0.04 }, 'mean');
      for (const [law, sampled] of [
        [centred.min.standard, cmin],
        [centred.max.standard, cmax],
      ] as const) {
        expect(law).toBeGreaterThan(0.96 * sampled);
        expect(law).toBeLessThan(1.25 * sampled);
      }
    });
  });

  it('scatters alike in our own Monte Carlo', () => {
    one.deviation.forEach(({ cmin, mean }, b) => {
      expectClose(scatter[b]!.mean.deviation, mean, { relative: 0.06 }, 'mean');
      expectClose(scatter[b]!.centredMin.deviation, cmin, { relative: 0.06 }, 'thinnest');
      const { held } = gaps[b]!;
      expect(scatter[b]!.max.deviation).toBeLessThan(1.06 * held.max.standard);
      expect(scatter[b]!.max.deviation).toBeGreaterThan(0.75 * held.max.standard);
      const width = scatter[b]!.mean.high - scatter[b]!.mean.low;
      expectClose(width, 4 * held.mean.standard, { relative: 0.1 }, '95 % of the mean');
    });
  });
});

it('draws the same samples for the same seed', () => {
  const model = measuredJoint(cases[0]!);
  const once = gapScatter(model, { samples: 50, seed: 7 });
  expect(gapScatter(model, { samples: 50, seed: 7 })).toEqual(once);
  expect(gapScatter(model, { samples: 50, seed: 8 })).not.toEqual(once);
});
