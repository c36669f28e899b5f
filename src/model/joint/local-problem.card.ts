/** Loads at a clocking, and stiffness of the walls under them. */
import { COMMON_PRACTICE, equation, type Named } from '../card.ts';

const BEAM = 'Common beam theory, no source.';
const FORCE: Named = ['axial force of the case', 'N'];
const RADIUS: Named = ['reference radius: of the bond, or of the tube between two', 'mm'];
const ANGLE: Named = ['clocking from the plane of bending', 'rad'];

export const axialLoad = equation({
  id: 'axial-load',
  title: 'Line load at the clocking',
  statement:
    'Force and moment as the line load at this clocking, taken all the way round: pure force and pure bending are then both exact.',
  formula: 'F + 2*M*cos(theta)/r',
  symbols: { F: FORCE, M: ['moment of the case', 'N*mm'], theta: ANGLE, r: RADIUS },
  result: ['P', 'axial load at this clocking', 'N'],
  source: BEAM,
});

export const flatLoad = equation({
  id: 'axial-load',
  title: 'Load',
  statement: 'A flat joint carries the force of the case.',
  formula: 'F',
  symbols: { F: FORCE },
  result: ['P', 'axial load', 'N'],
  source: BEAM,
});

export const hoopLoad = equation({
  id: 'hoop-load',
  title: 'Load around the tube at the clocking',
  statement:
    'Torque and transverse shear as the circumferential line load at this clocking, taken all the way round.',
  formula: 'T/r + 2*V*sin(theta)',
  symbols: {
    T: ['torque of the case', 'N*mm'],
    r: RADIUS,
    V: ['transverse shear of the case', 'N'],
    theta: ANGLE,
  },
  result: ['P_theta', 'circumferential load at this clocking', 'N'],
  source: BEAM,
});

const stiffnessOf = (wall: string) => [`K_${wall}`, 'stiffness of the wall', 'N'] as const;

/** @param wall `t` or `s` @param name the part */
export const pulledWall = (wall: string, name: string) =>
  equation({
    id: `wall-stiffness-${wall}`,
    title: `Stiffness of the ${name}`,
    statement: 'Force per strain of the wall along the axis.',
    formula: 'E*A',
    symbols: { E: ['axial modulus', 'MPa'], A: ['area of the wall', 'mm^2'] },
    result: stiffnessOf(wall),
    source: BEAM,
    domains: ['thick-wall'],
  });

export const bentWall = (wall: string, name: string) =>
  equation({
    id: `wall-stiffness-${wall}`,
    title: `Stiffness of the ${name}`,
    statement:
      'Force per strain of the wall along the axis: flexibility under force and under bending, each by its share of the line load.',
    formula: 'E/(w_F/A + w_M*r^2/(2*I))',
    symbols: {
      E: ['axial modulus', 'MPa'],
      w_F: ['share of the force in the line load', ''],
      w_M: ['share of the moment in the line load', ''],
      A: ['area of the wall', 'mm^2'],
      I: ['second moment of the wall about a diameter', 'mm^4'],
      r: RADIUS,
    },
    result: stiffnessOf(wall),
    source: `${BEAM} The weighting: ${COMMON_PRACTICE.toLowerCase()}`,
    domains: ['thick-wall'],
  });

export const twistedWall = (wall: string, name: string) =>
  equation({
    id: `wall-torsion-${wall}`,
    title: `Torsional stiffness of the ${name}`,
    statement: 'Circumferential force per shear strain of the wall, at the reference radius.',
    formula: 'G*J/r^2',
    symbols: {
      G: ['in-plane shear modulus', 'MPa'],
      J: ['polar second moment of the wall', 'mm^4'],
      r: RADIUS,
    },
    result: stiffnessOf(wall),
    source: BEAM,
    domains: ['thick-wall'],
  });

export const equilibrium = equation({
  id: 'shared-load',
  title: 'How the bonds share the load',
  statement:
    'Two bonds, or a tapered wall, have no closed form that fits on a card: the equations of section 4 are solved, and what the bonds hand over is the load.',
  formula: 'N_1 + N_2',
  symbols: {
    N_1: ['force that the first bond hands over, as solved', 'N'],
    N_2: ['force that the second bond hands over, as solved; 0 with one bond', 'N'],
  },
  result: ['P', 'load at this clocking', 'N'],
  source: 'L. J. Hart-Smith (1973), double laps; equilibrium.',
});
