/**
 * Coupon results as text: rows of a grid, cells pasted from a spreadsheet, and our own file of
 * comma-separated values, one line for each coupon:
 *
 *   coupon,batch,load_n,gap_mm,overlap_mm,width_mm,cohesive_pct,thin_layer_pct,adhesion_pct,adherend_pct,apart,note
 *
 * Only `coupon` and `load_n` must be there. A row is read by the same rules wherever it comes from.
 */
import { readCsv, writeCsv } from './csv.ts';
import type { CouponResult, CouponSet, FailureMode } from './project-coupons.ts';
import type { QuantityName } from './quantities.ts';
import { readQuantity } from './quantity-entry.ts';

export const couponColumns = [
  'coupon',
  'batch',
  'load_n',
  'gap_mm',
  'overlap_mm',
  'width_mm',
  'cohesive_pct',
  'thin_layer_pct',
  'adhesion_pct',
  'adherend_pct',
  'apart',
  'note',
] as const;
export type CouponColumn = (typeof couponColumns)[number];
/** A row as it is typed; nothing is left out, what is empty is empty. */
export type CouponRow = Readonly<Record<CouponColumn, string>>;

/** Most results of a set in a project. */
export const MOST_RESULTS = 1000;
const MOST_ERRORS = 20;

const letters = { coupon: 60, batch: 40, apart: 400, note: 4000 } as const;

const modeColumns: readonly (readonly [CouponColumn, FailureMode])[] = [
  ['cohesive_pct', 'cohesive'],
  ['thin_layer_pct', 'thinLayer'],
  ['adhesion_pct', 'adhesion'],
  ['adherend_pct', 'adherend'],
];

const sizeColumns: readonly (readonly [CouponColumn, 'gap' | 'overlap' | 'width', QuantityName])[] =
  [
    ['gap_mm', 'gap', 'gap'],
    ['overlap_mm', 'overlap', 'overlap'],
    ['width_mm', 'width', 'width'],
  ];

export const emptyRow: CouponRow = Object.fromEntries(
  couponColumns.map((column) => [column, '']),
) as Record<CouponColumn, string>;

export const isEmptyRow = (row: CouponRow): boolean =>
  couponColumns.every((column) => row[column].trim() === '');

export interface CellError {
  readonly column: CouponColumn;
  readonly message: string;
}

export type CouponRead =
  | { readonly ok: true; readonly result: CouponResult }
  | { readonly ok: false; readonly errors: readonly CellError[] };

/** How far the shares may be off 100 by rounding; the project file asks the same. */
const OFF = 0.5;

/** One coupon from its row; every cell that is wrong is told. */
export function readCouponRow(row: CouponRow): CouponRead {
  const errors: CellError[] = [];
  const number = (column: CouponColumn, quantity: QuantityName): number | undefined => {
    const entry = readQuantity(row[column], quantity);
    if (entry.ok) return entry.value;
    errors.push({ column, message: entry.message });
    return undefined;
  };
  const optional = (column: CouponColumn, quantity: QuantityName): number | undefined =>
    row[column].trim() === '' ? undefined : number(column, quantity);

  for (const [column, most] of Object.entries(letters) as [keyof typeof letters, number][]) {
    if (row[column].length > most) errors.push({ column, message: `At most ${most} characters.` });
  }
  if (row.coupon.trim() === '') errors.push({ column: 'coupon', message: 'It has no number.' });
  const load = number('load_n', 'failureLoad');
  const sizes = sizeColumns.map(([column, key, quantity]) => [key, optional(column, quantity)]);
  const before = errors.length;
  const modes = modeColumns.flatMap(([column, mode]) => {
    const share = optional(column, 'percent');
    return share === undefined ? [] : [[mode, share] as const];
  });
  const sum = modes.reduce((total, [, share]) => total + share, 0);
  if (modes.length > 0 && errors.length === before && Math.abs(sum - 100) > OFF) {
    const [column] = modeColumns.find(([one]) => row[one].trim() !== '')!;
    errors.push({
      column,
      message: `The failure modes make ${Number(sum.toFixed(3))} %, not 100 %.`,
    });
  }
  if (errors.length > 0 || load === undefined) return { ok: false, errors };
  const [apart, note] = [row.apart.trim(), row.note.trim()];
  return {
    ok: true,
    result: {
      coupon: row.coupon.trim(),
      batch: row.batch.trim(),
      load,
      ...Object.fromEntries(sizes.filter(([, value]) => value !== undefined)),
      ...(modes.length > 0 ? { modes: Object.fromEntries(modes) } : {}),
      ...(apart === '' ? {} : { apart }),
      ...(note === '' ? {} : { note }),
    },
  };
}

