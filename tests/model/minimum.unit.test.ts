/** The least value of a function between two places. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findMinimum } from '../../src/model/numerics/root.ts';

const near = fc.double({ min: -0.4, max: 0.4, noNaN: true });

describe('the place of a minimum', () => {
  it.each([
    ['of a smooth function', (x: number, at: number) => 1 - Math.cos(x - at)],
    ['of one that is flat there', (x: number, at: number) => (x - at) ** 4],
    ['of a kink', (x: number, at: number) => Math.abs(x - at)],
    ['of a step', (x: number, at: number) => (x < at ? 1 + at - x : x - at)],
    ['beside where it is infinite', (x: number, at: number) => (x < at ? Infinity : x - at)],
  ])('%s is found to within the tolerance', (_what, f) => {
    fc.assert(
      fc.property(near, (at) => {
        const found = findMinimum((x) => f(x, at), -0.5, 0.5, 1e-4);
        // The fourth power is zero to rounding over more than that.
        const room = f(at + 2e-4, at) < 1e-12 && f(at - 2e-4, at) < 1e-12 ? 1e-3 : 1e-4;
        expect(Math.abs(found - at)).toBeLessThanOrEqual(room);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('is an end where the function falls towards it', () => {
    expect(findMinimum((x) => x, 0, 1, 1e-6)).toBeLessThan(1e-6);
    expect(findMinimum((x) => -x, 0, 1, 1e-6)).toBeGreaterThan(1 - 1e-6);
  });

  it('is asked for at few places where the function is smooth, and ends where it is level', () => {
    let asked = 0;
    const counted = (f: (x: number) => number) => (x: number) => {
      asked += 1;
      return f(x);
    };
    findMinimum(
      counted((x) => -Math.cos(x - 0.1)),
      -0.26,
      0.26,
      1e-4,
    );
    // Golden section takes nineteen.
    expect(asked).toBeLessThan(10);
    asked = 0;
    const level = findMinimum(
      counted(() => 1),
      -0.26,
      0.26,
      1e-4,
    );
    expect(Math.abs(level)).toBeLessThanOrEqual(0.26);
    expect(asked).toBeLessThan(40);
    asked = 0;
    findMinimum(
      counted(() => Number.NaN),
      -0.26,
      0.26,
      1e-4,
    );
    expect(asked).toBeLessThan(40);
  });
});
