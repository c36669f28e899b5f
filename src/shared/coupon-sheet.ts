/**
 * Coupons as text, whatever their columns: rows of a grid, cells pasted from a spreadsheet, and our own
 * files of comma-separated values, one line for each coupon. A row is read by the same rules wherever it
 * comes from.
 */
import {
  type Block,
  isHeadOfNumbers,
  isProse,
  type PasteRead,
  readCouponBlock,
  readUnmarked,
  unguarded,
} from './coupon-paste.ts';
import { readCsv, writeCsv } from './csv.ts';

/** A row as it is typed; nothing is left out, what is empty is empty. */
export type SheetRow<Column extends string> = Readonly<Record<Column, string>> & NumberedRow;

interface NumberedRow {
  readonly coupon: string;
  readonly batch: string;
}

/** A coupon is known by its number within its batch. */
export interface Numbered {
  coupon: string;
  batch: string;
}

export interface CellError<Column extends string> {
  readonly column: Column;
  readonly message: string;
}

export type RowRead<Column extends string, Result> =
  | { readonly ok: true; readonly result: Result }
  | { readonly ok: false; readonly errors: readonly CellError<Column>[] };

export interface LineError {
  /** From 1. */
  readonly line: number;
  readonly message: string;
}

export type SheetRead<Result> =
  | { readonly ok: true; readonly results: readonly Result[] }
  | { readonly ok: false; readonly errors: readonly LineError[] };

export interface SheetRules<Column extends string, Result extends Numbered> {
  /** In the order of the file; `coupon` and `batch` among them. */
  readonly columns: readonly Column[];
  /** Those that a file must have. */
  readonly needed: readonly Column[];
  /** Of which column the load is and in what unit: said where a head has a name that is not known. */
  readonly load: string;
  /** What a row that is begun by hand has until something else is typed. */
  readonly usual?: Partial<Readonly<Record<Column, string>>>;
  /** One coupon from its row; every cell that is wrong is told. */
  read(row: SheetRow<Column>): RowRead<Column, Result>;
  /** The row that reads back as this result. */
  write(result: Result): SheetRow<Column>;
}

export interface Sheet<Column extends string, Result extends Numbered> {
  readonly columns: readonly Column[];
  readonly emptyRow: SheetRow<Column>;
  readonly usual: Partial<Readonly<Record<Column, string>>>;
  isEmptyRow(row: SheetRow<Column>): boolean;
  readRow(row: SheetRow<Column>): RowRead<Column, Result>;
  rowOf(result: Result): SheetRow<Column>;
  /** `Load (N)`, `load n` and `load_n` are the same; a per cent sign is `pct`. */
  columnOf(head: string): Column | undefined;
  /** True of a block whose first row names columns, known here or not: it is read as a file is. */
  hasHead(block: Block): boolean;
  /** What is pasted into this column of the grid: a file, cells, or nothing that has one reading. */
  readPaste(text: string, column: Column | undefined): PasteRead;
  readCsv(text: string): SheetRead<Result>;
  /** The same file back. */
  writeCsv(results: readonly Result[]): string;
  /** A file to fill in: a line for each coupon, its number and batch in it. */
  template(planned: { readonly batches: number; readonly each: number }): string;
}

/** Most results of a set in a project. */
export const MOST_RESULTS = 1000;
const MOST_ERRORS = 20;

export const couponKey = ({ coupon, batch }: Numbered): string => JSON.stringify([batch, coupon]);

/** A text that we would take for a comment. */
const guarded = (text: string): string => (text.startsWith('#') ? `'${text}` : text);

