/** From lives to the adhesive's S-N line: what is written, what is refused, what is said of it. */
import { describe, expect, it } from 'vitest';
import { lifeAlt, lifeAnswer } from '../../src/shared/life-words.ts';
import { readProject } from '../../src/shared/read-project.ts';
import type { LifeFit, LifeSetReport } from '../../src/shared/reports-coupons.ts';
import {
  casesBeyond,
  notTaken,
  reachText,
  type SnLine,
  snLineOf,
  standingOf,
} from '../../src/shared/sn-line.ts';
import { makeProject, socket } from '../renderer/support/project.ts';

const bound = { coefficient: 1, exponent: 0.1 };
const fit: LifeFit = {
  method: 'censored-likelihood',
  failures: 9,
  runOuts: 3,
  deviation: 0.2,
  median: { coefficient: 1.25, exponent: 0.1 },
  bound,
  shares: [0.25, 0.5],
  longest: 2e6,
  curve: [
    { share: 0.25, median: 9_765_625, bound: 1_048_576 },
    { share: 0.5, median: 9537, bound: 1024 },
  ],
};
const report = (change: Partial<LifeSetReport> = {}): LifeSetReport => ({
  setId: 'd3528-life',
  name: 'Lives',
  specimen: { id: 'd3528', name: 'Double lap shear', standard: 'ASTM D3528' },
  adhesive: { id: 'paste', name: 'Toughened paste' },
  temperature: 60,
  moisture: 'wet',
  gap: 0.2,
  ratio: -1,
  lines: [
    { coupon: '1', batch: '', peak: 2000, cycles: 5000, runOut: false, share: 0.5 },
    { coupon: '2', batch: '', peak: 1000, cycles: 2e6, runOut: true, share: 0.25 },
  ],
  fit,
  goodman: [],
  why: '',
  ...change,
});
const withBound = (line: LifeFit['bound']): LifeSetReport =>
  report({ fit: { ...fit, bound: line } });
const days = { tested: '2026-03-01', taken: '2026-04-02' };

describe('the line to be taken', () => {
  it('is the bound, with the ratio and with all that it rests on', () => {
    const line = snLineOf(report(), days)!;
    expect(line).toEqual({
      ...bound,
      ratio: -1,
      source: {
        kind: 'tested',
        text: 'Coupons under cycles, set d3528-life: 1 failure, 1 run-out, 60 °C wet, gap 0.2 mm, load ratio −1; below the 90 % bound with 95 % confidence, shares 0.250 to 0.500, up to 2e6 cycles; tested 2026-03-01, taken 2026-04-02. Specimen: Double lap shear, ASTM D3528.',
      },
    });
    expect(snLineOf(report(), { ...days, tested: undefined })!.source.text).toContain(
      'cycles; taken 2026-04-02.',
    );
  });

  it('is one that a project takes, whatever the names', () => {
    const name = 'x'.repeat(120);
    const long = report({
      setId: `a${'b'.repeat(63)}`,
      specimen: { id: 'd', name, standard: 'y'.repeat(80) },
    });
    const [adhesive] = makeProject().adhesives;
    const fatigue = snLineOf(long, days)!;
    const document = makeProject({ adhesives: [{ ...adhesive!, fatigue }] });
    expect(readProject(document).ok).toBe(true);
    expect(fatigue.source.text).toMatch(/taken 2026-04-02\.$/);
  });

  it('is none where there is no bound, or one that no project takes', () => {
    expect(notTaken(report())).toBe('');
    const none = report({ fit: null, why: 'There are no results yet.' });
    expect(notTaken(none)).toBe('There are no results yet.');
    expect(notTaken(withBound(null))).toBe('The lives do not fall as the stress rises.');
    expect(notTaken(withBound({ coefficient: 15.8, exponent: 0.3 }))).toBe(
      'The line is share = 15.8·n^−0.3; its coefficient must lie between 0.01 and 10 in a project. Test over more stresses, or look at the results.',
    );
    expect(notTaken(withBound({ coefficient: 0.5, exponent: 1.5 }))).toMatch(
      /its exponent must lie between 0 and 1/,
    );
    for (const one of [
      none,
      withBound(null),
      withBound({ coefficient: 15.8, exponent: 0.3 }),
      withBound({ coefficient: 0.5, exponent: 1.5 }),
    ]) {
      expect(snLineOf(one, days)).toBeNull();
    }
  });
});

