/** Statistics of coupons: printed examples, scipy and 30 digits. */
import { analyseVariance, anovaFactor } from '../../../src/model/coupons/anova.ts';
import { fittedBasis } from '../../../src/model/coupons/basis.ts';
import { type Family, parametersOf, weibullFit } from '../../../src/model/coupons/distributions.ts';
import { hansonKoopmansFactor, hansonKoopmansValue } from '../../../src/model/coupons/ranks.ts';
import { sorted, summarise } from '../../../src/model/coupons/sample.ts';
import {
  BASIS_KINDS,
  type BasisKind,
  basisFactor,
  toleranceFactor,
} from '../../../src/model/coupons/tolerance-factor.ts';
import { couponsFixture } from '../../support/coupons.ts';
import {
  EIGHTEEN,
  ETW,
  ETW2,
  HK_TABLE_A,
  HK_TABLE_B,
  K_TABLE,
} from '../../support/coupons-published.ts';
import { type Case, group, lazy, printed, type Topic, value } from '../case.ts';
import { couponLives, couponTests } from './coupon-tests.ts';

const fixture = lazy(couponsFixture);
const HANDBOOK = 'CMH-17-1G (SAE, March 2012), Vol. 1 chapter 8';

const factors: Case = {
  id: 'coupons-factors',
  title: 'One-sided tolerance factors of a normal sample',
  source: `${HANDBOOK}, tables of k; NIST/SEMATECH e-Handbook 7.2.6.3; scipy.stats.nct and mpmath (reference/coupons.py)`,
  tag: 'second-hand',
  inputs: [
    '90 % (B) and 99 % (A) of all above, 95 % confidence; e-Handbook: 90 %, 99 % confidence',
  ],
  checks: [
    group({
      name: 'k of the handbook, 3 to 30 results, A',
      compare: () =>
        K_TABLE.map(([n, , a]) => ({
          what: `${n} results`,
          expected: a,
          computed: basisFactor(n, 'A'),
          scale: 1,
        })),
      tolerance: 5e-4,
      scale: 'as it stands',
      why: 'half of the last printed digit',
    }),
    group({
      name: 'k of the handbook, 3 to 30 results, B',
      compare: () =>
        K_TABLE.map(([n, b]) => ({
          what: `${n} results`,
          expected: b,
          computed: basisFactor(n, 'B'),
          scale: 1,
        })),
      tolerance: 2e-3,
      scale: 'as it stands',
      why: 'the printed table lies up to 0.0017 above the exact factors',
    }),
    printed('40 results, 99 % confidence', '', '1.9017', () => toleranceFactor(40, 0.1, 0.99)),
    value({
      name: '43 results, 99 % confidence',
      unit: '',
      expected: 1.8751896,
      printed: '1.8751896',
      computed: () => toleranceFactor(43, 0.1, 0.99),
      tolerance: { relative: 7e-4 },
      why: "the printed one is Natrella's approximation",
    }),
    group({
      name: 'scipy, 2 to 1000 results, A and B',
      compare: () =>
        fixture().factors.flatMap((one) =>
          BASIS_KINDS.map((kind) => ({
            what: `${one.n} results, ${kind}`,
            expected: one[kind],
            computed: basisFactor(one.n, kind),
          })),
        ),
      tolerance: 2e-12,
      scale: 'of the value',
      why: 'the accuracy of either',
    }),
    group({
      name: '30 digits, 49 sizes to 5000, A and B',
      compare: () =>
        fixture().precise.flatMap((one) =>
          BASIS_KINDS.map((kind) => ({
            what: `${one.n} results, ${kind}`,
            expected: one[kind],
            computed: basisFactor(one.n, kind),
          })),
        ),
      tolerance: 2e-13,
      scale: 'of the value',
      why: 'a few hundred units of the last digit',
    }),
  ],
};

const fitted = (family: Family, kind: BasisKind): number =>
  fittedBasis(parametersOf(EIGHTEEN, family), EIGHTEEN.length, kind).value;
const approximate = (
  name: string,
  family: Family,
  kind: BasisKind,
  text: string,
  relative: number,
) =>
  value({
    name,
    unit: '',
    expected: Number(text),
    printed: text,
    computed: () => fitted(family, kind),
    tolerance: { relative },
    why: 'printed with the handbook’s approximation of k, which explains the difference to the last digit',
  });
const weibull = (name: string, kind: BasisKind, text: string) =>
  value({
    name,
    unit: '',
    expected: Number(text),
    printed: text,
    computed: () => fitted('weibull', kind),
    tolerance: { absolute: 6e-4 },
    why: 'half of the last printed digit, and coefficients of three digits',
  });

