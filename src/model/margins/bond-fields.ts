/**
 * Peel and shear of the bonds at a clocking by the layered model, each as a held part (temperature)
 * and a part that grows with the load factor: that of the force, the same all round, and that of the
 * moment, the first harmonic.
 */
import { hoopChannel } from '../joint/local-problem.ts';
import { fieldStations } from '../layered/fields.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';
import type { JointState } from './state.ts';

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

/**
 * Force and moment at θ as one load on the whole tube, N: P = F + c·2M·cosθ/R_t.
 * @param cover c: 1 for the line load at the tube's mean radius, or that of a place (`coverAt`)
 */
export function pullAt({ assembly, loadCase }: JointState, theta: number, cover = 1): number {
  const { force, moment } = loadCase.loads;
  if (assembly.flat) return force;
  return force + (cover * 2 * moment * Math.cos(theta)) / assembly.tube.root.meanRadius;
}

const LEAST_COVER = 0.5;
const MOST_COVER = 1.5;

/**
 * How much more (or less) a moment does at a place than its line load would if it were the same all
 * round: c = (stress per moment)·R_t/2 over the stress per force.
 */
export function coverAt(
  { assembly, layered }: JointState,
  what: 'peel' | 'shear',
  bond: number,
  x: number,
): number {
  const bent = layered.bent([x]);
  if (!bent) return 1;
  const { stresses } = layered.solution(0).at(x, 1, 0);
  const byForce =
    what === 'peel' ? stresses.peel[bond]! : layered.order.signs[bond]! * stresses.shear[bond]!;
  const cover = (bent.bonds[bond]![what][0]! * assembly.tube.root.meanRadius) / (2 * byForce);
  return Number.isFinite(cover) ? cover : 1;
}

/** The same, kept to where a load that is the same all round can stand for the moment. */
export const boundedCover = (...place: Parameters<typeof coverAt>): number =>
  Math.min(Math.max(coverAt(...place), LEAST_COVER), MOST_COVER);

/** Force and moment as the one load, N, whose elastic peel at a place is theirs. */
export function pullOfPeel(state: JointState, theta: number, bond: number, x: number): number {
  const { force, moment } = state.loadCase.loads;
  return moment === 0 ? force : pullAt(state, theta, boundedCover(state, 'peel', bond, x));
}

export interface BondFields {
  /** Places that are visited: each station of each bond, or those at the two ends alone. */
  places(where?: Where): number;
  /**
   * Visits the places at a clocking. The sample is the same object each time, filled anew: copy what is to be kept.
   * @param factor at which a flat single lap bends; of no meaning for others
   * @param where all stations, or only those at the two ends
   * @param passes places, counted from 0 in the order of the visit, that are to be looked at; all when left out
   */
  visit(
    theta: number,
    factor: number,
    see: (sample: Sample, place: number) => void,
    where?: Where,
    passes?: (place: number) => boolean,
  ): void;
  /**
   * Visits for each place stresses that bound those at all clockings, of a joint that does not bend with its load:
   * at any clocking each of peel, shear and hoop shear lies between two that are seen, whatever the load factor.
   */
  visitBounds(see: (sample: Sample, place: number) => void, where?: Where): void;
}

export type Where = 'everywhere' | 'ends';

/** Hoop shear by the shear lag of torque and transverse shear. */
export interface HoopShear {
  /** Of each bond at each station of the fields, per unit of force around the tube. */
  readonly unit: readonly (readonly number[])[];
  /** Force around the tube at a clocking, per load factor. */
  force(theta: number): number;
  /** The most that it comes to at any clocking, either way. */
  readonly most: number;
}

export function hoopShear({ assembly, bonds, loadCase }: JointState): HoopShear {
  const { torque, shear } = loadCase.loads;
  const stations = fieldStations(assembly.overlap);
  if (assembly.flat || (torque === 0 && shear === 0)) {
    return { unit: bonds.map(() => stations.map(() => 0)), force: () => 0, most: 0 };
  }
  const { mechanical } = solveElastic(hoopChannel(assembly, 1), bonds, assembly.overlap);
  return {
    unit: bonds.map((_bond, j) => stations.map((x) => mechanical.shear(j, x))),
    force: (theta) => torque / assembly.referenceRadius + 2 * shear * Math.sin(theta),
    most: Math.abs(torque) / assembly.referenceRadius + 2 * Math.abs(shear),
  };
}

export function bondFields(state: JointState): BondFields {
  const { assembly, bonds, layered, loadCase } = state;
  const x = fieldStations(assembly.overlap);
  const around = hoopShear(state);
  const sample: Writable<Sample> = {
    bond: 0,
    x: 0,
    peelHeld: 0,
    peelLoad: 0,
    shearHeld: 0,
    shearLoad: 0,
    around: 0,
  };
  const stepOf = (where: Where): number => (where === 'ends' ? x.length - 1 : 1);
  const stationsIn = (where: Where): number => (where === 'ends' ? 2 : x.length);
  const { force, moment } = loadCase.loads;
  return {
    places: (where = 'everywhere') => bonds.length * stationsIn(where),
    visit: (theta, factor, see, where = 'everywhere', passes) => {
      const turned = assembly.flat ? 0 : moment * Math.cos(theta);
      const bent = turned === 0 ? null : layered.bent();
      const { unit, thermal } = layered.fields(factor * force);
      const hoop = around.force(theta);
      const step = stepOf(where);
      let place = 0;
      for (let j = 0; j < bonds.length; j++) {
        const unitAround = around.unit[j]!;
        const [load, held] = [unit.bonds[j]!, thermal.bonds[j]!];
        const bend = bent?.bonds[j];
        sample.bond = j;
        for (let i = 0; i < x.length; i += step, place++) {
          if (passes && !passes(place)) continue;
          sample.x = x[i]!;
          sample.peelHeld = held.peel[i]!;
          sample.peelLoad = load.peel[i]! * force + (bend ? bend.peel[i]! * turned : 0);
          sample.shearHeld = held.shear[i]!;
          sample.shearLoad = load.shear[i]! * force + (bend ? bend.shear[i]! * turned : 0);
          sample.around = unitAround[i]! * hoop;
          see(sample, place);
        }
      }
    },
    visitBounds: (see, where = 'everywhere') => {
      const bent = moment === 0 ? null : layered.bent();
      const { unit, thermal } = layered.fields(force);
      const hoop = around.most;
      const step = stepOf(where);
      let place = 0;
      for (let j = 0; j < bonds.length; j++) {
        const unitAround = around.unit[j]!;
        const [load, held] = [unit.bonds[j]!, thermal.bonds[j]!];
        const bend = bent?.bonds[j];
        sample.bond = j;
        for (let i = 0; i < x.length; i += step, place++) {
          sample.x = x[i]!;
          sample.peelHeld = held.peel[i]!;
          sample.shearHeld = held.shear[i]!;
          sample.around = unitAround[i]! * hoop;
          const peel = bend ? Math.abs(bend.peel[i]! * moment) : 0;
          const shear = bend ? Math.abs(bend.shear[i]! * moment) : 0;
          // Compression is no peel: the most of it is enough. Shear may be worst either way.
          sample.peelLoad = load.peel[i]! * force + peel;
          sample.shearLoad = load.shear[i]! * force + shear;
          see(sample, place);
          if (shear === 0) continue;
          sample.shearLoad = load.shear[i]! * force - shear;
          see(sample, place);
        }
      }
    },
  };
}
