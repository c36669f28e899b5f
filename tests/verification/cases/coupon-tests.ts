/** Tests of coupons and lines of life: printed examples and scipy. */
import { levene } from '../../../src/model/coupons/anova.ts';
import { weibullFactor } from '../../../src/model/coupons/basis.ts';
import { fitFamily } from '../../../src/model/coupons/distributions.ts';
import { kSample, kSampleStatistic } from '../../../src/model/coupons/k-sample.ts';
import { fitLifeLine, lifeAt } from '../../../src/model/coupons/life-line.ts';
import { criticalResidual, findOutliers } from '../../../src/model/coupons/outliers.ts';
import { couponsFixture, lifeFixture } from '../../support/coupons.ts';
import {
  ETW2,
  LABORATORIES,
  LEVENE,
  MNR_SAMPLES,
  MNR_TABLE,
} from '../../support/coupons-published.ts';
import { type Case, group, lazy, printed, value } from '../case.ts';

const fixture = lazy(couponsFixture);
const lives = lazy(lifeFixture);
const HANDBOOK = 'CMH-17-1G (SAE, March 2012), Vol. 1 chapter 8';

const residual = (i: number): number => findOutliers(MNR_SAMPLES[i]!.batch)[0]!.residual;

export const couponTests: Case = {
  id: 'coupons-tests',
  title: 'Tests of outliers, batches and fits',
  source: `F. W. Scholz, M. A. Stephens, JASA 82 (1987) 918; ${HANDBOOK}; scipy.stats (reference/coupons.py)`,
  tag: 'second-hand',
  inputs: [
    'four laboratories of eight results; batches of the handbook; forty samples at random, ten of them with ties',
  ],
  checks: [
    printed('k-sample statistic, right', '', '8.3559', () =>
      kSampleStatistic(LABORATORIES, 'right'),
    ),
    printed('k-sample statistic, midrank', '', '8.3926', () => kSampleStatistic(LABORATORIES)),
    printed('largest residual, first batch', '', '2.008', () => residual(0)),
    printed('largest residual, second batch', '', '2.119', () => residual(1)),
    group({
      name: 'critical residuals, 3 to 30 results',
      compare: () =>
        MNR_TABLE.map(([n, critical]) => ({
          what: `${n} results`,
          expected: critical,
          computed: criticalResidual(n),
          scale: 1,
        })),
      tolerance: 5e-4,
      scale: 'as it stands',
      why: 'half of the last printed digit',
    }),
    value({
      name: 'Levene’s F, three batches',
      unit: '',
      expected: 3.85,
      printed: '3.850',
      computed: () => levene(LEVENE)!.statistic,
      tolerance: { absolute: 2.5e-3 },
      why: 'the printed data are rounded',
    }),
    printed('Levene’s F, the hot and wet batches', '', '0.123', () => levene(ETW2)!.statistic),
    group({
      name: 'k-sample statistic of scipy',
      compare: () =>
        fixture().samples.map(({ batches, kSample: theirs }, i) => {
          const { statistic, deviation } = kSample(batches);
          return {
            what: `sample ${i + 1}`,
            expected: theirs.normalised,
            computed: (statistic - 1) / deviation,
            scale: 1,
          };
        }),
      tolerance: 1e-10,
      scale: 'as it stands',
      why: 'rounding only, in sums over the sample',
    }),
    group({
      name: 'AD of scipy’s normal fit',
      compare: () =>
        fixture().samples.flatMap(({ batches, fits }, i) =>
          fits
            ? [
                {
                  what: `sample ${i + 1}`,
                  expected: fits.normal.statistic,
                  computed: fitFamily(batches.flat(), 'normal').statistic,
                  scale: 1,
                },
              ]
            : [],
        ),
      tolerance: 1e-9,
      scale: 'as it stands',
      why: 'rounding only, in sums over the sample',
    }),
    group({
      name: 'AD of scipy’s Weibull fit',
      compare: () =>
        fixture().samples.flatMap(({ batches, fits }, i) =>
          fits
            ? [
                {
                  what: `sample ${i + 1}`,
                  expected: fits.weibull.statistic,
                  computed: fitFamily(batches.flat(), 'weibull').statistic,
                  scale: 1,
                },
              ]
            : [],
        ),
      tolerance: 1e-5,
      scale: 'as it stands',
      why: 'a minimiser finds the top of the likelihood to half of the digits',
    }),
    group({
      name: 'V of a Weibull basis value, sampled, from 16 results',
      compare: () =>
        fixture()
          .sampledWeibull.filter(({ n }) => n >= 16)
          .map(({ n, kind, factor }) => ({
            what: `${n} results, ${kind}`,
            expected: factor,
            computed: weibullFactor(n, kind),
          })),
      tolerance: 0.016,
      scale: 'of the value',
      why: 'what the handbook’s approximation is worth, and two errors of the sampling',
    }),
  ],
};

export const couponLives: Case = {
  id: 'coupons-life',
  title: 'Lines of life with run-outs',
  source: 'scipy.optimize and scipy.stats.nct (reference/coupon_life.py)',
  tag: 'independent',
  inputs: ['seven samples of 6 to 30 coupons, three without a run-out; at 30, 20, 15 and 10 MPa'],
  checks: [
    group({
      name: 'median life',
      compare: () => lifeFigures('median'),
      tolerance: 2e-5,
      scale: 'of the value',
      why: 'a minimiser finds the top of the likelihood to half of the digits',
    }),
    group({
      name: 'lower bound, 90 % with 95 % confidence',
      compare: () => lifeFigures('bound'),
      tolerance: 1e-3,
      scale: 'of the value',
      why: 'second derivatives by differences',
    }),
  ],
  remarks: [
    'With run-outs the bound is an approximation; in samples of the script it held in 94.8 to 97.9 of 100, see the method, section 17.',
  ],
};

function lifeFigures(figure: 'median' | 'bound') {
  return lives().cases.flatMap(({ results, bounds }, i) => {
    const line = fitLifeLine(results);
    return bounds.map((one) => ({
      what: `sample ${i + 1} at ${one.stress}`,
      expected: one[figure],
      computed: lifeAt(line, one.stress)[figure],
    }));
  });
}
