/**
 * The results of a set as they are typed. Each row keeps its text, however unfinished, and the result
 * that was last read from it: only whole results are in the document, and none is lost by a slip.
 */
import { type Accessor, createEffect, createSignal, on } from 'solid-js';
import {
  type CellError,
  type CouponColumn,
  type CouponRow,
  couponKey,
  couponRow,
  emptyRow,
  isEmptyRow,
  readCouponRow,
} from '../../shared/coupon-text.ts';
import type { CouponResult } from '../../shared/project-coupons.ts';
import type { CouponsState } from './coupons.ts';
import type { ProjectState } from './project.ts';

export interface GridRow {
  readonly text: CouponRow;
  /** As it is in the document; null while the row has never been whole. */
  readonly stored: CouponResult | null;
}

export interface CouponRows {
  /** Of the set that is looked at, with an empty one at the end. */
  rows(): readonly GridRow[];
  /** What is wrong with a row; nothing of an empty one that never was a result. */
  errors(row: GridRow): readonly CellError[];
  type(row: number, column: CouponColumn, text: string): void;
  remove(row: number): void;
  /** Cells into the grid from this place on; rows are added as needed. */
  put(row: number, column: number, block: readonly (readonly string[])[]): void;
  /** Results behind those that are there. */
  append(results: readonly CouponResult[]): void;
  /** Results in the place of those of the same number and batch. */
  replace(results: readonly CouponResult[]): void;
  /** Of every set that was looked at, the finished and the unfinished. */
  readonly grids: Accessor<ReadonlyMap<string, readonly GridRow[]>>;
  /** Puts these rows in the place of those of the set that is looked at. */
  renew(rows: readonly GridRow[]): void;
}

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const blank = (): GridRow => ({ text: { ...emptyRow }, stored: null });
const rowOf = (result: CouponResult): GridRow => ({ text: couponRow(result), stored: result });

/** The number after the last one; how many there are where numbers are no numbers. */
function nextNumber(rows: readonly GridRow[]): string {
  const numbers = rows.map(({ text }) => Number(text.coupon)).filter((n) => Number.isInteger(n));
  const used = rows.filter(({ text }) => text.coupon !== '').length;
  return String(Math.max(used, ...numbers) + 1);
}

/** @param columns of the grid, in their order */
export function createCouponRows(
  project: ProjectState,
  state: CouponsState,
  columns: () => readonly CouponColumn[],
): CouponRows {
  // No store: rows are never changed, only put in one another's place, so that a key touches one row.
  const [grids, setGrids] = createSignal<ReadonlyMap<string, readonly GridRow[]>>(new Map());
  const wrong = new WeakMap<GridRow, readonly CellError[]>();
  const id = (): string => state.current()?.id ?? '';
  const rows = (): readonly GridRow[] => grids().get(id()) ?? [];
  const results = (of: readonly GridRow[]): CouponResult[] =>
    of.flatMap(({ stored }) => (stored ? [stored] : []));

  const ended = (list: readonly GridRow[]): GridRow[] => {
    const last = list.at(-1);
    return last && isEmptyRow(last.text) && !last.stored ? [...list] : [...list, blank()];
  };
  const show = (list: readonly GridRow[]): void =>
    void setGrids((all) => new Map(all).set(id(), ended(list)));
  /** As they are in the document, as a text; of the plain data, which is read much faster than the store. */
  const written = (): string => {
    const sets = project.plain()?.coupons?.sets ?? [];
    return JSON.stringify(sets.find((set) => set.id === id())?.results ?? []);
  };
  /** The document follows the rows, where a result has changed. */
  const store = (): void => {
    const place = state.sets().findIndex((set) => set.id === id());
    const next = results(rows());
    if (place < 0 || JSON.stringify(next) === written()) return;
    project.edit(['coupons', 'sets', place, 'results'], plain(next));
  };

  /** Of which opening the grids are: those of another project are not its own. */
  let opened = project.opening();
  createEffect(
    on(
      () => [project.opening(), id(), project.revision()] as const,
      ([opening, set]) => {
        const now = written();
        if (opening !== opened) {
          opened = opening;
          setGrids(new Map());
        }
        const old = grids().get(set);
        if (set === '' || (old && JSON.stringify(results(old)) === now)) return;
        const unfinished = (old ?? []).filter(
          ({ text, stored }) => stored === null && !isEmptyRow(text),
        );
        show([...(JSON.parse(now) as CouponResult[]).map(rowOf), ...unfinished]);
      },
    ),
  );

  const read = (text: CouponRow, before: CouponResult | null): GridRow => {
    const found = readCouponRow(text);
    return { text, stored: found.ok ? found.result : before };
  };

  return {
    rows,
    grids,
    renew(list) {
      show(list);
      store();
    },
    errors(row) {
      const known = wrong.get(row);
      if (known) return known;
      const found = isEmptyRow(row.text) && !row.stored ? null : readCouponRow(row.text);
      const errors = found === null || found.ok ? [] : found.errors;
      wrong.set(row, errors);
      return errors;
    },
    type(row, column, typed) {
      const list = [...rows()];
      const { text, stored } = list[row] ?? blank();
      const next = { ...text, [column]: typed };
      // The first letter of a new row brings the number and the batch that are most likely.
      if (isEmptyRow(text) && !stored) {
        if (column !== 'coupon') next.coupon = nextNumber(list);
        if (column !== 'batch') next.batch = list[row - 1]?.text.batch ?? '';
      }
      list[row] = read(next, stored);
      show(list);
      store();
    },
    remove(row) {
      show(rows().filter((_, i) => i !== row));
      store();
    },
    put(row, column, block) {
      const list = [...rows()];
      block.forEach((cells, i) => {
        const { text, stored } = list[row + i] ?? blank();
        const next = { ...text };
        cells.forEach((cell, j) => {
          const name = columns()[column + j];
          if (name) next[name] = cell;
        });
        if (next.coupon === '' && !isEmptyRow(next)) next.coupon = nextNumber(list);
        list[row + i] = read(next, stored);
      });
      show(list);
      store();
    },
    append(added) {
      const list = rows().filter(({ text, stored }) => stored !== null || !isEmptyRow(text));
      show([...list, ...added.map((one) => rowOf(plain(one)))]);
      store();
    },
    replace(added) {
      const by = new Map(added.map((one) => [couponKey(one), one]));
      show(
        rows().map((row) => {
          const other = row.stored && by.get(couponKey(row.stored));
          return other ? rowOf(plain(other)) : row;
        }),
      );
      store();
    },
  };
}
