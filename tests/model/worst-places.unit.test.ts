/**
 * Places that cannot be worst at any clocking are left out of the search: the worst is none the less that of a search
 * which looks at every place.
 */
import { describe, expect, it } from 'vitest';
import { makeBigProject } from '../../reference/big-project/make.mjs';
import { resolveJoint } from '../../src/main/handlers/resolve.ts';
import { bondFields, type Sample, type Where } from '../../src/model/margins/bond-fields.ts';
import { clockings, worstClockings } from '../../src/model/margins/clocking.ts';
import {
  fractureFactor,
  peelFactor,
  peelShearFactor,
} from '../../src/model/margins/peel-factor.ts';
import { type FactorOf, worst } from '../../src/model/margins/peel-modes.ts';
import { BELOW } from '../../src/model/margins/shear-factor.ts';
import { type JointState, jointState } from '../../src/model/margins/state.ts';
import { wallBending } from '../../src/model/margins/wall-bending.ts';
import { wallModes } from '../../src/model/margins/wall-modes.ts';
import { laminateFactor, metalFactor } from '../../src/model/margins/wall-strength.ts';
import { wallStresses } from '../../src/model/margins/wall-stress.ts';
import type { Project } from '../../src/shared/project.ts';

/** Joints of all types under force, moment, torque and shear, hot and cold. */
const project = makeBigProject({ joints: 24, cases: 4, seed: 11 }) as unknown as Project;
const states = project.joints.flatMap((joint, index): (readonly [string, JointState])[] => {
  if (joint.type.startsWith('flat')) return [];
  const { input, adhesive, cases } = resolveJoint(project, index);
  return cases.slice(0, 2).flatMap(({ input: loadCase, loadCase: { name } }) => {
    const mixed = { ...loadCase.loads, moment: 9e3 * (1 + index), shear: 40 * (index - 8) };
    // Worst across the plane of bending, where no other load is.
    const across = { force: 100, moment: 500, torque: index % 2 === 0 ? 6e4 : -6e4, shear: 6000 };
    return [mixed, across].map((loads) => {
      const asked = { ...loadCase, loads };
      const state = jointState(input, adhesive, asked, 'nominal', project.settings);
      return [`${joint.id}, ${name}, shear ${loads.shear}`, state] as const;
    });
  });
});

const stiffness = { gap: 0.2, normal: 3000, shear: 900 };
const limit = { modeI: 0.4, modeII: 2, exponent: 1 };
const modes: readonly (readonly [string, FactorOf, Where])[] = [
  ['peel', (sample) => peelFactor(sample, 25), 'everywhere'],
  ['peel with shear', (sample) => peelShearFactor(sample, 25, 20), 'everywhere'],
  ['fracture', (sample) => fractureFactor(sample, stiffness, limit), 'ends'],
];

it('are joints with a bending moment and a shear force', () => {
  expect(states.length).toBeGreaterThan(20);
});

describe.each(states)('%s', (_name, state) => {
  it.each(modes)(
    'has its worst %s where a search of all places finds it',
    (_mode, factorOf, where) => {
      const fields = bondFields(state);
      const look = (theta: number) => {
        let found = { factor: Number.POSITIVE_INFINITY, bond: 0, x: 0, theta };
        const see = (sample: Sample): void => {
          const factor = factorOf(sample);
          if (factor < found.factor * BELOW)
            found = { factor, bond: sample.bond, x: sample.x, theta };
        };
        fields.visit(theta, 1, see, where);
        return found;
      };
      const [lowest] = worstClockings(false, state.loadCase.loads, (theta) => look(theta).factor);
      const found = worst(state, fields, factorOf, where);
      expect(found).toEqual(look(lowest!.theta));
      // And none that is of no interest.
      const { factor } = found!;
      expect(worst(state, fields, factorOf, where, factor * 1.0001 + 1e-9)).toEqual(found);
      const enough = worst(state, fields, factorOf, where, factor * 1e-3);
      expect([null, found]).toContainEqual(enough);
    },
  );

  it('bounds its bonds at any clocking', () => {
    const fields = bondFields(state);
    for (const [, factorOf, where] of modes) {
      const least = new Float64Array(fields.places(where)).fill(Number.POSITIVE_INFINITY);
      fields.visitBounds((sample, place) => {
        least[place] = Math.min(least[place]!, factorOf(sample));
      }, where);
      for (let k = 0; k < 36; k++) {
        fields.visit(
          (k * Math.PI) / 18,
          1,
          (sample, place) =>
            expect(factorOf(sample)).toBeGreaterThanOrEqual(least[place]! * (1 - 1e-9)),
          where,
        );
      }
    }
  });

  it('has no wall that is worse at a place looked at than its modes say', () => {
    const { assembly, bonds, loadCase, deltaT } = state;
    const stresses = wallStresses(assembly, bonds, loadCase.loads, deltaT);
    const found = wallModes(state, project.settings.factors);
    let looked = 0;
    stresses.parts.forEach(({ name, material }, i) => {
      const bend = wallBending(state, i);
      const least = (factorOf: (at: Parameters<typeof metalFactor>) => number): number => {
        let low = Number.POSITIVE_INFINITY;
        for (let k = 0; k <= 12; k++) {
          const x = (assembly.overlap * k) / 12;
          for (const theta of clockings(false, loadCase.loads)) {
            const stress = stresses.at(i, x)(theta);
            for (const face of [-1, 1] as const) {
              low = Math.min(low, factorOf([stress, 0, bend(x, face)(theta)]));
            }
          }
        }
        return low;
      };
      const modeOf = (mode: string) =>
        found.find((result) => result.mode === mode && result.part === name);
      const judge = (mode: string, low: number): void => {
        const result = modeOf(mode);
        if (!result) return;
        looked++;
        expect(result.reached).toBeLessThanOrEqual(low * (1 + 1e-6));
        expect(result.reached).toBeGreaterThan(low * 0.9);
      };
      if (material.kind === 'isotropic') {
        const { yieldStrength } = material;
        judge(
          'metal-yield',
          least(([stress, , face]) => metalFactor(stress, yieldStrength, face)),
        );
      } else if (material.kind === 'orthotropic') {
        judge(
          'laminate-strength',
          least(([stress, , face]) => laminateFactor(stress, material, face)),
        );
      }
    });
    expect(looked).toBeGreaterThan(0);
  });
});
