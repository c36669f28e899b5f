/** What a person most likely meant by a word that is not known. */

/** Number of letters inserted, deleted or replaced and of neighbours swapped that parts two words. */
function distance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const above = rows[i - 1]!;
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(replaced, above[j]! + 1, row[j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      }
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

export interface Known {
  /** What is suggested. */
  readonly id: string;
  /** Another word for it that a person may have typed. */
  readonly name?: string;
}

/** Longer words are not worth comparing letter by letter: ids end at 64. */
const LONGEST = 128;

/** The known id nearest to what was typed, or null when nothing is near. */
export function nearest(typed: string, known: readonly Known[]): string | null {
  if (typed.length > LONGEST) return null;
  const wanted = typed.trim().toLowerCase();
  let best: { id: string; far: number } | null = null;
  for (const { id, name = id } of known) {
    const ways = [id, name]
      .map((word) => word.toLowerCase())
      .map((word) =>
        wanted.length >= 3 && word.startsWith(wanted)
          ? 1
          : distance(wanted, word.slice(0, LONGEST)),
      );
    const far = Math.min(...ways);
    if (!best || far < best.far) best = { id, far };
  }
  const near = Math.max(1, Math.floor(wanted.length / 3));
  return best && best.far <= near ? best.id : null;
}

/** ` Did you mean "boom-root"?`, or nothing. */
export function didYouMean(typed: string, known: readonly Known[], prefix = ''): string {
  const id = nearest(typed, known);
  return id === null ? '' : ` Did you mean "${prefix}${id}"?`;
}