const eighteen: Case = {
  id: 'coupons-eighteen',
  title: 'Eighteen strengths by every distribution',
  source: `a sample printed with the values of the methods of ${HANDBOOK}`,
  tag: 'second-hand',
  inputs: [`n = 18: ${EIGHTEEN.join(', ')}`],
  checks: [
    printed('mean', '', '141.9179', () => summarise(EIGHTEEN).mean),
    printed('standard deviation', '', '6.3979', () => summarise(EIGHTEEN).deviation!),
    approximate('normal, B', 'normal', 'B', '129.287', 2.5e-5),
    approximate('normal, A', 'normal', 'A', '120.336', 1.7e-4),
    approximate('lognormal, B', 'lognormal', 'B', '129.664', 2.5e-5),
    approximate('lognormal, A', 'lognormal', 'A', '121.710', 1.5e-4),
    printed('Weibull scale', '', '144.8872', () => weibullFit(EIGHTEEN).scale),
    printed('Weibull shape', '', '24.8106', () => weibullFit(EIGHTEEN).shape),
    weibull('Weibull, B', 'B', '125.441'),
    weibull('Weibull, A', 'A', '109.150'),
    value({
      name: 'Hanson and Koopmans, B',
      unit: '',
      expected: 124.156,
      printed: '124.156',
      computed: () => hansonKoopmansValue(sorted(EIGHTEEN), 'B'),
      tolerance: { absolute: 0.02 },
      why: 'printed with a factor of four digits',
    }),
    value({
      name: 'Hanson and Koopmans, A',
      unit: '',
      expected: 99.651,
      printed: '99.651',
      computed: () => hansonKoopmansValue(sorted(EIGHTEEN), 'A'),
      tolerance: { absolute: 0.002 },
      why: 'printed with a factor of five digits',
    }),
  ],
};

const two = lazy(() => analyseVariance(ETW2));
const between = (kind: BasisKind): number =>
  two().mean - anovaFactor(two(), kind) * two().deviation;

const examples: Case = {
  id: 'coupons-examples',
  title: 'Examples of the handbook: without a distribution, and between batches',
  source: `${HANDBOOK}, 8.3.11.2.1 and 8.3.11.2.2`,
  tag: 'second-hand',
  inputs: ['hot and wet: 22 results; three batches, 20 results'],
  checks: [
    printed('Hanson and Koopmans, B', '', '37.9', () => hansonKoopmansValue(sorted(ETW), 'B')),
    printed('Hanson and Koopmans, A', '', '13.0', () => hansonKoopmansValue(sorted(ETW), 'A')),
    printed('three batches, B', '', '63.2', () => between('B')),
    printed('three batches, A', '', '34.6', () => between('A')),
    printed('S of the batches', '', '8.8206', () => two().deviation),
    printed('effective batch size', '', '6.6500', () => two().effective),
  ],
};

const tables: Case = {
  id: 'coupons-without-distribution',
  title: 'Factors of Hanson and Koopmans',
  source:
    'tables of MIL-HDBK-17-1F (2002) Vol. 1 chapter 8, as remembered; the integral the other way round (reference/coupons.py)',
  tag: 'memory',
  inputs: ['B: 2 to 28 results; A: 2, 3, 4, 5, 10, 18, 22 (printed), to 298 (integral)'],
  checks: [
    group({
      name: 'table, B',
      compare: () =>
        HK_TABLE_B.map(([n, , k]) => ({
          what: `${n} results`,
          expected: k,
          computed: hansonKoopmansFactor(n, 'B'),
          scale: 1,
        })),
      tolerance: 5.5e-4,
      scale: 'as it stands',
      why: 'half of the last printed digit and a tenth',
    }),
    group({
      name: 'table, A',
      compare: () =>
        HK_TABLE_A.map(([n, k]) => ({
          what: `${n} results`,
          expected: k,
          computed: hansonKoopmansFactor(n, 'A'),
        })),
      tolerance: 2.5e-5,
      scale: 'of the value',
      why: 'tables of five digits and more',
    }),
    group({
      name: 'the other integral',
      compare: () =>
        fixture().hansonKoopmans.map(({ kind, n, k }) => ({
          what: `${n} results, ${kind}`,
          expected: k,
          computed: hansonKoopmansFactor(n, kind),
        })),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'the accuracy of the quadratures',
    }),
  ],
};

export const coupons: Topic = {
  title: 'Statistics of coupons',
  intro:
    'Tolerance factors, tests and basis values against printed examples, scipy and 30 digits. The handbook itself was not before us: what it prints is quoted by others or remembered, and so marked.',
  cases: [factors, eighteen, examples, tables, couponTests, couponLives],
};
