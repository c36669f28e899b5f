/**
 * Peel and shear of the bonds at a clocking by the layered model, each as a held part (temperature)
 * and a part that grows with the load factor.
 *
 * The layered lap is solved for a load that is the same all round; a moment enters by its local line
 * load at the tube's mean radius. Against first-harmonic finite elements (the verification book) that
 * is up to 10 % low in peel and 4 % in shear at the mouth: the moment's part is raised by so much.
 */
import { hoopChannel } from '../joint/local-problem.ts';
import { fieldStations } from '../layered/fields.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';
import type { JointState } from './state.ts';

/** Cover on a moment's part of peel and of shear. */
export const PEEL_COVER = 1.1;
export const SHEAR_COVER = 1.04;

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** Stresses at one place: held + factor·load; `around` is the hoop shear per factor. */
export interface Sample {
  readonly bond: number;
  readonly x: number;
  readonly peelHeld: number;
  readonly peelLoad: number;
  readonly shearHeld: number;
  readonly shearLoad: number;
  readonly around: number;
}

/** Line load at θ as a load on the whole tube, N; the moment's part times a cover. */
export function pullAt({ assembly, loadCase }: JointState, theta: number, cover = 1): number {
  const { force, moment } = loadCase.loads;
  if (assembly.flat) return force;
  return force + (cover * 2 * moment * Math.cos(theta)) / assembly.tube.root.meanRadius;
}

export interface BondFields {
  /**
   * Visits every station of every bond at a clocking. The sample is the same object each time, filled
   * anew: copy what is to be kept.
   * @param factor at which a flat single lap bends; of no meaning for others
   */
  visit(theta: number, factor: number, see: (sample: Sample) => void): void;
}

export function bondFields(state: JointState): BondFields {
  const { assembly, bonds, layered, loadCase } = state;
  const { torque, shear } = loadCase.loads;
  const twisted = !assembly.flat && (torque !== 0 || shear !== 0);
  const hoop = twisted ? solveElastic(hoopChannel(assembly, 1), bonds, assembly.overlap) : null;
  const x = fieldStations(assembly.overlap);
  /** Hoop shear per unit of circumferential load at each station of each bond. */
  const hoopUnit = bonds.map((_bond, j) =>
    x.map((at) => (hoop ? hoop.mechanical.shear(j, at) : 0)),
  );
  const sample: Writable<Sample> = {
    bond: 0,
    x: 0,
    peelHeld: 0,
    peelLoad: 0,
    shearHeld: 0,
    shearLoad: 0,
    around: 0,
  };
  return {
    visit: (theta, factor, see) => {
      const peelPull = pullAt(state, theta, PEEL_COVER);
      const shearPull = pullAt(state, theta, SHEAR_COVER);
      const across = hoop ? torque / assembly.referenceRadius + 2 * shear * Math.sin(theta) : 0;
      const { unit, thermal } = layered.fields(factor * peelPull);
      for (let j = 0; j < bonds.length; j++) {
        const [load, held, twist] = [unit.bonds[j]!, thermal.bonds[j]!, hoopUnit[j]!];
        sample.bond = j;
        for (let i = 0; i < x.length; i++) {
          sample.x = x[i]!;
          sample.peelHeld = held.peel[i]!;
          sample.peelLoad = load.peel[i]! * peelPull;
          sample.shearHeld = held.shear[i]!;
          sample.shearLoad = load.shear[i]! * shearPull;
          sample.around = twist[i]! * across;
          see(sample);
        }
      }
    },
  };
}
