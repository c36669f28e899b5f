/** The scales of the section: round ones, so that a small change does not make the drawing breathe. */
import type { Stack } from './stack.ts';

export interface View {
  /** Left edge of the overlap, pixels. */
  readonly left: number;
  /** Pixels for a millimetre along the axis. */
  readonly scale: number;
  /** Walls are drawn this many times thicker than to that scale; 1 is true. */
  readonly wallFactor: number;
  /** Bondlines likewise. */
  readonly gapFactor: number;
}

/** Preferred numbers, twenty to the decade. */
const decade = [
  1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9,
];

/** The largest preferred number that is not above the value. */
export function preferredBelow(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const ratio = value / power;
  const best = decade.findLast((step) => step <= ratio * (1 + 1e-9)) ?? 1;
  return best * power;
}

const thicker = [
  1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 500,
];
const thinner = [0.5, 0.25, 0.2, 0.1, 0.05];

export const LEFT = 64;
/** Share of the width right of the root that the overlap may take: the rest is room to drag and to write. */
const SHARE = 0.76;
/** A short overlap between thick walls takes at least this share, however thin the walls must be drawn. */
const LEAST_SHARE = 0.25;
/** Walls are drawn to the scale of the length where they can be: a short overlap is drawn shorter instead. */
const LEAST_WALL_FACTOR = 1;
/** How much shorter, at the least, for the sake of true thickness. */
const LITTLE = 0.8;
/** Below this share of the width an overlap could not be read. */
const SLIVER = 0.2;
const THINNEST_WALL = 9;
const THINNEST_BOND = 7;

/** @param height pixels that the walls and bonds together may take */
export function fitView(stack: Stack, overlap: number, width: number, height: number): View {
  const gaps = stack.layers.flatMap((layer) => (layer.kind === 'bond' ? [layer.gap] : []));
  const walls = stack.layers.flatMap((layer) =>
    layer.kind === 'wall' ? [Math.max(layer.atRoot, layer.atMouth)] : [],
  );
  const room = width - LEFT;
  const length = Math.max(overlap, 0.1);
  const byHeight = (height - THINNEST_BOND * gaps.length) / (LEAST_WALL_FACTOR * sum(walls) + 1e-9);
  const wanted = Math.max(
    (LEAST_SHARE * room) / length,
    Math.min((SHARE * room) / length, byHeight),
  );
  const whole = preferredBelow(Math.max(0.05, wanted));
  // A bond drawn thick enough to be seen takes room from the walls: a little shorter before thinner.
  const least = Math.max(LITTLE * whole, (SLIVER * room) / length);
  for (let scale = whole; scale >= least; ) {
    const factors = thickness(scale, gaps, walls, height);
    if (factors.wallFactor >= LEAST_WALL_FACTOR) return { left: LEFT, scale, ...factors };
    scale = preferredBelow(scale * 0.999);
  }
  return { left: LEFT, scale: whole, ...thickness(whole, gaps, walls, height) };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** How much thicker bonds and walls are drawn at this scale, so that both can be seen and fit. */
function thickness(
  scale: number,
  gaps: readonly number[],
  walls: readonly number[],
  height: number,
): Pick<View, 'wallFactor' | 'gapFactor'> {
  const thinBond = Math.max(1e-3, Math.min(...gaps)) * scale;
  const gapFactor = thicker.find((factor) => thinBond * factor >= THINNEST_BOND) ?? 500;
  const left = height - sum(gaps) * scale * gapFactor;
  const thinWall = Math.max(1e-3, Math.min(...walls)) * scale;
  const all = Math.max(1e-3, sum(walls)) * scale;
  const fitting = [...thicker.toReversed(), ...thinner].filter((factor) => all * factor <= left);
  const enough = fitting.filter((factor) => factor >= 1 && thinWall * factor >= THINNEST_WALL);
  return { wallFactor: enough.at(-1) ?? fitting[0] ?? 0.05, gapFactor };
}

/** What the drawing must confess. */
export function scaleNote({ wallFactor, gapFactor }: View): string {
  if (wallFactor !== 1) return `thickness not to scale: walls ${wallFactor} ×, gap ${gapFactor} ×`;
  return gapFactor === 1 ? 'to scale' : `to scale, gap drawn ${gapFactor} × thicker`;
}
