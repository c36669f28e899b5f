/** Section properties against quadrature by scipy (reference/annulus.py). */
import { describe, it } from 'vitest';
import { annulus } from '../../src/model/joint/section.ts';
import { expectClose } from '../support/close.ts';
import { readFixture } from '../support/fixtures.ts';

interface Fixture {
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: { readonly insideRadius: number; readonly outsideRadius: number };
    readonly expected: Readonly<
      Record<'area' | 'secondMoment' | 'polarMoment' | 'meanRadius', number>
    >;
  }[];
}

describe('annulus', () => {
  it.each((readFixture('sections.json') as Fixture).cases)('$name', ({ inputs, expected }) => {
    const section = annulus(inputs.insideRadius, inputs.outsideRadius);
    for (const [name, value] of Object.entries(expected)) {
      const computed = section[name as keyof typeof expected];
      expectClose(computed, value, { relative: 1e-9 }, name, inputs);
    }
  });
});
