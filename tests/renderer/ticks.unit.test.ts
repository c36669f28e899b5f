import fc from 'fast-check';
import { expect, it } from 'vitest';
import { niceStep, tickDecimals, ticks } from '../../src/renderer/charts/ticks.ts';

it.each([
  [0, 45, 5, [0, 10, 20, 30, 40]],
  [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
  [-51, 51, 5, [-40, -20, 0, 20, 40]],
  [0, 0.3, 3, [0, 0.1, 0.2, 0.3]],
  [2, 80, 7, [10, 20, 30, 40, 50, 60, 70, 80]],
  [5, 5, 4, []],
])('from %d to %d about %d', (low, high, about, expected) => {
  expect(ticks(low, high, about)).toEqual(expected);
});

it('stays inside, evenly spaced, and near the number asked for', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
      fc.integer({ min: 2, max: 12 }),
      (low, span, about) => {
        const values = ticks(low, low + span, about);
        const step = niceStep(span, about);
        expect(values.length).toBeLessThanOrEqual(2.6 * about + 1);
        expect(values.length).toBeGreaterThanOrEqual(Math.floor(about / 1.6) - 1);
        for (const value of values) {
          expect(value).toBeGreaterThanOrEqual(low - step * 1e-6);
          expect(value).toBeLessThanOrEqual(low + span + step * 1e-6);
          expect(Math.abs(value / step - Math.round(value / step))).toBeLessThan(1e-6);
        }
      },
    ),
  );
});

it('shows as many decimals as tell the ticks apart', () => {
  expect(tickDecimals([0, 10])).toBe(0);
  expect(tickDecimals([0, 0.5])).toBe(1);
  expect(tickDecimals([0, 0.02])).toBe(2);
  expect(tickDecimals([3])).toBe(0);
});
