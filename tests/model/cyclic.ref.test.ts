/** Cyclic cases of given load ratios against the independent calculation: reference/cyclic.py. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close.ts';
import { cyclicReference } from '../support/cyclic-reference.ts';

/** Tapered walls are solved in cells, to about this share; uniform ones in closed form. */
const within = (what: string) => ({ relative: /^socket-all/.test(what) ? 4e-5 : 2e-6 });

const { alone, together, worst } = cyclicReference();

describe('cyclic shear, alone and together, on five joints', () => {
  it.each(alone)('reaches $expected: $what', ({ what, expected, computed }) => {
    expectClose(computed, expected, within(what), what);
  });

  it.each(together)('has a damage of 1 at $expected: $what', ({ what, expected, computed }) => {
    expectClose(computed, expected, within(what), what);
  });

  it('in the gap state named', () => {
    for (const { what, expected, computed } of worst) expect(computed, what).toBe(expected);
  });
});
