/**
 * The layered lap with the shear of its bonds capped at yield: where a bond flows its shear is given
 * and only peel still holds it. On each zone the system stays linear, so each state is exact for its
 * zones; the zones are found by taking the flow where the last state asks for it, again and again.
 * Only the axial shear is capped here: torque would make the bond flow sooner and peel less.
 */
import { findRoot } from '../numerics/root.ts';
import { fieldStations } from './fields.ts';
import {
  elasticZones,
  type FlowZone,
  type LayeredLap,
  type LayeredSolution,
  solveLayered,
} from './lap.ts';

export interface CappedState {
  readonly solution: LayeredSolution;
  readonly zones: readonly FlowZone[];
}

const ROUNDS = 30;

/**
 * @param load on the tube, N
 * @param guess zones of a state near this one
 * @returns null when no such state is found: the bond flows from end to end
 */
export function cappedState(
  lap: LayeredLap,
  load: number,
  guess: readonly FlowZone[] | null = null,
): CappedState | null {
  let zones: readonly FlowZone[] = guess ?? elasticZones(lap);
  const stations = fieldStations(lap.length, LOOKS);
  for (let round = 0; round < ROUNDS; round++) {
    let solution: LayeredSolution;
    try {
      solution = solveLayered(lap, zones);
    } catch (error) {
      if (error instanceof RangeError) return null;
      throw error;
    }
    const next = flowZones(solution, load, stations);
    if (next.length > MOST_ZONES) return null;
    // Nothing elastic is left to hold the tube.
    if (next.every(({ flow }) => flow.every((sign) => sign !== 0))) return null;
    if (same(zones, next, lap.length)) return { solution, zones: next };
    zones = next;
  }
  return null;
}

/** Shares of the overlap: zones shorter than this are none, fronts nearer than this have settled. */
const SLIVER = 1e-5;
const SETTLED = 1e-6;

/** Steps along the overlap in which fronts are looked for; each is then found exactly. */
const LOOKS = 32;

/** More zones than this mean that the rounds run away. */
const MOST_ZONES = 16;

/** Zones where each bond flows, from the trial shear of a solution. */
function flowZones(
  solution: LayeredSolution,
  load: number,
  stations: readonly number[],
): FlowZone[] {
  const { lap } = solution;
  const yields = lap.sectionAt(0).bonds.map(({ shearYield }) => shearYield);
  const answer = solution.under(load, 1);
  const trials = answer.columns(stations, false).bonds.map(({ trial }) => trial);
  const signAt = (j: number, i: number): number => {
    const trial = trials[j]![i]!;
    return Math.abs(trial) > yields[j]! ? Math.sign(trial) : 0;
  };
  const fronts: { x: number; bond: number; flow: number }[] = [];
  yields.forEach((limit, j) => {
    for (let i = 1; i < stations.length; i++) {
      const [before, after] = [signAt(j, i - 1), signAt(j, i)];
      if (before === after) continue;
      const sign = before === 0 ? after : before;
      const [left, right] = [stations[i - 1]!, stations[i]!];
      // At the ends what the signs were taken from: a front that stands on one may lie either side by rounding.
      const trialAt = (x: number): number =>
        x === left ? trials[j]![i - 1]! : x === right ? trials[j]![i]! : answer.trial(j, x);
      const over = (x: number): number => sign * trialAt(x) - limit;
      const x = findRoot(over, left, right, 1e-12 * lap.length);
      fronts.push({ x, bond: j, flow: after });
    }
  });
  fronts.sort((a, b) => a.x - b.x);
  const flow = yields.map((_limit, j) => signAt(j, 0));
  const zones: FlowZone[] = [];
  let from = 0;
  for (const front of fronts) {
    // Bonds that yield together make no zone between them: a sliver is all stiffness and no length.
    if (front.x - from > SLIVER * lap.length) {
      zones.push({ to: front.x, flow: [...flow] });
      from = front.x;
    }
    flow[front.bond] = front.flow;
  }
  if (lap.length - from <= SLIVER * lap.length) zones.pop();
  zones.push({ to: lap.length, flow });
  return zones;
}

function same(a: readonly FlowZone[], b: readonly FlowZone[], length: number): boolean {
  return (
    a.length === b.length &&
    a.every(
      (zone, i) =>
        Math.abs(zone.to - b[i]!.to) <= SETTLED * length &&
        zone.flow.every((sign, j) => sign === b[i]!.flow[j]),
    )
  );
}
