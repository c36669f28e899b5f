/** What pulls the layered shells, and the elastic stresses that they answer with. */
import { equation, type Named } from '../card.ts';

const FORCE: Named = ['axial force of the case', 'N'];

export const coveredLoad = (what: 'peel' | 'shear') =>
  equation({
    id: `${what}-load`,
    title: `Load at the clocking, for ${what}`,
    statement: `Force and moment as one line load at the tube's mean radius. The moment's part counts by what it does at this place in ${what}: the first harmonic of the shells over the same line load all round.`,
    formula: 'F + c*2*M*cos(theta)/R_t',
    symbols: {
      F: FORCE,
      c: ["weight of the moment's part at this place", ''],
      M: ['moment of the case', 'N*mm'],
      theta: ['clocking from the plane of bending', 'rad'],
      R_t: ["tube's mean radius", 'mm'],
    },
    result: ['P', 'load at this clocking', 'N'],
    source: 'Layered shells, section 10 of the method: first harmonic over the same line load.',
  });

export const wallLoad = equation({
  id: 'wall-load',
  title: 'Load that bends the walls',
  statement: "Force and moment as the line load at the tube's mean radius.",
  formula: 'F + 2*M*cos(theta)/R_t',
  symbols: {
    F: FORCE,
    M: ['moment of the case', 'N*mm'],
    theta: ['clocking from the plane of bending', 'rad'],
    R_t: ["tube's mean radius", 'mm'],
  },
  result: ['P', 'load at this clocking', 'N'],
  source: 'Common beam theory, no source.',
});

const SHELLS =
  'Layered shells, section 10 of the method; Goland and Reissner (1944) for their idea.';
const DOMAINS = [
  'short-overlap',
  'thick-wall',
  'built-in-root',
  'thick-bond',
  'unbalanced-lap',
  'compressed-lap',
];

export const elasticPeel = equation({
  id: 'elastic-peel',
  title: 'Elastic peel at the factor',
  statement:
    'Peel is what temperature leaves and what the load adds; both come from the layered shells at this place.',
  formula: 'sigma_T + lambda*sigma_1*P',
  symbols: {
    sigma_T: ['peel by temperature, from the layered shells', 'MPa'],
    lambda: ['factor on the loads', ''],
    sigma_1: ['peel per newton, from the layered shells', 'MPa/N'],
    P: ['load at this clocking', 'N'],
  },
  result: ['sigma', 'elastic peel', 'MPa'],
  source: SHELLS,
  domains: DOMAINS,
});

export const elasticShear = equation({
  id: 'elastic-shear',
  title: 'Elastic shear at the factor',
  statement:
    'Shear along the axis from the layered shells, around it by the shear lag of torque and transverse shear, together.',
  formula: 'sqrt((tau_T + lambda*tau_1*P)^2 + (lambda*tau_theta)^2)',
  symbols: {
    tau_T: ['shear along by temperature, from the layered shells', 'MPa'],
    lambda: ['factor on the loads', ''],
    tau_1: ['shear along per newton, from the layered shells', 'MPa/N'],
    P: ['load at this clocking', 'N'],
    tau_theta: ['shear around per load factor, from the shear lag', 'MPa'],
  },
  result: ['tau', 'elastic shear', 'MPa'],
  source: SHELLS,
  domains: DOMAINS,
});

/** @param capped whether the bond yields and the shear is capped */
export const drawnPeel = (capped: boolean) =>
  equation({
    id: 'peak-peel',
    title: 'Largest peel in the bond',
    statement: capped
      ? 'The bond yields under these loads: with its shear capped at yield, peel by temperature and flow, and what the load adds.'
      : 'Peel is what temperature leaves and what the load adds; both come from the layered shells at this place.',
    formula: 'sigma_f + lambda*P*sigma_1',
    symbols: {
      sigma_f: [
        capped
          ? 'peel by temperature and flow, from the capped shells'
          : 'peel by temperature, from the layered shells',
        'MPa',
      ],
      lambda: ['factor on the loads of the case', ''],
      P: ['load at this clocking', 'N'],
      sigma_1: ['peel per newton, from the layered shells', 'MPa/N'],
    },
    result: ['sigma', 'largest peel in the bond', 'MPa'],
    source: SHELLS,
    domains: DOMAINS,
  });
