/** The table of a comparison: a row for each input and result, a column for each joint. */
import { quantities } from '../../shared/quantities.ts';
import { column, type Sheet } from '../../shared/sheet.ts';
import type { InputRow } from '../compare/input-rows.ts';
import type { ResultGroup } from '../compare/result-row.ts';

/** What a group shows in a larger unit is stored in the smaller one. */
const stored: Readonly<Record<string, string>> = {
  kN: 'N',
  'kN/mm': 'N/mm',
  'kN·m/rad': 'N·mm/rad',
};

export const compareTableSheet = (
  names: readonly string[],
  inputs: readonly InputRow[],
  groups: readonly ResultGroup[],
): Sheet => ({
  head: ['group', 'row', ...names],
  rows: [
    ...inputs.map(({ label, quantity, cells }) => [
      'inputs',
      column(label, quantity === null ? '' : quantities[quantity].unit),
      ...cells.map((cell) => cell?.value ?? null),
    ]),
    ...groups.flatMap(({ title, rows }) =>
      rows.map(({ label, unit = '', cells }) => [
        title.toLowerCase(),
        column(label, stored[unit] ?? unit),
        ...cells.map((cell) => (cell ? (cell.signed ?? cell.value) : null)),
      ]),
    ),
  ],
});
