/** How far a bond opens under peel. */
import { equation, type Named } from '../card.ts';

const MADE = 'Shares of the walls set by finite elements, in the verification book.';
const PER_MM = 'mm/MPa';

/** A flat joint's walls lie below and above the bond, a tube's inside and outside of it. */
const opening = (first: string, second: string) =>
  equation({
    id: 'opening-flexibility',
    title: 'Flexibility across the bond',
    statement:
      'Opening per peel: the layer, and a quarter of each wall beside it; a wall whose modulus through the thickness is not known counts as rigid.',
    formula: 'h/E_c + (f_1 + f_2)/4',
    symbols: {
      h: ['gap', 'mm'],
      E_c: ['modulus across the bond', 'MPa'],
      f_1: [`thickness over modulus of the wall ${first} the bond, 0 where not known`, PER_MM],
      f_2: [`thickness over modulus of the wall ${second} the bond, 0 where not known`, PER_MM],
    },
    result: ['F_j', 'flexibility across the bond', PER_MM],
    source: MADE,
    domains: ['thick-bond'],
  });
export const openingFlexibility = opening('inside', 'outside');
export const flatOpeningFlexibility = opening('below', 'above');

const STIFFNESS = ['K_n', 'peel per opening of the bond', 'MPa/mm'] as const;
const OWN: Named = ['flexibility across the bond', PER_MM];

export const openingStiffness = equation({
  id: 'opening-stiffness',
  title: 'Stiffness across the bond',
  statement: 'Peel per opening of the bond.',
  formula: '1/F_j',
  symbols: { F_j: OWN },
  result: STIFFNESS,
  source: MADE,
  domains: ['thick-bond'],
});

export const openingStiffnessOfTwo = equation({
  id: 'opening-stiffness',
  title: 'Stiffness across the bond',
  statement:
    'Peel per opening of this bond while the other does not open: the wall between them gives way to both.',
  formula: '1/(F_j - F_12^2/F_k)',
  symbols: {
    F_j: OWN,
    F_12: ['an eighth of thickness over modulus of the wall between', PER_MM],
    F_k: ['flexibility across the other bond', PER_MM],
  },
  result: STIFFNESS,
  source: MADE,
  domains: ['thick-bond'],
});
