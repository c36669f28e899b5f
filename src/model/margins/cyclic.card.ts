import { COMMON_PRACTICE, equation } from '../card.ts';

export const GOODMAN =
  'J. Goodman, Mechanics Applied to Engineering (1899): a straight line from the amplitude without mean to the static strength, here the yield. An approximation made for metals; tests at the ratio of service replace it.';
const AT_LINE = ['share of yield at the ratio of the line', ''] as const;
const LINE_RATIO = ['lowest over highest load of the line', ''] as const;
const CASE_RATIO = ['lowest over highest load of the case', ''] as const;
const ALLOWED = ['q', 'share of yield allowed', ''] as const;

/** The line before it is carried over: it may lie above yield for short lives. */
export const lineShare = equation({
  id: 'cyclic-line',
  title: 'Share of yield on the line',
  statement: "The adhesive's line of stress against cycles, at the ratio of its own tests.",
  formula: 'C*n^(-b)',
  symbols: {
    C: ['coefficient of the line', ''],
    n: ['cycles of the case', ''],
    b: ['exponent of the line', ''],
  },
  result: ['q_L', 'share of yield at the ratio of the line', ''],
  source: "The line is the adhesive's own, with its source in the project; its form is Basquin's.",
});

export const lowerRatio = equation({
  id: 'cyclic-lower-ratio',
  title: 'Carried over to the ratio of the case',
  statement:
    'The case swings farther than the tests did: the amplitude is kept, and its lower mean earns no credit.',
  formula: 'min(1, q_L*(1 - R_L)/(1 - R))',
  symbols: { q_L: AT_LINE, R_L: LINE_RATIO, R: CASE_RATIO },
  result: ALLOWED,
  source: `${COMMON_PRACTICE} It is the lower limit of Goodman's line for any static strength.`,
});

export const zeroMean = equation({
  id: 'cyclic-amplitude',
  title: 'Amplitude without mean',
  statement: 'Goodman: the amplitude that would do the same damage about a mean of 0.',
  formula: 'q_L*(1 - R_L)/(2 - q_L*(1 + R_L))',
  symbols: { q_L: AT_LINE, R_L: LINE_RATIO },
  result: ['a', 'amplitude without mean, share of yield', ''],
  source: GOODMAN,
});

export const higherRatio = equation({
  id: 'cyclic-higher-ratio',
  title: 'Carried over to the ratio of the case',
  statement: 'Goodman: the peak of a cycle of the ratio of the case that has this amplitude.',
  formula: '2*a/(1 - R + a*(1 + R))',
  symbols: { a: ['amplitude without mean, share of yield', ''], R: CASE_RATIO },
  result: ALLOWED,
  source: GOODMAN,
});

export const reversedEnd = equation({
  id: 'cycle-end',
  title: 'At the reversed end of the cycle',
  statement: 'The load reverses, and with the thermal stress its lower end is the worse one.',
  formula: 'R*tau',
  symbols: {
    R: CASE_RATIO,
    tau: ['shear per load factor at this place, at the peak of the load, elastic', 'MPa'],
  },
  result: ['tau_R', 'the same at the reversed end', 'MPa'],
  source: COMMON_PRACTICE,
});
