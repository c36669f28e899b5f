/** What is drawn of one state: shear along each bond, forces in the walls, zones and trough. */

import { adherendFlexibility, adhesiveStrain } from '../joint/bond-law.ts';
import {
  elasticState,
  hasExactPlastic,
  type LapState,
  plasticState,
  resultant,
  type Stretch,
} from '../joint/lap-state.ts';
import type { LocalProblem } from '../joint/local-problem.ts';
import {
  type BondStrength,
  bondStrength,
  lowestRatio,
  TROUGH_RATIO,
} from '../margins/bond-strength.ts';
import { shearFactor } from '../margins/shear-factor.ts';
import type { JointState } from '../margins/state.ts';
import { wallStresses } from '../margins/wall-stress.ts';

export interface BondCurve {
  readonly part: string;
  readonly gap: number;
  readonly radius: number;
  readonly axialShear: number[];
  readonly hoopShear: number[];
  readonly shear: number[];
  readonly shearYield: number;
  readonly peak: { readonly x: number; readonly value: number };
  readonly plastic: readonly Stretch[];
  readonly strain: number;
  readonly strainAllowed: number;
  readonly force: number;
}

export interface WallCurve {
  readonly part: string;
  readonly force: number[];
  readonly stressAtRoot: number;
  readonly stressAtMouth: number;
}

export interface StressCurves {
  readonly carried: boolean;
  readonly capacity: number;
  readonly x: number[];
  readonly bonds: BondCurve[];
  readonly walls: WallCurve[];
  readonly trough: {
    readonly ratio: number;
    readonly elasticLength: number;
    readonly restLength: number;
  };
}

/** Stations: evenly spaced, with more towards the ends, where the shear turns. */
export function stationsOf(length: number, count: number): number[] {
  const stations: number[] = [];
  for (let i = 0; i < count; i++) {
    const t = i / (count - 1);
    // Half even, half by the cosine.
    stations.push(length * (0.35 * t + 0.65 * ((1 - Math.cos(Math.PI * t)) / 2)));
  }
  stations[count - 1] = length;
  return stations;
}

export function stressCurves(
  state: JointState,
  theta: number,
  loadFactor: number,
  adherendShear: boolean,
  count: number,
): StressCurves {
  const { assembly, bonds, deltaT, loadCase } = state;
  const problem = state.at(theta);
  const { axial, hoop, length } = problem;
  const limits = bonds.map((bond) => bond.shearYield);
  const atYield = shearFactor(problem, limits);
  const strength = bondStrength(problem, atYield);
  const capacity = strength ? strength.factor : Number.POSITIVE_INFINITY;
  const carried = loadFactor <= capacity * (1 + 1e-9);
  // At the very limit the flowing state is not unique: draw just below it.
  const below = strength?.wholeBondFlows ? 1 - 1e-6 : 1;
  const factor = Math.min(loadFactor, capacity * below);
  const lap = stateToDraw(problem, factor, atYield.factor, carried ? null : strength);

  const x = stationsOf(length, count);
  const zeros = (): number[] => x.map(() => 0);
  const curves: BondCurve[] = bonds.map((bond, j) => {
    const geometry = assembly.bonds[j]!;
    const axialShear = axial < 0 ? zeros() : x.map((s) => lap.shear(axial, j, s));
    const hoopShear = hoop < 0 ? zeros() : x.map((s) => lap.shear(hoop, j, s));
    const shear = x.map((_s, i) =>
      hoop < 0 ? axialShear[i]! : Math.hypot(axialShear[i]!, hoopShear[i]!),
    );
    let peak = 0;
    shear.forEach((value, i) => {
      if (Math.abs(value) > Math.abs(shear[peak]!) * (1 + 1e-9)) peak = i;
    });
    const flex = adherendShear ? adherendFlexibility(assembly, j) : 0;
    const strainAt = (s: number): number => {
      const slip = Math.hypot(...problem.channels.map((_c, q) => lap.slip(q, j, s)));
      return adhesiveStrain(slip, resultant(problem, lap, j, s), geometry.gap, flex);
    };
    return {
      part: geometry.name,
      gap: geometry.gap,
      radius: geometry.radius,
      axialShear,
      hoopShear,
      shear,
      shearYield: bond.shearYield,
      peak: { x: x[peak]!, value: shear[peak]! },
      plastic: lap.plastic(j),
      strain: Math.max(strainAt(0), strainAt(length)),
      strainAllowed:
        bond.shearYield / state.adhesives[j]!.shearModulus + state.adhesives[j]!.plasticStrain,
      force: axial < 0 ? 0 : lap.outerForce(axial, j, 0),
    };
  });

  const load = axial < 0 ? 0 : problem.channels[axial]!.load * factor;
  const outer = (j: number): number[] =>
    axial < 0 ? zeros() : x.map((s) => lap.outerForce(axial, j, s));
  const outers = bonds.map((_bond, j) => outer(j));
  const tubeForce = x.map((_s, i) => outers.reduce((left, force) => left - force[i]!, load));
  const stresses = wallStresses(assembly, bonds, loadCase.loads, deltaT);
  const walls = stresses.parts.map((part, i): WallCurve => {
    const stressAt = (s: number): number => {
      const { axial: mechanical, thermal } = stresses.at(i, s)(theta);
      return factor * mechanical + thermal;
    };
    return {
      part: part.name,
      force: i === 0 ? tubeForce : outers[i - 1]!,
      stressAtRoot: stressAt(0),
      stressAtMouth: stressAt(length),
    };
  });

  return {
    carried,
    capacity,
    x,
    bonds: curves,
    walls,
    trough: troughOf(problem, lap, curves, length),
  };
}

/** The state under a factor; the failed one where the bond does not carry more. */
export function stateToDraw(
  problem: LocalProblem,
  factor: number,
  yieldFactor: number,
  failed: BondStrength | null,
): LapState {
  if (failed?.failed) return failed.failed;
  // The exact plastic solution is the elastic one below yield, and costs as little.
  if (isDrawnElastic(factor, yieldFactor) && !hasExactPlastic(problem)) {
    return elasticState(problem, factor);
  }
  return plasticState(problem, factor);
}

/** Yielded by temperature alone, no factor is small enough to be elastic, not even none. */
export const isDrawnElastic = (factor: number, yieldFactor: number): boolean =>
  yieldFactor > 0 && factor <= yieldFactor;

/** The worse bond's trough: lowest shear, elastic length, and length at rest below a tenth of yield. */
function troughOf(
  problem: LocalProblem,
  lap: LapState,
  curves: readonly BondCurve[],
  length: number,
): StressCurves['trough'] {
  const count = 400;
  return curves
    .map((curve, j) => {
      const limit = TROUGH_RATIO * curve.shearYield;
      let resting = 0;
      for (let i = 0; i < count; i++) {
        if (resultant(problem, lap, j, (length * (i + 0.5)) / count) <= limit) resting++;
      }
      const plastic = curve.plastic.reduce((sum, { from, to }) => sum + to - from, 0);
      return {
        ratio: lowestRatio(problem, lap, j),
        elasticLength: length - plastic,
        restLength: (length * resting) / count,
      };
    })
    .reduce((worse, trough) => (trough.ratio > worse.ratio ? trough : worse));
}
