/** Lowest margin against the size that was sought, with the target, the answer and the present size. */
import type { SizingReport } from '../../shared/reports.ts';
import { sizeText } from '../../shared/sizing-words.ts';
import { signed } from '../../shared/words.ts';
import { drawFoot, drawRungs } from './axes.ts';
import type { Painted } from './Canvas.tsx';
import type { Ink } from './ink.ts';
import { type LabelSet, LINE, makeLabelSet, writeBeside } from './label-set.ts';
import { ring, rule } from './pen.ts';
import type { Box, Point } from './place-labels.ts';
import { makePlot, type Painter } from './plot.ts';
import { marginSpan } from './sizing-data.ts';

export interface SizingPicture {
  readonly report: SizingReport;
  readonly ink: Ink;
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

const PADDING = { top: 10, bottom: 26, right: 86 };

export function makeSizingChart(canvas: HTMLCanvasElement): Painted<SizingPicture> {
  let picture: SizingPicture | null = null;
  let hovered: number | null = null;
  let rungs: readonly number[] = [];
  const padding = { left: 64, ...PADDING };

  const ends = ({ points, present }: SizingReport): { low: number; high: number } => ({
    low: Math.min(points[0]?.value ?? 0, present.value),
    high: Math.max(points.at(-1)?.value ?? 1, present.value),
  });

  function under(painter: Painter): void {
    if (!picture) return;
    const { report, ink } = picture;
    const { context, area, y } = painter;
    const { low, high } = ends(report);
    const band = bandOf(painter);
    if (band) {
      context.fillStyle = ink.band;
      context.fillRect(band.from, area.top, band.to - band.from, area.bottom - area.top);
    }
    const span = marginSpan(report);
    const about = (area.bottom - area.top) / 44;
    rungs = drawRungs(painter, ink, { ...span, xFrom: low, xTo: high, about, strong: 0 });
    const room = (area.right - area.left) / 70;
    const measure = report.vary === 'gap' ? 'small' : 'length';
    drawFoot(painter, ink, { low, high, about: room, measure });
    const level = y(report.target);
    const style = { colour: ink.ink, dash: [2, 4], width: 1.5 };
    rule(context, { x: area.left, y: level }, { x: area.right, y: level }, style);
  }

  /** Where the target is reached. */
  function bandOf({ area, x }: Painter): { from: number; to: number } | null {
    const { found } = picture!.report;
    if (!found) return null;
    const from = Math.max(area.left, x(found.low));
    const end = found.high ?? found.lostAt ?? ends(picture!.report).high;
    return { from, to: Math.max(from + 2, Math.min(area.right, x(end))) };
  }

  function mark(
    painter: Painter,
    labels: LabelSet,
    at: { value: number; margin: number; text: string; dash: readonly number[]; weight: number },
  ): Point[] {
    if (!picture) return [];
    const { report, ink } = picture;
    const { context, area, x, y } = painter;
    const place = Math.min(area.right, Math.max(area.left, x(at.value)));
    const style = { colour: ink.ink, dash: at.dash, width: 1.5 };
    rule(context, { x: place, y: area.top }, { x: place, y: area.bottom }, style);
    const { low, high } = marginSpan(report);
    if (at.margin >= low && at.margin <= high) {
      ring(context, { x: place, y: y(at.margin) }, ink.ink, ink.paper);
    }
    const between = rungs.slice(1).map((rung, i) => (rung + (rungs[i] ?? rung)) / 2);
    const heights = [area.top + 10, area.bottom - 12, ...between.toReversed()];
    const spots = heights.flatMap((height) =>
      (['e', 'w'] as const).map((side) => ({ at: { x: place, y: height }, side, gap: 8 })),
    );
    const band = bandOf(painter);
    const ground = (box: Box): string =>
      band && box.left > band.from && box.right < band.to ? ink.band : ink.paper;
    labels.add(at.text, { colour: ink.ink, weight: at.weight, ground }, spots);
    const tall = area.bottom - area.top;
    return Array.from({ length: 25 }, (_, i) => ({ x: place, y: area.top + (i / 24) * tall }));
  }

  function over(painter: Painter): void {
    if (!picture) return;
    const { report, ink, width } = picture;
    const { context, area, x, y } = painter;
    const { found, present, vary, target } = report;
    const labels = makeLabelSet(context);
    const now = present.margin.margin;
    const marks = [
      ...(found
        ? mark(painter, labels, {
            value: found.value,
            margin: found.margin.margin,
            text: `${sizeText(vary, found.value)}, ${signed(found.margin.margin)}`,
            dash: [],
            weight: 650,
          })
        : []),
      ...(found?.value === present.value
        ? []
        : mark(painter, labels, {
            value: present.value,
            margin: now,
            text: `now ${sizeText(vary, present.value)}, ${signed(now)}`,
            dash: [3, 3],
            weight: 400,
          })),
    ];
    const level = y(target);
    labels.add(`target ${signed(target)}`, { colour: ink.ink, weight: 400 }, [
      { at: { x: area.right, y: level }, side: 'e', gap: 8 },
      { at: { x: area.right, y: level - LINE / 2 }, side: 'e', gap: 8 },
    ]);
    const span = marginSpan(report);
    const drawn = (margin: number): number => y(Math.min(Math.max(margin, span.low), span.high));
    const curve = report.points.map(({ value, margin }) => ({ x: x(value), y: drawn(margin) }));
    const bounds = { left: area.left + 4, top: 0, right: width - 2, bottom: area.bottom - 1 };
    const dots = Array.from({ length: 60 }, (_, i) => ({
      x: area.left + (i / 59) * (area.right - area.left),
      y: level,
    }));
    labels.paint(bounds, { curves: curve, marks: [...marks, ...dots], rules: rungs }, ink.paper);
    readout(painter);
  }

  /** The analysed point nearest to the pointer: between them nothing was computed. */
  function readout({ context, area, x, y }: Painter): void {
    const at = picture && hovered !== null ? plot.xAt(hovered) : null;
    if (!picture || at === null) return;
    const { report, ink } = picture;
    const near = report.points.reduce<SizingReport['points'][number] | null>(
      (best, point) =>
        !best || Math.abs(point.value - at) < Math.abs(best.value - at) ? point : best,
      null,
    );
    if (!near) return;
    const span = marginSpan(report);
    const place = { x: x(near.value), y: y(Math.min(Math.max(near.margin, span.low), span.high)) };
    ring(context, place, ink.ink, ink.ink);
    const lines = [
      { text: sizeText(report.vary, near.value), colour: ink.ink },
      { text: `${signed(near.margin)} ${near.label}`, colour: ink.ink },
    ];
    writeBeside(context, lines, place, area, ink.paper);
  }

  const plot = makePlot(canvas, { padding, under, over });
  return {
    show(next) {
      const last = picture;
      picture = next;
      if (last?.width !== next.width || last.height !== next.height) {
        plot.resize(next.width, next.height);
      }
      padding.left = next.left;
      const x = ends(next.report);
      const y = marginSpan(next.report);
      // Cut at the frame rather than drawn over the axes.
      const points = next.report.points.map(({ value, margin }) => ({ x: value, y: margin }));
      plot.show({ xLow: x.low, xHigh: x.high, yLow: y.low, yHigh: y.high }, [
        { points, colour: next.ink.shear, width: 2.25, dash: [] },
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
