/** The answers of `gap`. */
import { surfaceWords, verdictWords } from '../shared/bench-words.ts';
import type { Joint } from '../shared/project.ts';
import type { Margin } from '../shared/reports.ts';
import type {
  BondGap,
  BondRange,
  GapLimitsReport,
  GapRange,
  GapReport,
  GapVerdict,
  PlacedGap,
  Uncertain,
} from '../shared/reports-gap.ts';
import { caseText, signed } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const mm = (value: number): string => value.toFixed(3).replace('-', '−');
const within = ({ value, uncertainty }: Uncertain): string => `${mm(value)} ± ${mm(uncertainty)}`;
const place = ({ x, theta }: PlacedGap): string =>
  `${Number(x.toFixed(1))} mm, ${Math.round(theta) % 360}°`;

const marks = { accept: '●', hold: '◐', reject: '○', unknown: '·' } as const;

function verdict({ state, reasons }: GapVerdict, { name }: Joint, width: number): string {
  const [first, ...others] = reasons;
  return [
    `${name}: ${marks[state]} ${verdictWords[state]}`,
    paragraph(first!.message, width),
    ...others.map(({ message }) => paragraph(message, width, '– ')),
  ].join('\n');
}

const mistakes = ({ mistakes: list }: GapReport, width: number): string =>
  list
    .map(({ surface, at, level, message }) => {
      const where = at === null ? '' : `, station ${at[0] + 1}, clocking ${at[1] + 1}`;
      return paragraph(
        `${surfaceWords[surface]}${where}: ${message}${level === 'doubt' ? ' (confirm it with "yes" in the column confirmed if it is right)' : ''}`,
        width,
        '? ',
      );
    })
    .join('\n');

function gaps({ bond, centred, held, stoppedBy, offset }: BondGap, width: number): string {
  const columns: readonly Column[] = [
    { title: `${bond}, mm` },
    { title: 'Thinnest', align: 'right' },
    { title: 'at' },
    { title: 'Mean', align: 'right' },
    { title: 'Thickest', align: 'right' },
    { title: 'at' },
  ];
  const row = (name: string, { min, mean, max }: BondGap['held']) => [
    { text: name },
    { text: within(min) },
    { text: place(min) },
    { text: within(mean) },
    { text: within(max) },
    { text: place(max) },
  ];
  const stop = { jig: 'the jig', spacer: 'the spacers', touch: 'touching' }[stoppedBy];
  const note = `As held: the tube up to ${mm(offset.value)} mm off centre, stopped by ${stop}. Places from the mouth and from the mark; ± is the expanded uncertainty (k = 2).`;
  return `${table(columns, [row('centred', centred), row('as held', held)], width)}\n${paragraph(note, width)}`;
}

const by = { engineer: 'engineer', coupons: 'coupons', spacer: 'spacers' } as const;

const limits = ({ limits: list }: GapReport): string =>
  list
    .map(({ bond, from, to, fromBy, toBy }) =>
      from === null || to === null
        ? `Limits of the ${bond}: none.`
        : `Limits of the ${bond}: ${from} mm (${by[fromBy!]}) to ${to} mm (${by[toBy!]}).`,
    )
    .join('\n');

const marginLine = (name: string, margin: Margin | null, target: number): string =>
  margin === null
    ? ''
    : `${name}: margin ${signed(margin.margin)} of ${signed(target)} asked for; ${margin.label}, ${caseText(margin.caseName, margin.conditionName)}.`;

const margins = ({ measured, guarded, targetMargin }: GapVerdict, width: number): string =>
  [
    marginLine('At the gap as measured', measured, targetMargin),
    marginLine('At the ends of its uncertainty', guarded, targetMargin),
  ]
    .filter((line) => line !== '')
    .map((line) => paragraph(line, width))
    .join('\n');

const scatterLines = ({ scatter }: GapVerdict, width: number): string =>
  scatter
    .map(({ bond, min, mean, max, samples, seed }) => {
      const of = ({ low, high }: { low: number; high: number }) => `${mm(low)} to ${mm(high)}`;
      const text = `By Monte Carlo (${samples} samples, seed ${seed}), 95 % of the ${bond} as held: thinnest ${of(min)}, mean ${of(mean)}, thickest ${of(max)} mm.`;
      return paragraph(text, width);
    })
    .join('\n');

function shapes({ shapes: list }: GapReport, width: number): string {
  if (list.length === 0) return '';
  const columns: readonly Column[] = [
    { title: 'Surface' },
    { title: 'Mean, mm', align: 'right' },
    { title: 'Out of round', align: 'right' },
    { title: 'Mouth less root', align: 'right' },
  ];
  const rows = list.map(({ surface, mean, ovality, taper }) => [
    { text: surfaceWords[surface] },
    { text: within(mean) },
    { text: mm(ovality) },
    { text: mm(taper) },
  ]);
  return table(columns, rows, width);
}

function amounts({ amounts: mix }: GapReport, width: number): string {
  const ml = `${significant(mix.mixVolume / 1000)} ml`;
  const grams = mix.mixMass === null ? '' : `, ${significant(mix.mixMass)} g`;
  const split =
    mix.resin === null || mix.hardener === null
      ? ''
      : `: ${significant(mix.resin)} g of resin, ${significant(mix.hardener)} g of hardener`;
  const text = `Adhesive to mix: ${ml}${grams}${split} (${significant(mix.volume / 1000)} ml in the joint, times ${mix.waste}).`;
  return paragraph(text, width);
}

export function gapText(report: GapVerdict, joint: Joint, { width }: Paper): string {
  const { gap } = report;
  return parts(
    verdict(report, joint, width),
    mistakes(gap, width),
    ...gap.bonds.map((bond) => gaps(bond, width)),
    scatterLines(report, width),
    limits(gap),
    margins(report, width),
    shapes(gap, width),
    amounts(gap, width),
    flagLines(gap.flags, width),
    caution(width),
  );
}

const rangeText = (range: GapRange | null): string =>
  range ? `${range.from} to ${range.to} mm` : 'none';

function rangeOf(bond: BondRange, width: number): string {
  const columns: readonly Column[] = [
    { title: 'Gap, mm', align: 'right' },
    { title: 'Margin', align: 'right' },
    { title: 'Set by', least: 16 },
  ];
  const rows = bond.curve.map(({ gap, margin, mode }) => [
    { text: gap.toFixed(3) },
    { text: signed(margin) },
    { text: mode },
  ]);
  const lines = [
    `${bond.bond}, drawn ${bond.drawn} mm`,
    `By the model: ${rangeText(bond.model)}`,
    `By coupons: ${rangeText(bond.coupons)}${bond.coupons ? ` (${bond.coupons.source.kind})` : ''}`,
    `Both: ${rangeText(bond.narrower)}`,
    `Set by the engineer: ${rangeText(bond.set)}`,
  ];
  return parts(lines.join('\n'), table(columns, rows, width), flagLines(bond.flags, width));
}

export const limitsText = (report: GapLimitsReport, joint: Joint, { width }: Paper): string =>
  parts(
    `${joint.name}: gaps that reach a margin of ${signed(report.targetMargin)}`,
    ...report.bonds.map((bond) => rangeOf(bond, width)),
    caution(width),
  );
