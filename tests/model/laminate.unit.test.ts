/** Plies and stacks: invariants, identities and refusals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/model/errors.ts';
import {
  flexuralConstants,
  inPlaneConstants,
  throughConstants,
} from '../../src/model/laminate/constants.ts';
import { plyStates } from '../../src/model/laminate/first-ply.ts';
import {
  addTriple,
  type Triple,
  times,
  turnBack,
  turnBy,
  turnStrain,
} from '../../src/model/laminate/plane.ts';
import {
  checkPly,
  minorPoisson,
  reducedStiffness,
  transversePoisson,
  turnStiffness,
} from '../../src/model/laminate/ply.ts';
import {
  abdMatrix,
  inverseAbd,
  makeStack,
  plyHeights,
  respond,
  respondWithoutCurvature,
  type Stack,
  stiffnessOf,
} from '../../src/model/laminate/stack.ts';
import { expectClose } from '../support/close.ts';
import { carbon, isotropicPly } from '../support/plies.ts';
import { angles, number, plies, triple } from '../support/random-laminates.ts';

describe('a ply', () => {
  it('keeps its invariants however it is turned', () => {
    fc.assert(
      fc.property(plies, number(-180, 180), (drawn, angle) => {
        const q = reducedStiffness(drawn);
        const turned = turnStiffness(q, turnBy(angle));
        const size = q.c11;
        const sum = (p: typeof q) => p.c11 + p.c22 + 2 * p.c12;
        const shear = (p: typeof q) => p.c66 - p.c12;
        expectClose(sum(turned), sum(q), { absolute: 1e-12 * size }, 'Q11 + Q22 + 2·Q12');
        expectClose(shear(turned), shear(q), { absolute: 1e-12 * size }, 'Q66 − Q12');
      }),
    );
  });

  it('gives the same stress by the turned stiffness as by turning strain and stress', () => {
    fc.assert(
      fc.property(plies, number(-180, 180), triple(0.01), (drawn, angle, strain) => {
        const q = reducedStiffness(drawn);
        const turn = turnBy(angle);
        const inPly = turnStrain(strain, turnBack(turn));
        const work = inPly.reduce((sum, e, i) => sum + e * times(q, inPly)[i]!, 0);
        const direct = times(turnStiffness(q, turn), strain);
        const same = strain.reduce((sum, e, i) => sum + e * direct[i]!, 0);
        expectClose(same, work, { relative: 1e-11, absolute: 1e-12 }, 'strain energy');
      }),
    );
  });

  it('has no stray coupling at multiples of 90°, and exact opposites at ±45°', () => {
    const q = reducedStiffness(carbon);
    for (const angle of [0, 90, -90, 180, 270]) {
      const { c16, c26 } = turnStiffness(q, turnBy(angle));
      expect([c16, c26].map(Math.abs), String(angle)).toEqual([0, 0]);
    }
    expect(turnStiffness(q, turnBy(90)).c11).toBe(q.c22);
    expect(turnStiffness(q, turnBy(-45)).c16).toBe(-turnStiffness(q, turnBy(45)).c16);
    for (let angle = -360; angle <= 360; angle += 45) {
      const { cos, sin } = turnBy(angle);
      expectClose(cos, Math.cos((angle * Math.PI) / 180), { absolute: 1e-15 }, `cos ${angle}`);
      expectClose(sin, Math.sin((angle * Math.PI) / 180), { absolute: 1e-15 }, `sin ${angle}`);
    }
  });

  it('turns an extension of its fibres into the strains of a rotated line', () => {
    const [x, y, shear] = turnStrain([1e-3, 0, 0], turnBy(30));
    expectClose(x, 0.75e-3, { relative: 1e-12 }, 'εx');
    expectClose(y, 0.25e-3, { relative: 1e-12 }, 'εy');
    expectClose(shear, 2e-3 * Math.cos(Math.PI / 6) * 0.5, { relative: 1e-12 }, 'γxy');
  });

  it.each([
    [{ axialModulus: 0 }, 'axialModulus'],
    [{ shearModulus: -1 }, 'shearModulus'],
    [{ thickness: Number.NaN }, 'thickness'],
    [{ interlaminarShear: 0 }, 'interlaminarShear'],
    [{ poisson: Number.NaN }, 'poisson'],
    [{ transverseExpansion: Number.POSITIVE_INFINITY }, 'transverseExpansion'],
    [{ poisson: 4 }, 'poisson'],
    [{ transverseShearModulus: 2380 }, 'transverseShearModulus'],
    [{ poisson: 3.8, transverseShearModulus: 1e9 }, undefined],
    [{ poisson: 3.8, transverseShearModulus: 3300 }, 'transverseShearModulus'],
    [{}, undefined],
  ] as const)('with %j is refused by its field, or taken', (change, field) => {
    const check = () => checkPly({ ...carbon, ...change });
    if (field === undefined) {
      expect(check).not.toThrow();
      return;
    }
    try {
      check();
    } catch (error) {
      expect(error).toBeInstanceOf(ModelError);
      expect((error as ModelError).input).toBe(field);
      return;
    }
    expect.fail('taken');
  });

  it('names the least G23 that it asks for', () => {
    const least = 9500 / (2 * (2 - 2 * 0.3 * minorPoisson(carbon)));
    expect(() => checkPly({ ...carbon, transverseShearModulus: least * 1.001 })).not.toThrow();
    expect(() => checkPly({ ...carbon, transverseShearModulus: least * 0.999 })).toThrow(
      `more than ${least.toPrecision(3)} MPa`,
    );
    expectClose(transversePoisson(carbon), 9500 / 6600 - 1, { relative: 1e-12 }, 'ν23');
  });
});

describe('a stack', () => {
  it('of isotropic plies is the isotropic plate', () => {
    const [modulus, poisson, expansion] = [70_000, 0.33, 23e-6];
    const stack = makeStack(isotropicPly(modulus, poisson, expansion), [0, 17, -63, 90, 45], 2);
    const stiffness = stiffnessOf(stack);
    const plane = inPlaneConstants(stiffness);
    const through = throughConstants(stack);
    const shear = modulus / (2 * (1 + poisson));
    for (const [what, computed, expected] of [
      ['Ex', plane.axialModulus, modulus],
      ['Ey', plane.hoopModulus, modulus],
      ['G', plane.shearModulus, shear],
      ['ν', plane.poisson, poisson],
      ['αx', plane.axialExpansion, expansion],
      ['αy', plane.hoopExpansion, expansion],
      ['E3', through.modulus, modulus],
      ['α3', through.expansion, expansion],
      ['Gxz', through.axialShearModulus, shear],
      ['Gyz', through.hoopShearModulus, shear],
      ['D11', stiffness.d.c11, (modulus * 8) / (12 * (1 - poisson ** 2))],
      ['bending modulus', flexuralConstants(stiffness).axialModulus, modulus],
    ] as const) {
      expectClose(computed, expected, { relative: 1e-12 }, what);
    }
    expect(plane).toMatchObject({ curvatureHeld: false, shearCoupled: false });
  });

  it('has exactly no coupling when symmetric', () => {
    fc.assert(
      fc.property(plies, angles, (drawn, half) => {
        const { b, thermalMoment } = stiffnessOf(
          makeStack(drawn, [...half, ...[...half].reverse()]),
        );
        expect(Object.values(b).every((x) => x === 0)).toBe(true);
        expect(thermalMoment.every((x) => x === 0)).toBe(true);
      }),
    );
  });

  it('changes the sign of B alone when turned inside out', () => {
    fc.assert(
      fc.property(plies, angles, (drawn, drawnAngles) => {
        const one = stiffnessOf(makeStack(drawn, drawnAngles));
        const other = stiffnessOf(makeStack(drawn, [...drawnAngles].reverse()));
        const size = one.a.c11 * one.thickness;
        for (const key of ['c11', 'c12', 'c22', 'c16', 'c26', 'c66'] as const) {
          expectClose(other.b[key], -one.b[key], { absolute: 1e-12 * size }, `B ${key}`);
          const rest = { absolute: 1e-12 * size * one.thickness };
          expectClose(other.d[key], one.d[key], rest, `D ${key}`);
        }
      }),
    );
  });

  it('does not depend on how plies of one direction are cut', () => {
    const whole = stiffnessOf({
      plies: [
        { ply: carbon, angle: 20, thickness: 0.6 },
        { ply: carbon, angle: 90, thickness: 0.2 },
      ],
    });
    const cut = stiffnessOf(makeStack(carbon, [20, 20, 20, 90], 0.8));
    for (const block of ['a', 'b', 'd'] as const) {
      for (const [key, value] of Object.entries(whole[block])) {
        const computed = cut[block][key as 'c11'];
        expectClose(computed, value, { relative: 1e-12, absolute: 1e-9 }, `${block} ${key}`);
      }
    }
  });

  it('lies about its middle', () => {
    const heights = plyHeights({
      plies: [1, 2, 5].map((thickness) => ({ ply: carbon, angle: 0, thickness })),
    });
    expect(heights).toEqual([-3.5, -2, 1.5]);
  });

  it('is undone by its inverse', () => {
    const stiffness = stiffnessOf(makeStack(carbon, [0, 30, 90, -45]));
    const [m, inverse] = [abdMatrix(stiffness), inverseAbd(stiffness)];
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < 6; j++) {
        let sum = 0;
        for (let k = 0; k < 6; k++) sum += m[6 * i + k]! * inverse[6 * k + j]!;
        expectClose(sum, i === j ? 1 : 0, { absolute: 1e-10 }, `entry ${i} ${j}`);
      }
    }
  });

  it('answers with the strains that give its forces back', () => {
    fc.assert(
      fc.property(
        plies,
        angles,
        triple(500),
        triple(20),
        number(-150, 150),
        (drawn, drawnAngles, force, moment, deltaT) => {
          const stack = makeStack(drawn, drawnAngles);
          const wall = respond(stiffnessOf(stack), { force, moment, deltaT });
          const [n, m] = resultants(stack, wall, deltaT);
          for (let i = 0; i < 3; i++) {
            expectClose(n[i]!, force[i]!, { absolute: 1e-6 }, `N ${i}`);
            expectClose(m[i]!, moment[i]!, { absolute: 1e-6 }, `M ${i}`);
          }
        },
      ),
    );
  });

  it('held from bending needs a moment, and carries the force', () => {
    const stack = makeStack(carbon, [0, 90]);
    const wall = respondWithoutCurvature(stiffnessOf(stack), { force: [10, 20, 5], deltaT: -80 });
    const [n, m] = resultants(stack, wall, -80);
    n.forEach((value, i) => {
      expectClose(value, [10, 20, 5][i]!, { absolute: 1e-9 }, `N ${i}`);
    });
    expect(Math.abs(m[0])).toBeGreaterThan(0.1);
  });

  it('without a ply, an angle or a wall is refused', () => {
    expect(() => makeStack(carbon, [])).toThrow(ModelError);
    expect(() => makeStack(carbon, [0, Number.NaN])).toThrow(ModelError);
    for (const wall of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => makeStack(carbon, [0], wall)).toThrow(/thicker than zero/);
    }
  });
});

/** N and M from the ply stresses by Simpson's rule, exact for the linear stress in each ply. */
function resultants(
  stack: Stack,
  wall: { readonly strain: Triple; readonly curvature: Triple },
  deltaT: number,
): [Triple, Triple] {
  const states = plyStates(stack, { ...wall, deltaT });
  const heights = plyHeights(stack);
  let n: Triple = [0, 0, 0];
  let m: Triple = [0, 0, 0];
  stack.plies.forEach(({ angle, thickness }, k) => {
    const faces = [states[2 * k]!, states[2 * k + 1]!].map(({ stress: [s1, s2, t] }): Triple => {
      const { cos, sin } = turnBy(angle);
      return [
        cos * cos * s1 + sin * sin * s2 - 2 * cos * sin * t,
        sin * sin * s1 + cos * cos * s2 + 2 * cos * sin * t,
        cos * sin * (s1 - s2) + (cos * cos - sin * sin) * t,
      ];
    });
    const middle = addTriple(faces[0]!, faces[1]!, 1).map((x) => x / 2) as unknown as Triple;
    n = addTriple(n, middle, thickness);
    m = addTriple(m, middle, thickness * heights[k]!);
    m = addTriple(m, addTriple(faces[1]!, faces[0]!, -1), thickness ** 2 / 12);
  });
  return [n, m];
}
