/**
 * The results of a set as they are typed. Each row keeps its text, however unfinished, and the result
 * that was last read from it: only whole results are in the document, and none is lost by a slip.
 */
import { type Accessor, createEffect, createSignal, on } from 'solid-js';
import type { Block } from '../../shared/coupon-paste.ts';
import {
  type CellError,
  couponKey,
  type Numbered,
  type Sheet,
  type SheetRow,
} from '../../shared/coupon-sheet.ts';
import type { SetList } from './coupon-sets.ts';
import type { ProjectState } from './project.ts';

export interface GridRow<Column extends string, Result> {
  readonly text: SheetRow<Column>;
  /** As it is in the document; null while the row has never been whole. */
  readonly stored: Result | null;
}

export interface GridRows<Column extends string, Result> {
  /** Of the set that is looked at, with an empty one at the end. */
  rows(): readonly GridRow<Column, Result>[];
  /** What is wrong with a row; nothing of an empty one that never was a result. */
  errors(row: GridRow<Column, Result>): readonly CellError<Column>[];
  /** True of a row that holds neither a letter nor a result. */
  isBlank(row: GridRow<Column, Result>): boolean;
  type(row: number, column: Column, text: string): void;
  remove(row: number): void;
  /** Cells into the grid from this place on; rows are added as needed. */
  put(row: number, column: number, block: Block): void;
  /** Results behind those that are there. */
  append(results: readonly Result[]): void;
  /** Results in the place of those of the same number and batch. */
  replace(results: readonly Result[]): void;
  /** Of every set that was looked at, the finished and the unfinished. */
  readonly grids: Accessor<ReadonlyMap<string, readonly GridRow<Column, Result>[]>>;
  /** Puts these rows in the place of those of the set that is looked at. */
  renew(rows: readonly GridRow<Column, Result>[]): void;
}

export interface GridSource<Column extends string, Result extends Numbered> {
  readonly project: ProjectState;
  readonly sheet: Sheet<Column, Result>;
  /** In which list of the project's coupons the set is. */
  readonly list: SetList;
  /** Of the set that is looked at; empty where there is none. */
  readonly id: () => string;
  /** Columns of the grid, in their order. */
  readonly columns: () => readonly Column[];
}

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
/** The number after the last one; how many there are where numbers are no numbers. */
function nextNumber(rows: readonly { readonly text: Numbered }[]): string {
  const numbers = rows.map(({ text }) => Number(text.coupon)).filter((n) => Number.isInteger(n));
  const used = rows.filter(({ text }) => text.coupon !== '').length;
  return String(Math.max(used, ...numbers) + 1);
}

export function createGridRows<Column extends string, Result extends Numbered>({
  project,
  sheet,
  list: listName,
  id,
  columns,
}: GridSource<Column, Result>): GridRows<Column, Result> {
  type Row = GridRow<Column, Result>;
  type Text = SheetRow<Column>;
  const blank = (): Row => ({ text: { ...sheet.emptyRow }, stored: null });
  const rowOf = (result: Result): Row => ({ text: sheet.rowOf(result), stored: result });
  const isBlank = ({ text, stored }: Row): boolean => stored === null && sheet.isEmptyRow(text);
  /** What a row has before the first cell of it is filled. */
  const begun = (text: Text): Text => ({ ...text, ...sheet.usual });

  // No store: rows are never changed, only put in one another's place, so that a key touches one row.
  const [grids, setGrids] = createSignal<ReadonlyMap<string, readonly Row[]>>(new Map());
  const wrong = new WeakMap<Row, readonly CellError<Column>[]>();
  const rows = (): readonly Row[] => grids().get(id()) ?? [];
  const results = (of: readonly Row[]): Result[] =>
    of.flatMap(({ stored }) => (stored ? [stored] : []));

  const ended = (list: readonly Row[]): Row[] => {
    const last = list.at(-1);
    return last && isBlank(last) ? [...list] : [...list, blank()];
  };
  const show = (list: readonly Row[]): void =>
    void setGrids((all) => new Map(all).set(id(), ended(list)));
  /** As they are in the document, as a text; of the plain data, which is read much faster than the store. */
  const written = (): string => {
    const sets: readonly { id: string; results: unknown }[] =
      project.plain()?.coupons?.[listName] ?? [];
    return JSON.stringify(sets.find((set) => set.id === id())?.results ?? []);
  };
  /** The document follows the rows, where a result has changed. */
  const store = (): void => {
    const sets: readonly { id: string }[] = project.plain()?.coupons?.[listName] ?? [];
    const place = sets.findIndex((set) => set.id === id());
    const next = results(rows());
    if (place < 0 || JSON.stringify(next) === written()) return;
    project.edit(['coupons', listName, place, 'results'], plain(next));
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
        const unfinished = (old ?? []).filter((row) => row.stored === null && !isBlank(row));
        show([...(JSON.parse(now) as Result[]).map(rowOf), ...unfinished]);
      },
    ),
  );

  const read = (text: Text, before: Result | null): Row => {
    const found = sheet.readRow(text);
    return { text, stored: found.ok ? found.result : before };
  };

  return {
    rows,
    grids,
    renew(list) {
      show(list);
      store();
    },
    isBlank,
    errors(row) {
      const known = wrong.get(row);
      if (known) return known;
      const found = isBlank(row) ? null : sheet.readRow(row.text);
      const errors = found === null || found.ok ? [] : found.errors;
      wrong.set(row, errors);
      return errors;
    },
    type(row, column, typed) {
      const list = [...rows()];
      const old = list[row] ?? blank();
      // The first letter of a new row brings the number and the batch that are most likely.
      const text = isBlank(old)
        ? {
            ...begun(old.text),
            coupon: nextNumber(list),
            batch: list[row - 1]?.text.batch ?? '',
          }
        : old.text;
      list[row] = read({ ...text, [column]: typed }, old.stored);
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
        const old = list[row + i] ?? blank();
        const pasted = Object.fromEntries(
          cells.flatMap((cell, j) => {
            const name = columns()[column + j];
            return name ? [[name, cell]] : [];
          }),
        );
        list[row + i] = old;
        if (isBlank(old) && Object.values(pasted).every((cell) => cell === '')) return;
        const next: Text = { ...(isBlank(old) ? begun(old.text) : old.text), ...pasted };
        const coupon = next.coupon === '' ? nextNumber(list) : next.coupon;
        list[row + i] = read({ ...next, coupon }, old.stored);
      });
      show(list);
      store();
    },
    append(added) {
      const list = rows().filter((row) => !isBlank(row));
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
