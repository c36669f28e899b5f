/** The layered lap of one case in one gap state, solved when first asked for. */
import type { AdhesiveState } from '../joint/adhesive-state.ts';
import type { Assembly } from '../joint/assembly.ts';
import { type CappedState, cappedState } from './capped.ts';
import { type EdgeMethod, flatEdgeLoads, isFlatSingle } from './edge-loads.ts';
import {
  bentPart,
  combined,
  type FieldPart,
  fieldStations,
  fieldsOf,
  type LayeredFields,
  type Order,
  partOf,
} from './fields.ts';
import { type HarmonicSolution, solveHarmonic } from './harmonic.ts';
import {
  elasticZones,
  type FlowZone,
  type LayeredLap,
  type LayeredSolution,
  solveLayered,
} from './lap.ts';
import { type EdgeLoads, layeredLap, layerOrder, withEdgeLoads } from './of-joint.ts';

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

/** Zones of the states known near a load, carried on to it in a straight line from the two nearest. */
function zonesNear(
  states: ReadonlyMap<number, CappedState | null>,
  load: number,
  length: number,
): readonly FlowZone[] | null {
  const apart = (other: number): number => Math.abs(Math.log(other / load));
  const [nearest, next] = [...states]
    .flatMap(([at, state]) =>
      state && apart(at) < Math.log(FAR) ? [{ at, zones: state.zones }] : [],
    )
    .sort((a, b) => apart(a.at) - apart(b.at));
  if (!nearest) return null;
  if (!next || !isAlike(nearest.zones, next.zones)) return nearest.zones;
  const share = (load - nearest.at) / (next.at - nearest.at);
  const zones = nearest.zones.map(({ to, flow }, i) => ({
    to: i === nearest.zones.length - 1 ? to : to + share * (next.zones[i]!.to - to),
    flow,
  }));
  const isInOrder = zones.every(({ to }, i) => to > (zones[i - 1]?.to ?? 0) && to <= length);
  return isInOrder ? zones : nearest.zones;
}

/** True where the same bonds flow one after the other, if at other places. */
const isAlike = (a: readonly FlowZone[], b: readonly FlowZone[]): boolean =>
  a.length === b.length &&
  a.every(({ flow }, i) => flow.every((sign, j) => sign === b[i]!.flow[j]));

/**
 * The layered lap in one gap state and surroundings. Load cases there share what does not hang on the load:
 * the lap, and its elastic answer unless it bends with the load.
 * @returns for each load case a state of its own
 */
export function layeredStates(
  assembly: Assembly,
  adhesives: readonly AdhesiveState[],
  deltaT: number,
  method: EdgeMethod,
): () => LayeredState {
  const order = layerOrder(assembly);
  const bendsWithLoad = isFlatSingle(assembly);
  let plain: LayeredLap | null = null;
  const plainLap = (): LayeredLap => {
    plain ??= layeredLap(assembly, adhesives, deltaT);
    return plain;
  };
  let harmonic: HarmonicSolution | null = null;
  let bentAtStations: FieldPart | null = null;
  const bent: LayeredState['bent'] = (x) => {
    if (assembly.flat) return null;
    harmonic ??= solveHarmonic(plainLap());
    if (x) return bentPart(harmonic, order, x);
    bentAtStations ??= bentPart(harmonic, order, fieldStations(assembly.overlap));
    return bentAtStations;
  };
  const bending = (): ElasticAnswers => {
    const laps = new Map<number, LayeredLap>();
    const lapAt = (load: number): LayeredLap => {
      let lap = laps.get(load);
      if (!lap) {
        lap = withEdgeLoads(plainLap(), assembly, flatEdgeLoads(assembly, load, method));
        laps.set(load, lap);
      }
      return lap;
    };
    const fields = new Map<number, LayeredFields>();
    return {
      ...elasticAnswers(lapAt, order),
      // Whatever the load, the fields are those of three edge loads together.
      fields: (load) => {
        let found = fields.get(load);
        if (!found) {
          found = edgeFields(flatEdgeLoads(assembly, load, method));
          fields.set(load, found);
        }
        return found;
      },
    };
  };
  const edgeFields = fieldsByEdge(order, (edge) => withEdgeLoads(plainLap(), assembly, edge));
  const shared = bendsWithLoad ? null : elasticAnswers(plainLap, order);
  return () => {
    const answers = shared ?? bending();
    const states = new Map<number, CappedState | null>();
    return {
      order,
      bendsWithLoad,
      bent,
      fields: answers.fields,
      solution: answers.solution,
      capped: (load) => {
        const known = states.get(load);
        if (known !== undefined) return known;
        const lap = answers.lapAt(load);
        const near = zonesNear(states, load, lap.length);
        const found = (near && cappedState(lap, load, near)) ?? cappedState(lap, load);
        states.set(load, found);
        return found;
      },
    };
  };
}

/**
 * Fields of a flat single lap under any edge loads: their part by load is linear in the two, and none of
 * them has a part in that by temperature.
 */
function fieldsByEdge(
  order: Order,
  lapUnder: (edge: EdgeLoads) => LayeredLap,
): (edge: EdgeLoads) => LayeredFields {
  const solved = (moment: number, shear: number): LayeredSolution => {
    const lap = lapUnder({ moment, shear });
    return solveLayered(lap, elasticZones(lap));
  };
  let straight: LayeredFields | null = null;
  let parts: readonly FieldPart[] = [];
  return ({ moment, shear }) => {
    if (!straight) {
      straight = fieldsOf(solved(0, 0), order);
      const { x, unit } = straight;
      parts = [unit, partOf(solved(1, 0), order, x, 1, 0), partOf(solved(0, 1), order, x, 1, 0)];
    }
    return { ...straight, unit: combined(parts, [1 - moment - shear, moment, shear]) };
  };
}

interface ElasticAnswers extends Pick<LayeredState, 'fields' | 'solution'> {
  lapAt(load: number): LayeredLap;
}

/** Each lap is solved once, whatever the load it was asked for. */
function elasticAnswers(lapAt: (load: number) => LayeredLap, order: Order): ElasticAnswers {
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
  return {
    lapAt,
    solution,
    fields: (load) => {
      const solved = solution(load);
      let found = fields.get(solved);
      if (!found) {
        found = fieldsOf(solved, order);
        fields.set(solved, found);
      }
      return found;
    },
  };
}
