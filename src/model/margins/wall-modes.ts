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
import { BELOW } from './shear-factor.ts';
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

export function wallModes(
  state: JointState,
  factors: Factors,
  { bending }: WallOptions = { bending: true },
): ModeResult[] {
  const { assembly, bonds, loadCase, deltaT } = state;
  const { kind, loads } = loadCase;
  const stresses = wallStresses(assembly, bonds, loads, deltaT);
  const thetas = clockings(assembly.flat, loads);
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
    /** The worse face at a place and clocking. */
    const factorAt = (station: number) => {
      const stressAt = stresses.at(i, station);
      const facesAt = faces.map((face) => (bend ? bend(station, face) : () => NO_BENDING));
      return (angle: number): number => {
        let lowest = Number.POSITIVE_INFINITY;
        for (const faceAt of facesAt) {
          lowest = Math.min(lowest, factorOf(stressAt(angle), faceAt(angle)));
        }
        return lowest;
      };
    };
    let reached = Number.POSITIVE_INFINITY;
    let x = 0;
    let theta = 0;
    for (let k = 0; k <= WALL_STATIONS; k++) {
      // The last station is the mouth itself, not a rounding error beside it.
      const station =
        k === WALL_STATIONS ? assembly.overlap : (assembly.overlap * k) / WALL_STATIONS;
      const at = factorAt(station);
      for (const angle of thetas) {
        const factor = at(angle);
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
    if (thetas.length > 2) {
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
