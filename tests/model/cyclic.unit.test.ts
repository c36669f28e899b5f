/** Cyclic cases of a given load ratio, and several of them together. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodmanPeak } from '../../src/model/coupons/blocks.ts';
import type { AdhesiveInput, CaseInput, SnLine } from '../../src/model/joint/types.ts';
import { allowedShare, carriedOver, logLife } from '../../src/model/margins/cyclic.ts';
import { damageAsked, damageRow } from '../../src/model/margins/cyclic-damage.ts';
import { type GoverningRow, governingRows } from '../../src/model/margins/governing.ts';
import type { Question } from '../../src/model/margins/over-states.ts';
import { jointState } from '../../src/model/margins/state.ts';
import { halvesOf } from '../../src/model/scatter/halves.ts';
import { solveElastic } from '../../src/model/shear-lag/solve-elastic.ts';
import { marginWorking } from '../../src/model/working/modes.ts';
import { expectCard } from '../support/cards.ts';
import { expectClose } from '../support/close.ts';
import { pulled } from '../support/sizing-joints.ts';

const line: SnLine = { coefficient: 1.2, exponent: 0.1, ratio: 0.1 };
const ONLY = new Set(['cyclic-shear', 'cyclic-damage'] as const);

type Change = Partial<CaseInput>;

/** The socket of `pulled` under cyclic cases, warm or at the temperature without thermal stress. */
function question(changes: readonly Change[], adhesive: Partial<AdhesiveInput> = {}): Question {
  const base = pulled('cyclic', { adhesive: { fatigue: line, ...adhesive } });
  return {
    ...base,
    cases: changes.map((change) => ({ ...base.cases[0]!, cycles: 1e5, ...change })),
  };
}

const loads = (force: number, moment = 0, torque = 0, shear = 0) => ({
  loads: { force, moment, torque, shear },
});

function cyclic(of: Question): GoverningRow {
  const found = governingRows(of, { only: ONLY }).find(
    ({ result }) => result.mode === 'cyclic-shear',
  );
  return found!;
}

const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
const ratio = fc.double({ min: -1, max: 0.9, noNaN: true });

describe('a peak carried over to another ratio', () => {
  it('is that of a calculation by hand', () => {
    // Down to −1: amplitude 0.25·0.9/2 = 0.1125 is kept. Up to 0.5: 0.1125/(1 − 0.1375) about a mean of 0.
    expectClose(carriedOver(0.25, 0.1, -1), 0.1125, { relative: 1e-14 }, 'reversed');
    const amplitude = 0.1125 / (1 - 0.1375);
    expectClose(
      carriedOver(0.25, 0.1, 0.5),
      amplitude / (0.25 + 0.75 * amplitude),
      { relative: 1e-14 },
      'pulsing less',
    );
    expect(carriedOver(0.4, 0.1, 0.1)).toBe(0.4);
    expect(carriedOver(1, 0.1, 0.5)).toBe(1);
  });

  it("is never above Goodman's line for a static strength at or above yield", () => {
    fc.assert(
      fc.property(
        share,
        ratio,
        ratio,
        fc.double({ min: 1, max: 50, noNaN: true }),
        (q, a, b, u) => {
          expect(carriedOver(q, a, b)).toBeLessThanOrEqual(
            goodmanPeak({ peak: q, ratio: a }, b, u) * (1 + 1e-12),
          );
        },
      ),
    );
  });

  it('has the life for which it is allowed', () => {
    fc.assert(
      fc.property(ratio, fc.double({ min: 2, max: 20, noNaN: true }), (own, log) => {
        const allowed = allowedShare(line, { cycles: Math.exp(log), ratio: own });
        if (allowed === 1) return;
        expectClose(logLife(line, { ratio: own }, allowed), log, { absolute: 1e-9 }, `R ${own}`);
      }),
    );
  });

  it('is left as it is where one of the ratios is not known', () => {
    const { ratio: _, ...bare } = line;
    const on = allowedShare(line, { cycles: 1e6 });
    expectClose(on, 1.2 * 1e6 ** -0.1, { relative: 1e-14 }, 'share');
    expect(allowedShare(bare, { cycles: 1e6, ratio: -1 })).toBe(on);
    expect(allowedShare(line, { cycles: 1e6, ratio: 0.1 })).toBe(on);
    expect(allowedShare(line, { cycles: 1e6, ratio: -1 })).toBeLessThan(on / 2);
  });
});

