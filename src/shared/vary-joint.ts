/**
 * A joint with one of its sizes changed, as sizing changes it. What a size means beyond one field is
 * said here once: walls of a sleeve keep their taper, two bonds take the same gap, a wall of the tube
 * grows away from the sleeve where there is only one.
 */
import type { Bond, Joint, Wall } from './project.ts';

export const varied = ['overlap', 'sleeve-wall', 'tube-wall', 'gap'] as const;
export type Vary = (typeof varied)[number];

/** Sums and ratios of decimals, without the digits that only rounding made. */
export const tidy = (value: number): number => Number(value.toPrecision(9));

const wallKeys = {
  'sleeve-single': ['sleeve'],
  'sleeve-double': ['spigot', 'socket'],
  'flat-single': ['plate'],
  'flat-double': ['lowerStrap', 'upperStrap'],
} as const satisfies Record<Joint['type'], readonly string[]>;

/** Walls of sleeve, plate or straps, under the names that the joint has for them. */
export const namedWalls = (joint: Joint): readonly (readonly [key: string, wall: Wall])[] =>
  wallKeys[joint.type].map((key) => [key, (joint as unknown as Record<string, Wall>)[key]!]);

/** The same without their names; the first gives the value. */
export const sleeveWalls = (joint: Joint): readonly Wall[] =>
  namedWalls(joint).map(([, wall]) => wall);

/** The joint with each wall of the sleeve changed. */
export const mapWalls = (joint: Joint, change: (wall: Wall) => Wall): Joint =>
  ({
    ...joint,
    ...Object.fromEntries(namedWalls(joint).map(([key, wall]) => [key, change(wall)])),
  }) as Joint;

export function bondsOf(joint: Joint): readonly Bond[] {
  switch (joint.type) {
    case 'sleeve-single':
    case 'flat-single':
      return [joint.bond];
    case 'sleeve-double':
      return [joint.innerBond, joint.outerBond];
    case 'flat-double':
      return [joint.lowerBond, joint.upperBond];
  }
}

function withGap(joint: Joint, gap: number): Joint {
  const change = (bond: Bond): Bond => ({ ...bond, gap });
  switch (joint.type) {
    case 'sleeve-single':
      return { ...joint, bond: change(joint.bond) };
    case 'flat-single':
      return { ...joint, bond: change(joint.bond) };
    case 'sleeve-double':
      return {
        ...joint,
        innerBond: change(joint.innerBond),
        outerBond: change(joint.outerBond),
      };
    case 'flat-double':
      return {
        ...joint,
        lowerBond: change(joint.lowerBond),
        upperBond: change(joint.upperBond),
      };
  }
}

/** A tube over a spigot keeps its bore, and with it the spigot; any other keeps its outside diameter. */
function withTubeWall(joint: Joint, wall: number): Joint {
  if (joint.type === 'flat-single' || joint.type === 'flat-double') {
    return { ...joint, strip: { ...joint.strip, thickness: wall } };
  }
  const { tube } = joint;
  const keepsBore = joint.type === 'sleeve-single' && joint.side === 'spigot';
  const outsideDiameter = keepsBore
    ? tidy(tube.outsideDiameter + 2 * (wall - tube.wall))
    : tube.outsideDiameter;
  return { ...joint, tube: { ...tube, outsideDiameter, wall } };
}

export function variedValue(joint: Joint, vary: Vary): number {
  switch (vary) {
    case 'overlap':
      return joint.overlap;
    case 'sleeve-wall':
      return sleeveWalls(joint)[0]!.atRoot;
    case 'tube-wall':
      return 'tube' in joint ? joint.tube.wall : joint.strip.thickness;
    case 'gap':
      return bondsOf(joint)[0]!.gap;
  }
}

/** @param value mm; of a sleeve's wall, the thickness at the root of the first one */
export function withValue(joint: Joint, vary: Vary, value: number): Joint {
  switch (vary) {
    case 'overlap':
      return { ...joint, overlap: value };
    case 'sleeve-wall': {
      const factor = value / variedValue(joint, vary);
      return mapWalls(joint, ({ adherend, atRoot, atMouth }) => ({
        adherend,
        atRoot: tidy(atRoot * factor),
        atMouth: tidy(atMouth * factor),
      }));
    }
    case 'tube-wall':
      return withTubeWall(joint, value);
    case 'gap':
      return withGap(joint, value);
  }
}

/** The joint with every wall of the sleeve thinned at its mouth to this share of what it is there. */
export const withMouth = (joint: Joint, share: number): Joint =>
  mapWalls(joint, (wall) => ({ ...wall, atMouth: tidy(wall.atMouth * share) }));
