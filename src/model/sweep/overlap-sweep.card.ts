/** Strength against overlap, and the plateau. */
import { COMMON_PRACTICE, equation } from '../card.ts';

export const ratio = (which: 'long' | 'plateau', where: string) =>
  equation({
    id: `strength-${which}`,
    title: `Strength of the bond at ${where}`,
    statement:
      'Factor at which the adhesive reaches its ultimate strain over the factor asked for, the worst over cases and gaps; the joint as it is, but for its overlap.',
    formula: 'lambda/asked',
    symbols: {
      lambda: ['factor on the loads at which it is reached, as solved', ''],
      asked: ['factor asked for', ''],
    },
    result: [which === 'long' ? 'R_long' : 'R', 'strength over the load asked for', ''],
    source: COMMON_PRACTICE,
    domains: ['outside-table', 'gap-outside-table'],
  });

export const plateauShare = equation({
  id: 'plateau',
  title: 'Plateau',
  statement:
    'The plateau is the shortest overlap whose bond has 98 % of the strength of a very long one: past it more overlap buys under 2 %.',
  formula: 'R/R_long',
  symbols: {
    R: ['strength at the plateau, over the load asked for', ''],
    R_long: ['strength at the longest overlap, over the load asked for', ''],
  },
  result: ['q', 'share of the strength of a very long overlap', ''],
  source: COMMON_PRACTICE,
});
