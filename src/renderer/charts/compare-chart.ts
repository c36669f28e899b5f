/** Curves of several joints over one another on one axis, each with its own stations. */
import { figureText, lengthText } from '../../shared/measures.ts';
import { drawFoot, drawRungs } from './axes.ts';
import { lineOf, nearest } from './bond-picture.ts';
import type { CompareCurve, ComparePlot } from './compare-data.ts';
import type { Ink } from './ink.ts';
import { LINE, linesBox, makeLabelSet, writeLines } from './label-set.ts';
import { ring, rule } from './pen.ts';
import { type Box, type LabelWish, type Point, placeLabels } from './place-labels.ts';
import { makePlot, type Painter } from './plot.ts';

export interface ComparePicture extends ComparePlot {
  readonly ink: Ink;
  readonly width: number;
  readonly height: number;
}

export interface CompareChart {
  show(picture: ComparePicture): void;
  /** Reads out every curve under this pixel; null puts the readout away. */
  hover(pixel: number | null): void;
  destroy(): void;
}

/** What lies right of the mouth is free: labels go there first. */
const PADDING = { left: 44, right: 112, top: 8, bottom: 26 };

const ends = ({ x }: CompareCurve): { low: number; high: number } => ({
  low: x[0] ?? 0,
  high: x.at(-1) ?? 0,
});

function drawnPoints({ area, x, y }: Painter, { curves, levels }: ComparePicture): Point[] {
  const across = Array.from(
    { length: 60 },
    (_, i) => area.left + (i / 59) * (area.right - area.left),
  );
  return [
    ...curves.flatMap((curve) =>
      curve.x.map((at, i) => ({ x: x(at), y: y(curve.values[i] ?? 0) })),
    ),
    ...levels.flatMap(({ value }) => across.map((at) => ({ x: at, y: y(value) }))),
  ];
}

/** Right of the plot, level with the peak or a few lines off; else beside the peak itself. */
const peakSpots = (at: Point, right: number): LabelWish['spots'] => [
  ...[0, 1, -1, 2, -2, 3, -3, 4, -4, 5].map(
    (line) => ({ at: { x: right, y: at.y + line * LINE }, side: 'e', gap: 10 }) as const,
  ),
  { at, side: 'nw', gap: 6 },
  { at, side: 'sw', gap: 6 },
];

const levelSpots = (value: number, height: number, area: Box): LabelWish['spots'] => {
  const [right, middle, left] =
    value > 0 ? (['ne', 'n', 'nw'] as const) : (['se', 's', 'sw'] as const);
  return [
    { at: { x: area.left + 6, y: height }, side: right, gap: 2 },
    { at: { x: (area.left + area.right) / 2, y: height }, side: middle, gap: 2 },
    { at: { x: area.right, y: height }, side: left, gap: 2 },
  ];
};

