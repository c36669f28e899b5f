/** What the bond carries at most, and its durability trough. */
import { COMMON_PRACTICE, equation } from '../card.ts';

const HART_SMITH = 'L. J. Hart-Smith (1973), elastic-plastic adhesive.';

export const slipUse = equation({
  id: 'slip-use',
  title: 'Slip over slip at failure',
  statement:
    'The bond fails where an end has slipped as far as the adhesive can: at the factor found, this is 1.',
  formula: 's/s_u',
  symbols: { s: ['slip at the end', 'mm'], s_u: ['slip at failure', 'mm'] },
  result: ['u', 'use of the slip at failure', ''],
  source: HART_SMITH,
  domains: [
    'short-overlap',
    'thick-wall',
    'outside-table',
    'gap-outside-table',
    'whole-bond-flows',
  ],
});

export const resultantSlip = equation({
  id: 'end-slip',
  title: 'Slip at the end',
  statement:
    'Two bonds, two directions or a taper: the slips are those of the numerical solution (section 7 of the method) at the factor found, along and around together.',
  formula: 'sqrt(s_x^2 + s_theta^2)',
  symbols: {
    s_x: ['slip along the axis, as solved', 'mm'],
    s_theta: ['slip around the axis, as solved', 'mm'],
  },
  result: ['s', 'slip at the end', 'mm'],
  source: HART_SMITH,
});

export const wornByTemperature = equation({
  id: 'slip-use',
  title: 'Failed by temperature alone',
  statement: 'Temperature alone takes an end to its slip at failure: nothing is left for the load.',
  formula: 'max(0, 1 - s/s_u)',
  symbols: { s: ['slip at the end, without load', 'mm'], s_u: ['slip at failure', 'mm'] },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: HART_SMITH,
});

export const wornForSure = equation({
  id: 'slip-use',
  title: 'Failed by temperature alone',
  statement:
    'Whatever the bonds give from end to end, temperature alone takes an end past its slip at failure: nothing is left for the load.',
  formula: 'max(0, 1 - s_min/s_u)',
  symbols: {
    s_min: ['slip at the end, without load, at least', 'mm'],
    s_u: ['slip at failure', 'mm'],
  },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: 'equilibrium of the walls, bonds flowing from end to end',
});

export const troughUse = equation({
  id: 'trough-ratio',
  title: 'Shear in the trough over yield',
  statement:
    'A bond that rests somewhere does not creep: the lowest shear along it may be a tenth of yield. At the factor found it is that, unless the bond fails before.',
  formula: 'tau_min/tau_p',
  symbols: {
    tau_min: ['lowest shear along the bond, elastic-plastic, as solved', 'MPa'],
    tau_p: ['yield shear of the adhesive', 'MPa'],
  },
  result: ['r', 'lowest shear over yield', ''],
  source: 'L. J. Hart-Smith (1973), a tenth of yield.',
  domains: ['short-overlap', 'thick-wall'],
});

export const troughOutlasts = equation({
  id: 'trough-outlasts',
  title: 'The trough outlasts the bond',
  statement:
    'Up to the load at which the bond fails its trough is below a tenth of yield: the factor is that of failure.',
  formula: 'lambda_u',
  symbols: {
    lambda_u: ['factor at which the adhesive reaches its ultimate strain at this clocking', ''],
  },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: COMMON_PRACTICE,
});

export const troughGone = equation({
  id: 'trough-gone',
  title: 'No trough even without load',
  statement:
    'Temperature alone keeps the whole bond above a tenth of yield: nothing is left for the load.',
  formula: 'max(0, 0.1 - tau_min/tau_p)',
  symbols: {
    tau_min: ['lowest shear along the bond without load', 'MPa'],
    tau_p: ['yield shear of the adhesive', 'MPa'],
  },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: 'L. J. Hart-Smith (1973), a tenth of yield.',
});

export const carried = equation({
  id: 'bond-strength',
  title: 'Strength of the bond',
  statement:
    'What the bonds hand over when an end fails, over the load of the case at this clocking: so many times the case the bond carries.',
  formula: '(N_1 + N_2)/P',
  symbols: {
    N_1: ['force that the first bond hands over at failure, as solved', 'N'],
    N_2: ['force that the second bond hands over at failure; 0 with one bond', 'N'],
    P: ['load at this clocking', 'N'],
  },
  result: ['lambda', 'factor on the loads of the case', ''],
  source: 'Equilibrium.',
});
