/**
 * Stress over the unrolled bond: along it under the section, around it upwards. The scale runs from the
 * paper to the colour of the stress in equal steps to the eye; where peel closes the bond it runs to grey.
 */
import { figureOf } from '../../shared/measures.ts';
import { drawFoot } from './axes.ts';
import type { BondView } from './bond-picture.ts';
import type { Ink } from './ink.ts';
import { LINE } from './label-set.ts';
import {
  between,
  contour,
  type Field,
  fieldRange,
  type Quantity,
  type Spot,
  spotText,
  worstSpot,
} from './map-data.ts';
import { measure, ring, rule, write } from './pen.ts';
import type { Box, Point } from './place-labels.ts';
import { placeReading, type ReadingRoom } from './place-reading.ts';
import { densityOf, type Painter } from './plot.ts';

export interface MapPicture {
  readonly field: Field;
  readonly quantity: Quantity;
  readonly spot: Spot;
  readonly foot: boolean;
  readonly view: BondView;
  readonly ink: Ink;
}

export interface MapChart {
  show(picture: MapPicture): void;
  hover(pixel: number | null, down?: number): void;
  destroy(): void;
}

/** Size of a painted patch before smoothing, pixels. */
const PATCH = 3;
const STEPS = 48;
/** Share of the scale for what closes. */
const CLOSING = 0.4;
const TOP = 8;
/** Beside the words of the reading. */
const PAD = 4;

/** What the reading keeps off: the largest stress always, the line of the allowable where it can. */
interface Marks {
  readonly peak: Point;
  readonly lines: readonly Point[];
}

const areaOf = ({ view, field, foot }: MapPicture): Box => ({
  left: view.left,
  right: view.left + (field.x.at(-1) ?? 0) * view.scale,
  top: TOP,
  bottom: view.height - (foot ? 26 : 6),
});

/** Colour of a share from −1 (closing most) over 0 to 1. */
export function shade(ink: Ink, quantity: Quantity, share: number): string {
  const stepped = Math.round(Math.min(1, Math.max(-1, share)) * STEPS) / STEPS;
  const [full, most] = stepped < 0 ? [ink.soft, 70] : [ink[quantity], 100];
  return `color-mix(in oklab, ${full} ${(Math.abs(stepped) * most).toFixed(1)}%, ${ink.band})`;
}

const nearestPlace = (list: readonly number[], value: number): number =>
  list.reduce(
    (best, one, k) => (Math.abs(one - value) < Math.abs((list[best] ?? 0) - value) ? k : best),
    0,
  );

