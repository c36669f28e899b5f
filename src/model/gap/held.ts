/**
 * The worst gaps that spacers and jig leave. A tube that nothing else holds can shift and tilt, so
 * each section is taken by itself: at both ends of the overlap that can happen together, between them
 * it is on the safe side.
 */

import { angleOf, gapOffAxis } from './circles.ts';
import { lowestAround, lowestBetween } from './search.ts';
import {
  approach,
  centredGap,
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

/** Lowest (sign 1) or highest (sign −1) gap of a bond with the tube moved toward φ as far as it goes. */
function extremeToward(
  sections: Sections,
  section: Section,
  bond: number,
  phi: number,
  sign: 1 | -1,
  between: boolean,
): Extreme {
  const stop = stopOf(sections, section, phi, between);
  const ring = section.rings[bond]!;
  const { tubeInside } = sections.bonds[bond]!;
  const toward = approach(tubeInside, phi);
  const found = lowestAround(
    (theta) => sign * movedGap(ring, tubeInside, stop.offset, phi, theta),
    sections.places,
    (i) =>
      sign *
      gapOffAxis(
        ring.outerAt[i]!,
        ring.innerAt[i]!,
        stop.offset,
        angleOf(sections.places[i]! - toward),
      ),
    between,
  );
  return { section, phi, stop, theta: found.at, value: sign * found.value };
}

function extremeOf(
  sections: Sections,
  list: readonly Section[],
  bond: number,
  sign: 1 | -1,
): Extreme {
  let best: Extreme | null = null;
  for (const section of list) {
    for (let k = 0; k < DIRECTIONS; k++) {
      const here = extremeToward(sections, section, bond, k * STEP, sign, false);
      if (!best || sign * here.value < sign * best.value - 1e-12) best = here;
    }
  }
  const { section, phi } = best!;
  best = extremeToward(sections, section, bond, phi, sign, true);
  const { value } = best;
  const along = (at: number): number =>
    sign * extremeToward(sections, section, bond, at, sign, true).value;
  for (const [from, to] of [
    [phi - STEP, phi],
    [phi, phi + STEP],
  ] as const) {
    const found = lowestBetween(along, from, to, 24);
    if (found.value < sign * value - 1e-10) {
      best = extremeToward(sections, section, bond, found.at, sign, true);
    }
  }
  return best;
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
 * What the readings do to an extreme: directly, and through the place where the tube was stopped,
 * whose offset is e ≈ (h − s)/cos ψ there. A jig's offset hangs on no reading.
 */
function spreadOf(sections: Sections, bond: number, extreme: Extreme): PlacedSpread {
  const { section, phi, stop, theta, value } = extreme;
  const { contact } = stop;
  const weights = [...gapWeights(sections, bond, section.x, theta)];
  if (contact && stop.offset > 0) {
    const lean = Math.cos(theta - approach(sections.bonds[bond]!.tubeInside, phi));
    const touch = Math.cos(contact.theta - approach(sections.bonds[contact.bond]!.tubeInside, phi));
    weights.push(...gapWeights(sections, contact.bond, section.x, contact.theta, -lean / touch));
  }
  return {
    value,
    standard: standardUncertainty(joined(weights)),
    x: section.x,
    theta: turned(theta),
  };
}

export type HeldGap = Pick<MeasuredGap, 'offset' | 'stoppedBy'> & {
  readonly min: PlacedSpread;
  readonly max: PlacedSpread;
};

export function heldGap(sections: Sections, list: readonly Section[], bond: number): HeldGap {
  const { spacer } = sections.holding;
  const least = extremeOf(sections, list, bond, 1);
  const most = extremeOf(sections, list, bond, -1);
  const min = spreadOf(sections, bond, least);
  const { contact, offset } = least.stop;
  const rests = contact?.bond === bond && offset > 0;
  return {
    // Where the tube rests on the spacers, their size is the gap, whatever the readings say.
    min: rests ? { ...min, value: spacer, standard: 0 } : min,
    max: spreadOf(sections, bond, most),
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
      const found = lowestAround(
        (theta) => sign * centredGap(ring, theta),
        sections.places,
        (i) => sign * (ring.outerAt[i]! - ring.innerAt[i]!),
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
