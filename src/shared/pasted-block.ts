/** Cells pasted from a spreadsheet, and numbers as spreadsheets of many languages write them. */
import { readQuantity } from './quantity-entry.ts';

/** A block of readings as it was pasted; null for an empty cell, which changes nothing. */
export type PastedBlock =
  | { readonly ok: true; readonly rows: readonly (readonly (number | null)[])[] }
  | { readonly ok: false; readonly message: string };

/** What parts the cells of a line: a tab or a semicolon; else blanks, else commas beside points. */
function cellsOf(text: string): readonly (readonly string[])[] {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n+$/, '').split('\n');
  const mark = text.includes('\t')
    ? '\t'
    : text.includes(';')
      ? ';'
      : lines.some((line) => /\S\s+\S/.test(line))
        ? /\s+/
        : /\d\.\d[\d\s]*,/.test(text)
          ? ','
          : null;
  return lines.map((line) => {
    const whole = mark instanceof RegExp ? line.trim() : line;
    return (mark === null ? [whole] : whole.split(mark)).map((cell) => cell.trim());
  });
}

/**
 * Numbers as spreadsheets of many languages write them: where every one of them has one comma at most
 * and none has a point, a comma can only be the decimal mark. Elsewhere texts stay as they are.
 */
export function decimalsOf(texts: readonly string[]): (text: string) => string {
  const all = texts.filter((text) => text !== '');
  const commas =
    all.some((text) => text.includes(',')) && all.every((text) => /^[+-]?\d+(,\d+)?$/.test(text));
  return (text) => (commas ? text.replace(',', '.') : text);
}

/** All of it or nothing. */
export function readBlock(text: string): PastedBlock {
  const cells = cellsOf(text);
  const plain = decimalsOf(cells.flat());
  const rows: (number | null)[][] = [];
  for (const [i, row] of cells.entries()) {
    const values: (number | null)[] = [];
    for (const [j, cell] of row.entries()) {
      if (cell === '') {
        values.push(null);
        continue;
      }
      const entry = readQuantity(plain(cell), 'diameter');
      if (!entry.ok) {
        const message = `Nothing was taken: in row ${i + 1}, column ${j + 1} of what was pasted, ${entry.message}`;
        return { ok: false, message };
      }
      values.push(entry.value);
    }
    rows.push(values);
  }
  return { ok: true, rows };
}
