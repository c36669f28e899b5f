import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleText, plyPicture, plySentence } from '../../src/renderer/size/stack/ply-rows.ts';

const angle = fc.constantFrom(0, 45, -45, 90, 30, -30, 22.5);
const stacks = fc.array(angle, { minLength: 1, maxLength: 400 });

describe('the drawing of a stack', () => {
  it('has the outside on top and every ply at the same height, up to 24', () => {
    const { rows, toScale } = plyPicture([0, 45, -45, 90]);
    expect(toScale).toBe(true);
    expect(rows.map((row) => row.kind === 'plies' && row.angle)).toEqual([90, -45, 45, 0]);
    expect(rows.map((row) => row.kind === 'plies' && row.first)).toEqual([4, 3, 2, 1]);
    expect(new Set(rows.map(({ height }) => height)).size).toBe(1);
    expect(plyPicture(Array.from({ length: 24 }, (_, i) => i)).rows).toHaveLength(24);
  });

  it('counts runs where the stack is long, and says that it is not to scale', () => {
    const { rows, toScale } = plyPicture([...Array(30).fill(0), ...Array(10).fill(90)]);
    expect(toScale).toBe(false);
    expect(rows).toMatchObject([
      { angle: 90, count: 10, first: 31 },
      { angle: 0, count: 30, first: 1 },
    ]);
  });

  it('breaks in the middle what is long without runs', () => {
    const angles = Array.from({ length: 60 }, (_, i) => (i % 2 === 0 ? 45 : -45));
    const { rows } = plyPicture(angles);
    expect(rows).toHaveLength(21);
    expect(rows[10]).toMatchObject({ kind: 'break', left: 40 });
    expect(rows.at(-1)).toMatchObject({ first: 1, angle: 45 });
    expect(rows[0]).toMatchObject({ first: 60, angle: -45 });
  });

  it('accounts for every ply and never grows past the room', () => {
    fc.assert(
      fc.property(stacks, (angles) => {
        const { rows, height } = plyPicture(angles);
        const plies = rows.reduce((n, row) => n + (row.kind === 'break' ? row.left : row.count), 0);
        expect(plies).toBe(angles.length);
        expect(height).toBeLessThanOrEqual(24 * 13);
        const bottom = rows.at(-1)!;
        expect(bottom.top + bottom.height).toBe(height);
      }),
    );
  });
});

describe('the stack in words', () => {
  it('runs from the inside to the outside', () => {
    expect(plySentence([0, 0, -45, 90], false, ['inside', 'outside'])).toBe(
      '4 plies from inside to outside: 2 × 0°, −45°, 90°.',
    );
    expect(plySentence([0, 0], true, ['lower', 'upper'])).toBe(
      '2 plies from lower to upper: 2 × 0°. The halves mirror each other.',
    );
    expect(plySentence([90], true, ['lower', 'upper'])).toBe('One ply from lower to upper: 90°.');
    expect(angleText(-22.5)).toBe('−22.5°');
  });

  it('does not read out a stack that never ends', () => {
    fc.assert(
      fc.property(stacks, (angles) => {
        expect(plySentence(angles, false, ['inside', 'outside']).length).toBeLessThan(500);
      }),
    );
  });
});
