/**
 * Where the reading of the map stands: beside the place that it reads, never on it, and joined to it by
 * a hairline. It goes inwards from an edge, so a corner of the bond stays open to the eye.
 */
import type { Box, Point } from './place-labels.ts';

export interface PlacedReading {
  readonly box: Box;
  /** From the ring to the box; none where the reading stands beside the scale. */
  readonly leader: { readonly from: Point; readonly to: Point } | null;
}

export interface ReadingRoom {
  /** The map. */
  readonly area: Box;
  /** What is free beside the map and its scale, for a map too narrow for the words. */
  readonly beside: Box;
}

/** From the middle of the ring to the nearest corner of the box, pixels. */
const OFF = { x: 16, y: 11 };
/** Farther off, where another place that must be seen is near. */
const REACHES = [1, 2, 3, 4, 5];
/** No place that must be seen comes nearer than this to the box. */
export const CLEAR = 10;
/** The hairline begins outside the ring. */
const RING = 6;

const clamp = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);

const nearestIn = ({ left, right, top, bottom }: Box, { x, y }: Point): Point => ({
  x: clamp(x, left, right),
  y: clamp(y, top, bottom),
});

export const distanceTo = (box: Box, point: Point): number => {
  const near = nearestIn(box, point);
  return Math.hypot(near.x - point.x, near.y - point.y);
};

const isInside = (box: Box, area: Box): boolean =>
  box.left >= area.left &&
  box.right <= area.right &&
  box.top >= area.top &&
  box.bottom <= area.bottom;

const boxFrom = (left: number, top: number, { width, height }: ReadingSize): Box => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});

export interface ReadingSize {
  readonly width: number;
  readonly height: number;
}

/** Off the lines that cross at the place first; inwards before outwards. */
function boxesAround(size: ReadingSize, at: Point, area: Box, reach: number): Box[] {
  // Wide words soon leave the map sideways: past the third reach only rows go on.
  const sideways = reach > 3 ? 1 : reach;
  const before = at.x - sideways * OFF.x - size.width;
  const after = at.x + sideways * OFF.x;
  const above = at.y - reach * OFF.y - size.height;
  const below = at.y + reach * OFF.y;
  const columns = at.x > (area.left + area.right) / 2 ? [before, after] : [after, before];
  const rows = at.y < (area.top + area.bottom) / 2 ? [below, above] : [above, below];
  const level = clamp(at.y - size.height / 2, area.top, area.bottom - size.height);
  const middle = clamp(at.x - size.width / 2, area.left, area.right - size.width);
  return [
    ...columns.flatMap((left) => rows.map((top) => boxFrom(left, top, size))),
    ...columns.map((left) => boxFrom(left, level, size)),
    ...rows.map((top) => boxFrom(middle, top, size)),
  ];
}

/**
 * @param at the place that is read
 * @param open other places that must stay in sight: that of the largest stress
 * @param lines points of what is better not covered, the line of the allowable
 * @returns null where there is no room for the words at all
 */
export function placeReading(
  size: ReadingSize,
  at: Point,
  { area, beside }: ReadingRoom,
  open: readonly Point[] = [],
  lines: readonly Point[] = [],
): PlacedReading | null {
  let best: { readonly box: Box; readonly covered: number } | null = null;
  for (const box of REACHES.flatMap((reach) => boxesAround(size, at, area, reach))) {
    if (!isInside(box, area)) continue;
    if ([at, ...open].some((point) => distanceTo(box, point) < CLEAR)) continue;
    const covered = lines.filter((point) => distanceTo(box, point) < 1).length;
    if (!best || covered < best.covered) best = { box, covered };
  }
  if (best) {
    const to = nearestIn(best.box, at);
    const share = RING / Math.hypot(to.x - at.x, to.y - at.y);
    const from = { x: at.x + share * (to.x - at.x), y: at.y + share * (to.y - at.y) };
    return { box: best.box, leader: { from, to } };
  }
  const level = clamp(at.y - size.height / 2, beside.top, beside.bottom - size.height);
  const box = boxFrom(beside.left, level, size);
  return isInside(box, beside) ? { box, leader: null } : null;
}
