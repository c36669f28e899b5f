/** Figures of the drawn state. */
import { equation } from '../card.ts';

export const shearOfSlip = equation({
  id: 'peak-shear',
  title: 'Largest shear in the bond',
  statement:
    'Shear follows the slip up to yield and stays there. The slip is that of the solved state at this place.',
  formula: 'min(tau_p, k*s)',
  symbols: {
    tau_p: ['yield shear of the adhesive', 'MPa'],
    k: ['stiffness of the bond', 'MPa/mm'],
    s: ['slip at this place, as solved', 'mm'],
  },
  result: ['tau', 'largest shear in the bond', 'MPa'],
  source: 'O. Volkersen (1938); L. J. Hart-Smith (1973) past yield.',
  domains: ['short-overlap', 'thick-wall', 'outside-table', 'gap-outside-table'],
});

export const linearShear = equation({
  id: 'elastic-superposition',
  title: 'Elastic shear at the factor',
  statement: 'Below yield, shear is what temperature leaves and what the loads add.',
  formula: 'sqrt((tau_T + lambda*tau_1)^2 + (lambda*tau_theta)^2)',
  symbols: {
    tau_T: ['shear by temperature', 'MPa'],
    lambda: ['factor on the loads of the case', ''],
    tau_1: ['shear along per load factor', 'MPa'],
    tau_theta: ['shear around per load factor', 'MPa'],
  },
  result: ['tau', 'elastic shear', 'MPa'],
  source: 'O. Volkersen (1938).',
  domains: ['short-overlap', 'thick-wall'],
});
