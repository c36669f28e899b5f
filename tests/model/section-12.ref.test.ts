/**
 * What the comparison with finite elements says of choices in the method. The figures themselves, curve by
 * curve, are in the verification book (tests/verification/cases/finite-elements.ts).
 */
import { describe, expect, it } from 'vitest';
import { solveElastic } from '../../src/model/shear-lag/solve-elastic.ts';
import { expectClose } from '../support/close.ts';
import {
  axialShear,
  bendingShear,
  doubleLap,
  noLoads,
  section12,
  singleLap,
  thermalShear,
} from '../support/section-12.ts';

const solve = (...args: Parameters<typeof section12>) => {
  const problem = section12(...args);
  return solveElastic(problem.channels[0]!, problem.bonds, problem.length);
};

describe('single-lap socket', () => {
  it("is 18 to 25 % high at the mouth without the adherends' own shear", () => {
    const plain = solve(singleLap, { ...noLoads, force: 1e4 }, 0, false);
    for (const [x, shear] of axialShear.filter(([at]) => at > 29.5)) {
      const excess = plain.mechanical.shear(0, x) / shear - 1;
      expect(excess).toBeGreaterThan(0.18);
      expect(excess).toBeLessThan(0.25);
    }
  });

  it('has the sign of the thermal shear everywhere', () => {
    const { thermal } = solve(singleLap, noLoads, -100);
    for (const [x, shear] of thermalShear) {
      expect(Math.sign(thermal.shear(0, x))).toBe(Math.sign(shear));
    }
  });

  it('comes out 36 % high at the root when bent as an axial problem at the local line load', () => {
    // The line load at the tube's mean radius, N = M/(πr²).
    const local = solve(singleLap, { ...noLoads, force: (2 * 200_000) / 15.2 }, 0);
    const [x, shear] = bendingShear[0]!;
    expect(local.mechanical.shear(0, x) / shear).toBeGreaterThan(1.36);
  });
});

describe('double-lap sleeve', () => {
  it('carries all of the load in its two bonds', () => {
    const { mechanical } = solve(doubleLap, { ...noLoads, force: 2e4 }, 0);
    const sum = mechanical.outerForce(0, 0) + mechanical.outerForce(1, 0);
    expectClose(sum, 2e4, { relative: 1e-12 }, 'sum');
  });
});
