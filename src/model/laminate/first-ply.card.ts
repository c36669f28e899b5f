/** From the strain of a wall to the stress in a ply and its criterion. */
import { COMMON_PRACTICE, equation, type Named } from '../card.ts';

const CLT = 'Classical lamination theory.';
const FLEX = 'mm/N';
const FORCES = {
  N_x: ['force along at the factor', 'N/mm'],
  N_theta: ['hoop force at the factor', 'N/mm'],
  N_s: ['shear force at the factor', 'N/mm'],
  DeltaT: ['service less stress-free temperature', 'K'],
} as const satisfies Record<string, Named>;

const LAMBDA: Named = ['factor on the loads, as found', ''];
const WALL: Named = ['wall here', 'mm'];

export const forceAlong = equation({
  id: 'wall-force-along',
  title: 'Force along in the wall',
  statement: 'Membrane stress at the factor found, over the wall, per length of its middle.',
  formula: '(sigma_T + lambda*sigma_1)*t',
  symbols: {
    sigma_T: ['stress along by temperature', 'MPa'],
    lambda: LAMBDA,
    sigma_1: ['stress along per load factor', 'MPa'],
    t: WALL,
  },
  result: ['N_x', 'force along at the factor', 'N/mm'],
  source: CLT,
});

export const forceAround = equation({
  id: 'wall-force-around',
  title: 'Hoop force in the wall',
  statement: 'Hoop force by temperature and by the load; a flat joint has none.',
  formula: 'n_T + lambda*n_1*P',
  symbols: {
    n_T: ['hoop force by temperature, from the layered shells', 'N/mm'],
    lambda: LAMBDA,
    n_1: ['hoop force per newton, from the layered shells', '1/mm'],
    P: ['load at this clocking', 'N'],
  },
  result: ['N_theta', 'hoop force at the factor', 'N/mm'],
  source: 'Layered shells, section 10 of the method.',
});

export const forceShear = equation({
  id: 'wall-force-shear',
  title: 'Shear force in the wall',
  statement: 'Shear at the factor found, over the wall.',
  formula: 'lambda*tau_1*t',
  symbols: { lambda: LAMBDA, tau_1: ['shear per load factor', 'MPa'], t: WALL },
  result: ['N_s', 'shear force at the factor', 'N/mm'],
  source: CLT,
});

const wallStrain = (
  id: string,
  title: string,
  row: readonly [string, string, string],
  result: readonly [string, string],
) =>
  equation<string>({
    id,
    title,
    statement:
      'From the forces in the wall, by the inverse of its stiffness A, and the free expansion of the whole stack.',
    formula: `${row[0]}*N_x + ${row[1]}*N_theta + ${row[2]}*N_s + alpha*DeltaT`,
    symbols: {
      ...FORCES,
      [row[0]]: ['flexibility of the stack', FLEX],
      [row[1]]: ['flexibility of the stack', FLEX],
      [row[2]]: ['flexibility of the stack', FLEX],
      alpha: ['free expansion of the stack', '1/K'],
    },
    result: [...result, ''],
    source: CLT,
    domains: ['curved-plies', 'thick-wall'],
  });

export const strainAlong = wallStrain(
  'wall-strain-along',
  'Strain of the wall along',
  ['a_11', 'a_12', 'a_16'],
  ['epsilon_x', 'strain along'],
);
export const strainAround = wallStrain(
  'wall-strain-around',
  'Strain of the wall around',
  ['a_12', 'a_22', 'a_26'],
  ['epsilon_theta', 'strain around'],
);
export const strainShear = wallStrain(
  'wall-strain-shear',
  'Shear strain of the wall',
  ['a_16', 'a_26', 'a_66'],
  ['gamma', 'shear strain'],
);

export const curvature = equation({
  id: 'wall-curvature',
  title: 'Curvature of the wall',
  statement: 'Bending of the wall along, over its bending stiffness: strain grows outward by it.',
  formula: '-(m_T + lambda*m_1*P)/D',
  symbols: {
    m_T: ['moment in the wall by temperature, from the layered shells', 'N'],
    lambda: ['factor on the loads, as found', ''],
    m_1: ['moment in the wall per newton, from the layered shells', ''],
    P: ['load at this clocking', 'N'],
    D: ['bending stiffness of the wall', 'N*mm'],
  },
  result: ['kappa', 'curvature along', '1/mm'],
  source: CLT,
  domains: ['thick-bond'],
});

const turned = {
  epsilon_x: ['strain along', ''],
  kappa: ['curvature along', '1/mm'],
  z: ['height of the face in the wall, outward', 'mm'],
  epsilon_theta: ['strain around', ''],
  gamma: ['shear strain', ''],
  phi: ['angle of the ply from the axis', 'rad'],
} as const satisfies Record<string, Named>;

const plyStrain = (
  id: string,
  title: string,
  statement: string,
  formula: string,
  alpha: string,
  result: readonly [string, string],
) =>
  equation<string>({
    id,
    title,
    statement,
    formula,
    symbols: {
      ...turned,
      ...(alpha === ''
        ? {}
        : {
            [alpha]: ['free expansion of the ply in this direction', '1/K'] as Named,
            DeltaT: FORCES.DeltaT,
          }),
    },
    result: [...result, ''],
    source: CLT,
    domains: ['curved-plies'],
  });

