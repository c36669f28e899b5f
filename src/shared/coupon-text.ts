/**
 * Coupon results as text, by these columns:
 *
 *   coupon,batch,load_n,gap_mm,overlap_mm,width_mm,cohesive_pct,thin_layer_pct,adhesion_pct,adherend_pct,apart,note
 *
 * Only `coupon` and `load_n` must be there.
 */
import { makeSheet, type RowRead, type SheetRow } from './coupon-sheet.ts';
import type { CouponResult, FailureMode } from './project-coupons.ts';
import type { QuantityName } from './quantities.ts';
import { readCells } from './row-reader.ts';

const couponColumns = [
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

/** How far the shares may be off 100 by rounding; the project file asks the same. */
const OFF = 0.5;

function read(row: SheetRow<CouponColumn>): RowRead<CouponColumn, CouponResult> {
  const { errors, wrong, number, optional } = readCells<CouponColumn>(row, letters);
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
    wrong(column, `The failure modes make ${Number(sum.toFixed(3))} %, not 100 %.`);
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

const write = (result: CouponResult): SheetRow<CouponColumn> => ({
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

export const couponSheet = makeSheet<CouponColumn, CouponResult>({
  columns: couponColumns,
  needed: ['coupon', 'load_n'],
  load: 'the load is load_n, in N',
  read,
  write,
});

/** What is to be tested where nothing is planned. */
export const UNPLANNED = { batches: 1, each: 5 } as const;
