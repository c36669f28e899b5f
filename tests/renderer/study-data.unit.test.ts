/** What the histogram and the tornado are drawn from. */
import { describe, expect, it } from 'vitest';
import { barScale } from '../../src/renderer/size/matters/bar-scale.ts';
import { barsOf, ticksOf } from '../../src/renderer/size/scatter/histogram-data.ts';
import type { LowestMargin, MattersBar } from '../../src/shared/reports-scatter.ts';

const at = (margin: number): LowestMargin => ({ margin, label: 'a mode', caseName: 'a case' });
const bar = (low: number, high: number): MattersBar => ({
  input: 'load',
  label: 'loads',
  low: at(low),
  high: at(high),
  from: -0.1,
  to: 0.1,
  swing: Math.abs(high - low),
});

describe('bars of the histogram', () => {
  it('have zero itself as an edge, whatever the width', () => {
    const bars = barsOf({ from: -0.30000000000000004, width: 0.05, counts: [1, 2, 3, 4, 5, 6, 7] });
    expect(bars[6]).toEqual({ from: 0, to: 0.05, count: 7 });
    expect(bars[5]!.to).toBe(0);
    expect(bars.every(({ to }, i) => i === 6 || to === bars[i + 1]!.from)).toBe(true);
  });

  it('stand over round ticks', () => {
    expect(ticksOf(-0.32, 0.18).map((tick) => Number(tick.toFixed(9)))).toEqual([
      -0.3, -0.2, -0.1, 0, 0.1,
    ]);
    expect(ticksOf(0.31, 2.4).length).toBeGreaterThan(2);
  });
});

describe('the axis of the tornado', () => {
  it('holds every end, and zero where it is not far off', () => {
    const near = barScale({ bars: [bar(0.2, 0.6)], middle: at(0.4) });
    expect(near.zero).toBe(true);
    for (const margin of [0, 0.2, 0.4, 0.6]) {
      expect(near.at(margin)).toBeGreaterThan(0);
      expect(near.at(margin)).toBeLessThan(100);
    }
    expect(near.at(0.6) - near.at(0.4)).toBeCloseTo(near.at(0.4) - near.at(0.2), 9);
    const far = barScale({ bars: [bar(2.1, 2.2)], middle: at(2.15) });
    expect(far.zero).toBe(false);
    const fails = barScale({ bars: [bar(-0.3, -0.1)], middle: at(-0.2) });
    expect(fails.zero).toBe(true);
  });

  it('is there when nothing moves', () => {
    const { at: place } = barScale({ bars: [bar(0.5, 0.5)], middle: at(0.5) });
    expect(place(0.5)).toBeCloseTo(50, 6);
  });
});
