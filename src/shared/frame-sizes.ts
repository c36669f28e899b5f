/** A joint in one of its frame sizes, as an ordinary joint. */
import type { FlatSize, Joint, SleeveSize } from './project.ts';
import { mapWalls, tidy } from './vary-joint.ts';

type Size = SleeveSize | FlatSize;

/** Id of a joint in one of its sizes, where it stands beside other joints; at most 64 characters. */
export const sizeId = (joint: Joint, size: Size): string => `${joint.id}-${size.id}`.slice(0, 64);

/**
 * The joint with what differs in this size put in. Diameter, wall, width and thickness are the
 * size's own where it gives them, as are the loads; the load factor multiplies the loads, whose ever
 * they are, and the wall factor the walls of the sleeve.
 */
export function atSize(joint: Joint, size: Size): Joint {
  const { wallFactor = 1, loadFactor = 1 } = size;
  const walled =
    wallFactor === 1
      ? joint
      : mapWalls(joint, ({ adherend, atRoot, atMouth }) => ({
          adherend,
          atRoot: tidy(atRoot * wallFactor),
          atMouth: tidy(atMouth * wallFactor),
        }));
  const { sizes: _sizes, ...one } = walled;
  const named = { id: sizeId(joint, size), name: `${joint.name}, ${size.name}` };
  if (one.type === 'flat-single' || one.type === 'flat-double') {
    const { width, thickness, loads } = size as FlatSize;
    return {
      ...one,
      ...named,
      width: width ?? one.width,
      strip: { ...one.strip, thickness: thickness ?? one.strip.thickness },
      loads: (loads ?? one.loads).map((load) => ({
        ...load,
        force: tidy(load.force * loadFactor),
      })),
    } as Joint;
  }
  const { outsideDiameter, tubeWall, loads } = size as SleeveSize;
  return {
    ...one,
    ...named,
    tube: {
      ...one.tube,
      outsideDiameter: outsideDiameter ?? one.tube.outsideDiameter,
      wall: tubeWall ?? one.tube.wall,
    },
    loads: (loads ?? one.loads).map((load) => ({
      case: load.case,
      force: tidy(load.force * loadFactor),
      moment: tidy(load.moment * loadFactor),
      torque: tidy(load.torque * loadFactor),
      shear: tidy(load.shear * loadFactor),
    })),
  } as Joint;
}
