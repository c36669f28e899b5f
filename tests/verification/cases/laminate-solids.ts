/** Lamination theory against three-dimensional elasticity. */
import {
  flexuralConstants,
  inPlaneConstants,
  throughConstants,
} from '../../../src/model/laminate/constants.ts';
import { firstPly } from '../../../src/model/laminate/first-ply.ts';
import { type Plane, rowsOf } from '../../../src/model/laminate/plane.ts';
import { respond, stiffnessOf } from '../../../src/model/laminate/stack.ts';
import { type LaminateConstant, laminateFixtures, stackOf } from '../../support/laminates.ts';
import { type Case, type Comparison, group, lazy, same } from '../case.ts';

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
export const solidPlies: Case = {
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