describe('what stands', () => {
  const taken = snLineOf(report(), days)!;
  it('is of these coupons, of them as they were, or from elsewhere', () => {
    expect(standingOf(undefined, report())).toBe('none');
    expect(standingOf(taken, report())).toBe('same');
    // Solved anew, and renamed: the same coupons.
    expect(
      standingOf(taken, { ...withBound({ coefficient: 1 + 1e-12, exponent: 0.1 }), name: 'Other' }),
    ).toBe('same');
    expect(standingOf(taken, withBound({ coefficient: 0.98, exponent: 0.1 }))).toBe('changed');
    expect(standingOf(taken, withBound(null))).toBe('changed');
    expect(standingOf(taken, report({ fit: null }))).toBe('changed');
    expect(standingOf({ ...taken, ratio: 0.1 }, report())).toBe('changed');
    // One id is the beginning of another.
    expect(standingOf(taken, report({ setId: 'd3528' }))).toBe('other');
    const elsewhere: SnLine = { ...bound, ratio: -1, source: { kind: 'published', text: 'a' } };
    expect(standingOf(elsewhere, report())).toBe('other');
  });
});

describe('what was tested', () => {
  it('ends at the shares and at the longest test', () => {
    // 0.5 = n^−0.1 at 2^10 cycles, 0.25 at 4^10.
    expect(reachText(bound, fit)).toBe(
      'Tested were shares of 0.250 to 0.500, up to 2e6 cycles: the line keeps to them from 1024 to 1e6 cycles. Beyond either it is drawn on, which no coupon has shown.',
    );
    expect(reachText(bound, { ...fit, longest: 5e5 })).toContain('from 1024 to 5e5 cycles');
    expect(reachText({ ...bound, coefficient: 0.1 }, fit)).toContain('wholly outside');
  });

  it('is not what every case of a joint with the adhesive asks for', () => {
    const shaken = { ...socket, loads: [{ ...socket.loads[0]!, case: 'rotor' }] };
    const cases = (cycles: number, joint = shaken) => {
      const base = makeProject({ joints: [joint] });
      const loadCases = base.loadCases.map((one) =>
        one.kind === 'cyclic' ? { ...one, cycles } : one,
      );
      return casesBeyond({ ...base, loadCases }, 'paste', bound, fit);
    };
    expect(cases(1e7)).toEqual([{ name: 'Rotor', cycles: 1e7 }]);
    expect(cases(100)).toEqual([{ name: 'Rotor', cycles: 100 }]);
    expect(cases(1e5)).toEqual([]);
    expect(cases(1e7, socket)).toEqual([]);
    expect(cases(1e7, { ...shaken, adhesive: 'film' })).toEqual([]);
  });
});

describe('lives in words', () => {
  it('are answered at a round number of cycles that was tested, where there is one', () => {
    expect(lifeAnswer(report())).toBe(
      'At 1e6 cycles the line below the 90 % bound has a peak shear of 0.251 of yield; half of the coupons last that long at 0.314.',
    );
    expect(lifeAnswer(report({ fit: { ...fit, longest: 9000 } }))).toMatch(/^At 9000 cycles/);
    expect(lifeAnswer(report({ fit: null, why: 'too few' }))).toBe('No S-N line. Too few.');
    expect(lifeAnswer(withBound({ ...bound, coefficient: 0.1 }))).toContain('outside of what');
    expect(lifeAnswer(withBound(null))).toMatch(/^No S-N line\. The lives do not fall/);
  });

  it('tell the plot', () => {
    expect(lifeAlt(report())).toBe(
      'S-N plot of 1 failure, 1 run-out: peak shear over yield 0.250 to 0.500 against 5000 to 2e6 cycles. The median goes from 9537 cycles at 0.500 to 9.8e6 at 0.250, the bound from 1024 cycles at 0.500 to 1e6 at 0.250.',
    );
    expect(lifeAlt(report({ fit: null }))).toMatch(/No line is fitted\.$/);
    expect(lifeAlt(report({ lines: [] }))).toBe('There is no result to draw.');
  });
});
