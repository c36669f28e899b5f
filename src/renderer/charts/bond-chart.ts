/**
 * Stresses along the bondline, drawn at the scale of the section above them, so that the ends of the
 * overlap stand under each other. What lies right of the mouth is free: labels go there first.
 */
import { figureText, lengthText } from '../../shared/measures.ts';
import { drawFoot, drawRungs } from './axes.ts';
import type { BondCurve, BondPicture } from './bond-picture.ts';
import { lineOf, nearest } from './bond-picture.ts';
import { LINE, linesBox, makeLabelSet, writeLines } from './label-set.ts';
import { arrow, ring, rule } from './pen.ts';
import { type Box, type LabelWish, type Point, placeLabels } from './place-labels.ts';
import { type MakePlot, makePlot, type Painter } from './plot.ts';

export interface BondChart {
  show(picture: BondPicture): void;
  /** Reads out the stations under this pixel; null puts the readout away. */
  hover(pixel: number | null): void;
  destroy(): void;
}

const PADDING = { top: 8, right: 2 };
/** Room under the plot: for the figures of the axis, or only for its end ticks. */
const FOOT = 26;
const NO_FOOT = 6;

const lengthOf = ({ x }: BondPicture): number => x.at(-1) ?? 0;

/** One of the plastic zones says what the shading means; the widest has room for it. */
const widest = (zones: BondPicture['zones']): { from: number; to: number }[] =>
  zones.toSorted((a, b) => b.to - b.from - (a.to - a.from)).slice(0, 1);

/** Everything drawn that a label should keep off: the curves and the allowables. */
function drawnPoints({ x, y }: Painter, picture: BondPicture): Point[] {
  const across = Array.from({ length: 60 }, (_, i) => x((i / 59) * lengthOf(picture)));
  return [
    ...picture.curves.flatMap(({ values }) =>
      picture.x.map((at, i) => ({ x: x(at), y: y(values[i] ?? 0) })),
    ),
    ...picture.levels.flatMap(({ value }) => across.map((at) => ({ x: at, y: y(value) }))),
  ];
}

/** Where the label of a peak may stand, right of the mouth before anywhere else. */
const peakSpots = (at: Point, mouth: number): LabelWish['spots'] => [
  { at, side: 'e', gap: 10 },
  ...[0, LINE, -LINE].map(
    (shift) => ({ at: { x: mouth, y: at.y + shift }, side: 'e', gap: 10 }) as const,
  ),
  { at, side: 'ne', gap: 6 },
  { at, side: 'se', gap: 6 },
  { at, side: 'nw', gap: 6 },
  { at, side: 'w', gap: 10 },
  { at: { x: at.x, y: at.y + LINE }, side: 'se', gap: 8 },
  { at: { x: at.x, y: at.y + LINE }, side: 'sw', gap: 8 },
];

const levelSpots = (value: number, height: number, root: number, mouth: number) => {
  const [right, middle, left] =
    value > 0 ? (['ne', 'n', 'nw'] as const) : (['se', 's', 'sw'] as const);
  return [
    { at: { x: mouth, y: height }, side: 'e', gap: 10 },
    { at: { x: root + 6, y: height }, side: right, gap: 2 },
    { at: { x: (root + mouth) / 2, y: height }, side: middle, gap: 2 },
    { at: { x: mouth, y: height }, side: left, gap: 2 },
  ] as const;
};

/** Beside the arrow on the upper edge, right of the mouth before inside the plot. */
const beyondSpots = (tip: Point, root: number): LabelWish['spots'] => {
  const y = tip.y + LINE / 2;
  return [
    { at: { x: tip.x, y }, side: 'e', gap: 10 },
    { at: { x: tip.x, y }, side: 'w', gap: 10 },
    { at: { x: (root + tip.x) / 2, y: tip.y }, side: 's', gap: 0 },
  ];
};