const written = (value: number | undefined): string => (value === undefined ? '' : String(value));

/** The row that reads back as this result. */
export const couponRow = (result: CouponResult): CouponRow => ({
  coupon: result.coupon,
  batch: result.batch,
  load_n: written(result.load),
  gap_mm: written(result.gap),
  overlap_mm: written(result.overlap),
  width_mm: written(result.width),
  cohesive_pct: written(result.modes?.cohesive),
  thin_layer_pct: written(result.modes?.thinLayer),
  adhesion_pct: written(result.modes?.adhesion),
  adherend_pct: written(result.modes?.adherend),
  apart: result.apart ?? '',
  note: result.note ?? '',
});

/** `Load (N)`, `load n` and `load_n` are the same; a per cent sign is `pct`. */
export const couponColumn = (head: string): CouponColumn | undefined => {
  const plain = head
    .toLowerCase()
    .replaceAll('%', ' pct ')
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '');
  return couponColumns.find((column) => column === plain);
};

/** What stands before a text that a spreadsheet would take for a formula, or we for a comment. */
const unguarded = (text: string): string => text.replace(/^'(?=[=+\-@\t\r#])/, '');
const guarded = (text: string): string => (text.startsWith('#') ? `'${text}` : text);

export interface LineError {
  /** From 1. */
  readonly line: number;
  readonly message: string;
}

export type CouponsRead =
  | { readonly ok: true; readonly results: readonly CouponResult[] }
  | { readonly ok: false; readonly errors: readonly LineError[] };

/** A coupon is known by its number within its batch. */
export const couponKey = ({ coupon, batch }: Pick<CouponResult, 'coupon' | 'batch'>): string =>
  JSON.stringify([batch, coupon]);

/** The head of a file; what is wrong with it as one message. */
function readHead(cells: readonly string[]): (CouponColumn | undefined)[] | string {
  const order = cells.map(couponColumn);
  const unknown = cells.findIndex((cell, i) => cell !== '' && order[i] === undefined);
  if (unknown >= 0) {
    return `there is no column “${cells[unknown]}”: the columns are ${couponColumns.join(', ')}`;
  }
  const twice = order.find((column, i) => column !== undefined && order.indexOf(column) < i);
  if (twice) return `the column ${twice} stands twice`;
  const missing = (['coupon', 'load_n'] as const).find((needed) => !order.includes(needed));
  return missing ? `the column ${missing} is missing` : order;
}

/** Rows without a coupon number, load or size are a form to fill in; those are passed over. */
const isUnfilled = (row: CouponRow): boolean => isEmptyRow({ ...row, coupon: '', batch: '' });

export function readCouponsCsv(text: string): CouponsRead {
  const fail = (line: number, message: string): CouponsRead => ({
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
  const results: CouponResult[] = [];
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
      couponColumns.map((column) => [column, unguarded(cells[order.indexOf(column)] ?? '')]),
    ) as CouponRow;
    if (isUnfilled(row)) continue;
    const read = readCouponRow(row);
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

const rowsCsv = (rows: readonly CouponRow[]): string =>
  writeCsv([
    couponColumns,
    ...rows.map((row) => couponColumns.map((column) => guarded(row[column]))),
  ]);

/** The same file back. */
export const writeCouponsCsv = (results: readonly CouponResult[]): string =>
  rowsCsv(results.map(couponRow));

/** A file to fill in: a line for each coupon that is planned, its number and batch in it. */
export function couponsTemplate({ planned }: Pick<CouponSet, 'planned'>): string {
  const { batches, each } = planned ?? { batches: 1, each: 5 };
  return rowsCsv(
    Array.from({ length: batches * each }, (_, i) => ({
      ...emptyRow,
      coupon: String(i + 1),
      batch: String(1 + Math.floor(i / each)),
    })),
  );
}

/** Cells as they were pasted, rows first; columns parted by tabs, else by semicolons. */
export function readCouponBlock(text: string): readonly (readonly string[])[] {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n+$/, '').split('\n');
  const mark = text.includes('\t') ? '\t' : text.includes(';') ? ';' : null;
  return lines.map((line) =>
    (mark === null ? [line] : line.split(mark)).map((cell) => unguarded(cell.trim())),
  );
}

/** True of a block whose first row names its columns: it is read as a file is. */
export const hasHead = (block: readonly (readonly string[])[]): boolean => {
  const [first = []] = block;
  const named = first.filter((cell) => cell !== '');
  return named.length > 1 && named.every((cell) => couponColumn(cell) !== undefined);
};
