/** One case of the book as Markdown. */
import {
  type Case,
  type Check,
  type CurveCase,
  type GroupCheck,
  isCurve,
  type Panel,
  type SameCheck,
  type Series,
  tags,
  type ValueCheck,
} from './case.ts';
import { allowance, difference, digitsOf, plain, share, significant } from './figures.ts';
import { checksOf, judge, shareOf } from './judge.ts';

/** A bar would end the cell. */
const cell = (text: string): string => text.replaceAll('|', '\\|');
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
const table = (head: readonly string[], rows: readonly string[]): string =>
  [row(...head), row(...head.map(() => '---')), ...rows].join('\n');

function allowedOf({ tolerance, unit }: ValueCheck): string {
  const parts: string[] = [];
  if (tolerance.relative !== undefined) parts.push(allowance(tolerance.relative));
  if (tolerance.absolute !== undefined) {
    parts.push(`${plain(tolerance.absolute)}${unit && ` ${unit}`}`);
  }
  return parts.join(' or ');
}

function valueRow(check: ValueCheck, withTag: boolean): string {
  const { name, unit, expected, why } = check;
  const { computed, difference: miss } = judge(check);
  const source = check.printed?.replace(/^-/, '−') ?? plain(Number(expected.toPrecision(10)));
  const digits = Math.min(Math.max(digitsOf(source) + 1, 5), 8);
  return row(
    name,
    unit || '–',
    source,
    significant(computed, digits),
    difference(miss, expected),
    allowedOf(check),
    why,
    ...(withTag ? [check.tag ? tags[check.tag].name : ''] : []),
  );
}

function valueTable(checks: readonly ValueCheck[]): string {
  const withTag = checks.some(({ tag }) => tag !== undefined);
  const head = ['figure', 'unit', 'source', 'computed', 'difference', 'allowed', 'why'];
  return table(
    withTag ? [...head, 'tag, where another'] : head,
    checks.map((check) => valueRow(check, withTag)),
  );
}

function groupRow(check: GroupCheck): string {
  const { count, largest, worst } = judge(check);
  // Among differences of rounding which is the largest is chance.
  const where = largest < 1e-9 ? '–' : (worst?.what ?? '–');
  const allowed = `${allowance(check.tolerance)} ${check.scale}`;
  return row(check.name, String(count), share(largest), where, allowed, check.why);
}

const groupTable = (checks: readonly GroupCheck[]): string =>
  table(
    ['figures', 'compared', 'largest difference', 'where', 'allowed', 'why'],
    checks.map(groupRow),
  );

const sameTable = (checks: readonly SameCheck[]): string =>
  table(
    ['must be the same', 'compared', 'the same'],
    checks.map((check) => {
      const { count, agreeing } = judge(check);
      return row(check.name, String(count), String(agreeing));
    }),
  );

function tablesOf(checks: readonly Check[]): string[] {
  const values = checks.filter((check) => check.kind === 'value');
  const groups = checks.filter((check) => check.kind === 'group');
  const sames = checks.filter((check) => check.kind === 'same');
  return [
    ...(values.length > 0 ? [valueTable(values)] : []),
    ...(groups.length > 0 ? [groupTable(groups)] : []),
    ...(sames.length > 0 ? [sameTable(sames)] : []),
  ];
}

/** Two theories of one stress stand beside the same source. */
const isNewSource = (all: readonly Series[], s: number): boolean =>
  s === 0 || all[s - 1]!.expected !== all[s]!.expected;
const columns = (all: readonly Series[]): readonly string[] =>
  all.flatMap(({ name }, s) => [...(isNewSource(all, s) ? ['source'] : []), name, 'difference']);

function stationTable({ title, x, series, tabled }: Panel): string {
  const curves = series.map(({ computed }) => computed());
  const rows = x.flatMap((at, i) =>
    tabled?.(at) === false
      ? []
      : [
          row(
            plain(at),
            ...series.flatMap(({ expected }, s) => {
              const [reference, computed] = [expected[i]!, curves[s]!(at)];
              return [
                ...(isNewSource(series, s) ? [plain(reference)] : []),
                significant(computed, 4),
                difference(computed - reference, reference),
              ];
            }),
          ),
        ],
  );
  const some = rows.length < x.length ? ', at some of the stations' : '';
  return `${title}, MPa${some}:\n\n${table(['x, mm', ...columns(series)], rows)}`;
}

function stretchTable(curve: CurveCase): string {
  const rows = checksOf(curve).map(({ panel, series, zone, check }) => {
    const { title, series: all } = curve.panels[panel]!;
    const shares = check.compare().map(shareOf);
    const mean = shares.reduce((sum, one) => sum + one, 0) / shares.length;
    const where = curve.zones[zone]!;
    return row(
      `${title}: ${all[series]!.name}`,
      where.name,
      String(shares.length),
      share(Math.max(...shares)),
      share(mean),
      Number.isFinite(check.tolerance)
        ? `${allowance(check.tolerance)} ${check.scale}`
        : `not held; stated ${check.scale}`,
      where.why,
    );
  });
  const head = ['curve', 'stretch', 'stations', 'largest difference', 'mean', 'allowed', 'why'];
  return table(head, rows);
}

const curveTables = (curve: CurveCase): string[] => [
  stretchTable(curve),
  ...curve.panels.map(stationTable),
];

export const plotName = (curve: CurveCase): string => `${curve.id}.svg`;

export function renderCase(one: Case | CurveCase): string {
  const facts = [
    `Source: ${one.source}.`,
    `Tag: ${tags[one.tag].name}.`,
    `Inputs:\n${one.inputs.map((input) => `  - ${input}`).join('\n')}`,
  ];
  const parts = [`### ${one.title}`, facts.map((line) => `- ${line}`).join('\n')];
  if (isCurve(one)) {
    parts.push(`![${one.title}: computed curves and reference](verification/${plotName(one)})`);
    parts.push(...curveTables(one));
  }
  parts.push(...tablesOf(one.checks ?? []));
  if (one.remarks) parts.push(one.remarks.join('\n\n'));
  return parts.join('\n\n');
}
