/** Sections across a measured joint: the radii of its surfaces around each of them. */
import { ModelError } from '../errors.ts';
import { angleOf, gapOffAxis, offsetToContact } from './circles.ts';
import { lowestAround } from './search.ts';
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
  readonly innerAt: readonly number[];
  readonly outerAt: readonly number[];
}

/** One section: a ring for each bond. */
export interface Section {
  readonly x: number;
  readonly rings: readonly Ring[];
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
    return {
      radius: (theta: number) => weighed(surface.around(theta), ring) / 2,
      atPlaces: known.get(surface)!.map((weights) => weighed(weights, ring) / 2),
    };
  };
  const ringOf = ({ inside, outside }: BondSurfaces, x: number): Ring => {
    const [inner, outer] = [radii(inside, x), radii(outside, x)];
    return {
      inner: inner.radius,
      outer: outer.radius,
      innerAt: inner.atPlaces,
      outerAt: outer.atPlaces,
    };
  };
  return {
    overlap,
    holding,
    bonds: surfaces,
    nodes,
    places,
    at: (x) => ({ x, rings: surfaces.map((bond) => ringOf(bond, x)) }),
  };
}

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

/**
 * How far the tube can move toward φ at a section: until the jig stops it, or until a bond anywhere
 * is as thin as the spacer. The sleeve of a double lap is one rigid piece, its two surfaces on one axis.
 * @param between whether the contact is looked for between the places of the sections too
 */
export function stopOf(sections: Sections, { rings }: Section, phi: number, between = true): Stop {
  const { holding, bonds, places } = sections;
  let stop: Stop = { offset: holding.offset, contact: null };
  rings.forEach((ring, bond) => {
    const toward = approach(bonds[bond]!.tubeInside, phi);
    const contactAt = (outer: number, inner: number, theta: number): number =>
      offsetToContact(outer, inner, holding.spacer, angleOf(theta - toward));
    const found = lowestAround(
      (theta) => contactAt(ring.outer(theta), ring.inner(theta), theta),
      places,
      (i) => contactAt(ring.outerAt[i]!, ring.innerAt[i]!, places[i]!),
      between,
    );
    if (found.value < stop.offset) {
      stop = { offset: found.value, contact: { bond, theta: found.at } };
    }
  });
  return stop;
}
