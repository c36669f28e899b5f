/**
 * Sizing: the smallest multiple of a step at which the lowest margin reaches the target, or both ends
 * of the stretch of multiples that reach it.
 *
 * The margin need not grow with the value (a thicker wall peels harder, a thicker gap may be weaker):
 * a coarse grid is looked through first, the first crossing on it is halved on multiples of the step,
 * and the full analysis judges the answer and the multiple one step outside it. Where it says
 * otherwise the search goes on with what it said. A stretch that reaches the target and is narrower
 * than the grid is found only next to the grid's best point.
 */
import type { GoverningRow } from '../margins/governing.ts';
import type { Judge } from './judge.ts';

export interface SizePlan {
  /** Multiples of the step, first below last. */
  readonly first: number;
  readonly last: number;
  readonly wanted: 'smallest' | 'stretch';
  /** True finds the lowest margin at every point of the grid, for a drawing and for the best value. */
  readonly drawn: boolean;
  /** Near the best multiple, where that may be guessed. */
  readonly guess?: number;
  /** Multiples that are judged besides the grid's own. */
  readonly besides?: readonly number[];
}

export interface GridPoint {
  readonly multiple: number;
  readonly row: GoverningRow;
}

export interface Stretch {
  /** Smallest multiple that reaches the target, and whether one below it was looked at. */
  readonly low: number;
  readonly bounded: boolean;
  /** Largest multiple; null where it was not asked for. */
  readonly high: number | null;
  readonly boundedAbove: boolean;
  /** The next multiple of the grid above that does not reach it any more; null when all do, or nothing is drawn. */
  readonly lostAt: number | null;
}

export interface Sized {
  readonly found: Stretch | null;
  /** Multiples at which the lowest margin was found, in order. */
  readonly points: readonly GridPoint[];
  /** The highest of them. */
  readonly best: GridPoint;
}

/** Points of the grid; closer together where the value is small. */
const POINTS = 15;
const CLOSER = 1.6;

/** Margins nearer than this are shown alike. */
export const ALIKE = 0.005;

export function gridOf({ first, last, wanted, besides = [] }: SizePlan): number[] {
  const power = wanted === 'smallest' ? CLOSER : 1;
  const own = Array.from({ length: POINTS }, (_v, i) =>
    Math.round(first + (last - first) * (i / (POINTS - 1)) ** power),
  );
  const inside = besides.filter((multiple) => multiple >= first && multiple <= last);
  return [...new Set([...own, ...inside])].sort((a, b) => a - b);
}

/**
 * Without a drawing nothing is said of a joint that reaches the target nowhere but its margin at the guess.
 * @throws ModelError when the joint fits together nowhere on the grid
 */
export function size(judge: Judge, plan: SizePlan): Sized {
  let grid = gridOf(plan);
  if (plan.drawn) for (const multiple of grid) judge.lowest(multiple);
  let found = stretchOn(judge, grid, plan);
  if (!found && plan.drawn) {
    grid = refined(judge, grid, PROBES);
    found = stretchOn(judge, grid, plan);
  }
  return summary(judge, found, plan.drawn ? grid : found ? [] : [guessOf(plan)]);
}

/** Where a joint that was sized without a drawing and reaches the target nowhere comes nearest. */
export function nearest(judge: Judge, plan: SizePlan): Sized {
  const grid = refined(judge, thinned(judge, gridOf(plan), guessOf(plan)), PROBES / 2);
  return summary(judge, stretchOn(judge, grid, plan), grid);
}

const guessOf = ({ guess, last }: SizePlan): number => guess ?? last;

function summary(judge: Judge, found: Stretch | null, grid: readonly number[]): Sized {
  const points = shown(found, grid).flatMap((multiple): GridPoint[] => {
    const row = judge.lowest(multiple);
    return row ? [{ multiple, row }] : [];
  });
  const [one] = points;
  if (!one) throw judge.misfit() ?? new RangeError('no mode is reached under any load');
  const best = points.reduce((top, point) => (marginOf(point) > marginOf(top) ? point : top), one);
  return { found, points, best };
}

/** The grid, with the ends that were found: their analyses are there already. */
function shown(found: Stretch | null, grid: readonly number[]): number[] {
  const ends = [found?.low, found?.high].flatMap((end) => end ?? []);
  return [...new Set([...grid, ...ends])].sort((a, b) => a - b);
}

const marginOf = ({ row }: GridPoint): number => row.result.margin;

