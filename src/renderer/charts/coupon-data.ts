/** What the charts of coupons show, and the same as tables. */
import { apartWords, onAxis } from '../../shared/coupon-words.ts';
import type { Measure } from '../../shared/display-units.ts';
import {
  figureOf,
  figureText,
  fixedOf,
  fromShown,
  inShown,
  plainOf,
  plainText,
  symbolOf,
} from '../../shared/measures.ts';
import type {
  Correlation,
  CouponLine,
  CouponSetReport,
  Family,
  ProbabilityPlot,
} from '../../shared/reports-coupons.ts';
import { figure } from '../../shared/words.ts';
import type { Axis, AxisTick, Dot, DotLine, DotPlot } from './dot-chart.ts';
import { tickDecimals, ticks } from './ticks.ts';

/** Chances at rungs, with their normal quantiles (a table that does not change). */
const NORMAL_RUNGS: readonly (readonly [chance: number, quantile: number])[] = [
  [0.01, -2.3263],
  [0.05, -1.6449],
  [0.1, -1.2816],
  [0.25, -0.6745],
  [0.5, 0],
  [0.75, 0.6745],
  [0.9, 1.2816],
  [0.95, 1.6449],
  [0.99, 2.3263],
];

const rungs = (family: Family): readonly AxisTick[] =>
  NORMAL_RUNGS.map(([chance, quantile]) => ({
    at: family === 'weibull' ? Math.log(-Math.log1p(-chance)) : quantile,
    text: `${Number((100 * chance).toFixed(0))} %`,
  }));

/** Round values along an axis that may be logarithmic. */
function valueTicks(family: Family, low: number, high: number): readonly AxisTick[] {
  const [from, to] = [low, high].map((end) => inShown('stress', onAxis(family, end)));
  const values = ticks(from!, to!, 6);
  const decimals = tickDecimals(values);
  return values
    .filter((value) => family === 'normal' || value > 0)
    .map((value) => ({
      at: family === 'normal' ? fromShown('stress', value) : Math.log(fromShown('stress', value)),
      text: value.toFixed(decimals).replace('-', '−'),
    }));
}

/** A little air on both sides; some where all are the same. */
function widened(values: readonly number[], share: number, least: number) {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const air = Math.max(share * (high - low), least);
  return { low: low - air, high: high + air };
}

/** Null where no result counts. */
export function probabilityPlot({ family, points, line }: ProbabilityPlot): DotPlot | null {
  if (points.length === 0) return null;
  const ends = line ?? [];
  const across = widened(
    [...points, ...ends].map(({ x }) => x),
    0.06,
    1e-3,
  );
  const up = widened(
    [...points, ...ends].map(({ y }) => y),
    0.08,
    0.4,
  );
  const within = ({ at }: AxisTick): boolean => at >= up.low && at <= up.high;
  const [from, to] = [ends[0], ends.at(-1)];
  return {
    x: { ...across, ticks: valueTicks(family, across.low, across.high), unit: symbolOf('stress') },
    y: { ...up, ticks: rungs(family).filter(within), unit: '%' },
    dots: points.map(({ x, y, value, chance }) => ({
      x,
      y,
      apart: false,
      text: [`${(100 * chance).toFixed(1)} %`, figureText('stress', value)],
    })),
    lines: from && to ? [{ from, to, look: 'fitted' }] : [],
    band: null,
  };
}

export const probabilityTable = ({ points, family }: ProbabilityPlot) => ({
  caption: `Results in rising order with their median ranks, ${family} axes`,
  head: [`load over area, ${symbolOf('stress')}`, 'chance, %', 'along', 'up'],
  rows: points.map(({ value, chance, x, y }) => [
    figureOf('stress', value),
    (100 * chance).toFixed(1),
    x.toFixed(3).replace('-', '−'),
    y.toFixed(3).replace('-', '−'),
  ]),
});

export type Against = 'gap' | 'overlap' | 'temperature';

export const againstWords: Readonly<
  Record<Against, { readonly text: string; readonly measure: Measure }>
> = {
  gap: { text: 'gap', measure: 'small' },
  overlap: { text: 'overlap', measure: 'length' },
  temperature: { text: 'temperature', measure: 'temperature' },
};

/** One coupon of one set. */
export interface SetLine extends CouponLine {
  readonly set: string;
  readonly temperature: number;
}

