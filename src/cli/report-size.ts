/** The answers of `size` and `sizes`. */
import type { Joint } from '../shared/project.ts';
import type { Margin, SizesReport, SizingReport } from '../shared/reports.ts';
import {
  changeText,
  noHelpText,
  setBy,
  sizeText as sizeOf,
  sizesAnswer,
  sizingAnswer,
  stateText,
  varyNote,
} from '../shared/sizing-words.ts';
import { signed } from '../shared/words.ts';
import { type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

function checks({ found, vary }: SizingReport, width: number): string {
  if (!found) return '';
  const columns: readonly Column[] = [
    { title: 'Checked', align: 'right' },
    { title: 'Margin', align: 'right' },
    { title: 'Target' },
    { title: 'Set by', least: 20 },
  ];
  const rows = found.checks.map(({ value, reached, margin }) => [
    { text: sizeOf(vary, value) },
    { text: margin ? signed(margin.margin) : '–' },
    { text: reached ? 'reached' : 'missed' },
    { text: margin ? setBy(margin) : 'does not fit together' },
  ]);
  return table(columns, rows, width);
}

/** Modes below the target at one value. */
function below(title: string, margins: readonly Margin[], width: number): string {
  const columns: readonly Column[] = [
    { title, least: 20 },
    { title: 'Margin', align: 'right' },
    { title: 'Case and gap', least: 16 },
  ];
  const rows = margins.map((margin) => [
    { text: margin.label },
    { text: signed(margin.margin) },
    { text: stateText(margin) },
  ]);
  return margins.length > 0 ? table(columns, rows, width) : '';
}

function stops({ stop, vary }: SizingReport, width: number): string {
  if (!stop) return '';
  const atEnd =
    stop.end === stop.best
      ? ''
      : below(`Below target at ${sizeOf(vary, stop.end)}`, stop.atEnd, width);
  return parts(below(`Below target at ${sizeOf(vary, stop.best)}`, stop.atBest, width), atEnd);
}

function helps(report: SizingReport, width: number): string {
  const lines = report.suggestions.map((suggestion) =>
    paragraph(changeText(report, suggestion), width, '– '),
  );
  const tried = noHelpText(report);
  return [
    ...(lines.length > 0 ? ['What would help, each computed by the same sizing:', ...lines] : []),
    ...(tried ? [paragraph(tried, width)] : []),
  ].join('\n');
}

export function sizeText(report: SizingReport, joint: Joint, paper: Paper): string {
  const { width } = paper;
  const { present, vary } = report;
  const now = `${joint.name}: ${sizeOf(vary, present.value)} now, lowest margin ${signed(present.margin.margin)}, ${setBy(present.margin)}.`;
  return parts(
    paragraph(now, width),
    paragraph(sizingAnswer(report), width),
    paragraph(varyNote(report), width),
    checks(report, width),
    stops(report, width),
    helps(report, width),
    flagLines(report.flags, width),
    caution(width),
  );
}

export function sizesText(report: SizesReport, joint: Joint, paper: Paper): string {
  const { width } = paper;
  const columns: readonly Column[] = [
    { title: 'Size', least: 8 },
    { title: 'Margin', align: 'right' },
    { title: 'Set by', least: 20 },
    { title: 'Needs', align: 'right' },
    { title: '' },
  ];
  const rows = report.sizes.map(({ sizeId, name, lowest, overlap }) => [
    { text: name },
    { text: lowest ? signed(lowest.margin) : '–' },
    { text: lowest ? setBy(lowest) : 'not computed' },
    { text: !lowest ? '–' : overlap === null ? 'none reaches' : sizeOf('overlap', overlap) },
    { text: sizeId === report.worst ? 'worst' : '' },
  ]);
  const common = (report.common?.checks ?? []).map(({ sizeId, margin }) => {
    const name = report.sizes.find((size) => size.sizeId === sizeId)?.name ?? sizeId;
    return `${name} ${signed(margin.margin)}`;
  });
  return parts(
    paragraph(
      `${joint.name}: overlap now ${sizeOf('overlap', joint.overlap)}, margins at it; needed is the shortest overlap that reaches ${signed(report.target)}.`,
      width,
    ),
    table(columns, rows, width),
    paragraph(sizesAnswer(report), width),
    common.length > 0
      ? paragraph(
          `Checked with ${sizeOf('overlap', report.common!.overlap)}: ${common.join(', ')}.`,
          width,
        )
      : '',
    caution(width),
  );
}
