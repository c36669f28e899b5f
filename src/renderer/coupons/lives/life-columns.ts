/** Columns of the grid of lives, and the rows of the set that is looked at. */
import { type LifeColumn, lifeSheet } from '../../../shared/life-text.ts';
import type { LifeResult } from '../../../shared/project-coupons.ts';
import type { CouponsState } from '../../state/coupons.ts';
import { createGridRows, type GridRows } from '../../state/grid-rows.ts';
import type { ProjectState } from '../../state/project.ts';
import type { ResultColumn } from '../result-columns.ts';

export const lifeColumns: readonly ResultColumn<LifeColumn>[] = [
  { column: 'coupon', head: 'Coupon', unit: '', name: 'coupon', words: true },
  { column: 'batch', head: 'Batch', unit: '', name: 'batch', words: true },
  {
    column: 'peak_n',
    head: 'Peak load',
    unit: 'N',
    name: 'peak load, N',
    help: 'Highest load of the cycle',
  },
  { column: 'cycles', head: 'Cycles', unit: '', name: 'cycles' },
  {
    column: 'run_out',
    head: 'Ran out',
    unit: 'yes, no',
    name: 'ran out, yes or no',
    words: true,
    help: 'Yes: taken off unbroken, so that it would have lasted longer',
  },
  { column: 'note', head: 'Note', unit: '', name: 'note', words: true },
];

export type LifeRows = GridRows<LifeColumn, LifeResult>;

export const createLifeRows = (project: ProjectState, state: CouponsState): LifeRows =>
  createGridRows({
    project,
    sheet: lifeSheet,
    list: 'life',
    id: () => state.lives.current()?.id ?? '',
    columns: () => lifeColumns.map(({ column }) => column),
  });
