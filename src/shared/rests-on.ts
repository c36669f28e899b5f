/** What a strength rests on, for wherever it is used: `B-basis, 18 coupons, 60 °C wet`. */
import type { Source } from './project-fields.ts';
import type { Moisture } from './project-materials.ts';
import { environment } from './words.ts';

export const restsOn = (
  basis: 'A' | 'B' | 'mean',
  coupons: number,
  { temperature, moisture }: { readonly temperature: number; readonly moisture: Moisture },
): string =>
  `${basis === 'mean' ? 'mean, no allowable' : `${basis}-basis`}, ${coupons} coupon${coupons === 1 ? '' : 's'}, ${environment(temperature, moisture)}`;

/** The same where no allowable stands behind it: what kind of figures they are. */
export const bareWords: Readonly<Record<Source['kind'], string>> = {
  typical: 'typical values, no allowable',
  memory: 'values from memory, no allowable',
  published: 'published values',
  tested: 'tested values as entered',
};
