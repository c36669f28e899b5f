/** Elastic - perfectly plastic bonds against published closed forms and check values. */
import { describe, it } from 'vitest';
import { chainCapacity } from '../../src/model/chain/capacity.ts';
import { chainState } from '../../src/model/joint/lap-state.ts';
import type { LapProblem } from '../../src/model/lap/problem.ts';
import { outerAdherendPeel } from '../../src/model/peel/outer-adherend.ts';
import { solvePlastic } from '../../src/model/plastic/one-bond.ts';
import { expectClose, expectPrinted } from '../support/close.ts';
import { bond, channel, member } from '../support/laps.ts';

describe('check value of the two-ended plastic lap', () => {
  it('gives zones and end strains', () => {
    const law = bond(876, 0.2, 1, { yieldStrain: 0.05, plasticStrain: 0.5 });
    const lap = channel(500, member(70_000 * 1.6), [member(114_000 * 1.2)]);
    const state = solvePlastic(lap, law, 30);
    // The printed values are a few units off in their last digit; scipy's root of the same equation
    // gives the digits that follow.
    for (const [what, computed, printed, exact] of [
      ['zone at the root', state.plasticAtRoot, 1.39634, 1.3963436865],
      ['zone at the mouth', state.plasticAtMouth, 2.53422, 2.5342256111],
      ['strain at the root', state.slipAtRoot / 0.2, 0.0720511, 0.07205104709817],
      ['strain at the mouth', state.slipAtMouth / 0.2, 0.0951479, 0.09514793505626],
    ] as const) {
      expectClose(computed, printed, { relative: 3e-6 }, what);
      expectClose(computed, exact, { relative: 1e-10 }, what);
    }
  });
});

describe('C1: long double laps (L. J. Hart-Smith, closed form from memory)', () => {
  const law = bond(800, 0.2, 1, { yieldStrain: 0.05, plasticStrain: 0.5 });
  const lap = (innerModulus: number, innerAlpha: number, deltaT: number): LapProblem => ({
    length: 80,
    bonds: [law, law],
    channels: [
      channel(1, member(innerModulus * 4, innerAlpha * deltaT), [
        member(70_000 * 2, 2e-6 * deltaT),
        member(70_000 * 2, 2e-6 * deltaT),
      ]),
    ],
  });
  const capacity = (problem: LapProblem) => chainCapacity(problem, { bond: 0, end: 'mouth' });

  it('H1, unequal stiffness: the strength of the independent boundary-value solution', () => {
    expectClose(capacity(lap(110_000, 8.6e-6, 0)).factor, 2774.427, { relative: 1e-6 }, 'no ΔT');
    expectClose(
      capacity(lap(110_000, 8.6e-6, -100)).factor,
      2589.627,
      { relative: 1e-6 },
      'ΔT = −100',
    );
  });

  it('H1: the closed form, which takes the overlap as endless', () => {
    const inner = 110_000 * 4;
    const outer = 2 * 70_000 * 2;
    const energy = 2 * 0.2 * 40 * (0.05 / 2 + 0.5);
    const byInner = Math.sqrt(energy * 2 * inner * (1 + inner / outer));
    const byOuter = Math.sqrt(energy * 2 * outer * (1 + outer / inner));
    expectPrinted(byInner, '4359.817', 'inner expression');
    expectPrinted(byOuter, '2774.429', 'outer expression');
    const computed = capacity(lap(110_000, 8.6e-6, 0)).factor;
    expectClose(computed, Math.min(byInner, byOuter), { relative: 1e-6 }, 'strength');
  });

  it('H2, balanced: strength and plastic zones', () => {
    const found = capacity(lap(70_000, 2e-6, 0));
    expectClose(found.factor, 3067.2445, { relative: 5e-7 }, 'strength');
    const state = chainState(lap(70_000, 2e-6, 0), found.chain);
    for (const zone of state.plastic(0)) {
      expectClose(zone.to - zone.from, 14.987, { absolute: 5e-4 }, 'plastic zone');
    }
    const omega = Math.sqrt(4000 * (1 / 140_000 + 2 / 280_000));
    expectPrinted(omega, '0.23905', 'decay rate');
  });

  it('C2: an elastic trough of six decay lengths keeps a tenth of yield in its middle', () => {
    const omega = Math.sqrt(4000 * (1 / 140_000 + 2 / 280_000));
    const problem = { ...lap(70_000, 2e-6, 0), length: 2 * 14.987 + 6 / omega };
    const found = capacity(problem);
    const state = chainState(problem, found.chain);
    const middle = state.shear(0, 0, problem.length / 2) / 40;
    expectPrinted(1 / Math.cosh(3), '0.0993', 'the identity');
    // The zones of this shorter lap differ from the long one's in the fifth digit.
    expectClose(middle, 1 / Math.cosh(3), { relative: 5e-3 }, 'trough over yield');
    expectClose(problem.length, 55.07, { absolute: 5e-3 }, 'overlap');
  });
});

describe('C3: peel at the free end of an outer adherend', () => {
  it('gives the digits of the plate on an elastic foundation', () => {
    expectPrinted(outerAdherendPeel(40, 2500, 2, 70_000, 0.3, 0.2), '39.747621', 'peel');
  });
});
