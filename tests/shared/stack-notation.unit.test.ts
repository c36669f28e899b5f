/** Ply stacks as people write them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_PLIES, readStack, writeStack } from '../../src/shared/stack-notation.ts';

function anglesOf(text: string): number[] {
  const reading = readStack(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.message} (at ${reading.at})`);
  return reading.angles;
}

describe('readStack', () => {
  it.each<[string, number[]]>([
    ['[0]', [0]],
    ['[0/45/-45/90]', [0, 45, -45, 90]],
    ['[0/45/-45/90]T', [0, 45, -45, 90]],
    ['[0/90]t', [0, 90]],
    ['[0/90]s', [0, 90, 90, 0]],
    ['[0/90]S', [0, 90, 90, 0]],
    ['[0/90]_s', [0, 90, 90, 0]],
    ['[0/90]ₛ', [0, 90, 90, 0]],
    ['[0/90]2', [0, 90, 0, 90]],
    ['[0/90]2s', [0, 90, 0, 90, 90, 0, 90, 0]],
    ['[0/90]_2s', [0, 90, 0, 90, 90, 0, 90, 0]],
    ['[0/90]₂ₛ', [0, 90, 0, 90, 90, 0, 90, 0]],
    ['[0/±45/90]s', [0, 45, -45, 90, 90, -45, 45, 0]],
    ['[+-45]', [45, -45]],
    ['[-+45]', [-45, 45]],
    ['[+/-45/0]', [45, -45, 0]],
    ['[-/+45]', [-45, 45]],
    ['[∓30/0]', [-30, 30, 0]],
    ['[± 45]', [45, -45]],
    ['[0_2/90]', [0, 0, 90]],
    ['[0₂/90₃]', [0, 0, 90, 90, 90]],
    ['[-45_2]', [-45, -45]],
    ['[-45₁₂]', new Array(12).fill(-45)],
    ['[(0/90)_2/45]', [0, 90, 0, 90, 45]],
    ['[(0/90)2/45]', [0, 90, 0, 90, 45]],
    ['[(±45)2]s', [45, -45, 45, -45, -45, 45, -45, 45]],
    ['[0/(±45)s]', [0, 45, -45, -45, 45]],
    ['[((0/90)2/45)2]', [0, 90, 0, 90, 45, 0, 90, 0, 90, 45]],
    ['[(0 90) 45]', [0, 90, 45]],
    ['[0, 45, -45]', [0, 45, -45]],
    ['[0,45,-45]', [0, 45, -45]],
    ['[0 45 -45]', [0, 45, -45]],
    ['  [ 0 / +45 / −45 ]s ', [0, 45, -45, -45, 45, 0]],
    ['[0°/±45°/90°]', [0, 45, -45, 90]],
    ['[22.5/-.5/7.]', [22.5, -0.5, 7]],
    ['[-90/135/-135/180/-180/100.1]', [90, -45, 45, 0, 0, -79.9]],
    ['[±90/±0]', [90, 90, 0, 0]],
    ['[-0]', [0]],
  ])('reads %s', (text, angles) => {
    expect(anglesOf(text)).toEqual(angles);
  });

  it.each<[string, number, RegExp]>([
    ['', 0, /square brackets/],
    ['0/90', 0, /square brackets/],
    ['[]', 1, /no ply/],
    ['[0/()]', 4, /no ply/],
    ['[0/90', 0, /not closed: “\]”/],
    ['[0/(45/90]', 9, /separator or “\)”/],
    ['[0/(45/90', 3, /not closed: “\)”/],
    ['[0//90]', 3, /angle is expected, not “\/”/],
    ['[0/]', 3, /angle is expected, not “\]”/],
    ['[0/', 0, /not closed/],
    ['[', 1, /ends where an angle/],
    ['[0/±', 4, /ends where an angle/],
    ['[0/x]', 3, /not “x”/],
    ['[0x]', 2, /not “x”/],
    ['[0/- 45]', 3, /not “-”/],
    ['[0/90]s2', 7, /number comes before/],
    ['[0/90]ss', 7, /Nothing can follow/],
    ['[0/90]sT', 7, /Nothing can follow/],
    ['[0/90]]', 6, /Nothing can follow/],
    ['[22,5/0]', 5, /one way/],
    ['[0/22,5]', 5, /one way/],
    ['[0/45 90]', 5, /one way/],
    ['[0/181]', 3, /between -180° and 180°/],
    ['[-180.5]', 1, /between/],
    ['[0.1234567]', 1, /decimals/],
    ['[0_0/90]', 2, /at least 1/],
    ['[0/90]0', 6, /at least 1/],
    ['[±45_2]', 1, /two ways/],
    ['[±-45]', 2, /no sign/],
    ['[±+45]', 2, /no sign/],
    ['[0_401]', 2, /at most 400/],
    ['[0/90]201', 6, /at most 400/],
    ['[0_201]s', 7, /at most 400/],
    ['[0_200/90_201]', 7, /at most 400/],
    ['[(((0)99)99)99]', 9, /at most 400/],
    [`[0]${'9'.repeat(400)}`, 3, /at most 400/],
  ])('refuses %s', (text, at, message) => {
    const reading = readStack(text);
    expect(reading).toMatchObject({ ok: false, at });
    expect(reading.ok ? '' : reading.message).toMatch(message);
  });

  it('takes the most plies it names', () => {
    expect(anglesOf('[0/90]100s')).toHaveLength(MOST_PLIES);
    expect(anglesOf('[0_400]')).toHaveLength(MOST_PLIES);
  });

  it('gives no ply an angle of minus zero', () => {
    expect(anglesOf('[±0/-0/180/-180]').every((angle) => Object.is(angle, 0))).toBe(true);
  });

  it('never throws, and points into the text', () => {
    const piece = fc.constantFrom(...'[]()/,_ sT±∓+-−°.₂ₛ0459'.split(''), '45', '90');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
        const text = pieces.join('');
        const reading = readStack(text);
        if (reading.ok) {
          expect(anglesOf(reading.canonical)).toEqual(reading.angles);
        } else {
          expect(reading.at).toBeGreaterThanOrEqual(0);
          expect(reading.at).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('writeStack', () => {
  it.each<[string, string]>([
    ['[0]', '[0]'],
    ['[0/0]', '[0]2'],
    ['[0/0/0/0/0/0/0/0]', '[0]8'],
    ['[0/45/-45/90/90/-45/45/0]', '[0/±45/90]s'],
    ['[0/-45/45/90]', '[0/∓45/90]'],
    ['[0/90/0/90/90/0/90/0]', '[0/90]2s'],
    ['[0/90/0]', '[0/90/0]'],
    ['[0/90/0/90/0/90/45]', '[(0/90)3/45]'],
    ['[0/45/-45/45/-45]', '[0/(±45)2]'],
    ['[45/-45/45/-45]', '[±45]2'],
    ['[45/-45/-45/45]', '[±45]s'],
    ['[0/0/0/22.5/-22.5]', '[0_3/±22.5]'],
    ['[45/45/-45/-45]', '[45_2/-45_2]'],
    ['[30/0/-30]', '[30/0/-30]'],
    ['[0/90/90/0]3', '[0/90_2/0]3'],
  ])('writes %s as %s', (text, shortest) => {
    const reading = readStack(text);
    expect(reading.ok && reading.canonical).toBe(shortest);
    expect(anglesOf(shortest)).toEqual(anglesOf(text));
  });

  it('reads back to the same angles, and is never longer than the plain list', () => {
    const angle = fc.oneof(
      fc.constantFrom(0, 45, -45, 90, 30, -30),
      fc.integer({ min: -89, max: 90 }),
      fc.integer({ min: -89_999_999, max: 90_000_000 }).map((micro) => micro / 1e6 + 0),
    );
    const block = fc.array(angle, { minLength: 1, maxLength: 6 });
    const stack = fc
      .array(
        fc.tuple(block, fc.integer({ min: 1, max: 4 }), fc.boolean()).map(([angles, n, mirror]) => {
          const repeated = Array.from({ length: n }, () => angles).flat();
          return mirror ? [...repeated, ...[...repeated].reverse()] : repeated;
        }),
        { minLength: 1, maxLength: 4 },
      )
      .map((blocks) => blocks.flat());
    fc.assert(
      fc.property(stack, (angles) => {
        const text = writeStack(angles);
        expect(anglesOf(text)).toEqual(angles);
        expect(text.length).toBeLessThanOrEqual(`[${angles.join('/')}]`.length);
        expect(writeStack(anglesOf(text))).toBe(text);
      }),
      { numRuns: 1500 },
    );
  });

  it('writes the largest stacks without delay', () => {
    const zeros = [...new Array<number>(399).fill(0), 90];
    const mixed = Array.from({ length: 400 }, (_, k) => (k % 7) * 10 + (k === 399 ? 1 : 0));
    for (const angles of [zeros, mixed]) expect(anglesOf(writeStack(angles))).toEqual(angles);
  });
});
