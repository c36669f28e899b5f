/** What is said of rows that are no results yet, and of rows that are on disk but not in this project. */
import type { KeptCount, Unfinished } from '../state/unfinished.ts';

const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;
const be = (n: number): string => (n === 1 ? 'is' : 'are');

/** What of a set does not count; empty where everything does. */
export function unfinishedText({ rows, changes }: Unfinished): string {
  const parts: string[] = [];
  if (rows > 0) {
    const count = rows === 1 ? 'it does not count' : 'they do not count';
    parts.push(`${some(rows, 'row')} ${be(rows)} not complete: ${count}.`);
  }
  if (changes > 0) {
    const have = changes === 1 ? 'has a change that is' : 'have changes that are';
    parts.push(`${some(changes, 'row')} ${have} not complete: what was there before counts.`);
  }
  return parts.join(' ');
}

/** `2 results and 1 row that is not complete`. */
export function offerText({ fresh, other, open }: KeptCount): string {
  const parts: string[] = [];
  if (fresh > 0) parts.push(some(fresh, 'result'));
  if (other > 0) parts.push(`${some(other, 'result')} that ${be(other)} here with other figures`);
  if (open > 0) parts.push(`${some(open, 'row')} that ${be(open)} not complete`);
  const last = parts.pop() ?? '';
  return parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
}