export function makeSheet<Column extends string, Result extends Numbered>(
  rules: SheetRules<Column, Result>,
): Sheet<Column, Result> {
  const { columns, needed, load, usual = {} } = rules;
  type Row = SheetRow<Column>;
  const emptyRow = Object.fromEntries(columns.map((column) => [column, ''])) as unknown as Row;
  const isEmptyRow = (row: Row): boolean => columns.every((column) => row[column].trim() === '');
  /** Rows without anything but number and batch are a form to fill in; those are passed over. */
  const isUnfilled = (row: Row): boolean => isEmptyRow({ ...row, coupon: '', batch: '' });

  const columnOf = (head: string): Column | undefined => {
    const plain = head
      .toLowerCase()
      .replaceAll('%', ' pct ')
      .replace(/[^a-z0-9]+/g, '_')
      .replace(/^_+|_+$/g, '');
    return columns.find((column) => column === plain);
  };

  /** The head of a file; what is wrong with it as one message. */
  function readHead(cells: readonly string[]): (Column | undefined)[] | string {
    const order = cells.map(columnOf);
    const unknown = cells.filter((cell, i) => cell !== '' && order[i] === undefined);
    if (unknown.length > 0) {
      const names = unknown.map((cell) => `“${cell}”`).join(' or ');
      return `there is no column ${names}: the columns are ${columns.join(', ')}; ${load}`;
    }
    const twice = order.find((column, i) => column !== undefined && order.indexOf(column) < i);
    if (twice) return `the column ${twice} stands twice`;
    const missing = needed.find((column) => !order.includes(column));
    return missing ? `the column ${missing} is missing` : order;
  }

  function readAll(text: string): SheetRead<Result> {
    const fail = (line: number, message: string): SheetRead<Result> => ({
      ok: false,
      errors: [{ line, message }],
    });
    const csv = readCsv(text);
    if (!csv.ok) return fail(csv.line, csv.message);
    const [head, ...lines] = csv.rows;
    if (!head) return fail(1, 'the file is empty');
    const order = readHead(head.cells);
    if (typeof order === 'string') return fail(head.line, order);

    const errors: LineError[] = [];
    const results: Result[] = [];
    const seen = new Map<string, number>();
    for (const { line, cells } of lines) {
      if (errors.length >= MOST_ERRORS) break;
      // A decimal comma that is not quoted parts its number in two.
      if (cells.slice(order.length).some((one) => one !== '')) {
        const message = `${cells.length} cells under ${order.length} columns: is a decimal comma among them?`;
        errors.push({ line, message });
        continue;
      }
      const row = Object.fromEntries(
        columns.map((column) => [column, unguarded(cells[order.indexOf(column)] ?? '')]),
      ) as unknown as Row;
      if (isUnfilled(row)) continue;
      const read = rules.read(row);
      if (!read.ok) {
        errors.push(
          ...read.errors.map(({ column, message }) => ({ line, message: `${column}: ${message}` })),
        );
        continue;
      }
      const key = couponKey(read.result);
      const before = seen.get(key);
      if (before !== undefined) {
        const { coupon, batch } = read.result;
        const of = batch === '' ? '' : ` of batch ${batch}`;
        errors.push({ line, message: `coupon ${coupon}${of} stands in line ${before} already` });
        continue;
      }
      seen.set(key, line);
      results.push(read.result);
    }
    if (errors.length > 0) return { ok: false, errors: errors.slice(0, MOST_ERRORS) };
    if (results.length === 0) return fail(head.line, 'there is no result in it');
    if (results.length > MOST_RESULTS) {
      return fail(head.line, `${results.length} results; the most of a set are ${MOST_RESULTS}`);
    }
    return { ok: true, results };
  }

  const rowsCsv = (rows: readonly Row[]): string =>
    writeCsv([columns, ...rows.map((row) => columns.map((column) => guarded(row[column])))]);

  function hasHead(block: Block): boolean {
    const named = (block[0] ?? []).filter((cell) => cell !== '');
    const isKnown = named.length > 1 && named.every((cell) => columnOf(cell) !== undefined);
    return isKnown || isHeadOfNumbers(block);
  }

  return {
    columns,
    emptyRow,
    usual,
    isEmptyRow,
    readRow: rules.read,
    rowOf: rules.write,
    columnOf,
    hasHead,
    readPaste(text, column) {
      const block = readCouponBlock(text);
      if (hasHead(block)) return { kind: 'file' };
      const isMarked = /[\t;]/.test(text);
      if (isMarked || !text.includes(',')) return { kind: 'cells', block };
      const read = readUnmarked(text);
      if (hasHead(read.byComma)) return { kind: 'file' };
      // Commas in what is said of a coupon are only commas.
      return isProse(column) ? { kind: 'cells', block } : read.read;
    },
    readCsv: readAll,
    writeCsv: (results) => rowsCsv(results.map(rules.write)),
    template: ({ batches, each }) =>
      rowsCsv(
        Array.from({ length: batches * each }, (_, i) => ({
          ...emptyRow,
          coupon: String(i + 1),
          batch: String(1 + Math.floor(i / each)),
        })),
      ),
  };
}
