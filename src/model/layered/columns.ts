/** What is read of a lap along it, in columns over the places. */
import type { Asked } from './readings.ts';
import type { LayeredSection } from './section.ts';
import type { Acting, Stretch } from './stretch.ts';
import { type WallColumns, wallColumns } from './wall-forces.ts';

/** The three readings of each bond, inside to outside, by their names. */
export type BondColumns<Name extends string> = readonly Readonly<Record<Name, Float64Array>>[];

export interface SectionColumns<Name extends string> {
  readonly bonds: BondColumns<Name>;
  /** Inside to outside; none where they were not asked for. */
  readonly walls: readonly WallColumns[];
}

/**
 * @param x places from the lap's root, in rising order
 * @param names of a bond's readings, in the order in which the stretch reads them
 * @param section any one of the lap's: how many bonds and walls there are
 */
export function sectionColumns<Name extends string>(
  stretch: Stretch<Asked>,
  acting: Acting,
  x: readonly number[],
  names: readonly Name[],
  { bonds: layers, shells }: LayeredSection,
  withWalls: boolean,
): SectionColumns<Name> {
  const all: Float64Array[] = [];
  const bonds = layers.map(() => {
    const columns = names.map((name) => [name, new Float64Array(x.length)] as const);
    all.push(...columns.map(([, column]) => column));
    return Object.fromEntries(columns) as Record<Name, Float64Array>;
  });
  const walls = withWalls ? shells.map(() => wallColumns(x.length)) : [];
  all.push(...walls.flatMap(({ axial, hoop, moment }) => [axial, hoop, moment]));
  const see = (i: number, values: Float64Array): void => {
    for (let r = 0; r < all.length; r++) all[r]![i] = values[r]!;
  };
  const span = { x, from: 0, to: x.length, start: 0 };
  stretch.sample(span, acting, see, withWalls ? 'all' : 'bonds');
  return { bonds, walls };
}
