/**
 * The gap between measured parts: thinnest, mean and thickest, on one axis and as held, each with
 * its uncertainty; its volume; a map to draw it by. docs/method.md, section 16.
 *
 * What is not measured stays unknown: lobes of odd number (two-point diameters do not see them),
 * whether the parts are straight, what lies beyond the end stations (taken straight on).
 */
import { centredExtremes, heldGap } from './held.ts';
import {
  centredGap,
  halved,
  movedGap,
  type Section,
  type Sections,
  sectionsOf,
  stopOf,
} from './sections.ts';
import { standardUncertainty } from './spread.ts';
import type { Surface } from './surface.ts';
import type { MeasuredGap, MeasuredJoint, Spread } from './types.ts';

/** Rows of the map between its ends, and clockings around it. */
const ROWS = 8;
const AROUND = 36;
/** Steps of the means around half a turn; clockings in whole degrees fall on them, kinks and all. */
const FINE = 180;

const spaced = (n: number, whole: number): readonly number[] =>
  Array.from({ length: n }, (_, i) => (whole * i) / n);
/** Diameters come again after half a turn. */
const halfTurn = spaced(FINE, Math.PI);

/** Mean weights of stations: linear between the nodes, so that the trapezoidal rule is exact. */
function meanAlong(surface: Surface, nodes: readonly number[]): readonly number[] {
  const overlap = nodes.at(-1)!;
  const total = surface.measured.stations.map(() => 0);
  nodes.forEach((x, i) => {
    const before = nodes[i - 1] ?? x;
    const after = nodes[i + 1] ?? x;
    surface.along(x).forEach((weight, k) => {
      total[k]! += (weight * (after - before)) / 2 / overlap;
    });
  });
  return total;
}

function meanAround(surface: Surface): readonly number[] {
  const total = surface.measured.clockings.map(() => 0);
  for (const theta of halfTurn) {
    surface.around(theta).forEach((weight, k) => {
      total[k]! += weight / FINE;
    });
  }
  return total;
}

function meanGap(sections: Sections, bond: number): Spread {
  const { inside, outside } = sections.bonds[bond]!;
  const [inner, outer] = [inside, outside].map((surface) => {
    const along = meanAlong(surface, sections.nodes);
    const around = meanAround(surface);
    const mean = along.reduce(
      (sum, u, i) =>
        sum + u * around.reduce((ring, v, j) => ring + v * surface.measured.diameters[i]![j]!, 0),
      0,
    );
    const half = around.map((weight) => weight / 2);
    return { mean, weights: { surface: surface.measured, along, around: half } };
  });
  return {
    value: (outer!.mean - inner!.mean) / 2,
    standard: standardUncertainty([inner!.weights, outer!.weights]),
  };
}

/** V = ∫∫ (R² − r²)/2 dθ dx; both radii are linear in x between nodes, so that Simpson's rule is exact. */
function volumeOf(sections: Sections, bond: number): number {
  const area = (x: number): number => {
    const ring = sections.at(x).rings[bond]!;
    return halfTurn.reduce(
      (sum, theta) => sum + (ring.outer(theta) ** 2 - ring.inner(theta) ** 2) / 2,
      0,
    );
  };
  const { nodes } = sections;
  let total = 0;
  for (let i = 1; i < nodes.length; i++) {
    const [from, to] = [nodes[i - 1]!, nodes[i]!];
    total += ((to - from) / 6) * (area(from) + 4 * area((from + to) / 2) + area(to));
  }
  return (total * 2 * Math.PI) / FINE;
}

function mapOf(sections: Sections, bond: number, phi: number): MeasuredGap['map'] {
  const even = Array.from({ length: ROWS + 1 }, (_, i) => (sections.overlap * i) / ROWS);
  const x = [...new Set([...sections.nodes, ...even])].sort((a, b) => a - b);
  const theta = spaced(AROUND, 2 * Math.PI);
  const rows = x.map((at) => sections.at(at));
  const { tubeInside } = sections.bonds[bond]!;
  return {
    x,
    theta,
    centred: rows.map(({ rings }) => theta.map((at) => centredGap(rings[bond]!, at))),
    held: rows.map((section) => {
      const { offset } = stopOf(sections, section, phi);
      return theta.map((at) => movedGap(section.rings[bond]!, tubeInside, offset, phi, at));
    }),
  };
}

/**
 * One for each bond, in their order.
 * @throws ModelError naming the surface that is not fully measured or whose places do not rise
 */
export function measureGap(joint: MeasuredJoint): readonly MeasuredGap[] {
  const sections = sectionsOf(joint);
  const list: readonly Section[] = sections.nodes.map((x) => sections.at(x));
  // Between two stations a held gap can be worse than at both.
  const closer = halved(sections.nodes).map((x) => sections.at(x));
  return joint.bonds.map((_, bond) => {
    const mean = meanGap(sections, bond);
    const { min, max, offset, stoppedBy } = heldGap(sections, closer, bond);
    return {
      centred: { ...centredExtremes(sections, list, bond), mean },
      held: { min, mean, max },
      offset,
      stoppedBy,
      volume: volumeOf(sections, bond),
      map: mapOf(sections, bond, offset.theta),
    };
  });
}
