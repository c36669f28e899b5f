/** A quasi-isotropic stack, and temperature with moisture: examples of a course. */
import { inPlaneConstants } from '../../../src/model/laminate/constants.ts';
import type { Triple } from '../../../src/model/laminate/plane.ts';
import type { Ply } from '../../../src/model/laminate/ply.ts';
import { makeStack, stiffnessOf } from '../../../src/model/laminate/stack.ts';
import { elasticPly } from '../../support/plies.ts';
import { type Case, lazy, printed } from '../case.ts';
import { figures, named } from './laminate-figures.ts';

const lin =
  'K. Y. Lin, course AA432x on composite materials (edX), model answers as quoted in a public test suite';
const linInputs =
  'ply: E1 = 20e6, E2 = 1.5e6, G12 = 1e6 psi, ν12 = 0.34, 0.0075 in; α = 0.2e-6, 20e-6 1/°F';
const linPly = elasticPly({
  axialModulus: 20e6,
  transverseModulus: 1.5e6,
  shearModulus: 1e6,
  poisson: 0.34,
  thickness: 0.0075,
  axialExpansion: 0.2e-6,
  transverseExpansion: 20e-6,
});
const quasi = lazy(() => stiffnessOf(makeStack(linPly, [0, 45, 90, -45, -45, 90, 45, 0])));
export const quasiIsotropic: Case = {
  id: 'laminate-quasi-isotropic',
  title: 'Quasi-isotropic stack: stretching and bending',
  source: lin,
  tag: 'second-hand',
  inputs: [linInputs, '[0/45/90/-45]s'],
  checks: [
    ...figures(
      'lb/in',
      () => ({ ...quasi().a }),
      { c11: '525698', c22: '525698', c12: '155811', c66: '184943' },
      named('A'),
    ),
    ...figures(
      'lb·in',
      () => ({ ...quasi().d }),
      { c11: '250.495', c12: '32.687', c22: '93.036', c16: '23.619', c26: '23.619', c66: '41.427' },
      named('D'),
    ),
  ],
};

const deltaT = -270;
const wet = lazy(() => {
  // One unit of moisture swells the ply by 0.2e-4 and 20e-4: the same as another expansion here.
  const swelling = (alpha: number, beta: number): number => alpha + beta / deltaT;
  const ply: Ply = {
    ...linPly,
    axialExpansion: swelling(0.2e-6, 0.2e-4),
    transverseExpansion: swelling(20e-6, 20e-4),
  };
  const { thermalForce, thermalMoment } = stiffnessOf(makeStack(ply, [0, 45, 90, 45, -45]));
  return { thermalForce, thermalMoment };
});
const total = (part: 'thermalForce' | 'thermalMoment', applied: Triple, i: number) => (): number =>
  applied[i]! + wet()[part][i]! * deltaT;
export const hygrothermal: Case = {
  id: 'laminate-hygrothermal',
  title: 'Forces of temperature and moisture',
  source: lin,
  tag: 'second-hand',
  inputs: [
    linInputs,
    'β = 0.2e-4, 20e-4; [0/45/90/45/-45], ΔT = −270 °F, ΔM = 1; applied N = (300, 100, 200) lb/in, M = (5, 3, 1) lb',
  ],
  checks: [
    ...['157.552', '-42.4476', '210.226'].map((text, i) =>
      printed(
        `N${['x', 'y', 'xy'][i]}, total`,
        'lb/in',
        text,
        total('thermalForce', [300, 100, 200], i),
      ),
    ),
    ...['4.84661', '3.15339', '.846607'].map((text, i) =>
      printed(`M${['x', 'y', 'xy'][i]}, total`, 'lb', text, total('thermalMoment', [5, 3, 1], i)),
    ),
  ],
};

export const quasiConstants: Case = {
  id: 'laminate-quasi-isotropic-constants',
  title: 'Quasi-isotropic stack: engineering constants and expansion',
  source:
    'closed form of the quasi-isotropic stack from the invariants of the ply; no publication with these figures was found',
  tag: 'independent',
  inputs: [linInputs, '[0/45/90/-45]s'],
  checks: figures(
    '',
    () => {
      const { axialModulus, poisson, shearModulus, axialExpansion } = inPlaneConstants(quasi());
      return { axialModulus, poisson, shearModulus, axialExpansion };
    },
    {
      axialModulus: '7.9920e6',
      poisson: '0.29639',
      shearModulus: '3.0824e6',
      axialExpansion: '1.96723e-6',
    },
    (key) =>
      ({
        axialModulus: 'Ex, psi',
        poisson: 'νxy',
        shearModulus: 'Gxy, psi',
        axialExpansion: 'αx, 1/°F',
      })[key]!,
  ),
};
