/** The gap between measured parts: two circles by hand, brute force, another library's sampler. */
import { angleOf, gapOffAxis, offsetToContact } from '../../../src/model/gap/circles.ts';
import { measureGap } from '../../../src/model/gap/measure-gap.ts';
import { measuredCases, measuredJoint } from '../../support/measured-fixture.ts';
import { type Case, group, lazy, type Topic } from '../case.ts';

const at = (degrees: number): number =>
  gapOffAxis(20.2, 20, 0.13, angleOf((degrees * Math.PI) / 180));

const circles: Case = {
  id: 'gap-circles',
  title: 'Two circles off one axis',
  source:
    'plane geometry, worked by hand: where a ray from the inner centre meets the outer circle',
  tag: 'independent',
  inputs: ['radii 20.2 and 20 mm, centres 0.13 mm apart'],
  checks: [
    group({
      name: 'gap around',
      compare: () => [
        { what: 'toward the offset: R − e − r', expected: 0.07, computed: at(0) },
        { what: 'away from it: R + e − r', expected: 0.33, computed: at(180) },
        {
          what: 'across: √(R² − e²) − r',
          expected: Math.sqrt(20.2 ** 2 - 0.13 ** 2) - 20,
          computed: at(90),
        },
        {
          what: 'at 60°: the root of ρ² + 0.13ρ + 0.0169 = 408.04',
          expected: Math.sqrt(408.027325) - 0.065 - 20,
          computed: at(60),
        },
        {
          what: 'offset at which they touch',
          expected: 0.2,
          computed: offsetToContact(20.2, 20, 0, angleOf(0)),
        },
      ],
      tolerance: 1e-12,
      scale: 'of the value',
      why: 'differences of radii leave twelve digits',
    }),
  ],
};

const fixture = lazy(() =>
  measuredCases().map((one) => ({ one, gaps: measureGap(measuredJoint(one)) })),
);

const bonds = () =>
  fixture().flatMap(({ one, gaps }) =>
    gaps.map((gap, b) => ({
      what: `${one.name}, bond ${b + 1}`,
      gap,
      found: one.found[b]!,
      deviation: one.deviation[b]!,
    })),
  );

const parts: Case = {
  id: 'gap-parts',
  title: 'Oval and tapered parts, on one axis and as held',
  source:
    'reference/measured_gap.py: the outer surface as a polygon of 1440 sides, moved step by step in 360 directions; uncertainties by numpy’s sampler, 4000 times',
  tag: 'independent',
  inputs: [
    'an oval tube in a tapered, oval socket, on spacers of 0.1 mm',
    'an oval tube between spigot and socket, in a jig of 0.06 mm',
  ],
  remarks: [
    'Standard deviations of extremes lie a little below the law of propagation: the extreme of several places scatters less than each of them.',
  ],
  checks: [
    group({
      name: 'thinnest, mean and thickest on one axis',
      compare: () =>
        bonds().flatMap(({ what, gap: { centred }, found }) => [
          { what: `${what}, thinnest`, expected: found.cmin, computed: centred.min.value },
          { what: `${what}, mean`, expected: found.mean, computed: centred.mean.value },
          { what: `${what}, thickest`, expected: found.cmax, computed: centred.max.value },
        ]),
      tolerance: 1e-4,
      scale: 'of the value',
      why: 'the script looks at places one by one, to about 1e-5 mm',
    }),
    group({
      name: 'thinnest and thickest as held',
      compare: () =>
        bonds().flatMap(({ what, gap: { held }, found }) => [
          { what: `${what}, thinnest`, expected: found.hmin, computed: held.min.value },
          { what: `${what}, thickest`, expected: found.hmax, computed: held.max.value },
        ]),
      tolerance: 1e-3,
      scale: 'of the value',
      why: 'each radius is taken at its own angle: of these ovals that leaves up to 6e-4 mm',
    }),
    group({
      name: 'standard uncertainty of the mean',
      compare: () =>
        bonds().map(({ what, gap, deviation }) => ({
          what,
          expected: deviation.mean,
          computed: gap.centred.mean.standard,
        })),
      tolerance: 0.04,
      scale: 'of the value',
      why: '4000 samples leave 1.1 % of a standard deviation; taken four times',
    }),
  ],
};

export const measuredGaps: Topic = {
  title: 'Gap between measured parts',
  intro:
    'Measured diameters, the gap between them and its uncertainty, against geometry worked by hand and against brute force.',
  cases: [circles, parts],
};
