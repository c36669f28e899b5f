/** Classical lamination theory: published examples, and three-dimensional elasticity. */
import {
  flexuralConstants,
  inPlaneConstants,
  throughConstants,
} from '../../../src/model/laminate/constants.ts';
import { firstPly, plyStates } from '../../../src/model/laminate/first-ply.ts';
import {
  type Plane,
  rowsOf,
  type Triple,
  times,
  turnBy,
} from '../../../src/model/laminate/plane.ts';
import { type Ply, reducedStiffness, turnStiffness } from '../../../src/model/laminate/ply.ts';
import { makeStack, respond, stiffnessOf } from '../../../src/model/laminate/stack.ts';
import { type LaminateConstant, laminateFixtures, stackOf } from '../../support/laminates.ts';
import { elasticPly } from '../../support/plies.ts';
import {
  type Case,
  type Comparison,
  group,
  lazy,
  printed,
  same,
  type Topic,
  type ValueCheck,
  value,
} from '../case.ts';

/** Several printed figures of one matrix or vector. */
const figures = (
  unit: string,
  computed: () => Readonly<Record<string, number>>,
  texts: Readonly<Record<string, string>>,
  name: (key: string) => string = (key) => key,
): ValueCheck[] =>
  Object.entries(texts).map(([key, text]) =>
    printed(name(key), unit, text, () => computed()[key]!),
  );

const named =
  (letter: string) =>
  (key: string): string =>
    key.replace('c', letter);

// ---- NASA RP-1351

const nettles =
  'A. T. Nettles, Basic Mechanics of Laminated Composite Plates, NASA RP-1351, October 1994';
const nettlesLamina =
  'ply: E1 = 20 010 000, E2 = 1 301 000, G12 = 1 001 000 psi, ν12 = 0.3, ν21 = 0.02 (rounded by the source; 0.01951 by symmetry), 0.005 in';
const nettlesPly = elasticPly({
  axialModulus: 20_010_000,
  transverseModulus: 1_301_000,
  shearModulus: 1_001_000,
  poisson: 0.3,
  thickness: 0.005,
});
const nettlesQ = reducedStiffness(nettlesPly, 0.02);
/** The ply whose own symmetric ν21 gives the Q that the source has with its rounded one. */
const roundedPly: Ply = {
  ...nettlesPly,
  axialModulus: nettlesQ.c11 - nettlesQ.c12 ** 2 / nettlesQ.c22,
  transverseModulus: nettlesQ.c22 - nettlesQ.c12 ** 2 / nettlesQ.c11,
  poisson: nettlesQ.c12 / nettlesQ.c22,
};
const nettlesStiffness = (angles: readonly number[]) =>
  lazy(() => stiffnessOf(makeStack(roundedPly, angles)));

const lamina: Case = {
  id: 'laminate-ply-stiffness',
  title: 'Stiffness of a ply, along its fibres and at 45°',
  source: nettles,
  tag: 'published',
  inputs: [nettlesLamina],
  checks: [
    ...figures(
      'psi',
      () => ({ ...nettlesQ }),
      { c11: '20130785', c12: '392656', c22: '1308853' },
      named('Q'),
    ),
    ...Object.entries({ c11: 6_557_237, c12: 4_555_238, c16: 4_705_483, c66: 5_163_582 }).map(
      ([key, expected]) =>
        value({
          name: key.replace('c', 'Q̄'),
          unit: 'psi',
          expected,
          computed: () => turnStiffness(nettlesQ, turnBy(45))[key as keyof Plane],
          tolerance: { absolute: 1 },
          why: 'the source turns Q already rounded to whole psi',
        }),
    ),
    value({
      name: 'Q11 with the symmetric ν21',
      unit: 'psi',
      expected: 20_130_785,
      computed: () => reducedStiffness(nettlesPly).c11,
      tolerance: { relative: 1.5e-4 },
      why: 'the rounding of ν21 alone is worth 0.015 %',
    }),
  ],
};

const twoPly = nettlesStiffness([0, 45]);
const coupling: Case = {
  id: 'laminate-coupling-two-plies',
  title: 'Coupling of a two-ply stack',
  source: `${nettles}, example 2`,
  tag: 'published',
  inputs: [nettlesLamina, '[0/45]'],
  checks: figures(
    'lb',
    // The source stacks from its top face: z of the other sense.
    () => negative(twoPly().b),
    { c11: '170', c12: '-52', c22: '-66', c16: '-59', c26: '-59', c66: '-52' },
    named('B'),
  ),
};
function negative(plane: Plane): Record<string, number> {
  return Object.fromEntries(Object.entries(plane).map(([key, x]) => [key, -x]));
}

