/**
 * Changing the lap of a joint. What both laps have is kept as it is (tube, overlap, adhesive, loads);
 * a wall that appears is a copy of the one that is there, with the same gap.
 */
import type {
  FlatDouble,
  FlatSingle,
  Joint,
  JointType,
  SleeveDouble,
  SleeveSingle,
} from './project.ts';

export type Lap = 'socket' | 'spigot' | 'sleeve-double' | 'flat-single' | 'flat-double';

export const lapOf = (joint: Joint): Lap =>
  joint.type === 'sleeve-single' ? joint.side : joint.type;

/** A joint of strips: no axis, no clocking, and a pull for its only load. */
export const isFlat = (joint: { readonly type: JointType }): boolean =>
  joint.type === 'flat-single' || joint.type === 'flat-double';

/** Laps that the joint can take without becoming another kind of part. */
export const lapsFor = (joint: Joint): readonly Lap[] =>
  isFlat(joint) ? ['flat-single', 'flat-double'] : ['socket', 'spigot', 'sleeve-double'];

function sleeveDouble(joint: SleeveSingle, before: SleeveDouble | undefined): SleeveDouble {
  const { type: _type, side, sleeve, bond, ...kept } = joint;
  const isSocket = side === 'socket';
  return {
    ...kept,
    type: 'sleeve-double',
    spigot: isSocket ? (before?.spigot ?? { ...sleeve }) : sleeve,
    socket: isSocket ? sleeve : (before?.socket ?? { ...sleeve }),
    innerBond: isSocket ? (before?.innerBond ?? { ...bond }) : bond,
    outerBond: isSocket ? bond : (before?.outerBond ?? { ...bond }),
  };
}

function sleeveSingle(joint: SleeveDouble, side: SleeveSingle['side']): SleeveSingle {
  const { type: _type, spigot, socket, innerBond, outerBond, ...kept } = joint;
  return side === 'socket'
    ? { ...kept, type: 'sleeve-single', side, sleeve: socket, bond: outerBond }
    : { ...kept, type: 'sleeve-single', side, sleeve: spigot, bond: innerBond };
}

function flatDouble(joint: FlatSingle, before: FlatDouble | undefined): FlatDouble {
  const { type: _type, plate, bond, ...kept } = joint;
  return {
    ...kept,
    type: 'flat-double',
    lowerStrap: plate,
    upperStrap: before?.upperStrap ?? { ...plate },
    lowerBond: bond,
    upperBond: before?.upperBond ?? { ...bond },
  };
}

function flatSingle(joint: FlatDouble): FlatSingle {
  const {
    type: _type,
    lowerStrap,
    upperStrap: _strap,
    lowerBond,
    upperBond: _bond,
    ...kept
  } = joint;
  return { ...kept, type: 'flat-single', plate: lowerStrap, bond: lowerBond };
}

/**
 * The same joint with another lap; the joint itself when the lap is not one it can take.
 * @param before the joint as it last was with a double lap: its second wall comes back instead of a copy.
 */
export function convertLap(joint: Joint, lap: Lap, before?: Joint): Joint {
  if (lap === lapOf(joint) || !lapsFor(joint).includes(lap)) return joint;
  switch (joint.type) {
    case 'sleeve-single':
      if (lap !== 'sleeve-double')
        return { ...joint, side: lap === 'spigot' ? 'spigot' : 'socket' };
      return sleeveDouble(joint, before?.type === 'sleeve-double' ? before : undefined);
    case 'sleeve-double':
      return sleeveSingle(joint, lap === 'spigot' ? 'spigot' : 'socket');
    case 'flat-single':
      return flatDouble(joint, before?.type === 'flat-double' ? before : undefined);
    case 'flat-double':
      return flatSingle(joint);
  }
}
