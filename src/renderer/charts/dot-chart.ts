/** Single results on two axes, with lines across them; those that do not count are drawn as crosses. */
import type { Ink } from './ink.ts';
import { makeLabelSet, writeBeside } from './label-set.ts';
import { arrow, ring, rule, write } from './pen.ts';
import type { Point, Side } from './place-labels.ts';
import { makePlot, type Painter } from './plot.ts';

export interface AxisTick {
  readonly at: number;
  readonly text: string;
}

export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly AxisTick[];
  /** Written at the end of the axis. */
  readonly unit: string;
}

export interface Dot extends Point {
  readonly apart: boolean;
  /** Full: it is here. Arrow: it is only known to lie further along. Open where left out. */
  readonly mark?: 'full' | 'arrow';
  /** Beside it, such as how many stand in the one place. */
  readonly label?: string;
  /** Lines of the readout. */
  readonly text: readonly string[];
}

export interface DotLine {
  readonly from: Point;
  readonly to: Point;
  readonly look: 'fitted' | 'level' | 'bound';
  /** At the end of it, on the first of these sides that is free; left out, as a level line has it. */
  readonly text?: string;
  readonly beside?: readonly Side[];
}

export interface DotPlot {
  readonly x: Axis;
  readonly y: Axis;
  readonly dots: readonly Dot[];
  readonly lines: readonly DotLine[];
  /** A band from side to side, such as an interval. */
  readonly band: { readonly low: number; readonly high: number } | null;
}

export interface DotPicture extends DotPlot {
  readonly ink: Ink;
  readonly width: number;
  readonly height: number;
}

export interface DotChart {
  show(picture: DotPicture): void;
  hover(pixel: number | null, down?: number): void;
  destroy(): void;
}

const PADDING = { left: 52, right: 14, top: 12, bottom: 26 };
/** Pixels from a dot to the tip of its arrow. */
const ARROW = 17;
/** Pixels within which the pointer means a dot. */
const NEAR = 24;

function cross(context: CanvasRenderingContext2D, { x, y }: Point, colour: string): void {
  const arm = 4;
  for (const turn of [1, -1]) {
    const [from, to] = [
      { x: x - arm, y: y - turn * arm },
      { x: x + arm, y: y + turn * arm },
    ];
    rule(context, from, to, { colour, width: 1.75 });
  }
}

const looks = {
  fitted: (ink: Ink) => ({ colour: ink.shear, width: 1.75 }),
  level: (ink: Ink) => ({ colour: ink.ink, dash: [2, 4], width: 1.5 }),
  bound: (ink: Ink) => ({ colour: ink.soft, width: 1.5 }),
} as const;

export function makeDotChart(canvas: HTMLCanvasElement): DotChart {
  let picture: DotPicture | null = null;
  let hovered: Point | null = null;

  function under({ context, area, x, y }: Painter): void {
    if (!picture) return;
    const { ink, band } = picture;
    if (band) {
      context.fillStyle = ink.zone;
      const [top, bottom] = [y(band.high), y(band.low)];
      context.fillRect(area.left, top, area.right - area.left, Math.max(1, bottom - top));
    }
    for (const { at, text } of picture.y.ticks) {
      const height = y(at);
      rule(
        context,
        { x: area.left, y: height },
        { x: area.right, y: height },
        { colour: ink.rule },
      );
      const place = { x: area.left - 8, y: height };
      write(context, text, place, { colour: ink.soft, align: 'right' });
    }
    const base = area.bottom;
    rule(context, { x: area.left, y: base }, { x: area.right, y: base }, { colour: ink.line });
    for (const { at, text } of picture.x.ticks) {
      rule(context, { x: x(at), y: base }, { x: x(at), y: base + 4 }, { colour: ink.line });
      write(context, text, { x: x(at), y: base + 14 }, { colour: ink.soft, align: 'center' });
    }
    const unit = { x: area.left - 8, y: base + 14 };
    write(context, picture.x.unit, unit, { colour: ink.soft, align: 'right' });
    for (const { from, to, look } of picture.lines) {
      const ends = [from, to].map((end) => ({ x: x(end.x), y: y(end.y) }));
      rule(context, ends[0]!, ends[1]!, looks[look](ink));
    }
  }

  function over(painter: Painter): void {
    if (!picture) return;
    const { ink, dots, lines, width } = picture;
    const { context, area, x, y } = painter;
    const places = dots.map((dot) => ({ x: x(dot.x), y: y(dot.y) }));
    // Crosses last: what is kept apart is not to be hidden by what counts.
    dots.forEach(({ apart, mark }, i) => {
      if (apart) return;
      const at = places[i]!;
      if (mark === 'arrow') {
        arrow(context, { x: at.x + ARROW, y: at.y }, 'right', ink.shear, ink.paper);
      }
      ring(context, at, ink.shear, mark === 'full' ? ink.shear : ink.paper);
    });
    dots.forEach(({ apart }, i) => {
      if (apart) cross(context, places[i]!, ink.fails);
    });
    const labels = makeLabelSet(context);
    dots.forEach(({ label, mark }, i) => {
      if (label === undefined) return;
      const at = places[i]!;
      const tip = mark === 'arrow' ? { x: at.x + ARROW, y: at.y } : at;
      labels.add(label, { colour: ink.ink, weight: 400 }, [
        { at: tip, side: 'e', gap: 5 },
        { at, side: 'n', gap: 7 },
        { at, side: 's', gap: 7 },
      ]);
    });
    for (const { to, text, look, beside } of lines) {
      if (text === undefined) continue;
      const at = { x: Math.min(area.right, x(to.x)), y: y(to.y) };
      const left = { x: area.left + 4, y: at.y };
      labels.add(
        text,
        { colour: look === 'bound' ? ink.soft : ink.ink, weight: 400 },
        beside?.map((side) => ({ at, side, gap: 5 })) ?? [
          { at, side: 'nw', gap: 3 },
          { at, side: 'sw', gap: 3 },
          { at: left, side: 'ne', gap: 3 },
          { at: left, side: 'se', gap: 3 },
        ],
      );
    }
    const bounds = { left: area.left + 2, top: 0, right: width - 2, bottom: area.bottom - 1 };
    labels.paint(bounds, { curves: places }, ink.paper);
    const here = nearest(places);
    if (here < 0) return;
    const { text, apart } = dots[here]!;
    const place = places[here]!;
    const colour = apart ? ink.fails : dots[here]!.mark === 'full' ? ink.ink : ink.shear;
    ring(context, place, colour, colour);
    const said = text.map((line, i) => ({ text: line, colour: i === 0 ? ink.soft : ink.ink }));
    writeBeside(context, said, place, area, ink.paper);
  }

  function nearest(places: readonly Point[]): number {
    const pointer = hovered;
    if (!pointer) return -1;
    const away = places.map(({ x, y }) => Math.hypot(x - pointer.x, y - pointer.y));
    const least = Math.min(...away);
    return least <= NEAR ? away.indexOf(least) : -1;
  }

  const plot = makePlot(canvas, { padding: { ...PADDING }, under, over });
  return {
    show(next) {
      if (picture?.width !== next.width || picture.height !== next.height) {
        plot.resize(next.width, next.height);
      }
      picture = next;
      const axes = { xLow: next.x.low, xHigh: next.x.high, yLow: next.y.low, yHigh: next.y.high };
      plot.show(axes, []);
    },
    hover(pixel, down = 0) {
      hovered = pixel === null ? null : { x: pixel, y: down };
      plot.repaint();
    },
    destroy: () => plot.destroy(),
  };
}