export const setLines = (reports: readonly CouponSetReport[]): readonly SetLine[] =>
  reports.flatMap(({ name, temperature, lines }) =>
    lines.map((line) => ({ ...line, set: name, temperature })),
  );

const nameOf = ({ coupon, batch }: CouponLine): string =>
  batch === '' ? `coupon ${coupon}` : `coupon ${coupon}, batch ${batch}`;

/** Measured over predicted of each coupon; null where none is predicted. */
export function agreementPlot(
  lines: readonly SetLine[],
  against: Against,
  found: Correlation | null,
): DotPlot | null {
  const { measure } = againstWords[against];
  const dots: Dot[] = lines.flatMap((line) =>
    line.ratio === null
      ? []
      : [
          {
            x: line[against],
            y: line.ratio,
            apart: line.apart !== null,
            text: [
              `${nameOf(line)}, ${plainText(measure, Number(line[against].toFixed(3)))}`,
              `${line.ratio.toFixed(2)} of the prediction`,
              ...(line.apart === null ? [] : [apartWords[line.apart]]),
            ],
          },
        ],
  );
  if (dots.length === 0) return null;
  const least =
    against === 'temperature' ? 5 : 0.05 * Math.max(...dots.map(({ x }) => Math.abs(x)));
  const across = widened(
    dots.map(({ x }) => x),
    0.08,
    least || 1,
  );
  const shown = [...dots.map(({ y }) => y), 1, found?.high ?? 1, found?.low ?? 1];
  const air = widened(shown, 0.15, 0.1);
  const up = { low: Math.max(0, air.low), high: air.high };
  const level = (y: number, look: DotLine['look'], text: string): DotLine => ({
    from: { x: across.low, y },
    to: { x: across.high, y },
    look,
    text,
  });
  return {
    x: axis(across, 6, measure),
    y: axis(up, 5, null),
    dots,
    lines: [
      level(1, 'level', 'as predicted'),
      ...(found ? [level(found.mean, 'bound', `mean ${found.mean.toFixed(2)}`)] : []),
    ],
    band:
      found && found.low !== null && found.high !== null
        ? { low: found.low, high: found.high }
        : null,
  };
}

function axis(range: { low: number; high: number }, about: number, measure: Measure | null): Axis {
  const shown = (value: number): number => (measure ? inShown(measure, value) : value);
  const values = ticks(shown(range.low), shown(range.high), about);
  const decimals = tickDecimals(values);
  return {
    ...range,
    ticks: values.map((value) => ({
      at: measure ? fromShown(measure, value) : value,
      text: value.toFixed(decimals).replace('-', '−'),
    })),
    unit: measure ? symbolOf(measure) : '',
  };
}

/** The agreement for whoever does not see it. */
export function agreementAlt(lines: readonly SetLine[], against: Against): string {
  const drawn = lines.filter(({ ratio }) => ratio !== null);
  const apart = drawn.filter((line) => line.apart !== null).length;
  const ratios = drawn.map(({ ratio }) => ratio!);
  const places = drawn.map((line) => line[against]);
  const { text, measure } = againstWords[against];
  const span = (list: readonly number[], text: (value: number) => string = figure): string =>
    `${text(Math.min(...list))} to ${text(Math.max(...list))}`;
  const crosses =
    apart === 0
      ? ''
      : apart === 1
        ? ' 1 of them is kept apart and drawn as a cross.'
        : ` ${apart} of them are kept apart and drawn as crosses.`;
  return `Measured over predicted load of ${drawn.length} coupons against ${text}: ${span(ratios)}, at ${span(places, (place) => figureOf(measure, place))} ${symbolOf(measure)}.${crosses}`;
}

export const agreementTable = (lines: readonly SetLine[]) => ({
  caption: 'Measured over predicted, by coupon',
  head: [
    'set',
    'coupon',
    'batch',
    `gap, ${symbolOf('small')}`,
    `overlap, ${symbolOf('length')}`,
    `load, ${symbolOf('load')}`,
    `predicted, ${symbolOf('load')}`,
    'ratio',
    'counts',
  ],
  rows: lines.map(({ set, coupon, batch, gap, overlap, load, predicted, ratio, apart }) => [
    set,
    coupon,
    batch,
    plainOf('small', gap),
    plainOf('length', overlap),
    fixedOf('load', load, 0),
    predicted === null ? '–' : fixedOf('load', predicted, 0),
    ratio === null ? '–' : ratio.toFixed(3),
    apart === null ? 'yes' : apartWords[apart],
  ]),
});