describe('cyclic shear at a load ratio', () => {
  it('without thermal stress is in proportion to the allowed share', () => {
    const at = (own: number): number =>
      cyclic(question([{ ...loads(3000), ratio: own }])).result.reached;
    const same = at(0.1);
    for (const own of [-1, -0.4, 0, 0.5]) {
      expectClose(
        at(own) / same,
        carriedOver(1.2 * 1e5 ** -0.1, 0.1, own) / (1.2 * 1e5 ** -0.1),
        { relative: 1e-12 },
        `R ${own}`,
      );
    }
  });

  it('looks at both ends of a cycle that reverses', () => {
    const cold = { temperature: -40 };
    const warm = { stressFreeTemperature: 10 };
    // The other end as a case of its own that stays below what the first is allowed.
    const seen = new Set<number | undefined>();
    for (const force of [3000, -3000]) {
      for (const own of [-1, -0.6]) {
        const both = question([{ ...loads(force, 0, 4000), ...cold, ratio: own }], warm);
        const allowed = allowedShare(line, { cycles: 1e5, ratio: own });
        const flat = { ...warm, fatigue: { coefficient: allowed, exponent: 0 } };
        const ends = [1, own].map(
          (end) =>
            cyclic(question([{ ...loads(end * force, 0, end * 4000), ...cold }], flat)).result
              .reached,
        );
        const { result } = cyclic(both);
        expectClose(result.reached, Math.min(...ends), { relative: 1e-6 }, `${force}, ${own}`);
        expect(result.end).toBe(ends[1]! < ends[0]! ? own : undefined);
        expect(result.reached).toBeGreaterThan(0);
        seen.add(result.end);
      }
    }
    expect(seen).toContain(-1);
    expect(seen).toContain(undefined);
  });
});

describe('the halves around the tube that a scatter samples', () => {
  it('have the same lowest cyclic shear, at the ratio of the case', () => {
    const of = question([{ ...loads(-3000, 20_000, 4000), temperature: 0, ratio: -1 }]);
    const { result, state } = cyclic(of);
    const halves = halvesOf(
      jointState(of.joint, of.adhesive, of.cases[0]!, result.gapState, of.settings),
      of.adhesive,
      of.settings.factors,
      'cyclic-shear',
    );
    expect(state.gapState).toBe(result.gapState);
    expectClose(
      Math.min(...halves.map((half) => half.ratio)),
      result.reached / result.asked,
      { relative: 1e-9 },
      'lowest half',
    );
  });
});

/** Peak shear over yield by looking everywhere: 1440 clockings, 400 stations, both ends of the cycle. */
function peakEverywhere(of: Question, index: number, factor: number, gap: 'min' | 'max'): number {
  const { joint, adhesive, cases, settings } = of;
  const state = jointState(joint, adhesive, cases[index]!, gap, settings);
  let most = 0;
  for (let k = 0; k < 1440; k++) {
    const { bonds, channels, axial, hoop, length } = state.at((k * Math.PI) / 720);
    const solved = channels.map((channel) => solveElastic(channel, bonds, length));
    for (let i = 0; i <= 20; i++) {
      const x = (length * i) / 20;
      for (const end of [1, Math.min(0, cases[index]!.ratio ?? 0)]) {
        const along =
          axial < 0
            ? 0
            : solved[axial]!.thermal.shear(0, x) +
              factor * end * solved[axial]!.mechanical.shear(0, x);
        const around = hoop < 0 ? 0 : factor * end * solved[hoop]!.mechanical.shear(0, x);
        most = Math.max(most, Math.hypot(along, around) / state.bonds[0]!.shearYield);
      }
    }
  }
  return most;
}

