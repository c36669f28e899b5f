/**
 * Lives of coupons under cycles as text, by these columns:
 *
 *   coupon,batch,peak_n,cycles,run_out,note
 *
 * All but `batch` and `note` must be there: a file that does not tell run-outs from failures would make
 * failures of them.
 */
import { makeSheet, type RowRead, type SheetRow } from './coupon-sheet.ts';
import type { LifeResult } from './project-coupons.ts';
import { readCells } from './row-reader.ts';

const lifeColumns = ['coupon', 'batch', 'peak_n', 'cycles', 'run_out', 'note'] as const;
export type LifeColumn = (typeof lifeColumns)[number];

const letters = { coupon: 60, batch: 40, note: 4000 } as const;

/** As spreadsheets and people write it; a cell that is left empty is of one that failed. */
const yes = ['yes', 'y', 'true', '1', 'x'];
const no = ['no', 'n', 'false', '0', ''];

function read(row: SheetRow<LifeColumn>): RowRead<LifeColumn, LifeResult> {
  const { errors, wrong, number } = readCells<LifeColumn>(row, letters);
  const peak = number('peak_n', 'failureLoad');
  const cycles = number('cycles', 'cycles');
  const said = row.run_out.trim().toLowerCase();
  const runOut = yes.includes(said);
  if (!runOut && !no.includes(said)) {
    wrong('run_out', `“${row.run_out.trim()}” is neither yes nor no.`);
  }
  if (errors.length > 0 || peak === undefined || cycles === undefined) return { ok: false, errors };
  const note = row.note.trim();
  return {
    ok: true,
    result: {
      coupon: row.coupon.trim(),
      batch: row.batch.trim(),
      peak,
      cycles,
      runOut,
      ...(note === '' ? {} : { note }),
    },
  };
}

const write = ({ coupon, batch, peak, cycles, runOut, note }: LifeResult) => ({
  coupon,
  batch,
  peak_n: String(peak),
  cycles: String(cycles),
  run_out: runOut ? 'yes' : 'no',
  note: note ?? '',
});

export const lifeSheet = makeSheet<LifeColumn, LifeResult>({
  columns: lifeColumns,
  needed: ['coupon', 'peak_n', 'cycles', 'run_out'],
  load: 'the highest load of a cycle is peak_n, in N',
  usual: { run_out: 'no' },
  read,
  write,
});

/** Lines of a file to fill in: three stresses of five coupons each are a usual beginning. */
export const LIVES_TO_FILL_IN = { batches: 1, each: 15 } as const;