const threePly = nettlesStiffness([90, 0, 45]);
const mixed: Case = {
  id: 'laminate-three-plies',
  title: 'Stretching and coupling of three plies',
  source: `${nettles}, example 9`,
  tag: 'published',
  inputs: [nettlesLamina, '90° at the bottom, then 0°, 45° at the top'],
  checks: [
    ...figures(
      'lb/in',
      () => ({ ...threePly().a }),
      { c11: '139984', c22: '139984', c16: '23527', c66: '35828' },
      named('A'),
    ),
    ...figures(
      'lb',
      () => ({ ...threePly().b }),
      { c11: '131.2', c12: '104', c16: '117.6', c26: '117.6', c66: '104' },
      named('B'),
    ),
    value({
      name: 'B22',
      unit: 'lb',
      expected: -339.4,
      printed: '-339.4',
      computed: () => threePly().b.c22,
      tolerance: { absolute: 0.07 },
      why: "the source's own stiffnesses give −339.34: its last digit is one too high",
    }),
  ],
};

const strip = lazy(() => {
  const stack = makeStack(roundedPly, [0, 45, 45, 0]);
  const answer = respond(stiffnessOf(stack), { force: [500, 0, 0] });
  const state = plyStates(stack, { ...answer, deltaT: 0 })[2]!;
  return { answer, state };
});
const components = ['1', '2', '12'] as const;
/** Half a unit of the last printed digit of the strains from which the source takes the stresses. */
const strainRounding = 5e-6;
const stressRounding: Triple = [
  (nettlesQ.c11 + nettlesQ.c12) * strainRounding,
  (nettlesQ.c12 + nettlesQ.c22) * strainRounding,
  nettlesQ.c66 * strainRounding,
];
const tension: Case = {
  id: 'laminate-ply-stress',
  title: 'Strains and ply stresses of a symmetric stack in tension',
  source: `${nettles}, example 3 (p. 46), as quoted in a public test suite`,
  tag: 'second-hand',
  inputs: [nettlesLamina, '[0/45]s, Nx = 500 lb/in'],
  remarks: [
    'The source takes the stresses from strains rounded to 1e-5; from those same strains the stiffness gives its stresses to the last digit.',
  ],
  checks: [
    ...(['.00221', '-.0007', '-.00115'] as const).map((text, i) =>
      // "-.0007" stands for -.00070 among its neighbours.
      value({
        name: ['εx', 'εy', 'γxy'][i]!,
        unit: '',
        expected: Number(text),
        printed: text,
        computed: () => strip().answer.strain[i]!,
        tolerance: { absolute: strainRounding },
        why: 'half of the fifth decimal, the last that is printed',
      }),
    ),
    ...(['.00018', '.00133', '-.00291'] as const).map((text, i) =>
      printed(`ε${components[i]} in the 45° ply`, '', text, () => strip().state.strain[i]!),
    ),
    ...[4146, 1812, -2913].flatMap((expected, i) => [
      value({
        name: `σ${components[i]} in the 45° ply`,
        unit: 'psi',
        expected,
        computed: () => strip().state.stress[i]!,
        tolerance: { absolute: stressRounding[i]! },
        why: "what the rounding of the source's strains is worth",
      }),
      value({
        name: `σ${components[i]} from the printed strains`,
        unit: 'psi',
        expected,
        computed: () => times(nettlesQ, [0.00018, 0.00133, -0.00291])[i]!,
        tolerance: { absolute: 0.6 },
        why: 'half of the last printed digit, and a little: the printed figures themselves give 1811.45 where 1812 is printed',
      }),
    ]),
  ],
};

// ---- Mallick

const mallick = 'P. K. Mallick, Fiber-Reinforced Composites, 3rd ed., 2008';
const notebooks =
  "figures from public course notebooks that work the book's examples; the book's own were not seen";
const fibres = 0.6;
const t300 = (thickness: number, expansions: Partial<Ply> = {}): Ply =>
  elasticPly({
    axialModulus: (fibres * 220 + (1 - fibres) * 3.6) * 1e9,
    transverseModulus: 1e9 / (fibres / 220 + (1 - fibres) / 3.6),
    shearModulus: 1e9 / (fibres / 91.7 + (1 - fibres) / 1.33),
    poisson: fibres * 0.2 + (1 - fibres) * 0.35,
    thickness,
    ...expansions,
  });
