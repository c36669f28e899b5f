/**
 * The inputs of a joint as data: which fields it has, in which group, under which name. The form is
 * drawn from this; a test holds it against the schema, so that no input of a joint can be forgotten.
 */
import { isFlat } from '../../shared/convert-lap.ts';
import type { Joint, JointType } from '../../shared/project.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import type { Usual } from '../../shared/quantity-help.ts';
import type { Path } from '../state/project.ts';

export interface NumberInput {
  readonly path: Path;
  readonly quantity: QuantityName;
  /** Unique in the form, in full words: what it is called when read out. */
  readonly name: string;
  /** Where the quantity's own help is too general. */
  readonly help?: string;
  /** Where what is usual of the quantity is not usual here. */
  readonly usual?: Usual;
  /** May be left out: an empty field takes it away. */
  readonly optional?: true;
  /** What an empty field shows; `not set` when left out. */
  readonly empty?: string;
}

export const moistures = [
  { value: 'dry', text: 'dry' },
  { value: 'wet', text: 'wet' },
] as const;

export type Row =
  | { readonly kind: 'lap' }
  /** How the ends of a flat single lap are taken to bend; asked of the whole project. */
  | { readonly kind: 'edge-moment' }
  | ({ readonly kind: 'number'; readonly label: string } & NumberInput)
  /** A figure and its plus-or-minus on one line. */
  | {
      readonly kind: 'toleranced';
      readonly label: string;
      readonly nominal: NumberInput;
      readonly tolerance: NumberInput;
    }
  | {
      readonly kind: 'adherend';
      readonly path: Path;
      readonly name: string;
      /** `Tube`, `Socket`, `Upper strap`: the part that is made of it. */
      readonly part: string;
      /** Its thickness; that of a tapered wall is the mean of two. */
      readonly thickness: readonly Path[];
    }
  | { readonly kind: 'adhesive'; readonly path: Path; readonly name: string };

export interface Group {
  readonly title: string;
  readonly rows: readonly Row[];
}

/** A group of fields inside a joint, before the joint's own place in the document is known. */
type Local = (at: (...keys: Path) => Path) => Group;

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const number = (
  label: string,
  quantity: QuantityName,
  path: Path,
  name = label,
): Extract<Row, { kind: 'number' }> => ({ kind: 'number', label, quantity, path, name });

function gap(label: string, path: Path): Row {
  return {
    kind: 'toleranced',
    label,
    nominal: { path: [...path, 'gap'], quantity: 'gap', name: label },
    tolerance: {
      path: [...path, 'tolerance'],
      quantity: 'gapTolerance',
      name: `${label} tolerance`,
    },
  };
}

const adherend = (part: string, path: Path, thickness: readonly Path[]): Row => ({
  kind: 'adherend',
  path,
  name: `${part} material`,
  part,
  thickness,
});

const wall =
  (title: string, key: string): Local =>
  (at) => ({
    title,
    rows: [
      adherend(title, at(key, 'adherend'), [at(key, 'atRoot'), at(key, 'atMouth')]),
      number('Wall at root', 'wall', at(key, 'atRoot'), `${title} wall at root`),
      number('Wall at mouth', 'wall', at(key, 'atMouth'), `${title} wall at mouth`),
    ],
  });

const tube: Local = (at) => ({
  title: 'Tube',
  rows: [
    adherend('Tube', at('tube', 'adherend'), [at('tube', 'wall')]),
    number('Outside diameter', 'outsideDiameter', at('tube', 'outsideDiameter')),
    number('Wall', 'wall', at('tube', 'wall'), 'Tube wall'),
  ],
});

const strip: Local = (at) => ({
  title: 'Strip',
  rows: [
    adherend('Strip', at('strip', 'adherend'), [at('strip', 'thickness')]),
    number('Thickness', 'wall', at('strip', 'thickness'), 'Strip thickness'),
  ],
});

