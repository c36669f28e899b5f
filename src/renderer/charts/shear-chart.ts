/**
 * Shear along the bondline, drawn at the scale of the section above it, so that the ends of the
 * overlap stand under each other. What lies right of the mouth is free: labels go there first.
 */
import type { StressReport } from '../../shared/reports.ts';
import { figure, millimetres } from '../../shared/words.ts';
import { drawFoot, drawRungs } from './axes.ts';
import type { Ink } from './ink.ts';
import { LINE, linesBox, makeLabelSet, writeLines } from './label-set.ts';
import { ring, rule } from './pen.ts';
import { type Box, type Point, placeLabels } from './place-labels.ts';
import { type Curve, makePlot, type Painter } from './plot.ts';
import { allowables, peakText, readAt, type ShearRange, shearRange } from './shear-data.ts';

export interface ShearView {
  /** Left edge of the overlap, pixels from the left of the canvas. */
  readonly left: number;
  /** Pixels for a millimetre. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

export interface ShearPicture {
  readonly stress: StressReport;
  /** Such as `yield 38.0, 60 °C wet`. */
  readonly allowable: (level: number) => string;
  readonly view: ShearView;
  readonly ink: Ink;
}

export interface ShearChart {
  show(picture: ShearPicture): void;
  /** Reads out the stations under this pixel; null puts the readout away. */
  hover(pixel: number | null): void;
  destroy(): void;
}

const PADDING = { top: 8, bottom: 26, right: 2 };

/** The outer bond, or the only one, is the solid line. */
const lineOf = (index: number, count: number, ink: Ink): Omit<Curve, 'points'> =>
  index === count - 1
    ? { colour: ink.shear, dash: [], width: 2.25 }
    : { colour: ink['shear-second'], dash: [7, 4], width: 2 };

/** One of the plastic zones says what the shading means; the widest has room for it. */
const widestZone = (stress: StressReport): { from: number; to: number }[] =>
  stress.bonds
    .flatMap((bond) => bond.plastic)
    .sort((a, b) => b.to - b.from - (a.to - a.from))
    .slice(0, 1);

/** Everything drawn that a label should keep off: the curves and the allowables. */
function drawnPoints({ x, y }: Painter, stress: StressReport): Point[] {
  const length = stress.x.at(-1) ?? 0;
  const across = Array.from({ length: 60 }, (_, i) => x((i / 59) * length));
  return [
    ...stress.bonds.flatMap((bond) =>
      stress.x.map((at, i) => ({ x: x(at), y: y(bond.shear[i] ?? 0) })),
    ),
    ...allowables(stress).flatMap((level) => across.map((at) => ({ x: at, y: y(level) }))),
  ];
}

