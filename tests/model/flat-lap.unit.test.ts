/** Properties of the flat single lap: limits, symmetry, balance, extremes, refusals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/model/errors.ts';
import { homogeneousAdherend } from '../../src/model/flat-lap/adherend.ts';
import { golandReissnerFactor, hartSmithFactor } from '../../src/model/flat-lap/edge-factor.ts';
import { edgeMoments, type FlatSingleLap } from '../../src/model/flat-lap/edge-moment.ts';
import { type EqualLap, golandReissner } from '../../src/model/flat-lap/goland-reissner.ts';
import { expectClose } from '../support/close.ts';

const positive = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

const walls = fc
  .record({ t: positive(0.05, 30), e: positive(500, 5e5), soft: positive(0.2, 2) })
  .map(({ t, e, soft }) => {
    const wall = homogeneousAdherend(t, e, 0.3);
    return { ...wall, bendingStiffness: wall.bendingStiffness * soft };
  });
const laps: fc.Arbitrary<FlatSingleLap> = fc.record({
  load: positive(1e-6, 1e6),
  overlap: positive(0.1, 1e4),
  gap: positive(0.01, 5),
  root: walls,
  mouth: walls,
});
const methods = ['golandReissner', 'hartSmith'] as const;
const thin = homogeneousAdherend(1, 70_000, 0.3);
const thick = homogeneousAdherend(3, 70_000, 0.3);
const lapOf = (load: number, root = thin, mouth = thin, gap = 0): FlatSingleLap => ({
  load,
  overlap: 20,
  gap,
  root,
  mouth,
});

describe('the factors', () => {
  it('are 1 at no load and fall with it, Goland and Reissner to 0.261, Hart-Smith to nothing', () => {
    expect(golandReissnerFactor(0)).toBe(1);
    expect(hartSmithFactor(0)).toBe(1);
    expectClose(golandReissnerFactor(1e-9), 1, { absolute: 3e-9 }, 'small');
    for (const far of [50, 1e4, 1e300]) {
      expectClose(golandReissnerFactor(far), 0.2612038749637414, { relative: 1e-14 }, 'long');
    }
    expect(hartSmithFactor(1e300)).toBe(0);
    for (let u = 0; u < 5; u += 0.1) {
      expect(golandReissnerFactor(u + 0.1)).toBeLessThan(golandReissnerFactor(u));
      expect(hartSmithFactor(u + 0.1)).toBeLessThan(hartSmithFactor(u));
    }
  });

  it('are the published quotient where that does not overflow', () => {
    for (const u of [0.01, 0.3, 2, 30]) {
      const quotient = Math.cosh(u) / (Math.cosh(u) + 2 * Math.SQRT2 * Math.sinh(u));
      expectClose(golandReissnerFactor(u), quotient, { relative: 1e-14 }, `uc = ${u}`);
    }
  });
});

describe('the ends of the overlap', () => {
  it('keep the overlap in balance and every figure finite, any walls, any load', () => {
    fc.assert(
      fc.property(laps, (lap) => {
        const both = edgeMoments(lap);
        for (const method of methods) {
          const { root, mouth, transverseForce } = both[method];
          const whole = lap.load * both.lever;
          const sum = root.moment + mouth.moment + transverseForce * lap.overlap;
          expectClose(sum, whole, { relative: 1e-9 }, `balance, ${method}`, lap);
          for (const { factor } of [root, mouth]) {
            expect(factor).toBeGreaterThanOrEqual(0);
            expect(factor).toBeLessThan(2);
          }
          expect(transverseForce).toBeGreaterThanOrEqual(-1e-12 * (whole / lap.overlap));
        }
      }),
    );
  });

  it('change places with the walls', () => {
    fc.assert(
      fc.property(laps, (lap) => {
        const one = edgeMoments(lap);
        const other = edgeMoments({ ...lap, root: lap.mouth, mouth: lap.root });
        for (const method of methods) {
          // Rounding is that of the whole moment: the smaller end can be a small part of it.
          const near = { absolute: 1e-11 * Math.abs(lap.load * one.lever) };
          expectClose(other[method].root.moment, one[method].mouth.moment, near, method, lap);
          expectClose(other[method].mouth.moment, one[method].root.moment, near, method, lap);
        }
      }),
    );
  });

  it('lead to the published factor as the walls become equal', () => {
    const nearly = homogeneousAdherend(1 + 1e-9, 70_000, 0.3);
    const equal = edgeMoments(lapOf(200));
    const almost = edgeMoments(lapOf(200, thin, nearly));
    const uc = (10 * Math.sqrt(200 / thin.bendingStiffness)) / Math.sqrt(8);
    for (const method of methods) {
      const k = equal[method].root.factor;
      expectClose(almost[method].root.factor, k, { relative: 1e-8 }, method);
      expectClose(almost[method].mouth.factor, k, { relative: 1e-8 }, method);
    }
    expectClose(
      equal.golandReissner.mouth.factor,
      golandReissnerFactor(uc),
      { relative: 1e-12 },
      'published',
    );
    expect([equal.balanced, almost.balanced]).toEqual([true, true]);
  });

  it('share the moment as the root of D when the load is small, both methods alike', () => {
    const {
      golandReissner: g,
      hartSmith: h,
      lever,
      balanced,
    } = edgeMoments(lapOf(1e-9, thin, thick, 0.2));
    expectClose(lever, 2.2, { relative: 1e-15 }, 'lever');
    expect(balanced).toBe(false);
    const ratio = Math.sqrt(thick.bendingStiffness / thin.bendingStiffness);
    for (const { root, mouth } of [g, h]) {
      expectClose(mouth.moment / root.moment, ratio, { relative: 1e-4 }, 'share');
      expectClose(root.factor + mouth.factor, 2, { relative: 1e-4 }, 'whole moment');
    }
  });

  it('do not take the weaker wall for the cautious side: the stiffer one gives the larger factor', () => {
    const mixed = edgeMoments(lapOf(100, thin, thick));
    const weak = edgeMoments(lapOf(100, thin, thin));
    const stiff = edgeMoments(lapOf(100, thick, thick));
    for (const method of methods) {
      expect(stiff[method].root.factor).toBeGreaterThan(weak[method].root.factor);
      expect(mixed[method].mouth.factor).toBeGreaterThan(weak[method].mouth.factor);
    }
    const { root, mouth } = mixed.hartSmith;
    const wanted = stiff.hartSmith.root.factor;
    expectClose((root.factor + mouth.factor) / 2, wanted, { relative: 1e-12 }, 'mean of both ends');
  });

  it('have no moment without load, and in compression that of the undeformed shape, flagged', () => {
    const none = edgeMoments(lapOf(0));
    expect(none.growsWithLoad).toBe(false);
    const pushed = edgeMoments(lapOf(-100, thin, thin, 0.2));
    expect(pushed.growsWithLoad).toBe(true);
    expect(edgeMoments(lapOf(100)).growsWithLoad).toBe(false);
    for (const method of methods) {
      expect(none[method].root).toEqual({ factor: 1, moment: 0 });
      expect(pushed[method].root.factor).toBe(1);
      expectClose(pushed[method].mouth.moment, -60, { relative: 1e-14 }, 'undeformed');
      expect(pushed[method].transverseForce).toBe(0);
    }
  });

  it('refuse what is no lap, and name the input', () => {
    const wrong: [Partial<FlatSingleLap>, string][] = [
      [{ overlap: 0 }, 'overlap'],
      [{ load: Number.NaN }, 'load'],
      [{ gap: -0.1 }, 'gap'],
      [{ root: { ...thin, bendingStiffness: 0 } }, 'bendingStiffness'],
      [{ mouth: { ...thin, thickness: Number.POSITIVE_INFINITY } }, 'thickness'],
    ];
    for (const [change, input] of wrong) {
      const ask = () => edgeMoments({ ...lapOf(100), ...change });
      expect(ask).toThrow(ModelError);
      expect(ask).toThrow(expect.objectContaining({ input }));
    }
  });
});

const equalLaps: fc.Arbitrary<EqualLap> = fc.record({
  load: positive(1e-3, 1e5),
  overlap: positive(0.01, 1e5),
  thickness: positive(0.05, 30),
  modulus: positive(500, 5e5),
  adhesive: fc.record({
    thickness: positive(0.01, 5),
    shearModulus: positive(1, 5000),
    modulus: positive(1, 2e4),
  }),
});
const ends = fc.record({
  factor: fc.double({ min: 0, max: 1, noNaN: true }),
  transverseForce: positive(1e-6, 1e3),
});

describe('the stresses', () => {
  const lap: EqualLap = {
    load: 100,
    overlap: 400,
    thickness: 2,
    modulus: 70_000,
    adhesive: { thickness: 0.2, shearModulus: 800, modulus: 2400 },
  };
  const end = { factor: 0.6, transverseForce: 3 };

  it('are finite, symmetric and carry the loads, from very short to very long overlaps', () => {
    fc.assert(
      fc.property(equalLaps, ends, fc.double({ min: 0, max: 1, noNaN: true }), (any, at, z) => {
        const solution = golandReissner(any, at);
        const x = z * any.overlap;
        const mirrored = any.overlap - x;
        // A station is known to the rounding of the overlap: its phase with it.
        const eta =
          (6 * any.adhesive.modulus) / (any.modulus * any.thickness ** 3 * any.adhesive.thickness);
        const blur = 1e-14 * (10 + eta ** 0.25 * any.overlap);
        const peel = Math.abs(solution.peel(0));
        const moment = (at.factor * any.load * any.thickness) / 2;
        const peelSize = Math.max(peel, Math.sqrt(eta) * moment + eta ** 0.25 * at.transverseForce);
        const shear = solution.shear(0);
        for (const value of [solution.shear(x), solution.peel(x), shear, peel]) {
          expect(Number.isFinite(value)).toBe(true);
        }
        const small = (of: number) => ({ absolute: Math.max(blur, 1e-10) * of });
        expectClose(solution.shear(mirrored), solution.shear(x), small(shear), 'shear', any);
        expectClose(solution.peel(mirrored), solution.peel(x), small(peelSize), 'peel', any);
        const carried = solution.shearForce(any.overlap);
        expectClose(carried, any.load, { relative: 1e-11 }, 'load', any);
        const lift = solution.peelForce(any.overlap);
        expectClose(lift, at.transverseForce, { relative: 1e-9 }, 'lift', any);
        expect(Math.abs(solution.shearForce(0))).toBeLessThanOrEqual(1e-11 * any.load);
      }),
    );
  });

  it('of a long overlap are those of one end alone', () => {
    const solution = golandReissner(lap, end);
    const eta = ((6 * 2400) / (70_000 * 8 * 0.2)) ** 0.25;
    const rate = Math.sqrt((8 * 800) / (70_000 * 2 * 0.2));
    for (const d of [0, 0.7, 3, 9]) {
      const moment = eta * eta * 60 * (Math.cos(eta * d) - Math.sin(eta * d));
      const peel = Math.exp(-eta * d) * (moment + eta * 3 * Math.cos(eta * d));
      expectClose(solution.peel(lap.overlap - d), peel, { relative: 1e-10 }, `peel ${d} inside`);
      const shear = (100 / 8) * (rate * 2.8 * Math.exp(-rate * d) + (6 * 0.4) / 400);
      expectClose(solution.shear(d), shear, { relative: 1e-10 }, `shear ${d} inside`);
    }
    expect(Math.abs(solution.peel(200))).toBeLessThan(1e-15);
  });

  it('of an overlap without end are finite, and of a very short one uniform', () => {
    const endless = golandReissner({ ...lap, overlap: 1e9 }, end);
    expectClose(endless.peel(0), golandReissner(lap, end).peel(0), { relative: 1e-9 }, 'peel');
    expect(endless.peel(5e8)).toBe(0);
    const short = golandReissner({ ...lap, overlap: 1e-4 }, { factor: 1, transverseForce: 3 });
    for (const x of [0, 3e-5, 1e-4]) {
      expectClose(short.shear(x), 1e6, { relative: 1e-6 }, 'mean shear');
      expectClose(short.peel(x), 3e4, { relative: 1e-6 }, 'mean peel');
    }
  });

  it('turn round with the loads', () => {
    const pulled = golandReissner(lap, end);
    const pushed = golandReissner({ ...lap, load: -100 }, { factor: 0.6, transverseForce: -3 });
    for (const x of [0, 1, 50, 399]) {
      expect(pushed.shear(x)).toBe(-pulled.shear(x));
      expect(pushed.peel(x)).toBeCloseTo(-pulled.peel(x), 12);
    }
  });

  it('are refused outside the overlap and for what is no lap', () => {
    const solution = golandReissner(lap, end);
    for (const x of [-1e-9, 400.1, Number.NaN]) {
      expect(() => solution.peel(x)).toThrow(ModelError);
      expect(() => solution.shearForce(x)).toThrow(ModelError);
    }
    const refused = (change: Partial<EqualLap>, input: string) =>
      expect(() => golandReissner({ ...lap, ...change }, end)).toThrow(
        expect.objectContaining({ input }),
      );
    refused({ overlap: -1 }, 'overlap');
    refused({ modulus: 0 }, 'modulus');
    refused({ load: Number.POSITIVE_INFINITY }, 'load');
    refused({ adhesive: { ...lap.adhesive, thickness: 0 } }, 'gap');
    expect(() => golandReissner(lap, { ...end, factor: Number.NaN })).toThrow(ModelError);
  });
});
