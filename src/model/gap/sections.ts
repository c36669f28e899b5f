/** Sections across a measured joint: the radii of its surfaces around each of them. */
import { ModelError } from '../errors.ts';
import { angleOf, gapOffAxis, offsetToContact } from './circles.ts';
import { isLower, lowestBeside, type Stretch, stretchAbout } from './search.ts';
import { makeSurface, type Surface } from './surface.ts';
import type { Holding, MeasuredJoint } from './types.ts';

export interface BondSurfaces {
  readonly inside: Surface;
  readonly outside: Surface;
  readonly tubeInside: boolean;
}

export interface Ring {
  /** Radii of the part inside and of the part outside, mm. */
  inner(theta: number): number;
  outer(theta: number): number;
  /** The same at the places of the sections. */
  readonly innerAt: Float64Array;
  readonly outerAt: Float64Array;
  /** Thinnest gap at those places on one axis. */
  readonly least: number;
}

/** One section: a ring for each bond. */
export interface Section {
  readonly x: number;
  readonly rings: readonly Ring[];
}

/** A place of the sections, by its number, and what was looked for there. */
export interface Place {
  readonly place: number;
  readonly value: number;
}

/** What stopped the tube on its way to a side. */
export interface Stop {
  /** How far it came, mm. */
  readonly offset: number;
  /** Bond and clocking of the contact; null where the jig stopped it. */
  readonly contact: { readonly bond: number; readonly theta: number } | null;
}

const DEGREE = Math.PI / 180;
const degrees = Array.from({ length: 360 }, (_, i) => i * DEGREE);

/** A full turn in whole degrees and at every clocking of the surfaces, rising. */
function placesOf(bonds: readonly BondSurfaces[]): readonly number[] {
  const clockings = bonds.flatMap(({ inside, outside }) => [
    ...inside.measured.clockings,
    ...outside.measured.clockings,
  ]);
  const all = [...degrees, ...clockings, ...clockings.map((theta) => theta + Math.PI)];
  const sorted = all.sort((a, b) => a - b);
  return sorted.filter((theta, i) => i === 0 || theta - sorted[i - 1]! > 1e-9);
}

export interface Sections {
  readonly overlap: number;
  readonly holding: Holding;
  readonly bonds: readonly BondSurfaces[];
  /** Both ends and every station between: the gap on one axis is linear between neighbours. */
  readonly nodes: readonly number[];
  /** Clockings to look at around a turn. */
  readonly places: readonly number[];
  /** Room for one value at each of them. */
  readonly scratch: Float64Array;
  /** Their cosines and sines. */
  readonly turns: { readonly cos: Float64Array; readonly sin: Float64Array };
  at(x: number): Section;
}

/** Weights around at a list of places, worked out once for all sections. */
const weightsAt = (surface: Surface, places: readonly number[]): readonly (readonly number[])[] =>
  places.map((theta) => surface.around(theta));

const weighed = (weights: readonly number[], ring: readonly number[]): number => {
  let sum = 0;
  for (let j = 0; j < ring.length; j++) sum += weights[j]! * ring[j]!;
  return sum;
};

/** Diameters at the clockings of a surface, at any section: its stations' readings weighed. */
const ringAt = ({ measured, along }: Surface, x: number): readonly number[] => {
  const weights = along(x);
  return measured.clockings.map((_, j) =>
    weighed(
      weights,
      measured.diameters.map((row) => row[j]!),
    ),
  );
};

export function sectionsOf({ overlap, bonds, holding }: MeasuredJoint): Sections {
  if (!(overlap > 0)) throw new ModelError('overlap', 'The overlap must be above 0.');
  const surfaces = bonds.map(({ inside, outside, tubeInside }, b) => ({
    inside: makeSurface(inside, `bonds.${b}.inside`),
    outside: makeSurface(outside, `bonds.${b}.outside`),
    tubeInside,
  }));
  const stations = bonds.flatMap(({ inside, outside }) => [
    ...inside.stations,
    ...outside.stations,
  ]);
  const nodes = [...new Set([0, ...stations, overlap])]
    .filter((x) => x >= 0 && x <= overlap)
    .sort((a, b) => a - b);
  const places = placesOf(surfaces);
  const known = new Map(
    surfaces.flatMap(({ inside, outside }) =>
      [inside, outside].map((surface) => [surface, weightsAt(surface, places)] as const),
    ),
  );
  const radii = (surface: Surface, x: number) => {
    const ring = ringAt(surface, x);
    const diameter = surface.ring(ring);
    return {
      radius: (theta: number) => diameter(theta) / 2,
      atPlaces: Float64Array.from(known.get(surface)!, (weights) => weighed(weights, ring) / 2),
    };
  };
  const ringOf = ({ inside, outside }: BondSurfaces, x: number): Ring => {
    const [inner, outer] = [radii(inside, x), radii(outside, x)];
    return {
      inner: inner.radius,
      outer: outer.radius,
      innerAt: inner.atPlaces,
      outerAt: outer.atPlaces,
      least: outer.atPlaces.reduce(
        (low, r, i) => Math.min(low, r - inner.atPlaces[i]!),
        Number.POSITIVE_INFINITY,
      ),
    };
  };
  return {
    overlap,
    holding,
    bonds: surfaces,
    nodes,
    places,
    scratch: new Float64Array(places.length),
    turns: { cos: Float64Array.from(places, Math.cos), sin: Float64Array.from(places, Math.sin) },
    at: (x) => ({ x, rings: surfaces.map((bond) => ringOf(bond, x)) }),
  };
}