export function makeCompareChart(canvas: HTMLCanvasElement): CompareChart {
  let picture: ComparePicture | null = null;
  let hovered: number | null = null;

  function under(painter: Painter): void {
    // Before the first answer there is nothing to scale: figures at the axes would be of nothing.
    if (!picture || picture.curves.length === 0) return;
    const { ink, range, levels, span, curves, from } = picture;
    const { context, area, x, y } = painter;
    const about = (area.bottom - area.top) / 42;
    drawRungs(
      painter,
      ink,
      { ...range, xFrom: span.low, xTo: span.high, about, strong: 0 },
      'stress',
    );
    if (range.low < 0 && range.high > 0) {
      rule(context, { x: area.left, y: y(0) }, { x: area.right, y: y(0) }, { colour: ink.soft });
    }
    // Where each overlap begins and ends.
    for (const end of new Set(curves.flatMap((curve) => Object.values(ends(curve))))) {
      const style = { colour: ink.line, dash: [1, 3] };
      rule(context, { x: x(end), y: 0 }, { x: x(end), y: area.bottom }, style);
    }
    for (const { value } of levels) {
      const style = { colour: ink.ink, dash: [2, 4], width: 1.5 };
      rule(context, { x: area.left, y: y(value) }, { x: area.right, y: y(value) }, style);
    }
    const ticks = Math.max(2, (area.right - area.left) / 64);
    drawFoot(painter, ink, { ...span, about: ticks, measure: 'length', away: from === 'mouth' });
  }

  function over(painter: Painter): void {
    if (!picture) return;
    const { curves, levels, ink, note, width } = picture;
    const { context, area, x, y } = painter;
    const labels = makeLabelSet(context);
    for (const { peak, colour } of curves) {
      if (!peak) continue;
      const at = { x: x(peak.x), y: Math.min(area.bottom, Math.max(area.top, y(peak.value))) };
      ring(context, at, ink[colour], ink.paper);
      if (peak.text === null) continue;
      labels.add(peak.text, { colour: ink[colour], weight: 600 }, peakSpots(at, area.right));
    }
    for (const { value, text } of levels) {
      labels.add(text, { colour: ink.ink, weight: 400 }, levelSpots(value, y(value), area));
    }
    if (note !== null) {
      labels.add(note, { colour: ink.soft, weight: 400 }, [
        { at: { x: area.left + 6, y: area.top }, side: 'se', gap: 2 },
        { at: { x: area.right, y: area.top }, side: 'se', gap: 4 },
      ]);
    }
    const bounds: Box = { left: area.left + 2, top: 0, right: width - 2, bottom: area.bottom + 4 };
    const lines = drawnPoints(painter, picture);
    readout(painter, lines, labels.paint(bounds, { curves: lines }, ink.paper));
  }

  function readout(painter: Painter, drawn: readonly Point[], taken: readonly Box[]): void {
    if (!picture || hovered === null) return;
    const { ink, curves, from, span, width } = picture;
    const { context, area, x, y } = painter;
    if (hovered < area.left - 3 || hovered > area.right + 3) return;
    const share = (hovered - area.left) / Math.max(1, area.right - area.left);
    const at = Math.min(span.high, Math.max(span.low, span.low + share * (span.high - span.low)));
    const here = x(at);
    rule(context, { x: here, y: area.top }, { x: here, y: area.bottom }, { colour: ink.ink });
    const figures = curves.flatMap((curve) => {
      const { low, high } = ends(curve);
      if (at < low - 1e-9 || at > high + 1e-9) return [];
      const value = curve.values[nearest(curve.x, at)] ?? 0;
      ring(context, { x: here, y: y(value) }, ink[curve.colour], ink[curve.colour]);
      return [{ text: `${curve.name} ${figureText('stress', value)}`, colour: ink[curve.colour] }];
    });
    const place = `${lengthText(Math.abs(at))} from the ${from}`;
    const lines = [{ text: place, colour: ink.ink }, ...figures];
    const spots = (['e', 'w'] as const).flatMap((side) =>
      [0.5, 0.7, 0.3].map((down) => ({
        at: { x: here, y: area.top + down * (area.bottom - area.top) },
        side,
        gap: 12,
      })),
    );
    const [box] = placeLabels(
      [{ ...linesBox(context, lines), spots }],
      { left: area.left, top: 0, right: width - 2, bottom: area.bottom },
      drawn,
      taken,
    );
    if (box) writeLines(context, lines, { x: box.left, y: box.top }, ink.paper);
  }

  const plot = makePlot(canvas, { padding: { ...PADDING }, under, over });
  return {
    show(next) {
      if (picture?.width !== next.width || picture.height !== next.height) {
        plot.resize(next.width, next.height);
      }
      picture = next;
      const { span, range, ink } = next;
      plot.show(
        { xLow: span.low, xHigh: span.high, yLow: range.low, yHigh: range.high },
        next.curves.map((curve) => lineOf(curve, curve.x, ink)),
      );
    },
    hover(pixel) {
      if (hovered === pixel) return;
      hovered = pixel;
      plot.repaint();
    },
    destroy: () => plot.destroy(),
  };
}
