/** The adhesive as a layer that its neighbours keep from contracting. */
import { equation, type Named } from '../card.ts';

const MODULUS: Named = ['modulus of the adhesive', 'MPa'];
const ELASTICITY = 'Theory of elasticity, no source.';

export const poisson = equation({
  id: 'adhesive-poisson',
  title: "Poisson's ratio of the adhesive",
  statement: 'From its two moduli, kept within what a solid can have.',
  formula: 'min(0.45, max(0, E/(2*G) - 1))',
  symbols: { E: MODULUS, G: ['shear modulus of the adhesive', 'MPa'] },
  result: ['nu', "Poisson's ratio of the adhesive", ''],
  source: ELASTICITY,
  domains: ['adhesive-moduli'],
});

export const constrained = equation({
  id: 'constrained-modulus',
  title: 'Modulus across the bond',
  statement:
    'A thin layer between stiff walls cannot contract sideways, and is the stiffer for it.',
  formula: 'E*(1 - nu)/((1 + nu)*(1 - 2*nu))',
  symbols: { E: MODULUS, nu: ["Poisson's ratio of the adhesive", ''] },
  result: ['E_c', 'modulus across the bond', 'MPa'],
  source: ELASTICITY,
  domains: ['adhesive-moduli', 'thick-bond'],
});