/** The places of a rising list, and the middles between them. */
export const halved = (list: readonly number[]): readonly number[] =>
  list.flatMap((x, i) => (i === 0 ? [x] : [(x + list[i - 1]!) / 2, x]));

/** Direction in which the part inside comes nearer to the part outside when the tube moves toward φ. */
export const approach = (tubeInside: boolean, phi: number): number =>
  tubeInside ? phi : phi + Math.PI;

export const centredGap = (ring: Ring, theta: number): number =>
  ring.outer(theta) - ring.inner(theta);

/** Gap with the tube moved by e toward φ. */
export const movedGap = (
  ring: Ring,
  tubeInside: boolean,
  offset: number,
  phi: number,
  theta: number,
): number =>
  gapOffAxis(
    ring.outer(theta),
    ring.inner(theta),
    offset,
    angleOf(theta - approach(tubeInside, phi)),
  );

/** Lowest (sign 1) or highest (sign −1) gap at the places of a stretch, the tube moved toward φ. */
export function extremePlace(
  { turns, places }: Sections,
  { outerAt, innerAt }: Ring,
  sign: 1 | -1,
  offset: number,
  toward: number,
  { first, count }: Stretch = { first: 0, count: places.length },
): Place {
  const [c, s] = [Math.cos(toward), Math.sin(toward)];
  const n = outerAt.length;
  let [place, value] = [first, Number.POSITIVE_INFINITY];
  for (let k = 0; k < count; k++) {
    const i = first + k < n ? first + k : first + k - n;
    const cos = turns.cos[i]! * c + turns.sin[i]! * s;
    const across = offset * (turns.sin[i]! * c - turns.cos[i]! * s);
    const outer = outerAt[i]!;
    const here = sign * (Math.sqrt(outer * outer - across * across) - offset * cos - innerAt[i]!);
    if (isLower(here, value)) {
      place = i;
      value = here;
    }
  }
  return { place, value };
}

/** Further aside the part inside moves along the part outside, and touches elsewhere first. */
const AHEAD = (80 / 180) * Math.PI;

/** Places at which the tube can be stopped on its way; all of them where the parts do not fit anyway. */
export function aheadOf({ places, holding }: Sections, ring: Ring, toward: number): Stretch {
  return ring.least > holding.spacer
    ? stretchAbout(places, toward, AHEAD)
    : { first: 0, count: places.length };
}

/** How far the tube moves until it is stopped at each place of a stretch; written into `out`. */
export function contactsAtPlaces(
  { turns, holding }: Sections,
  { outerAt, innerAt }: Ring,
  toward: number,
  { first, count }: Stretch,
  out: Float64Array,
): void {
  const [c, s] = [Math.cos(toward), Math.sin(toward)];
  const n = outerAt.length;
  for (let k = 0; k < count; k++) {
    const i = first + k < n ? first + k : first + k - n;
    const cos = turns.cos[i]! * c + turns.sin[i]! * s;
    const sin = turns.sin[i]! * c - turns.cos[i]! * s;
    const d = innerAt[i]! + holding.spacer;
    const across = d * sin;
    const under = outerAt[i]! * outerAt[i]! - across * across;
    out[k] = under <= 0 ? 0 : Math.max(0, Math.sqrt(under) - d * cos);
  }
}

/**
 * How far the tube can move toward φ at a section: until the jig stops it, or until a bond anywhere
 * is as thin as the spacer. The sleeve of a double lap is one rigid piece, its two surfaces on one axis.
 * @param between whether the contact is looked for between the places of the sections too
 */
export function stopOf(sections: Sections, { rings }: Section, phi: number, between = true): Stop {
  const { holding, bonds, places, scratch } = sections;
  let stop: Stop = { offset: holding.offset, contact: null };
  rings.forEach((ring, bond) => {
    const toward = approach(bonds[bond]!.tubeInside, phi);
    const stretch = aheadOf(sections, ring, toward);
    contactsAtPlaces(sections, ring, toward, stretch, scratch);
    let [place, value] = [stretch.first, Number.POSITIVE_INFINITY];
    for (let k = 0; k < stretch.count; k++) {
      if (isLower(scratch[k]!, value)) {
        place = (stretch.first + k) % places.length;
        value = scratch[k]!;
      }
    }
    const contactAt = (theta: number): number =>
      offsetToContact(
        ring.outer(theta),
        ring.inner(theta),
        holding.spacer,
        angleOf(theta - toward),
      );
    const found = between
      ? lowestBeside(contactAt, places, { place, value })
      : { at: places[place]!, value };
    if (found.value < stop.offset) {
      stop = { offset: found.value, contact: { bond, theta: found.at } };
    }
  });
  return stop;
}
