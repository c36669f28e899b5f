/** Laps of random joints in which something was wrong once: each stays right. See any-joint.unit.test.ts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/model/errors.ts';
import { type LapState, plasticState } from '../../src/model/joint/lap-state.ts';
import type { LocalProblem } from '../../src/model/joint/local-problem.ts';
import { bondStrength } from '../../src/model/margins/bond-strength.ts';
import { shearFactor } from '../../src/model/margins/shear-factor.ts';
import { slipForSure } from '../../src/model/margins/worn-for-sure.ts';
import { member } from '../support/laps.ts';
import { laps } from '../support/random-laps.ts';

const strengthOf = (problem: LocalProblem) =>
  bondStrength(
    problem,
    shearFactor(
      problem,
      problem.bonds.map(({ shearYield }) => shearYield),
    ),
  )!;
const used = (problem: LocalProblem, factor: number): number[] => {
  const state = plasticState(problem, factor);
  return problem.bonds.flatMap((bond, j) =>
    [0, problem.length].map((x) => Math.abs(state.slip(0, j, x)) / bond.slipAtFailure),
  );
};

describe('a lap found once', () => {
  it('with slips that ran away, a false state below its strength', () => {
    const problem: LocalProblem = {
      length: 2.6127045146285166,
      bonds: [
        {
          width: 329.8119685838682,
          stiffness: 5487.311192302706,
          shearYield: 0.0038909363407992987,
          slipAtFailure: 0.0002769271034441926,
        },
        {
          width: 343.3591610049525,
          stiffness: 100.90506972472187,
          shearYield: 0.0038909363407992987,
          slipAtFailure: 0.01505955249153341,
        },
      ],
      channels: [
        {
          load: -8822672.821104389,
          tube: member(10622336.719579289, -0.0000013482616343692539),
          outers: [
            member(675163.3772959367, -0.00008112575047093406),
            member(1466678.1163693583, -0.00008112575047093406),
          ],
          levers: [1, 1],
        },
      ],
      axial: 0,
      hoop: -1,
    };
    const { factor } = strengthOf(problem);
    for (const share of [0.5, 0.8, 0.95, 0.999]) {
      for (const slip of used(problem, share * factor)) expect(slip).toBeLessThan(1);
    }
  });

  it('that flows from end to end at once, with no state just below its flow load', () => {
    const problem: LocalProblem = {
      length: 1,
      bonds: [
        {
          width: 546.068338038464,
          stiffness: 2.341499557258275,
          shearYield: 0.011184501350722466,
          slipAtFailure: 0.4003679575391845,
        },
      ],
      channels: [
        {
          load: 2370.5262799244356,
          tube: member(6476797.7528443, 0.06263381692651687),
          outers: [member(896551974.509158, 0.02500444083864693)],
          levers: [1],
        },
      ],
      axial: 0,
      hoop: -1,
    };
    const { factor, wholeBondFlows } = strengthOf(problem);
    const flow = (546.068338038464 * 0.011184501350722466) / 2370.5262799244356;
    expect(factor / flow).toBeCloseTo(1, 6);
    expect(wholeBondFlows).toBe(true);
  });
});

describe('a lap found once, long past its plateau', () => {
  it('was three thousandths off where its fronts were not found on the first nodes', () => {
    const problem: LocalProblem = {
      length: 253.5347554952722,
      bonds: [
        {
          width: 107.11150571940517,
          stiffness: 18372.756305329556,
          shearYield: 0.008907380157308973,
          slipAtFailure: 0.00017331396895027722,
        },
      ],
      channels: [
        {
          load: -118615924.38215636,
          tube: member(2150835.534586836),
          outers: [member(646501.7726352598)],
          levers: [1],
        },
        {
          load: -58660227.62894719,
          tube: member(820429.0227180329),
          outers: [member(246489.66435284456)],
          levers: [1],
        },
      ],
      axial: 0,
      hoop: 1,
    };
    const [one, longer, longest] = [1, 1.1, 1.3].map(
      (times) => strengthOf({ ...problem, length: times * problem.length }).factor,
    );
    expect(longer! / one!).toBeCloseTo(1, 8);
    expect(longest! / one!).toBeCloseTo(1, 8);
  });
});

describe('slip that is sure', () => {
  it('is no more than the slip that there is', () => {
    const of = (strain: number): LocalProblem => ({
      length: 40,
      bonds: [{ width: 100, stiffness: 4000, shearYield: 10, slipAtFailure: 0.05 }],
      channels: [{ load: 1, tube: member(1e7, strain), outers: [member(2e7)], levers: [1] }],
      axial: 0,
      hoop: -1,
    });
    for (const strain of [0.004, 0.01, -0.02, 0.1]) {
      const problem = of(strain);
      const state = plasticState(problem, 0);
      const largest = Math.max(...[0, 40].map((x) => Math.abs(state.slip(0, 0, x))));
      const sure = slipForSure(problem, 0);
      expect([strain, sure <= largest]).toEqual([strain, true]);
      if (Math.abs(strain) >= 0.02) expect(sure / largest).toBeGreaterThan(0.5);
    }
    expect(slipForSure(of(0.0001), 0)).toBe(0);
  });

  it('nor of two bonds whose levers differ', () => {
    let sure = 0;
    fc.assert(
      fc.property(laps(2, 1, { thermal: 0.05 }), (lap) => {
        const problem: LocalProblem = { ...lap, axial: 0, hoop: -1 };
        const least = problem.bonds.map((_bond, j) => slipForSure(problem, j));
        if (least.every((slip) => slip === 0)) return;
        let state: LapState;
        try {
          state = plasticState(problem, 0);
        } catch (error) {
          if (error instanceof ModelError) return;
          throw error;
        }
        sure++;
        least.forEach((slip, j) => {
          const ends = [0, problem.length].map((x) => Math.abs(state.slip(0, j, x)));
          expect(Math.max(...ends)).toBeGreaterThanOrEqual(slip * (1 - 1e-6));
        });
      }),
      { numRuns: 1000 },
    );
    expect(sure).toBeGreaterThan(30);
  });
});
