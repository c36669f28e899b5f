/** Strength against overlap, and where more overlap stops paying. */
import { describe, expect, it } from 'vitest';
import type { AdhesiveInput, CaseInput, JointInput } from '../../src/model/joint/types.ts';
import { bondStrengthAt, findPlateau, strengthAt } from '../../src/model/sweep/overlap-sweep.ts';
import { expectClose } from '../support/close.ts';
import { noLoads, singleLap } from '../support/section-12.ts';

const adhesive: AdhesiveInput = {
  stressFreeTemperature: 20,
  states: [
    {
      temperature: 20,
      moisture: 'dry',
      modulus: 2400,
      shearModulus: 876,
      shearYield: 40,
      plasticStrain: 0.5,
    },
  ],
};
const pull = (force: number): CaseInput => ({
  loads: { ...noLoads, force },
  kind: 'ultimate',
  temperature: 20,
  moisture: 'dry',
});
const settings = { factors: { limit: 1, ultimate: 1.5, fitting: 1.25 }, adherendShear: false };
const question = (cases: readonly CaseInput[], joint: JointInput = singleLap) => ({
  joint,
  adhesive,
  cases,
  settings,
});

describe('bond strength', () => {
  it('of a short overlap is the flow load of the whole bond over what is asked', () => {
    const { ratio } = bondStrengthAt(question([pull(10_000)]), 3);
    const flow = 2 * Math.PI * 16.1 * 40 * 3;
    expectClose(ratio, flow / 10_000 / 1.25, { relative: 1e-9 }, 'ratio');
  });

  it('of a long overlap is the strength by Hart-Smith of its weaker end', () => {
    const { ratio, caseIndex } = bondStrengthAt(question([pull(5000), pull(10_000)]), 400);
    const tube = 70_000 * Math.PI * (16 ** 2 - 14.4 ** 2);
    const sleeve = 114_000 * Math.PI * (17.4 ** 2 - 16.2 ** 2);
    const width = 2 * Math.PI * 16.1;
    // Energy to failure per area, 2·h·τp·(γe/2 + γp), against each wall's share.
    const energy = 2 * 0.2 * 40 * (40 / 876 / 2 + 0.5) * width;
    const byTube = Math.sqrt(energy * tube * (1 + tube / sleeve));
    const bySleeve = Math.sqrt(energy * sleeve * (1 + sleeve / tube));
    // At the mouth the tube carries all, at the root the sleeve: the softer wall decides.
    const strength =
      Math.min(byTube, bySleeve) / Math.sqrt(1 + Math.min(tube, sleeve) / Math.max(tube, sleeve));
    const exact =
      Math.sqrt(energy / (1 / tube + 1 / sleeve)) * Math.min(1 + tube / sleeve, 1 + sleeve / tube);
    expect(strength).toBeLessThanOrEqual(exact * (1 + 1e-9));
    expectClose(ratio, exact / 10_000 / 1.25, { relative: 1e-6 }, 'ratio');
    expect(caseIndex).toBe(1);
  });

  it('is at or above the strength over all modes', () => {
    for (const overlap of [5, 20, 60]) {
      const { bond, all } = strengthAt(question([pull(10_000)]), overlap);
      expect(all.ratio).toBeLessThanOrEqual(bond);
    }
  });
});

describe('the plateau', () => {
  it('is where the bond has 98 % of the strength of a very long one', () => {
    const asked = question([pull(10_000)]);
    const { overlap, strength } = findPlateau(asked);
    expectClose(
      bondStrengthAt(asked, overlap!).ratio,
      0.98 * bondStrengthAt(asked, 500).ratio,
      { relative: 1e-3 },
      'strength on the plateau',
    );
    expect(strength.ratio).toBe(bondStrengthAt(asked, 500).ratio);
    expect(bondStrengthAt(asked, overlap! - 2).ratio).toBeLessThan(0.98 * strength.ratio);
  });

  it('is not named where the bond still gains at the longest overlap', () => {
    const tough = {
      ...adhesive,
      states: [{ ...adhesive.states[0]!, plasticStrain: 5, shearYield: 1 }],
    };
    const thick = { ...singleLap, bond: { gap: 2, tolerance: 0 } } as JointInput;
    const asked = { ...question([pull(10_000)], thick), adhesive: tough };
    const { overlap } = findPlateau(asked);
    expect(overlap).toBeNull();
  });

  it('is the same whatever the load', () => {
    const one = findPlateau(question([pull(1000)])).overlap!;
    const other = findPlateau(question([pull(20_000)])).overlap!;
    expectClose(one, other, { absolute: 0.02 }, 'plateau');
  });
});
