/** Changes to the text of a file and to its bytes, which know nothing of what it says. */

import { RAW } from './document.ts';
import type { Random } from './random.ts';

const BOM = '\ufeff';

export function textOf(document: unknown, random: Random): string {
  const close = JSON.stringify(document);
  // Written out, what is deep or long would be all spaces.
  const text =
    close.length < 50_000 ? JSON.stringify(document, null, random.pick([0, 2, 2, '\t'])) : close;
  return text.replaceAll(new RegExp(`"${RAW}(.*?)${RAW}"`, 'g'), '$1');
}

type Change = (text: string, random: Random) => string;

const inserted = (text: string, place: number, what: string, instead = 0): string =>
  text.slice(0, place) + what + text.slice(place + instead);

/** Somewhere just before a key of an object. */
function beforeKey(text: string, random: Random): RegExpExecArray | null {
  const key = /"([^"\\]*)"\s*:/g;
  key.lastIndex = random.below(text.length);
  return key.exec(text);
}

const changes: readonly Change[] = [
  // One key twice: before or after its own, with the same value or another, in other letters.
  (text, random) => {
    const found = beforeKey(text, random);
    if (!found) return text;
    const [whole, key = ''] = found;
    const written = random.pick([
      whole,
      whole,
      `"${[...key].map((c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`).join('')}":`,
    ]);
    return inserted(
      text,
      found.index,
      `${written} ${random.pick(['1', '"x"', 'null', '{}', '[]', '[[{"a":1}]]'])}, `,
    );
  },
  (text, random) => {
    const found = beforeKey(text, random);
    const odd = random.pick([
      '"__proto__": {"polluted": true}, ',
      '"constructor": {"prototype": {"polluted": 1}}, ',
      '"": 0, ',
    ]);
    return found ? inserted(text, found.index, odd) : text;
  },
  (text, random) => text.slice(0, random.below(text.length)),
  (text, random) => text.slice(random.below(20)),
  (text, random) => inserted(text, random.below(text.length), '', 1 + random.below(40)),
  (text, random) => {
    const from = random.below(text.length);
    return inserted(text, random.below(text.length), text.slice(from, from + random.below(60)));
  },
  (text, random) =>
    inserted(
      text,
      random.below(text.length),
      random.pick([
        '"',
        '{',
        '}',
        '[',
        ']',
        ',',
        ':',
        '\\',
        '0',
        '-',
        '.',
        'e',
        '\u0000',
        '\n',
        '\u00a0',
        '#',
        '//',
        BOM,
      ]),
      random.below(2),
    ),
  (text, random) => text.replace(/,/, random.pick([',,', ';', ' ', ',}', ', // a remark\n'])),
  (text) => text.replaceAll('"', "'"),
  (text) => text.replaceAll('\n', '\r\n'),
  (text, random) => text + random.pick(['\n', ' ', '\u0000', '{}', ',', text, '\u001a']),
  (text, random) => random.pick([' ', '\n', '\u0000', BOM, `${BOM}${BOM}`, 'x', '#!']) + text,
  (_text, random) =>
    random.pick(['', ' ', '{}', '[]', 'null', '0', '"x"', '{"format":"lapwright-project"}', BOM]),
  (text, random) => {
    const open = random.pick(['[', '{"a":']);
    const depth = random.pick([10, 1000, 1000, 20_000]);
    const close = random.chance(0.5) ? (open === '[' ? ']' : '}').repeat(depth) : '';
    return text.replace('{', `{"deep": ${open.repeat(depth)}1${close}, `);
  },
  (text, random) => text.replace(/-?\d+(\.\d+)?/, '9'.repeat(random.pick([20, 400, 5000]))),
];

type Encode = (text: string, random: Random) => Buffer;

const swapped = (bytes: Buffer): Buffer => Buffer.from(bytes).swap16();
const between = (text: string, random: Random, bytes: readonly number[]): Buffer => {
  const whole = Buffer.from(text);
  const place = random.below(whole.length + 1);
  return Buffer.concat([whole.subarray(0, place), Buffer.from(bytes), whole.subarray(place)]);
};

const encodings: readonly Encode[] = [
  (text) => Buffer.from(BOM + text),
  (text) => Buffer.from(BOM + text, 'utf16le'),
  (text) => swapped(Buffer.from(BOM + text, 'utf16le')),
  (text) => Buffer.from(text, 'utf16le'),
  (text) => swapped(Buffer.from(text, 'utf16le')),
  (text) => Buffer.from(text.replace(/[a-z]/, 'é'), 'latin1'),
  (text, random) =>
    between(
      text,
      random,
      random.pick([
        [0xff],
        [0xc0, 0x80],
        [0xe2, 0x82],
        [0xed, 0xa0, 0x80],
        [0xf5, 0x80, 0x80, 0x80],
        [0x80],
        [0x00],
      ]),
    ),
  (text, random) => {
    const bytes = Buffer.from(text);
    for (let n = 1 + random.below(3); n > 0 && bytes.length > 0; n--) {
      const place = random.below(bytes.length);
      bytes[place] = bytes[place]! ^ (1 << random.below(8));
    }
    return bytes;
  },
  (text, random) => Buffer.from(text).subarray(0, random.below(text.length + 1)),
  () => Buffer.from([0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3]),
];

export function bytesOf(text: string, random: Random): Buffer {
  const changed = random.chance(0.4) ? random.pick(changes)(text, random) : text;
  return random.chance(0.2) ? random.pick(encodings)(changed, random) : Buffer.from(changed);
}
