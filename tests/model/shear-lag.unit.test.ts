/** Properties of the elastic shear lag: equilibrium, end conditions, limits, stability. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BondLaw, Channel } from '../../src/model/lap/problem.ts';
import { makeBasis } from '../../src/model/shear-lag/basis.ts';
import { solveOneBond } from '../../src/model/shear-lag/one-bond.ts';
import { solveTwoBonds } from '../../src/model/shear-lag/two-bond.ts';
import { expectClose } from '../support/close.ts';
import { integrateFromEnds } from '../support/integrate.ts';
import { bond, channel, member } from '../support/laps.ts';

const positive = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
/** Zero, or a number whose square is still an ordinary one: denormal loads are no loads. */
const signed = (size: number) =>
  fc.double({ min: -size, max: size, noNaN: true }).map((x) => (Math.abs(x) < 1e-9 * size ? 0 : x));

const bonds = (count: number) =>
  fc
    .array(fc.record({ g: positive(50, 3000), h: positive(0.05, 2), width: positive(5, 300) }), {
      minLength: count,
      maxLength: count,
    })
    .map((list) => list.map(({ g, h, width }) => bond(g, h, width)));

const channels = (count: number) =>
  fc
    .record({
      load: signed(1e5),
      tube: fc.record({ s: positive(1e4, 1e9), e: signed(2e-3) }),
      outers: fc.array(fc.record({ s: positive(1e4, 1e9), e: signed(2e-3) }), {
        minLength: count,
        maxLength: count,
      }),
      levers: fc.array(positive(0.5, 2), { minLength: count, maxLength: count }),
    })
    .map(({ load, tube, outers, levers }) =>
      channel(
        load,
        member(tube.s, tube.e),
        outers.map(({ s, e }) => member(s, e)),
        levers,
      ),
    );

const lengths = positive(1, 500);

describe('the even and odd solutions', () => {
  it('are exact to rounding from ωL = 1e-6 to 1e4', () => {
    for (const omegaL of [1e-6, 1e-3, 0.1, 1, 10, 1e3, 1e4]) {
      const basis = makeBasis(omegaL / 25, 25);
      expect(basis.even(25)).toBeCloseTo(1, 14);
      expect(basis.odd(25)).toBeCloseTo(1, 14);
      expect(basis.odd(12.5)).toBe(0);
      for (const t of [0, 0.1, 0.4, 0.5, 0.9, 1]) {
        const z = omegaL * (t - 0.5);
        const even = Math.exp(Math.abs(z) - omegaL / 2) * (1 + Math.exp(-2 * Math.abs(z)));
        const exact = even / (1 + Math.exp(-omegaL));
        expectClose(basis.even(25 * t), exact, { relative: 1e-12, absolute: 1e-300 }, `even ${t}`);
        // For a soft bond the odd solution is a straight line.
        if (omegaL < 1e-2) {
          expectClose(basis.odd(25 * t), 2 * t - 1, { absolute: 1e-6 }, `odd ${t}`);
        }
        const beyond = integrateFromEnds((x) => (x < 25 * t ? 0 : basis.even(x)), 25, omegaL / 25);
        if (t === 0) {
          expectClose(basis.evenBeyond(0), beyond, { relative: 1e-9 }, 'whole integral of even');
        }
      }
    }
  });
});

describe('one bond', () => {
  it('carries the load, whatever the stiffnesses, loads and temperature', () => {
    fc.assert(
      fc.property(channels(1), bonds(1), lengths, (lap, [law], length) => {
        const { mechanical, thermal, omegaMax } = solveOneBond(lap, law!, length);
        const transfer = lap.levers[0]! * law!.width;
        const scale = { relative: 1e-9, absolute: 1e-9 };
        const carried =
          transfer * integrateFromEnds((x) => mechanical.shear(0, x), length, omegaMax);
        expectClose(carried, lap.load, scale, 'load by the shear');
        expectClose(
          mechanical.outerForce(0, 0),
          lap.load,
          scale,
          'force in the sleeve at the root',
        );
        expectClose(
          thermal.outerForce(0, 0),
          0,
          { absolute: (1e-6 * Math.abs(thermal.shear(0, 0)) * transfer) / omegaMax + 1e-12 },
          'thermal force',
        );
        expect(mechanical.outerForce(0, length)).toBeCloseTo(0, 9);
      }),
      { numRuns: 300 },
    );
  });

  it('satisfies the differential equation and both end slopes', () => {
    fc.assert(
      fc.property(channels(1), bonds(1), lengths, (lap, [law], length) => {
        const { mechanical, omegaMax } = solveOneBond(lap, law!, length);
        const h = Math.min(1e-4 / omegaMax, length / 100);
        const slope = (x: number, step: number): number =>
          (mechanical.shear(0, x + step) - mechanical.shear(0, x)) / step;
        const k = law!.stiffness * lap.levers[0]! * lap.load;
        const atRoot = -k / lap.outers[0]!.stiffness;
        const atMouth = k / lap.tube.stiffness;
        const size = Math.abs(mechanical.shear(0, 0)) + Math.abs(mechanical.shear(0, length));
        const allowed = { absolute: 1e-3 * size * omegaMax + ((1e-6 * size) / h) * 1e-6 };
        expectClose(slope(0, h), atRoot, allowed, 'slope at the root');
        expectClose(slope(length, -h), atMouth, allowed, 'slope at the mouth');
      }),
      { numRuns: 300 },
    );
  });

  it('is the mean shear for a soft bond and finite for a hard one', () => {
    for (const omegaL of [1e-6, 1e-4, 1, 1e2, 1e4]) {
      const steel = member(1e6);
      const length = 30;
      const stiffness = (omegaL / length) ** 2 / (10 * 2e-6);
      const law: BondLaw = { width: 10, stiffness, shearYield: 1e9, slipAtFailure: 1e9 };
      const { mechanical } = solveOneBond(channel(5000, steel, [steel]), law, length);
      for (const x of [0, 7, 15, 30]) expect(Number.isFinite(mechanical.shear(0, x))).toBe(true);
      const exact = (5000 * omegaL) / (2 * 10 * length * Math.tanh(omegaL / 2));
      expectClose(
        mechanical.shear(0, length),
        exact,
        { relative: 1e-12 },
        `peak at ωL = ${omegaL}`,
      );
    }
  });

  it('mirrors when the stiffer end changes sides, and is linear in the load', () => {
    const soft = member(2e6);
    const stiff = member(5e6);
    const law = bond(800, 0.2, 60);
    const one = solveOneBond(channel(1000, soft, [stiff]), law, 20).mechanical;
    const other = solveOneBond(channel(1000, stiff, [soft]), law, 20).mechanical;
    const double = solveOneBond(channel(2000, soft, [stiff]), law, 20).mechanical;
    for (const x of [0, 3, 11, 20]) {
      expectClose(one.shear(0, x), other.shear(0, 20 - x), { relative: 1e-12 }, `mirror at ${x}`);
      expectClose(2 * one.shear(0, x), double.shear(0, x), { relative: 1e-12 }, `twice at ${x}`);
    }
  });

  it('peaks where the tube is the softer: at the mouth', () => {
    const law = bond(800, 0.2, 60);
    const lap = solveOneBond(channel(1000, member(2e6), [member(5e6)]), law, 20).mechanical;
    expect(lap.shear(0, 20)).toBeGreaterThan(lap.shear(0, 0));
  });
});