const t300Inputs =
  'ply by the rule of mixtures, fibres 60 %: Ef = 220, Em = 3.6, Gf = 91.7, Gm = 1.33 GPa, νf = 0.2, νm = 0.35';
const thick = t300(0.006);
const stiffnessSI = (angles: readonly number[]) =>
  lazy(() => stiffnessOf(makeStack(thick, angles)));
const angleTwo = stiffnessSI([45, -45]);
const angleFour = stiffnessSI([45, -45, -45, 45]);
const angleThree = stiffnessSI([45, 0, -45]);

const angleStacks: Case = {
  id: 'laminate-angle-plies',
  title: 'Stiffness of angle-ply stacks',
  source: `${mallick}, examples 3.6 and 3.7; ${notebooks}`,
  tag: 'second-hand',
  inputs: [t300Inputs, 'plies of 6 mm'],
  checks: [
    ...figures(
      'GPa',
      () => {
        const q = turnStiffness(reducedStiffness(thick), turnBy(45));
        return Object.fromEntries(Object.entries(q).map(([key, x]) => [key, x / 1e9]));
      },
      { c11: '40.1163', c12: '33.6079', c16: '31.3032', c66: '34.5680' },
      (key) => `${key.replace('c', 'Q̄')}, 45°`,
    ),
    ...figures(
      'N/m',
      () => ({ ...angleTwo().a }),
      { c11: '4.81395708e8', c12: '4.03294849e8', c66: '4.14815492e8' },
      (key) => `${key.replace('c', 'A')}, [45/-45]`,
    ),
    printed('|B16|, [45/-45]', 'N', '1126915.46', () => Math.abs(angleTwo().b.c16)),
    printed('D11, [45/-45]', 'N·m', '5776.7485', () => angleTwo().d.c11),
    printed('A11, [45/-45]s', 'N/m', '9.62791416e8', () => angleFour().a.c11),
    printed('D11, [45/-45]s', 'N·m', '46213.988', () => angleFour().d.c11),
    printed('D16, [45/-45]s', 'N·m', '27045.971', () => angleFour().d.c16),
    ...figures(
      'N/m',
      () => ({ ...angleThree().a }),
      { c11: '1.28561458e9', c22: '5.34337606e8', c66: '4.34340706e8' },
      (key) => `${key.replace('c', 'A')}, [45/0/-45]`,
    ),
  ],
};

const pulled = lazy(() => {
  const stack = makeStack(thick, [45, -45]);
  const answer = respond(stiffnessOf(stack), { force: [100_000, 0, 0] });
  const faces = plyStates(stack, { ...answer, deltaT: 0 });
  const middle = [0, 1, 2].map((i) => (faces[0]!.stress[i]! + faces[1]!.stress[i]!) / 2);
  return { answer, middle };
});
const twist: Case = {
  id: 'laminate-twist',
  title: 'An unsymmetric stack twists under tension',
  source: `${mallick}, example 3.13; ${notebooks}`,
  tag: 'second-hand',
  inputs: [t300Inputs, '[45/-45], plies of 6 mm, Nx = 100 kN/m'],
  checks: [
    printed('εx', '', '7.7373e-4', () => pulled().answer.strain[0]),
    printed('εy', '', '-5.0667e-4', () => pulled().answer.strain[1]),
    printed('|κxy|', '1/m', '0.0604593', () => Math.abs(pulled().answer.curvature[2])),
    printed('σ1 in the middle of a ply', 'MPa', '6.2566', () => pulled().middle[0]! / 1e6),
    printed('σ2 in the middle of a ply', 'MPa', '2.0767', () => pulled().middle[1]! / 1e6),
    printed(
      '|τ12| in the middle of a ply',
      'MPa',
      '4.1667',
      () => Math.abs(pulled().middle[2]!) / 1e6,
    ),
  ],
};

