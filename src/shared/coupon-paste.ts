/**
 * Coupons as they are pasted: cells of a spreadsheet, or text whose commas part its cells or its
 * decimals. What has two readings is refused: a load must not be a tenth of what it was.
 */
import { readCsv } from './csv.ts';

export type Block = readonly (readonly string[])[];

export type PasteRead =
  | { readonly kind: 'file' }
  | { readonly kind: 'cells'; readonly block: Block }
  | { readonly kind: 'refused'; readonly line: number; readonly message: string };

/** What stands before a text that a spreadsheet would take for a formula, or we for a comment. */
export const unguarded = (text: string): string => text.replace(/^'(?=[=+\-@\t\r#])/, '');

const linesOf = (text: string): readonly string[] =>
  text.replace(/\r\n?/g, '\n').replace(/\n+$/, '').split('\n');

/** Cells as they were pasted, rows first; columns parted by tabs, else by semicolons. */
export function readCouponBlock(text: string): Block {
  const mark = text.includes('\t') ? '\t' : text.includes(';') ? ';' : null;
  return linesOf(text).map((line) =>
    (mark === null ? [line] : line.split(mark)).map((cell) => unguarded(cell.trim())),
  );
}

/** A column of words, in which a comma is only a comma. */
export const isProse = (column: string | undefined): boolean =>
  column === 'apart' || column === 'note';

/** True of what goes into the one cell it is pasted into, as it is. */
export function isOneCell(text: string, column: string | undefined): boolean {
  const [block, commas] = [readCouponBlock(text), text.split(',').length - 1];
  return block.length === 1 && block[0]!.length === 1 && (commas < 2 || isProse(column));
}

const isNumber = (cell: string): boolean =>
  /^[+\-−]?(\d[\d.,' ]*|[.,]\d+)(e[+\-−]?\d+)?$/i.test(cell);

/** No number in the first row, and numbers alone below one of its words: names of columns. */
export function isHeadOfNumbers([first = [], ...rows]: Block): boolean {
  if (first.some(isNumber)) return false;
  return first.some((cell, i) => {
    const below = rows.map((row) => row[i] ?? '').filter((one) => one !== '');
    return cell !== '' && below.length > 0 && below.every(isNumber);
  });
}

/** The whole part and the decimals of one number, parted by the comma between two cells. */
const mayBeOne = (left: string, right: string): boolean =>
  /^\s*[+\-−]?(\d+|\d{1,3}([.' ]\d{3})+)$/.test(left) && /^\d+(e[+\-−]?\d+)?\s*$/i.test(right);

/** Surely one number with a decimal comma: nothing else begins with a lone 0 or is so short behind it. */
const isDecimal = (line: string): boolean =>
  /^[+\-−]?(0,\d+|(\d+|\d{1,3}([.' ]\d{3})+),\d{1,2})$/.test(line.trim());

/** True where the whole parts count up by one, as the numbers of coupons do. */
function countsUp(lines: readonly string[]): boolean {
  const whole = lines.map((line) => Number.parseInt(line, 10));
  return whole.length > 1 && whole.every((n, i) => i === 0 || n === whole[i - 1]! + 1);
}

const DO = 'copy the cells from a spreadsheet, or put the names of the columns into the first line';
const TWO_READINGS = `a comma in it may part two cells or the decimals of a number: write decimals with a point, and ${DO}`;
const UNEVEN = `it has another number of cells by comma than the first line: ${DO}`;
const ONE_CELL = `it has no second cell by comma: ${DO}`;

/** Text whose only marks are commas; `byComma` is how it would read as a file. */
export function readUnmarked(text: string): { readonly byComma: Block; readonly read: PasteRead } {
  const csv = readCsv(text);
  if (!csv.ok) {
    const { line, message } = csv;
    return { byComma: [], read: { kind: 'refused', line, message } };
  }
  const byComma = csv.rows.map(({ cells }) => cells.map(unguarded));
  const refused = (line: number, message: string): PasteRead => ({
    kind: 'refused',
    line: line + 1,
    message,
  });
  const lines = linesOf(text);
  const read = (): PasteRead => {
    const filled = lines.filter((line) => line.trim() !== '');
    const numbers = filled.every((line) => isDecimal(line) || /^\s*\d+\s*$/.test(line));
    if (numbers && !countsUp(filled)) return { kind: 'cells', block: readCouponBlock(text) };
    // Quotes tell a comma apart: what is within them is left out of the doubt.
    const parted = lines.map((line) => line.replace(/"[^"]*"/g, '""').split(','));
    const inDoubt = parted.findIndex((row) =>
      row.some((one, i) => i > 0 && mayBeOne(row[i - 1]!, one)),
    );
    if (inDoubt >= 0) return refused(inDoubt, TWO_READINGS);
    const cells = byComma[0]?.length ?? 0;
    if (cells < 2) return refused(0, ONE_CELL);
    const uneven = csv.rows.find((row) => row.cells.length !== cells);
    if (uneven) return refused(uneven.line - 1, UNEVEN);
    return { kind: 'cells', block: byComma };
  };
  return { byComma, read: read() };
}
