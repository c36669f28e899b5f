import { equation } from '../card.ts';

export const fatigueShare = equation({
  id: 'cyclic-share',
  title: 'Share of yield for this life',
  statement:
    "The adhesive's line of stress against cycles, as a share of its yield shear, never above it.",
  formula: 'min(1, C*n^(-b))',
  symbols: {
    C: ['coefficient of the line', ''],
    n: ['cycles of the case', ''],
    b: ['exponent of the line', ''],
  },
  result: ['q', 'share of yield allowed', ''],
  source: "The line is the adhesive's own, with its source in the project; its form is Basquin's.",
});
