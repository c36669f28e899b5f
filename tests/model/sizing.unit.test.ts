/** Sizing: answers that can be repeated by looking at every multiple, by formula, and what stops it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/model/errors.ts';
import type { JointInput, Material } from '../../src/model/joint/types.ts';
import { governingRows } from '../../src/model/margins/governing.ts';
import type { Question } from '../../src/model/margins/over-states.ts';
import { makeJudge, reachesTarget } from '../../src/model/sizing/judge.ts';
import { gridOf, nearest, type SizePlan, size } from '../../src/model/sizing/size.ts';
import { noLoads } from '../support/section-12.ts';
import { pulled, stopped } from '../support/sizing-joints.ts';

const withOverlap = (question: Question, overlap: number): Question => ({
  ...question,
  joint: { ...question.joint, overlap },
});
const judgeOverlap = (question: Question, target: number, step = 1) =>
  makeJudge({ at: (value) => withOverlap(question, value), target, step });
const marginAt = (question: Question, overlap: number): number =>
  governingRows(withOverlap(question, overlap))[0]!.result.margin;
const plan = (first: number, last: number, drawn = false): SizePlan => ({
  first,
  last,
  wanted: 'smallest',
  drawn,
});

describe('the modes that stop it', () => {
  it.each(stopped)('$mode', ({ mode, question, range: [first, last] }) => {
    const judge = judgeOverlap(question, 0.2);
    const { found, best } = size(judge, plan(first, last, true));
    expect(found).toBeNull();
    expect(best.row.result.mode).toBe(mode);
    expect(best.row.result.margin).toBeLessThan(0.2);
    // By the full analysis it is the only one that is below.
    const below = judge.rows(best.multiple)!.filter(({ result }) => result.margin < 0.2);
    expect(new Set(below.map(({ result }) => result.mode))).toEqual(new Set([mode]));
  });

  it.each(stopped)('$mode, made good, stops it no more', ({ sound }) => {
    const { found } = size(judgeOverlap(sound, 0.2), plan(1, 60));
    expect(found).not.toBeNull();
    expect(marginAt(sound, found!.low)).toBeGreaterThanOrEqual(0.2);
    expect(marginAt(sound, found!.low - 1)).toBeLessThan(0.2);
  });
});

describe('the answer', () => {
  it('is the first of all multiples that reaches the target', () => {
    const question = pulled('limit', { row: { peelStrength: 50 } });
    const margins = new Map<number, number>();
    for (let n = 4; n <= 40; n++) margins.set(n, marginAt(question, n));
    const most = Math.max(...margins.values());
    fc.assert(
      fc.property(fc.double({ min: -0.8, max: most - 1e-3, noNaN: true }), (target) => {
        const first = [...margins.keys()].find((n) => margins.get(n)! >= target);
        const { found } = size(judgeOverlap(question, target), plan(4, 40));
        expect(found?.low).toBe(first);
        expect(found?.bounded).toBe(first !== 4);
      }),
      { numRuns: 12 },
    );
  });

  it('is a multiple whose margin is the target exactly, and the next for a hair more', () => {
    // The whole bond flows: the margin grows with every millimetre.
    const question = pulled('ultimate', { row: { shearYield: 12, plasticStrain: 4 } });
    for (const multiple of [5, 9, 14]) {
      const target = marginAt(question, multiple);
      const at = (asked: number) => size(judgeOverlap(question, asked), plan(2, 20)).found?.low;
      expect(at(target)).toBe(multiple);
      expect(at((1 + target) * (1 + 1e-7) - 1)).toBe(multiple + 1);
      expect(at((1 + target) * (1 - 1e-7) - 1)).toBe(multiple);
    }
  });

  it('is the target exactly also where a search for the factor stands behind the figure', () => {
    const question = pulled('limit', { row: { peelStrength: 12 } });
    const trough = stopped.at(-1)!.question;
    for (const [asked, multiple] of [
      [question, 12],
      [trough, 14],
    ] as const) {
      const target = marginAt(asked, multiple);
      const below = marginAt(asked, multiple - 1);
      expect(below).toBeLessThan(target);
      expect(size(judgeOverlap(asked, target), plan(4, 30)).found?.low).toBe(multiple);
    }
  });

  it('takes what differs by rounding alone as reached', () => {
    expect(reachesTarget(0.25, 0.25)).toBe(true);
    expect(reachesTarget(0.25 - 1e-10, 0.25)).toBe(true);
    expect(reachesTarget(0.25 - 1e-8, 0.25)).toBe(false);
  });

  it('says so when the smallest that was looked at reaches the target already', () => {
    const { found } = size(judgeOverlap(pulled('ultimate'), 0.2), plan(30, 60, true));
    expect(found).toMatchObject({ low: 30, bounded: false, lostAt: null });
  });

  it('is the same whether a drawing was asked for or not', () => {
    const question = pulled('limit', { row: { peelStrength: 50 } });
    const drawn = size(judgeOverlap(question, 0.1), plan(4, 40, true));
    const bare = size(judgeOverlap(question, 0.1), plan(4, 40));
    expect(bare.found?.low).toBe(drawn.found?.low);
    expect(drawn.points.length).toBeGreaterThan(10);
    for (const { multiple, row } of drawn.points) {
      expect(row.result.margin).toBeCloseTo(marginAt(question, multiple), 5);
    }
  });
});

describe('a size that can be too much', () => {
  /** First yield is at the root of a thin sleeve and at the mouth of a thick one: the margin has a cusp. */
  const question = pulled('limit', { row: { shearYield: 12, plasticStrain: 4 } });
  const walled = (wall: number): Question => {
    const { joint } = question;
    if (joint.type !== 'sleeve-single') throw new Error('a sleeve');
    return {
      ...question,
      joint: { ...joint, sleeve: { ...joint.sleeve, atRoot: wall, atMouth: wall } },
    };
  };
  const margins = Array.from({ length: 38 }, (_v, i) => {
    const wall = Number(((i + 3) * 0.1).toPrecision(3));
    return governingRows(walled(wall))[0]!.result.margin;
  });
  const top = Math.max(...margins);
  const target = top - 0.1;
  const inside = margins.flatMap((margin, i) => (margin >= target ? [i + 3] : []));
  const judge = () => makeJudge({ at: walled, target, step: 0.1 });

  it('has its highest margin inside the range, where two ends cross', () => {
    expect(margins[0]!).toBeLessThan(target);
    expect(margins.at(-1)!).toBeLessThan(target);
    expect(inside.length).toBe(inside.at(-1)! - inside[0]! + 1);
  });

  it('is found with both ends of the stretch', () => {
    const { found } = size(judge(), { first: 3, last: 40, wanted: 'stretch', drawn: false });
    expect([found?.low, found?.high]).toEqual([inside[0], inside.at(-1)]);
    expect(found).toMatchObject({ bounded: true, boundedAbove: true });
  });

  it('is found at its thin end, and where it is lost again is told', () => {
    const { found } = size(judge(), { first: 3, last: 40, wanted: 'smallest', drawn: true });
    expect(found?.low).toBe(inside[0]);
    expect(found?.lostAt).toBeGreaterThan(inside.at(-1)!);
  });

  it('comes nearest beside the crossing when none reaches the target', () => {
    const high = makeJudge({ at: walled, target: top + 0.1, step: 0.1 });
    const { found, best } = size(high, { first: 3, last: 40, wanted: 'smallest', drawn: true });
    expect(found).toBeNull();
    expect(margins[best.multiple - 3]!).toBe(top);
    const near = nearest(high, {
      first: 3,
      last: 40,
      wanted: 'smallest',
      drawn: false,
      guess: best.multiple,
    });
    expect(near.best.row.result.margin).toBeCloseTo(top, 6);
  });
});

