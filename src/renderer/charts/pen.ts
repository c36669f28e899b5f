/** The few strokes that every chart is painted with. */
import { FONT } from './ink.ts';
import type { Point } from './place-labels.ts';

const SIZE = 13;
const font = (weight: number): string => `${weight} ${SIZE}px ${FONT}`;

export interface TextStyle {
  readonly colour: string;
  /** Colour of the paper behind: letters stay clear of a hairline that crosses them. */
  readonly halo?: string;
  readonly align?: 'left' | 'right' | 'center';
  readonly weight?: number;
}

export function write(
  context: CanvasRenderingContext2D,
  text: string,
  at: Point,
  style: TextStyle,
): void {
  context.font = font(style.weight ?? 400);
  context.textAlign = style.align ?? 'left';
  context.textBaseline = 'middle';
  if (style.halo) {
    context.lineJoin = 'round';
    context.lineWidth = 4;
    context.strokeStyle = style.halo;
    context.strokeText(text, at.x, at.y);
  }
  context.fillStyle = style.colour;
  context.fillText(text, at.x, at.y);
}

export function measure(context: CanvasRenderingContext2D, text: string, weight: number): number {
  context.font = font(weight);
  return context.measureText(text).width;
}

export interface LineStyle {
  readonly colour: string;
  readonly dash?: readonly number[];
  readonly width?: number;
}

/** A straight line; one pixel wide it falls on the pixels. */
export function rule(
  context: CanvasRenderingContext2D,
  from: Point,
  to: Point,
  { colour, dash = [], width = 1 }: LineStyle,
): void {
  const crisp = (v: number): number => (width === 1 ? Math.round(v) + 0.5 : v);
  context.beginPath();
  context.setLineDash([...dash]);
  context.lineWidth = width;
  context.strokeStyle = colour;
  context.moveTo(crisp(from.x), crisp(from.y));
  context.lineTo(crisp(to.x), crisp(to.y));
  context.stroke();
  context.setLineDash([]);
}

/** A small circle on a curve: open marks what stays, full marks what the pointer reads. */
export function ring(
  context: CanvasRenderingContext2D,
  at: Point,
  colour: string,
  fill: string,
): void {
  context.beginPath();
  context.arc(at.x, at.y, 4, 0, 2 * Math.PI);
  context.fillStyle = fill;
  context.fill();
  context.lineWidth = 2;
  context.strokeStyle = colour;
  context.stroke();
}

/**
 * A small arrow, up off the edge of a plot or to the right of a dot: what it tells of lies beyond. Stroked,
 * not filled: a full triangle is the mark of a margin that fails.
 */
export function arrow(
  context: CanvasRenderingContext2D,
  tip: Point,
  points: 'up' | 'right',
  colour: string,
  halo: string,
): void {
  const [half, length] = [4, 11];
  /** Back from the tip, and off to its side. */
  const from = (back: number, side: number): readonly [number, number] =>
    points === 'up' ? [tip.x + side, tip.y + back] : [tip.x - back, tip.y + side];
  context.beginPath();
  context.setLineDash([]);
  context.moveTo(...from(length, 0));
  context.lineTo(tip.x, tip.y);
  context.moveTo(...from(half + 0.5, -half));
  context.lineTo(tip.x, tip.y);
  context.lineTo(...from(half + 0.5, half));
  context.lineJoin = 'round';
  for (const [style, width] of [
    [halo, 4.5],
    [colour, 1.75],
  ] as const) {
    context.strokeStyle = style;
    context.lineWidth = width;
    context.stroke();
  }
}
