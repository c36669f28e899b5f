/** A joint with the other lap, and its sleeve walls by a factor: what a comparison varies. */
import { convertLap, isFlat, type Lap, lapOf } from './convert-lap.ts';
import type { Joint } from './project.ts';
import { quantities } from './quantities.ts';
import { mapWalls, namedWalls } from './vary-joint.ts';

export type Plies = 'single' | 'double';

/** How many bonds share the load. */
export const pliesOf = (joint: Joint): Plies =>
  joint.type === 'sleeve-double' || joint.type === 'flat-double' ? 'double' : 'single';

/** The lap that a joint takes when it becomes single or double: a sleeve keeps its socket. */
export function lapFor(joint: Joint, plies: Plies): Lap {
  if (pliesOf(joint) === plies) return lapOf(joint);
  if (isFlat(joint)) return plies === 'double' ? 'flat-double' : 'flat-single';
  return plies === 'double' ? 'sleeve-double' : 'socket';
}

/** What the conversion put in or took away, in words. */
export function conversionWords(joint: Joint): string {
  switch (joint.type) {
    case 'sleeve-single':
      return joint.side === 'socket'
        ? 'a spigot inside the tube, a copy of the socket’s wall and gap'
        : 'a socket outside the tube, a copy of the spigot’s wall and gap';
    case 'sleeve-double':
      return 'no spigot: the tube in its socket alone';
    case 'flat-single':
      return 'a second strap, a copy of the plate’s thickness and gap';
    case 'flat-double':
      return 'no upper strap: the strip on the lower one alone';
  }
}

export const withLap = (joint: Joint, plies: Plies): Joint =>
  convertLap(joint, lapFor(joint, plies));

/** Longest id and name that the project file takes. */
const ID = 64;
const NAME = 120;

/** A joint under another id and name, without the sizes, which are those of the joint of the frame. */
export function named<J extends Joint>(joint: J, id: string, name: string): J {
  const { sizes: _sizes, ...kept } = joint;
  return { ...kept, id: id.slice(0, ID), name: name.slice(0, NAME) } as J;
}

/** Thickness is kept to a tenth of a micrometre: nobody makes it closer. */
const fine = (value: number): number => Math.round(value * 1e4) / 1e4;

/** The same joint with every sleeve wall a factor thicker; tapers keep their shape. */
export const scaleWalls = (joint: Joint, factor: number): Joint =>
  mapWalls(joint, (wall) => ({
    ...wall,
    atRoot: fine(wall.atRoot * factor),
    atMouth: fine(wall.atMouth * factor),
  }));

/** The wall that the project file would refuse, if any. */
export function wallOutOfRange(
  joint: Joint,
): { readonly key: string; readonly value: number } | null {
  const { min, max } = quantities.wall;
  for (const [key, wall] of namedWalls(joint)) {
    for (const end of ['atRoot', 'atMouth'] as const) {
      const value = wall[end];
      if (value < min || value > max) return { key: `${key}.${end}`, value };
    }
  }
  return null;
}
