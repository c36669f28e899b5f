/** The answers of `basis` and `correlate`. */
import {
  amount,
  becauseWords,
  comparedFigure,
  methodWords,
  testWords,
} from '../shared/coupon-words.ts';
import type {
  BasisLine,
  Correlation,
  CouponSetReport,
  CouponStatistics,
  CouponsReport,
  StatisticsDecision,
} from '../shared/reports-coupons.ts';
import { restsOn } from '../shared/rests-on.ts';
import { environment } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';
import { lifeText } from './report-life.ts';

const share = (value: number | null): string =>
  value === null ? '–' : `${(100 * value).toFixed(1)} %`;
const figure = (value: number | null): string =>
  value === null ? '' : significant(value).replace('-', '−');

function head({
  name,
  specimen,
  adhesive,
  temperature,
  moisture,
  gap,
  area,
}: CouponSetReport): string {
  const standard = specimen.standard === '' ? '' : ` (${specimen.standard})`;
  return `${name}: ${specimen.name}${standard}, ${adhesive.name}, ${environment(temperature, moisture)}, gap ${gap} mm, ${significant(area)} mm² bonded`;
}

const NONE = 'There are no sets of coupons in this project.';

function summary({ all, batches }: CouponStatistics, width: number): string {
  const columns: readonly Column[] = [
    { title: 'Batch' },
    { title: 'Results', align: 'right' },
    { title: 'Mean, MPa', align: 'right' },
    { title: 'Scatter', align: 'right' },
    { title: 'Lowest', align: 'right' },
    { title: 'Highest', align: 'right' },
  ];
  const row = (name: string, one: CouponStatistics['all']) =>
    [
      name,
      String(one.n),
      significant(one.mean),
      share(one.variation),
      significant(one.lowest),
      significant(one.highest),
    ].map((text) => ({ text }));
  const rows = batches.length > 1 ? batches.map((batch) => row(batch.name, batch)) : [];
  return table(columns, [...rows, row('all', all)], width);
}

const compared = (one: StatisticsDecision, value: number): string =>
  comparedFigure(one, value, figure);

function decisions({ decisions: list, batches }: CouponStatistics, width: number): string {
  const columns: readonly Column[] = [
    { title: 'Decision' },
    { title: '', align: 'right' },
    { title: 'Limit', align: 'right' },
    { title: 'What follows', least: 24 },
  ];
  return table(
    columns,
    list.map((one) => [
      { text: testWords(one, batches) },
      { text: one.statistic === null ? '' : `${one.measure} ${compared(one, one.statistic)}` },
      { text: one.critical === null ? '' : compared(one, one.critical) },
      { text: one.says },
    ]),
    width,
  );
}

/** Why a method gives no value; of which, where it gives the other. */
function whyNot(a: BasisLine, b: BasisLine): string {
  if (b.value === null) return `${a.value === null ? '' : 'B: '}${becauseWords(b)}`;
  return a.value === null ? `A: ${becauseWords(a)}` : '';
}

function values({ basis, chosen }: CouponStatistics, width: number): string {
  const columns: readonly Column[] = [
    { title: '' },
    { title: 'Method' },
    { title: 'B, MPa', align: 'right' },
    { title: 'A, MPa', align: 'right' },
    { title: '', least: 20 },
  ];
  const methods = [...new Set(basis.map(({ method }) => method))];
  const of = (method: string, kind: 'A' | 'B'): BasisLine =>
    basis.find((one) => one.method === method && one.kind === kind)!;
  return table(
    columns,
    methods.map((method) => {
      const [b, a] = [of(method, 'B'), of(method, 'A')];
      const isChosen = (kind: 'A' | 'B'): boolean => chosen[kind]?.method === method;
      return [
        { text: isChosen('B') || isChosen('A') ? '>' : '' },
        { text: methodWords[method] },
        { text: `${figure(b.value)}${isChosen('B') ? ' *' : ''}` },
        { text: `${figure(a.value)}${isChosen('A') ? ' *' : ''}` },
        { text: whyNot(a, b) },
      ];
    }),
    width,
  );
}