export const fibreStrain = plyStrain(
  'ply-strain-1',
  'Strain along the fibres',
  'The strain of the wall at the face of the ply, seen along its fibres, less its free expansion: what makes stress.',
  'cos(phi)^2*(epsilon_x + z*kappa) + sin(phi)^2*epsilon_theta + sin(phi)*cos(phi)*gamma - alpha_1*DeltaT',
  'alpha_1',
  ['epsilon_1', 'strain along the fibres that makes stress'],
);
export const crossStrain = plyStrain(
  'ply-strain-2',
  'Strain across the fibres',
  'The same across the fibres.',
  'sin(phi)^2*(epsilon_x + z*kappa) + cos(phi)^2*epsilon_theta - sin(phi)*cos(phi)*gamma - alpha_2*DeltaT',
  'alpha_2',
  ['epsilon_2', 'strain across the fibres that makes stress'],
);
export const plyShear = plyStrain(
  'ply-strain-12',
  'Shear strain of the ply',
  'The same in shear.',
  '2*sin(phi)*cos(phi)*(epsilon_theta - epsilon_x - z*kappa) + (cos(phi)^2 - sin(phi)^2)*gamma',
  '',
  ['gamma_12', 'shear strain of the ply'],
);

const strains = {
  epsilon_1: ['strain along the fibres that makes stress', ''],
  epsilon_2: ['strain across the fibres that makes stress', ''],
  E_1: ['modulus along the fibres', 'MPa'],
  E_2: ['modulus across the fibres', 'MPa'],
  nu_12: ["Poisson's ratio of the ply", ''],
} as const satisfies Record<string, Named>;

export const fibreStress = equation({
  id: 'ply-stress-1',
  title: 'Stress along the fibres',
  statement: 'Plane stress in the ply.',
  formula: '(E_1*epsilon_1 + nu_12*E_2*epsilon_2)/(1 - nu_12^2*E_2/E_1)',
  symbols: strains,
  result: ['sigma_1', 'stress along the fibres', 'MPa'],
  source: CLT,
});
export const crossStress = equation({
  id: 'ply-stress-2',
  title: 'Stress across the fibres',
  statement: 'Plane stress in the ply.',
  formula: 'E_2*(epsilon_2 + nu_12*epsilon_1)/(1 - nu_12^2*E_2/E_1)',
  symbols: strains,
  result: ['sigma_2', 'stress across the fibres', 'MPa'],
  source: CLT,
});
export const shearStress = equation({
  id: 'ply-stress-12',
  title: 'Shear stress in the ply',
  statement: 'Plane stress in the ply.',
  formula: 'G_12*gamma_12',
  symbols: {
    G_12: ['shear modulus of the ply', 'MPa'],
    gamma_12: ['shear strain of the ply', ''],
  },
  result: ['tau_12', 'shear stress in the ply', 'MPa'],
  source: CLT,
});

export const tsaiWu = equation({
  id: 'tsai-wu',
  title: 'Tsai-Wu',
  statement:
    'The ply fails where the sum is 1; at the factor found it is. The interaction of the two normal stresses is minus half the root of the product of their squares, by common practice.',
  formula:
    '(1/X_t - 1/X_c)*sigma_1 + (1/Y_t - 1/Y_c)*sigma_2 + sigma_1^2/(X_t*X_c) + sigma_2^2/(Y_t*Y_c) + (tau_12/S)^2 - sigma_1*sigma_2/sqrt(X_t*X_c*Y_t*Y_c)',
  symbols: {
    sigma_1: ['stress along the fibres', 'MPa'],
    sigma_2: ['stress across the fibres', 'MPa'],
    tau_12: ['shear stress in the ply', 'MPa'],
    X_t: ['tensile strength along the fibres', 'MPa'],
    X_c: ['compressive strength along the fibres', 'MPa'],
    Y_t: ['tensile strength across the fibres', 'MPa'],
    Y_c: ['compressive strength across the fibres', 'MPa'],
    S: ['shear strength of the ply', 'MPa'],
  },
  result: ['u', 'Tsai-Wu sum', ''],
  source: 'S. W. Tsai, E. M. Wu (1971).',
  domains: ['curved-plies', 'thick-wall', 'short-overlap', 'thick-bond'],
});

export const maximumStrain = equation({
  id: 'maximum-strain',
  title: 'Maximum strain',
  statement:
    'The ply fails where a strain is what its strength over its modulus allows; at the factor found it is.',
  formula: 'abs(epsilon)*E/X',
  symbols: {
    epsilon: ['strain of the ply that decides', ''],
    E: ['modulus in this direction', 'MPa'],
    X: ['strength in this direction and sign', 'MPa'],
  },
  result: ['u', 'use of the allowable strain', ''],
  source: COMMON_PRACTICE,
  domains: ['curved-plies', 'thick-wall', 'short-overlap', 'thick-bond'],
});
