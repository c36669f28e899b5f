/** What the strength of an adhesive rests on at a temperature and moisture: of a margin and of the ledger. */
import { scatterAt } from '../../model/joint/knockdown.ts';
import type { CaseInput } from '../../model/joint/types.ts';
import { degreesCelsius, type Said, say } from '../../model/said.ts';
import type { Allowable } from '../../shared/project.ts';
import type { StrengthBasis } from '../../shared/reports-ledger.ts';
import { bareWords, restsOn } from '../../shared/rests-on.ts';
import type { ResolvedAdhesive } from './resolve.ts';

export type Surroundings = Pick<CaseInput, 'temperature' | 'moisture'>;

export interface Foundation {
  readonly basis: StrengthBasis;
  /** Such as `B-basis, 18 coupons, 60 °C wet`. */
  readonly words: Said;
  /** Allowables that it is taken from, the lower first; none where the adhesive's own rows stand alone. */
  readonly allowables: readonly Allowable[];
  /** False where its allowables were tested at another temperature. */
  readonly exact: boolean;
}

/** The words that the page has for it too, with the figure in them. */
export const restsOnSaid = (one: Allowable): Said => ({
  message: restsOn(one.basis, one.coupons, one),
  figures: [degreesCelsius(one.temperature)],
});

export function foundationOf(
  { adhesive: { knockdowns }, allowables, source }: ResolvedAdhesive,
  surroundings: Surroundings,
): Foundation {
  const found = knockdowns ? scatterAt(knockdowns, surroundings) : null;
  // By the factor that counts: a mean has the knockdown for scatter beside it.
  const factorAt = (place: number): number => knockdowns!.tested![place]!.factor;
  const [lowest, ...others] = (found?.tested ?? [])
    .toSorted((a, b) => factorAt(a) - factorAt(b))
    .map((place) => allowables[place]!);
  if (!found || !lowest) {
    const words = { message: bareWords[source.kind] };
    return { basis: source.kind, words, allowables: [], exact: true };
  }
  const words = restsOnSaid(lowest);
  const here = say`${degreesCelsius(surroundings.temperature)} ${surroundings.moisture}`;
  return {
    basis: lowest.basis,
    words: found.exact ? words : say`${words}, not tested at ${here}`,
    allowables: [lowest, ...others],
    exact: found.exact,
  };
}
