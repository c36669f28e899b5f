/** What is read of the state of a section: stresses of its bonds, forces of its walls. */
import { dot, type Matrix } from '../numerics/dense.ts';

export interface Readings {
  readonly count: number;
  /** A row over y = (d, f) for each. */
  readonly rows: Matrix;
  /** What temperature and flow add to each. */
  readonly constants: Matrix;
}

export const NOTHING_READ: Readings = {
  count: 0,
  rows: new Float64Array(0),
  constants: new Float64Array(0),
};

/** @param share of temperature and flow that acts in y: 1, or 0 for the mechanical part alone */
export function read({ count, rows, constants }: Readings, y: Matrix, share: number): Matrix {
  const size = rows.length / count;
  const out = new Float64Array(count);
  for (let r = 0; r < count; r++) {
    out[r] = dot(rows, r * size, y, size) + share * constants[r]!;
  }
  return out;
}

/** Of the bonds alone, of bonds and walls one after the other, or one of the bonds' by its place. */
export type Asked = 'bonds' | 'all' | number;

/** What can be asked of one section, each made when first asked for. */
export type OfSection = (asked: Asked) => Readings;

export function ofSection(bonds: Readings, walls: () => Readings): OfSection {
  const made = new Map<Asked, Readings>([['bonds', bonds]]);
  return (asked) => {
    let found = made.get(asked);
    if (!found) {
      found = asked === 'all' ? together(bonds, walls()) : oneOf(bonds, asked as number);
      made.set(asked, found);
    }
    return found;
  };
}

function together(first: Readings, second: Readings): Readings {
  return {
    count: first.count + second.count,
    rows: Float64Array.of(...first.rows, ...second.rows),
    constants: Float64Array.of(...first.constants, ...second.constants),
  };
}

function oneOf({ count, rows, constants }: Readings, place: number): Readings {
  const size = rows.length / count;
  return {
    count: 1,
    rows: rows.slice(place * size, (place + 1) * size),
    constants: constants.slice(place, place + 1),
  };
}
