/** The S-N plot of coupons under cycles, both axes logarithmic, and the same as tables. */
import { cyclesText, lifeOnLine, shareOnLine, shareText } from '../../shared/life-words.ts';
import { plainOf, symbolOf } from '../../shared/measures.ts';
import type {
  LifeFit,
  LifeLineReport,
  LifeSetReport,
  PowerLine,
} from '../../shared/reports-coupons.ts';
import type { Axis, AxisTick, Dot, DotLine, DotPlot } from './dot-chart.ts';
import type { Point } from './place-labels.ts';
import { ticks } from './ticks.ts';

type Drawn = LifeLineReport & { readonly share: number };

const isDrawn = (line: LifeLineReport): line is Drawn => line.share !== null;

/** Decades where there are two or more, else round values between. */
function logTicks(low: number, high: number, text: (value: number) => string): AxisTick[] {
  const decades = Array.from(
    { length: Math.floor(high) - Math.ceil(low) + 1 },
    (_, i) => 10 ** (Math.ceil(low) + i),
  );
  const round = ticks(10 ** low, 10 ** high, 6).filter((value) => value > 0);
  return (decades.length > 1 ? decades : round).map((value) => ({
    at: Math.log10(value),
    text: text(value),
  }));
}

/** @param air decades before the first and after the last */
function logAxis(
  values: readonly number[],
  [before, after]: readonly [number, number],
  unit: string,
  text: (value: number) => string,
): Axis {
  const logs = values.map(Math.log10);
  const [low, high] = [Math.min(...logs) - before, Math.max(...logs) + after];
  return { low, high, ticks: logTicks(low, high, text), unit };
}

const place = (cycles: number, share: number): Point => ({
  x: Math.log10(cycles),
  y: Math.log10(share),
});

/** Through the points, one stroke after the other. */
const strokes = (points: readonly Point[], look: DotLine['look']): DotLine[] =>
  points.slice(1).map((to, i) => ({ from: points[i]!, to, look }));

/** The line that may be taken, from the highest stress to the longest test: there a life would be read off it. */
function takenLine({ shares, longest }: LifeFit, bound: PowerLine): DotLine[] {
  const [from, to] = [
    place(lifeOnLine(bound, shares[1]), shares[1]),
    place(longest, shareOnLine(bound, longest)),
  ];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  // Every coupon lies above and beyond it: below it is room for its name.
  return [
    { from, to: middle, look: 'level', text: 'S-N line', beside: ['sw', 's', 'w'] },
    { from: middle, to, look: 'level' },
  ];
}

/** Median, bound, and the straight line that may be taken; each name where its line is by itself. */
function linesOf(fit: LifeFit): DotLine[] {
  const down = [...fit.curve].reverse();
  const median = strokes(
    down.map((one) => place(one.median, one.share)),
    'fitted',
  );
  const [first, ...bound] = strokes(
    down.map((one) => place(one.bound, one.share)),
    'bound',
  );
  return [
    ...median.map(
      (one, i): DotLine =>
        i === median.length - 1 ? { ...one, text: 'median', beside: ['e', 'se', 'ne'] } : one,
    ),
    // From its other end, where the name has room above.
    ...(first
      ? [
          {
            ...first,
            from: first.to,
            to: first.from,
            text: 'bound',
            beside: ['ne', 'n', 'nw'] as const,
          },
        ]
      : []),
    ...bound,
    ...(fit.bound ? takenLine(fit, fit.bound) : []),
  ];
}

const nameOf = ({ coupon, batch }: LifeLineReport): string =>
  batch === '' ? `coupon ${coupon}` : `coupon ${coupon}, batch ${batch}`;

/** One dot for all that stand in one place, as run-outs at the end of the same test do. */
function inPlaces(drawn: readonly Drawn[]): readonly Dot[] {
  const places = new Map<string, Drawn[]>();
  for (const line of drawn) {
    const key = JSON.stringify([line.cycles, line.share, line.runOut]);
    places.set(key, [...(places.get(key) ?? []), line]);
  }
  return [...places.values()].map((here) => {
    const [{ cycles, share, runOut }] = here as [Drawn];
    return {
      ...place(cycles, share),
      apart: false,
      mark: runOut ? 'arrow' : 'full',
      text: [
        `${here.map(nameOf).join('; ')}: ${shareText(share)} of yield`,
        runOut ? `ran out at ${cyclesText(cycles)} cycles` : `${cyclesText(cycles)} cycles`,
      ],
      ...(here.length > 1 ? { label: `×${here.length}` } : {}),
    };
  });
}

/** Null where no result has a place. */
export function lifePlot({ lines, fit }: LifeSetReport): DotPlot | null {
  const drawn = lines.filter(isDrawn);
  if (drawn.length === 0) return null;
  const across = fit ? linesOf(fit) : [];
  const ends = across.flatMap(({ from, to }) => [from, to]);
  return {
    x: logAxis(
      [...drawn.map(({ cycles }) => cycles), ...ends.map(({ x }) => 10 ** x)],
      [0.25, fit ? 0.6 : 0.35],
      'cycles',
      cyclesText,
    ),
    y: logAxis(
      [...drawn.map(({ share }) => share), ...ends.map(({ y }) => 10 ** y)],
      [0.05, 0.05],
      'of yield',
      (value) => String(Number(value.toPrecision(3))),
    ),
    dots: inPlaces(drawn),
    lines: across,
    band: null,
  };
}

export const lifeTables = ({ lines, fit }: LifeSetReport) => [
  {
    caption: 'Coupons under cycles',
    head: [
      'coupon',
      'batch',
      `peak, ${symbolOf('load')}`,
      'peak shear over yield',
      'cycles',
      'ran out',
    ],
    rows: lines.map(({ coupon, batch, peak, share, cycles, runOut }) => [
      coupon,
      batch,
      plainOf('load', peak),
      share === null ? '–' : shareText(share),
      String(cycles),
      runOut ? 'yes' : 'no',
    ]),
  },
  ...(fit
    ? [
        {
          caption: 'Lives by the line, cycles',
          head: ['peak shear over yield', 'half last', '90 % last, with 95 % confidence'],
          rows: [...fit.curve]
            .reverse()
            .map(({ share, median, bound }) => [
              shareText(share),
              cyclesText(median),
              cyclesText(bound),
            ]),
        },
      ]
    : []),
];
