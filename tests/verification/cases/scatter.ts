/** Scatter over tolerances: exact answers, scipy's limits, and a closed form that scipy sampled. */
import { shareInterval } from '../../../src/model/scatter/binomial.ts';
import { philox } from '../../../src/model/scatter/philox.ts';
import { normalQuantile } from '../../../src/model/scatter/quantiles.ts';
import { scatterOf } from '../../../src/model/scatter/scatter.ts';
import { summaryOf } from '../../../src/model/scatter/summary.ts';
import { jointScatter, variationsOf } from '../../../src/model/scatter/variation.ts';
import {
  problemOf,
  scatterFixture,
  volkersenStudy,
  volkersenTolerances,
} from '../../support/scatter.ts';
import { type Case, group, lazy, printed, same, type Topic, value } from '../case.ts';

const fixture = lazy(scatterFixture);

const words = (counter: readonly number[], key0: number, key1: number): string => {
  const drawn = Uint32Array.from(counter);
  philox(drawn, key0, key1);
  return [...drawn].map((word) => word.toString(16).padStart(8, '0')).join(' ');
};
const ALL = 0xffffffff;

const random: Case = {
  id: 'scatter-random-numbers',
  title: 'Random numbers of a seed',
  source:
    'J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011): Philox4x32-10 and its known answers; reference/scatter.py',
  tag: 'memory',
  inputs: [
    'known answers of the authors’ own library, as remembered',
    'forty counters and keys at random',
  ],
  remarks: [
    'The script draws with whole numbers of any word size; with 64-bit words it gives what numpy’s Philox gives.',
  ],
  checks: [
    same({
      name: 'known answers',
      compare: () => [
        {
          what: 'counter and key 0',
          expected: '6627e8d5 e169c58d bc57ac4c 9b00dbd8',
          computed: words([0, 0, 0, 0], 0, 0),
        },
        {
          what: 'every bit set',
          expected: '408f276d 41c83b0e a20bc7c6 6d5451fd',
          computed: words([ALL, ALL, ALL, ALL], ALL, ALL),
        },
        {
          what: 'digits of π',
          expected: 'd16cfe09 94fdcceb 5001e420 24126ea1',
          computed: words([0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344], 0xa4093822, 0x299f31d0),
        },
      ],
    }),
    same({
      name: 'words of the script',
      compare: () =>
        fixture().words.map(({ counter, key, words: expected }) => ({
          what: counter.join(' '),
          expected: expected.map((word) => word.toString(16).padStart(8, '0')).join(' '),
          computed: words(counter, key[0], key[1]),
        })),
    }),
  ],
};

const limits: Case = {
  id: 'scatter-limits',
  title: 'Normal quantiles and exact binomial limits',
  source:
    'scipy.stats.norm and scipy.stats.beta (reference/scatter.py); printed limits: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404, as tabulated in handbooks, from memory',
  tag: 'independent',
  inputs: [
    'chances from 2⁻⁵³ to ½',
    '0 to all of 10, 1000, 100 000, at 90, 95 and 99 % confidence',
  ],
  checks: [
    group({
      name: 'normal quantiles',
      compare: () =>
        fixture().quantiles.map(({ chance, quantile }) => ({
          what: `chance ${chance}`,
          expected: quantile,
          computed: normalQuantile(chance),
        })),
      tolerance: 4e-15,
      scale: 'of the value',
      why: 'a few units of the last digit',
    }),
    group({
      name: 'limits of a share',
      compare: () =>
        fixture().limits.flatMap(({ found, of, confidence, low, high }) => {
          const interval = shareInterval(found, of, confidence);
          const what = `${found} of ${of} at ${confidence}`;
          return [
            { what: `${what}, low`, expected: low, computed: interval.low },
            { what: `${what}, high`, expected: high, computed: interval.high },
          ];
        }),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'ln Γ of 1e5 leaves the front factor some ten digits',
    }),
    printed('0 of 10, high limit, 95 %', '', '0.3085', () => shareInterval(0, 10).high, 'memory'),
    printed('1 of 10, low limit, 95 %', '', '0.0025', () => shareInterval(1, 10).low, 'memory'),
    printed('1 of 10, high limit, 95 %', '', '0.4450', () => shareInterval(1, 10).high, 'memory'),
    printed('5 of 10, low limit, 95 %', '', '0.1871', () => shareInterval(5, 10).low, 'memory'),
  ],
};

const BETA = 2;
const linear = lazy(() => {
  const problem = problemOf(['normal', 'normal'], {
    margin: (z) => 1 + 0.15 * BETA + 0.12 * z[0]! + 0.09 * z[1]!,
  });
  return scatterOf(problem, { samples: 100_000, seed: 1, method: 'fitted' });
});
const ratio = lazy(() => {
  const problem = problemOf(['normal', 'normal'], {
    margin: (z) => (1.4 + 0.14 * z[0]!) / (1 + 0.1 * z[1]!),
  });
  return scatterOf(problem, { samples: 100_000, seed: 1, method: 'fitted' });
});
/** Four standard errors of a share of 100 000. */
const four = (share: number): number => 4 * Math.sqrt((share * (1 - share)) / 100_000);

