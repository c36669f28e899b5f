/** The answer of `check` as a table: what fails comes first. */
import type { Project } from '../shared/project.ts';
import type { CheckReport, Flag, JointSummary, Margin } from '../shared/reports.ts';
import { clocking, gapWords, lengthText, placeWords, signed, tally } from '../shared/words.ts';
import { type Cell, type Column, paragraph, table } from './layout.ts';
import { marked, painter } from './paint.ts';
import { caution, type Paper, parts } from './report.ts';
import { caseIds } from './report-corners.ts';
import { restsOnText } from './report-rests-on.ts';

const columns: readonly Column[] = [
  { title: 'Joint', least: 10 },
  { title: 'State' },
  { title: 'Margin ', align: 'right' },
  { title: 'Mode', least: 14 },
  { title: 'Case', least: 8 },
  { title: 'Place', least: 12 },
];

/** Lowest first; what could not be computed comes before all, what has no load after. */
const rank = ({ lowest, refused }: JointSummary): number =>
  refused ? Number.NEGATIVE_INFINITY : (lowest?.margin ?? Number.POSITIVE_INFINITY);

const byRank = (a: JointSummary, b: JointSummary): number => {
  const [left, right] = [rank(a), rank(b)];
  return left === right ? 0 : left < right ? -1 : 1;
};

function placeOf(margin: Margin, flat: boolean): string {
  const place = margin.place === 'within' ? `at ${lengthText(margin.x)}` : placeWords[margin.place];
  const around = flat ? [] : [clocking(margin.theta)];
  return [place, ...around, gapWords[margin.gapState]].join(', ');
}

/** First yield is what the mode says already. */
const modeOf = ({ mode, label, remark }: Margin): string =>
  remark === '' || mode === 'adhesive-yield' ? label : `${label}: ${remark}`;

function rowOf(joint: JointSummary, flat: boolean, paint: ReturnType<typeof painter>): Cell[] {
  const { jointId, lowest, refused } = joint;
  if (refused) return [{ text: jointId }, { text: '■ refused' }];
  if (!lowest) return [{ text: jointId }, { text: '○ no load' }];
  const colour = paint(lowest.state);
  return [
    { text: jointId },
    { text: marked(lowest.state), paint: colour },
    { text: signed(lowest.margin) + (lowest.typical ? '*' : ' '), paint: colour },
    { text: modeOf(lowest) },
    { text: caseIds(lowest) },
    { text: placeOf(lowest, flat) },
  ];
}

/** Each remark, and what the lowest margin leaves of its domain, once, with the joints it is about; none are named when it is about all. */
function remarks(joints: readonly JointSummary[], width: number): string {
  const about = new Map<Flag['message'], string[]>();
  for (const { jointId, flags, lowest } of joints) {
    const all = [...flags, ...(lowest?.flags ?? [])];
    for (const message of new Set(all.map((flag) => flag.message))) {
      const ids = about.get(message);
      if (ids) ids.push(jointId);
      else about.set(message, [jointId]);
    }
  }
  const computed = joints.filter(({ refused }) => refused === null).length;
  const named = (ids: readonly string[]): string => {
    if (ids.length === computed) return '';
    const more = ids.length > 4 ? `, and ${ids.length - 4} more` : '';
    return `${ids.slice(0, 4).join(', ')}${more}: `;
  };
  return [...about]
    .map(([message, ids]) => paragraph(named(ids) + message, width, '! '))
    .join('\n');
}

export function checkText(report: CheckReport, project: Project, paper: Paper): string {
  const { width } = paper;
  const joints = report.joints.toSorted(byRank);
  const flat = new Set(
    project.joints.flatMap(({ id, type }) => (type.startsWith('flat') ? [id] : [])),
  );
  const paint = painter(paper.colour);
  const rows = joints.map((joint) => rowOf(joint, flat.has(joint.jointId), paint));
  const refused = joints.filter((joint) => joint.refused !== null).length;
  return parts(
    paragraph(`${report.project}: target margin ${signed(report.targetMargin)}.`, width),
    rows.length > 0 ? table(columns, rows, width) : '',
    paragraph(tally(report.counts, joints.length, refused), width),
    joints.some(({ lowest }) => lowest?.typical)
      ? paragraph('Typical properties stand behind it: replace them by your own.', width, '* ')
      : '',
    restsOnText(joints, width),
    remarks(joints, width),
    caution(width),
  );
}
