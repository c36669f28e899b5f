/** Strength of metal walls and of laminates given as one material. */
import { COMMON_PRACTICE, equation, type Named } from '../card.ts';

const DOMAINS = ['short-overlap', 'thick-wall', 'thick-bond', 'outside-table'];
const ALONG: Named = ['stress along on this face', 'MPa'];
const SHEAR: Named = ['shear in the wall', 'MPa'];

export const vonMises = equation({
  id: 'von-mises',
  title: 'Equivalent stress',
  statement: 'Von Mises, under stress along and around and shear.',
  formula: 'sqrt(sigma_x^2 - sigma_x*sigma_theta + sigma_theta^2 + 3*tau^2)',
  symbols: { sigma_x: ALONG, sigma_theta: ['stress around on this face', 'MPa'], tau: SHEAR },
  result: ['sigma_v', 'equivalent stress', 'MPa'],
  source: 'R. von Mises (1913).',
  domains: DOMAINS,
});

export const metalUse = (strength: 'yield' | 'ultimate') =>
  equation({
    id: 'metal-use',
    title: `Equivalent stress over ${strength} strength`,
    statement: 'At the factor found, this is 1.',
    formula: 'sigma_v/S',
    symbols: {
      sigma_v: ['equivalent stress', 'MPa'],
      S: [`${strength} strength of the metal`, 'MPa'],
    },
    result: ['u', 'use of the strength', ''],
    source: COMMON_PRACTICE,
    domains: DOMAINS,
  });

export const laminateUse = equation({
  id: 'laminate-use',
  title: 'Stress along and shear together',
  statement:
    'Squares of the shares of strength add up to 1 at the factor found; the strength along is the tensile or the compressive one by the sign of the stress.',
  formula: '(sigma_x/X)^2 + (tau/S)^2',
  symbols: {
    sigma_x: ALONG,
    X: ['strength along, of this sign', 'MPa'],
    tau: SHEAR,
    S: ['shear strength', 'MPa'],
  },
  result: ['u', 'use of the strength', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});
