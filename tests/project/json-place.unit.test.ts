import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonErrorAt } from '../../src/shared/json-place.ts';

describe('jsonErrorAt', () => {
  it.each([
    ['{"a": nope}', 6],
    ['{"a": 1,}', 8],
    ['{"a" 1}', 5],
    ['{a: 1}', 1],
    ['[1, 2,]', 6],
    ['[1 2]', 3],
    ['{"a": 01}', 7],
    ['{"a": .5}', 6],
    ['{"a": 1.}', 7],
    ['{"a": 1,5}', 8],
    ['{"a": NaN}', 6],
    ['{"a": -Infinity}', 6],
    ['{"a": "x\ny"}', 8],
    ['{"a": "\\x"}', 7],
    ['{"a": "\\u12g4"}', 7],
    ['{"a": [1}', 8],
    ['{"a": 1] ', 7],
    ['1 2', 2],
    ['}', 0],
    ['\u00A0{}', 0],
  ])('finds the place in %j', (text, at) => {
    expect(() => JSON.parse(text)).toThrow();
    expect(jsonErrorAt(text)).toBe(at);
  });

  it.each([
    ['{'],
    ['{"a'],
    ['{"a"'],
    ['{"a":'],
    ['{"a": 1'],
    ['{"a": 1,'],
    ['[[1, {'],
    [' '],
    [''],
  ])('finds nothing wrong before the end of %j', (text) => {
    expect(() => JSON.parse(text)).toThrow();
    expect(jsonErrorAt(text)).toBe(text.length);
  });

  it('finds nothing wrong in JSON', () => {
    fc.assert(
      fc.property(fc.json(), fc.constantFrom(undefined, 2, '\t'), (json, indent) => {
        const text = JSON.stringify(JSON.parse(json), null, indent);
        expect(jsonErrorAt(text)).toBe(text.length);
      }),
      { numRuns: 500, seed: 20263 },
    );
  });

  it('finds the one character that does not belong, or the start of the word or number it breaks', () => {
    const value = fc.jsonValue({ stringUnit: fc.constantFrom('a', 'b', ' ') });
    fc.assert(
      fc.property(value, fc.nat(), fc.constantFrom('#', 'x', '\u00A0'), (json, n, wrong) => {
        const text = JSON.stringify(json, null, 1);
        const place = n % (text.length + 1);
        // In a text, between two quotes, the character would belong.
        fc.pre(text.slice(0, place).split('"').length % 2 === 1);
        const at = jsonErrorAt(text.slice(0, place) + wrong + text.slice(place));
        expect(at).toBeLessThanOrEqual(place);
        expect(text.slice(at, place)).toMatch(/^[\w.+-]*$/);
      }),
      { numRuns: 1000, seed: 20264 },
    );
  });

  it('takes a long text in its stride', () => {
    const long = `["${'a\\n'.repeat(500_000)}", ${'1, '.repeat(300_000)}?]`;
    expect(jsonErrorAt(long)).toBe(long.length - 2);
    const deep = '['.repeat(300_000);
    expect(jsonErrorAt(deep)).toBe(deep.length);
  });
});
