/** How a chain of products and quotients is set: `a b / c * d / e` as two fractions side by side. */
import type { Term } from './parse.ts';
import { symbolParts } from './symbols.ts';

export interface Ratio {
  readonly over: Term[];
  /** Empty where nothing is divided by. */
  readonly under: Term[];
}

/** What stands before a fraction bar goes on it, as far back as the bar before. The value is the same. */
export function ratiosOf(term: Term): Ratio[] {
  if (term.kind !== 'binary' || (term.operator !== '*' && term.operator !== '/')) {
    return [{ over: [term], under: [] }];
  }
  const before = ratiosOf(term.left);
  const last = before.at(-1);
  const { right } = term;
  if (!last) return [];
  if (term.operator === '/') {
    return [...before.slice(0, -1), { over: last.over, under: [...last.under, right] }];
  }
  const factors = ratiosOf(right);
  const [only] = factors;
  if (last.under.length > 0 || factors.length > 1 || !only || only.under.length > 0) {
    return [...before, ...factors];
  }
  return [...before.slice(0, -1), { over: [...last.over, ...only.over], under: [] }];
}

const isLetter = (term: Term): boolean =>
  (term.kind === 'name' && symbolParts(term.text).isLetter) ||
  (term.kind === 'binary' && term.operator === '^' && isLetter(term.left));

/** Letters stand side by side, anything else has a dot between. */
export const joiner = (left: Term, right: Term): string =>
  isLetter(right) && (isLetter(left) || left.kind === 'number') ? '\u2009' : ' · ';
