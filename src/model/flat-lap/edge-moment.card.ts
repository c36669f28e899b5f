/**
 * Edge moment of a flat single lap, by both methods, at one end. (P + |P|)/2 is P in tension and 0 in
 * compression; a formula reader's max(P, 0) may take a tiny load for zero and give its negative back.
 */
import { type Equation, equation, type Named } from '../card.ts';

const LOAD: Named = ['load per width', 'N/mm'];
const LENGTH: Named = ['overlap', 'mm'];
const DOMAINS = ['unbalanced-lap', 'compressed-lap'];
const GOLAND = 'M. Goland, E. Reissner (1944), from memory.';
const HART_SMITH = 'L. J. Hart-Smith (1973), from memory.';

export const lever = equation({
  id: 'edge-lever',
  title: 'Lever of the load',
  statement:
    'The load comes in along one adherend and leaves along the other: from middle to middle.',
  formula: '(t_1 + t_2)/2 + h',
  symbols: { t_1: ['strip', 'mm'], t_2: ['plate at the root', 'mm'], h: ['gap', 'mm'] },
  result: ['e', 'lever of the load', 'mm'],
  source: 'Geometry.',
});

export const solidPair = equation({
  id: 'edge-pair',
  title: 'Bending stiffness of the overlap as one plate',
  statement: 'Both adherends bend together, without the adhesive between them.',
  formula: 'D_1 + D_2 + ((t_1 + t_2)/2)^2*A_1*A_2/(A_1 + A_2)',
  symbols: {
    D_1: ['bending stiffness of the plate per width', 'N*mm'],
    D_2: ['bending stiffness of the strip per width', 'N*mm'],
    t_1: ['plate', 'mm'],
    t_2: ['strip', 'mm'],
    A_1: ['stiffness along of the plate per width', 'N/mm'],
    A_2: ['stiffness along of the strip per width', 'N/mm'],
  },
  result: ['D_12', 'bending stiffness of the overlap', 'N*mm'],
  source: GOLAND,
  domains: DOMAINS,
});

const PAIR: Named = ['bending stiffness of the overlap', 'N*mm'];
const GR_RESULT = ['k_GR', 'edge moment factor by Goland and Reissner', ''] as const;

export const alikeFactor = equation({
  id: 'edge-goland-reissner',
  title: 'Factor by Goland and Reissner',
  statement:
    'The overlap bends as one plate and turns towards the line of the load; of the moment of the undeformed shape, k is left. In compression k is that of the undeformed shape.',
  formula: '1/(1 + sqrt(D_12/D)*tanh(sqrt((P + abs(P))/2/D_12)*L/2))',
  symbols: {
    D_12: PAIR,
    D: ['bending stiffness of an adherend per width', 'N*mm'],
    P: LOAD,
    L: LENGTH,
  },
  result: GR_RESULT,
  source: GOLAND,
  domains: DOMAINS,
});

/** i the adherend that carries the load at this end, k the other. */
export const unlikeFactor = equation({
  id: 'edge-goland-reissner',
  title: 'Factor by Goland and Reissner, unequal adherends',
  statement:
    'The same assumption, an overlap that bends as one plate between long run-outs, solved for two different ends.',
  formula:
    '(v_i*tanh(w*L) + r_k*(v_i + 2*v_k/(exp(w*L) + exp(-w*L))))/((1 + r_i*r_k)*tanh(w*L) + r_i + r_k)',
  symbols: {
    v_i: ["share of the lever from this end's adherend to the neutral axis, twice", ''],
    v_k: ['the same of the other adherend', ''],
    w: ['root of the load over the bending stiffness of the overlap', '1/mm'],
    r_i: ["root of the overlap's bending stiffness over this adherend's", ''],
    r_k: ['the same of the other adherend', ''],
    L: LENGTH,
  },
  result: GR_RESULT,
  source: `${GOLAND} Unequal adherends: own extension of it.`,
  domains: DOMAINS,
});

export const separateFactor = equation({
  id: 'edge-hart-smith',
  title: 'Factor by Hart-Smith',
  statement:
    'Each adherend bends by itself. With unequal adherends the factor of the stiffer one, shared between the ends by the roots of their bending stiffnesses: a cautious stand-in.',
  formula:
    '2*sqrt(D_i)/(sqrt(D_i) + sqrt(D_k))/(1 + sqrt((P + abs(P))/2/D_s)*L/2 + (P + abs(P))/2/D_s*L^2/24)',
  symbols: {
    D_i: ["bending stiffness of this end's adherend per width", 'N*mm'],
    D_k: ['the same of the other adherend', 'N*mm'],
    D_s: ['the larger of the two', 'N*mm'],
    P: LOAD,
    L: LENGTH,
  },
  result: ['k_HS', 'edge moment factor by Hart-Smith', ''],
  source: HART_SMITH,
  domains: DOMAINS,
});

/** The last card of the edge moment, in the factor of the chosen method. */
export const moment = (chosen: 'goland-reissner' | 'hart-smith', end: string): Equation<string> => {
  const k = chosen === 'goland-reissner' ? 'k_GR' : 'k_HS';
  return equation<string>({
    id: 'edge-moment',
    title: `Edge moment at the ${end}`,
    statement:
      "By the method that the project chooses; it enters the layered shells as the joint's load.",
    formula: `${k}*P*e/2`,
    symbols: {
      [k]: ['factor by the chosen method', ''],
      P: LOAD,
      e: ['lever of the load', 'mm'],
    },
    result: ['M', `moment at the ${end} per width`, 'N'],
    source: chosen === 'goland-reissner' ? GOLAND : HART_SMITH,
    domains: DOMAINS,
  });
};
