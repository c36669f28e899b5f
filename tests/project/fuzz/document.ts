/** Changes to a document that know what it is: keys, types, numbers, texts, lists, references. */
import type { Random } from './random.ts';

/** A value that is written into the text as it stands, JSON or not. */
export const RAW = '@@raw@@';
const raw = (text: string): string => `${RAW}${text}${RAW}`;

type Parent = Record<string | number, unknown>;
export interface Place {
  readonly parent: Parent;
  readonly key: string | number;
}

export function placesOf(document: unknown): Place[] {
  const found: Place[] = [];
  const rest: unknown[] = [document];
  while (rest.length > 0) {
    const value = rest.pop();
    if (typeof value !== 'object' || value === null) continue;
    for (const key of Array.isArray(value) ? value.keys() : Object.keys(value)) {
      const inner = (value as Parent)[key];
      found.push({ parent: value as Parent, key });
      rest.push(inner);
    }
  }
  return found;
}

/** Also where the key is `__proto__`: as the parser puts it there. */
function put(parent: object, key: string | number, value: unknown): void {
  if (Array.isArray(parent) && typeof key === 'string') parent.push(value);
  else
    Object.defineProperty(parent, key, {
      value,
      writable: true,
      enumerable: true,
      configurable: true,
    });
}

const remove = ({ parent, key }: Place): void => {
  if (Array.isArray(parent)) parent.splice(Number(key), 1);
  else delete parent[key];
};

const strangeKeys = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  '__defineGetter__',
  'length',
  '',
  '0',
  'a\u0000b',
  '\ud800',
  '\u202etxt',
  'k'.repeat(5000),
];
const numbers = [
  1e308,
  -1e308,
  1.7976931348623157e308,
  5e-324,
  -5e-324,
  1e21,
  1e-7,
  2 ** 53,
  -1,
  0.1 + 0.2,
  0,
];
/** Too small for a computer, which takes them for 0. */
const lostNumbers = ['1e-400', '-1e-330', '0.07e-999', `0.${'0'.repeat(350)}9`];
const rawNumbers = [
  ...lostNumbers,
  '-0',
  '-0.0',
  'NaN',
  'Infinity',
  '-Infinity',
  '1e999',
  '-1e999',
  '1e-999',
  '0x10',
  '01',
  '+1',
  '.5',
  '5.',
  '1_000',
  '1,5',
  '1e',
  "'1'",
  '0b1',
  '1n',
  '1e308',
  '0.30000000000000000000000004',
  '9'.repeat(400),
  'undefined',
];
const texts = [
  '',
  ' ',
  'NaN',
  'Infinity',
  '12',
  '1e3',
  'null',
  'true',
  '\u0000',
  'a\nb',
  '\u001b[2J',
  '\ud800',
  'x\udc00y',
  '\udfff\ud800',
  '\u202eabc',
  '\u2028',
  '\ufeff',
  '😀',
  'é',
  'e\u0301',
  '<script>alert(1)</script>',
  '=1+1',
  '../../etc',
  '__proto__',
  '$1',
  '%s%n',
  "'; --",
];
/** An object may have a field "toString" of its own, also deep in a list. */
function textOf(value: unknown): string {
  try {
    return String(value);
  } catch {
    return '[object Object]';
  }
}
const kinds = (value: unknown): readonly unknown[] => [
  null,
  true,
  false,
  0,
  1,
  '',
  'text',
  [],
  {},
  [value],
  { value },
  [[]],
  [null],
  textOf(value),
  Number(textOf(value)) || 7,
];

const nested = (depth: number, value: unknown): unknown => {
  let outer = value;
  for (let i = 0; i < depth; i++) outer = i % 3 === 0 ? { a: outer } : [outer];
  return outer;
};

type Change = (random: Random, place: Place, places: readonly Place[]) => void;

const at = ({ parent, key }: Place): unknown => parent[key];
const listOf = (random: Random, places: readonly Place[]): unknown[] | null => {
  const lists = places.map(at).filter(Array.isArray);
  return lists.length === 0 ? null : random.pick(lists);
};