const cooled = lazy(() => {
  const ply = t300(0.001, {
    axialModulus: 133.4e9,
    transverseModulus: 8.784e9,
    axialExpansion: -0.5e-6,
    transverseExpansion: 12e-6,
  });
  return respond(stiffnessOf(makeStack(ply, [0, 90])), { deltaT: -100 });
});
const bimetal: Case = {
  id: 'laminate-cooling',
  title: 'An unsymmetric stack bends on cooling',
  source: `${mallick}, example 3.15; ${notebooks}`,
  tag: 'second-hand',
  inputs: [
    'ply: E1 = 133.4, E2 = 8.784 GPa, ν12 = 0.26 (the figures of the examples before, rounded)',
    'α1 = −0.5e-6, α2 = 12e-6 1/K; [0/90], plies of 1 mm, ΔT = −100 K',
  ],
  remarks: [
    'With E1 = 133.44 and E2 = 8.78438 GPa, unrounded, the curvature is 0.511672: the printed figure belongs to the rounded moduli.',
  ],
  checks: [
    printed('|κx|', '1/m', '0.511739', () => Math.abs(cooled().curvature[0])),
    printed('|κy|', '1/m', '0.511739', () => Math.abs(cooled().curvature[1])),
    value({
      name: 'κx + κy',
      unit: '1/m',
      expected: 0,
      computed: () => cooled().curvature[0] + cooled().curvature[1],
      tolerance: { absolute: 1e-12 },
      why: 'the two are printed as opposites; rounding alone',
    }),
  ],
};

