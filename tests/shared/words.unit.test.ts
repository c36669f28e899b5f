import { describe, expect, it } from 'vitest';
import type { JointReport, Margin } from '../../src/shared/reports.ts';
import {
  clocking,
  count,
  edgeMomentText,
  figure,
  headline,
  kindOf,
  ledgerText,
  signed,
  tally,
  verdict,
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
  conditionId: null,
  conditionName: null,
  gapState: 'max',
  place: 'mouth',
  x: 30,
  theta: 0,
  part: 'bond',
  typical: true,
  restsOn: 'typical values, no allowable',
  remark: '',
  flags: [],
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
    // Of two equal stresses one may come out a rounding lower.
    [18.05, '18.1'],
    [18.049999999999997, '18.1'],
    [18.0499, '18.0'],
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
    expect(headline(report([]))).toContain('No load case');
    expect(headline(report([margin]))).toBe(
      'Shear strain of the adhesive at the mouth governs: −0.08 in Hard landing',
    );
    const peel = { ...margin, mode: 'adhesive-peel', part: 'outer bond', margin: 0.12 } as const;
    expect(headline(report([peel]))).toBe(
      'Peel in the outer bond at the mouth governs: +0.12 in Hard landing',
    );
    const metal = {
      ...margin,
      mode: 'metal-yield',
      part: 'socket',
      place: 'within',
      x: 4,
    } as const;
    expect(headline(report([metal]))).toContain('Yield of the socket 4.0 mm from the root governs');
    expect(verdict(report([margin, { ...margin, state: 'low', margin: 0.1 }]))).toBe(
      'One of two margins is below zero.',
    );
    expect(verdict(report([{ ...margin, state: 'low', margin: 0.1 }]))).toContain('Nothing fails');
    expect(verdict(report([{ ...margin, state: 'holds', margin: 1 }]))).toContain('Every margin');
  });

  it('writes what the knockdowns leave, and divides by the fitting factor', () => {
    const rows = [
      { name: 'environment', factor: 1 },
      { name: 'gap', factor: 0.9 },
      { name: 'fitting', factor: 1 / 1.15 },
    ] as const;
    expect(ledgerText({ rows, strength: 0.9, left: 0.9 / 1.15 })).toBe(
      'environment 1.00 × gap 0.90 = 0.90 ÷ fitting 1.15 = 0.78',
    );
    expect(ledgerText({ rows: rows.slice(2), strength: 1, left: 1 / 1.15 })).toBe(
      'nothing taken off: 1.00 ÷ fitting 1.15 = 0.87',
    );
    expect(ledgerText({ rows: [], strength: 1, left: 1 })).toBe('nothing taken off: 1.00');
  });

  it('names both edge moments, the used one first', () => {
    const both = {
      golandReissner: { root: 0.42, mouth: 0.45 },
      hartSmith: { root: 0.38, mouth: 0.38 },
    };
    expect(edgeMomentText({ chosen: 'hart-smith', ...both })).toBe(
      'Hart-Smith 0.38 (used); Goland and Reissner 0.42 root, 0.45 mouth',
    );
    expect(edgeMomentText({ chosen: 'goland-reissner', ...both })).toMatch(/^Goland.*\(used\)/);
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
