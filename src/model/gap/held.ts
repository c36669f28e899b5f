/**
 * The worst gaps that spacers and jig leave. A tube that nothing else holds can shift and tilt, so
 * each section is taken by itself: at both ends of the overlap that can happen together, between them
 * it is on the safe side.
 */

import { type Contact, contactsOf, type Share, sharesOf } from './contacts.ts';
import { lowestBeside, lowestBetween, stretchAbout } from './search.ts';
import {
  approach,
  centredGap,
  extremePlace,
  movedGap,
  type Section,
  type Sections,
  type Stop,
  stopOf,
} from './sections.ts';
import { joined, type ReadingWeights, standardUncertainty } from './spread.ts';
import type { MeasuredGap, PlacedSpread } from './types.ts';

/** Directions to which the tube is moved. */
const DIRECTIONS = 36;
const STEP = (2 * Math.PI) / DIRECTIONS;
/** How far an extreme is looked for from where it was at a neighbouring direction or section, radians. */
const NEARBY = (25 / 180) * Math.PI;
/** Steps of the searches between two directions and between two sections. */
const ASIDE = 19;
const ALONG = 18;
/** mm: no worse place lies between two sections whose middle departs less from the straight line. */
const STRAIGHT = 1e-5;

const turned = (theta: number): number => {
  const within = theta % (2 * Math.PI);
  return within < 0 ? within + 2 * Math.PI : within;
};

interface Extreme {
  readonly section: Section;
  readonly phi: number;
  readonly stop: Stop;
  readonly theta: number;
  readonly value: number;
}

/**
 * Lowest (sign 1) or highest (sign −1) gap of a bond with the tube moved toward φ as far as it goes.
 * @param about clocking near which it is known to lie; looked for all around when null
 */
function extremeToward(
  sections: Sections,
  section: Section,
  bond: number,
  phi: number,
  sign: 1 | -1,
  between: boolean,
  about: number | null = null,
): Extreme {
  const stop = stopOf(sections, section, phi, between);
  const ring = section.rings[bond]!;
  const { tubeInside } = sections.bonds[bond]!;
  const toward = approach(tubeInside, phi);
  const stretch = about === null ? undefined : stretchAbout(sections.places, about, NEARBY);
  const known = extremePlace(sections, ring, sign, stop.offset, toward, stretch);
  const found = between
    ? lowestBeside(
        (theta) => sign * movedGap(ring, tubeInside, stop.offset, phi, theta),
        sections.places,
        known,
      )
    : { at: sections.places[known.place]!, value: known.value };
  return { section, phi, stop, theta: found.at, value: sign * found.value };
}

/** The same toward the worst side, from one of which it is known to lie a step away at most. */
function worstAbout(
  sections: Sections,
  section: Section,
  bond: number,
  phi: number,
  sign: 1 | -1,
  about: number | null = null,
): Extreme {
  let best = extremeToward(sections, section, bond, phi, sign, true, about);
  const { value, stop, theta } = best;
  // A gap that rests on its spacers is nowhere thinner.
  if (sign === 1 && stop.contact?.bond === bond && stop.offset > 0) return best;
  const along = (at: number): number =>
    sign * extremeToward(sections, section, bond, at, sign, true, theta).value;
  for (const [from, to] of [
    [phi - STEP, phi],
    [phi, phi + STEP],
  ] as const) {
    const found = lowestBetween(along, from, to, ASIDE);
    if (found.value < sign * value - 1e-10) {
      best = extremeToward(sections, section, bond, found.at, sign, true, about);
    }
  }
  return best;
}

/**
 * The contacts can change from one station to the next (in a tapered double lap one bond stops the
 * tube at one end, the other at the other end), and the worst gap then lies between them.
 * @param list sections at rising places, the stations among them
 */
function extremeOf(
  sections: Sections,
  list: readonly Section[],
  bond: number,
  sign: 1 | -1,
): Extreme {
  let best: (Extreme & { readonly place: number }) | null = null;
  for (const [place, section] of list.entries()) {
    for (let k = 0; k < DIRECTIONS; k++) {
      const here = extremeToward(sections, section, bond, k * STEP, sign, false);
      if (!best || sign * here.value < sign * best.value - 1e-12) best = { ...here, place };
    }
  }
  const { section, phi, place } = best!;
  let worst = worstAbout(sections, section, bond, phi, sign);
  const at = (x: number): Extreme =>
    worstAbout(sections, sections.at(x), bond, worst.phi, sign, worst.theta);
  for (const neighbour of [list[place - 1], list[place + 1]]) {
    if (!neighbour) continue;
    const [from, to] = [section.x, neighbour.x].sort((a, b) => a - b) as [number, number];
    const chord = (worst.value + at(neighbour.x).value) / 2;
    if (sign * at((from + to) / 2).value > sign * chord - STRAIGHT) continue;
    const found = lowestBetween((x) => sign * at(x).value, from, to, ALONG);
    if (found.value < sign * worst.value - 1e-7) worst = at(found.at);
  }
  return worst;
}

