import { describe, expect, it } from 'vitest';
import { beside, printable, significant } from '../../src/cli/figures.ts';
import { paragraph, table, wrap } from '../../src/cli/layout.ts';
import { didYouMean, nearest } from '../../src/cli/nearest.ts';

describe('significant', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-1.1e-14, '0'],
    [0.0167, '0.0167'],
    [0.09996, '0.100'],
    [0.12000000000000001, '0.120'],
    [1, '1.00'],
    [-1, '−1.00'],
    [9.996, '10.0'],
    [12.345, '12.3'],
    [999.6, '1000'],
    [-1234.5, '−1230'],
    [123456, '123000'],
  ])('writes %d as %s', (value, text) => {
    expect(significant(value)).toBe(text);
  });
});

describe('beside', () => {
  it.each([
    [-0.00346, 5000, '0'],
    [0.00346, 5000, '0'],
    [-0, 5000, '0'],
    [-0.00346, 2, '−0.00346'],
    [0.06, 5000, '0.0600'],
    [-5000, 5000, '−5000'],
    [0, 0, '0'],
    [-0.25, 0, '−0.250'],
  ])('writes %d beside %d as %s', (value, scale, text) => {
    expect(beside(value, scale)).toBe(text);
  });
});

describe('printable', () => {
  it('replaces what a terminal would obey, however deep, and leaves the rest', () => {
    expect(printable({ a: ['x\u001B[31m\n', 'µ−°▲'], b: 1, c: null })).toEqual({
      a: ['x\uFFFD[31m\uFFFD', 'µ−°▲'],
      b: 1,
      c: null,
    });
  });
});

describe('nearest', () => {
  const known = [{ id: 'boom-root', name: 'Boom root' }, { id: 'boom-tip' }, { id: 'leg' }];
  it.each([
    ['boom-rot', 'boom-root'],
    ['Boom Root', 'boom-root'],
    ['BOOM-TIP', 'boom-tip'],
    ['lge', 'leg'],
    ['gel', null],
    ['eg', 'leg'],
    ['boom', 'boom-root'],
    ['wing', null],
    ['', null],
    ['x'.repeat(1000), null],
  ])('takes %s for %s', (typed, id) => {
    expect(nearest(typed, known)).toBe(id);
  });

  it('makes a question, or nothing', () => {
    expect(didYouMean('lég', known)).toBe(' Did you mean "leg"?');
    expect(didYouMean('wing', known)).toBe('');
  });
});

describe('layout', () => {
  it('breaks between words, and a word only when it alone is too wide', () => {
    expect(wrap('one two three', 8)).toEqual(['one two', 'three']);
    expect(wrap('abcdefghij k', 4)).toEqual(['abcd', 'efgh', 'ij k']);
    expect(wrap('', 4)).toEqual(['']);
  });

  it('keeps later lines of a paragraph under its text', () => {
    expect(paragraph('one two three', 9, '! ')).toBe('! one two\n  three');
  });

  it('narrows only the columns that may wrap, the widest first', () => {
    const columns = [
      { title: 'A' },
      { title: 'B', least: 4 },
      { title: 'C', align: 'right' as const },
    ];
    const row = [{ text: 'never cut' }, { text: 'some words here' }, { text: '1' }];
    expect(table(columns, [row], 22)).toBe(
      [
        'A          B         C',
        '─────────  ────────  ─',
        'never cut  some      1',
        '           words',
        '           here',
      ].join('\n'),
    );
  });

  it('colours a cell with its padding, so that columns still line up', () => {
    const paint = (text: string): string => `<${text}>`;
    expect(
      table([{ title: 'State' }, { title: 'X' }], [[{ text: 'low', paint }, { text: '1' }]], 80),
    ).toBe(['State  X', '─────  ─', '<low  >  1'].join('\n'));
  });
});
