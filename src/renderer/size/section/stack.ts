/** What lies over what in a section through the joint, from the outside in (from the top when flat). */
import type { Adherend, Joint, Wall } from '../../../shared/project.ts';

/** Metal is hatched; a laminate shows its plies. */
export type Hatch = 'metal' | 'plies';

export interface WallLayer {
  readonly kind: 'wall';
  /** `tube` runs on past the mouth; `sleeve` runs on past the root. */
  readonly role: 'tube' | 'sleeve';
  readonly part: string;
  readonly hatch: Hatch;
  readonly atRoot: number;
  readonly atMouth: number;
  /** The face that a taper takes away: the one that is not bonded. */
  readonly taper: 'top' | 'bottom';
}

export interface BondLayer {
  readonly kind: 'bond';
  readonly part: string;
  readonly gap: number;
}

export type Layer = WallLayer | BondLayer;

export interface Stack {
  readonly layers: readonly Layer[];
  /** Outside diameter of the tube; null for a flat joint, which has no axis. */
  readonly diameter: number | null;
}

export function stackOf(joint: Joint, adherends: readonly Adherend[]): Stack {
  const hatch = (id: string): Hatch =>
    adherends.find((adherend) => adherend.id === id)?.kind === 'isotropic' ? 'metal' : 'plies';
  const sleeve = (part: string, wall: Wall, taper: WallLayer['taper']): WallLayer => ({
    kind: 'wall',
    role: 'sleeve',
    part,
    hatch: hatch(wall.adherend),
    atRoot: wall.atRoot,
    atMouth: wall.atMouth,
    taper,
  });
  const tube = (part: string, id: string, wall: number): WallLayer => ({
    kind: 'wall',
    role: 'tube',
    part,
    hatch: hatch(id),
    atRoot: wall,
    atMouth: wall,
    taper: 'top',
  });
  const bond = (part: string, gap: number): BondLayer => ({ kind: 'bond', part, gap });

  switch (joint.type) {
    case 'sleeve-single': {
      const inner = tube('tube', joint.tube.adherend, joint.tube.wall);
      const layers: Layer[] =
        joint.side === 'socket'
          ? [sleeve('socket', joint.sleeve, 'top'), bond('gap', joint.bond.gap), inner]
          : [inner, bond('gap', joint.bond.gap), sleeve('spigot', joint.sleeve, 'bottom')];
      return { layers, diameter: joint.tube.outsideDiameter };
    }
    case 'sleeve-double':
      return {
        layers: [
          sleeve('socket', joint.socket, 'top'),
          bond('outer gap', joint.outerBond.gap),
          tube('tube', joint.tube.adherend, joint.tube.wall),
          bond('inner gap', joint.innerBond.gap),
          sleeve('spigot', joint.spigot, 'bottom'),
        ],
        diameter: joint.tube.outsideDiameter,
      };
    case 'flat-single':
      return {
        layers: [
          sleeve('plate', joint.plate, 'top'),
          bond('gap', joint.bond.gap),
          tube('strip', joint.strip.adherend, joint.strip.thickness),
        ],
        diameter: null,
      };
    case 'flat-double':
      return {
        layers: [
          sleeve('upper strap', joint.upperStrap, 'top'),
          bond('upper gap', joint.upperBond.gap),
          tube('strip', joint.strip.adherend, joint.strip.thickness),
          bond('lower gap', joint.lowerBond.gap),
          sleeve('lower strap', joint.lowerStrap, 'bottom'),
        ],
        diameter: null,
      };
  }
}
