/**
 * Modes of the walls, of one case in one gap state: yield and ultimate of metals, strength of
 * laminates that are given as one material. Bending of the wall under the bond's own peel and its
 * eccentric pull is included: stress is judged on both faces.
 */
import type { Factors } from '../joint/types.ts';
import { findMinimum } from '../numerics/root.ts';
import { askedFactor, type Mode } from './asked.ts';
import { clockings } from './clocking.ts';
import { firstPlyModes } from './first-ply-modes.ts';
import { type ModeResult, resultOf, UNLOADED } from './result.ts';
import { BELOW, SURELY } from './shear-factor.ts';
import type { JointState } from './state.ts';
import { type FaceBending, NO_BENDING, wallBending } from './wall-bending.ts';
import { laminateFactor, metalFactor } from './wall-strength.ts';
import { type WallStress, wallStresses } from './wall-stress.ts';

/** Stations along the overlap at which the walls are checked, both ends among them. */
const WALL_STATIONS = 12;

export interface WallOptions {
  /** False leaves the bending of the walls out, as beam theory does. */
  readonly bending: boolean;
}

interface Place {
  stressAt(angle: number): WallStress;
  readonly facesAt: readonly ((angle: number) => FaceBending)[];
}

/**
 * What the factor of a place is not below at any clocking. Stress along and around is linear in cos θ, shear in
 * sin θ: all lie between those at 0° and 180° with the most shear of any, and strength is reached inside no sooner
 * than at one of these, for what a wall bears is a convex region of stress.
 */
function leastOf(
  { stressAt, facesAt }: Place,
  worseFace: (stress: WallStress, facesAt: Place['facesAt'], angle: number) => number,
): number {
  const [left, right] = [stressAt(-Math.PI / 2).shear, stressAt(Math.PI / 2).shear];
  const shear = Math.max(Math.abs(left), Math.abs(right));
  const least = (angle: number): number => worseFace({ ...stressAt(angle), shear }, facesAt, angle);
  return Math.min(least(0), least(Math.PI));
}

export function wallModes(
  state: JointState,
  factors: Factors,
  { bending }: WallOptions = { bending: true },
): ModeResult[] {
  const { assembly, bonds, loadCase, deltaT } = state;
  const { kind, loads } = loadCase;
  const stresses = wallStresses(assembly, bonds, loads, deltaT);
  const thetas = clockings(assembly.flat, loads);
  /** Worst somewhere round the tube, not in the plane of bending. */
  const isTurning = thetas.length > 2;
  const results: ModeResult[] = [];
  const faces = bending ? ([-1, 1] as const) : ([0] as const);

  const check = (
    mode: Mode,
    i: number,
    factorOf: (stress: WallStress, face: FaceBending) => number,
  ): void => {
    const asked = askedFactor(mode, kind, factors);
    if (asked === null) return;
    const bend = bending ? wallBending(state, i) : null;
    /** Stress and faces at a place, at any clocking. */
    const placeAt = (station: number) => ({
      stressAt: stresses.at(i, station),
      facesAt: faces.map((face) => (bend ? bend(station, face) : () => NO_BENDING)),
    });
    /** The worse face. */
    const worseFace = (stress: WallStress, facesAt: Place['facesAt'], angle: number): number => {
      let lowest = Number.POSITIVE_INFINITY;
      for (const faceAt of facesAt) lowest = Math.min(lowest, factorOf(stress, faceAt(angle)));
      return lowest;
    };
    const factorAt = (station: number) => {
      const { stressAt, facesAt } = placeAt(station);
      return (angle: number): number => worseFace(stressAt(angle), facesAt, angle);
    };
    let reached = Number.POSITIVE_INFINITY;
    let x = 0;
    let theta = 0;
    for (let k = 0; k <= WALL_STATIONS; k++) {
      // The last station is the mouth itself, not a rounding error beside it.
      const station =
        k === WALL_STATIONS ? assembly.overlap : (assembly.overlap * k) / WALL_STATIONS;
      const place = placeAt(station);
      if (isTurning && leastOf(place, worseFace) * SURELY >= reached * BELOW) continue;
      for (const angle of thetas) {
        const factor = worseFace(place.stressAt(angle), place.facesAt, angle);
        // A station only counts as worse when it is so beyond rounding: ends are named first.
        if (factor < reached * BELOW) {
          reached = factor;
          x = station;
          theta = angle;
        }
      }
    }
    if (!(reached < UNLOADED)) return;
    const spacing = assembly.overlap / WALL_STATIONS;
    if (x > 0 && x < assembly.overlap) {
      const along = (station: number): number => factorAt(station)(theta);
      const [from, to] = [Math.max(x - spacing, 0), Math.min(x + spacing, assembly.overlap)];
      x = findMinimum(along, from, to, 1e-3 * spacing);
      reached = Math.min(reached, along(x));
    }
    if (isTurning) {
      const step = thetas[1]!;
      const at = factorAt(x);
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
      const { yieldStrength, ultimateStrength } = material;
      check('metal-yield', i, (stress, face) => metalFactor(stress, yieldStrength, face));
      check('metal-ultimate', i, (stress, face) => metalFactor(stress, ultimateStrength, face));
    } else if (material.kind === 'orthotropic') {
      check('laminate-strength', i, (stress, face) => laminateFactor(stress, material, face));
    } else {
      results.push(...firstPlyModes(state, factors, stresses, i, material));
    }
  });
  return results;
}
