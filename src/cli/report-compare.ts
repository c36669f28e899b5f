/** The answer of `compare`: figures side by side, what differs, and why one carries more. */
import type { CompareColumn, CompareReport, Difference } from '../shared/reports-compare.ts';
import { springUnits, springWords, stiffnessFigure } from '../shared/springs-text.ts';
import { caseText, lengthText, signed } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Cell, type Column, paragraph, table } from './layout.ts';
import { marked, painter } from './paint.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const cell = (text: string): Cell => ({ text });

/** A row of the comparison: its title and what each column has there. */
type Row = readonly [title: string, of: (column: CompareColumn) => Cell];

const text = (title: string, of: (column: CompareColumn) => string): Row => [
  title,
  (column) => cell(column.refused ? '–' : of(column)),
];

const known = (value: number | null | undefined, unit: string): string =>
  value === null || value === undefined ? 'not known' : `${significant(value)} ${unit}`;

function figureRows(report: CompareReport, paint: ReturnType<typeof painter>): Row[] {
  const { caseName } = report;
  const bonds = (column: CompareColumn, of: (bond: CompareColumn['bonds'][number]) => string) =>
    column.bonds.length === 0 ? '–' : column.bonds.map(of).join(' / ');
  const first = report.columns.find(({ stiffness }) => stiffness !== null);
  const rows: Row[] = [
    [
      'lowest margin',
      ({ lowest, refused }) =>
        refused
          ? cell('■ refused')
          : lowest
            ? {
                text: `${marked(lowest.state)} ${signed(lowest.margin)}`,
                paint: paint(lowest.state),
              }
            : cell('○ no load'),
    ],
    text('set by', ({ lowest }) =>
      lowest ? `${lowest.label}, ${caseText(lowest.caseName, lowest.conditionName)}` : '–',
    ),
  ];
  if (caseName !== '') {
    rows.push(
      text(`bond in shear, times ${caseName}`, ({ carried }) =>
        carried ? significant(carried.shear) : '–',
      ),
      text('first failure of the bond', ({ carried }) =>
        carried ? `${significant(carried.first.factor)}, ${carried.first.label}` : '–',
      ),
      text('shared by the bonds, %', (one) =>
        bonds(one, ({ share }) => String(Math.round(share * 100))),
      ),
      text('bonded area, mm²', (one) => bonds(one, ({ area }) => significant(area))),
      text('peak shear, MPa', (one) => bonds(one, ({ peakShear }) => significant(peakShear))),
      text('peak peel, MPa', (one) => bonds(one, ({ peakPeel }) => significant(peakPeel))),
    );
  }
  rows.push(
    text('adds', ({ mass }) => known(mass?.added, 'g')),
    text('adhesive', ({ mass }) => known(mass && mass.adhesiveVolume / 1000, 'ml')),
    text('printed layers', ({ print }) => String(print?.layers ?? '–')),
    ...(first?.stiffness?.springs ?? []).map(({ kind }) =>
      text(`${springWords[kind]}, ${springUnits[kind].stiffness}`, ({ stiffness }) => {
        const spring = stiffness?.springs.find((one) => one.kind === kind);
        return spring ? stiffnessFigure(spring.stiffness) : '–';
      }),
    ),
  );
  return rows;
}

/** The margins of all modes: a mode that a column does not have is a dash. */
function marginRows({ columns }: CompareReport): Row[] {
  const labels = [...new Set(columns.flatMap(({ margins }) => margins.map(({ label }) => label)))];
  return labels.map((label) =>
    text(label, ({ margins }) => {
      const found = margins.find((margin) => margin.label === label);
      return found ? signed(found.margin) : '–';
    }),
  );
}

const differenceRow = ({ label, unit, values }: Difference): Cell[] => [
  cell(unit === '' ? label : `${label}, ${unit}`),
  ...values.map((value) =>
    cell(
      value === null ? '–' : typeof value === 'string' ? value : String(value).replace('-', '−'),
    ),
  ),
];

export function compareText(report: CompareReport, paper: Paper): string {
  const { width } = paper;
  const { columns, caseName } = report;
  const paint = painter(paper.colour);
  const titles = (first: string): Column[] => [
    { title: first, least: 14 },
    ...columns.map(({ id }): Column => ({ title: id, least: 12 })),
  ];
  const set = (rows: readonly Row[]): Cell[][] =>
    rows.map(([title, of]) => [cell(title), ...columns.map((column) => of(column))]);
  const flags = new Map(columns.flatMap((one) => one.flags).map((flag) => [flag.message, flag]));
  return parts(
    columns
      .map(({ id, name, description, overlap, refused }) =>
        paragraph(
          `${id}: ${name}; ${description}, overlap ${lengthText(overlap)}.${refused ? ` ${refused.message}` : ''}`,
          width,
        ),
      )
      .join('\n'),
    report.sentences.map(({ message }) => paragraph(message, width)).join('\n'),
    table(titles('Figure'), set(figureRows(report, paint)), width),
    table(titles('Margin'), set(marginRows(report)), width),
    report.differences.length === 0
      ? 'Their inputs are the same.'
      : table(titles('Differs in'), report.differences.map(differenceRow), width),
    caseName === ''
      ? 'They share no load case: strength and stress are not compared.'
      : paragraph(
          `Shares and peaks are those of ${caseName} at the nominal gap, at the clocking at which the first bond is weakest; strengths are the worst of all gaps and clockings.`,
          width,
        ),
    flagLines([...flags.values()], width),
    caution(width),
  );
}
