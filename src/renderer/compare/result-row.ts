/** One row of results: what stands in it, and which column is the best. */
import type { Joint } from '../../shared/project.ts';
import type { MarginState } from '../../shared/reports.ts';
import type { CompareColumn } from '../../shared/reports-compare.ts';

export interface Cell {
  readonly text: string;
  /** What rows are ranked by. */
  readonly value: number;
  /** With its sign, where the rank is by size alone. */
  readonly signed?: number;
  /** A second line: the mode and case of a margin, the bonds of a peak. */
  readonly more?: string;
  readonly state?: MarginState;
  /** Said of the state besides its mark. */
  readonly word?: string;
}

export interface ResultRow {
  readonly label: string;
  readonly unit?: string;
  /** Null where the column has no such figure. */
  readonly cells: readonly (Cell | null)[];
  /** Which end is the better one; left out where neither is. */
  readonly better?: 'high' | 'low';
  /** Drawn as bars too, from zero, with a tick at 1. */
  readonly bars?: true;
  readonly strong?: true;
}

export interface ResultGroup {
  readonly title: string;
  readonly note: string;
  readonly rows: readonly ResultRow[];
}

/** A column of the table: its joint as it is now, and what was computed of it; null until that has come. */
export interface Result {
  readonly joint: Joint;
  readonly column: CompareColumn | null;
}

/** Columns whose figure is the best of the row. None when all are written alike, or only one is known. */
export function bestOf({ cells, better }: ResultRow): ReadonlySet<number> {
  const known = cells.flatMap((cell, i) => (cell ? [{ ...cell, i }] : []));
  if (!better || known.length < 2) return new Set();
  const sign = better === 'high' ? 1 : -1;
  const best = known.reduce((a, b) => (sign * b.value > sign * a.value ? b : a));
  const winners = known.filter(({ text }) => text === best.text);
  return new Set(winners.length === known.length ? [] : winners.map(({ i }) => i));
}
