/** Cells of one row, read one by one; what is wrong with each is kept. */
import type { CellError } from './coupon-sheet.ts';
import type { QuantityName } from './quantities.ts';
import { readQuantity } from './quantity-entry.ts';

export interface RowReader<Column extends string> {
  readonly errors: CellError<Column>[];
  wrong(column: Column, message: string): void;
  number(column: Column, quantity: QuantityName): number | undefined;
  /** Undefined where the cell is empty, without an error. */
  optional(column: Column, quantity: QuantityName): number | undefined;
}

/** @param most letters of each text; `coupon` must not be empty */
export function readCells<Column extends string>(
  row: Readonly<Record<Column | 'coupon', string>>,
  most: Partial<Readonly<Record<Column, number>>>,
): RowReader<Column | 'coupon'> {
  type Any = Column | 'coupon';
  const errors: CellError<Any>[] = [];
  const wrong = (column: Any, message: string): void => void errors.push({ column, message });
  const number = (column: Any, quantity: QuantityName): number | undefined => {
    const entry = readQuantity(row[column], quantity);
    if (entry.ok) return entry.value;
    wrong(column, entry.message);
    return undefined;
  };
  for (const [column, letters] of Object.entries(most) as [Column, number][]) {
    if (row[column].length > letters) wrong(column, `At most ${letters} characters.`);
  }
  if (row.coupon.trim() === '') wrong('coupon', 'It has no number.');
  return {
    errors,
    wrong,
    number,
    optional: (column, quantity) =>
      row[column].trim() === '' ? undefined : number(column, quantity),
  };
}
