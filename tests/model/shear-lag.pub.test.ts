/** Elastic shear lag against published answers. */
import { describe, expect, it } from 'vitest';
import { annulus } from '../../src/model/joint/section.ts';
import { decayRate, solveOneBond } from '../../src/model/shear-lag/one-bond.ts';
import { solveTwoBonds } from '../../src/model/shear-lag/two-bond.ts';
import { expectClose, expectPrinted, halfLastDigit } from '../support/close.ts';
import { bond, channel, member } from '../support/laps.ts';

describe('A1: single lap of equal strips', () => {
  // C. Willberg, Krafteinleitung und Fügetechniken, exercise 3, after H. Schürmann, ch. 23.
  const lap = (width: number) => {
    const strip = member(70_000 * 2 * width);
    const law = bond(800, 0.1, width);
    const load = channel(6000, strip, [strip]);
    return { omega: decayRate(load, law), solution: solveOneBond(load, law, 30), width };
  };

  it('gives the published stiffness ratio and limit overlap', () => {
    const { omega } = lap(25);
    expectPrinted((omega * 30) ** 2, '102.9', 'rho squared');
    expectPrinted(omega * 30, '10.14', 'rho');
    expectPrinted(5 / Math.sqrt((800 / (70_000 * 2 * 0.1)) * 2), '14.8', 'limit overlap');
    expectPrinted(5 / omega, '14.8', 'limit overlap by the decay rate');
  });

  it('gives the published peak at both ends, for both widths', () => {
    for (const [width, printed] of [
      [25, '40.6'],
      [50, '20.3'],
    ] as const) {
      const { solution } = lap(width);
      expectPrinted(solution.mechanical.shear(0, 30), printed, `peak at the mouth, b = ${width}`);
      expectPrinted(solution.mechanical.shear(0, 0), printed, `peak at the root, b = ${width}`);
    }
    expectPrinted(6000 / (25 * 30), '8.0', 'mean shear');
  });
});

describe('J1: double lap with thermal mismatch', () => {
  // R. Budynas, K. Nisbett, Shigley's Mechanical Engineering Design, adhesive double-lap example:
  // inputs as read on a public page, printed answers from memory. Inches and psi throughout.
  const deltaT = 70 - 200;
  const steel = member(30e6 * 0.1, 6.0e-6 * deltaT);
  const aluminium = member(10e6 * 0.15, 13.3e-6 * deltaT);
  const law = bond(0.2e6, 0.02, 1);
  const solution = solveTwoBonds(channel(2000, steel, [aluminium, aluminium]), [law, law], 1);

  it('gives the printed decay rate', () => {
    expectPrinted(solution.omegaMax, '3.65', 'omega');
  });

  it('gives the digits of an independent boundary-value solution, the printed ones to 0.06 %', () => {
    const both = (x: number): number =>
      solution.mechanical.shear(0, x) + solution.thermal.shear(0, x);
    for (const [x, exact, printed] of [
      [0, -544.43, -544],
      [0.5, 603.92, 604],
      [1, 4390.49, 4388],
    ] as const) {
      expectClose(both(x), exact, { absolute: halfLastDigit('0.00') }, `shear at ${x} in`);
      // The textbook rounds omega to 3.65 before it goes on.
      expectClose(both(x), printed, { relative: 1e-3 }, `printed shear at ${x} in`);
    }
    expectClose(solution.thermal.shear(0, 1), 2467.46, { absolute: 0.005 }, 'thermal alone (J2)');
  });

  it('shares the load equally by symmetry', () => {
    expectClose(solution.mechanical.outerForce(0, 0), 1000, { relative: 1e-12 }, 'half the load');
    expectClose(solution.mechanical.outerForce(1, 0), 1000, { relative: 1e-12 }, 'half the load');
  });
});

describe('D1, D3: carbon tube in a titanium sleeve', () => {
  // The project's own reference case, solved as a boundary-value problem to all printed digits.
  const tubeArea = annulus(23, 25).area;
  const sleeveArea = annulus(25.2, 26.7).area;
  const law = bond(800, 0.2, 2 * Math.PI * 25.1);
  const deltaT = -100;
  const solution = solveOneBond(
    channel(50_000, member(70_000 * tubeArea, 2e-6 * deltaT), [
      member(110_300 * sleeveArea, 8.6e-6 * deltaT),
    ]),
    law,
    40,
  );

  it('D1: gives the axial peaks, their ratios and the trough', () => {
    const mean = 50_000 / (law.width * 40);
    const { mechanical } = solution;
    expectPrinted(solution.omegaMax, '0.230793', 'omega');
    expectPrinted(mean, '7.92604', 'mean shear');
    expectPrinted(mechanical.shear(0, 40) / mean, '5.17962', 'ratio at the mouth');
    expectPrinted(mechanical.shear(0, 0) / mean, '4.05392', 'ratio at the root');
    expectPrinted(mechanical.shear(0, 40), '41.0539', 'peak at the mouth');
    expectPrinted(mechanical.shear(0, 0), '32.1315', 'peak at the root');
    let lowest = Number.POSITIVE_INFINITY;
    for (let x = 0; x <= 40; x += 0.01) lowest = Math.min(lowest, mechanical.shear(0, x));
    expectPrinted(lowest, '0.7186', 'trough');
  });

  it('D3: gives the thermal peak, the tube pulled in at its end when the sleeve shrinks more', () => {
    expectPrinted(Math.abs(solution.thermal.shear(0, 0)), '11.4366', 'thermal shear at the root');
    expectPrinted(solution.thermal.shear(0, 40), '11.4366', 'thermal shear at the mouth');
    expect(solution.thermal.shear(0, 0)).toBeLessThan(0);
  });
});
