/** The answer of `sweep`: strength against overlap, and where more overlap stops paying. */
import type { Joint } from '../shared/project.ts';
import type { SweepReport } from '../shared/reports.ts';
import { lengthText } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const columns: readonly Column[] = [
  { title: 'Overlap mm', align: 'right' },
  { title: 'Bond', align: 'right' },
  { title: 'All but trough', align: 'right' },
  { title: 'Set by', least: 14 },
];

function plateauLine({ plateau, plateauStrength, caseName, points }: SweepReport): string {
  if (points.length === 0)
    return 'No load acts on this joint in any case: it has no strength ratio.';
  if (plateau === null) {
    return 'The bond has no plateau within the longest overlap that is looked at: more overlap still adds strength.';
  }
  return `Past ${lengthText(plateau)} more overlap buys the bond under 2 %: however long, it reaches ${significant(plateauStrength)} times the load asked for, in ${caseName}.`;
}

export function sweepText(report: SweepReport, joint: Joint, paper: Paper): string {
  const { width } = paper;
  const rows = report.points.map(({ overlap, bond, all, mode }) => [
    { text: overlap.toFixed(1) },
    { text: significant(bond) },
    { text: significant(all) },
    { text: mode },
  ]);
  return parts(
    [
      paragraph(`${joint.name}: overlap now ${lengthText(joint.overlap)}.`, width),
      paragraph(
        'Strength over the load asked for, worst case and gap; 1.00 is a margin of 0.',
        width,
      ),
    ].join('\n'),
    rows.length > 0 ? table(columns, rows, width) : '',
    paragraph(plateauLine(report), width),
    flagLines(report.flags, width),
    caution(width),
  );
}