// ---- Lin

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
const quasiIsotropic: Case = {
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
const hygrothermal: Case = {
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

const quasiConstants: Case = {
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

// ---- three-dimensional elasticity

const solids = lazy(() =>
  laminateFixtures().map((one) => {
    const stack = stackOf(one);
    const stiffness = stiffnessOf(stack);
    const bending = flexuralConstants(stiffness);
    const through = throughConstants(stack);
    const { force, moment, deltaT: heat, fixed, perFactor } = one.inputs;
    const computed: Readonly<Record<LaminateConstant, number>> = {
      ...inPlaneConstants(stiffness),
      throughModulus: through.modulus,
      throughExpansion: through.expansion,
      throughShearModulus: through.axialShearModulus,
      hoopThroughShearModulus: through.hoopShearModulus,
      bendingStiffness: bending.bendingStiffness,
      reducedBendingStiffness: bending.reducedBendingStiffness,
    };
    return {
      ...one,
      stiffness,
      constants: computed,
      answer: respond(stiffness, { force, moment, deltaT: heat }),
      failure: firstPly(stack, { ...fixed, deltaT: heat }, perFactor),
    };
  }),
);
type Solid = ReturnType<typeof solids>[number];

/** The entries of matrices or vectors, each against a size of its own kind. */
const entries =
  (
    expected: (one: Solid) => readonly number[],
    computed: (one: Solid) => readonly number[],
    scale: (one: Solid) => number,
  ) =>
  (): Comparison[] =>
    solids().flatMap((one) =>
      expected(one).map((figure, i) => ({
        what: `${one.name}, entry ${i + 1}`,
        expected: figure,
        computed: computed(one)[i]!,
        scale: scale(one),
      })),
    );
const flat = (plane: Plane): readonly number[] => rowsOf(plane).flat();
const most = (values: readonly number[]): number => Math.max(...values.map(Math.abs));
const sizeOfA = ({ expected }: Solid): number => most(expected.a);
const thicknessOfSolid = ({ stiffness }: Solid): number => stiffness.thickness;

const constantOf = (names: readonly LaminateConstant[]) => (): Comparison[] =>
  solids().flatMap(({ name, expected, constants }) =>
    names.map((key) => ({
      what: `${name}, ${key}`,
      expected: expected.constants[key],
      computed: constants[key],
      scale: /Expansion/.test(key)
        ? Math.abs(expected.constants.throughExpansion)
        : Math.abs(expected.constants[key]),
    })),
  );
const digits = 'eleven digits are printed; both solve linear equations only';

const failures = ['tsaiWu', 'maximumStrain'] as const;
const solidPlies: Case = {
  id: 'laminate-solid',
  title: 'Lamination theory against three-dimensional elasticity',
  source:
    'reference/laminates.py: plies as solids, their stiffness turned as a fourth-order tensor, integrated through the wall; first ply by bisection',
  tag: 'independent',
  inputs: [
    'plies of random properties and thickness: symmetric and unsymmetric, balanced and not; free walls and walls held from bending; heated, cooled; random loads',
  ],
  checks: [
    group({
      name: 'A',
      compare: entries(
        (one) => one.expected.a,
        (one) => flat(one.stiffness.a),
        sizeOfA,
      ),
      tolerance: 1e-10,
      scale: 'of the largest entry',
      why: digits,
    }),
    group({
      name: 'B',
      compare: entries(
        (one) => one.expected.b,
        (one) => flat(one.stiffness.b),
        (one) => sizeOfA(one) * thicknessOfSolid(one),
      ),
      tolerance: 1e-10,
      scale: "of A's largest entry times the thickness",
      why: digits,
    }),
    group({
      name: 'D',
      compare: entries(
        (one) => one.expected.d,
        (one) => flat(one.stiffness.d),
        (one) => most(one.expected.d),
      ),
      tolerance: 1e-10,
      scale: 'of the largest entry',
      why: digits,
    }),
    group({
      name: 'thermal forces',
      compare: entries(
        (one) => one.expected.thermalForce,
        (one) => one.stiffness.thermalForce,
        (one) => most(one.expected.thermalForce),
      ),
      tolerance: 1e-10,
      scale: 'of the largest',
      why: digits,
    }),
    group({
      name: 'thermal moments',
      compare: entries(
        (one) => one.expected.thermalMoment,
        (one) => one.stiffness.thermalMoment,
        (one) => most(one.expected.thermalForce) * thicknessOfSolid(one),
      ),
      tolerance: 1e-10,
      scale: 'of the largest thermal force times the thickness',
      why: digits,
    }),
    group({
      name: 'strain of the free wall, loaded and heated',
      compare: entries(
        (one) => one.expected.freeStrain,
        (one) => one.answer.strain,
        (one) => most(one.expected.freeStrain),
      ),
      tolerance: 1e-9,
      scale: 'of the largest',
      why: digits,
    }),
    group({
      name: 'curvature of the free wall, loaded and heated',
      compare: entries(
        (one) => one.expected.freeCurvature,
        (one) => one.answer.curvature,
        (one) => most([...one.expected.freeCurvature, most(one.expected.freeStrain)]),
      ),
      tolerance: 1e-9,
      scale: 'of the largest',
      why: digits,
    }),
    group({
      name: 'Ex, Eθ, Gxθ, νxθ, αx, αθ and γxθ per kelvin',
      compare: constantOf([
        'axialModulus',
        'hoopModulus',
        'shearModulus',
        'poisson',
        'axialExpansion',
        'hoopExpansion',
        'shearExpansion',
      ]),
      tolerance: 1e-9,
      scale: 'of the value; of α3 for the expansions',
      why: digits,
    }),
    group({
      name: 'E3 and α3',
      compare: constantOf(['throughModulus', 'throughExpansion']),
      tolerance: 1e-9,
      scale: 'of the value',
      why: digits,
    }),
    group({
      name: 'Gxz and Gθz',
      compare: constantOf(['throughShearModulus', 'hoopThroughShearModulus']),
      tolerance: 1e-9,
      scale: 'of the value',
      why: digits,
    }),
    group({
      name: 'D11 and D*11',
      compare: constantOf(['bendingStiffness', 'reducedBendingStiffness']),
      tolerance: 1e-9,
      scale: 'of the value',
      why: digits,
    }),
    ...failures.map((criterion) =>
      group({
        name: `first-ply factor, ${criterion === 'tsaiWu' ? 'Tsai-Wu' : 'maximum strain'}`,
        compare: () =>
          solids()
            .filter(({ expected }) => expected[criterion].factor !== null)
            .map(({ name, expected, failure }) => ({
              what: name,
              expected: expected[criterion].factor!,
              computed: failure[criterion].factor,
            })),
        tolerance: 1e-8,
        scale: 'of the value',
        why: 'the strains that both are given are printed to twelve digits, and a factor near zero loses some',
      }),
    ),
    same({
      name: 'ply, face and component that fail first, or that nothing does',
      compare: () =>
        solids().flatMap(({ name, expected, failure }) =>
          failures.map((criterion) => ({
            what: `${name}, ${criterion}`,
            expected: placeText(expected[criterion].place),
            computed: placeText(failure[criterion].place),
          })),
        ),
    }),
  ],
};
function placeText(
  place: { readonly ply: number; readonly face: string; readonly component?: string } | null,
): string {
  return place === null ? 'never' : `${place.ply} ${place.face} ${place.component ?? ''}`;
}

export const laminates: Topic = {
  title: 'Laminates',
  intro:
    'Classical lamination theory. The equations hold in any consistent units, so each example stands in those of its source.',
  cases: [
    lamina,
    coupling,
    mixed,
    tension,
    angleStacks,
    twist,
    bimetal,
    quasiIsotropic,
    hygrothermal,
    quasiConstants,
    solidPlies,
  ],
};