describe('cyclic cases together', () => {
  it('without thermal stress add up as the factors of each alone say', () => {
    const cases = [
      { ...loads(3000), cycles: 1e6 },
      { ...loads(4000, 30_000), cycles: 1e4 },
      { ...loads(0, 0, 20_000), cycles: 1e7, ratio: -1 },
    ];
    const alone = cases.map((one) => cyclic(question([one])).result.reached);
    // n·(s/C)^(1/b) with s in proportion to the factor: 1/λ^(1/b) is the sum of those of each.
    const sum = alone.reduce((all, reached) => all + reached ** -10, 0);
    const row = damageRow(question(cases))!;
    expectClose(row.result.reached, sum ** -0.1, { relative: 1e-9 }, 'factor');
    expect(row.result.reached).toBeLessThan(Math.min(...alone));
  });

  it('come to a damage of 1 at the factor of the margin, looked for everywhere', () => {
    const cases = [
      { ...loads(2500, 20_000, 5000, 150), temperature: -40, cycles: 1e6 },
      { ...loads(-2500, 15_000, 9000), temperature: 60, cycles: 1e5, ratio: -0.6 },
    ];
    const of = question(cases, { stressFreeTemperature: 60 });
    const { result } = damageRow(of)!;
    expect(result.gapState === 'min' || result.gapState === 'max').toBe(true);
    const damage = (factor: number, gap: 'min' | 'max'): number =>
      cases.reduce((sum, { cycles, ...one }, i) => {
        const peak = peakEverywhere(of, i, factor, gap);
        return sum + cycles / Math.exp(logLife(line, { ratio: (one as Change).ratio }, peak));
      }, 0);
    expectClose(
      damage(result.reached, result.gapState as 'min'),
      1,
      { absolute: 2e-4 },
      'damage at the factor',
    );
    const other = result.gapState === 'min' ? 'max' : 'min';
    expect(damage(result.reached, other)).toBeLessThanOrEqual(1);
    expectClose(
      damageAsked(result.damage!)!.sum,
      damage(result.asked, result.gapState as 'min'),
      { relative: 2e-4 },
      'damage at the asked loads',
    );
  });

  it('of one occasion in two surroundings count once, as the worse of them', () => {
    const cold = { ...loads(3000, 20_000), temperature: -40, occasion: 'hum' };
    const warm = { ...cold, temperature: 20 };
    const gust = { ...loads(4000), cycles: 1e4, occasion: 'gust' };
    const around = { stressFreeTemperature: 60 };
    expect(damageRow(question([cold, warm], around))).toBeNull();
    const [all, worse] = [
      [warm, cold, gust],
      [cold, gust],
    ].map((cases) => damageRow(question(cases, around))!.result);
    expect(all!.reached).toBe(worse!.reached);
    expect(all!.damage!.map(({ occasion }) => occasion)).toEqual(['hum', 'gust']);
    expect(all!.damage![0]!.caseIndex).toBe(1);
  });

  it('leave out cases without load and those that are not cyclic', () => {
    const one = { ...loads(3000) };
    expect(damageRow(question([one, loads(0)]))).toBeNull();
    expect(damageRow(question([one, { ...one, kind: 'limit' }]))).toBeNull();
    expect(damageRow(question([one, one], { fatigue: undefined }))).toBeNull();
    expect(damageRow(question([one, one], { fatigue: { ...line, exponent: 0 } }))).toBeNull();
    expect(damageRow(question([one, one]))).not.toBeNull();
  });

  it('have no damage to tell where one of them is above yield at the asked loads', () => {
    const { result } = damageRow(question([loads(3000), loads(90_000)]))!;
    expect(result.margin).toBeLessThan(0);
    expect(damageAsked(result.damage!)).toBeNull();
    const { result: small } = damageRow(question([loads(500), loads(600)]))!;
    expect(small.margin).toBeGreaterThan(0);
    expect(damageAsked(small.damage!)!.sum).toBeLessThan(1);
  });

  it('stand in the list of margins, below every one of cyclic shear', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            loads: fc.record({
              force: fc.oneof(
                fc.double({ min: 200, max: 5000, noNaN: true }),
                fc.double({ min: -5000, max: -200, noNaN: true }),
              ),
              moment: fc.double({ min: 0, max: 50_000, noNaN: true }),
              torque: fc.double({ min: 0, max: 20_000, noNaN: true }),
              shear: fc.constant(0),
            }),
            temperature: fc.constantFrom(-40, 20, 60),
            cycles: fc.constantFrom(1, 1e3, 1e7),
            ratio: fc.constantFrom(undefined, -1, 0, 0.1, 0.5),
          }),
          { minLength: 2, maxLength: 3 },
        ),
        fc.constantFrom(0.001, 0.05, 0.3),
        (cases, exponent) => {
          const of = question(cases, {
            stressFreeTemperature: 60,
            fatigue: { ...line, exponent },
          });
          const rows = governingRows(of, { only: ONLY });
          const [damage, single] = (['cyclic-damage', 'cyclic-shear'] as const).map((mode) =>
            rows.find(({ result }) => result.mode === mode),
          );
          expect(damage).toBeDefined();
          expect(damage!.result.margin).toBeLessThanOrEqual(single!.result.margin + 1e-9);
          const given = { state: damage!.state, adhesive: of.adhesive, settings: of.settings };
          for (const { result } of [damage!, single!]) {
            if (result.reached === 0) continue;
            const state = result === single!.result ? single!.state : damage!.state;
            for (const step of marginWorking({ ...given, state, result })) {
              expectCard(step, `${result.mode} of ${JSON.stringify(cases)}`);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
