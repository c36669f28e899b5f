/** Strength of the bond against overlap. */
import { resolveJoint } from '../../../src/main/handlers/resolve.ts';
import type { BondInput, JointInput } from '../../../src/model/joint/types.ts';
import { bondStrengthAt, findPlateau } from '../../../src/model/sweep/overlap-sweep.ts';
import { readProject } from '../../../src/shared/read-project.ts';
import { readFixture } from '../../support/fixtures.ts';
import { type Case, group, lazy } from '../case.ts';

/** The joints that the reference has solved. */
export const project = lazy(() => {
  const read = readProject(readFixture('joints-project.json'));
  if (!read.ok) throw new Error(`${read.error.field}: ${read.error.message}`);
  return read.value;
});

interface SweepFixture {
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: { readonly joint: string; readonly adherendShear: boolean };
    readonly expected: {
      readonly points: readonly { readonly overlap: number; readonly bond: number }[];
      readonly plateau: number;
      readonly plateauStrength: number;
    };
  }[];
}
/** The reference knows the gap states min, nominal and max alone: those of an offset within the tolerance. */
function offsetAsTolerance(joint: JointInput): JointInput {
  if (!('offset' in joint)) return joint;
  const wider = (bond: BondInput): BondInput => ({
    ...bond,
    tolerance: bond.tolerance + joint.offset,
  });
  if (joint.type === 'sleeve-single') return { ...joint, offset: 0, bond: wider(joint.bond) };
  const [innerBond, outerBond] = [wider(joint.innerBond), wider(joint.outerBond)];
  return { ...joint, offset: 0, innerBond, outerBond };
}

const sweeps = lazy(() =>
  (readFixture('overlap-sweeps.json') as SweepFixture).cases.map(({ name, inputs, expected }) => {
    const index = project().joints.findIndex(({ id }) => id === inputs.joint);
    const { input, adhesive, cases } = resolveJoint(project(), index);
    const question = {
      joint: offsetAsTolerance(input),
      adhesive,
      cases: cases.map((one) => one.input),
      settings: { ...project().settings, adherendShear: inputs.adherendShear },
    };
    return { name, question, expected, plateau: findPlateau(question) };
  }),
);

export const overlap: Case = {
  id: 'overlap-sweeps',
  title: 'Strength of the bond against overlap, and its plateau',
  source: 'reference/joints_sweep.py: the same independent implementation at other overlaps',
  tag: 'independent',
  inputs: [
    'joints of reference/joints-project.json, overlaps from short to past the plateau, gaps min, nominal and max',
  ],
  checks: [
    group({
      name: 'strength at an overlap',
      compare: () =>
        sweeps().flatMap(({ name, question, expected }) =>
          expected.points.map((point) => ({
            what: `${name}, ${point.overlap} mm`,
            expected: point.bond,
            computed: bondStrengthAt(question, point.overlap).ratio,
          })),
        ),
      tolerance: 2e-4,
      scale: 'of the value',
      why: 'as for ultimate strain, over more cases and clockings',
    }),
    group({
      name: 'strength of the plateau',
      compare: () =>
        sweeps().map(({ name, expected, plateau }) => ({
          what: name,
          expected: expected.plateauStrength,
          computed: plateau.strength.ratio,
        })),
      tolerance: 2e-4,
      scale: 'of the value',
      why: 'as for ultimate strain, over more cases and clockings',
    }),
    group({
      name: 'overlap of the plateau',
      compare: () =>
        sweeps().map(({ name, expected, plateau }) => ({
          what: name,
          expected: expected.plateau,
          computed: plateau.overlap ?? Number.NaN,
        })),
      tolerance: 5e-3,
      scale: 'of the value',
      why: 'where the curve is nearly flat a small miss in strength is a large one in overlap',
    }),
  ],
};