const analytic: Case = {
  id: 'scatter-analytic',
  title: 'Share below zero with a known answer',
  source: 'Φ(−β): strength and load normal and independent, β = (μ_R − μ_S)/√(σ_R² + σ_S²)',
  tag: 'independent',
  inputs: [
    'linear: margin normal, mean 0.30, standard deviation 0.15, β = 2',
    'ratio: strength 1.40 ± 0.14 over load 1.00 ± 0.10, β = 2.325: not linear, the share the same by R < S',
    '100 000 samples, seed 1, through the surfaces and what decides exactly',
  ],
  checks: [
    value({
      name: 'share below zero, linear',
      unit: '',
      expected: 0.022750131948,
      computed: () => linear().below / 100_000,
      tolerance: { absolute: four(0.02275) },
      why: 'four standard errors of 100 000 samples',
    }),
    value({
      name: 'share below zero, ratio',
      unit: '',
      expected: 0.010036,
      computed: () => ratio().below / 100_000,
      tolerance: { absolute: four(0.010036) },
      why: 'four standard errors of 100 000 samples',
    }),
    value({
      name: '1st percentile, linear',
      unit: '',
      expected: 0.3 - 0.15 * 2.3263478740408408,
      computed: () => summaryOf(linear()).percentiles[0]!.value,
      tolerance: { absolute: 4 * 0.15 * 0.01181 },
      why: 'four standard errors: √(p(1 − p)/n) over the density',
    }),
  ],
};

const SAMPLES = 100_000;
const outcome = lazy(() => {
  const { volkersen } = fixture();
  const { study, settings } = volkersenStudy(volkersen);
  const variations = variationsOf(study, volkersenTolerances(volkersen));
  return scatterOf(jointScatter(study, settings, variations), {
    samples: SAMPLES,
    seed: 1,
    method: 'fitted',
  });
});

const sampled = lazy(() => summaryOf(outcome()));

const joint: Case = {
  id: 'scatter-volkersen',
  title: 'A single lap that scipy sampled',
  source:
    'O. Volkersen, Luftfahrtforschung 15 (1938) 41, closed form of the single lap; two million samples by scipy.stats with numpy’s PCG64 (reference/scatter.py)',
  tag: 'independent',
  inputs: [
    'flat single lap 25 × 12 mm, strip 1.6, plate 2.0 mm, E = 70 000 MPa; gap 0.2 mm, G = 876, τp = 38 MPa; 4300 N, 1.15 asked; no temperature, no peel strength',
    'overlap ± 0.6 uniform, gap ± 0.06 triangular, strip ± 0.1 uniform, plate ± 0.15 triangular; G 8 %, τp 6 %, load 5 % normal',
    '100 000 samples of the whole model by the program’s own numbers, seed 1',
  ],
  checks: [
    value({
      name: 'mean margin',
      unit: '',
      expected: fixture().volkersen.mean,
      computed: () => sampled().mean,
      tolerance: { absolute: (4 * fixture().volkersen.deviation) / Math.sqrt(SAMPLES) },
      why: 'four standard errors of 100 000 samples',
    }),
    value({
      name: 'standard deviation',
      unit: '',
      expected: fixture().volkersen.deviation,
      computed: () => sampled().deviation,
      tolerance: { relative: 4 / Math.sqrt(2 * SAMPLES) },
      why: 'four standard errors of 100 000 samples',
    }),
    value({
      name: 'share below zero',
      unit: '',
      expected: fixture().volkersen.below,
      computed: () => outcome().below / SAMPLES,
      tolerance: { absolute: four(fixture().volkersen.below) },
      why: 'four standard errors of 100 000 samples',
    }),
    ...sampledPercentiles(),
  ],
};

function sampledPercentiles() {
  const { percentiles, samples } = fixture().volkersen;
  return percentiles.flatMap(({ share, value: expected, error }) => {
    const place = [0.01, 0.05].indexOf(share);
    if (place < 0) return [];
    // The script's error is that of its own samples; ours are fewer.
    const own = error * Math.sqrt(1 + samples / SAMPLES);
    return [
      value({
        name: `${100 * share} % percentile`,
        unit: '',
        expected,
        computed: () => sampled().percentiles[place]!.value,
        tolerance: { absolute: 4 * own },
        why: 'four standard errors of both samplings',
      }),
    ];
  });
}

export const scatterTopic: Topic = {
  title: 'Scatter over tolerances',
  intro:
    'Random numbers, distributions and exact limits against scipy and numpy; the share below zero where it is known; a joint in closed form that scipy sampled. Samplings of a different seed agree within their errors, not to the digit.',
  cases: [random, limits, analytic, joint],
};
