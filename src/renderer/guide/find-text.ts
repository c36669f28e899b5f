/** Search in the guide: every typed word must stand in a section; headings count more than text. */
import { wordsOf } from '../actions/match.ts';

export interface Searched {
  readonly page: string;
  readonly pageTitle: string;
  readonly anchor: string;
  readonly heading: string;
  readonly text: string;
}

export interface Found extends Searched {
  /** Of the text, around the first word that was found. */
  readonly before: string;
  readonly word: string;
  readonly after: string;
}

const MOST = 40;
const AROUND = 70;

const flat = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** Cut at a word, not within one. */
function excerpt(text: string, typed: readonly string[]): Pick<Found, 'before' | 'word' | 'after'> {
  const low = flat(text);
  // Where letters lost their marks the places differ: then the beginning will do.
  const at = low.length === text.length ? low.indexOf(typed[0] ?? '') : -1;
  if (at < 0) return { before: text.slice(0, 2 * AROUND), word: '', after: '' };
  const from = Math.max(0, at - AROUND);
  const end = at + (typed[0] ?? '').length;
  const before = text.slice(from, at).replace(from > 0 ? /^\S*\s/ : /^/, from > 0 ? '… ' : '');
  const rest = text.slice(end, end + AROUND);
  const after = end + AROUND < text.length ? rest.replace(/\s\S*$/, ' …') : rest;
  return { before, word: text.slice(at, end), after };
}

export function findText(sections: readonly Searched[], text: string): readonly Found[] {
  const typed = wordsOf(text);
  if (typed.length === 0) return [];
  const worth = ({ heading, text: body }: Searched): number => {
    const [head, all] = [flat(heading), flat(body)];
    let sum = 0;
    for (const word of typed) {
      if (!head.includes(word) && !all.includes(word)) return 0;
      sum += head.includes(word) ? 10 : 1;
    }
    return sum;
  };
  return sections
    .map((section) => ({ section, found: worth(section) }))
    .filter(({ found }) => found > 0)
    .toSorted((a, b) => b.found - a.found)
    .slice(0, MOST)
    .map(({ section }) => ({ ...section, ...excerpt(section.text, typed) }));
}
