/** The layered lap of one case in one gap state, solved when first asked for. */
import type { AdhesiveState } from '../joint/adhesive-state.ts';
import type { Assembly } from '../joint/assembly.ts';
import { type CappedState, cappedState } from './capped.ts';
import { type EdgeMethod, flatEdgeLoads, isFlatSingle } from './edge-loads.ts';
import {
  bentPart,
  type FieldPart,
  fieldStations,
  fieldsOf,
  type LayeredFields,
  type Order,
} from './fields.ts';
import { type HarmonicSolution, solveHarmonic } from './harmonic.ts';
import { elasticZones, type LayeredLap, type LayeredSolution, solveLayered } from './lap.ts';
import { layeredLap, layerOrder } from './of-joint.ts';

export interface LayeredState {
  readonly order: Order;
  /**
   * Elastic fields. Only a flat single lap's depend on the load (N on the width), through its edge
   * moment: all others take any number.
   */
  fields(load: number): LayeredFields;
  /** The elastic answer behind `fields`, at any place. */
  solution(load: number): LayeredSolution;
  /** Amplitudes at cos θ per N·mm of moment, at the stations of `fields` or at others; null when flat. */
  bent(x?: readonly number[]): FieldPart | null;
  /** True when `fields` depends on the load. */
  readonly bendsWithLoad: boolean;
  /** The state with shear capped at yield; null when the bond flows from end to end. */
  capped(load: number): CappedState | null;
}

/** Loads further apart than this tell nothing of each other's zones: the rounds would run away. */
const FAR = 1.3;

/** The state known at the load nearest to another, if one is near. */
function nearest(states: ReadonlyMap<number, CappedState | null>, load: number) {
  let found: CappedState | null = null;
  let least = Math.log(FAR);
  for (const [other, state] of states) {
    const apart = Math.abs(Math.log(other / load));
    if (state && apart < least) {
      found = state;
      least = apart;
    }
  }
  return found;
}

export function layeredState(
  assembly: Assembly,
  adhesives: readonly AdhesiveState[],
  deltaT: number,
  method: EdgeMethod,
): LayeredState {
  const order = layerOrder(assembly);
  const bendsWithLoad = isFlatSingle(assembly);
  const laps = new Map<number, LayeredLap>();
  const lapAt = (load: number): LayeredLap => {
    const key = bendsWithLoad ? load : 0;
    let lap = laps.get(key);
    if (!lap) {
      const edge = bendsWithLoad ? flatEdgeLoads(assembly, load, method) : undefined;
      lap = layeredLap(assembly, adhesives, deltaT, edge);
      laps.set(key, lap);
    }
    return lap;
  };
  const solutions = new Map<LayeredLap, LayeredSolution>();
  const solution = (load: number): LayeredSolution => {
    const lap = lapAt(load);
    let found = solutions.get(lap);
    if (!found) {
      found = solveLayered(lap, elasticZones(lap));
      solutions.set(lap, found);
    }
    return found;
  };
  const fields = new Map<LayeredSolution, LayeredFields>();
  const states = new Map<number, CappedState | null>();
  let harmonic: HarmonicSolution | null = null;
  let bentAtStations: FieldPart | null = null;
  return {
    order,
    bendsWithLoad,
    fields: (load) => {
      const solved = solution(load);
      let found = fields.get(solved);
      if (!found) {
        found = fieldsOf(solved, order);
        fields.set(solved, found);
      }
      return found;
    },
    solution,
    bent: (x) => {
      if (assembly.flat) return null;
      harmonic ??= solveHarmonic(lapAt(0));
      if (x) return bentPart(harmonic, order, x);
      bentAtStations ??= bentPart(harmonic, order, fieldStations(assembly.overlap));
      return bentAtStations;
    },
    capped: (load) => {
      const known = states.get(load);
      if (known !== undefined) return known;
      const near = nearest(states, load);
      const found =
        (near && cappedState(lapAt(load), load, near.zones)) ?? cappedState(lapAt(load), load);
      states.set(load, found);
      return found;
    },
  };
}