/** Weights of the gap of a bond at a section and a clocking on one axis, times a factor. */
export function gapWeights(
  sections: Sections,
  bond: number,
  x: number,
  theta: number,
  factor = 1,
): readonly ReadingWeights[] {
  const { inside, outside } = sections.bonds[bond]!;
  const of = (surface: typeof inside, half: number): ReadingWeights => ({
    surface: surface.measured,
    along: surface.along(x),
    around: surface.around(theta).map((weight) => half * weight),
  });
  return [of(inside, -factor / 2), of(outside, factor / 2)];
}

/**
 * What the readings do to an extreme: directly, and through the contacts that hold the tube there. A
 * jig's offset hangs on no reading. Where the tube is held alike in several ways, the largest counts.
 */
function spreadOf(
  sections: Sections,
  bond: number,
  sign: 1 | -1,
  { section, phi, stop, theta, value }: Extreme,
): PlacedSpread {
  const own = gapWeights(sections, bond, section.x, theta);
  const through = (shares: readonly Share[]): number =>
    standardUncertainty(
      joined([
        ...own,
        ...shares.flatMap(({ contact, factor }) =>
          gapWeights(sections, contact.bond, section.x, contact.theta, factor),
        ),
      ]),
    );
  let standard = standardUncertainty(own);
  if (stop.contact && stop.offset > 0) {
    const ways = sharesOf(
      { sections, bond, theta, sign, between: neighboursOf(sections, section) },
      contactsOf(sections, section, phi, stop.offset),
    );
    standard =
      ways.length > 0
        ? Math.max(...ways.map(through))
        : through([aloneOf(sections, bond, phi, theta, stop.contact)]);
  }
  return { value, standard, x: section.x, theta: turned(theta) };
}

/** The two ends of a stretch without a station, for a section inside it. */
function neighboursOf(sections: Sections, { x }: Section): readonly [Section, Section] | null {
  const { nodes } = sections;
  if (nodes.some((node) => Math.abs(node - x) < 1e-3)) return null;
  const next = nodes.findIndex((node) => node > x);
  return [sections.at(nodes[next - 1]!), sections.at(nodes[next]!)];
}

/** One contact alone, straight on its way: e = (h − s)/cos ψ there. */
function aloneOf(
  { bonds }: Sections,
  bond: number,
  phi: number,
  theta: number,
  contact: Contact,
): Share {
  const lean = Math.cos(theta - approach(bonds[bond]!.tubeInside, phi));
  const touch = Math.cos(contact.theta - approach(bonds[contact.bond]!.tubeInside, phi));
  return { contact, factor: -lean / touch };
}

export type HeldGap = Pick<MeasuredGap, 'offset' | 'stoppedBy'> & {
  readonly min: PlacedSpread;
  readonly max: PlacedSpread;
};

export function heldGap(sections: Sections, list: readonly Section[], bond: number): HeldGap {
  const { spacer } = sections.holding;
  const least = extremeOf(sections, list, bond, 1);
  const most = extremeOf(sections, list, bond, -1);
  const min = spreadOf(sections, bond, 1, least);
  const { contact, offset } = least.stop;
  const rests = contact?.bond === bond && offset > 0;
  return {
    // Where the tube rests on the spacers, their size is the gap, whatever the readings say.
    min: rests ? { ...min, value: spacer, standard: 0 } : min,
    max: spreadOf(sections, bond, -1, most),
    offset: { value: most.stop.offset, theta: turned(most.phi) },
    stoppedBy: most.stop.contact ? (spacer > 0 ? 'spacer' : 'touch') : 'jig',
  };
}

export type CentredGap = { readonly min: PlacedSpread; readonly max: PlacedSpread };

export function centredExtremes(
  sections: Sections,
  list: readonly Section[],
  bond: number,
): CentredGap {
  const extreme = (sign: 1 | -1): PlacedSpread => {
    let best: { x: number; theta: number; value: number } | null = null;
    for (const { x, rings } of list) {
      const ring = rings[bond]!;
      const found = lowestBeside(
        (theta) => sign * centredGap(ring, theta),
        sections.places,
        extremePlace(sections, ring, sign, 0, 0),
      );
      if (!best || found.value < best.value - 1e-12) {
        best = { x, theta: found.at, value: found.value };
      }
    }
    const { x, theta, value } = best!;
    const weights = gapWeights(sections, bond, x, theta);
    return {
      value: sign * value,
      standard: standardUncertainty(weights),
      x,
      theta: turned(theta),
    };
  };
  return { min: extreme(1), max: extreme(-1) };
}
