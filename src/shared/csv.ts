/** Comma-separated values as the bench's spreadsheets write and read them. */
import Papa from 'papaparse';

export interface CsvRow {
  /** As an editor counts them, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** More than any set of measured parts has. */
const MOST_ROWS = 10_000;

export type CsvRead =
  | { readonly ok: true; readonly rows: readonly CsvRow[] }
  | { readonly ok: false; readonly line: number; readonly message: string };

/**
 * Rows of a text, whichever of comma, semicolon and tab parts it; quotes by RFC 4180. Empty lines and
 * lines that begin with # are left out but counted.
 */
export function readCsv(raw: string): CsvRead {
  const text = raw.replace(/^\uFEFF/, '');
  const first = text.split(/\r?\n/).find((line) => line.trim() !== '' && !line.startsWith('#'));
  const marks = ['\t', ';', ','];
  const delimiter = marks.find((mark) => first?.includes(mark)) ?? ',';
  const { data, errors } = Papa.parse<string[]>(text, {
    delimiter,
    preview: MOST_ROWS + 1,
  });
  // A last line without its end is no error; a quote that never closes is.
  const [error] = errors.filter(({ type }) => type === 'Quotes');
  if (error) {
    return { ok: false, line: (error.row ?? 0) + 1, message: 'a quotation mark is not closed' };
  }
  if (data.length > MOST_ROWS) {
    return { ok: false, line: MOST_ROWS, message: `more than ${MOST_ROWS} lines` };
  }
  const rows = data.map((cells, i) => ({ line: i + 1, cells: cells.map((cell) => cell.trim()) }));
  return {
    ok: true,
    rows: rows.filter(
      ({ cells }) => cells.some((cell) => cell !== '') && !cells[0]!.startsWith('#'),
    ),
  };
}

/** How a formula begins. The package's own pattern misses one that a line break follows. */
const FORMULA = /^[=+\-@\t\r\n]/;

/**
 * RFC 4180. A text that a spreadsheet would take for a formula gets an apostrophe before it; numbers
 * stay numbers.
 */
export const writeCsv = (rows: readonly (readonly (string | number | null)[])[]): string =>
  `${Papa.unparse(
    rows.map((row) => row.map((cell) => cell ?? '')),
    { escapeFormulae: FORMULA, newline: '\r\n' },
  )}\r\n`;
