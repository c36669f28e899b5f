/** Whole joints from a project file: sections, loads at a clocking, temperature, every mode. */
import { resolveJoint } from '../../../src/main/handlers/resolve.ts';
import { adhesiveModes } from '../../../src/model/margins/adhesive-modes.ts';
import { worstClockings } from '../../../src/model/margins/clocking.ts';
import { shearFactor } from '../../../src/model/margins/shear-factor.ts';
import { jointState } from '../../../src/model/margins/state.ts';
import { refineStrength } from '../../../src/model/margins/strength-clocking.ts';
import { wallModes } from '../../../src/model/margins/wall-modes.ts';
import type { Joint, Wall } from '../../../src/shared/project.ts';
import type { GapState } from '../../../src/shared/reports.ts';
import { readFixture } from '../../support/fixtures.ts';
import { type Case, type Check, group, lazy, same, type Topic } from '../case.ts';
import { overlap, project } from './overlap-sweeps.ts';

interface Fixture {
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: {
      readonly joint: string;
      readonly case: string;
      readonly gapState: GapState;
      readonly adherendShear: boolean;
    };
    readonly expected: {
      readonly bonds: readonly {
        readonly part: string;
        readonly gap: number;
        readonly radius: number;
        readonly stiffness: number;
        readonly shearYield: number;
        readonly slipAtFailure: number;
      }[];
      readonly peakElasticShear: readonly { readonly part: string; readonly value: number }[];
      readonly margins: readonly {
        readonly mode: string;
        readonly part: string;
        readonly reached: number;
        readonly asked: number;
        readonly place: string | null;
      }[];
    };
  }[];
}

const isTapered = (joint: Joint): boolean =>
  Object.values(joint).some(
    (part): part is Wall =>
      typeof part === 'object' && 'atRoot' in part && part.atRoot !== part.atMouth,
  );

/** The modes that the reference computes; others have checks of their own. */
const modes: Readonly<Record<string, { readonly title: string; readonly tolerance: number }>> = {
  'adhesive-yield': { title: 'adhesive at yield', tolerance: 2e-6 },
  'cyclic-shear': { title: 'cyclic shear', tolerance: 2e-6 },
  'metal-yield': { title: 'metal at yield', tolerance: 2e-6 },
  'metal-ultimate': { title: 'metal at ultimate', tolerance: 2e-6 },
  'laminate-strength': { title: 'laminate strength', tolerance: 2e-6 },
  'adhesive-strain': { title: 'adhesive at ultimate strain', tolerance: 1e-4 },
  'durability-trough': { title: 'durability trough', tolerance: 1e-3 },
};
const walls: ReadonlySet<string> = new Set(['metal-yield', 'metal-ultimate', 'laminate-strength']);
const keyOf = (mode: string, part: string): string => (walls.has(mode) ? `${mode} ${part}` : mode);

const solved = lazy(() =>
  (readFixture('joint-margins.json') as Fixture).cases.map(({ name, inputs, expected }) => {
    const index = project().joints.findIndex(({ id }) => id === inputs.joint);
    const resolved = resolveJoint(project(), index);
    const { input } = resolved.cases.find(({ loadCase }) => loadCase.id === inputs.case)!;
    const settings = { ...project().settings, adherendShear: inputs.adherendShear };
    const state = jointState(resolved.input, resolved.adhesive, input, inputs.gapState, settings);
    const { factors } = settings;
    const results = [
      ...adhesiveModes(state, resolved.adhesive, factors).map((mode) =>
        refineStrength(state, mode),
      ),
      // The reference knows no bending of the walls.
      ...wallModes(state, factors, { bending: false }),
    ].filter(({ mode }) => mode in modes);
    return { name, joint: resolved.joint, state, results, expected };
  }),
);

const results = lazy(() =>
  solved().flatMap(({ name, joint, results: found, expected }) =>
    expected.margins.map((row) => ({
      what: `${name}: ${row.mode} of ${row.part}`,
      joint,
      row,
      result: found.find(({ mode, part }) => keyOf(mode, part) === keyOf(row.mode, row.part)),
    })),
  ),
);
type Result = ReturnType<typeof results>[number];

const isShared = ({ joint, row }: Result): boolean =>
  walls.has(row.mode) && joint.type === 'sleeve-double';

const reached = (
  name: string,
  include: (one: Result) => boolean,
  tolerance: number,
  why: string,
): Check =>
  group({
    name,
    compare: () =>
      results()
        .filter(include)
        .map(({ what, row, result }) => ({
          what,
          expected: row.reached,
          computed: result?.reached ?? Number.NaN,
        })),
    tolerance,
    scale: 'of the value',
    why,
  });

