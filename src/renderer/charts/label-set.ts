/** The labels of one painting: gathered in order of importance, placed together, then written. */
import { measure, write } from './pen.ts';
import { type Box, type LabelWish, type Point, placeLabels } from './place-labels.ts';

export const LINE = 18;

export interface LabelSet {
  /** A line break in the text makes two lines of it. */
  add(text: string, style: LabelStyle, spots: LabelWish['spots']): void;
  /** Writes all of them inside the bounds, off what is drawn; tells where they stand. */
  paint(bounds: Box, drawn: Drawn, paper: string): Box[];
}

/** What is drawn already: points a few pixels apart. */
export interface Drawn {
  /** Figures: no label hides them. */
  readonly curves: readonly Point[];
  /** Marks and levels: kept clear of where it can be, else they pass behind the label. */
  readonly marks?: readonly Point[];
  /** Heights of hairlines across. */
  readonly rules?: readonly number[];
}

export interface LabelStyle {
  readonly colour: string;
  readonly weight: number;
  /** What the label stands on, when that is not bare paper; where it may be either, by its place. */
  readonly ground?: string | ((box: Box) => string);
}

/** Past the letters at both ends, and less than a line above and below them. */
const BESIDE = 3;
const WITHIN = 1.5;

const isInside = (box: Box, { x, y }: Point): boolean =>
  x > box.left - BESIDE && x < box.right + BESIDE && y > box.top && y < box.bottom;

export function makeLabelSet(context: CanvasRenderingContext2D): LabelSet {
  const labels: { lines: string[]; style: LabelStyle; wish: LabelWish }[] = [];
  return {
    add(text, style, spots) {
      const lines = text.split('\n');
      const width = Math.max(...lines.map((line) => measure(context, line, style.weight)));
      labels.push({ lines, style, wish: { width, height: lines.length * LINE, spots } });
    },
    paint(bounds, { curves, marks = [], rules = [] }, paper) {
      const boxes = placeLabels(
        labels.map(({ wish }) => wish),
        bounds,
        [...curves, ...marks],
        [],
        rules,
      );
      labels.forEach(({ lines, style: { ground = paper, colour, weight } }, i) => {
        const box = boxes[i];
        if (!box) return;
        const halo = typeof ground === 'string' ? ground : ground(box);
        const hides = curves.some((point) => isInside(box, point));
        lines.forEach((line, row) => {
          const [left, top] = [box.left, box.top + row * LINE];
          if (!hides) {
            const width = measure(context, line, weight) + 2 * BESIDE;
            context.fillStyle = halo;
            context.fillRect(left - BESIDE, top + WITHIN, width, LINE - 2 * WITHIN);
          }
          write(context, line, { x: left, y: top + LINE / 2 }, { halo, colour, weight });
        });
      });
      return boxes;
    },
  };
}

/** A readout: a few lines under each other, the first plain, the figures bold. */
export function writeLines(
  context: CanvasRenderingContext2D,
  lines: readonly { text: string; colour: string }[],
  corner: Point,
  halo: string,
): void {
  lines.forEach(({ text, colour }, i) => {
    const at = { x: corner.x, y: corner.y + (i + 0.5) * LINE };
    write(context, text, at, { colour, weight: i === 0 ? 400 : 600, halo });
  });
}

/** Pixels between a place and its readout. */
const ASIDE = 10;

/** The readout of a place at its side: right of it, or left where the frame ends; between top and foot. */
export function writeBeside(
  context: CanvasRenderingContext2D,
  lines: readonly { text: string; colour: string }[],
  place: Point,
  area: Box,
  halo: string,
): void {
  const { width, height } = linesBox(context, lines);
  const right = place.x + ASIDE;
  const corner = {
    x: right + width < area.right ? right : place.x - ASIDE - width,
    y: Math.min(area.bottom - height - 4, Math.max(area.top, place.y + LINE / 2)),
  };
  writeLines(context, lines, corner, halo);
}

export const linesBox = (
  context: CanvasRenderingContext2D,
  lines: readonly { text: string }[],
): { width: number; height: number } => ({
  width: Math.max(...lines.map(({ text }) => measure(context, text, 600))),
  height: lines.length * LINE,
});
