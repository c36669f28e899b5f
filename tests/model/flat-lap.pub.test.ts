/** Flat single laps against the figures of the verification book, and what the source's formulas promise. */
import { describe, expect, it } from 'vitest';
import { homogeneousAdherend } from '../../src/model/flat-lap/adherend.ts';
import { edgeMoments } from '../../src/model/flat-lap/edge-moment.ts';
import {
  balancedTransverseForce,
  golandReissner,
  slopeTransverseForce,
  transverseFactor,
} from '../../src/model/flat-lap/goland-reissner.ts';
import { expectClose } from '../support/close.ts';
import { integrate } from '../support/integrate.ts';
import { publishedFlatLaps } from '../verification/cases/flat-laps.ts';
import { judge } from '../verification/judge.ts';

describe.each(publishedFlatLaps)('$title', ({ checks }) => {
  it.each(checks)('$name', (check) => {
    expect(judge(check).failure).toBeNull();
  });
});

describe.each([50, 150, 250])('the integrals over the overlap, P = %d N/mm', (load) => {
  const overlap = 12.5;
  const thickness = 1.62;
  const wall = homogeneousAdherend(thickness, 70_000, 0.34);
  const { factor } = edgeMoments({ load, overlap, gap: 0, root: wall, mouth: wall }).golandReissner
    .root;
  const kPrime = transverseFactor(factor, (Math.sqrt(load / wall.bendingStiffness) * overlap) / 2);
  const adhesive = { thickness: 0.2, shearModulus: 650, modulus: 1850 };
  const forces = {
    'by the slope in the run-out': slopeTransverseForce(load, thickness, overlap, kPrime),
    'by balance': balancedTransverseForce(load, thickness, overlap, factor),
  };

  it.each(Object.entries(forces))('V %s', (_name, transverseForce) => {
    const lap = golandReissner(
      { load, overlap, thickness, modulus: 70_000, adhesive },
      { factor, transverseForce },
    );
    const tight = { relative: 1e-10 };
    expectClose(integrate(lap.shear, 0, overlap), load, tight, 'integral of the shear');
    expectClose(integrate(lap.peel, 0, overlap), transverseForce, tight, 'integral of the peel');
    expectClose(lap.shearForce(overlap), load, tight, 'shear force, whole overlap');
    expectClose(lap.peelForce(overlap), transverseForce, tight, 'peel force, whole overlap');
    for (const x of [0.3, 3, 6.25, 11]) {
      expectClose(lap.shearForce(x), integrate(lap.shear, 0, x), tight, `shear force to ${x}`);
      const small = { absolute: 1e-10 * transverseForce };
      expectClose(lap.peelForce(x), integrate(lap.peel, 0, x), small, `peel force to ${x}`);
    }
  });
});
