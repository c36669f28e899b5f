/** The answer of `corners`: joints against load cases, or every corner of one joint. */
import {
  type CornerMargin,
  type CornersReport,
  isLowestOf,
  type JointCorners,
} from '../shared/reports.ts';
import { clocking, gapWords, lengthText, placeWords, signed, tally } from '../shared/words.ts';
import { type Cell, type Column, paragraph, table } from './layout.ts';
import { marked, markOf, painter } from './paint.ts';
import { caution, type Paper, parts } from './report.ts';

type Paint = ReturnType<typeof painter>;

const LAST = Number.POSITIVE_INFINITY;
const byText = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/**
 * Rows of the table in order.
 * @param by `joint`, `margin`, or the id of a load case
 */
export function sortedJoints(joints: readonly JointCorners[], by: string): JointCorners[] {
  const rank = ({ refused, lowest, cells }: JointCorners): number => {
    if (refused) return Number.NEGATIVE_INFINITY;
    if (by === 'margin') return lowest?.margin ?? LAST;
    return cells.find(({ caseId }) => caseId === by)?.lowest?.margin ?? LAST;
  };
  return joints.toSorted((a, b) => {
    const [left, right] = by === 'joint' ? [0, 0] : [rank(a), rank(b)];
    return left === right ? byText.compare(a.jointId, b.jointId) : left < right ? -1 : 1;
  });
}

/** `gust-cold, at hot`: the case, and the condition where that is not its own. */
export const caseIds = ({ caseId, conditionId }: CornerMargin): string =>
  conditionId === null ? caseId : `${caseId}, at ${conditionId}`;

function placeOf({ place, x, theta }: CornerMargin, flat: boolean): string {
  const where = place === 'within' ? `at ${lengthText(x)}` : placeWords[place];
  return [where, ...(flat ? [] : [clocking(theta)])].join(', ');
}

/** The column says already that it is about the gap. */
const gapOf = ({ gapState }: CornerMargin): string =>
  gapWords[gapState].replace(/^(gap|offset,) /, '');

const marginCell = (
  { margin, state, typical }: CornerMargin,
  governs: boolean,
  paint: Paint,
): Cell => ({
  text: `${governs ? '>' : ' '}${markOf(state)} ${signed(margin)}${typical ? '*' : ' '}`,
  paint: paint(state),
});

function cellOf(joint: JointCorners, caseId: string, paint: Paint): Cell {
  if (joint.refused) return { text: '■' };
  const cell = joint.cells.find((one) => one.caseId === caseId);
  if (!cell) return { text: '' };
  if (!cell.lowest) return { text: '○' };
  return marginCell(cell.lowest, isLowestOf(joint, caseId), paint);
}

/** As many load cases side by side as the paper is wide, the others below. */
function tables(report: CornersReport, joints: readonly JointCorners[], paper: Paper): string {
  const paint = painter(paper.colour);
  const first = Math.max(5, ...joints.map(({ jointId }) => [...jointId].length));
  const blocks: (typeof report.cases)[number][][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const one of report.cases) {
    const wide = 2 + Math.max(9, [...one.caseId].length);
    if (used + wide > paper.width) {
      blocks.push([]);
      used = first;
    }
    blocks.at(-1)!.push(one);
    used += wide;
  }
  return blocks
    .map((block) => {
      const columns: Column[] = [
        { title: 'Joint', least: 10 },
        ...block.map(({ caseId }): Column => ({ title: caseId, align: 'right' })),
      ];
      const rows = joints.map((joint) => [
        { text: joint.jointId },
        ...block.map(({ caseId }) => cellOf(joint, caseId, paint)),
      ]);
      return table(columns, rows, paper.width);
    })
    .join('\n\n');
}

const governingColumns: readonly Column[] = [
  { title: 'Joint', least: 10 },
  { title: 'Margin ', align: 'right' },
  { title: 'Mode', least: 14 },
  { title: 'Case', least: 8 },
  { title: 'Place', least: 10 },
  { title: 'Gap', least: 10 },
];

function governing(joints: readonly JointCorners[], paper: Paper): string {
  const paint = painter(paper.colour);
  const rows = joints.map(({ jointId, lowest, refused, flat }): Cell[] => {
    if (refused) return [{ text: jointId }, { text: '■ refused' }];
    if (!lowest) return [{ text: jointId }, { text: '○ no load' }];
    return [
      { text: jointId },
      marginCell(lowest, false, paint),
      { text: lowest.label },
      { text: caseIds(lowest) },
      { text: placeOf(lowest, flat) },
      { text: gapOf(lowest) },
    ];
  });
  return table(governingColumns, rows, paper.width);
}

const cornerColumns: readonly Column[] = [
  { title: 'State' },
  { title: 'Margin ', align: 'right' },
  { title: 'Mode', least: 14 },
  { title: 'Case', least: 8 },
  { title: 'Place', least: 10 },
  { title: 'Gap', least: 10 },
];

function listed(corners: readonly CornerMargin[], flat: boolean, paper: Paper): string {
  const paint = painter(paper.colour);
  const rows = corners.map((corner): Cell[] => [
    { text: marked(corner.state), paint: paint(corner.state) },
    { text: signed(corner.margin) + (corner.typical ? '*' : ' '), paint: paint(corner.state) },
    { text: corner.label },
    { text: caseIds(corner) },
    { text: placeOf(corner, flat) },
    { text: gapOf(corner) },
  ]);
  return table(cornerColumns, rows, paper.width);
}

const typicalLine = (margins: readonly (CornerMargin | null)[], width: number): string =>
  margins.some((one) => one?.typical)
    ? paragraph('Typical properties stand behind it: replace them by your own.', width, '* ')
    : '';

/** @param by `joint`, `margin`, or the id of a load case */
export function cornersText(report: CornersReport, by: string, paper: Paper): string {
  const { width } = paper;
  const { project, targetMargin, states, corners } = report;
  const looked = `${states} ${states === 1 ? 'state' : 'states'} looked at`;
  const [only] = report.joints;
  if (corners && only) {
    return parts(
      paragraph(`${only.name}: target margin ${signed(targetMargin)}, ${looked}.`, width),
      corners.length > 0
        ? listed(corners, only.flat, paper)
        : paragraph('No load acts on this joint: it has no corner to judge.', width),
      typicalLine(corners, width),
      caution(width),
    );
  }
  const joints = sortedJoints(report.joints, by);
  const refused = joints.filter((joint) => joint.refused !== null).length;
  return parts(
    paragraph(`${project}: target margin ${signed(targetMargin)}, ${looked}.`, width),
    joints.length > 0 ? tables(report, joints, paper) : '',
    joints.length > 0 ? governing(joints, paper) : '',
    paragraph(tally(report.counts, joints.length, refused), width),
    typicalLine(
      joints.flatMap(({ cells }) => cells.map(({ lowest }) => lowest)),
      width,
    ),
    caution(width),
  );
}
