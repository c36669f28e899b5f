/** Comparisons of the shape that the core gives, with figures that are easy to recognise. */
import type { RequestInput } from '../../../src/shared/contract.ts';
import { conversionWords, named, pliesOf, withLap } from '../../../src/shared/lap-variant.ts';
import type { Joint, Project } from '../../../src/shared/project.ts';
import type {
  CompareColumn,
  CompareReport,
  VariantReport,
} from '../../../src/shared/reports-compare.ts';
import { makeBond, makeMargin, makeStress } from './reports.ts';

const bondsOf = (joint: Joint): string[] =>
  pliesOf(joint) === 'double' ? ['inner bond', 'outer bond'] : ['bond'];

/** Strength grows with the overlap and with the number of bonds: 0.04 a millimetre and bond. */
export function makeColumn(joint: Joint, change: Partial<CompareColumn> = {}): CompareColumn {
  const parts = bondsOf(joint);
  const shear = 0.04 * joint.overlap * parts.length;
  const lowest = makeMargin(shear - 1, { x: joint.overlap });
  const wall = { part: 'sleeve', volume: 1000, mass: 4.4 * parts.length };
  return {
    id: joint.id,
    kind: 'joint',
    name: joint.name,
    description: `${pliesOf(joint)} lap`,
    overlap: joint.overlap,
    refused: null,
    margins: [
      lowest,
      makeMargin(shear + 1, {
        mode: 'metal-yield',
        part: parts.length === 1 ? 'sleeve' : 'socket',
        label: `${parts.length === 1 ? 'sleeve' : 'socket'}, yield`,
      }),
    ],
    lowest,
    stress: makeStress(joint.overlap, {
      jointId: joint.id,
      gapState: 'nominal',
      bonds: parts.map((part) => makeBond(joint.overlap, { part })),
    }),
    bonds: parts.map((part, i) => ({
      part,
      force: 16_000 / parts.length,
      share: 1 / parts.length,
      area: 3000,
      peakShear: 26 / parts.length + i,
      peakPeel: 12 / parts.length,
      strain: 0.02,
    })),
    carried: { shear, first: { factor: shear, label: 'adhesive, ultimate strain' } },
    mass: {
      tube: { part: 'tube', volume: 4000, mass: 6.2 },
      walls: [wall],
      bonds: [{ part: 'bond', volume: 600, mass: 0.7 }],
      adhesiveVolume: 600,
      added: wall.mass + 0.7,
      without: [],
    },
    print: {
      layerThickness: 0.06,
      height: joint.overlap,
      layers: Math.ceil(joint.overlap / 0.06),
    },
    stiffness: {
      temperature: 20,
      moisture: 'dry',
      names: ['Gust'],
      springs: [
        { kind: 'axial', stiffness: 627_000, tube: 7e6, atRoot: null, tubeLength: 12 },
        {
          kind: 'bending',
          stiffness: 37.4e6 * parts.length,
          tube: 5e8,
          atRoot: 1e9,
          tubeLength: 14,
        },
      ],
      shear: 203_000,
    },
    flags: [],
    ...change,
  };
}

export const makeCompareReport = (
  { joints, variants = [] }: Project,
  { columns, caseId }: Pick<RequestInput<'project.compare'>, 'columns' | 'caseId'>,
): CompareReport => {
  const made = columns.map((column) => {
    const isJoint = 'joint' in column;
    const joint = isJoint
      ? joints.find(({ id }) => id === column.joint)!
      : variants.find((one) => one.joint.id === column.variant)!.joint;
    return makeColumn(joint, { kind: isJoint ? 'joint' : 'variant' });
  });
  return {
    caseId: caseId ?? 'gust',
    caseName: caseId === 'landing' ? 'Hard landing' : 'Gust',
    columns: made,
    differences: [],
    sentences: made.slice(1).map(({ name, carried }) => ({
      message: `“${name}” carries ${carried!.shear.toFixed(2)}.`,
    })),
  };
};

export function makeVariant(
  { joints }: Project,
  { lap, equal }: Pick<RequestInput<'joint.variant'>, 'lap' | 'equal'>,
): VariantReport {
  const joint = joints[0]!;
  return {
    of: joint.id,
    joint: named(
      withLap(joint, lap),
      `${joint.id}-${lap}-${equal}`,
      `${joint.name}, ${lap} lap at equal ${equal}`,
    ),
    changed: [{ message: conversionWords(joint) }],
    equal: null,
  };
}
