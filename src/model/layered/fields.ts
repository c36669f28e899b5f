/**
 * Elastic fields of a layered lap at stations along the overlap, in two parts that add: per unit of
 * load, and by temperature. Shear is positive when the tube is pulled, peel when it opens the bond.
 */
import type { HarmonicSolution } from './harmonic.ts';
import type { LayeredSolution } from './lap.ts';

export interface BondField {
  readonly shear: Float64Array;
  readonly peel: Float64Array;
}

export interface WallField {
  /** Line forces along and around, N/mm, and moment about the wall's middle, N·mm/mm. */
  readonly axial: Float64Array;
  readonly hoop: Float64Array;
  readonly moment: Float64Array;
}

export interface FieldPart {
  readonly bonds: readonly BondField[];
  /** The tube, then the outer adherends, as in the assembly. */
  readonly walls: readonly WallField[];
}

export interface LayeredFields {
  readonly x: readonly number[];
  /** Per unit of load: 1 N on the tube. */
  readonly unit: FieldPart;
  readonly thermal: FieldPart;
}

/** How the layers of a lap, inside to outside, stand to the tube and the outer adherends. */
export interface Order {
  /** Sign that makes the shear of each bond positive in tension of the tube. */
  readonly signs: readonly number[];
  /** Layer of the tube, then of each outer adherend. */
  readonly layers: readonly number[];
}

/** Both ends exactly, dense where peel turns. */
export function fieldStations(length: number, count = 60): number[] {
  const stations: number[] = [];
  for (let i = 0; i <= count; i++) {
    const t = i / count;
    // A third power gathers stations at both ends; a little even spacing covers the middle.
    const s = 2 * t - 1;
    stations.push(
      (length * (1 + 0.3 * s + 0.7 * (Math.sign(s) * (1 - (1 - Math.abs(s)) ** 3)))) / 2,
    );
  }
  stations[count] = length;
  return stations;
}

export function fieldsOf(solution: LayeredSolution, order: Order): LayeredFields {
  const x = fieldStations(solution.lap.length);
  return { x, unit: partOf(solution, order, x, 1, 0), thermal: partOf(solution, order, x, 0, 1) };
}

/** @param withWalls whether the walls are asked for; none in the answer otherwise */
export function partOf(
  solution: LayeredSolution,
  order: Order,
  x: readonly number[],
  load: number,
  share: number,
  withWalls = true,
): FieldPart {
  return inOrder(solution.columns(x, load, share, withWalls), order);
}

interface Columns {
  readonly bonds: readonly BondField[];
  readonly walls: readonly WallField[];
}

function inOrder({ bonds, walls }: Columns, order: Order): FieldPart {
  return {
    bonds: bonds.map(({ shear, peel }, j) => ({
      shear: order.signs[j] === 1 ? shear : shear.map((value) => -value),
      peel,
    })),
    walls: walls.length === 0 ? [] : order.layers.map((layer) => walls[layer]!),
  };
}

/** Amplitudes of the bonds at cos θ per N·mm of bending moment, at stations. */
export const bentPart = (
  solution: HarmonicSolution,
  order: Order,
  x: readonly number[],
): FieldPart => inOrder(solution.columns(x, false), order);

/** The sum of parts at the same stations, each times its weight. */
export function combined(parts: readonly FieldPart[], weights: readonly number[]): FieldPart {
  const sum = (pick: (part: FieldPart) => Float64Array): Float64Array => {
    const columns = parts.map(pick);
    return columns[0]!.map((_v, i) =>
      columns.reduce((all, column, k) => all + weights[k]! * column[i]!, 0),
    );
  };
  const [{ bonds, walls }] = parts as [FieldPart];
  return {
    bonds: bonds.map((_bond, j) => ({
      shear: sum((part) => part.bonds[j]!.shear),
      peel: sum((part) => part.bonds[j]!.peel),
    })),
    walls: walls.map((_wall, i) => ({
      axial: sum((part) => part.walls[i]!.axial),
      hoop: sum((part) => part.walls[i]!.hoop),
      moment: sum((part) => part.walls[i]!.moment),
    })),
  };
}
