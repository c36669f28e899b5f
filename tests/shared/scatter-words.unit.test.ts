import { describe, expect, it } from 'vitest';
import type { ScatterReport } from '../../src/shared/reports-scatter.ts';
import {
  belowSentence,
  changeText,
  difference,
  grouped,
  percent,
  percentileText,
  toleranceText,
} from '../../src/shared/scatter-words.ts';

const report = (below: ScatterReport['below'], check: ScatterReport['check'] = null) =>
  ({ below, samples: 100_000, confidence: 0.95, check }) as ScatterReport;

describe('words of scatter', () => {
  it('write shares with two figures that differ from none and from all', () => {
    expect([0, 1, 0.00037, 0.5, 0.0123, 0.9935, 0.99996, 2.6e-7].map(percent)).toEqual([
      '0 %',
      '100 %',
      '0.037 %',
      '50 %',
      '1.2 %',
      '99.35 %',
      '99.9960 %',
      '0.000026 %',
    ]);
  });

  it('say how many fall below zero, and how sure that is', () => {
    const seen = { count: 37, share: 0.00037, low: 0.00026052710608, high: 0.00050996056 };
    expect(belowSentence(report(seen)).replaceAll('\u202F', ' ')).toBe(
      '37 of 100 000 samples fall below zero: 0.037 %, between 0.026 % and 0.051 % with 95 % confidence.',
    );
    const one = { count: 1, share: 1e-5, low: 2.5e-7, high: 5.6e-5 };
    expect(belowSentence(report(one))).toMatch(/^1 of .* falls below zero/);
    const none = { count: 0, share: 0, low: 0, high: 3.69e-5 };
    expect(belowSentence(report(none)).replaceAll('\u202F', ' ')).toBe(
      'None of 100 000 samples falls below zero: the share is below 0.0037 % with 95 % confidence.',
    );
  });

  it('say about where not every sample near zero was computed', () => {
    const check = { inBand: 900, recomputed: 600 } as ScatterReport['check'];
    const some = { count: 2000, share: 0.02, low: 0.018, high: 0.022 };
    expect(belowSentence(report(some, check))).toMatch(/^About 2\u202F000 of/);
  });

  it('write counts, differences, changes and tolerances', () => {
    expect(grouped(1_234_567).replaceAll('\u202F', ' ')).toBe('1 234 567');
    expect([0, 0.00012345, -0.5, 12].map(difference)).toEqual(['0', '0.00012', '−0.50', '12']);
    expect(changeText(-0.12, '1')).toBe('−12 %');
    expect(changeText(0.07, '1')).toBe('+7 %');
    expect(changeText(0, 'mm')).toBe('0 mm');
    const offset = { distribution: 'uniform', spread: 0.015, middle: -0.015, unit: 'mm' } as const;
    expect(toleranceText({ ...offset, input: 'offset', label: '', origin: 'joint' })).toBe(
      'uniform, −0.03 mm … 0 mm',
    );
    expect(percentileText({ share: 0.01, value: -0.02, low: -0.03, high: 0.01 })).toBe(
      '1st percentile −0.020 (−0.030 … +0.010)',
    );
  });
});
