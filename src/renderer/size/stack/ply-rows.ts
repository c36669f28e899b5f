/** Which plies of a stack are drawn, and where: all of them to scale, or a long stack compressed. */

/** More than these would be hair lines, or push the rest of the form away. */
const MOST = 24;
/** Of a long stack without runs, at either face. */
const KEPT = 10;
const HEIGHT = 13;
const TIGHT = 11;
const CROWDED = 14;

export type PlyRow =
  | {
      readonly kind: 'plies';
      /** Number of the first one, 1 at the inside. */
      readonly first: number;
      readonly count: number;
      readonly angle: number;
      readonly top: number;
      readonly height: number;
    }
  | {
      readonly kind: 'break';
      readonly left: number;
      readonly top: number;
      readonly height: number;
    };

export interface PlyPicture {
  /** From the outside, which is drawn on top, to the inside. */
  readonly rows: readonly PlyRow[];
  readonly height: number;
  /** False when the stack was too long to draw each ply. */
  readonly toScale: boolean;
}

interface Run {
  readonly first: number;
  readonly count: number;
  readonly angle: number;
}

function runsOf(angles: readonly number[]): Run[] {
  const runs: Run[] = [];
  for (const [i, angle] of angles.entries()) {
    const last = runs.at(-1);
    if (last?.angle === angle) runs[runs.length - 1] = { ...last, count: last.count + 1 };
    else runs.push({ first: i + 1, count: 1, angle });
  }
  return runs;
}

type Item = Run | { readonly left: number };

function itemsOf(angles: readonly number[]): Item[] {
  if (angles.length <= MOST) return angles.map((angle, i) => ({ first: i + 1, count: 1, angle }));
  const runs = runsOf(angles);
  if (runs.length <= MOST) return runs;
  const hidden = runs.slice(KEPT, -KEPT);
  const left = hidden.reduce((sum, { count }) => sum + count, 0);
  return [...runs.slice(0, KEPT), { left }, ...runs.slice(-KEPT)];
}

/** @param angles from the inside to the outside, degrees */
export function plyPicture(angles: readonly number[]): PlyPicture {
  const items = itemsOf(angles);
  const height = items.length > CROWDED ? TIGHT : HEIGHT;
  const rows = items
    .toReversed()
    .map(
      (item, i): PlyRow =>
        'left' in item
          ? { kind: 'break', left: item.left, top: i * height, height }
          : { kind: 'plies', ...item, top: i * height, height },
    );
  return { rows, height: items.length * height, toScale: angles.length <= MOST };
}

/** 45 as `45°`, with a true minus. */
export const angleText = (angle: number): string => `${angle < 0 ? '−' : ''}${Math.abs(angle)}°`;

/** One sentence for those who do not see the drawing: runs are counted, long stacks are not read out whole. */
export function plySentence(
  angles: readonly number[],
  symmetric: boolean,
  faces: readonly [inner: string, outer: string],
): string {
  const runs = runsOf(angles);
  const shown = runs
    .slice(0, MOST)
    .map(({ angle, count }) => (count === 1 ? angleText(angle) : `${count} × ${angleText(angle)}`));
  const more = runs.length > shown.length ? ', and so on' : '';
  const plies = angles.length === 1 ? 'One ply' : `${angles.length} plies`;
  const mirrored = symmetric && angles.length > 1 ? ' The halves mirror each other.' : '';
  return `${plies} from ${faces[0]} to ${faces[1]}: ${shown.join(', ')}${more}.${mirrored}`;
}
