/** Each verdict at its exact limit, and the range of gaps that a margin allows. */
import { describe, expect, it } from 'vitest';
import { gapRange } from '../../src/model/gap/gap-range.ts';
import type { Finding, VerdictInput } from '../../src/model/gap/types.ts';
import { judgeGap } from '../../src/model/gap/verdict.ts';

interface Spreads {
  readonly room?: number;
  readonly min?: number;
  readonly max?: number;
  readonly u?: number;
  readonly minU?: number;
}
const placed = (value: number, standard: number) => ({ value, standard, x: 0, theta: 0 });
/** Everything inside: 0.2 centred, 0.14 to 0.26 as held, ± 0.02, between 0.1 and 0.3. */
const input = (
  { room = 0.2, min = 0.14, max = 0.26, u = 0.01, minU = u }: Spreads = {},
  changes: Partial<VerdictInput> = {},
): VerdictInput => ({
  bonds: [
    {
      gap: {
        centred: {
          min: placed(room, u),
          mean: placed(room, u),
          max: placed(room, u),
        },
        held: { min: placed(min, minU), mean: placed(room, u), max: placed(max, u) },
      },
      from: 0.1,
      to: 0.3,
    },
  ],
  holding: { spacer: 0, offset: 0.06 },
  coverage: 2,
  target: 0.25,
  measured: 0.5,
  guarded: 0.4,
  doubts: 0,
  unseen: false,
  ...changes,
});
const codes = (list: readonly Finding[]) =>
  list.map(({ code, state, against }) => [code, state, against].filter((one) => one).join(' '));
const said = (spreads: Spreads, changes: Partial<VerdictInput> = {}) =>
  codes(judgeGap(input(spreads, changes)));
const INSIDE = ['inside accept'];
const HAIR = 1e-6;
const held = (spacer: number) => ({ holding: { spacer, offset: Number.POSITIVE_INFINITY } });

describe('what the samples say beyond the law', () => {
  const around = (value: number, half = 0) => ({ low: value - half, high: value + half });
  const sampled = (changes: object) => {
    const base = input({ u: 0 });
    const of = { room: around(0.2), min: around(0.14), max: around(0.26), ...changes };
    return codes(judgeGap({ ...base, bonds: [{ ...base.bonds[0]!, sampled: of }] }));
  };
  it('counts where it reaches further, on either side', () => {
    expect(sampled({})).toEqual(INSIDE);
    expect(sampled({ max: { low: 0.25, high: 0.3 } })).toEqual(INSIDE);
    expect(sampled({ max: { low: 0.25, high: 0.3 + HAIR } })).toEqual(['uncertain hold to']);
    expect(sampled({ min: { low: 0.1, high: 0.15 } })).toEqual(INSIDE);
    expect(sampled({ min: { low: 0.1 - HAIR, high: 0.15 } })).toEqual(['uncertain hold from']);
  });

  it('keeps a value outside from being rejected while it may be inside', () => {
    const outside = (low: number) => {
      const base = input({ max: 0.32, u: 0 });
      const of = { room: around(0.2), min: around(0.14), max: { low, high: 0.33 } };
      return codes(judgeGap({ ...base, bonds: [{ ...base.bonds[0]!, sampled: of }] }));
    };
    expect(outside(0.3 + HAIR)).toEqual(['above-range reject']);
    expect(outside(0.3)).toEqual(['uncertain hold to']);
  });

  it('holds where too little was seen', () => {
    expect(said({}, { unseen: true })).toEqual(['unseen hold']);
  });
});

