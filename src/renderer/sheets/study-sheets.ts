/** Sizing, frame sizes, tolerances and what they do, as tables of figures. */
import type { Joint } from '../../shared/project.ts';
import type {
  LaminateReport,
  Ledger,
  Margin,
  SizeResult,
  SizesReport,
  SizingReport,
} from '../../shared/reports.ts';
import type { InputTolerance, MattersReport, ScatterReport } from '../../shared/reports-scatter.ts';
import { distributionWords, originWords } from '../../shared/scatter-words.ts';
import { column, type Sheet, type SheetCell } from '../../shared/sheet.ts';
import { setBy } from '../../shared/sizing-words.ts';
import { barsOf } from '../size/scatter/histogram-data.ts';

/** What varies in a sizing, as a head. */
const varied = ({ vary }: SizingReport): string => column(vary.replace('-', ' '), 'mm');

export const sizingSheet = (report: SizingReport): Sheet => ({
  head: [varied(report), 'lowest margin', 'set by', 'target'],
  rows: report.points.map(({ value, margin, label }) => [value, margin, label, report.target]),
});

export const checksSheet = (report: SizingReport): Sheet => ({
  head: [varied(report), 'lowest margin', 'target', 'reached', 'set by'],
  rows: (report.found?.checks ?? []).map(({ value, reached, margin }) => [
    value,
    margin?.margin ?? null,
    report.target,
    reached ? 'yes' : 'no',
    margin ? setBy(margin) : 'does not fit together',
  ]),
});

export const belowSheet = (
  report: SizingReport,
  at: number,
  margins: readonly Margin[],
): Sheet => ({
  head: [varied(report), 'margin', 'mode', 'part', 'load case', 'gap', 'target'],
  rows: margins.map(({ margin, label, part, caseName, gapState }) => [
    at,
    margin,
    label,
    part,
    caseName,
    gapState,
    report.target,
  ]),
});

export const suggestionsSheet = (report: SizingReport): Sheet => ({
  head: ['change', 'reaches the target', varied(report), 'lowest margin', 'gain', 'set by'],
  rows: report.suggestions.map(({ change, reached, value, margin, gain, label }) => [
    change,
    reached ? 'yes' : 'no',
    value,
    margin,
    gain,
    label,
  ]),
});

type Sized = NonNullable<Joint['sizes']>[number];

/** Empty where a size has the joint's own. */
export function sizesSheet(joint: Joint, report: SizesReport | null): Sheet {
  const sizes: readonly Sized[] = joint.sizes ?? [];
  const given = (size: Sized, key: string): SheetCell =>
    (size as unknown as Record<string, SheetCell | undefined>)[key] ?? null;
  const resultOf = ({ id }: Sized): SizeResult | undefined =>
    report?.sizes.find(({ sizeId }) => sizeId === id);
  const flat = 'strip' in joint;
  return {
    head: [
      'size',
      column(flat ? 'width' : 'outside diameter', 'mm'),
      column(flat ? 'strip' : 'tube wall', 'mm'),
      'walls times',
      'loads times',
      column('overlap now', 'mm'),
      'lowest margin',
      'mode',
      column('overlap needed', 'mm'),
      'margin there',
      'target',
      'why not',
    ],
    rows: sizes.map((size) => {
      const result = resultOf(size);
      return [
        size.name,
        given(size, flat ? 'width' : 'outsideDiameter'),
        given(size, flat ? 'thickness' : 'tubeWall'),
        given(size, 'wallFactor'),
        given(size, 'loadFactor'),
        report?.overlap ?? joint.overlap,
        result?.lowest?.margin ?? null,
        result?.lowest?.label ?? null,
        result?.overlap ?? null,
        result?.there?.margin ?? null,
        report?.target ?? null,
        result?.refused?.message ?? null,
      ];
    }),
  };
}

const unitOf = (unit: InputTolerance['unit']): string => (unit === '1' ? 'share of value' : unit);

export const mattersSheet = ({ bars, tolerances, middle }: MattersReport): Sheet => ({
  head: [
    'input',
    'unit of the ends',
    'lower end',
    'margin there',
    'set by there',
    'upper end',
    'margin up there',
    'set by up there',
    'swing',
    'margin in the middle',
  ],
  rows: bars.map(({ input, label, from, to, low, high, swing }) => [
    label,
    unitOf(tolerances.find((one) => one.input === input)?.unit ?? '1').replace('°', 'deg '),
    from,
    low.margin,
    low.label,
    to,
    high.margin,
    high.label,
    swing,
    middle.margin,
  ]),
});

export const tolerancesSheet = (rows: readonly InputTolerance[]): Sheet => ({
  head: ['input', 'distribution', 'spread', 'unit of the spread', 'origin'],
  rows: rows.map(({ label, distribution, spread, unit, origin }) => [
    label,
    distributionWords[distribution],
    spread,
    unitOf(unit).replace('°', 'deg '),
    originWords[origin],
  ]),
});

export const histogramSheet = ({ histogram }: ScatterReport): Sheet => ({
  head: ['margin from', 'margin to', 'samples'],
  rows: barsOf(histogram).map(({ from, to, count }) => [from, to, count]),
});

export const percentilesSheet = (report: ScatterReport): Sheet => ({
  head: ['what', 'margin', 'confidence limit from', 'confidence limit to', 'confidence'],
  rows: [
    ...report.percentiles.map(({ share, value, low, high }) => [
      `${100 * share} % of samples below`,
      value,
      low,
      high,
      report.confidence,
    ]),
    ['mean', report.mean, null, null, null],
    ['standard deviation', report.deviation, null, null, null],
    ['lowest', report.lowest, null, null, null],
    ['highest', report.highest, null, null, null],
  ],
});

export const governsSheet = ({ governs, samples }: ScatterReport): Sheet => ({
  head: ['lowest', 'load case', 'samples', 'share'],
  rows: governs.map(({ label, caseName, count }) => [label, caseName, count, count / samples]),
});

export const knockdownsSheet = (ledgers: readonly Ledger[]): Sheet => ({
  head: ['bond', column('gap', 'mm'), 'knockdown', 'left'],
  rows: ledgers.flatMap(({ part, gap, rows, left }): SheetCell[][] => [
    ...rows.map(({ name, factor }) => [part, gap, name, factor]),
    [part, gap, 'all of them', left],
  ]),
});

const matrixUnits = { A: 'N/mm', B: 'N', D: 'N·mm' } as const;

export const matrixSheet = (
  report: Pick<LaminateReport, 'a' | 'b' | 'd'>,
  name: 'A' | 'B' | 'D',
  axes: readonly string[],
): Sheet => {
  const plain = axes.map((axis) => axis.replace('θ', 'theta'));
  const rows = { A: report.a, B: report.b, D: report.d }[name];
  return {
    head: [name, ...plain.map((axis) => column(axis, matrixUnits[name]))],
    rows: rows.map((row, i) => [plain[i] ?? null, ...row]),
  };
};
