/** Random expressions against their value worked out apart; random and hostile text. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEntry } from '../../src/shared/expression-entry.ts';
import { checkedText } from '../../src/shared/expression-text.ts';
import { OperatorNode, ParenthesisNode, treeOf } from '../../src/shared/expression-tree.ts';
import { targetOf } from '../../src/shared/expression-units.ts';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';

/** Text, what it is worth in mm by plain doubles, and how large what was added up to it is. */
interface Part {
  readonly text: string;
  readonly value: number;
  readonly size: number;
}

const inMillimetres = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8, um: 0.001 } as const;
const number = fc.integer({ min: 1, max: 9999 }).map((n) => n / 100);

const joined = (signs: readonly string[]) => (first: Part, rest: readonly [string, Part][]) =>
  rest.reduce(
    (sum, [sign, part]): Part => ({
      text: `${sum.text} ${sign} ${part.text}`,
      value: {
        '+': sum.value + part.value,
        '-': sum.value - part.value,
        '*': sum.value * part.value,
        '/': sum.value / part.value,
      }[sign]!,
      size: signs.includes('*')
        ? sign === '*'
          ? sum.size * part.size
          : sum.size / Math.abs(part.value)
        : sum.size + part.size,
    }),
    first,
  );

const chain = (
  first: fc.Arbitrary<Part>,
  signs: readonly string[],
  next: fc.Arbitrary<Part>,
): fc.Arbitrary<Part> =>
  fc
    .tuple(first, fc.array(fc.tuple(fc.constantFrom(...signs), next), { maxLength: 2 }))
    .map(([one, rest]) => joined(signs)(one, rest));

const bracketed = (part: fc.Arbitrary<Part>): fc.Arbitrary<Part> =>
  part.map(({ text, ...rest }) => ({ text: `(${text})`, ...rest }));

const { expression } = fc.letrec<
  Record<'factor' | 'product' | 'length' | 'term' | 'expression', Part>
>((tie) => ({
  // Above zero, so that whatever is divided by it is far from infinite.
  factor: fc.oneof(
    { depthSize: 'small' },
    number.map((n) => ({ text: `${n}`, value: n, size: n })),
    fc.tuple(number, fc.integer({ min: -3, max: 3 })).map(([n, power]) => ({
      text: `${n}^${power}`,
      value: n ** power,
      size: n ** power,
    })),
    bracketed(chain(tie('product'), ['+'], tie('product'))),
  ),
  product: chain(tie('factor'), ['*', '/'], tie('factor')),
  length: fc.oneof(
    { depthSize: 'small' },
    fc.tuple(number, fc.constantFrom(...Object.entries(inMillimetres))).map(([n, [unit, mm]]) => ({
      text: `${n} ${unit}`,
      value: n * mm,
      size: n * mm,
    })),
    bracketed(tie('expression')),
  ),
  term: fc.oneof(
    chain(tie('length'), ['*', '/'], tie('factor')),
    fc
      .tuple(tie('product'), tie('length'))
      .map(([by, part]) => joined(['*', '/'])(by, [['*', part]])),
    // No unit: mm, for that is what the field shows.
    tie('product'),
  ),
  expression: chain(tie('term'), ['+', '-'], tie('term')),
}));

describe('random expressions', () => {
  it('are worth what they are worth, in the order of arithmetic', () => {
    fc.assert(
      fc.property(
        expression.filter(({ text }) => text.length <= 80),
        ({ text, value, size }) => {
          const entry = readEntry('overlap', text);
          expect(entry, text).toMatchObject({ ok: true });
          if (!entry.ok) return;
          expect(Math.abs(entry.value - value), `${text} is ${value}`).toBeLessThanOrEqual(
            1e-12 * size,
          );
        },
      ),
      { numRuns: 3000 },
    );
  });
});

const fields = Object.keys(quantities) as QuantityName[];
/** Never throws; gives a finite number or says why not. */
const check = (name: QuantityName, text: string): void => {
  const entry = readEntry(name, text);
  if (entry.ok) expect(Number.isFinite(entry.value), text).toBe(true);
  else expect(entry.message.length, text).toBeGreaterThan(5);
};

