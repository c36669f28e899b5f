/** Factors asked for, factors reached, and the walls' strength. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedFactor } from '../../src/model/margins/asked.ts';
import { clockings, worstClockings } from '../../src/model/margins/clocking.ts';
import { cyclicShare } from '../../src/model/margins/cyclic.ts';
import { placeOf } from '../../src/model/margins/result.ts';
import { factorTo } from '../../src/model/margins/shear-factor.ts';
import { NO_BENDING } from '../../src/model/margins/wall-bending.ts';
import { laminateFactor, metalFactor } from '../../src/model/margins/wall-strength.ts';
import { expectClose } from '../support/close.ts';
import { positive, signed } from '../support/random-laps.ts';
import { noLoads } from '../support/section-12.ts';

describe('factors asked for', () => {
  const factors = { limit: 1.1, ultimate: 1.5, fitting: 1.2 };

  it('follow the table of the method', () => {
    const table = (['limit', 'ultimate', 'cyclic'] as const).map((kind) =>
      (
        [
          'adhesive-yield',
          'adhesive-strain',
          'durability-trough',
          'cyclic-shear',
          'metal-yield',
          'metal-ultimate',
          'laminate-strength',
        ] as const
      ).map((mode) => {
        const asked = askedFactor(mode, kind, factors);
        return asked === null ? null : Math.round(asked * 1000) / 1000;
      }),
    );
    expect(table).toEqual([
      [1.32, 1.8, 1.32, null, 1.32, 1.8, 1.8],
      [null, 1.2, null, null, null, 1.2, 1.2],
      [1.32, 1.8, 1.32, 1.32, 1.32, 1.8, 1.8],
    ]);
  });
});

describe('the factor to a limit', () => {
  it('brings stress exactly to the limit, and none where stress is there already', () => {
    fc.assert(
      fc.property(positive(1, 1000), signed(900), signed(500), signed(500), (limit, t, m, n) => {
        const factor = factorTo(limit, t, m, n);
        if (Math.abs(t) >= limit) expect(factor).toBe(0);
        else if (m === 0 && n === 0) expect(factor).toBe(Number.POSITIVE_INFINITY);
        else {
          expectClose(Math.hypot(t + factor * m, factor * n), limit, { relative: 1e-9 }, 'stress');
          // And not before.
          expect(Math.hypot(t + 0.5 * factor * m, 0.5 * factor * n)).toBeLessThanOrEqual(
            limit * (1 + 1e-9),
          );
        }
      }),
    );
  });
});

describe('walls', () => {
  it('metal by von Mises', () => {
    expectClose(
      metalFactor({ axial: 0, thermal: 0, shear: 100 }, 830, NO_BENDING),
      830 / (100 * Math.sqrt(3)),
      { relative: 1e-12 },
      'shear',
    );
    expectClose(
      metalFactor({ axial: 100, thermal: 30, shear: 0 }, 830, NO_BENDING),
      8,
      { relative: 1e-12 },
      'after heat',
    );
    expectClose(
      metalFactor({ axial: -100, thermal: 30, shear: 0 }, 830, NO_BENDING),
      8.6,
      { relative: 1e-12 },
      'against heat',
    );
  });

  it('metal with stress around and bending, by von Mises', () => {
    const face = { axialHeld: 50, axialLoad: 20, hoopHeld: -30, hoopLoad: 60 };
    const stress = { axial: 100, thermal: 10, shear: 40 };
    const factor = metalFactor(stress, 830, face);
    const along = 60 + factor * 120;
    const around = -30 + factor * 60;
    const mises = Math.sqrt(along ** 2 - along * around + around ** 2 + 3 * (factor * 40) ** 2);
    expectClose(mises, 830, { relative: 1e-12 }, 'von Mises at the factor');
    expect(metalFactor({ axial: 1, thermal: 900, shear: 0 }, 830, NO_BENDING)).toBe(0);
  });

  const laminate = {
    kind: 'orthotropic',
    axialModulus: 70_000,
    hoopModulus: 30_000,
    shearModulus: 15_000,
    poisson: 0.3,
    axialExpansion: 0,
    hoopExpansion: 0,
    throughShearModulus: 4000,
    tensileStrength: 700,
    compressiveStrength: 500,
    shearStrength: 150,
  } as const;

  it('laminate by its own strength on each side, shear added by squares', () => {
    const factor = (axial: number, shear: number, thermal = 0): number =>
      laminateFactor({ axial, shear, thermal }, laminate, NO_BENDING);
    expectClose(factor(100, 0), 7, { relative: 1e-12 }, 'tension');
    expectClose(factor(-100, 0), 5, { relative: 1e-12 }, 'compression');
    expectClose(factor(0, 30), 5, { relative: 1e-12 }, 'shear');
    expectClose(factor(70, 15), 1 / Math.sqrt(0.01 + 0.01), { relative: 1e-12 }, 'both');
    expectClose(factor(-100, 0, 100), 6, { relative: 1e-12 }, 'compression against heat');
  });
});

describe('clockings', () => {
  it('are as many as the loads need', () => {
    expect(clockings(false, { ...noLoads, force: 1, torque: 1 })).toEqual([0]);
    expect(clockings(false, { ...noLoads, moment: 1 })).toEqual([0, Math.PI]);
    expect(clockings(false, { ...noLoads, shear: 1 })).toHaveLength(24);
    expect(clockings(true, { ...noLoads, shear: 1 })).toEqual([0]);
  });

  it('find the worst between the stations', () => {
    const loads = { ...noLoads, shear: 1 };
    const found = worstClockings(
      false,
      loads,
      (theta) => 3 - Math.cos(theta - 1) - Math.cos(2 * (theta - 1)),
    );
    expect(found[0]!.theta).toBeCloseTo(1, 3);
    expect(found[0]!.factor).toBeCloseTo(1, 6);
    expect(found.length).toBe(2);
  });

  it('name any one where all are alike', () => {
    expect(worstClockings(false, { ...noLoads, shear: 1 }, () => 0)).toEqual([
      { theta: 0, factor: 0 },
    ]);
  });
});

describe('cycles and places', () => {
  it('follow the S-N line, capped at yield', () => {
    // J. Soc. Mater. Sci. Japan 34 (386), 1985, abstract: 1.71·N^−0.12 at 1e3 … 1e7.
    for (const [cycles, share] of [
      [1e3, 0.746],
      [1e4, 0.566],
      [1e5, 0.43],
      [1e6, 0.326],
      [1e7, 0.247],
    ] as const) {
      expectClose(cyclicShare(1.71, 0.12, cycles), share, { absolute: 5e-4 }, `share at ${cycles}`);
    }
    expect(cyclicShare(1.71, 0.12, 50)).toBe(1);
  });

  it('name the ends', () => {
    expect([0, 1e-9, 15, 30].map((x) => placeOf(x, 30))).toEqual([
      'root',
      'root',
      'within',
      'mouth',
    ]);
  });
});
