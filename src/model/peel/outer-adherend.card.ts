import { equation } from '../card.ts';

export const estimate = equation({
  id: 'peel-estimate',
  title: 'An estimate to compare with',
  statement:
    'A plate on an elastic foundation, bent by the yield shear on its face: peel at the free end of the outer adherend of a double lap, the load at which the bond yields. No margin rests on it.',
  formula: 'tau_p*(3*E*(1 - nu_s^2)*t/(E_s*h))^(1/4)',
  symbols: {
    tau_p: ['yield shear of the adhesive', 'MPa'],
    E: ['modulus of the adhesive', 'MPa'],
    nu_s: ["Poisson's ratio of the outer adherend", ''],
    t: ['its wall at the mouth', 'mm'],
    E_s: ['its axial modulus', 'MPa'],
    h: ['gap', 'mm'],
  },
  result: ['sigma_est', 'peel by the estimate', 'MPa'],
  source: 'L. J. Hart-Smith (1973), double laps.',
});
