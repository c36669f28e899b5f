/** Joints, their corners, margins and load cases as tables of figures. */
import type { Joint, LoadCase } from '../../shared/project.ts';
import type {
  CheckReport,
  CornerMargin,
  CornersReport,
  JointReport,
  Margin,
} from '../../shared/reports.ts';
import { column, type Sheet, type SheetCell } from '../../shared/sheet.ts';
import { gapWords, placeWords, stateWords } from '../../shared/words.ts';

const marginHead = [
  'margin',
  'state',
  'mode',
  'part',
  'load case',
  'condition',
  'gap',
  'place',
  column('from the root', 'mm'),
  column('clocking', '°'),
  'typical',
];

const marginCells = (margin: CornerMargin | null): SheetCell[] =>
  margin === null
    ? marginHead.map(() => null)
    : [
        margin.margin,
        stateWords[margin.state],
        margin.label,
        margin.part,
        margin.caseName,
        margin.conditionName,
        gapWords[margin.gapState],
        placeWords[margin.place],
        margin.x,
        margin.theta,
        margin.typical ? 'yes' : 'no',
      ];

export const jointsSheet = ({ joints, targetMargin }: CheckReport): Sheet => ({
  head: ['joint', 'kind', column('overlap', 'mm'), 'target', ...marginHead, 'why not'],
  rows: joints.map(({ name, description, overlap, lowest, refused }) => [
    name,
    description,
    overlap,
    targetMargin,
    ...marginCells(lowest),
    refused?.message ?? null,
  ]),
});

/** One row for each joint and load case; the last of a joint is what governs it. */
export const cornersSheet = ({ joints, cases, targetMargin }: CornersReport): Sheet => {
  const nameOf = (id: string): string => cases.find(({ caseId }) => caseId === id)?.name ?? id;
  return {
    head: ['joint', 'row', 'target', ...marginHead, 'why not'],
    rows: joints.flatMap(({ name, cells, lowest, refused }): SheetCell[][] => [
      ...cells.map((cell) => [
        name,
        nameOf(cell.caseId),
        targetMargin,
        ...marginCells(cell.lowest),
        cell.lowest ? null : 'no load',
      ]),
      [name, 'governing', targetMargin, ...marginCells(lowest), refused?.message ?? null],
    ]),
  };
};

const moreCells = ({ reached, asked, restsOn, remark, flags }: Margin): SheetCell[] => [
  reached,
  asked,
  restsOn,
  remark,
  flags.map(({ message }) => message).join('; '),
];

export const marginsSheet = ({ margins, targetMargin }: JointReport): Sheet => ({
  head: [
    'target',
    ...marginHead,
    'factor reached',
    'factor asked',
    'rests on',
    'remark',
    'outside domain',
  ],
  rows: margins.map((margin) => [targetMargin, ...marginCells(margin), ...moreCells(margin)]),
});

export const loadCasesSheet = (cases: readonly LoadCase[]): Sheet => ({
  head: [
    'load case',
    'kind',
    column('temperature', '°C'),
    'moisture',
    'cycles',
    'load ratio',
    'in every condition',
  ],
  rows: cases.map((one) => [
    one.name,
    one.kind,
    one.temperature,
    one.moisture,
    one.kind === 'cyclic' ? one.cycles : null,
    one.kind === 'cyclic' ? (one.ratio ?? null) : null,
    one.everyCondition ? 'yes' : 'no',
  ]),
});

const loadUnits = {
  force: 'N',
  shear: 'N',
  moment: 'N·mm',
  torque: 'N·mm',
} as const;

/** Loads of a joint, as they are stored; empty where its kind has no such load. */
export const loadsSheet = (joint: Joint, cases: readonly LoadCase[]): Sheet => {
  const names = Object.keys(loadUnits) as (keyof typeof loadUnits)[];
  return {
    head: ['load case', 'kind', ...names.map((name) => column(name, loadUnits[name]))],
    rows: joint.loads.map((load) => {
      const of = cases.find(({ id }) => id === load.case);
      const given: Readonly<Record<string, unknown>> = { ...load };
      return [
        of?.name ?? load.case,
        of?.kind ?? null,
        ...names.map((name) => (typeof given[name] === 'number' ? given[name] : null)),
      ];
    }),
  };
};