describe('whatever is typed', () => {
  const pieces = [
    '1',
    '2.5',
    '.',
    '9e99',
    '1e-300',
    '0',
    'mm',
    'in',
    ' in ',
    'lbf',
    'degF',
    'K',
    '%',
    '+',
    '-',
    '*',
    '/',
    '^',
    '(',
    ')',
    ' ',
    ',',
    ';',
    '\n',
    '=',
    '"',
    "'",
    '[',
    ']',
    '{',
    '}',
    ':',
    '?',
    '!',
    'to',
    'mod',
    'end',
    'x',
    'e',
    'i',
    '#',
    '.^',
    '?.',
    '_',
    '°',
    '²',
    'constructor',
  ];

  it('never throws and never gives what is no number, in 20 000 texts', () => {
    let read = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...fields),
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 90 }),
          fc.string({ maxLength: 90 }),
          fc.array(fc.constantFrom(...pieces), { maxLength: 30 }).map((list) => list.join('')),
          fc
            .array(fc.constantFrom(...pieces.slice(0, 21)), { maxLength: 12 })
            .map((list) => list.join('')),
        ),
        (name, text) => {
          check(name, text);
          if (readEntry(name, text).ok) read += 1;
        },
      ),
      { numRuns: 20_000 },
    );
    // Not all of it was refused at the door.
    expect(read).toBeGreaterThan(200);
  });

  const hostile = [
    'constructor',
    '__proto__',
    'toString 1',
    '1 constructor',
    '2 __proto__',
    '2 hasOwnProperty',
    'import("fs")',
    'import({a: 1})',
    'a=1',
    'f(x)=x',
    'cos(1)',
    'sqrt(4) mm',
    '[1,2]',
    '[1, 2; 3, 4] mm',
    '"x" 1',
    '"1"',
    '1; 2',
    '1\n2',
    '1 mm to in',
    '1 ? 2 : 3',
    '1 == 1',
    '3!',
    '5 mm.constructor',
    '5 mm.x',
    '(5).constructor',
    '5 mm[1]',
    'mm(5)',
    '{a: 1}',
    '1:5',
    '0x10',
    '0b11',
    '1 # 2',
    '5 mod 3',
    "3'",
    '3 .* 2',
    '2 .^ 2',
    '1 | 2',
    '~5',
    'not 5',
    '1 and 2',
    '1 << 2',
    '5 i',
    '5 e',
    '1 NaN',
    '1 Infinity',
    '9^9^9^9',
    '9^9^9',
    '9e99^9^9',
    '((((9e99^9)^9)^9)^9)^9',
    '(((1e-99^9)^9)^9)^9',
    '(((9^9)^9)^9)^9 mm',
    `${'('.repeat(40)}1${')'.repeat(39)}`,
    `${'('.repeat(13)}1${')'.repeat(13)}`,
    '('.repeat(5000),
    '-'.repeat(79) + 1,
    `1${'+1'.repeat(1000)}`,
    `${'9'.repeat(5000)} mm`,
    `1${' '.repeat(100_000)}mm`,
  ];
  it.each(hostile.map((text) => [text.slice(0, 50), text] as const))(
    'is refused: %s',
    (_name, text) => {
      expect(readEntry('overlap', text).ok).toBe(false);
      for (const name of fields) check(name, text);
    },
  );

  it('is parsed in steps that grow as the text does', () => {
    /** Like text to the parser, which counts how often it looks. */
    const steps = (text: string): number => {
      let count = 0;
      const looked = <T>(part: T): T => {
        count += 1;
        return part;
      };
      const look = {
        charAt: (i: number) => looked(text.charAt(i)),
        substr: (i: number, length: number) => looked(text.slice(i, i + length)),
      };
      treeOf(look as unknown as string);
      return count;
    };
    const full = (part: string, end = ''): string =>
      part.repeat(Math.floor((80 - end.length) / part.length)) + end;
    const hard = [
      full('1/'),
      full('1/1 in + '),
      full('1/1*'),
      full('-'),
      full('1^'),
      full('1^-'),
      full('1/(1+'),
      `${'(1/'.repeat(12)}1${')'.repeat(12)}`,
      full('1/1/1 in*', '1'),
    ];
    for (const text of hard) {
      expect(steps(text), text).toBeGreaterThan(text.length / 2);
      expect(steps(text), text).toBeLessThan(text.length * 40);
    }
  });

  it('has no node but numbers, names, operators and brackets, as many as were written', () => {
    const count = (node: unknown): number =>
      node instanceof OperatorNode
        ? 1 + node.args.reduce((sum: number, arg) => sum + count(arg), 0)
        : node instanceof ParenthesisNode
          ? 1 + count(node.content)
          : 1;
    fc.assert(
      fc.property(
        expression.filter(({ text }) => text.length <= 80),
        ({ text }) => {
          const tree = treeOf(checkedText(text, targetOf('overlap')));
          expect(tree).not.toBeNull();
          expect(count(tree)).toBeLessThanOrEqual(text.length);
        },
      ),
    );
    // Past the door as well: the parser itself makes nothing else.
    for (const text of [
      'f(x)',
      'f(x)=x',
      'a=1',
      '[1,2]',
      '"x"',
      "'x'",
      '"5"',
      'true',
      'null',
      'a.b',
      'a[1]',
      '{a:1}',
      '1:3',
      '1;2',
      '1==2',
      '1?2:3',
      '(1)(2).b',
    ]) {
      expect(treeOf(text), text).toBeNull();
    }
  });
});
