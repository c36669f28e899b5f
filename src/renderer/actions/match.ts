/**
 * Finds by typed words: every word must be somewhere, in whatever order. The start of a word counts more
 * than its inside, the title more than what stands beside it; one slip of the hand is forgiven.
 */
import type { WorkspaceName } from '../workspaces.ts';
import { type Action, type GroupName, groups } from './action.ts';

/** Small letters without marks, signs between words gone. */
export const wordsOf = (text: string): string[] =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

/** Shorter ones are inside of nearly every word. */
const INSIDE = 2;
/** Shorter words are too like one another. */
const FORGIVEN = 4;

/** Whether one letter wrong, missing, too many, or two changed places make `typed` the start of `word`. */
export function isSlip(typed: string, word: string): boolean {
  if (typed.length < FORGIVEN) return false;
  let same = 0;
  while (same < typed.length && typed[same] === word[same]) same += 1;
  const [rest, left] = [typed.slice(same), word.slice(same)];
  return (
    left.slice(1).startsWith(rest.slice(1)) ||
    left.slice(1).startsWith(rest) ||
    left.startsWith(rest.slice(1)) ||
    (rest[0] === left[1] && rest[1] === left[0] && left.slice(2).startsWith(rest.slice(2)))
  );
}

function worthOf(typed: string, title: readonly string[], beside: readonly string[]): number {
  if (title.includes(typed)) return 10;
  if (title.some((word) => word.startsWith(typed))) return 8;
  if (beside.some((word) => word.startsWith(typed))) return 5;
  if (typed.length < INSIDE) return 0;
  if (title.some((word) => word.includes(typed))) return 3;
  if (beside.some((word) => word.includes(typed))) return 2;
  return title.some((word) => isSlip(typed, word)) ? 1 : 0;
}

/** @returns 0 where one of the words is nowhere */
export function score(action: Action, typed: readonly string[]): number {
  const title = wordsOf(action.title());
  const beside = wordsOf(`${groups[action.group].one} ${action.also ?? ''}`);
  const values = typed.map((word) => worthOf(word, title, beside));
  if (values.includes(0)) return 0;
  const sum = values.reduce((total, value) => total + value, 0) / typed.length;
  // What begins as it was typed is what was meant, and more so where little is left untyped. Fields
  // bear the names of other things.
  const begins = title[0]?.startsWith(typed[0]!) ? 1 : 0;
  const whole = sum + begins + Math.min(1, typed.length / title.length);
  return action.group === 'setting' ? whole / 1.1 : whole;
}

/** As many as anybody reads. */
export const MOST = 60;
/** Of one kind, while nothing is typed. */
const MOST_OF_A_KIND = 6;

/** Kinds in the order of how likely one is wanted on a page; a change can be taken back on all of them. */
const kinds: Readonly<Record<WorkspaceName, readonly GroupName[]>> = {
  joints: ['change', 'joint', 'view'],
  size: ['change', 'case', 'view', 'setting', 'joint'],
  compare: ['change', 'joint'],
  gap: ['change', 'page', 'joint'],
  coupons: ['change', 'coupons', 'view', 'page'],
};

/** What the box shows for a text, the best first; for none what is likely on this page. */
export function search(
  actions: readonly Action[],
  text: string,
  page: WorkspaceName,
): readonly Action[] {
  const there = actions.filter((action) => action.available() && action.id !== 'find');
  const isLikely = ({ likely }: Action): boolean => likely?.includes(page) ?? false;
  const typed = wordsOf(text);
  if (typed.length === 0) {
    return kinds[page].flatMap((kind) =>
      there.filter((one) => one.group === kind && isLikely(one)).slice(0, MOST_OF_A_KIND),
    );
  }
  return there
    .map((action) => ({ action, found: score(action, typed) }))
    .filter(({ found }) => found > 0)
    .map(({ action, found }) => ({ action, worth: found + (isLikely(action) ? 0.5 : 0) }))
    .toSorted((a, b) => b.worth - a.worth)
    .slice(0, MOST)
    .map(({ action }) => action);
}
