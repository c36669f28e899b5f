/**
 * Every mode of one case in one gap state: the factor at which it is reached, and where. See
 * docs/method.md section 8.
 */
import type { AdhesiveInput, Factors, GapState } from '../joint/types.ts';
import { findMinimum } from '../numerics/root.ts';
import { askedFactor, type Mode } from './asked.ts';
import { bondStrength, troughReached } from './bond-strength.ts';
import { clockings, worstClockings } from './clocking.ts';
import { type ShearReached, shearFactor } from './shear-factor.ts';
import type { JointState } from './state.ts';
import { strengthClockings } from './strength-clocking.ts';
import { laminateFactor, metalFactor } from './wall-strength.ts';
import { type WallStress, wallStresses } from './wall-stress.ts';

export type Place = 'root' | 'mouth' | 'within';

export interface ModeResult {
  readonly mode: Mode;
  /** Name of the bond or the wall. */
  readonly part: string;
  /** Factor on the case's loads at which the mode is reached. */
  readonly reached: number;
  readonly asked: number;
  readonly margin: number;
  readonly place: Place;
  readonly x: number;
  /** Clocking, radians. */
  readonly theta: number;
  readonly gapState: GapState;
  /** True when the bond's strength is reached by flowing from end to end. */
  readonly wholeBondFlows: boolean;
}

export const placeOf = (x: number, length: number): Place =>
  x <= 1e-6 * length ? 'root' : x >= (1 - 1e-6) * length ? 'mouth' : 'within';

/** What follows from the factors and the place stands in one spot. */
const resultOf = (
  { assembly, gapState }: JointState,
  found: Omit<ModeResult, 'margin' | 'place' | 'gapState'>,
): ModeResult => ({
  ...found,
  margin: found.reached / found.asked - 1,
  place: placeOf(found.x, assembly.overlap),
  gapState,
});

/** Factors beyond this mean that the load does not move the mode at all. */
const UNLOADED = 1e9;

/** Share of yield allowed to the peak shear after n cycles: min(1, C·n^−b). */
export const cyclicShare = (coefficient: number, exponent: number, cycles: number): number =>
  Math.min(1, coefficient * cycles ** -exponent);

export interface AdhesiveOptions {
  /** The modes to compute; all when left out. */
  readonly only?: ReadonlySet<Mode>;
  /** Margins of the durability trough at or above this need not be found: the mode is left out. */
  readonly troughOfInterest?: number;
}

export function adhesiveModes(
  state: JointState,
  adhesive: AdhesiveInput,
  factors: Factors,
  { only, troughOfInterest = Number.POSITIVE_INFINITY }: AdhesiveOptions = {},
): ModeResult[] {
  const { assembly, bonds, loadCase } = state;
  const { kind, loads } = loadCase;
  const results: ModeResult[] = [];
  const wanted = (mode: Mode): number | null =>
    only && !only.has(mode) ? null : askedFactor(mode, kind, factors);
  const add = (
    mode: Mode,
    asked: number,
    reached: number,
    bond: number,
    x: number,
    theta: number,
    wholeBondFlows = false,
  ): void => {
    if (!(reached < UNLOADED)) return;
    const part = assembly.bonds[bond]!.name;
    results.push(resultOf(state, { mode, part, reached, asked, x, theta, wholeBondFlows }));
  };

  const reachedAt = (theta: number, share: number): ShearReached =>
    shearFactor(
      state.at(theta),
      bonds.map((bond) => bond.shearYield * share),
    );
  const worst = worstClockings(assembly.flat, loads, (theta) => reachedAt(theta, 1).factor);
  const first = worst[0];
  if (!first || !(first.factor < UNLOADED)) return results;

  const yieldAsked = wanted('adhesive-yield');
  if (yieldAsked !== null) {
    const { factor, bond, x } = reachedAt(first.theta, 1);
    add('adhesive-yield', yieldAsked, factor, bond, x, first.theta);
  }

  const cyclicAsked = wanted('cyclic-shear');
  if (cyclicAsked !== null && adhesive.fatigue && loadCase.cycles !== undefined) {
    const { coefficient, exponent } = adhesive.fatigue;
    const share = cyclicShare(coefficient, exponent, loadCase.cycles);
    const [low] = worstClockings(assembly.flat, loads, (theta) => reachedAt(theta, share).factor);
    const { factor, bond, x } = reachedAt(low!.theta, share);
    add('cyclic-shear', cyclicAsked, factor, bond, x, low!.theta);
  }

  const strainAsked = wanted('adhesive-strain');
  const troughAsked = wanted('durability-trough');
  if (strainAsked === null && troughAsked === null) return results;
  let strain: Parameters<typeof add> | null = null;
  let trough: Parameters<typeof add> | null = null;
  for (const theta of strengthClockings(state, worst)) {
    const problem = state.at(theta);
    const atYield = reachedAt(theta, 1);
    const strength = bondStrength(problem, atYield);
    if (!strength) continue;
    const x = strength.end === 'root' ? 0 : assembly.overlap;
    if (strainAsked !== null && (!strain || strength.factor < strain[2])) {
      strain = [
        'adhesive-strain',
        strainAsked,
        strength.factor,
        strength.bond,
        x,
        theta,
        strength.wholeBondFlows,
      ];
    }
    if (troughAsked !== null) {
      const enough = Math.min(
        (1 + troughOfInterest) * troughAsked,
        trough?.[2] ?? Number.POSITIVE_INFINITY,
      );
      const reached = troughReached(problem, atYield, strength, enough);
      if (!trough || reached < trough[2]) {
        trough = [
          'durability-trough',
          troughAsked,
          reached,
          strength.bond,
          assembly.overlap / 2,
          theta,
        ];
      }
    }
  }
  if (strain) add(...strain);
  if (trough) add(...trough);
  return results;
}

