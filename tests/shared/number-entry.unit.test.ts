import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEntry } from '../../src/shared/expression-entry.ts';
import { readNumber } from '../../src/shared/number-entry.ts';
import { readQuantity } from '../../src/shared/quantity-entry.ts';
import { fromDisplay } from '../../src/shared/units.ts';

const value = (text: string, shift?: number): number => {
  const entry = readNumber(text, shift);
  if (!entry.ok) throw new Error(`${text}: ${entry.message}`);
  return entry.value;
};
const message = (text: string): string => {
  const entry = readNumber(text);
  if (entry.ok) throw new Error(`${text} was read as ${entry.value}`);
  return entry.message;
};

describe('a typed number is read', () => {
  it.each([
    ['0.00125', 0.00125],
    ['1e-3', 0.001],
    ['1E+3', 1000],
    ['2.5e−1', 0.25],
    ['.5', 0.5],
    ['5.', 5],
    ['+7', 7],
    ['-3', -3],
    ['−3', -3],
    ['  12.5\u00a0', 12.5],
    ['007', 7],
    ['0', 0],
  ])('%s', (text, expected) => {
    expect(value(text)).toBe(expected);
  });

  it('has one zero', () => {
    expect(Object.is(value('-0'), 0)).toBe(true);
    expect(Object.is(value('−0.00'), 0)).toBe(true);
  });

  it('moves the decimal point without arithmetic', () => {
    expect(value('16', 3)).toBe(16000);
    expect(value('0.3', 3)).toBe(300);
    expect(value('1.1', 3)).toBe(1100);
    expect(value('8.6', -6)).toBe(8.6e-6);
  });

  it('gives back every double that JavaScript can write', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        expect(value(String(number))).toBe(number === 0 ? 0 : number);
      }),
    );
  });
});

describe('a typed number is refused', () => {
  it.each([
    ['1,5', 'write 1.5'],
    ['−1,5', 'write −1.5'],
    ['0,125', 'write 0.125'],
    ['1,500', 'write 1.500 or 1500'],
    ['1.234,5', 'write 1234.5'],
    ['1,234.5', 'write 1234.5'],
    ['1.234.567', 'write 1234567'],
    ['1,234,567', 'write 1234567'],
    ['10 000', 'write 10000'],
    ['10 000,5', 'write 10000.5'],
    ["10'000", 'write 10000'],
    ['1_000', 'write 1000'],
    ['1,5e3', 'write 1.5e3'],
  ])('%s has more than one reading', (text, advice) => {
    expect(message(text).replaceAll('-', '−')).toContain(advice);
  });

  it.each(['', '   ', '\u00a0'])('nothing at all (%j)', (text) => {
    expect(message(text)).toBe('A number is needed here.');
  });

  it.each([
    'abc',
    'Infinity',
    '-Infinity',
    'NaN',
    '0x10',
    '1e',
    'e5',
    '.',
    '-',
    '--3',
    '3-',
    '1.2.e3',
    '3 mm',
    '٣',
    '1e5.5',
    '½',
    ',',
  ])('%s is not a number', (text) => {
    expect(message(text)).toContain('is not a number');
  });

  it('what is beyond a double, either way', () => {
    expect(message('1e400')).toContain('too large');
    expect(message('1e-400')).toContain('too small');
  });
});

describe('what is much too long for a number', () => {
  const long = 1_000_000;
  it.each([
    ['digits', '7'.repeat(long)],
    ['digits after the point', `0.${'0'.repeat(long)}1`],
    ['letters', 'x'.repeat(long)],
    ['thousands', '1,'.repeat(long / 2) + 1],
    ['thousands and a point', `${'1,'.repeat(long / 2)}234.5`],
    ['sums', '1+'.repeat(long / 2) + 1],
  ])('is quoted in short: %s', (_what, text) => {
    const replies = [
      readNumber(text),
      readEntry('overlap', text),
      readQuantity(text, 'temperature'),
      fromDisplay('force', text),
    ];
    for (const reply of replies) {
      expect(reply.ok).toBe(false);
      if (!reply.ok) expect(reply.message.length).toBeLessThan(200);
    }
  });
});
