/** Strength against overlap. The present overlap is a mark on it that moves without a new sweep. */
import type { UnitChoice } from '../../shared/display-units.ts';
import type { SweepReport } from '../../shared/reports.ts';
import { shownUnits } from '../../shared/shown-units.ts';
import { figure, lengthText } from '../../shared/words.ts';
import { drawFoot, drawRungs } from './axes.ts';
import type { Ink } from './ink.ts';
import { type LabelSet, LINE, makeLabelSet, writeBeside } from './label-set.ts';
import { measure, ring, rule } from './pen.ts';
import type { Box, Point } from './place-labels.ts';
import { type MakePlot, makePlot, type Painter } from './plot.ts';
import { plateauText, strengthAt, sweepHigh } from './sweep-data.ts';

export interface SweepPicture {
  readonly sweep: SweepReport;
  readonly target: number;
  /** Overlap of the joint as it is now. */
  readonly present: number;
  /** Strength at the present overlap as the margins have it; read off the curve when left out. */
  readonly strength?: number | null;
  readonly ink: Ink;
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

export interface SweepChart {
  show(picture: SweepPicture): void;
  hover(pixel: number | null): void;
  destroy(): void;
}

/** Right of the plot the lines are named, each at its end. */
const PADDING = { top: 8, bottom: 26, right: 92 };

/** @param make what it is drawn with: on the canvas, or in lines for paper */
export function makeSweepChart(canvas: HTMLCanvasElement, make: MakePlot = makePlot): SweepChart {
  let picture: SweepPicture | null = null;
  let hovered: number | null = null;
  let high = 1;
  /** Those that it was painted in. */
  let units: UnitChoice | null = null;
  let rungs: readonly number[] = [];
  const padding = { left: 64, ...PADDING };

  const ends = (sweep: SweepReport): { low: number; high: number } => ({
    low: sweep.points[0]?.overlap ?? 0,
    high: sweep.points.at(-1)?.overlap ?? 1,
  });

  function under(painter: Painter): void {
    if (!picture) return;
    const { sweep, ink, target } = picture;
    const { context, area, x, y } = painter;
    const span = ends(sweep);
    if (sweep.plateau !== null && sweep.plateau < span.high) {
      const from = Math.max(area.left, x(sweep.plateau));
      context.fillStyle = ink.band;
      context.fillRect(from, area.top, area.right - from, area.bottom - area.top);
    }
    const about = (area.bottom - area.top) / 44;
    const across = { low: 0, high, xFrom: span.low, xTo: span.high, about, strong: 1 };
    rungs = drawRungs(painter, ink, across);
    drawFoot(painter, ink, { ...span, about: (area.right - area.left) / 70, measure: 'length' });
    const level = y(1 + target);
    const style = { colour: ink.ink, dash: [2, 4], width: 1.5 };
    rule(context, { x: area.left, y: level }, { x: area.right, y: level }, style);
  }

  /** What a label stands on: all of it on the band, or on paper. */
  const groundOf =
    ({ area, x }: Painter) =>
    (box: Box): string => {
      const { sweep, ink } = picture!;
      const { high: end } = ends(sweep);
      const from = sweep.plateau !== null && sweep.plateau < end ? x(sweep.plateau) : area.right;
      return box.left > from && box.right < area.right ? ink.band : ink.paper;
    };

  /** The present overlap: a line down the chart and a ring on each curve. */
  function markPresent(painter: Painter, labels: LabelSet): Point[] {
    if (!picture) return [];
    const { context, area, x, y } = painter;
    const { sweep, ink, present } = picture;
    const span = ends(sweep);
    const isOutside = present < span.low || present > span.high;
    const at = Math.min(area.right, Math.max(area.left, x(present)));
    const style = { colour: ink.ink, dash: isOutside ? [3, 3] : [], width: 1.75 };
    rule(context, { x: at, y: area.top }, { x: at, y: area.bottom }, style);
    const here = strengthAt(sweep, present);
    if (here && here.bond <= high) ring(context, { x: at, y: y(here.bond) }, ink.shear, ink.paper);
    if (here && here.all <= high) ring(context, { x: at, y: y(here.all) }, ink.ink, ink.paper);
    const text = here
      ? `${lengthText(present)}, strength ${figure(picture.strength ?? here.all)}`
      : lengthText(present);
    labels.add(text, { colour: ink.ink, weight: 650, ground: groundOf(painter) }, [
      { at: { x: at, y: area.bottom - 12 }, side: 'w', gap: 8 },
      { at: { x: at, y: area.bottom - 12 }, side: 'e', gap: 8 },
      { at: { x: at, y: area.top + 12 }, side: 'w', gap: 8 },
      { at: { x: at, y: area.top + 12 }, side: 'e', gap: 8 },
    ]);
    const height = area.bottom - area.top;
    return Array.from({ length: 25 }, (_, i) => ({ x: at, y: area.top + (i / 24) * height }));
  }

  /** The name of a curve at its end, or where it leaves the top of the chart. */
  function nameCurve({ area, x, y }: Painter, labels: LabelSet, pick: 'bond' | 'all'): void {
    if (!picture) return;
    const { ink, sweep } = picture;
    const drawn = sweep.points.filter((point) => point[pick] <= high);
    const last = drawn.at(-1);
    if (!last) return;
    const at = { x: x(last.overlap), y: y(last[pick]) };
    const isWhole = last === sweep.points.at(-1);
    const shifted = [0, -0.6, 0.6, -1, 1, 1.6].map((lines) => ({
      at: { x: isWhole ? area.right : at.x, y: at.y + lines * LINE },
      side: 'e' as const,
      gap: isWhole ? 8 : 10,
    }));
    const style = { colour: pick === 'bond' ? ink.shear : ink.ink, weight: 600 };
    labels.add(pick === 'bond' ? 'bond alone' : 'all but trough', style, shifted);
  }

  /** At the end of the band; before the present overlap, or in shorter lines beside it, where that is in the way. */
  function namePlateau(painter: Painter, labels: LabelSet, plateau: number): void {
    if (!picture) return;
    const { ink, present } = picture;
    const { context, area, x } = painter;
    const style = { colour: ink.soft, weight: 400, ground: groundOf(painter) };
    const [said, more = ''] = plateauText(plateau).split(', ');
    const wide = measure(context, more, style.weight) + 12;
    const here = x(present);
    const isInTheWay = here > area.right - wide && here < area.right;
    const isRoomBefore = here - x(plateau) > wide + 8;
    const isShort = isInTheWay && !isRoomBefore;
    const text = `${said},\n${isShort ? more.replace(' buys', '\nbuys') : more}`;
    const half = (text.split('\n').length * LINE) / 2;
    const [bottom, top] = [area.bottom - half - 3, area.top + half + 3];
    const between = rungs.slice(1).map((rung, i) => (rung + (rungs[i] ?? rung)) / 2);
    const heights = [
      bottom,
      top,
      ...between,
      ...[0.2, 0.4, 0.6, 0.8].map((share) => bottom + share * (top - bottom)),
    ];
    const spots = (at: number, side: 'e' | 'w', gap: number) =>
      heights.map((height) => ({ at: { x: at, y: height }, side, gap }));
    labels.add(text, style, [
      ...(isInTheWay ? spots(here, 'w', 8) : []),
      ...spots(area.right, 'w', 6),
    ]);
  }

  function over(painter: Painter): void {
    if (!picture) return;
    const { sweep, ink, target, width } = picture;
    const { context, area, x, y } = painter;
    const labels = makeLabelSet(context);
    const mark = markPresent(painter, labels);
    const level = y(1 + target);
    const dotted = { colour: ink.ink, weight: 400 };
    labels.add(`target ${figure(1 + target)}`, dotted, [
      { at: { x: area.right, y: level }, side: 'e', gap: 8 },
    ]);
    nameCurve(painter, labels, 'bond');
    nameCurve(painter, labels, 'all');
    if (sweep.plateau !== null && sweep.plateau < ends(sweep).high) {
      namePlateau(painter, labels, sweep.plateau);
    }
    const drawn = (value: number): number => Math.max(area.top, y(Math.min(value, high)));
    const curves = sweep.points.flatMap((point) => [
      { x: x(point.overlap), y: drawn(point.bond) },
      { x: x(point.overlap), y: drawn(point.all) },
    ]);
    const bounds = { left: area.left + 4, top: 0, right: width - 2, bottom: area.bottom - 1 };
    const dots = Array.from({ length: 60 }, (_, i) => ({
      x: area.left + (i / 59) * (area.right - area.left),
      y: level,
    }));
    labels.paint(bounds, { curves, marks: [...mark, ...dots], rules: rungs }, ink.paper);
    readout(painter);
  }

  function readout({ context, area, x, y }: Painter): void {
    if (!picture || hovered === null) return;
    const at = plot.xAt(hovered);
    const here = at === null ? null : strengthAt(picture.sweep, at);
    if (at === null || !here) return;
    const { ink } = picture;
    const style = { colour: ink.soft, dash: [3, 3] };
    rule(context, { x: x(at), y: area.top }, { x: x(at), y: area.bottom }, style);
    const lines = [
      { text: lengthText(at), colour: ink.ink },
      { text: `bond ${figure(here.bond)}`, colour: ink.shear },
      { text: `${here.mode} ${figure(here.all)}`, colour: ink.ink },
    ];
    writeBeside(context, lines, { x: x(at), y: y(here.all) }, area, ink.paper);
  }

  const plot = make(canvas, { padding, under, over });
  return {
    show(next) {
      const [last, before] = [picture, units];
      picture = next;
      units = shownUnits();
      const isOnlyMoved =
        before === units &&
        last?.sweep === next.sweep &&
        last.ink === next.ink &&
        last.target === next.target &&
        last.width === next.width &&
        last.height === next.height;
      if (isOnlyMoved) {
        if (last.present !== next.present || last.strength !== next.strength) plot.repaint();
        return;
      }
      if (last?.width !== next.width || last.height !== next.height) {
        plot.resize(next.width, next.height);
      }
      padding.left = next.left;
      high = sweepHigh(next.sweep, next.target);
      const span = ends(next.sweep);
      const curve = (pick: 'bond' | 'all'): Point[] =>
        next.sweep.points.map((point) => ({ x: point.overlap, y: point[pick] }));
      plot.show({ xLow: span.low, xHigh: span.high, yLow: 0, yHigh: high }, [
        // The first stands on top: dashed ink over blue shows both where they run together.
        { points: curve('all'), colour: next.ink.ink, width: 1.75, dash: [6, 4] },
        { points: curve('bond'), colour: next.ink.shear, width: 2.25, dash: [] },
      ]);
    },
    hover(pixel) {
      if (hovered === pixel) return;
      hovered = pixel;
      plot.repaint();
    },
    destroy: () => plot.destroy(),
  };
}
