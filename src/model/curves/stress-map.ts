/** Elastic shear and peel of the bonds over the overlap and all round, by the layered model. */
import { bondFields } from '../margins/bond-fields.ts';
import type { JointState } from '../margins/state.ts';

export interface StressMap {
  readonly x: readonly number[];
  /** Radians from the plane of bending. */
  readonly theta: readonly number[];
  readonly bonds: readonly {
    readonly part: string;
    /** [clocking][station]; the resultant of axial and hoop shear. */
    readonly shear: readonly (readonly number[])[];
    readonly peel: readonly (readonly number[])[];
  }[];
}

export function stressMap(state: JointState, factor: number, clockings: number): StressMap {
  const { assembly } = state;
  const fields = bondFields(state);
  const theta = assembly.flat
    ? [0]
    : Array.from({ length: clockings }, (_v, k) => (2 * Math.PI * k) / clockings);
  const x = state.layered.fields(0).x;
  const bonds = assembly.bonds.map(({ name }) => ({
    part: name,
    shear: theta.map((): number[] => []),
    peel: theta.map((): number[] => []),
  }));
  theta.forEach((angle, k) => {
    fields.visit(angle, factor, (at) => {
      const along = at.shearHeld + factor * at.shearLoad;
      bonds[at.bond]!.shear[k]!.push(Math.hypot(along, factor * at.around));
      bonds[at.bond]!.peel[k]!.push(at.peelHeld + factor * at.peelLoad);
    });
  });
  return { x, theta, bonds };
}
