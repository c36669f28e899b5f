/** Whether a stack is symmetric and balanced, and why not. */
import { describe, expect, it } from 'vitest';
import { makeStack } from '../../src/model/laminate/stack.ts';
import { traitsOf } from '../../src/model/laminate/symmetry.ts';
import { carbon, quasi } from '../support/plies.ts';

describe('the traits of a stack', () => {
  const of = (stack: number[]) => traitsOf(makeStack(carbon, stack));
  it.each<[number[], boolean, boolean, RegExp[]]>([
    [[0], true, true, []],
    [quasi, true, true, []],
    [[45, -45, -45, 45], true, true, []],
    [[90, 0, -90], true, true, []],
    [[45, 0, -135], true, false, [/more at 45° than at −45°/]],
    [[0, 90], false, true, [/ply 1 from the inside is 0°, ply 1 from the outside 90°/]],
    [[0, 30, 45, 0], false, false, [/ply 2 from the inside is 30°/, /more at 30° than at −30°/]],
    [[-45, -45, 45], false, false, [/ply 1 from/, /more at −45° than at 45°/]],
  ])('of %j', (stack, symmetric, balanced, reasons) => {
    const traits = of(stack);
    expect(traits).toMatchObject({ symmetric, balanced });
    expect(traits.reasons).toHaveLength(reasons.length);
    reasons.forEach((reason, i) => {
      expect(traits.reasons[i]).toMatch(reason);
    });
  });

  it('name the faces of a strip, which has no inside', () => {
    const { reasons } = traitsOf(makeStack(carbon, [0, 90]), ['lower face', 'upper face']);
    expect(reasons).toEqual([
      'Not symmetric: ply 1 from the lower face is 0°, ply 1 from the upper face 90°.',
    ]);
  });

  it('look at thickness and material as well', () => {
    const other = { ...carbon, axialModulus: 70_000 };
    expect(
      traitsOf({
        plies: [
          { ply: carbon, angle: 0, thickness: 0.1 },
          { ply: carbon, angle: 0, thickness: 0.2 },
        ],
      }).reasons[0],
    ).toMatch(/both 0°, differ in thickness or material/);
    expect(
      traitsOf({
        plies: [
          { ply: carbon, angle: 30, thickness: 0.1 },
          { ply: other, angle: -30, thickness: 0.1 },
        ],
      }),
    ).toMatchObject({ symmetric: false, balanced: false });
  });
});