/** Stations along the overlap at which the walls are checked, both ends among them. */
const WALL_STATIONS = 12;

export function wallModes(state: JointState, factors: Factors): ModeResult[] {
  const { assembly, bonds, loadCase, deltaT } = state;
  const { kind, loads } = loadCase;
  const stresses = wallStresses(assembly, bonds, loads, deltaT);
  const thetas = clockings(assembly.flat, loads);
  const results: ModeResult[] = [];

  const check = (mode: Mode, i: number, factorOf: (stress: WallStress) => number): void => {
    const asked = askedFactor(mode, kind, factors);
    if (asked === null) return;
    let reached = Number.POSITIVE_INFINITY;
    let x = 0;
    let theta = 0;
    for (let k = 0; k <= WALL_STATIONS; k++) {
      // The last station is the mouth itself, not a rounding error beside it.
      const station =
        k === WALL_STATIONS ? assembly.overlap : (assembly.overlap * k) / WALL_STATIONS;
      const stressAt = stresses.at(i, station);
      for (const angle of thetas) {
        const factor = factorOf(stressAt(angle));
        // A station only counts as worse when it is so beyond rounding: ends are named first.
        if (factor < reached * (1 - 1e-9)) {
          reached = factor;
          x = station;
          theta = angle;
        }
      }
    }
    if (!(reached < UNLOADED)) return;
    const spacing = assembly.overlap / WALL_STATIONS;
    if (x > 0 && x < assembly.overlap) {
      const along = (station: number): number => factorOf(stresses.at(i, station)(theta));
      const [from, to] = [Math.max(x - spacing, 0), Math.min(x + spacing, assembly.overlap)];
      x = findMinimum(along, from, to, 1e-3 * spacing);
      reached = Math.min(reached, along(x));
    }
    if (thetas.length > 2) {
      const step = thetas[1]!;
      const stressAt = stresses.at(i, x);
      const at = (angle: number): number => factorOf(stressAt(angle));
      const refined = findMinimum(at, theta - step, theta + step, 1e-4);
      if (at(refined) < reached) {
        reached = at(refined);
        theta = (refined + 2 * Math.PI) % (2 * Math.PI);
      }
    }
    const part = stresses.parts[i]!.name;
    results.push(resultOf(state, { mode, part, reached, asked, x, theta, wholeBondFlows: false }));
  };

  stresses.parts.forEach((part, i) => {
    const { material } = part;
    if (material.kind === 'isotropic') {
      check('metal-yield', i, (stress) => metalFactor(stress, material.yieldStrength));
      check('metal-ultimate', i, (stress) => metalFactor(stress, material.ultimateStrength));
    } else {
      check('laminate-strength', i, (stress) => laminateFactor(stress, material));
    }
  });
  return results;
}