/** Such as leave a project a project more often than not. */
const mild: readonly Change[] = [
  (random, place) => {
    const value = at(place);
    if (typeof value === 'number')
      put(place.parent, place.key, value * (0.9 + 0.2 * random.next()));
    if (typeof value === 'string' && / /.test(value))
      put(place.parent, place.key, random.pick(texts));
    if (typeof value === 'boolean') put(place.parent, place.key, !value);
  },
  // The same, its keys in another order.
  (_random, { parent }) => {
    if (Array.isArray(parent)) return;
    for (const [key, value] of Object.entries(parent).reverse()) {
      delete parent[key];
      put(parent, key, value);
    }
  },
  (random, _place, places) => {
    const list = listOf(random, places);
    if (!list || list.length === 0) return;
    const again = structuredClone(random.pick(list));
    if (typeof again === 'object' && again !== null && 'id' in again)
      again.id = `n${random.below(1e6)}`;
    list.push(again);
  },
  (random, _place, places) =>
    void listOf(random, places)
      ?.reverse()
      .splice(random.below(9) + 1, 1),
  (_random, place) => {
    if (
      [
        'note',
        'source',
        'sheet',
        'conditions',
        'instruments',
        'gapChecks',
        'coupons',
        'variants',
        'sizes',
        'fatigue',
        'fracture',
        'knockdowns',
        'limits',
      ].includes(String(place.key))
    )
      remove(place);
  },
  (_random, place) => {
    if (typeof at(place) === 'number') put(place.parent, place.key, raw('-0'));
  },
  (random, place) => {
    if (typeof at(place) === 'number') put(place.parent, place.key, raw(random.pick(lostNumbers)));
  },
];

const harsh: readonly Change[] = [
  (_random, place) => remove(place),
  (random, { parent, key }) =>
    put(parent, random.pick([`${key}2`, ...strangeKeys]), structuredClone(parent[key])),
  (random, place) => {
    const value = at(place);
    const { key } = place;
    remove(place);
    const other = random.pick([
      String(key).toUpperCase(),
      `${key} `,
      `_${key}`,
      String(key).slice(1),
      ...strangeKeys,
    ]);
    put(place.parent, other, value);
  },
  (random, place) => put(place.parent, place.key, random.pick(kinds(at(place)))),
  (random, place) => put(place.parent, place.key, random.pick(numbers)),
  (random, place) => put(place.parent, place.key, raw(random.pick(rawNumbers))),
  (random, place) => put(place.parent, place.key, random.pick(texts)),
  (random, place) =>
    put(place.parent, place.key, 'x'.repeat(random.pick([100, 121, 401, 4001, 20_000]))),
  (random, place) =>
    put(
      place.parent,
      place.key,
      nested(random.pick([3, 30, 200]), random.chance(0.5) ? 1 : at(place)),
    ),
  // What only looks like a prototype, and what would set one.
  (random, { parent }) =>
    put(parent, random.pick(['__proto__', 'constructor']), {
      polluted: true,
      prototype: { polluted: true },
    }),
  (random, _place, places) => {
    const list = listOf(random, places);
    const few = JSON.stringify(list ?? '').length < 2000 ? [1, 2, 50, 300] : [1, 2, 21];
    for (let n = random.pick(few); list && n > 0; n--) list.push(list[0]);
  },
  (random, place, places) => put(place.parent, place.key, structuredClone(at(random.pick(places)))),
  // A reference to what is not there, or to something else that is.
  (random, _place, places) => {
    const named = places.filter(({ key }) =>
      [
        'adherend',
        'adhesive',
        'case',
        'of',
        'ply',
        'id',
        'specimen',
        'instrument',
        'joint',
      ].includes(String(key)),
    );
    if (named.length === 0) return;
    const { parent, key } = random.pick(named);
    put(parent, key, random.chance(0.5) ? 'gone' : structuredClone(at(random.pick(named))));
  },
];

/** Few mistakes at a time: the first would hide the others. */
export function changeDocument(document: unknown, random: Random): void {
  for (let n = 1 + random.below(3); n > 0; n--) {
    const places = placesOf(document);
    if (places.length === 0) return;
    const change = random.pick(random.chance(0.5) ? mild : harsh);
    change(random, random.pick(places), places);
  }
}
