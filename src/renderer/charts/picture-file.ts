/**
 * A chart as a picture file: drawn anew on paper, 960 wide at twice the pixels, whatever the window and the
 * theme are, under a title and over what its lines are and where it is from. A drawing of the page (SVG)
 * goes in as it stands there.
 */
import { cautionShort } from '../../shared/cautions.ts';
import type { Painted } from './Canvas.tsx';
import { FONT, type Ink } from './ink.ts';
import { rule, write } from './pen.ts';

export const WIDTH = 960;
export const DENSITY = 2;
const EDGE = 24;
const HEIGHT = 360;
const LINE = 20;

export interface Box {
  readonly width: number;
  readonly height: number;
}

/** One line of the legend, as it is drawn. */
export interface LegendLine {
  readonly name: string;
  readonly colour: keyof Ink;
  readonly dash: readonly number[];
  readonly width: number;
}

export interface Drawing {
  /** Height in the picture; width is that of every picture unless it is drawn as it stands. */
  readonly height?: number;
  readonly width?: number;
  /** Axes and their units in words. */
  readonly axes: string;
  readonly legend?: readonly LegendLine[];
  paint(context: CanvasRenderingContext2D, box: Box, ink: Ink): void;
}

/** What stands on the picture besides the drawing. */
export interface PictureWords {
  readonly title: string;
  /** Project, joint, case. */
  readonly from: readonly string[];
  /** Day of the picture, 2026-01-31. */
  readonly day: string;
}

/** A chart of the page painted by its own painter on a canvas that no page shows. */
export const chartDrawing = <Picture>(
  make: (canvas: HTMLCanvasElement) => Painted<Picture>,
  picture: (ink: Ink, box: Box) => Picture | null,
  words: Omit<Drawing, 'paint'>,
): Drawing => ({
  ...words,
  paint(context, box, ink) {
    const canvas = document.createElement('canvas');
    canvas.dataset.density = `${DENSITY}`;
    const shown = picture(ink, box);
    if (!shown) return;
    const painted = make(canvas);
    painted.show(shown);
    context.drawImage(canvas, 0, 0, box.width, box.height);
    painted.destroy();
  },
});

/** Words that fit beside one another, line by line. */
function wrapped(context: CanvasRenderingContext2D, text: string, width: number): string[] {
  context.font = `400 13px ${FONT}`;
  const lines = [''];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`.trim();
    if (context.measureText(longer).width <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function paintLegend(
  context: CanvasRenderingContext2D,
  legend: readonly LegendLine[],
  top: number,
  ink: Ink,
): number {
  let [x, y] = [EDGE, top];
  for (const { name, colour, dash, width } of legend) {
    context.font = `400 13px ${FONT}`;
    const room = 44 + context.measureText(name).width + 24;
    if (x > EDGE && x + room > WIDTH - EDGE) {
      x = EDGE;
      y += LINE;
    }
    rule(context, { x, y }, { x: x + 34, y }, { colour: ink[colour], dash, width });
    write(context, name, { x: x + 42, y }, { colour: ink.ink });
    x += room;
  }
  return y + LINE;
}

/** @returns null where there is no canvas to draw on */
export function drawPicture(
  drawing: Drawing,
  words: PictureWords,
  ink: Ink,
): HTMLCanvasElement | null {
  const sheet = document.createElement('canvas');
  const context = sheet.getContext('2d');
  if (!context) return null;
  const inner = WIDTH - 2 * EDGE;
  const box: Box = { width: drawing.width ?? inner, height: drawing.height ?? HEIGHT };
  const scale = Math.min(1, inner / box.width);
  const from = wrapped(context, words.from.filter((part) => part !== '').join(' · '), inner);
  const foot = wrapped(context, `Lapwright, ${words.day}. ${cautionShort}`, inner);
  const axes = wrapped(context, drawing.axes, inner);
  const legend = drawing.legend ?? [];
  // More lines than are needed: what is left over is cut off below.
  sheet.width = WIDTH * DENSITY;
  sheet.height = DENSITY * (box.height * scale + LINE * (12 + legend.length) + 2 * EDGE);
  context.scale(DENSITY, DENSITY);
  context.fillStyle = ink.paper;
  context.fillRect(0, 0, WIDTH, sheet.height);
  let y = EDGE + 6;
  context.textAlign = 'left';
  context.textBaseline = 'middle';
  context.font = `650 18px ${FONT}`;
  context.fillStyle = ink.ink;
  context.fillText(words.title, EDGE, y);
  y += LINE + 4;
  for (const text of [...from, ...axes]) {
    write(context, text, { x: EDGE, y }, { colour: ink.soft });
    y += LINE;
  }
  context.save();
  context.translate(EDGE, y);
  context.scale(scale, scale);
  drawing.paint(context, box, ink);
  context.restore();
  y += box.height * scale + LINE;
  if (legend.length > 0) y = paintLegend(context, legend, y, ink);
  for (const text of foot) {
    write(context, text, { x: EDGE, y }, { colour: ink.soft });
    y += LINE;
  }
  return cutTo(sheet, Math.round(DENSITY * (y - LINE / 2 + EDGE)));
}

function cutTo(sheet: HTMLCanvasElement, height: number): HTMLCanvasElement {
  const cut = document.createElement('canvas');
  cut.width = sheet.width;
  cut.height = Math.min(height, sheet.height);
  cut.getContext('2d')?.drawImage(sheet, 0, 0);
  return cut;
}

export const pngOf = (canvas: HTMLCanvasElement): Promise<Blob | null> =>
  new Promise((done) => canvas.toBlob(done, 'image/png'));
