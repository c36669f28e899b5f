/** The answers of `matters` and `scatter`. */
import type { Joint } from '../shared/project.ts';
import type { InputTolerance, MattersReport, ScatterReport } from '../shared/reports-scatter.ts';
import {
  belowSentence,
  changeText,
  checkSentences,
  grouped,
  lowestText,
  middleSentence,
  originWords,
  percent,
  percentileText,
  toleranceText,
} from '../shared/scatter-words.ts';
import { signed } from '../shared/words.ts';
import { type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const barColumns: readonly Column[] = [
  { title: 'Input', least: 12 },
  { title: 'From' },
  { title: 'Margin', align: 'right' },
  { title: 'To' },
  { title: 'Margin', align: 'right' },
  { title: 'Swing', align: 'right' },
  { title: 'Set by, at the lower', least: 16 },
];

export function mattersText(report: MattersReport, joint: Joint, paper: Paper): string {
  const { width } = paper;
  const unitOf = (input: string): InputTolerance['unit'] =>
    report.tolerances.find((tolerance) => tolerance.input === input)!.unit;
  const rows = report.bars.map(({ input, label, low, high, from, to, swing }) => [
    { text: label },
    { text: changeText(from, unitOf(input)) || '0' },
    { text: signed(low.margin) },
    { text: changeText(to, unitOf(input)) || '0' },
    { text: signed(high.margin) },
    { text: swing.toFixed(3) },
    { text: swing === 0 ? '' : lowestText(low.margin < high.margin ? low : high) },
  ]);
  return parts(
    paragraph(`${joint.name}: ${middleSentence(report)}`, width),
    paragraph(
      'The lowest margin with one input at either end of its tolerance (two standard deviations, or the half-width), the others in their middle.',
      width,
    ),
    table(barColumns, rows, width),
    flagLines(report.flags, width),
    caution(width),
  );
}

const governColumns: readonly Column[] = [
  { title: 'Governs', align: 'right' },
  { title: 'Mode', least: 14 },
  { title: 'Case', least: 10 },
];
const toleranceColumns: readonly Column[] = [
  { title: 'Input', least: 12 },
  { title: 'Varies', least: 16 },
  { title: 'Origin', least: 10 },
];

const BAR = 40;

/** One line for each bar of the histogram, zero marked. */
function histogramText({ histogram }: ScatterReport): string {
  const { from, width, counts } = histogram;
  const most = Math.max(...counts);
  return counts
    .map((count, i) => {
      const edge = from + i * width;
      const length = Math.round((BAR * count) / most);
      const mark = count === 0 ? '' : '█'.repeat(length) || '▏';
      return `${signed(Math.abs(edge) < width / 2 ? 0 : edge).padStart(7)}  ${mark}  ${grouped(count)}`.trimEnd();
    })
    .join('\n');
}

export function scatterText(report: ScatterReport, joint: Joint, paper: Paper): string {
  const { width } = paper;
  const { samples, seed, mean, deviation, lowest, highest } = report;
  return parts(
    paragraph(`${joint.name}: ${belowSentence(report)}`, width),
    paragraph(
      `${report.percentiles.map(percentileText).join('; ')}. Mean ${signed(mean, 3)}, standard deviation ${deviation.toFixed(3)}, lowest ${signed(lowest, 3)}, highest ${signed(highest, 3)}.`,
      width,
    ),
    paragraph(middleSentence(report), width),
    `Lowest margin of ${grouped(samples)} samples, seed ${seed}; each line starts at its margin:\n${histogramText(report)}`,
    table(
      governColumns,
      report.governs.map(({ label, caseName, count }) => [
        { text: percent(count / samples) },
        { text: label },
        { text: caseName },
      ]),
      width,
    ),
    table(
      toleranceColumns,
      report.tolerances.map((tolerance) => [
        { text: tolerance.label },
        { text: toleranceText(tolerance) },
        { text: originWords[tolerance.origin] },
      ]),
      width,
    ),
    checkSentences(report)
      .map((text) => paragraph(text, width))
      .join('\n'),
    flagLines(report.flags, width),
    caution(width),
  );
}
