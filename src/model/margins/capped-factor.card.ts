/** Peel with the shear of the bonds capped at yield. */
import { COMMON_PRACTICE, equation, type Named } from '../card.ts';

const SHELLS = 'Layered shells with the shear capped at yield, section 10 of the method.';
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
const FACTOR: Named = ['factor on the loads, as found', ''];
const LOAD: Named = ['load at this clocking', 'N'];

export const cappedPeel = equation({
  id: 'capped-peel',
  title: 'Peel with the shear capped at yield',
  statement:
    'Where the bond has yielded its shear is given, and the shells are linear again: peel by temperature and by the shear that flows, and peel that the load adds.',
  formula: 'sigma_f + lambda*P*sigma_1',
  symbols: {
    sigma_f: ['peel by temperature and flow, from the capped shells', 'MPa'],
    lambda: FACTOR,
    P: LOAD,
    sigma_1: ['peel per newton, from the capped shells', 'MPa/N'],
  },
  result: ['sigma', 'peel, shear capped at yield', 'MPa'],
  source: SHELLS,
  domains: DOMAINS,
});

export const cappedShear = equation({
  id: 'capped-shear',
  title: 'Shear, capped at yield',
  statement:
    'Shear along the axis from the capped shells, with that around it by the shear lag, never above yield.',
  formula: 'min(tau_p, sqrt((tau_f + lambda*P*tau_1)^2 + (lambda*tau_theta)^2))',
  symbols: {
    tau_p: ['yield shear of the adhesive', 'MPa'],
    tau_f: ['shear along by temperature and flow, from the capped shells', 'MPa'],
    lambda: FACTOR,
    P: LOAD,
    tau_1: ['shear along per newton, from the capped shells', 'MPa/N'],
    tau_theta: ['shear around per load factor, from the shear lag', 'MPa'],
  },
  result: ['tau', 'shear, capped at yield', 'MPa'],
  source: SHELLS,
  domains: DOMAINS,
});

export const peelUse = equation({
  id: 'peel-use',
  title: 'Peel over peel strength',
  statement: 'Peel ends the joint where it is the strength: at the factor found, this is 1.',
  formula: 'sigma/sigma_p',
  symbols: {
    sigma: ['peel, shear capped at yield', 'MPa'],
    sigma_p: ['peel strength of the adhesive', 'MPa'],
  },
  result: ['u', 'use of the peel strength', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});

export const shareOfStrength = equation({
  id: 'peel-share',
  title: 'Peel over peel strength',
  statement: 'How much of the peel strength the largest peel of this state takes.',
  formula: 'sigma/sigma_p',
  symbols: {
    sigma: ['largest peel in the bond', 'MPa'],
    sigma_p: ['peel strength of the adhesive', 'MPa'],
  },
  result: ['u', 'share of the peel strength', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});

export const pliesUse = equation({
  id: 'plies-use',
  title: 'Between the plies',
  statement:
    'The face of the laminate carries the stress of the bond; root of the squares of the shares of its strengths across and between its plies. At the factor found, this is 1.',
  formula: 'sqrt((max(sigma, 0)/Z_t)^2 + (tau/S_13)^2)',
  symbols: {
    sigma: ['peel, shear capped at yield', 'MPa'],
    Z_t: ['strength across the plies', 'MPa'],
    tau: ['shear, capped at yield', 'MPa'],
    S_13: ['shear strength between the plies', 'MPa'],
  },
  result: ['u', 'use of the criterion', ''],
  source: COMMON_PRACTICE,
  domains: DOMAINS,
});

export const shearDecides = equation({
  id: 'shear-first',
  title: 'Shear comes first',
  statement:
    'The bonds fail in shear before this mode is reached. Its factor is the least that it could be: that of adhesive, ultimate strain, in the same case and gap, or the elastic one where that is larger.',
  formula: 'max(lambda_u, lambda_e)',
  symbols: {
    lambda_u: ['factor at which the adhesive reaches its ultimate strain', ''],
    lambda_e: ['factor at which the elastic shells reach the mode', ''],
  },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: COMMON_PRACTICE,
});