/** @param onSpot told where the pointer is */
export function makeMapChart(canvas: HTMLCanvasElement, onSpot: (spot: Spot) => void): MapChart {
  const context = canvas.getContext('2d');
  const patches = document.createElement('canvas');
  const brush = patches.getContext('2d');
  if (!context || !brush) return { show: () => {}, hover: () => {}, destroy: () => {} };
  let picture: MapPicture | null = null;
  let painted: MapPicture | null = null;

  /** The field in patches, painted anew only when it has changed: the pointer moves more often. */
  function paintPatches(now: MapPicture, area: Box): void {
    const { field, quantity, ink } = now;
    const { low, high } = fieldRange(field);
    const size = Math.max(high, quantity === 'shear' ? -low : 0, 1e-9);
    const columns = Math.max(1, Math.ceil((area.right - area.left) / PATCH));
    const rows = Math.max(1, Math.ceil((area.bottom - area.top) / PATCH));
    patches.width = columns;
    patches.height = rows;
    const length = field.x.at(-1) ?? 0;
    for (let row = 0; row < rows; row += 1) {
      const theta = 180 - ((row + 0.5) / rows) * 360;
      for (let column = 0; column < columns; column += 1) {
        const value = between(field, ((column + 0.5) / columns) * length, theta);
        const share =
          quantity === 'shear'
            ? Math.abs(value) / size
            : value < 0
              ? value / Math.max(-low, 1e-9)
              : value / size;
        brush!.fillStyle = shade(ink, quantity, share);
        brush!.fillRect(column, row, 1, 1);
      }
    }
    painted = now;
  }

  /**
   * Zero has its place: what opens above it, what closes below, each to its own scale.
   * @returns where its figures end, pixels from the left
   */
  function paintScale(now: MapPicture, area: Box): number {
    const { field, quantity, ink } = now;
    const { low, high } = fieldRange(field);
    const top = Math.max(high, quantity === 'shear' ? -low : 0, 1e-9);
    const bottom = quantity === 'shear' ? 0 : low;
    const [left, width] = [area.right + 14, 11];
    const height = area.bottom - area.top;
    const zero = area.bottom - (bottom < 0 ? CLOSING * height : 0);
    const y = (value: number): number =>
      value >= 0
        ? zero - (value / top) * (zero - area.top)
        : zero + (value / bottom) * (area.bottom - zero);
    for (let at = area.top; at < area.bottom; at += 1) {
      const share =
        at < zero ? (zero - at) / (zero - area.top) : (zero - at) / (area.bottom - zero || 1);
      context!.fillStyle = shade(ink, quantity, share);
      context!.fillRect(left, at, width, 1.5);
    }
    const name = quantity === 'shear' ? 'yield' : 'strength';
    const { allowable } = field;
    const marks = [...new Set([bottom, 0, top])].map((value) => ({
      at: y(value),
      text: figureOf('stress', value),
    }));
    if (allowable !== null && allowable < top) {
      const at = y(allowable);
      rule(context!, { x: left - 3, y: at }, { x: left + width + 3, y: at }, { colour: ink.ink });
      marks.push({ at, text: `${name} ${figureOf('stress', allowable)}` });
    }
    const taken: number[] = [];
    let end = left + width;
    // The allowable is named before the ends of the scale.
    for (const { at, text } of marks.toReversed()) {
      if (taken.some((other) => Math.abs(other - at) < 13)) continue;
      taken.push(at);
      const spot = {
        x: left + width + 6,
        y: Math.min(area.bottom - 4, Math.max(area.top + 5, at)),
      };
      write(context!, text, spot, { colour: ink.soft, halo: ink.paper });
      end = Math.max(end, spot.x + measure(context!, text, 400));
    }
    return end;
  }

  /** What the ring reads, on paper of its own: the colours of the map end where the words begin. */
  function paintReading(now: MapPicture, here: Point, room: ReadingRoom, marks: Marks): void {
    const { field, ink, spot } = now;
    const text = spotText(field, spot);
    const size = { width: measure(context!, text, 600) + 2 * PAD, height: LINE + 2 };
    const placed = placeReading(size, here, room, [marks.peak], marks.lines);
    if (!placed) return;
    const { box, leader } = placed;
    if (leader) rule(context!, leader.from, leader.to, { colour: ink.ink });
    context!.fillStyle = ink.paper;
    context!.fillRect(box.left, box.top, size.width, size.height);
    const middle = { x: box.left + PAD, y: (box.top + box.bottom) / 2 };
    write(context!, text, middle, { colour: ink.ink, weight: 600 });
  }

  function paint(): void {
    if (!picture || !context) return;
    const { field, view, ink, spot, foot } = picture;
    const area = areaOf(picture);
    const length = field.x.at(-1) ?? 0;
    const x = (value: number): number => view.left + value * view.scale;
    const y = (theta: number): number =>
      area.top + ((180 - theta) / 360) * (area.bottom - area.top);
    const density = densityOf(canvas);
    context.setTransform(density, 0, 0, density, 0, 0);
    context.clearRect(0, 0, view.width, view.height);
    const same =
      painted?.field === field &&
      painted.ink === ink &&
      painted.view.height === view.height &&
      painted.view.scale === view.scale;
    if (!same) paintPatches(picture, area);
    context.imageSmoothingEnabled = true;
    context.drawImage(patches, area.left, area.top, area.right - area.left, area.bottom - area.top);
    for (const theta of [-180, -90, 0, 90, 180]) {
      const colour = theta === 0 ? ink.line : ink.rule;
      rule(context, { x: area.left - 5, y: y(theta) }, { x: area.left, y: y(theta) }, { colour });
      const label = { x: area.left - 10, y: y(theta) };
      const text = `${theta < 0 ? '−' : ''}${Math.abs(theta)}°`;
      write(context, text, label, { colour: ink.soft, align: 'right' });
    }
    const painter: Painter = { context, area, x, y };
    const about = Math.max(2, (length * view.scale) / 64);
    if (foot) drawFoot(painter, ink, { low: 0, high: length, about, measure: 'length' });
    const at = ({ x: along, theta }: { x: number; theta: number }): Point => ({
      x: x(along),
      y: y(theta),
    });
    const lines: Point[] = [];
    for (const { from, to } of field.allowable === null ? [] : contour(field, field.allowable)) {
      rule(context, at(from), at(to), { colour: ink.ink, width: 1.6 });
      lines.push(at(from));
    }
    const scaleEnd = paintScale(picture, area);
    const onMap = ({ i, j }: Spot): Point => at({ x: field.x[i] ?? 0, theta: field.theta[j] ?? 0 });
    const here = onMap(spot);
    const thin = { colour: ink.ink, dash: [2, 3] };
    rule(context, { x: here.x, y: area.top }, { x: here.x, y: area.bottom }, thin);
    rule(context, { x: area.left, y: here.y }, { x: area.right, y: here.y }, thin);
    ring(context, here, ink.ink, ink.paper);
    const beside = { ...area, left: scaleEnd + PAD, right: view.width - 2 };
    const peak = onMap(worstSpot(field, picture.quantity));
    paintReading(picture, here, { area, beside }, { peak, lines });
  }

  return {
    show(next) {
      const { width, height } = next.view;
      const density = densityOf(canvas);
      const [wide, high] = [Math.round(width * density), Math.round(height * density)];
      if (canvas.width !== wide || canvas.height !== high) {
        canvas.width = wide;
        canvas.height = high;
        canvas.style.width = `${width}px`;
        canvas.style.height = `${height}px`;
      }
      picture = next;
      paint();
    },
    hover(pixel, down) {
      if (!picture || pixel === null || down === undefined) return;
      const area = areaOf(picture);
      if (pixel < area.left || pixel > area.right || down < area.top || down > area.bottom) return;
      const { field, view } = picture;
      const theta = 180 - ((down - area.top) / (area.bottom - area.top)) * 360;
      onSpot({
        i: nearestPlace(field.x, (pixel - view.left) / view.scale),
        j: nearestPlace(field.theta, theta),
      });
    },
    destroy() {
      picture = null;
    },
  };
}
