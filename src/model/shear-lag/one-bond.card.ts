/** Elastic shear of one bond between uniform walls, at its ends. */
import { equation, type Named } from '../card.ts';

const VOLKERSEN = 'O. Volkersen (1938).';
const DOMAINS = ['short-overlap', 'thick-wall'] as const;

const lap = {
  a: ['lever of the bond, 1 at the reference radius', ''],
  k: ['stiffness of the bond', 'MPa/mm'],
  K_t: ['stiffness of the tube or strip', 'N'],
  K_s: ['stiffness of the outer adherend', 'N'],
} as const satisfies Record<string, Named>;
const WIDTH: Named = ['width of the bond', 'mm'];
const OMEGA: Named = ['decay rate of the shear', '1/mm'];
const LENGTH: Named = ['overlap', 'mm'];

export type Way = 'along' | 'around';
/** Symbols of the other direction carry its name. */
const mark = (way: Way): string => (way === 'along' ? '' : '_theta');
const id = (name: string, way: Way): string => (way === 'along' ? name : `${name}-around`);

export const decay = (way: Way) =>
  equation({
    id: id('decay-rate', way),
    title: `Decay of the shear ${way} the axis`,
    statement: 'How fast the shear falls from an end of the overlap towards its middle.',
    formula: 'a*sqrt(c*k*(1/K_t + 1/K_s))',
    symbols: { ...lap, c: WIDTH },
    result: ['omega', 'decay rate of the shear', '1/mm'],
    source: VOLKERSEN,
    domains: DOMAINS,
  });

/** At the mouth the odd part adds, at the root it takes away. */
export const loadShear = (way: Way, end: 'root' | 'mouth') =>
  equation({
    id: id('end-shear', way),
    title: `Shear ${way} the axis at the ${end}, by the load`,
    statement:
      'Shear is highest at the ends of the overlap: a part that both ends share, and a part by which the end of the stiffer wall has less.',
    formula: `P*omega/(2*a*c*tanh(omega*L/2)) ${end === 'mouth' ? '+' : '-'} k*a*P*(1/K_t - 1/K_s)*tanh(omega*L/2)/(2*omega)`,
    symbols: { P: ['load at this clocking', 'N'], omega: OMEGA, c: WIDTH, L: LENGTH, ...lap },
    result: [`tau_1${mark(way)}`, 'elastic shear per load factor', 'MPa'],
    source: VOLKERSEN,
    domains: DOMAINS,
  });

export const mismatch = equation({
  id: 'thermal-mismatch',
  title: 'Mismatch of expansion',
  statement: 'How much more the tube would expand than the outer adherend, were it free.',
  formula: '(alpha_t - alpha_s)*DeltaT',
  symbols: {
    alpha_t: ['expansion of the tube or strip', '1/K'],
    alpha_s: ['expansion of the outer adherend', '1/K'],
    DeltaT: ['service less stress-free temperature', 'K'],
  },
  result: ['epsilon_T', 'mismatch strain', ''],
  source: 'L. J. Hart-Smith (1973), thermal mismatch.',
});

export const thermalShear = (end: 'root' | 'mouth') =>
  equation({
    id: 'thermal-shear',
    title: `Shear at the ${end}, by temperature`,
    statement: 'Temperature shears both ends alike, in opposite directions.',
    formula: `${end === 'mouth' ? '' : '-'}k*epsilon_T*tanh(omega*L/2)/omega`,
    symbols: {
      k: lap.k,
      epsilon_T: ['mismatch strain', ''],
      omega: OMEGA,
      L: LENGTH,
    },
    result: ['tau_T', 'elastic shear by temperature, held fixed', 'MPa'],
    source: 'O. Volkersen (1938), with a thermal mismatch.',
    domains: DOMAINS,
  });
