/** A place in a project file in plain words, for whoever does not know its fields: `joint 3 (Lug), overlap`. */
import { keyWords } from './change-words.ts';

/** What one of a list is called, where that is not what the list is called. */
const items: ReadonlyMap<string, string> = new Map(
  Object.entries({
    adherends: 'material',
    adhesives: 'adhesive',
    conditions: 'condition',
    coupons: 'coupon',
    diameters: 'reading',
    gapChecks: 'gap check',
    instruments: 'instrument',
    joints: 'joint',
    life: 'set of lives',
    loadCases: 'load case',
    loads: 'load',
    plies: 'ply',
    results: 'result',
    revisions: 'revision',
    sets: 'set',
    sizes: 'size',
    specimens: 'test piece',
    states: 'state',
    surfaces: 'surface',
    variants: 'variant',
  }),
);

/** The list itself, as many. */
function listWords(key: string): string | null {
  const one = items.get(key);
  if (one === undefined) return null;
  return key === 'life' ? 'lives' : `${one.replace(/y$/, 'ie')}s`;
}

const isFields = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
const textAt = (value: unknown, key: string): string | null => {
  const text = isFields(value) ? value[key] : undefined;
  return typeof text === 'string' && text !== '' ? text : null;
};

/** The name of one of a list; that of the load case, for a load. */
function nameOf(document: unknown, item: unknown): string | null {
  const name = textAt(item, 'name');
  const caseId = textAt(item, 'case');
  if (name !== null || caseId === null) return name;
  const cases = isFields(document) ? document.loadCases : undefined;
  const found = Array.isArray(cases) ? cases.find((one) => textAt(one, 'id') === caseId) : null;
  return textAt(found, 'name');
}

const OURS = /^[a-z][a-z0-9]*([A-Z][a-z0-9]*)*$/;
const LONG = 40;
const short = (text: string): string => (text.length > LONG ? `${text.slice(0, LONG - 1)}…` : text);

/**
 * @param document as it was read, whatever is wrong with it: names are looked up in it
 * @param field dotted path, such as `joints.2.overlap`
 */
export const placeWords = (document: unknown, field: string): string =>
  partsOf(document, field).join(', ');

/** What is wrong, after its place; a message that names the last part of that by itself has it once. */
export function inPlace(document: unknown, field: string, message: string): string {
  if (field === '') return message;
  const parts = partsOf(document, field);
  const last = parts.at(-1) ?? '';
  const names = message.toLowerCase().startsWith(`${last} `);
  return [(names ? parts.slice(0, -1) : parts).join(', '), message]
    .filter((part) => part !== '')
    .join(': ');
}

function partsOf(document: unknown, field: string): string[] {
  const path = field.split('.');
  const words: string[] = [];
  let here: unknown = document;
  for (const [i, key] of path.entries()) {
    here = isFields(here) ? here[key] : undefined;
    // At the top there is no list: a number is a key that somebody made.
    if (i > 0 && /^\d+$/.test(key)) {
      const list = path[i - 1] ?? '';
      const what = /^\d+$/.test(list) ? 'number' : (items.get(list) ?? keyWords(path.slice(0, i)));
      const item = `${what} ${Number(key) + 1}`;
      const name = nameOf(document, here);
      words.push(name === null ? item : `${item} (${short(name)})`);
    } else if (i === 0 && /^\d+$/.test(key)) {
      words.push(`“${key}”`);
    } else if (!/^\d+$/.test(path[i + 1] ?? '')) {
      words.push(
        // What is written unlike any field of ours stays as it is.
        listWords(key) ?? (OURS.test(key) ? keyWords(path.slice(0, i + 1)) : key.trim() || '“”'),
      );
    }
  }
  return words;
}
