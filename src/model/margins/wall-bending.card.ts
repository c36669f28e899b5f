/** Stress on a face of a wall at a factor: membrane, bending and hoop. */
import { equation, type Named } from '../card.ts';

const SHELLS = 'Layered shells, section 10 of the method; plate theory.';
const DOMAINS = ['short-overlap', 'thick-wall', 'thick-bond', 'unbalanced-lap', 'compressed-lap'];

const shared = {
  lambda: ['factor on the loads, as found', ''],
  f: ['face: 1 outer or upper, -1 inner or lower', ''],
  m_T: ['moment in the wall by temperature, from the layered shells', 'N'],
  m_1: ['moment in the wall per newton, from the layered shells', ''],
  P: ['load at this clocking', 'N'],
  t: ['wall here', 'mm'],
} as const satisfies Record<string, Named>;

export const faceAlong = equation({
  id: 'face-along',
  title: 'Stress along, on the face',
  statement: 'Membrane stress and bending of the wall under the pull and peel of the bond.',
  formula: 'sigma_T + lambda*sigma_1 - f*6*(m_T + lambda*m_1*P)/t^2',
  symbols: {
    ...shared,
    sigma_T: ['stress along by temperature', 'MPa'],
    sigma_1: ['stress along per load factor', 'MPa'],
  },
  result: ['sigma_x', 'stress along on this face', 'MPa'],
  source: SHELLS,
  domains: DOMAINS,
});

export const faceAround = equation({
  id: 'face-around',
  title: 'Stress around, on the face',
  statement: 'Hoop force over the wall, and the share of bending that is kept from contracting.',
  formula: '(n_T + lambda*n_1*P)/t - nu*f*6*(m_T + lambda*m_1*P)/t^2',
  symbols: {
    ...shared,
    n_T: ['hoop force by temperature, from the layered shells', 'N/mm'],
    n_1: ['hoop force per newton, from the layered shells', '1/mm'],
    nu: ["Poisson's ratio of hoop stress under bending; 0 when flat", ''],
  },
  result: ['sigma_theta', 'stress around on this face', 'MPa'],
  source: SHELLS,
  domains: DOMAINS,
});

export const faceShear = equation({
  id: 'face-shear',
  title: 'Shear in the wall',
  statement: 'Shear grows with the loads alone.',
  formula: 'lambda*tau_1',
  symbols: { lambda: shared.lambda, tau_1: ['shear per load factor', 'MPa'] },
  result: ['tau', 'shear in the wall', 'MPa'],
  source: 'Common beam theory, no source.',
});
