/** The factor asked for, and the margin. */
import { COMMON_PRACTICE, equation } from '../card.ts';

export const asked = equation({
  id: 'asked',
  title: 'Factor asked for',
  statement:
    "The project's factor for this mode, times the fitting factor. The loads of an ultimate case hold their factor already: 1.",
  formula: 'f*f_fit',
  symbols: {
    f: ['factor for this mode and kind of case', ''],
    f_fit: ['fitting factor', ''],
  },
  result: ['asked', 'factor asked for', ''],
  source: COMMON_PRACTICE,
});

export const margin = equation({
  id: 'margin',
  title: 'Margin',
  statement: 'How much more than asked the joint can do, as a share of what is asked.',
  formula: 'lambda/asked - 1',
  symbols: {
    lambda: ['factor on the loads of the case at which it is reached', ''],
    asked: ['factor asked for', ''],
  },
  result: ['MS', 'margin', ''],
  source: COMMON_PRACTICE,
});