/** What is short of a class, and nothing of what is not. */
const short = ({ batchesShort, resultsShort }: CouponStatistics['sampling'][number]): string =>
  [
    ...(batchesShort > 0 ? [amount(batchesShort, 'batches')] : []),
    ...(resultsShort > 0 ? [amount(resultsShort, 'results')] : []),
  ].join(' and ');

function sampling({ sampling: list }: CouponStatistics, width: number): string {
  const met = list.filter((one) => one.met).map(({ name }) => name);
  const next = list.find((one) => one.name === 'B18' && !one.met);
  const text =
    met.length > 0
      ? `Tested enough for the usual classes ${met.join(', ')} (from memory).`
      : next
        ? `Short of the usual class B18 (3 batches, 18 results; from memory) by ${short(next)}.`
        : '';
  return text === '' ? '' : paragraph(text, width);
}

function basisOf(set: CouponSetReport, { width }: Paper): string {
  const { statistics, flags, lines } = set;
  if (!statistics) {
    const why = lines.length === 0 ? 'No results yet.' : 'None of its results counts.';
    return parts(paragraph(head(set), width), why, flagLines(flags, width));
  }
  const { chosen, all } = statistics;
  const rest = chosen.B
    ? `* ${restsOn('B', all.n, set)}: ${figure(chosen.B.value)} MPa of load over area, by ${methodWords[chosen.B.method]}.`
    : 'There is no B value: see the last decision.';
  return parts(
    paragraph(head(set), width),
    summary(statistics, width),
    decisions(statistics, width),
    values(statistics, width),
    paragraph(rest, width),
    sampling(statistics, width),
    flagLines(flags, width),
  );
}

export const basisText = ({ sets, life }: CouponsReport, paper: Paper): string =>
  sets.length + life.length === 0
    ? NONE
    : parts(
        ...sets.map((set) => basisOf(set, paper)),
        ...life.map((set) => lifeText(set, paper.width)),
        caution(paper.width),
      );

function correlationText(name: string, correlation: Correlation | null): string {
  if (!correlation) return `${name}: nothing measured that counts and is predicted.`;
  const { n, mean, variation, low, high } = correlation;
  const interval =
    low === null || high === null
      ? ''
      : `, its mean within ${significant(low)} and ${significant(high)} (95 %)`;
  return `${name}: measured over predicted ${significant(mean)}, scatter ${share(variation)}, ${n} result${n === 1 ? '' : 's'}${interval}`;
}

function linesText(set: CouponSetReport, width: number): string {
  const columns: readonly Column[] = [
    { title: 'Coupon' },
    { title: 'Batch' },
    { title: 'Gap', align: 'right' },
    { title: 'Broke at, N', align: 'right' },
    { title: 'Predicted, N', align: 'right' },
    { title: 'Ratio', align: 'right' },
    { title: '', least: 20 },
  ];
  return table(
    columns,
    set.lines.map((line) => [
      { text: line.coupon },
      { text: line.batch },
      { text: String(line.gap) },
      { text: significant(line.load) },
      { text: figure(line.predicted) },
      { text: figure(line.ratio) },
      { text: line.apart === null ? '' : `not counted: ${line.why}` },
    ]),
    width,
  );
}

function correlateSet(set: CouponSetReport, width: number): string {
  const { load, mode, why } = set.predicted;
  const expected =
    load === null
      ? why
      : `Expected: ${significant(load)} N, ${mode}; grips for ${figure(set.grip)} N.`;
  return parts(
    paragraph(head(set), width),
    paragraph(expected, width),
    set.lines.length === 0 ? 'No results yet.' : linesText(set, width),
    set.lines.length === 0 ? '' : paragraph(correlationText('This set', set.correlation), width),
    flagLines(set.flags, width),
  );
}

export const correlateText = ({ sets, adhesives }: CouponsReport, { width }: Paper): string =>
  sets.length === 0
    ? NONE
    : parts(
        ...sets.map((set) => correlateSet(set, width)),
        adhesives
          .map(({ name, correlation }) => paragraph(correlationText(name, correlation), width))
          .join('\n'),
        caution(width),
      );
