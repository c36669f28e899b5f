/**
 * Puts labels where they hide nothing: each has several places it could take, and takes the first
 * that is inside the drawing, off the curves and off the labels that are already there; when none is
 * clean, the least bad one, but never outside.
 */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where the label's box stands to its anchor: `e` means to the right of it, `n` above it. */
export type Side = 'n' | 'ne' | 'e' | 'se' | 's' | 'sw' | 'w' | 'nw';

export interface LabelWish {
  readonly width: number;
  readonly height: number;
  readonly spots: readonly { readonly at: Point; readonly side: Side; readonly gap: number }[];
}

const across: Record<Side, number> = {
  n: -0.5,
  s: -0.5,
  e: 0,
  ne: 0,
  se: 0,
  w: -1,
  nw: -1,
  sw: -1,
};
const down: Record<Side, number> = { n: -1, ne: -1, nw: -1, s: 0, se: 0, sw: 0, e: -0.5, w: -0.5 };

function boxAt(wish: LabelWish, spot: LabelWish['spots'][number]): Box {
  const gapX = spot.side === 'n' || spot.side === 's' ? 0 : spot.gap;
  const gapY = spot.side === 'e' || spot.side === 'w' ? 0 : spot.gap;
  const left =
    spot.at.x +
    across[spot.side] * wish.width +
    (across[spot.side] === 0 ? gapX : 0) -
    (across[spot.side] === -1 ? gapX : 0);
  const top =
    spot.at.y +
    down[spot.side] * wish.height +
    (down[spot.side] === 0 ? gapY : 0) -
    (down[spot.side] === -1 ? gapY : 0);
  return { left, top, right: left + wish.width, bottom: top + wish.height };
}

function inside(box: Box, area: Box): Box {
  const dx = Math.max(area.left - box.left, Math.min(0, area.right - box.right));
  const dy = Math.max(area.top - box.top, Math.min(0, area.bottom - box.bottom));
  return { left: box.left + dx, right: box.right + dx, top: box.top + dy, bottom: box.bottom + dy };
}

/** Two labels on one line need a space between them. */
const APART = 8;

const overlapOf = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left) + APART) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

const holds = (box: Box, p: Point): boolean =>
  p.x >= box.left - 2 && p.x <= box.right + 2 && p.y >= box.top - 2 && p.y <= box.bottom + 2;

/**
 * @param curves points of everything drawn that a label should not cover, a few pixels apart
 * @param taken boxes that are already there
 * @param rules heights of hairlines, better not written across
 * @returns one box for each wish, in order; earlier wishes choose first
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  area: Box,
  curves: readonly Point[],
  taken: readonly Box[] = [],
  rules: readonly number[] = [],
): Box[] {
  const placed: Box[] = [];
  for (const wish of wishes) {
    let best: { box: Box; cost: number } | null = null;
    for (const spot of wish.spots) {
      const wanted = boxAt(wish, spot);
      const box = inside(wanted, area);
      const moved = Math.abs(box.left - wanted.left) + Math.abs(box.top - wanted.top);
      const covered = curves.filter((point) => holds(box, point)).length;
      const crowd = [...taken, ...placed].reduce((sum, other) => sum + overlapOf(box, other), 0);
      const struck = rules.filter(
        (height) => height > box.top + 1 && height < box.bottom - 1,
      ).length;
      const cost = crowd * 10 + covered * 5 + moved + struck;
      if (!best || cost < best.cost) best = { box, cost };
      if (cost === 0) break;
    }
    placed.push(
      best?.box ?? inside({ left: 0, top: 0, right: wish.width, bottom: wish.height }, area),
    );
  }
  return placed;
}