describe('against closed forms', () => {
  /** A balanced flat double lap: the straps together as stiff as the strip, nothing but the bond to fail. */
  const steel: Material = {
    kind: 'isotropic',
    modulus: 200_000,
    poisson: 0.3,
    expansion: 1e-5,
    yieldStrength: 9000,
    ultimateStrength: 9000,
  };
  const [width, thickness, gap, shearModulus, shearYield] = [25, 3, 0.2, 876, 40];
  const strap = { material: steel, atRoot: thickness / 2, atMouth: thickness / 2 };
  const joint: JointInput = {
    type: 'flat-double',
    overlap: 20,
    width,
    strip: { material: steel, thickness },
    lowerStrap: strap,
    upperStrap: strap,
    lowerBond: { gap, tolerance: 0 },
    upperBond: { gap, tolerance: 0 },
  };
  const question = (
    kind: 'limit' | 'ultimate',
    force: number,
    plasticStrain: number,
  ): Question => ({
    joint,
    adhesive: {
      stressFreeTemperature: 20,
      states: [
        {
          temperature: 20,
          moisture: 'dry',
          modulus: 2400,
          shearModulus,
          shearYield,
          plasticStrain,
        },
      ],
    },
    cases: [{ loads: { ...noLoads, force }, kind, temperature: 20, moisture: 'dry' }],
    settings: { factors: { limit: 1, ultimate: 1, fitting: 1 }, adherendShear: false },
  });
  // Volkersen: each bond between a strap and its half of the strip.
  const stiffness = (200_000 * width * thickness) / 2;
  const omega = Math.sqrt((width * shearModulus * 2) / (gap * stiffness));
  const step = 0.1;
  const sized = (asked: Question) => {
    const { found } = size(judgeOverlap(asked, 0, step), plan(10, 1200));
    return found!.low * step;
  };
  const withinAStep = (answer: number, exact: number): void => {
    expect(answer).toBeGreaterThanOrEqual(exact - 1e-6);
    expect(answer).toBeLessThan(exact + step + 1e-6);
  };

  it('first yield: the peak shear P·ω/(4b)·coth(ωL/2) at the yield stress', () => {
    // So near to its lowest that the overlap is long, and the trough with it deep enough.
    const coth = 1.002;
    const force = (4 * width * shearYield) / (omega * coth);
    withinAStep(sized(question('limit', force, 4)), (2 / omega) * Math.atanh(1 / coth));
  });

  it('the trough: the least shear P·ω/(4b)/sinh(ωL/2) at a tenth of yield', () => {
    const force = (2 * width * shearYield) / omega;
    withinAStep(sized(question('limit', force, 4)), (2 / omega) * Math.asinh(5));
  });

  it('flow of the whole bond: 2·b·L·τp at the load', () => {
    const exact = 12.34;
    withinAStep(sized(question('ultimate', 2 * width * exact * shearYield, 4)), exact);
  });
});

describe('the grid', () => {
  it('holds both ends, in order, whatever the range', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 5000 }),
        (a, span) => {
          const grid = gridOf(plan(a, a + span));
          expect(grid[0]).toBe(a);
          expect(grid.at(-1)).toBe(a + span);
          expect(grid).toEqual([...new Set(grid)].sort((p, q) => p - q));
        },
      ),
    );
  });

  it('looks past values at which the joint does not fit together', () => {
    const question = pulled('ultimate');
    const judge = makeJudge({
      at: (value) => {
        if (value < 12) throw new ModelError('overlap', 'too short to be made');
        return withOverlap(question, value);
      },
      target: 0.2,
      step: 1,
    });
    const { found } = size(judge, plan(4, 60));
    expect(found?.low).toBe(12);
    expect(judge.rows(11)).toBeNull();
    const nowhere = makeJudge({
      at: () => {
        throw new ModelError('overlap', 'cannot be made');
      },
      target: 0,
      step: 1,
    });
    expect(() => size(nowhere, plan(1, 9))).toThrow('cannot be made');
  });
});
