/** Ply stresses and first-ply failure. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  firstPly,
  makeFirstPly,
  maximumStrainIndex,
  plyStates,
  tsaiWuIndex,
} from '../../src/model/laminate/first-ply.ts';
import { addTriple, type Triple } from '../../src/model/laminate/plane.ts';
import { makeStack, respond, stiffnessOf } from '../../src/model/laminate/stack.ts';
import { expectClose } from '../support/close.ts';
import { carbon, quasi } from '../support/plies.ts';
import { angles, number, plies, triple } from '../support/random-laminates.ts';

describe('temperature alone', () => {
  it('leaves no force, and opposite stresses in crossed plies', () => {
    const stack = makeStack(carbon, [0, 90, 90, 0]);
    const wall = respond(stiffnessOf(stack), { deltaT: -100 });
    const states = plyStates(stack, { ...wall, deltaT: -100 });
    const [along, around] = [states[0]!, states[2]!];
    expect(around.stress[1]).toBeGreaterThan(10);
    expectClose(along.stress[1], around.stress[1], { relative: 1e-10 }, 'σ2 alike');
    expectClose(along.stress[0], -around.stress[1], { relative: 1e-10 }, 'σ1 balances σ2');
    expectClose(wall.curvature[0], 0, { absolute: 1e-15 }, 'flat');
  });

  it('stresses no ply of a wall of one direction', () => {
    const stack = makeStack(carbon, [30, 30]);
    const wall = respond(stiffnessOf(stack), { deltaT: -100 });
    for (const { stress } of plyStates(stack, { ...wall, deltaT: -100 })) {
      for (const s of stress) expectClose(s, 0, { absolute: 1e-9 }, 'stress');
    }
  });
});

describe('first ply', () => {
  const none = { strain: [0, 0, 0] as Triple, curvature: [0, 0, 0] as Triple };
  const single = makeStack(carbon, [0], 1);
  const pull = (force: Triple, stack = single) => respond(stiffnessOf(stack), { force });

  it.each([
    [[1, 0, 0], 2000, 'fibre tension'],
    [[-1, 0, 0], 1300, 'fibre compression'],
    [[0, 1, 0], 55, 'transverse tension'],
    [[0, -1, 0], 200, 'transverse compression'],
    [[0, 0, 1], 85, 'in-plane shear'],
    [[0, 0, -1], 85, 'in-plane shear'],
  ] as const)('of one ply under %j is its own strength', (force, strength, component) => {
    const failure = firstPly(single, { ...none, deltaT: 0 }, pull(force));
    expectClose(failure.tsaiWu.factor, strength, { relative: 1e-12 }, 'Tsai-Wu');
    expectClose(failure.maximumStrain.factor, strength, { relative: 1e-12 }, 'strain');
    expect(failure.maximumStrain.place).toEqual({ ply: 0, angle: 0, face: 'inner', component });
    expect(failure.tsaiWu.place).toEqual({ ply: 0, angle: 0, face: 'inner' });
  });

  it('has its criterion at 1 when the factor is on, and nowhere above', () => {
    const state = fc.tuple(plies, angles, triple(0.004), triple(0.01), number(-60, 20));
    fc.assert(
      fc.property(state, ([drawn, drawnAngles, strain, curvature, deltaT]) => {
        const stack = makeStack(drawn, drawnAngles);
        const fixed = { ...respond(stiffnessOf(stack), { deltaT }), deltaT };
        const failure = firstPly(stack, fixed, { strain, curvature });
        for (const [factor, place, used] of [
          [
            failure.tsaiWu.factor,
            failure.tsaiWu.place,
            (s: { stress: Triple; strain: Triple }) => tsaiWuIndex(drawn, s.stress),
          ],
          [
            failure.maximumStrain.factor,
            failure.maximumStrain.place,
            (s: { stress: Triple; strain: Triple }) => maximumStrainIndex(drawn, s.strain),
          ],
        ] as const) {
          if (factor === Number.POSITIVE_INFINITY) {
            expect(place).toBeNull();
            continue;
          }
          const states = plyStates(stack, {
            strain: addTriple(fixed.strain, strain, factor),
            curvature: addTriple(fixed.curvature, curvature, factor),
            deltaT,
          });
          const worst = Math.max(...states.map(used));
          const here = states.find((s) => s.ply === place!.ply && s.face === place!.face)!;
          if (factor === 0) {
            expect(used(here)).toBeGreaterThanOrEqual(1);
          } else {
            expectClose(used(here), 1, { absolute: 1e-7 }, 'index at the place');
          }
          expectClose(worst, used(here), { relative: 1e-7 }, 'worst index');
        }
      }),
      { numRuns: 300 },
    );
  });

  it('counts what the plies lock into each other on cooling', () => {
    const stack = makeStack(carbon, [0, 90, 90, 0]);
    const stiffness = stiffnessOf(stack);
    const per = pull([1, 0, 0], stack);
    const at = (deltaT: number) =>
      firstPly(stack, { ...respond(stiffness, { deltaT }), deltaT }, per);
    const [warm, cold] = [at(0), at(-100)];
    expect(warm.maximumStrain.place).toMatchObject({ angle: 90, component: 'transverse tension' });
    expect(cold.tsaiWu.factor).toBeLessThan(0.7 * warm.tsaiWu.factor);
    expect(cold.maximumStrain.factor).toBeLessThan(0.7 * warm.maximumStrain.factor);
    // Linear in what is left of the allowable strain.
    const free = plyStates(stack, { ...respond(stiffness, { deltaT: -100 }), deltaT: -100 });
    const left = 1 - (free[2]!.strain[1] * 9500) / 55;
    expectClose(
      cold.maximumStrain.factor / warm.maximumStrain.factor,
      left,
      { relative: 1e-9 },
      'share left',
    );
  });

  it('is at 0 when temperature alone reaches it, at the place furthest beyond', () => {
    const stack = makeStack(carbon, [0, 90], 1);
    const strain: Triple = [0, 0.01, 0];
    const fixed = { strain, curvature: [0, 0.01, 0] as Triple, deltaT: 0 };
    const failure = firstPly(stack, fixed, none);
    expect(failure.tsaiWu).toMatchObject({ factor: 0, place: { ply: 0, face: 'outer' } });
    expect(failure.maximumStrain).toEqual({
      factor: 0,
      place: { ply: 0, angle: 0, face: 'outer', component: 'transverse tension' },
    });
  });

  it('is never reached without load', () => {
    const never = { factor: Number.POSITIVE_INFINITY, place: null };
    expect(firstPly(single, { ...none, deltaT: -10 }, none)).toEqual({
      tsaiWu: never,
      maximumStrain: never,
    });
  });

  it('takes bending to the face that it pulls', () => {
    const stack = makeStack(carbon, [90, 90, 90], 1);
    const bent = respond(stiffnessOf(stack), { moment: [1, 0, 0] });
    const failure = firstPly(stack, { ...none, deltaT: 0 }, bent);
    expect(failure.tsaiWu.place).toMatchObject({ ply: 2, face: 'outer' });
    // σ = 6·M/t²
    expectClose(failure.maximumStrain.factor, 55 / 6, { relative: 1e-9 }, 'moment');
  });

  it('can be prepared once for many strains', () => {
    const stack = makeStack(carbon, quasi);
    const prepared = makeFirstPly(stack);
    for (const force of [
      [-1, 2, 0],
      [0, 0, 1],
      [1, 0, 0],
      [0.1, 0, 0],
    ] as const) {
      const per = pull(force, stack);
      const fixed = { ...none, deltaT: -40 };
      expect(prepared(fixed, per)).toEqual(firstPly(stack, fixed, per));
    }
  });
});
