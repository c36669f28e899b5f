import { evaluate } from 'mathjs/number';
import { describe, expect, it } from 'vitest';
import { parseFormula, type Term } from '../../src/renderer/formula/parse.ts';
import { ratiosOf } from '../../src/renderer/formula/ratios.ts';
import { say } from '../../src/renderer/formula/say.ts';
import { symbolParts } from '../../src/renderer/formula/symbols.ts';

/** With every bracket written out: shows what was read as belonging together. */
function written(term: Term | null): string {
  if (!term) return 'nothing';
  switch (term.kind) {
    case 'number':
    case 'name':
      return term.text;
    case 'minus':
      return `(-${written(term.of)})`;
    case 'group':
      return written(term.of);
    case 'call':
      return `${term.name}(${term.args.map(written).join(',')})`;
    case 'binary':
      return `(${written(term.left)}${term.operator}${written(term.right)})`;
    case 'relation':
      return `${written(term.left)}${term.relation}${written(term.right)}`;
  }
}
const read = (text: string): string => written(parseFormula(text));
const words = (text: string): string => {
  const term = parseFormula(text);
  return term ? say(term) : 'nothing';
};

describe('a formula is read', () => {
  it.each([
    ['tau = F / (2 pi R)', 'tau=(F/((2*pi)*R))'],
    ['a - b - c', '((a-b)-c)'],
    ['a / b / c', '((a/b)/c)'],
    ['-x^2', '(-(x^2))'],
    ['2^-3', '(2^(-3))'],
    ['2^3^2', '(2^(3^2))'],
    ['a² + b³', '((a^2)+(b^3))'],
    ['max(a, b) ≤ 1.5e-3', 'max(a,b)≤1.5e-3'],
    ['p <= q', 'p≤q'],
    ['2 × 3 · 4 − 1', '(((2*3)*4)-1)'],
    ['√(x)', 'sqrt(x)'],
    ['τ_max = 3', 'τ_max=3'],
    ['+4', '4'],
  ])('%s', (text, tree) => {
    expect(read(text)).toBe(tree);
  });

  it.each([
    '2 + 3 * 4 - 5',
    '12 / 4 / 3',
    '2^3^2',
    '-2^2 + 7',
    '2 * (3 + 4)^2 / 7',
    'sqrt(1 + 3) * 2^-1',
    'max(1, 5) - min(2, 3)',
    '24 / 2 (3)',
  ])('as a calculator reads it: %s', (text) => {
    expect(evaluate(read(text))).toBeCloseTo(Number(evaluate(text)), 12);
  });

  it.each(['', 'a +', '(a', 'a b)', 'x ? 1 : 2', 'f()', 'a = ', '3 $ 4', 'f(a,)'])(
    'or not at all: %s',
    (text) => {
      expect(parseFormula(text)).toBeNull();
    },
  );
});

describe('products and quotients', () => {
  const set = (text: string): string =>
    ratiosOf(parseFormula(text)!)
      .map(({ over, under }) => [over, under].map((list) => list.map(written).join(' ')).join('|'))
      .join(' ; ');
  it.each([
    ['a b / c * d / e', 'a b|c ; d|e'],
    ['a / b / c', 'a|b c'],
    ['a * (b + c)', 'a (b+c)|'],
    ['a / 2 b', 'a|(2*b)'],
    ['a * b / c * d', 'a b|c ; d|'],
    ['x', 'x|'],
  ])('%s', (text, ratios) => {
    expect(set(text)).toBe(ratios);
  });

  it.each(['12 * 3 / 4 * 5 / 6', '7 / 2 / 5 * 3', '2 * 3 * 4 / 5'])(
    'keep their value: %s',
    (text) => {
      const product = (list: Term[]): number =>
        list.reduce((sum, term) => sum * Number(evaluate(written(term))), 1);
      const value = ratiosOf(parseFormula(text)!).reduce(
        (sum, { over, under }) => (sum * product(over)) / product(under),
        1,
      );
      expect(value).toBeCloseTo(Number(evaluate(text)), 12);
    },
  );
});

describe('symbols', () => {
  it.each([
    ['tau_max', 'τ', 'max', true],
    ['sigma', 'σ', '', true],
    ['E1', 'E', '1', true],
    ['G13', 'G', '13', true],
    ['alpha3', 'α', '3', true],
    ['DeltaT', 'ΔT', '', true],
    ['tau_x_theta', 'τ', 'x,θ', true],
    ['reached', 'reached', '', false],
  ])('%s', (name, base, sub, isLetter) => {
    expect(symbolParts(name)).toEqual({ base, sub, isLetter });
  });
});

describe('a formula is said', () => {
  it.each([
    ['tau_max = F / (2 pi R)', 'τ max equals F over (2 times π times R)'],
    ['sqrt(1 + beta^2)', 'square root of (1 plus β squared)'],
    ['exp(-x)', 'e to the power of (minus x)'],
    ['a^3 < 2e-6', 'a to the power of 3 is less than 2 times 10 to the power of minus 6'],
    ['min(a, b)', 'smallest of (a, b)'],
    ['a b / c * (d + 1) / e', '(a times b) over c times (d plus 1) over e'],
    ['(a / b)^2', '(a over b) squared'],
  ])('%s', (text, said) => {
    expect(words(text)).toBe(said);
  });
});
