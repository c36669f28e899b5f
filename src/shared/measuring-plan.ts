/**
 * What is to be measured of a joint before it is bonded: which diameters, where, and what the
 * drawing says they are. Stations count from the mouth of the sleeve; on the tube, from the line that
 * stands at the mouth when the tube is home.
 */
import type { Instrument, Joint, Project, SurfaceName } from './project.ts';
import type { BondName } from './reports-gap.ts';
import { tidy } from './vary-joint.ts';

export interface SurfaceToMeasure {
  readonly surface: SurfaceName;
  /** Diameter by the drawing, mm. */
  readonly drawn: number;
}

/** One bond and the two surfaces that bound it; the inside surface is an outside diameter. */
export interface BondToMeasure {
  readonly bond: BondName;
  /** Key of the bond in the joint and in its limits. */
  readonly key: 'bond' | 'innerBond' | 'outerBond';
  readonly inside: SurfaceName;
  readonly outside: SurfaceName;
  /** By the drawing, mm. */
  readonly gap: number;
  /** True where the tube is the part inside: moved to a side, it thins the gap there. */
  readonly tubeInside: boolean;
}

export interface MeasuringPlan {
  readonly surfaces: readonly SurfaceToMeasure[];
  readonly bonds: readonly BondToMeasure[];
  /** From the mouth, mm. */
  readonly stations: readonly number[];
  /** Degrees from the mark. */
  readonly clockings: readonly number[];
}

/** Three clockings find any oval; two would miss one that lies between them. */
export const usualClockings = [0, 60, 120] as const;
/** Typical, from memory: replace by what is on the bench. */
export const usualInstrument: Instrument = {
  id: 'usual-caliper',
  name: 'Caliper',
  error: 0.02,
  repeatability: 0.01,
};
/** Common practice, no source. */
export const usualWaste = 1.5;

/** Near both ends, where a bond works hardest, and in the middle; whole millimetres. */
export function usualStations(overlap: number): readonly number[] {
  if (overlap < 5) return [tidy(overlap / 2)];
  const near = Math.max(1, Math.round(overlap / 10));
  return [near, Math.round(overlap / 2), tidy(overlap - near)];
}

/** Those set for the joint, as far as its overlap reaches; the usual ones where none are left. */
function stationsOf({ bench, overlap }: Joint): readonly number[] {
  const within = (bench?.stations ?? []).filter((x) => x <= overlap);
  return within.length > 0 ? within : usualStations(overlap);
}

/** Null for a flat joint: it has no diameters, its gap is set by spacers and read with feelers. */
export function measuringPlan(joint: Joint): MeasuringPlan | null {
  if (joint.type === 'flat-single' || joint.type === 'flat-double') return null;
  const outside = joint.tube.outsideDiameter;
  const bore = tidy(outside - 2 * joint.tube.wall);
  const socket = (key: 'bond' | 'outerBond', bond: BondName, gap: number) => ({
    surfaces: [
      { surface: 'tube-outside', drawn: outside },
      { surface: 'socket-inside', drawn: tidy(outside + 2 * gap) },
    ] as const,
    bond: {
      bond,
      key,
      inside: 'tube-outside',
      outside: 'socket-inside',
      gap,
      tubeInside: true,
    } as const,
  });
  const spigot = (key: 'bond' | 'innerBond', bond: BondName, gap: number) => ({
    surfaces: [
      { surface: 'spigot-outside', drawn: tidy(bore - 2 * gap) },
      { surface: 'tube-inside', drawn: bore },
    ] as const,
    bond: {
      bond,
      key,
      inside: 'spigot-outside',
      outside: 'tube-inside',
      gap,
      tubeInside: false,
    } as const,
  });
  const parts =
    joint.type === 'sleeve-double'
      ? [
          spigot('innerBond', 'inner bond', joint.innerBond.gap),
          socket('outerBond', 'outer bond', joint.outerBond.gap),
        ]
      : joint.side === 'socket'
        ? [socket('bond', 'bond', joint.bond.gap)]
        : [spigot('bond', 'bond', joint.bond.gap)];
  return {
    surfaces: parts.flatMap((part) => [...part.surfaces]),
    bonds: parts.map((part) => part.bond),
    stations: stationsOf(joint),
    clockings: joint.bench?.clockings ?? usualClockings,
  };
}

export const instrumentsOf = ({ instruments }: Project): readonly Instrument[] =>
  instruments && instruments.length > 0 ? instruments : [usualInstrument];