/** @param make what it is drawn with: on the canvas, or in lines for paper */
export function makeBondChart(canvas: HTMLCanvasElement, make: MakePlot = makePlot): BondChart {
  let picture: BondPicture | null = null;
  let hovered: number | null = null;
  const padding = { left: 64, bottom: FOOT, ...PADDING };

  function under(painter: Painter): void {
    if (!picture) return;
    const { ink, view, range, zones, levels, foot } = picture;
    const { context, area, x, y } = painter;
    const length = lengthOf(picture);
    context.fillStyle = ink.zone;
    for (const zone of zones) {
      const left = x(zone.from);
      context.fillRect(left, area.top, Math.max(1.5, x(zone.to) - left), area.bottom - area.top);
    }
    const rungs = (area.bottom - area.top) / 42;
    drawRungs(painter, ink, { ...range, xFrom: 0, xTo: length, about: rungs, strong: 0 }, 'stress');
    if (range.low < 0 && range.high > 0) {
      rule(context, { x: x(0), y: y(0) }, { x: x(length), y: y(0) }, { colour: ink.soft });
    }
    for (const end of [0, length]) {
      const style = { colour: ink.line, dash: [1, 3] };
      const bottom = foot ? area.bottom : view.height;
      rule(context, { x: x(end), y: 0 }, { x: x(end), y: bottom }, style);
    }
    for (const { value } of levels) {
      const style = { colour: ink.ink, dash: [2, 4], width: 1.5 };
      rule(context, { x: x(0), y: y(value) }, { x: x(length), y: y(value) }, style);
    }
    if (!foot) return;
    const about = Math.max(2, (length * view.scale) / 64);
    drawFoot(painter, ink, { low: 0, high: length, about, measure: 'length' });
  }

  function over(painter: Painter): void {
    if (!picture) return;
    const { curves, levels, ink, view, range, zones, beyond } = picture;
    const { context, area, x, y } = painter;
    const mouth = x(lengthOf(picture));
    const labels = makeLabelSet(context);

    for (const { value, text } of levels) {
      labels.add(text, { colour: ink.ink, weight: 400 }, levelSpots(value, y(value), x(0), mouth));
    }
    if (beyond !== null) {
      const tip = { x: mouth, y: area.top - 6 };
      arrow(context, tip, 'up', ink.ink, ink.paper);
      labels.add(beyond, { colour: ink.ink, weight: 400 }, beyondSpots(tip, x(0)));
    }
    for (const { peak, colour } of curves) {
      if (!peak) continue;
      const at = { x: x(peak.x), y: Math.max(area.top, y(peak.value)) };
      ring(context, at, ink[colour], ink.paper);
      if (peak.text !== null) {
        labels.add(peak.text, { colour: ink[colour], weight: 600 }, peakSpots(at, mouth));
      }
    }
    for (const zone of widest(zones)) {
      const at = { x: (x(zone.from) + x(zone.to)) / 2, y: y(0) };
      const side = range.high > 0 ? 'n' : 's';
      if (x(zone.to) - x(zone.from) > 48) {
        const style = { colour: ink.soft, weight: 400, ground: ink.zone };
        labels.add('plastic', style, [{ at, side, gap: 4 }]);
      }
    }
    const bounds: Box = {
      left: area.left + 2,
      top: 0,
      right: view.width - 2,
      bottom: area.bottom + 4,
    };
    const lines = drawnPoints(painter, picture);
    const boxes = labels.paint(bounds, { curves: lines }, ink.paper);
    readout(painter, lines, boxes);
  }

  function readout(painter: Painter, drawn: readonly Point[], taken: readonly Box[]): void {
    if (!picture || hovered === null) return;
    const { ink, view } = picture;
    const { context, area, x, y } = painter;
    const length = lengthOf(picture);
    const at = (hovered - view.left) / view.scale;
    const slack = 3 / view.scale;
    if (at < -slack || at > length + slack) return;
    const station = nearest(picture.x, at);
    const here = x(picture.x[station] ?? 0);
    rule(context, { x: here, y: area.top }, { x: here, y: area.bottom }, { colour: ink.ink });
    const figures = picture.curves.map(({ name, values, colour, width }: BondCurve) => {
      const value = values[station] ?? 0;
      const dot = { x: here, y: y(value) };
      const isInside = dot.y >= area.top - 1 && dot.y <= area.bottom + 1;
      if (width > 1 && isInside) ring(context, dot, ink[colour], ink[colour]);
      return { text: `${name} ${figureText('stress', value)}`, colour: ink[colour] };
    });
    const place = { text: `at ${lengthText(picture.x[station] ?? 0)}`, colour: ink.ink };
    const lines = [place, ...figures];
    const heights = [0.9, 0.7, 0.5, 0.3, 0.1].map(
      (share) => area.top + share * (area.bottom - area.top),
    );
    const beside = (from: number, side: 'e' | 'w', gap: number) =>
      heights.map((height) => ({ at: { x: from, y: height }, side, gap }));
    const spots = [
      ...beside(x(length), 'e', 10),
      ...beside(here, 'e', 12),
      ...beside(here, 'w', 12),
    ];
    const [box] = placeLabels(
      [{ ...linesBox(context, lines), spots }],
      { left: area.left, top: 0, right: view.width - 2, bottom: area.bottom },
      drawn,
      taken,
    );
    if (box) writeLines(context, lines, { x: box.left, y: box.top }, ink.paper);
  }

  const plot = make(canvas, { padding, under, over });
  return {
    show(next) {
      const { view, ink, range } = next;
      if (picture?.view.width !== view.width || picture.view.height !== view.height) {
        plot.resize(view.width, view.height);
      }
      picture = next;
      padding.left = view.left;
      padding.bottom = next.foot ? FOOT : NO_FOOT;
      const xHigh = (view.width - PADDING.right - view.left) / view.scale;
      plot.show(
        { xLow: 0, xHigh, yLow: range.low, yHigh: range.high },
        next.curves.map((curve) => lineOf(curve, next.x, ink)),
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
