/** Tables and paragraphs of fixed-width text. */

/** Characters as a terminal counts them, wide scripts aside. */
const lengthOf = (text: string): number => [...text].length;

/** Breaks a text between words, and inside a word only where the word alone is too wide. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (lengthOf(joined) <= width) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    const letters = [...word];
    while (letters.length > width) lines.push(letters.splice(0, width).join(''));
    line = letters.join('');
  }
  lines.push(line);
  return lines;
}

/** A paragraph whose later lines stand under its text, not under its mark. */
export function paragraph(text: string, width: number, mark = ''): string {
  const indent = ' '.repeat(lengthOf(mark));
  return wrap(text, width - lengthOf(mark))
    .map((line, i) => (i === 0 ? mark : indent) + line)
    .join('\n');
}

export interface Column {
  readonly title: string;
  readonly align?: 'right';
  /** Narrowest it may become by wrapping; a column without this is never wrapped. */
  readonly least?: number;
}

export interface Cell {
  readonly text: string;
  /** Adds colour to a line of the cell that has its full width already. */
  readonly paint?: (line: string) => string;
}

const GAP = '  ';

function share(columns: readonly Column[], natural: readonly number[], width: number): number[] {
  const widths = [...natural];
  let excess = widths.reduce((sum, w) => sum + w, 0) + GAP.length * (widths.length - 1) - width;
  for (; excess > 0; excess--) {
    let widest = -1;
    for (const [i, { least }] of columns.entries()) {
      if (least === undefined || widths[i]! <= least) continue;
      if (widest < 0 || widths[i]! > widths[widest]!) widest = i;
    }
    if (widest < 0) break;
    widths[widest]!--;
  }
  return widths;
}

/** A table no wider than `width` where its columns allow that: title, rule, rows. */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  width: number,
): string {
  const natural = columns.map(({ title }, i) =>
    Math.max(lengthOf(title), ...rows.map((row) => lengthOf(row[i]?.text ?? ''))),
  );
  const widths = share(columns, natural, width);
  const pad = (text: string, i: number): string => {
    const space = ' '.repeat(Math.max(0, widths[i]! - lengthOf(text)));
    return columns[i]!.align === 'right' ? space + text : text + space;
  };
  const lines = (row: readonly Cell[]): string[] => {
    const wrapped = columns.map((_, i) => wrap(row[i]?.text ?? '', widths[i]!));
    const height = Math.max(...wrapped.map((cell) => cell.length));
    return Array.from({ length: height }, (_, k) =>
      columns
        .map((_column, i) => {
          const padded = pad(wrapped[i]![k] ?? '', i);
          return row[i]?.paint?.(padded) ?? padded;
        })
        .join(GAP)
        .trimEnd(),
    );
  };
  const titles = columns.map(({ title }) => ({ text: title }));
  const rule = widths.map((w) => '─'.repeat(w)).join(GAP);
  return [...lines(titles), rule, ...rows.flatMap(lines)].join('\n');
}