export function makeShearChart(canvas: HTMLCanvasElement): ShearChart {
  let picture: ShearPicture | null = null;
  let range: ShearRange = { low: 0, high: 1 };
  let hovered: number | null = null;
  const padding = { left: 64, ...PADDING };

  function under(painter: Painter): void {
    if (!picture) return;
    const { stress, ink, view } = picture;
    const { context, area, x, y } = painter;
    const length = stress.x.at(-1) ?? 0;
    context.fillStyle = ink.zone;
    for (const zone of stress.bonds.flatMap((bond) => bond.plastic)) {
      const left = x(zone.from);
      context.fillRect(left, area.top, Math.max(1.5, x(zone.to) - left), area.bottom - area.top);
    }
    const rungs = (area.bottom - area.top) / 50;
    drawRungs(painter, ink, { ...range, xFrom: 0, xTo: length, about: rungs, strong: 0 });
    for (const end of [0, length]) {
      const style = { colour: ink.line, dash: [1, 3] };
      rule(context, { x: x(end), y: 0 }, { x: x(end), y: area.bottom }, style);
    }
    for (const level of allowables(stress)) {
      const style = { colour: ink.ink, dash: [2, 4], width: 1.5 };
      rule(context, { x: x(0), y: y(level) }, { x: x(length), y: y(level) }, style);
    }
    const about = Math.max(2, (length * view.scale) / 64);
    drawFoot(painter, ink, { low: 0, high: length, about, unit: 'mm' });
  }

  function over(painter: Painter): void {
    if (!picture) return;
    const { stress, ink, view } = picture;
    const { context, area, x, y } = painter;
    const mouth = x(stress.x.at(-1) ?? 0);
    const labels = makeLabelSet(context);

    for (const level of allowables(stress)) {
      const height = y(level);
      const isAbove = level > 0;
      labels.add(picture.allowable(level), { colour: ink.ink, weight: 400 }, [
        { at: { x: mouth, y: height }, side: 'e', gap: 10 },
        { at: { x: x(0) + 6, y: height }, side: isAbove ? 'ne' : 'se', gap: 2 },
        { at: { x: (x(0) + mouth) / 2, y: height }, side: isAbove ? 'n' : 's', gap: 2 },
        { at: { x: mouth, y: height }, side: isAbove ? 'nw' : 'sw', gap: 2 },
      ]);
    }
    stress.bonds.forEach((bond, index) => {
      const { colour } = lineOf(index, stress.bonds.length, ink);
      const at = { x: x(bond.peak.x), y: y(bond.peak.value) };
      ring(context, at, colour, ink.paper);
      const text = peakText(stress, index);
      const below = at.y + LINE;
      if (text === null) return;
      labels.add(text, { colour, weight: 600 }, [
        { at, side: 'e', gap: 10 },
        { at: { x: mouth, y: at.y }, side: 'e', gap: 10 },
        { at: { x: mouth, y: at.y + LINE }, side: 'e', gap: 10 },
        { at: { x: mouth, y: at.y - LINE }, side: 'e', gap: 10 },
        { at, side: 'ne', gap: 6 },
        { at, side: 'se', gap: 6 },
        { at, side: 'nw', gap: 6 },
        { at, side: 'w', gap: 10 },
        { at: { x: at.x, y: below }, side: 'se', gap: 8 },
        { at: { x: at.x, y: below }, side: 'sw', gap: 8 },
      ]);
    });
    for (const zone of widestZone(stress)) {
      const at = { x: (x(zone.from) + x(zone.to)) / 2, y: y(0) };
      const side = range.high > 0 ? 'n' : 's';
      if (x(zone.to) - x(zone.from) > 48) {
        const style = { colour: ink.soft, weight: 400, halo: ink.zone };
        labels.add('plastic', style, [{ at, side, gap: 4 }]);
      }
    }
    const bounds: Box = {
      left: area.left + 2,
      top: 0,
      right: view.width - 2,
      bottom: area.bottom + 4,
    };
    const lines = drawnPoints(painter, stress);
    const boxes = labels.paint(bounds, lines, ink.paper);
    readout(painter, lines, boxes);
  }

  function readout(painter: Painter, drawn: readonly Point[], taken: readonly Box[]): void {
    if (!picture || hovered === null) return;
    const { stress, ink, view } = picture;
    const { context, area, x, y } = painter;
    const length = stress.x.at(-1) ?? 0;
    const at = (hovered - view.left) / view.scale;
    const slack = 3 / view.scale;
    if (at < -slack || at > length + slack) return;
    const read = readAt(stress, at);
    const here = x(read.x);
    rule(context, { x: here, y: area.top }, { x: here, y: area.bottom }, { colour: ink.ink });
    const figures = read.values.map(({ part, shear }, index) => {
      const { colour } = lineOf(index, stress.bonds.length, ink);
      ring(context, { x: here, y: y(shear) }, colour, colour);
      const name = stress.bonds.length === 1 ? 'shear' : part;
      return { text: `${name} ${figure(shear)} MPa`, colour };
    });
    const lines = [{ text: `at ${millimetres(read.x)}`, colour: ink.ink }, ...figures];
    const heights = [0.9, 0.7, 0.5, 0.3, 0.1].map(
      (share) => area.top + share * (area.bottom - area.top),
    );
    const [box] = placeLabels(
      [
        {
          ...linesBox(context, lines),
          spots: [
            ...heights.map(
              (height) => ({ at: { x: x(length), y: height }, side: 'e', gap: 10 }) as const,
            ),
            ...heights.map(
              (height) => ({ at: { x: here, y: height }, side: 'e', gap: 12 }) as const,
            ),
            ...heights.map(
              (height) => ({ at: { x: here, y: height }, side: 'w', gap: 12 }) as const,
            ),
          ],
        },
      ],
      { left: area.left, top: 0, right: view.width - 2, bottom: area.bottom },
      drawn,
      taken,
    );
    if (box) writeLines(context, lines, { x: box.left, y: box.top }, ink.paper);
  }

  const plot = makePlot(canvas, { padding, under, over });
  return {
    show(next) {
      const { stress, view, ink } = next;
      if (picture?.view.width !== view.width || picture.view.height !== view.height) {
        plot.resize(view.width, view.height);
      }
      picture = next;
      padding.left = view.left;
      range = shearRange(stress);
      const xHigh = (view.width - PADDING.right - view.left) / view.scale;
      plot.show(
        { xLow: 0, xHigh, yLow: range.low, yHigh: range.high },
        stress.bonds.map((bond, index) => ({
          points: stress.x.map((x, i) => ({ x, y: bond.shear[i] ?? 0 })),
          ...lineOf(index, stress.bonds.length, ink),
        })),
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
