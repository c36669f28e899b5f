/**
 * What the layered model adds to the membrane stress of a wall: bending along, on the inner and outer
 * face, and stress around.
 *
 *   σx ∓ 6M/t²      σθ = Nθ/t ∓ ν_θx·6M/t²      upper sign on the outer face
 */
import type { WallField } from '../layered/fields.ts';
import { plateProperties } from '../layered/shell.ts';
import { pullAt } from './bond-fields.ts';
import type { JointState } from './state.ts';

export interface FaceBending {
  readonly axialHeld: number;
  readonly axialLoad: number;
  readonly hoopHeld: number;
  readonly hoopLoad: number;
}

export const NO_BENDING: FaceBending = { axialHeld: 0, axialLoad: 0, hoopHeld: 0, hoopLoad: 0 };

/** Moment and hoop force of part i (tube first) at x, between the stations of the fields. */
export interface WallLines {
  readonly momentHeld: number;
  readonly momentLoad: number;
  readonly hoopHeld: number;
  readonly hoopLoad: number;
}

export function wallLines(state: JointState, i: number): (x: number) => WallLines {
  // A flat single lap bends as its load asks: the walls are judged at the case's own load.
  const { x: stations, unit, thermal } = state.layered.fields(state.loadCase.loads.force);
  const [load, held] = [unit.walls[i]!, thermal.walls[i]!];
  return (x) => {
    let k = stations.findIndex((station) => station >= x);
    if (k < 0) k = stations.length - 1;
    const before = Math.max(k - 1, 0);
    const span = stations[k]! - stations[before]!;
    const t = span === 0 ? 0 : (x - stations[before]!) / span;
    const mix = (field: WallField, name: 'moment' | 'hoop'): number =>
      field[name][before]! + t * (field[name][k]! - field[name][before]!);
    return {
      momentHeld: mix(held, 'moment'),
      momentLoad: mix(load, 'moment'),
      hoopHeld: mix(held, 'hoop'),
      hoopLoad: mix(load, 'hoop'),
    };
  };
}

export const thicknessAt = (state: JointState, i: number, x: number): number => {
  const part = i === 0 ? state.assembly.tube : state.assembly.outers[i - 1]!;
  const { root, mouth } = part;
  return root.thickness + (x / state.assembly.overlap) * (mouth.thickness - root.thickness);
};

/** ν_θx: how much of a bending stress along is stress around as well; a flat wall is not judged so. */
export function backOf({ assembly }: JointState, i: number): number {
  if (assembly.flat) return 0;
  const { material } = i === 0 ? assembly.tube : assembly.outers[i - 1]!;
  const { poisson, axialModulus, hoopModulus } = plateProperties(material);
  return (poisson * hoopModulus) / axialModulus;
}

/** @returns for a place and a face (1 outer, −1 inner) the stress at each clocking */
export function wallBending(
  state: JointState,
  i: number,
): (x: number, face: 1 | -1 | 0) => (theta: number) => FaceBending {
  const back = backOf(state, i);
  const lines = wallLines(state, i);
  return (x, face) => {
    const t = thicknessAt(state, i, x);
    const { momentHeld, momentLoad, hoopHeld, hoopLoad } = lines(x);
    const bend = (-face * 6) / (t * t);
    return (theta) => {
      const pull = pullAt(state, theta);
      return {
        axialHeld: bend * momentHeld,
        axialLoad: bend * momentLoad * pull,
        hoopHeld: hoopHeld / t + back * bend * momentHeld,
        hoopLoad: (hoopLoad / t + back * bend * momentLoad) * pull,
      };
    };
  };
}
