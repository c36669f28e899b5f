/** Engineering constants of laminates: closed forms and limits. */
import { describe, expect, it } from 'vitest';
import {
  inPlaneConstants,
  reducedBending,
  throughConstants,
} from '../../src/model/laminate/constants.ts';
import { laminateMaterial } from '../../src/model/laminate/material.ts';
import { invertPlane, type Triple, times } from '../../src/model/laminate/plane.ts';
import { minorPoisson, reducedStiffness, transversePoisson } from '../../src/model/laminate/ply.ts';
import { makeStack, respond, type Stack, stiffnessOf } from '../../src/model/laminate/stack.ts';
import { expectClose } from '../support/close.ts';
import { carbon, isotropicPly, quasi } from '../support/plies.ts';

describe('engineering constants', () => {
  it('of a quasi-isotropic stack are the closed forms from the invariants of the ply', () => {
    const { c11, c12, c22, c66 } = reducedStiffness(carbon);
    const u1 = (3 * c11 + 3 * c22 + 2 * c12 + 4 * c66) / 8;
    const u4 = (c11 + c22 + 6 * c12 - 4 * c66) / 8;
    const expansion =
      ((c11 + c12) * carbon.axialExpansion + (c12 + c22) * carbon.transverseExpansion) /
      (c11 + c22 + 2 * c12);
    for (const stack of [quasi, [0, 60, -60, -60, 60, 0], [0, 36, 72, 108, 144]]) {
      const plane = inPlaneConstants(stiffnessOf(makeStack(carbon, stack)));
      expectClose(plane.axialModulus, (u1 ** 2 - u4 ** 2) / u1, { relative: 1e-12 }, 'Ex');
      expectClose(plane.hoopModulus, plane.axialModulus, { relative: 1e-12 }, 'Ey');
      expectClose(plane.poisson, u4 / u1, { relative: 1e-12 }, 'ν');
      expectClose(plane.shearModulus, (u1 - u4) / 2, { relative: 1e-12 }, 'G');
      expectClose(plane.axialExpansion, expansion, { relative: 1e-12 }, 'αx');
      expectClose(plane.hoopExpansion, expansion, { relative: 1e-12 }, 'αy');
    }
  });

  it('of one direction are those of the ply, turned by 90° exchanged', () => {
    const along = laminateMaterial(carbon, [0, 0, 0], 1);
    expectClose(along.axialModulus, 140_000, { relative: 1e-12 }, 'Ex');
    expectClose(along.poisson, 0.3, { relative: 1e-12 }, 'ν');
    expectClose(along.throughModulus, 9500, { relative: 1e-12 }, 'E3');
    expectClose(along.throughExpansion, 30e-6, { relative: 1e-12 }, 'α3');
    expectClose(along.throughShearModulus, 5000, { relative: 1e-12 }, 'Gxz');
    expectClose(along.bendingRatio, 1, { relative: 1e-12 }, 'bending ratio');
    const around = laminateMaterial(carbon, [90], 1);
    expectClose(around.axialModulus, 9500, { relative: 1e-12 }, 'Ex');
    expectClose(around.poisson, minorPoisson(carbon), { relative: 1e-12 }, 'ν');
    expectClose(around.axialExpansion, 30e-6, { relative: 1e-12 }, 'αx');
    expectClose(around.throughShearModulus, 3300, { relative: 1e-12 }, 'Gxz');
  });

  it('say when B or shear coupling stands behind them', () => {
    const flags = (stack: number[]) => {
      const { curvatureHeld, shearCoupled } = inPlaneConstants(
        stiffnessOf(makeStack(carbon, stack)),
      );
      return [curvatureHeld, shearCoupled];
    };
    expect(flags([0, 90, 90, 0])).toEqual([false, false]);
    expect(flags([0, 90])).toEqual([true, false]);
    expect(flags([20, 20])).toEqual([false, true]);
    expect(flags([0, 20])).toEqual([true, true]);
    expect(flags([33, -33, -33, 33])).toEqual([false, false]);
  });

  it('through the thickness: crossed plies hold each other, and α3 and E3 grow', () => {
    const cross = throughConstants(makeStack(carbon, [0, 90, 90, 0]));
    expect(cross.expansion).toBeGreaterThan(30e-6 * 1.1);
    expect(cross.modulus).toBeGreaterThan(9500 * 1.02);
    // No more than with the fibres rigid: strain 1 and 2 both held.
    const nu23 = transversePoisson(carbon);
    expect(cross.expansion).toBeLessThan(30e-6 * (1 + nu23) + 1e-6);
    expectClose(
      cross.axialShearModulus,
      2 / (1 / 5000 + 1 / 3300),
      { relative: 1e-12 },
      'Gxz of a cross-ply',
    );
  });

  it('conserve volume on heating as the plies do, when every ply is stress-free in the mean', () => {
    // ⟨ε⟩ of a self-stressed body: the mean stress is zero, so a body of one isotropic stiffness
    // grows by the mean of its free strains.
    const mixed: Stack = {
      plies: [
        { ply: isotropicPly(5000, 0.3, 10e-6), angle: 0, thickness: 1 },
        { ply: isotropicPly(5000, 0.3, 30e-6), angle: 0, thickness: 3 },
      ],
    };
    const plane = inPlaneConstants(stiffnessOf(mixed));
    const through = throughConstants(mixed);
    const volume = plane.axialExpansion + plane.hoopExpansion + through.expansion;
    expectClose(volume, 3 * 25e-6, { relative: 1e-12 }, 'volume');
  });

  it('of bending: D* is what a free wall bends by', () => {
    const stiffness = stiffnessOf(makeStack(carbon, [0, 30, 90, -45]));
    const reduced = reducedBending(stiffness);
    const moment: Triple = [3, -1, 2];
    const { curvature } = respond(stiffness, { moment });
    const expected = times(invertPlane(reduced), moment);
    curvature.forEach((value, i) => {
      expectClose(value, expected[i]!, { relative: 1e-10 }, `κ ${i}`);
    });
    expect(reduced.c11).toBeLessThan(stiffness.d.c11);
  });

  it('scale with the wall', () => {
    const one = laminateMaterial(carbon, quasi, 1);
    const two = laminateMaterial(carbon, quasi, 2);
    expectClose(two.bendingStiffness, 8 * one.bendingStiffness, { relative: 1e-12 }, 'D11');
    expectClose(two.axialModulus, one.axialModulus, { relative: 1e-12 }, 'Ex');
    expectClose(two.bendingRatio, one.bendingRatio, { relative: 1e-12 }, 'ratio');
    expectClose(two.scale, 2 / (8 * 0.15), { relative: 1e-12 }, 'scale');
    expect(one.bendingRatio).toBeGreaterThan(1.2);
    expect(one.interlaminarTension).toBe(45);
    expect(one.interlaminarShear).toBe(75);
    expect(one.stack.plies.map(({ angle }) => angle)).toEqual(quasi);
  });

  it('are refused for a ply that could not exist', () => {
    expect(() => laminateMaterial({ ...carbon, transverseShearModulus: 2000 }, [0], 1)).toThrow(
      /G23 is too low/,
    );
  });
});
