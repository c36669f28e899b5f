/** One bond with yielded ends, exact. */
import { equation, type Named } from '../card.ts';

const HART_SMITH =
  'L. J. Hart-Smith (1973), elastic-plastic adhesive; unequal walls and temperature.';
const OMEGA: Named = ['decay rate of the shear', '1/mm'];
const YIELD_SLIP: Named = ['slip at yield', 'mm'];
const DOMAINS = ['short-overlap', 'thick-wall'] as const;

export const endSlope = (end: 'root' | 'mouth') =>
  equation({
    id: 'end-slope',
    title: `Slope of the slip at the ${end}`,
    statement: `At the ${end} one wall carries the whole load: the slip grows towards the end by its strain, and by the mismatch of expansion.`,
    formula: `abs(lambda*a*P/K ${end === 'root' ? '-' : '+'} epsilon_T)`,
    symbols: {
      lambda: ['factor on the loads, as solved', ''],
      a: ['lever of the bond', ''],
      P: ['load at this clocking', 'N'],
      K: [`stiffness of the wall that carries the load at the ${end}`, 'N'],
      epsilon_T: ['mismatch strain', ''],
    },
    result: ['g', 'slope of the slip at the end', ''],
    source: HART_SMITH,
    domains: DOMAINS,
  });

export const endSlip = equation({
  id: 'end-slip',
  title: 'Slip at the end',
  statement:
    'Over the yielded length the shear is constant, so the slip is a parabola: from slip at yield at its front to its slope at the end.',
  formula: 's_e + g*c_p - omega^2*s_e*c_p^2/2',
  symbols: {
    s_e: YIELD_SLIP,
    g: ['slope of the slip at the end', ''],
    c_p: ['yielded length at this end, as solved', 'mm'],
    omega: OMEGA,
  },
  result: ['s', 'slip at the end', 'mm'],
  source: HART_SMITH,
  domains: DOMAINS,
});

export const flow = equation({
  id: 'flow-load',
  title: 'The whole bond flows',
  statement:
    'Before an end slips as far as the adhesive can, the whole bond has yielded: it carries its area times its yield shear and no more.',
  formula: 'a*c*tau_p*L/abs(P)',
  symbols: {
    a: ['lever of the bond', ''],
    c: ['width of the bond', 'mm'],
    tau_p: ['yield shear of the adhesive', 'MPa'],
    L: ['overlap', 'mm'],
    P: ['load at this clocking', 'N'],
  },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: 'Equilibrium.',
  domains: ['whole-bond-flows'],
});

export const troughShear = equation({
  id: 'trough-shear',
  title: 'Lowest shear in the trough',
  statement:
    'Between two yielded ends an elastic trough is left; the shear falls from yield at both its ends to its middle.',
  formula: '2*tau_p/(exp(omega*l/2) + exp(-omega*l/2))',
  symbols: {
    tau_p: ['yield shear of the adhesive', 'MPa'],
    omega: OMEGA,
    l: ['length of the elastic trough, as solved', 'mm'],
  },
  result: ['tau_min', 'lowest shear along the bond', 'MPa'],
  source: HART_SMITH,
  domains: DOMAINS,
});
