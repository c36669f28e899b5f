/** Membrane stress in a wall, per load factor. */
import { equation, type Named } from '../card.ts';

const BEAM = 'Common beam theory, no source; shares from the shear lag.';
const SHARE: Named = ['share of the force in this wall here, from the shear lag', ''];
const FORCE: Named = ['axial force of the case', 'N'];
const AREA: Named = ['area of the wall here', 'mm^2'];

export const flatAxial = equation({
  id: 'wall-axial',
  title: 'Stress along the wall, by the load',
  statement: 'The share of the force that this wall carries here, over its area.',
  formula: 'n_F*F/A',
  symbols: { n_F: SHARE, F: FORCE, A: AREA },
  result: ['sigma_1', 'stress along per load factor', 'MPa'],
  source: BEAM,
  domains: ['short-overlap'],
});

export const tubeAxial = equation({
  id: 'wall-axial',
  title: 'Stress along the wall, by the loads',
  statement: 'The shares of force and moment that this wall carries here, at its outer radius.',
  formula: 'n_F*F/A + n_M*M*z*cos(theta)',
  symbols: {
    n_F: SHARE,
    F: FORCE,
    A: AREA,
    n_M: ['share of the moment in this wall here, from the shear lag', ''],
    M: ['moment of the case', 'N*mm'],
    z: ['outer radius over second moment here', '1/mm^3'],
    theta: ['clocking from the plane of bending', 'rad'],
  },
  result: ['sigma_1', 'stress along per load factor', 'MPa'],
  source: BEAM,
  domains: ['short-overlap', 'thick-wall'],
});

export const tubeShear = equation({
  id: 'wall-shear',
  title: 'Shear in the wall, by the loads',
  statement:
    'The share of torque and transverse shear that this wall carries here; the shear of a thin tube peaks at twice its mean.',
  formula: 'n_T*T*y + n_T*2*V*sin(theta)/A',
  symbols: {
    n_T: ['share of torque and shear in this wall here, from the shear lag', ''],
    T: ['torque of the case', 'N*mm'],
    y: ['outer radius over polar moment here', '1/mm^3'],
    V: ['transverse shear of the case', 'N'],
    theta: ['clocking from the plane of bending', 'rad'],
    A: AREA,
  },
  result: ['tau_1', 'shear per load factor', 'MPa'],
  source: BEAM,
  domains: ['short-overlap', 'thick-wall'],
});

export const thermalAxial = equation({
  id: 'wall-thermal',
  title: 'Stress along the wall, by temperature',
  statement: 'What the other walls keep this one from expanding by, over its area.',
  formula: 'N_T/A',
  symbols: { N_T: ['thermal force in this wall here, from the shear lag', 'N'], A: AREA },
  result: ['sigma_T', 'stress along by temperature', 'MPa'],
  source: BEAM,
});
