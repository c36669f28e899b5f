/** A double lap of two unlike bonds against finite elements: reference/unlike_bonds.py. */
import { describe, expect, it } from 'vitest';
import reference from '../../reference/unlike-bonds.json' with { type: 'json' };
import { chainCapacity } from '../../src/model/chain/capacity.ts';
import type { LapProblem } from '../../src/model/lap/problem.ts';
import { expectClose } from '../support/close.ts';
import { member } from '../support/laps.ts';

type Inputs = (typeof reference.cases)[number]['inputs'];

const problemOf = ({ length, bonds, channel }: Inputs): LapProblem => ({
  length,
  bonds,
  channels: [
    {
      load: 1,
      tube: member(channel.tube),
      outers: channel.outers.map((stiffness) => member(stiffness)),
      levers: channel.levers,
    },
  ],
});
const strengthOf = (inputs: Inputs): number =>
  chainCapacity(problemOf(inputs), { bond: 0, end: 'mouth' }).factor;

describe('a double lap of two unlike bonds', () => {
  it.each(reference.cases)('carries at $name what finite elements carry', (one) => {
    expectClose(strengthOf(one.inputs), one.expected.load, { relative: 1e-5 }, one.name);
  });

  it('carries a little less once its overlap grows past the best', () => {
    const [first, best, ...longer] = reference.cases.map(({ inputs }) => strengthOf(inputs));
    expect(best).toBeGreaterThan(first!);
    let before = best!;
    for (const strength of longer) {
      expect(strength).toBeLessThan(before);
      before = strength;
    }
    expect(before / best!).toBeGreaterThan(0.98);
  });
});
