import { describe, expect, it } from 'vitest';
import type { JointReport, Margin } from '../../src/shared/reports.ts';
import {
  clocking,
  count,
  figure,
  governs,
  kindOf,
  signed,
  tally,
  whereText,
} from '../../src/shared/words.ts';

const margin: Margin = {
  mode: 'adhesive-strain',
  label: 'adhesive, ultimate strain',
  margin: -0.08,
  state: 'fails',
  reached: 1.38,
  asked: 1.5,
  caseId: 'landing',
  caseName: 'Hard landing',
  gapState: 'max',
  place: 'mouth',
  x: 30,
  theta: 0,
  part: 'bond',
  typical: true,
  remark: '',
};
const report = (margins: Margin[]): JointReport => ({
  jointId: 'leg',
  description: 'single lap, tube in socket',
  targetMargin: 0.25,
  margins,
  stress: null,
  flags: [],
  modelVersion: '1',
});

describe('words', () => {
  it.each([
    [0.4249, '+0.42'],
    [-0.08, '−0.08'],
    [-0.001, '−0.00'],
    [0, '+0.00'],
    [12.3, '+12.30'],
    [150, '> +99'],
  ])('a margin of %d is %s', (value, text) => {
    expect(signed(value)).toBe(text);
  });

  it.each([
    [22.71, '22.7'],
    [-4.307, '−4.31'],
    [-0.001, '0.00'],
    [123.4, '123'],
  ])('a readout of %d is %s', (value, text) => {
    expect(figure(value)).toBe(text);
  });

  it('gives clocking in whole degrees', () => {
    expect([0, -0, 359.9, 45.2, -90].map(clocking)).toEqual(['0°', '0°', '0°', '45°', '−90°']);
  });

  it('names the kind of a case', () => {
    const common = { id: 'a', name: 'A', temperature: 23, moisture: 'dry' } as const;
    expect(kindOf({ ...common, kind: 'limit' })).toBe('limit');
    expect(kindOf({ ...common, kind: 'cyclic', cycles: 1e7 })).toBe('cyclic, 1e7 cycles');
    expect(kindOf({ ...common, kind: 'cyclic', cycles: 2.5e6 })).toBe('cyclic, 2.5e6 cycles');
    expect(kindOf({ ...common, kind: 'cyclic', cycles: 12345 })).toBe('cyclic, 12345 cycles');
  });

  it('says where', () => {
    expect(whereText(margin, false)).toBe('mouth, 0° · gap max');
    expect(whereText({ ...margin, place: 'within', x: 14.94 }, true)).toBe('at 14.9 mm · gap max');
  });

  it('says what governs and how the rest stands', () => {
    expect(governs(report([]))).toContain('No load case');
    expect(governs(report([margin, { ...margin, state: 'low', margin: 0.1 }]))).toBe(
      'One of two margins is below zero. Adhesive, ultimate strain at the mouth governs, in Hard landing with the gap at its max.',
    );
    expect(governs(report([{ ...margin, state: 'low', margin: 0.1 }]))).toContain('Nothing fails');
    expect(governs(report([{ ...margin, state: 'holds', margin: 1 }]))).toContain('Every margin');
  });

  it('counts in words up to nine', () => {
    expect([0, 1, 9, 10].map(count)).toEqual(['no', 'one', 'nine', '10']);
  });

  it('tallies a project in one sentence', () => {
    expect(tally({ fails: 1, low: 1, holds: 2 }, 4)).toBe(
      'Of four joints, one fails, one is low and two hold.',
    );
    expect(tally({ fails: 2, low: 0, holds: 0 }, 3)).toBe(
      'Of three joints, two fail and one has no load case.',
    );
    expect(tally({ fails: 0, low: 0, holds: 1 }, 3, 1)).toBe(
      'Of three joints, one holds, one has no load case and one cannot be computed.',
    );
    expect(tally({ fails: 0, low: 0, holds: 1 }, 1)).toBe('Of one joint, one holds.');
    expect(tally({ fails: 0, low: 0, holds: 0 }, 0)).toBe('This project has no joints.');
  });
});
