/** Engineering constants of laminates: closed forms and limits. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inPlaneConstants,
  reducedBending,
  throughConstants,
} from '../../src/model/laminate/constants.ts';
import { freeConstants, freeDifferences } from '../../src/model/laminate/free-constants.ts';
import { laminateMaterial } from '../../src/model/laminate/material.ts';
import { invertPlane, type Triple, times } from '../../src/model/laminate/plane.ts';
import { minorPoisson, reducedStiffness, transversePoisson } from '../../src/model/laminate/ply.ts';
import { makeStack, respond, type Stack, stiffnessOf } from '../../src/model/laminate/stack.ts';
import { expectClose } from '../support/close.ts';
import { carbon, elasticPly, isotropicPly, quasi } from '../support/plies.ts';
import { angles, plies } from '../support/random-laminates.ts';

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

describe('engineering constants of a wall free to bend and twist', () => {
  it('are those of two strips bonded face to face, worked by hand', () => {
    // Two plies of thickness h, no Poisson's ratio: along the axis a beam of E1 on one of E2. With
    // A = (E1 + E2)h, B = (E2 − E1)h²/2, D = (E1 + E2)h³/3 the force for unit strain at the middle,
    // no moment, is A − B²/D: Ex = (E1 + E2)/2 − 3(E1 − E2)²/(8(E1 + E2)).
    const [e1, e2, a1, a2] = [130_000, 9000, -0.3e-6, 30e-6];
    const ply = elasticPly({
      axialModulus: e1,
      transverseModulus: e2,
      shearModulus: 4800,
      poisson: 0,
      axialExpansion: a1,
      transverseExpansion: a2,
    });
    const stiffness = stiffnessOf(makeStack(ply, [0, 90], 0.4));
    const held = inPlaneConstants(stiffness);
    const free = freeConstants(stiffness);
    const modulus = (e1 + e2) / 2 - (3 * (e1 - e2) ** 2) / (8 * (e1 + e2));
    expectClose(held.axialModulus, (e1 + e2) / 2, { relative: 1e-12 }, 'Ex held');
    expectClose(free.axialModulus, modulus, { relative: 1e-12 }, 'Ex free');
    expectClose(free.hoopModulus, modulus, { relative: 1e-12 }, 'Ey free');
    // Both plies shear alike, and no coupling reaches shear.
    expectClose(free.shearModulus, 4800, { relative: 1e-12 }, 'Gxy free');
    // A bimetal: strain at the common face by Timoshenko's strip, the middle surface being that face.
    const h = 0.2;
    const m = (e1 * h ** 2) / 2;
    const n = (e2 * h ** 2) / 2;
    const [a, b, d] = [(e1 + e2) * h, n - m, ((e1 + e2) * h ** 3) / 3];
    const [force, moment] = [(e1 * a1 + e2 * a2) * h, n * a2 - m * a1];
    const expansion = (d * force - b * moment) / (a * d - b * b);
    expectClose(free.axialExpansion, expansion, { relative: 1e-10 }, 'αx free');
  });

  it('are what a free wall answers, and are never stiffer than those held', () => {
    fc.assert(
      fc.property(plies, angles, (ply, stack) => {
        const stiffness = stiffnessOf(makeStack(ply, stack));
        const { thickness } = stiffness;
        const free = freeConstants(stiffness);
        const held = inPlaneConstants(stiffness);
        const along = respond(stiffness, { force: [1, 0, 0] }).strain;
        const around = respond(stiffness, { force: [0, 1, 0] }).strain;
        const sheared = respond(stiffness, { force: [0, 0, 1] }).strain;
        const warm = respond(stiffness, { deltaT: 1 }).strain;
        const near = { relative: 1e-8, absolute: 1e-15 };
        expectClose(1 / (thickness * free.axialModulus), along[0], near, 'Ex');
        expectClose(1 / (thickness * free.hoopModulus), around[1], near, 'Ey');
        expectClose(1 / (thickness * free.shearModulus), sheared[2], near, 'Gxy');
        expectClose(-free.poisson * along[0], along[1], near, 'νxy');
        expectClose(free.axialExpansion, warm[0], near, 'αx');
        expectClose(free.hoopExpansion, warm[1], near, 'αy');
        for (const key of ['axialModulus', 'hoopModulus', 'shearModulus'] as const) {
          expect(free[key]).toBeLessThanOrEqual(held[key] * (1 + 1e-9));
        }
      }),
      { numRuns: 100 },
    );
  });

  it('are told only where they differ by more than a hundredth', () => {
    const of = (stack: readonly number[]) => freeDifferences(stiffnessOf(makeStack(carbon, stack)));
    expect(of(quasi)).toEqual({});
    expect(of([0])).toEqual({});
    const { axialModulus, hoopModulus, shearModulus } = of([0, 90]);
    expect(axialModulus).toBeLessThan(0.6 * 75_000);
    expect(hoopModulus).toBeLessThan(0.6 * 75_000);
    // A cross-ply couples stretching and bending alone: shear is the same.
    expect(shearModulus).toBeUndefined();
    // One odd ply in sixty-one hardly bends the wall.
    const thick = Array.from({ length: 61 }, (_, i) => (i === 31 ? 90 : 0));
    expect(inPlaneConstants(stiffnessOf(makeStack(carbon, thick))).curvatureHeld).toBe(true);
    expect(of(thick)).toEqual({});
  });
});
