/**
 * A layered lap with its ends: the overlap, what each wall meets at the root and at the mouth, and the
 * linear answer in two parts, that of a unit load and that of temperature and flow.
 */
import type { Matrix } from '../numerics/dense.ts';
import { endDisplacements, type Layout } from './ends.ts';
import { type Balanced, balance } from './exponential.ts';
import { endLack, layerPulls } from './layer-pull.ts';
import { aloneIn, keptRunOuts, runOut } from './run-out.ts';
import type { FlowSigns, LayeredSection } from './section.ts';
import { balancedStretch, joinAll, type See, type Stretch } from './stretch.ts';
import { type LayeredSystem, layeredSystem } from './system.ts';
import { taperedStretches } from './taper.ts';
import { type WallForces, wallForces } from './wall-forces.ts';

/** What a wall meets at an end of the overlap. Loads are per unit of the lap's load. */
export type WallEnd =
  | { readonly kind: 'free' }
  /** Built into solid metal that shrinks by `growth` outward there, mm, and does not turn. */
  | { readonly kind: 'clamped'; readonly growth: number }
  /** Goes on as a single wall: `held` far away, or pulled there by n per radian (width). */
  | { readonly kind: 'run-out'; readonly pull: number | 'held' }
  /** Cut, with internal force n, shear force q and moment m about its middle. */
  | { readonly kind: 'cut'; readonly n: number; readonly q: number; readonly m: number };

export interface LayeredLap {
  readonly length: number;
  readonly uniform: boolean;
  sectionAt(x: number): LayeredSection;
  readonly root: readonly WallEnd[];
  readonly mouth: readonly WallEnd[];
}

/** A stretch of the overlap over which the same bonds flow, with the signs of their flow. */
export interface FlowZone {
  readonly to: number;
  readonly flow: FlowSigns;
}

export interface LayeredSolution {
  readonly lap: LayeredLap;
  /** Bonds and walls at x for load·(mechanical part) + share·(temperature and flow). */
  at(x: number, load: number, share: number): LayeredPoint;
  /** The same at many places in rising order, for less. */
  along(x: readonly number[], load: number, share: number): LayeredPoint[];
  /** The same in columns over the places, for less still; the walls where asked for. */
  columns(x: readonly number[], load: number, share: number, withWalls: boolean): LayeredColumns;
}

export interface LayeredColumns {
  readonly bonds: readonly {
    readonly shear: Float64Array;
    readonly peel: Float64Array;
    /** Elastic: the shear. Flowing: yield plus the plastic slip's worth, with the sign of flow. */
    readonly trial: Float64Array;
  }[];
  /** Inside to outside; none where they were not asked for. */
  readonly walls: readonly {
    readonly axial: Float64Array;
    readonly hoop: Float64Array;
    readonly moment: Float64Array;
  }[];
}

export interface LayeredPoint {
  readonly stresses: {
    readonly shear: readonly number[];
    readonly peel: readonly number[];
    readonly trial: readonly number[];
  };
  /** Inside to outside. */
  readonly forces: readonly WallForces[];
}

export const elasticZones = (lap: LayeredLap): FlowZone[] => [
  { to: lap.length, flow: lap.sectionAt(0).bonds.map(() => 0) },
];

interface UniformSystem {
  readonly system: LayeredSystem;
  readonly balanced: Balanced;
}

/** Systems of uniform laps by what flows: the capped states of one lap ask for the same few. */
const known = new WeakMap<LayeredLap, Map<string, UniformSystem>>();

function uniformSystem(lap: LayeredLap, flow: FlowSigns): UniformSystem {
  let systems = known.get(lap);
  if (!systems) {
    systems = new Map();
    known.set(lap, systems);
  }
  const key = flow.join();
  let found = systems.get(key);
  if (!found) {
    const system = layeredSystem(lap.sectionAt(0), flow);
    found = { system, balanced: balance(system.a, system.g) };
    systems.set(key, found);
  }
  return found;
}

const PLAIN: Layout = {
  each: 3,
  thermal: true,
  runOut: keptRunOuts((shell, pull, side) =>
    runOut(shell, pull, side, layeredSystem(aloneIn(shell), []), 3),
  ),
};

