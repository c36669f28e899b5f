/** Columns of the grid of results: their order, heads and names. */
import { type CouponColumn, couponSheet } from '../../shared/coupon-text.ts';
import type { CouponResult, SpecimenShape } from '../../shared/project-coupons.ts';
import type { CouponsState } from '../state/coupons.ts';
import { createGridRows, type GridRows } from '../state/grid-rows.ts';
import type { ProjectState } from '../state/project.ts';

export interface ResultColumn<Column extends string> {
  readonly column: Column;
  readonly head: string;
  readonly unit: string;
  /** As it is read out. */
  readonly name: string;
  /** A text rather than a number. */
  readonly words?: boolean;
  readonly help?: string;
}

const all: readonly ResultColumn<CouponColumn>[] = [
  { column: 'coupon', head: 'Coupon', unit: '', name: 'coupon', words: true },
  { column: 'batch', head: 'Batch', unit: '', name: 'batch', words: true },
  { column: 'load_n', head: 'Load', unit: 'N', name: 'load, N' },
  { column: 'gap_mm', head: 'Gap', unit: 'mm', name: 'gap as measured, mm' },
  { column: 'overlap_mm', head: 'Overlap', unit: 'mm', name: 'overlap as measured, mm' },
  { column: 'width_mm', head: 'Width', unit: 'mm', name: 'width as measured, mm' },
  {
    column: 'cohesive_pct',
    head: 'Cohesive',
    unit: '%',
    name: 'cohesive, per cent',
    help: 'In the adhesive',
  },
  {
    column: 'thin_layer_pct',
    head: 'Thin layer',
    unit: '%',
    name: 'thin layer, per cent',
    help: 'In the adhesive, close to a surface',
  },
  {
    column: 'adhesion_pct',
    head: 'Adhesion',
    unit: '%',
    name: 'adhesion, per cent',
    help: 'At a surface: the preparation was tested',
  },
  {
    column: 'adherend_pct',
    head: 'Adherend',
    unit: '%',
    name: 'adherend, per cent',
    help: 'The adherend broke',
  },
  {
    column: 'apart',
    head: 'Kept apart because',
    unit: '',
    name: 'kept apart because',
    words: true,
    help: 'A cause that is known, never the value itself',
  },
  { column: 'note', head: 'Note', unit: '', name: 'note', words: true },
];

/** A tube has no width to measure. */
export const resultColumns = (
  shape: SpecimenShape | undefined,
): readonly ResultColumn<CouponColumn>[] =>
  all.filter(({ column }) => column !== 'width_mm' || (shape !== undefined && 'width' in shape));

/** The same as names alone, for what writes into the grid. */
export const gridColumns = (shape: SpecimenShape | undefined): readonly CouponColumn[] =>
  resultColumns(shape).map(({ column }) => column);

export type CouponRows = GridRows<CouponColumn, CouponResult>;

/** Rows of the set that is looked at. */
export const createCouponRows = (project: ProjectState, state: CouponsState): CouponRows =>
  createGridRows({
    project,
    sheet: couponSheet,
    list: 'sets',
    id: () => state.current()?.id ?? '',
    columns: () => {
      const piece = state.current()?.specimen;
      return gridColumns(state.specimens().find(({ id }) => id === piece)?.shape);
    },
  });