/** The first stretch of the grid that reaches the target (of several, the one with the highest margin). */
function stretchOn(judge: Judge, grid: readonly number[], plan: SizePlan): Stretch | null {
  // Every round makes at least one more full analysis, which is final for its multiple.
  for (;;) {
    const run = plan.wanted === 'smallest' ? firstRun(judge, grid, plan) : bestRun(judge, grid);
    if (!run) return null;
    const [from, to] = run;
    const low = edge(judge, grid[from - 1], grid[from]!);
    if (low === null) continue;
    const lostAt = grid[to + 1] ?? null;
    const common = { low, bounded: from > 0 };
    if (plan.wanted === 'smallest') {
      return { ...common, high: null, boundedAbove: false, lostAt: plan.drawn ? lostAt : null };
    }
    const high = edge(judge, grid[to + 1], grid[to]!);
    if (high === null) continue;
    return { ...common, high, boundedAbove: lostAt !== null, lostAt };
  }
}

type Run = readonly [from: number, to: number];

/** Indices of the first points in a row that reach the target; when nothing is drawn, of its first point. */
function firstRun(judge: Judge, grid: readonly number[], { drawn }: SizePlan): Run | null {
  const from = grid.findIndex((multiple) => judge.reaches(multiple));
  if (from < 0) return null;
  return [from, drawn ? lastInRow(judge, grid, from) : from];
}

function lastInRow(judge: Judge, grid: readonly number[], from: number): number {
  let to = from;
  while (to + 1 < grid.length && judge.reaches(grid[to + 1]!)) to++;
  return to;
}

function bestRun(judge: Judge, grid: readonly number[]): Run | null {
  let best: Run | null = null;
  let highest = Number.NEGATIVE_INFINITY;
  for (let from = 0; from < grid.length; from++) {
    if (!judge.reaches(grid[from]!)) continue;
    const to = lastInRow(judge, grid, from);
    const margins = grid.slice(from, to + 1).map((n) => judge.lowest(n)?.result.margin ?? 0);
    if (Math.max(...margins) > highest) {
      highest = Math.max(...margins);
      best = [from, to];
    }
    from = to;
  }
  return best;
}

/**
 * The multiple next to the crossing, by halving; then the full analysis of it and of its neighbour
 * outside.
 * @param failing undefined when the grid ends there
 * @returns null when the full analysis has changed what was known: look again
 */
function edge(judge: Judge, failing: number | undefined, reaching: number): number | null {
  if (failing === undefined) return judge.verified(reaching) ? reaching : null;
  let [out, inside] = [failing, reaching];
  while (Math.abs(inside - out) > 1) {
    const middle = Math.trunc((inside + out) / 2);
    if (judge.reaches(middle)) inside = middle;
    else out = middle;
  }
  return judge.verified(inside) && !judge.verified(out) ? inside : null;
}

/** Of a grid, points that tell where the margin is highest when that is near the guess. */
function thinned(judge: Judge, grid: readonly number[], guess: number): number[] {
  const last = grid.at(-1) ?? guess;
  const near = (to: number): number =>
    grid.reduce((best, n) => (Math.abs(n - to) < Math.abs(best - to) ? n : best), last);
  const few = [...new Set([near(guess / 2), guess, last])].sort((a, b) => a - b);
  return few.filter((multiple) => judge.lowest(multiple) !== null);
}

const PROBES = 8;

/** The grid with points between those beside its best one: where two modes cross the margin has its top. */
function refined(judge: Judge, grid: readonly number[], probes: number): number[] {
  const all = [...grid];
  const margin = (multiple: number): number =>
    judge.lowest(multiple)?.result.margin ?? Number.NEGATIVE_INFINITY;
  const best = grid.reduce((a, b) => (margin(b) > margin(a) ? b : a), grid[0] ?? 0);
  const place = grid.indexOf(best);
  let left = grid[place - 1] ?? best;
  let right = grid[place + 1] ?? best;
  let top = best;
  for (let probe = 0; probe < probes && right - left > 2; probe++) {
    if (isLevel(judge, left, top) && isLevel(judge, top, right)) break;
    const middle = right - top > top - left ? top + right : left + top;
    const next = Math.trunc(middle / 2);
    if (next === top || all.includes(next)) break;
    all.push(next);
    if (margin(next) > margin(top)) {
      if (next > top) left = top;
      else right = top;
      top = next;
    } else if (next > top) right = next;
    else left = next;
  }
  return all.sort((a, b) => a - b);
}

/** The same mode sets the same margin at both. */
function isLevel(judge: Judge, a: number, b: number): boolean {
  const [one, other] = [judge.lowest(a)?.result, judge.lowest(b)?.result];
  if (!one || !other) return one === other;
  return one.mode === other.mode && Math.abs(one.margin - other.margin) < ALIKE / 10;
}
