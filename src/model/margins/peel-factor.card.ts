/** Where peel, alone and with shear, and fracture reach their limit. */
import { COMMON_PRACTICE, equation, type Named } from '../card.ts';

const STRENGTH: Named = ['peel strength of the adhesive', 'MPa'];
const HELD: Named = ['peel by temperature, from the layered shells', 'MPa'];
const PEEL: Named = ['elastic peel', 'MPa'];
const SHEAR: Named = ['elastic shear', 'MPa'];
const GAP: Named = ['gap', 'mm'];
const DOMAINS = [
  'short-overlap',
  'thick-wall',
  'built-in-root',
  'thick-bond',
  'outside-table',
  'gap-outside-table',
  'unbalanced-lap',
  'compressed-lap',
];

export const elasticReach = equation({
  id: 'elastic-reach',
  title: 'Factor by elastic peel',
  statement:
    'The loads grow, thermal peel stays, until elastic peel is the strength at its worst place. Where the bond does not yield on the way this is the factor; where it does, it is a lower bound.',
  formula: '(sigma_p - sigma_T)/(sigma_1*P)',
  symbols: {
    sigma_p: STRENGTH,
    sigma_T: HELD,
    sigma_1: ['peel per newton, from the layered shells', 'MPa/N'],
    P: ['load at this clocking', 'N'],
  },
  result: ['lambda_e', 'factor by elastic peel', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});

export const peeledCold = equation({
  id: 'elastic-reach',
  title: 'Peeled by temperature alone',
  statement: 'Thermal peel alone is the strength or more: nothing is left for the load.',
  formula: 'max(0, 1 - sigma_T/sigma_p)',
  symbols: { sigma_p: STRENGTH, sigma_T: HELD },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});

/** Peel (or the pull between plies) and shear against their strengths, at a factor. */
const together = (
  id: string,
  title: string,
  statement: string,
  tension: Named,
  shear: Named,
  symbols: readonly [tension: string, shear: string],
) =>
  equation<string>({
    id,
    title,
    statement,
    formula: `(max(sigma, 0)/${symbols[0]})^2 + (tau/${symbols[1]})^2`,
    symbols: { sigma: PEEL, [symbols[0]]: tension, tau: SHEAR, [symbols[1]]: shear },
    result: ['u', 'use of the criterion', ''],
    source: COMMON_PRACTICE,
    domains: DOMAINS,
  });

export const peelWithShear = together(
  'peel-shear-use',
  'Peel and shear together',
  'First yield under both: the squares of the shares of peel strength and yield shear add up to 1 at the factor found; compression is no peel.',
  STRENGTH,
  ['yield shear of the adhesive', 'MPa'],
  ['sigma_p', 'tau_p'],
);

export const pliesElastic = together(
  'plies-use',
  'Between plies, elastic',
  'The face of the laminate carries the stress of the bond: squares of the shares of its strengths across and between its plies.',
  ['strength across the plies', 'MPa'],
  ['shear strength between the plies', 'MPa'],
  ['Z_t', 'S_13'],
);

const cold = (
  title: string,
  tension: Named,
  shear: Named,
  symbols: readonly [tension: string, shear: string],
) =>
  equation<string>({
    id: 'reached-cold',
    title,
    statement: 'Temperature alone reaches the criterion: nothing is left for the load.',
    formula: `max(0, 1 - (max(sigma, 0)/${symbols[0]})^2 - (tau/${symbols[1]})^2)`,
    symbols: { sigma: PEEL, [symbols[0]]: tension, tau: SHEAR, [symbols[1]]: shear },
    result: ['lambda', 'factor on the loads of the case', ''],
    source: COMMON_PRACTICE,
    domains: DOMAINS,
  });

export const peelShearCold = cold(
  'Reached by temperature alone',
  STRENGTH,
  ['yield shear of the adhesive', 'MPa'],
  ['sigma_p', 'tau_p'],
);
export const pliesCold = cold(
  'Parted by temperature alone',
  ['strength across the plies', 'MPa'],
  ['shear strength between the plies', 'MPa'],
  ['Z_t', 'S_13'],
);

const IRWIN =
  'Strain energy of the layer at its free end; G. R. Irwin for its meaning, from memory.';

export const openingRate = equation({
  id: 'release-opening',
  title: 'Energy released in opening',
  statement: 'What the layer at the end of the bond holds in peel is what a crack there sets free.',
  formula: 'h*max(sigma, 0)^2/(2*E_c)',
  symbols: { h: GAP, sigma: PEEL, E_c: ['modulus across the bond', 'MPa'] },
  result: ['G_I', 'energy released in mode I', 'N/mm'],
  source: IRWIN,
  domains: DOMAINS,
});

export const slidingRate = equation({
  id: 'release-sliding',
  title: 'Energy released in sliding',
  statement: 'The same in shear.',
  formula: 'h*tau^2/(2*G)',
  symbols: { h: GAP, tau: SHEAR, G: ['shear modulus of the adhesive', 'MPa'] },
  result: ['G_II', 'energy released in mode II', 'N/mm'],
  source: IRWIN,
  domains: DOMAINS,
});

export const mixed = equation({
  id: 'fracture-use',
  title: 'Both modes together',
  statement: 'A crack at the end of the bond grows where the mix is 1; at the factor found it is.',
  formula: '(G_I/G_Ic)^m + (G_II/G_IIc)^m',
  symbols: {
    G_I: ['energy released in mode I', 'N/mm'],
    G_Ic: ['energy that a crack takes in mode I', 'N/mm'],
    G_II: ['energy released in mode II', 'N/mm'],
    G_IIc: ['energy that a crack takes in mode II', 'N/mm'],
    m: ['exponent of the mix', ''],
  },
  result: ['u', 'use of the criterion', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});