/** @throws RangeError when the lap has no single answer (a bond that flows from end to end) */
export function solveLayered(lap: LayeredLap, zones: readonly FlowZone[]): LayeredSolution {
  const stretches: Stretch[] = [];
  let from = 0;
  for (const { to, flow } of zones) {
    if (to <= from) continue;
    if (lap.uniform) {
      stretches.push(balancedStretch(uniformSystem(lap, flow).balanced, to - from));
    } else {
      const coefficients = {
        name: flow.join(),
        of: (section: LayeredSection) => layeredSystem(section, flow),
      };
      stretches.push(...taperedStretches(lap, coefficients, from, to));
    }
    from = to;
  }
  const whole = joinAll(stretches);
  const { half } = whole;
  const [mechanical, fixed] = endDisplacements(lap, whole.ends, PLAIN);
  let asked: readonly [load: number, share: number] | null = null;
  let ends: readonly [Matrix, Matrix] | null = null;
  /** Displacements at both ends; the same arrays as long as the same is asked. */
  const endsAt = (load: number, share: number): readonly [Matrix, Matrix] => {
    if (ends && asked?.[0] === load && asked[1] === share) return ends;
    const mix = (end: 0 | 1): Matrix => {
      const out = new Float64Array(half);
      for (let i = 0; i < half; i++) {
        out[i] = load * mechanical[end][i]! + share * fixed[end][i]!;
      }
      return out;
    };
    asked = [load, share];
    ends = [mix(0), mix(1)];
    return ends;
  };
  const sample = (x: readonly number[], load: number, share: number, see: See): void =>
    whole.sample({ x, from: 0, to: x.length, start: 0 }, ...endsAt(load, share), share, see);
  const uniformSection = lap.uniform ? lap.sectionAt(0) : null;
  const uniformPulls = uniformSection && layerPulls(uniformSection);
  const systems = uniformSection && zones.map(({ flow }) => uniformSystem(lap, flow).system);
  const last = zones.length - 1;
  const systemAt = (x: number): LayeredSystem => {
    let zone = 0;
    while (zone < last && x > zones[zone]!.to) zone++;
    return systems ? systems[zone]! : layeredSystem(lap.sectionAt(x), zones[zone]!.flow);
  };
  const lacks = [0, lap.length].map((x) => {
    const section = lap.sectionAt(x);
    return section.bonds.map((_bond, j) => endLack(section, j, lap.length));
  });
  const lackAt = (j: number, x: number): number => {
    const [root, mouth] = [lacks[0]![j]!, lacks[1]![j]!];
    return (
      root.stress * Math.exp(-x / root.length) +
      mouth.stress * Math.exp((x - lap.length) / mouth.length)
    );
  };
  const forcesAt = (x: number, y: Matrix, share: number): WallForces[] => {
    const section = uniformSection ?? lap.sectionAt(x);
    const pulls = uniformPulls ?? layerPulls(section);
    return section.shells.map((shell, i) =>
      wallForces(shell, y, { half, each: 3, wall: i }, pulls[i]!, share),
    );
  };
  const columns = (
    x: readonly number[],
    load: number,
    share: number,
    withWalls: boolean,
  ): LayeredColumns => {
    const empty = (): Float64Array => new Float64Array(x.length);
    const bonds = lacks[0]!.map(() => ({ shear: empty(), peel: empty(), trial: empty() }));
    const walls = (withWalls ? lap.root : []).map(() => ({
      axial: empty(),
      hoop: empty(),
      moment: empty(),
    }));
    const read = new Float64Array(3 * bonds.length);
    sample(x, load, share, (i, y) => {
      const at = x[i]!;
      systemAt(at).read(y, share, read);
      for (let j = 0; j < bonds.length; j++) {
        const bond = bonds[j]!;
        bond.shear[i] = read[3 * j]!;
        bond.peel[i] = read[3 * j + 1]! - (share === 0 ? 0 : share * lackAt(j, at));
        bond.trial[i] = read[3 * j + 2]!;
      }
      if (!withWalls) return;
      forcesAt(at, y, share).forEach(({ axial, hoop, moment }, k) => {
        const wall = walls[k]!;
        wall.axial[i] = axial;
        wall.hoop[i] = hoop;
        wall.moment[i] = moment;
      });
    });
    return { bonds, walls };
  };
  const along = (x: readonly number[], load: number, share: number): LayeredPoint[] => {
    const { bonds, walls } = columns(x, load, share, true);
    const pick = (what: 'shear' | 'peel' | 'trial', i: number): number[] =>
      bonds.map((bond) => bond[what][i]!);
    return x.map((_x, i) => ({
      stresses: { shear: pick('shear', i), peel: pick('peel', i), trial: pick('trial', i) },
      forces: walls.map(({ axial, hoop, moment }) => ({
        axial: axial[i]!,
        hoop: hoop[i]!,
        moment: moment[i]!,
      })),
    }));
  };
  return { lap, columns, along, at: (x, load, share) => along([x], load, share)[0]! };
}
