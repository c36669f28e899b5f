import { COMMON_PRACTICE, type Equation, equation } from '../card.ts';
import { GOODMAN } from './cyclic.card.ts';

const MINER =
  'A. Palmgren (1924); M. A. Miner, Journal of Applied Mechanics 12 (1945) A159. The order of the cycles does not count: tests of bonds have failed well below a sum of 1.';

const PEAK = ['peak shear over yield', ''] as const;
const RATIO = ['lowest over highest load of the case', ''] as const;
const LINE_RATIO = ['lowest over highest load of the line', ''] as const;
const ON_LINE = ['q_L', 'peak shear over yield, at the ratio of the line', ''] as const;

export const backLower = equation({
  id: 'cyclic-back-lower',
  title: 'Carried over to the ratio of the line',
  statement:
    'The case swings farther than the tests did: the amplitude is kept, and its lower mean earns no credit.',
  formula: 's*(1 - R)/(1 - R_L)',
  symbols: { s: PEAK, R: RATIO, R_L: LINE_RATIO },
  result: ON_LINE,
  source: COMMON_PRACTICE,
});

export const backAmplitude = equation({
  id: 'cyclic-back-amplitude',
  title: 'Amplitude without mean',
  statement: 'Goodman: the amplitude that would do the same damage about a mean of 0.',
  formula: 's*(1 - R)/(2 - s*(1 + R))',
  symbols: { s: PEAK, R: RATIO },
  result: ['a', 'amplitude without mean, share of yield', ''],
  source: GOODMAN,
});

export const backHigher = equation({
  id: 'cyclic-back-higher',
  title: 'Carried over to the ratio of the line',
  statement: 'Goodman: the peak of a cycle of the ratio of the line that has this amplitude.',
  formula: '2*a/(1 - R_L + a*(1 + R_L))',
  symbols: { a: ['amplitude without mean, share of yield', ''], R_L: LINE_RATIO },
  result: ON_LINE,
  source: GOODMAN,
});

/** Life of one occasion from its peak, at the ratio of the line. */
export const lifeOf = (occasion: string) =>
  equation({
    id: 'cyclic-life',
    title: `Life under ${occasion} alone`,
    statement: 'Cycles to failure on the S-N line, all loads grown by the factor of this margin.',
    formula: '(C/q_L)^(1/b)',
    symbols: {
      C: ['coefficient of the line', ''],
      q_L: ['peak shear over yield, at the ratio of the line', ''],
      b: ['exponent of the line', ''],
    },
    result: ['N', 'cycles to failure', ''],
    source:
      "The line is the adhesive's own, with its source in the project; its form is Basquin's.",
  });

export const shareOf = (occasion: string) =>
  equation({
    id: 'cyclic-part',
    title: `Part of the life that ${occasion} takes`,
    statement: 'Cycles over life.',
    formula: 'n/N',
    symbols: { n: ['cycles of the case', ''], N: ['cycles to failure', ''] },
    result: ['d', 'part of the life', ''],
    source: MINER,
  });

/** @param occasions names, in the order of their parts d_1, d_2 … */
export const damageSum = (occasions: readonly string[]): Equation<string> =>
  equation<string>({
    id: 'cyclic-damage',
    title: 'Damage of all cycles together',
    statement:
      'The parts add up; each is taken at its own worst place, so that the sum is an upper limit. The loads grow together until it is 1.',
    formula: occasions.map((_, i) => `d_${i + 1}`).join(' + '),
    symbols: Object.fromEntries(
      occasions.map((occasion, i) => [`d_${i + 1}`, [`part of ${occasion}`, ''] as const]),
    ),
    result: ['D', 'damage', ''],
    source: MINER,
    domains: ['short-overlap', 'thick-wall', 'outside-table', 'gap-outside-table'],
  });
