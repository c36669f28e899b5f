/** What the knockdowns leave of the strength. */
import { COMMON_PRACTICE, equation } from '../card.ts';

export const gapBetween = equation({
  id: 'gap-factor',
  title: 'Strength at this gap',
  statement:
    'The strength of a thick or thin bond over that of the coupons, on the straight line between the two rows of the table that hold the gap.',
  formula: 'k_1 + (h - h_1)/(h_2 - h_1)*(k_2 - k_1)',
  symbols: {
    h: ['gap', 'mm'],
    h_1: ['gap of the row below', 'mm'],
    h_2: ['gap of the row above', 'mm'],
    k_1: ['strength left in the row below', ''],
    k_2: ['strength left in the row above', ''],
  },
  result: ['k_gap', 'left of the strength at this gap', ''],
  source: COMMON_PRACTICE,
  domains: ['gap-outside-table'],
});

export const gapBesideTested = equation({
  id: 'gap-factor-tested',
  title: 'Strength at this gap, beside that of the coupons',
  statement:
    'The coupons had a gap of their own, whose loss is in their results: the table is taken over its value there, and no strength is gained from it.',
  formula: 'min(1, k_h/k_0)',
  symbols: {
    k_h: ['strength left at this gap, by the table', ''],
    k_0: ['strength left at the gap of the coupons, by the table', ''],
  },
  result: ['k_gap', 'left of the strength at this gap', ''],
  source: COMMON_PRACTICE,
  domains: ['gap-outside-table'],
});

export const ledger = equation({
  id: 'knockdown',
  title: 'Knockdowns',
  statement:
    'What environment, gap, ageing and scatter leave of the strength; where own coupons were tested, their basis value over what the model predicts of them stands in place of scatter. It shrinks the shear stress-strain curve about its origin: yield stress and plastic strain fall by K, the modulus stays.',
  formula: 'k_env*k_gap*k_age*k_scatter',
  symbols: {
    k_env: ['left by the environment', ''],
    k_gap: ['left at this gap', ''],
    k_age: ['left by ageing', ''],
    k_scatter: ['left by scatter, or by own coupons', ''],
  },
  result: ['K', 'left of the strength', ''],
  source: COMMON_PRACTICE,
  domains: ['gap-outside-table'],
});

const energy = (mode: 'I' | 'II', word: string) =>
  equation({
    id: `fracture-energy-${mode}`,
    title: `Fracture energy, ${word}`,
    statement: 'Energies go with the square of stress, so the knockdown takes them by its square.',
    formula: 'G_0*K^2',
    symbols: {
      G_0: [`fracture energy in mode ${mode} as entered`, 'N/mm'],
      K: ['left of the strength', ''],
    },
    result: [`G_${mode}c`, `energy that a crack takes in mode ${mode}`, 'N/mm'],
    source: COMMON_PRACTICE,
  });

export const openingEnergy = energy('I', 'opening');
export const slidingEnergy = energy('II', 'sliding');
