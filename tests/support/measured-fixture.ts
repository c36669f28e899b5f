/** Parts of `reference/measured-gap.json` as the model takes them, with what the script found. */
import type { MeasuredJoint } from '../../src/model/gap/types.ts';
import { readFixture } from './fixtures.ts';
import { DEGREE } from './measured.ts';

interface Surface {
  readonly stations: readonly number[];
  readonly clockings: readonly number[];
  readonly error: number;
  readonly repeatability: number;
  readonly diameters: readonly (readonly number[])[];
}
interface Figures {
  readonly cmin: number;
  readonly cmax: number;
  readonly mean: number;
}
export interface MeasuredCase {
  readonly name: string;
  readonly overlap: number;
  readonly spacer: number;
  readonly offset: number | null;
  readonly bonds: readonly {
    readonly tubeInside: boolean;
    readonly inside: Surface;
    readonly outside: Surface;
  }[];
  readonly found: readonly (Figures & { readonly hmin: number; readonly hmax: number })[];
  readonly deviation: readonly Figures[];
}

export const measuredCases = (): readonly MeasuredCase[] =>
  (readFixture('measured-gap.json') as { readonly cases: readonly MeasuredCase[] }).cases;

const turned = (surface: Surface) => ({
  ...surface,
  clockings: surface.clockings.map((angle) => angle * DEGREE),
});

export const measuredJoint = ({ overlap, spacer, offset, bonds }: MeasuredCase): MeasuredJoint => ({
  overlap,
  holding: { spacer, offset: offset ?? Number.POSITIVE_INFINITY },
  bonds: bonds.map(({ tubeInside, inside, outside }) => ({
    tubeInside,
    inside: turned(inside),
    outside: turned(outside),
  })),
});