const geometry =
  (...gaps: readonly (readonly [label: string, key: string])[]): Local =>
  (at) => ({
    title: 'Geometry',
    rows: [
      { kind: 'lap' },
      number('Overlap', 'overlap', at('overlap')),
      ...gaps.map(([label, key]) => gap(label, at(key))),
    ],
  });

const withRow =
  (group: Local, row: (at: (...keys: Path) => Path) => Row): Local =>
  (at) => {
    const { title, rows } = group(at);
    return { title, rows: [...rows, row(at)] };
  };

const offset = (at: (...keys: Path) => Path): Row => number('Axis offset', 'offset', at('offset'));
const edgeMoment = (): Row => ({ kind: 'edge-moment' });
const width = (at: (...keys: Path) => Path): Row => number('Width', 'width', at('width'));

const adhesive: Local = (at) => ({
  title: 'Adhesive',
  rows: [{ kind: 'adhesive', path: at('adhesive'), name: 'Adhesive' }],
});

const byType: Readonly<Record<JointType, readonly Local[]>> = {
  'sleeve-single': [
    withRow(geometry(['Gap', 'bond']), offset),
    tube,
    wall('Sleeve', 'sleeve'),
    adhesive,
  ],
  'sleeve-double': [
    withRow(geometry(['Outer gap', 'outerBond'], ['Inner gap', 'innerBond']), offset),
    tube,
    wall('Socket', 'socket'),
    wall('Spigot', 'spigot'),
    adhesive,
  ],
  'flat-single': [
    withRow(withRow(geometry(['Gap', 'bond']), width), edgeMoment),
    strip,
    wall('Plate', 'plate'),
    adhesive,
  ],
  'flat-double': [
    withRow(geometry(['Upper gap', 'upperBond'], ['Lower gap', 'lowerBond']), width),
    strip,
    wall('Upper strap', 'upperStrap'),
    wall('Lower strap', 'lowerStrap'),
    adhesive,
  ],
};

export const groupsOf = (type: JointType, index: number): Group[] =>
  byType[type].map((local) => local((...keys) => ['joints', index, ...keys]));

/** The gap of a test piece is that of each set, its axes are one; it has no adhesive of its own. */
const ofPiece = (row: Row): boolean =>
  row.kind === 'adherend' || (row.kind === 'number' && row.quantity !== 'offset');

/** The sizes and materials of a test piece whose shape stands at this place. */
export const pieceGroups = (type: JointType, shape: Path): Group[] =>
  byType[type].flatMap((local) => {
    const { title, rows } = local((...keys) => [...shape, ...keys]);
    const kept = rows.filter(ofPiece);
    return kept.length === 0 ? [] : [{ title, rows: kept }];
  });

const loadRows: readonly (readonly [label: string, key: string, quantity: QuantityName])[] = [
  ['Axial force', 'force', 'force'],
  ['Bending moment', 'moment', 'moment'],
  ['Torque', 'torque', 'torque'],
  ['Transverse shear', 'shear', 'shear'],
];

/** The loads of one case; a flat joint only takes a pull. */
export const loadInputs = (
  type: JointType,
  index: number,
  load: number,
  caseName: string,
): Extract<Row, { kind: 'number' }>[] =>
  loadFields(type, ['joints', index, 'loads', load], caseName);

/** The fields of one entry of loads, wherever it stands. */
export const loadFields = (
  type: JointType,
  path: Path,
  name: string,
): Extract<Row, { kind: 'number' }>[] =>
  (isFlat({ type }) ? loadRows.slice(0, 1) : loadRows).map(([label, key, quantity]) =>
    number(label, quantity, [...path, key], `${name}, ${lower(label)}`),
  );

/** A new load in a case: nothing acts yet. */
export const noLoad = (joint: Joint, caseId: string): Joint['loads'][number] =>
  isFlat(joint)
    ? { case: caseId, force: 0 }
    : { case: caseId, force: 0, moment: 0, torque: 0, shear: 0 };