const residualAtRoot = (lap: Channel, laws: readonly BondLaw[], shear: readonly number[]): number =>
  shear[0]! / laws[0]!.stiffness / lap.levers[0]! - shear[1]! / laws[1]!.stiffness / lap.levers[1]!;

describe('two bonds', () => {
  it('carry the load, and share one displacement at the root', () => {
    fc.assert(
      fc.property(channels(2), bonds(2), lengths, (lap, laws, length) => {
        const { mechanical, thermal } = solveTwoBonds(lap, laws, length);
        const sum = mechanical.outerForce(0, 0) + mechanical.outerForce(1, 0);
        expectClose(sum, lap.load, { relative: 1e-8, absolute: 1e-8 }, 'load');
        for (const part of [mechanical, thermal]) {
          const shear = [part.shear(0, 0), part.shear(1, 0)];
          const scale =
            Math.abs(shear[0]! / laws[0]!.stiffness) + Math.abs(shear[1]! / laws[1]!.stiffness);
          expectClose(
            residualAtRoot(lap, laws, shear),
            0,
            { absolute: 1e-8 * scale + 1e-15 },
            'root',
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  it('are one bond of double width when both halves are alike', () => {
    fc.assert(
      fc.property(channels(1), bonds(1), lengths, (lap, [law], length) => {
        const outer = lap.outers[0]!;
        const lever = lap.levers[0]!;
        const both = channel(lap.load, lap.tube, [outer, outer], [lever, lever]);
        const whole = channel(
          lap.load,
          lap.tube,
          [{ ...outer, stiffness: 2 * outer.stiffness }],
          [lever],
        );
        const wide = { ...law!, width: 2 * law!.width };
        const two = solveTwoBonds(both, [law!, law!], length);
        const one = solveOneBond(whole, wide, length);
        const scale =
          Math.abs(one.mechanical.shear(0, length)) + Math.abs(one.mechanical.shear(0, 0));
        for (const t of [0, 0.3, 0.5, 1]) {
          for (const j of [0, 1]) {
            expectClose(
              two.mechanical.shear(j, t * length),
              one.mechanical.shear(0, t * length),
              { absolute: 1e-8 * scale },
              `shear at ${t}`,
            );
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it('give the mean shear by equilibrium as the bonds go soft', () => {
    const steel = member(1e7);
    const laws = [bond(1e-6, 1, 10), bond(3e-6, 1, 20)];
    const { mechanical } = solveTwoBonds(channel(1000, steel, [steel, steel]), laws, 10);
    // Rigid walls slip alike: shear in proportion to the stiffness of each bond.
    expectClose(mechanical.shear(0, 4) * 3, mechanical.shear(1, 6), { relative: 1e-6 }, 'ratio');
    const force = 10 * (10 * mechanical.shear(0, 5) + 20 * mechanical.shear(1, 5));
    expectClose(force, 1000, { relative: 1e-6 }, 'load');
  });

  it('stay finite from very soft to very hard', () => {
    for (const g of [1e-9, 1e-3, 1, 1e3, 1e9]) {
      const lap = channel(1000, member(1e6, 1e-4), [member(2e6), member(3e5, -1e-4)]);
      const { mechanical, thermal } = solveTwoBonds(
        lap,
        [bond(g, 0.2, 50), bond(2 * g, 0.3, 70)],
        40,
      );
      for (const x of [0, 1e-9, 20, 40]) {
        for (const j of [0, 1]) {
          expect(Number.isFinite(mechanical.shear(j, x))).toBe(true);
          expect(Number.isFinite(thermal.outerForce(j, x))).toBe(true);
        }
      }
    }
  });
});