describe('a verdict', () => {
  it('accepts what is inside with all its uncertainty, limits included', () => {
    expect(said({})).toEqual(INSIDE);
    expect(said({ min: 0.12 })).toEqual(INSIDE);
    expect(said({ max: 0.28 })).toEqual(INSIDE);
  });

  it('holds what may be below the range, and rejects what is', () => {
    expect(said({ min: 0.12 - HAIR })).toEqual(['uncertain hold from']);
    expect(said({ min: 0.08 })).toEqual(['uncertain hold from']);
    expect(said({ min: 0.08 - HAIR })).toEqual(['below-range reject']);
  });

  it('holds what may be above the range, and rejects what is', () => {
    expect(said({ max: 0.28 + HAIR })).toEqual(['uncertain hold to']);
    expect(said({ max: 0.32 })).toEqual(['uncertain hold to']);
    expect(said({ max: 0.32 + HAIR })).toEqual(['above-range reject']);
  });

  it('wants room for the spacers', () => {
    const onSpacer = { min: 0.12, minU: 0 };
    expect(said({ ...onSpacer, room: 0.14 }, held(0.12))).toEqual(INSIDE);
    expect(said({ ...onSpacer, room: 0.14 - HAIR }, held(0.12))).toEqual(['uncertain hold spacer']);
    expect(said({ ...onSpacer, room: 0.1 }, held(0.12))).toEqual(['uncertain hold spacer']);
    expect(said({ ...onSpacer, room: 0.1 - HAIR }, held(0.12))).toEqual(['below-spacer reject']);
  });

  it('knows that spacers keep the gap from being thinner than they are', () => {
    // Of a double lap, where the other bond stopped the tube: 0.13 ± 0.02 on a wire of 0.12.
    expect(said({ min: 0.13 }, held(0.12))).toEqual(INSIDE);
    expect(said({ min: 0.09, minU: 0 }, held(0.09))).toEqual(['below-range reject']);
  });

  it('rejects parts that do not go together', () => {
    expect(said({ room: -0.02, min: -0.02, max: -0.02 })[0]).toBe('below-range reject');
    expect(said({ room: -0.02 - HAIR, min: 0.2 })).toEqual(['does-not-fit reject']);
  });

  it('holds a tube that nothing holds', () => {
    expect(said({}, held(0))).toEqual(['not-held hold']);
  });

  it('holds what no range is known for', () => {
    const [bond] = input().bonds;
    expect(said({}, { bonds: [{ ...bond!, from: null, to: null }] })).toEqual(['no-range hold']);
  });

  it('holds a margin below the target, and rejects one below zero', () => {
    expect(said({}, { measured: 0.25, guarded: 0.25 })).toEqual(INSIDE);
    expect(said({}, { measured: 0.25 - HAIR })).toEqual(['margin hold']);
    expect(said({}, { measured: 0 })).toEqual(['margin hold']);
    expect(said({}, { measured: -HAIR })).toEqual(['margin reject']);
  });

  it('holds where the uncertainty may take the margin below the target', () => {
    expect(said({}, { guarded: 0.25 - HAIR })).toEqual(['uncertain hold margin']);
    expect(said({}, { guarded: null })).toEqual(INSIDE);
  });

  it('says nothing else while a reading is in doubt', () => {
    expect(said({ max: 0.5 }, { doubts: 2, measured: -1 })).toEqual(['reading hold']);
  });

  it('puts what rejects before what holds, and names all of it', () => {
    const list = said({ min: 0.1, max: 0.4 }, { measured: 0.1 });
    expect(list).toEqual(['above-range reject', 'margin hold', 'uncertain hold from']);
    const [first] = judgeGap(input({ max: 0.4 }));
    expect(first).toMatchObject({ bond: 0, value: 0.4, uncertainty: 0.02, limit: 0.3 });
  });
});

describe('the range of gaps', () => {
  /** A margin that rises to 0.2 mm and falls past it. */
  const hill = (gap: number) => ({ margin: 0.5 - Math.abs(gap - 0.2) * 2, mode: 'hill' });
  const ask = (changes: Partial<Parameters<typeof gapRange>[0]> = {}) =>
    gapRange({
      drawn: 0.21,
      target: 0.25,
      from: 0.02,
      to: 0.6,
      points: 25,
      marginAt: hill,
      ...changes,
    });

  it('ends where the margin meets the target, in whole micrometres inward', () => {
    expect(ask().range).toEqual({ from: 0.075, to: 0.325 });
    expect(ask({ target: 0.2507 }).range).toEqual({ from: 0.076, to: 0.324 });
    for (const gap of [0.075, 0.325]) expect(hill(gap).margin).toBeGreaterThanOrEqual(0.25 - 1e-9);
    expect(ask().open).toEqual({ from: false, to: false });
  });

  it('is open where the sweep ends first', () => {
    expect(ask({ target: 0.1, from: 0.1 })).toMatchObject({
      range: { from: 0.1, to: 0.4 },
      open: { from: true, to: false },
    });
  });

  it('is not there where the drawn gap misses the target, and has its curve all the same', () => {
    const found = ask({ drawn: 0.5 });
    expect(found.range).toBeNull();
    expect(found.curve.length).toBe(26);
    expect(found.curve.find(({ gap }) => gap === 0.5)?.margin).toBeCloseTo(-0.1, 12);
  });

  it('ends before a gap that cannot be made', () => {
    const found = ask({ marginAt: (gap) => (gap > 0.3 ? null : hill(gap)) });
    expect(found.range).toEqual({ from: 0.075, to: 0.3 });
  });

  it('tells how far it is', () => {
    const told: number[] = [];
    ask({ told: (done, of) => told.push(done / of) });
    expect(told.length).toBeGreaterThan(26);
    expect(Math.max(...told)).toBeLessThanOrEqual(1);
    expect([...told].sort((a, b) => a - b)).toEqual(told);
  });
});