const whyOf = (mode: string): string =>
  mode === 'adhesive-strain'
    ? 'found on the chain of cells, or at a clocking that is searched for'
    : mode === 'durability-trough'
      ? 'the lowest shear is flat near its minimum'
      : 'closed forms on both sides; the clocking is searched for';

const margins: Case = {
  id: 'whole-joints',
  title: 'Factor at which each mode is reached',
  source:
    'reference/joints.py: docs/method.md from a project document, written apart from the program; elastic shear by transition matrices, plastic by collocation',
  tag: 'independent',
  inputs: [
    'the joints of reference/joints-project.json: sockets, a spigot, double laps, flat laps, a taper; force, bending, torque and shear; cold, hot and wet; three gap states; adherend shear on and off',
  ],
  checks: [
    ...Object.entries(modes).map(([mode, { title, tolerance }]) =>
      reached(
        title,
        (one) => one.row.mode === mode && !isShared(one) && !isTapered(one.joint),
        tolerance,
        whyOf(mode),
      ),
    ),
    reached(
      'elastic modes, tapered sleeve',
      (one) => isTapered(one.joint) && !isShared(one) && modes[one.row.mode]!.tolerance < 5e-5,
      5e-5,
      'a taper is solved on the chain of cells',
    ),
    reached(
      'plastic modes, tapered sleeve',
      (one) => isTapered(one.joint) && !isShared(one) && modes[one.row.mode]!.tolerance > 5e-5,
      1e-3,
      'as for uniform walls, trough included',
    ),
    reached(
      'walls of double-lap sleeves',
      isShared,
      2e-2,
      "the reference takes each wall's share from the one mixed problem at the clocking, section 8 takes force, moment and temperature apart",
    ),
    group({
      name: 'factor asked for',
      compare: () =>
        results().map(({ what, row, result }) => ({
          what,
          expected: row.asked,
          computed: result?.asked ?? Number.NaN,
        })),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'a product of the factors',
    }),
    same({
      name: 'the modes that are asked for, and no others',
      compare: () =>
        solved().map(({ name, results: found, expected }) => ({
          what: name,
          expected: expected.margins
            .map(({ mode, part }) => keyOf(mode, part))
            .sort()
            .join(', '),
          computed: found
            .map(({ mode, part }) => keyOf(mode, part))
            .sort()
            .join(', '),
        })),
    }),
    same({
      name: 'place of failure: root, mouth or within',
      compare: () =>
        results()
          // Reached by temperature alone, any place is as good.
          .filter(({ row }) => row.place !== null && row.reached > 0)
          .map(({ what, row, result }) => ({
            what,
            expected: row.place!,
            computed: result?.place ?? 'none',
          })),
    }),
    group({
      name: 'gap, radius, stiffness, yield and slip at failure of the bonds',
      compare: () =>
        solved().flatMap(({ name, state, expected }) =>
          expected.bonds.flatMap((bond, j) => {
            const computed = { ...state.assembly.bonds[j]!, ...state.bonds[j]! };
            return (['gap', 'radius', 'stiffness', 'shearYield', 'slipAtFailure'] as const).map(
              (property) => ({
                what: `${name}: ${property} of ${bond.part}`,
                expected: bond[property],
                computed: computed[property],
              }),
            );
          }),
        ),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'ten digits are printed',
    }),
    same({
      name: 'names of the bonds',
      compare: () =>
        solved().map(({ name, state, expected }) => ({
          what: name,
          expected: expected.bonds.map(({ part }) => part).join(', '),
          computed: state.assembly.bonds.map((bond) => bond.name).join(', '),
        })),
    }),
    group({
      name: 'largest elastic shear of each bond',
      compare: () =>
        solved().flatMap(({ name, state, expected }) =>
          expected.peakElasticShear.map(({ value, part }, j) => {
            // The factor to a limit of just the expected peak is 1; the other bonds have no limit.
            const limits = state.bonds.map((_bond, i) => (i === j ? value : Number.MAX_VALUE));
            const [worst] = worstClockings(
              state.assembly.flat,
              state.loadCase.loads,
              (theta) => shearFactor(state.at(theta), limits).factor,
            );
            return {
              what: `${name}: ${part}`,
              expected: 1,
              computed: worst?.factor ?? Number.NaN,
            };
          }),
        ),
      tolerance: 1e-4,
      scale: 'of the value',
      why: 'the worst clocking is searched for on a grid and refined',
    }),
  ],
};

export const wholeJoints: Topic = {
  title: 'Whole joints',
  intro:
    'Everything at once, sections 1 to 9 of the method, against a second implementation of it.',
  cases: [margins, overlap],
};
