/**
 * Where a tube that was moved aside rests, and what each contact does to a gap elsewhere. The tube
 * moved by E = (e·cos φ, e·sin φ) takes c·E from the gap at θ, with c = ±(cos θ, sin θ); it rests where
 * ci·E = hi − s. An extreme gap stands in a corner of what the contacts leave free, so that
 *
 *   h − c·E = h + Σ νi·(hi − s)     with  Σ νi·ci = −c
 *
 * and, where the section is free to lie anywhere between two stations, h' + Σ νi·hi' = 0 along the joint.
 */
import { angleOf, offsetToContact } from './circles.ts';
import { lowestBetween } from './search.ts';
import {
  aheadOf,
  approach,
  centredGap,
  contactsAtPlaces,
  type Section,
  type Sections,
} from './sections.ts';

export interface Contact {
  readonly bond: number;
  readonly theta: number;
}

/** What one contact's gap adds to the gap elsewhere: the factor ν. */
export interface Share {
  readonly contact: Contact;
  readonly factor: number;
}

/** mm: contacts that stop the tube this close to one another stop it together. */
const TOGETHER = 2e-5;
/** Radians: nearer to one another they are one contact. */
const SAME_PLACE = (3 * Math.PI) / 180;
/** Of contacts at once. */
const MOST = 6;
/** Share of a direction that may be left over: the search ends before its last digits. */
const LEFT = 0.02;

/** All contacts that stop the tube on its way toward φ after the same way. */
export function contactsOf(
  sections: Sections,
  { rings }: Section,
  phi: number,
  offset: number,
): readonly Contact[] {
  const { bonds, holding, places } = sections;
  const found: (Contact & { readonly value: number })[] = [];
  rings.forEach((ring, bond) => {
    const toward = approach(bonds[bond]!.tubeInside, phi);
    const at = (outer: number, inner: number, theta: number): number =>
      offsetToContact(outer, inner, holding.spacer, angleOf(theta - toward));
    const n = places.length;
    const stretch = aheadOf(sections, ring, toward);
    const values = new Float64Array(stretch.count);
    contactsAtPlaces(sections, ring, toward, stretch, values);
    values.forEach((value, k) => {
      const i = (stretch.first + k) % n;
      const before = values[k - 1] ?? Number.POSITIVE_INFINITY;
      const after = values[k + 1] ?? Number.POSITIVE_INFINITY;
      if (value > before || value > after || value > offset + 0.01) return;
      const from = i === 0 ? places[n - 1]! - 2 * Math.PI : places[i - 1]!;
      const to = i === n - 1 ? places[0]! + 2 * Math.PI : places[i + 1]!;
      const between = lowestBetween(
        (theta) => at(ring.outer(theta), ring.inner(theta), theta),
        from,
        to,
      );
      const lowest = between.value < value ? between : { at: places[i]!, value };
      if (lowest.value <= offset + TOGETHER) {
        found.push({ bond, theta: lowest.at, value: lowest.value });
      }
    });
  });
  const apart = (a: number, b: number): number =>
    Math.abs(((((a - b) % (2 * Math.PI)) + 3 * Math.PI) % (2 * Math.PI)) - Math.PI);
  return found
    .sort((a, b) => a.value - b.value)
    .slice(0, MOST)
    .filter(
      (one, i, all) =>
        !all
          .slice(0, i)
          .some(({ bond, theta }) => bond === one.bond && apart(theta, one.theta) < SAME_PLACE),
    );
}

/** Least squares of columns times factors against a right-hand side; null where columns are not free. */
function solved(
  columns: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  const dot = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * b[i]!, 0);
  const rows = columns.map((a) => [...columns.map((b) => dot(a, b)), dot(a, right)]);
  const n = columns.length;
  for (let i = 0; i < n; i++) {
    if (rows[i]![i]! < 1e-4) return null;
    for (let k = 0; k < n; k++) {
      if (k === i) continue;
      const factor = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= n; j++) rows[k]![j]! -= factor * rows[i]![j]!;
    }
  }
  return rows.map((row, i) => row[n]! / row[i]!);
}

function subsets<T>(list: readonly T[], most: number): readonly (readonly T[])[] {
  const all = Array.from({ length: 2 ** list.length }, (_, bits) =>
    list.filter((_, i) => (bits >> i) & 1),
  );
  return all.filter(({ length }) => length > 0 && length <= most);
}

export interface Corner {
  readonly sections: Sections;
  /** Bond and clocking of the extreme gap. */
  readonly bond: number;
  readonly theta: number;
  /** 1 for a thinnest gap, −1 for a thickest. */
  readonly sign: 1 | -1;
  /** Where the section may lie, when it was found between two stations: its neighbours; else null. */
  readonly between: readonly [Section, Section] | null;
}

/** Every set of contacts that holds the tube in this corner; more than one where they are alike. */
export function sharesOf(
  { sections, bond, theta, sign, between }: Corner,
  contacts: readonly Contact[],
): readonly (readonly Share[])[] {
  const direction = (b: number, at: number): readonly [number, number] => {
    const toward = sections.bonds[b]!.tubeInside ? 1 : -1;
    return [toward * Math.cos(at), toward * Math.sin(at)];
  };
  const gapAt = (of: Section, b: number, at: number): number => centredGap(of.rings[b]!, at);
  const slope = (b: number, at: number): number =>
    between === null
      ? 0
      : (gapAt(between[1], b, at) - gapAt(between[0], b, at)) / (between[1].x - between[0].x);
  const scale = Math.max(
    ...[{ bond, theta }, ...contacts].map((one) => Math.abs(slope(one.bond, one.theta))),
  );
  // Without a slope anywhere the place along the joint says nothing.
  const sloped = between !== null && scale > 1e-7;
  const column = (b: number, at: number): readonly number[] => [
    ...direction(b, at),
    ...(sloped ? [slope(b, at) / scale] : []),
  ];
  const right = column(bond, theta).map((value) => -value);
  return subsets(contacts, sloped ? 3 : 2).flatMap((set) => {
    const columns = set.map((one) => column(one.bond, one.theta));
    const factors = solved(columns, right);
    if (!factors) return [];
    const left = right.map(
      (value, i) => value - columns.reduce((sum, one, k) => sum + one[i]! * factors[k]!, 0),
    );
    const holds = Math.hypot(...left) < LEFT && factors.every((factor) => -sign * factor > -1e-3);
    return holds ? [set.map((contact, k) => ({ contact, factor: factors[k]! }))] : [];
  });
}
