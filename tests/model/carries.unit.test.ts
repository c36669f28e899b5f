/** A bond that is said to carry a factor has at least that strength, and is said so well before its strength. */
import { describe, expect, it } from 'vitest';
import type { JointInput } from '../../src/model/joint/types.ts';
import { bondStrength, carries } from '../../src/model/margins/bond-strength.ts';
import { shearFactor } from '../../src/model/margins/shear-factor.ts';
import { type Asked, sleeve, socket, stateOf } from '../support/peel-states.ts';

type Sleeved = Extract<JointInput, { sleeve: unknown }>;
type Doubled = Extract<JointInput, { socket: unknown }>;

const tapered: JointInput = {
  ...(socket as Sleeved),
  sleeve: { ...(socket as Sleeved).sleeve, atMouth: 0.7 },
};
const uneven: JointInput = {
  ...(sleeve as Doubled),
  outerBond: { ...(sleeve as Doubled).outerBond, gap: 0.35 },
};
const all = { force: 6000, moment: 8e4, torque: 2e5, shear: 500 };

const laps: readonly (readonly [string, Asked])[] = [
  ['a socket, pulled and twisted', { loads: { force: 6000, torque: 1.5e5 } }],
  ['a socket under all loads, cold', { loads: all, temperature: -40 }],
  ['a tapered socket', { joint: tapered, loads: all }],
  ['a long socket', { joint: { ...socket, overlap: 90 }, loads: all }],
  ['a double lap', { joint: sleeve, loads: all }],
  ['a double lap with unlike bonds, hot', { joint: uneven, loads: all, temperature: 70 }],
  ['a short double lap that flows as a whole', { joint: { ...sleeve, overlap: 6 }, loads: all }],
];

describe.each(laps)('%s', (_name, asked) => {
  const state = stateOf(asked);
  const limits = state.bonds.map(({ shearYield }) => shearYield);
  const problem = state.at(0.7);
  const atYield = shearFactor(problem, limits);
  const { factor: strength } = bondStrength(problem, atYield)!;

  it.each([1.0002, 1.002, 1.01, 1.02, 1.1, 2])('does not carry %f of its strength', (share) => {
    expect(carries(problem, atYield, share * strength)).toBe(false);
  });

  it('carries what it has room for', () => {
    const room = strength - atYield.factor;
    expect(room).toBeGreaterThan(0.1 * strength);
    for (const share of [0.1, 0.5, 0.9, 0.97]) {
      expect(carries(problem, atYield, atYield.factor + share * room)).toBe(true);
    }
  });
});
