/** Lowest margin against the size that was sought, with the target, the answer and the present size. */
import type { SizingReport } from '../../shared/reports.ts';
import { sizeText } from '../../shared/sizing-words.ts';
import { signed } from '../../shared/words.ts';
import { drawFoot, drawRungs } from './axes.ts';
import type { Painted } from './Canvas.tsx';
import type { Ink } from './ink.ts';
import { type LabelSet, LINE, makeLabelSet, writeBeside } from './label-set.ts';
import { ring, rule } from './pen.ts';
import type { Point } from './place-labels.ts';
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
  const padding = { left: 64, ...PADDING };

  const ends = ({ points, present }: SizingReport): { low: number; high: number } => ({
    low: Math.min(points[0]?.value ?? 0, present.value),
    high: Math.max(points.at(-1)?.value ?? 1, present.value),
  });

  function under(painter: Painter): void {
    if (!picture) return;
    const { report, ink } = picture;
    const { context, area, x, y } = painter;
    const { low, high } = ends(report);
    if (report.found) {
      // Where the target is reached, as far as it was looked at.
      const from = Math.max(area.left, x(report.found.low));
      const to = Math.min(area.right, x(report.found.high ?? report.found.lostAt ?? high));
      context.fillStyle = ink.band;
      context.fillRect(from, area.top, Math.max(to - from, 2), area.bottom - area.top);
    }
    const span = marginSpan(report);
    const about = (area.bottom - area.top) / 44;
    drawRungs(painter, ink, { ...span, xFrom: low, xTo: high, about, strong: 0 });
    const room = (area.right - area.left) / 70;
    const measure = report.vary === 'gap' ? 'small' : 'length';
    drawFoot(painter, ink, { low, high, about: room, measure });
    const level = y(report.target);
    const style = { colour: ink.ink, dash: [2, 4], width: 1.5 };
    rule(context, { x: area.left, y: level }, { x: area.right, y: level }, style);
  }

  function mark(
    { context, area, x, y }: Painter,
    labels: LabelSet,
    at: { value: number; margin: number; text: string; dash: readonly number[]; weight: number },
  ): Point[] {
    if (!picture) return [];
    const { report, ink } = picture;
    const place = Math.min(area.right, Math.max(area.left, x(at.value)));
    const style = { colour: ink.ink, dash: at.dash, width: 1.5 };
    rule(context, { x: place, y: area.top }, { x: place, y: area.bottom }, style);
    const { low, high } = marginSpan(report);
    if (at.margin >= low && at.margin <= high) {
      ring(context, { x: place, y: y(at.margin) }, ink.ink, ink.paper);
    }
    const spots = [area.top + 10, area.bottom - 12, area.top + 10 + LINE].flatMap((height) =>
      (['e', 'w'] as const).map((side) => ({ at: { x: place, y: height }, side, gap: 8 })),
    );
    labels.add(at.text, { colour: ink.ink, weight: at.weight }, spots);
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
    labels.paint(bounds, [...curve, ...marks], ink.paper);
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
