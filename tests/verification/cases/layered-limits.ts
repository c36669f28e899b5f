/** The specification's tolerances for shear and peel along one bond. */
import { value, type Zone } from '../case.ts';
import { shareOf } from '../judge.ts';
import { type Bond, peakOf, peels, type Row, shears } from './layered-tables.ts';

/** Tolerances of the specification. */
export const SHEAR = 0.08;
const SHEAR_MEAN = 0.04;
const PEEL = 0.2;
const PEEL_AT_MOUTH = 0.25;
/** Peel counts where it is over this share of its peak. */
export const COUNTING = 1 / 4;
/** Shear below this share of its peak is nearly zero: its difference is taken of the peak. */
const NEARLY_ZERO = 1 / 50;

export interface Ends {
  readonly length: number;
  readonly gap: number;
  /** Largest difference of peel that is under a quarter of its peak, of the peak. */
  readonly small: number;
  /** Largest difference of shear at the edge of the last h, of the value. */
  readonly edge: number;
  /** What the specification's tolerance does not cover: held to what is found, and why. */
  readonly found?: readonly Zone[];
}

/** The specification's tolerances for one bond's curves. */
export function zonesOf(
  { rows, name }: Bond,
  { length, gap, small, edge, found = [] }: Ends,
): readonly Zone[] {
  const last = gap * (1 + 1e-9);
  const atEnd = (x: number): boolean => x <= last || x >= length - last;
  const some = (
    stress: 'shear' | 'peel',
    which: (row: Row, x: number) => boolean,
  ): Pick<Zone, 'contains' | 'stress' | 'series'> => ({
    stress,
    series: name,
    contains: (x) => rows.some((row) => row[0] === x && which(row, x)),
  });
  const peak = peakOf(shears(rows));
  const counts = COUNTING * peakOf(peels(rows));
  return [
    ...found.map((zone) => ({ ...zone, series: name })),
    {
      ...some('shear', ([, shear], x) => !atEnd(x) && Math.abs(shear) < NEARLY_ZERO * peak),
      name: 'where shear is nearly zero',
      of: 'peak',
      tolerance: SHEAR,
      why: 'the specification; a share of nothing says nothing, so the difference is taken of the peak',
    },
    {
      ...some('shear', (_row, x) => !atEnd(x)),
      name: 'away from the last h',
      of: 'value',
      tolerance: SHEAR,
      why: 'the specification: 8 % everywhere',
    },
    {
      ...some('shear', () => true),
      name: 'h from the mouth',
      of: 'value',
      tolerance: edge,
      why: 'the edge of the last h, which the 8 % leaves out; set just above what is found',
    },
    {
      ...some('peel', ([, , peel], x) => atEnd(x) && Math.abs(peel) > counts),
      name: 'h from the mouth',
      of: 'value',
      tolerance: PEEL_AT_MOUTH,
      why: 'the specification: 25 % there',
    },
    {
      ...some('peel', ([, , peel]) => Math.abs(peel) > counts),
      name: 'over a quarter of its peak',
      of: 'value',
      tolerance: PEEL,
      why: 'the specification: 20 %',
    },
    {
      ...some('peel', () => true),
      name: 'smaller than that',
      of: 'peak',
      tolerance: small,
      why: 'the specification asks nothing; set just above what is found',
    },
  ];
}

/** Mean of the sizes of the relative differences, away from the last h. */
export function meanShear(bond: Bond, { length, gap }: Ends) {
  const last = gap * (1 + 1e-9);
  const peak = peakOf(shears(bond.rows));
  return value({
    name: `shear, mean of the relative differences' sizes away from the last h, ${bond.name}`,
    unit: '',
    expected: 0,
    computed: () => {
      const at = bond.shear();
      const shares = bond.rows
        .filter(([x]) => x > last && x < length - last)
        .map(([x, expected]) => {
          const scale = Math.abs(expected) < NEARLY_ZERO * peak ? peak : expected;
          return shareOf({ what: '', expected, computed: at(x), scale });
        });
      return shares.reduce((sum, one) => sum + one, 0) / shares.length;
    },
    tolerance: { absolute: SHEAR_MEAN },
    why: 'the specification: 4 % in the mean',
  });
}
