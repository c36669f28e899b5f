/** Shear stiffness of a bond and its slips at yield and at failure. */
import { equation, type Named } from '../card.ts';

const GAP: Named = ['gap', 'mm'];
const MODULUS: Named = ['shear modulus of the adhesive', 'MPa'];
const LAG =
  'Common practice, no source: shear lag through walls whose shear falls evenly from the bonded face; checked against finite elements.';

const walls = {
  h: GAP,
  G: MODULUS,
  t_t: ['mean wall of the tube or strip', 'mm'],
  G_t: ['its shear modulus through the wall', 'MPa'],
  t_s: ['mean wall of the outer adherend', 'mm'],
  G_s: ['its shear modulus through the wall', 'MPa'],
} as const satisfies Record<string, Named>;

const stiffness = ['k', 'shear stiffness of the bond', 'MPa/mm'] as const;

export const stiffnessOfSingle = equation({
  id: 'bond-stiffness',
  title: 'Stiffness of the bond',
  statement:
    'Shear stress per slip between the middles of the walls: the adhesive and a third of each wall, bonded on one face, in series.',
  formula: '1/(h/G + t_t/(3*G_t) + t_s/(3*G_s))',
  symbols: walls,
  result: stiffness,
  source: LAG,
});

export const stiffnessOfDouble = equation({
  id: 'bond-stiffness',
  title: 'Stiffness of the bond',
  statement:
    'Shear stress per slip between the middles of the walls: the adhesive, a third of the outer adherend, bonded on one face, and a sixth of the middle one, bonded on both, in series.',
  formula: '1/(h/G + t_t/(6*G_t) + t_s/(3*G_s))',
  symbols: walls,
  result: stiffness,
  source: LAG,
});

export const stiffnessOfLayer = equation({
  id: 'bond-stiffness',
  title: 'Stiffness of the bond',
  statement:
    "Shear stress per slip of the adhesive alone: the project leaves the adherends' own shear out.",
  formula: '1/(h/G)',
  symbols: { h: GAP, G: MODULUS },
  result: stiffness,
  source: 'O. Volkersen (1938).',
});

export const yieldSlip = equation({
  id: 'yield-slip',
  title: 'Slip at yield',
  statement: 'How far the walls have slipped past each other when the adhesive yields.',
  formula: 'tau_p/k',
  symbols: {
    tau_p: ['yield shear of the adhesive', 'MPa'],
    k: ['stiffness of the bond', 'MPa/mm'],
  },
  result: ['s_e', 'slip at yield', 'mm'],
  source: 'L. J. Hart-Smith (1973): elastic, then perfectly plastic.',
});

export const failureSlip = equation({
  id: 'failure-slip',
  title: 'Slip at failure',
  statement:
    "The adhesive strains by its plastic strain beyond yield at unchanged stress; the walls' own shear grows no more.",
  formula: 's_e + h*gamma_p',
  symbols: {
    s_e: ['slip at yield', 'mm'],
    h: GAP,
    gamma_p: ['plastic shear strain of the adhesive', ''],
  },
  result: ['s_u', 'slip at failure', 'mm'],
  source: 'L. J. Hart-Smith (1973): elastic, then perfectly plastic.',
});
