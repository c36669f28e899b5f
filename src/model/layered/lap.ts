/**
 * A layered lap with its ends: the overlap, what each wall meets at the root and at the mouth, and the
 * linear answer in two parts, that of a unit load and that of temperature and flow.
 */
import type { Matrix } from '../numerics/dense.ts';
import { type SectionColumns, sectionColumns } from './columns.ts';
import { endDisplacements, type Layout } from './ends.ts';
import { type Balanced, balance } from './exponential.ts';
import { endLack, layerPulls } from './layer-pull.ts';
import { type Asked, type OfSection, ofSection } from './readings.ts';
import { aloneIn, keptRunOuts, runOut } from './run-out.ts';
import type { FlowSigns, LayeredSection } from './section.ts';
import { Acting, balancedStretch, joinAll, readBy, type Stretch } from './stretch.ts';
import { type LayeredSystem, layeredSystem } from './system.ts';
import { taperedStretches } from './taper.ts';
import { type WallForces, wallReadings } from './wall-forces.ts';

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
  /** The answer to load·(mechanical part) + share·(temperature and flow). */
  under(load: number, share: number): LayeredAnswer;
  /** Bonds and walls at x for load·(mechanical part) + share·(temperature and flow). */
  at(x: number, load: number, share: number): LayeredPoint;
  /** The same at many places in rising order, for less. */
  along(x: readonly number[], load: number, share: number): LayeredPoint[];
  /** The same in columns over the places, for less still; the walls where asked for. */
  columns(x: readonly number[], load: number, share: number, withWalls: boolean): LayeredColumns;
}

/** Keeps what it has found on the way: many places asked one after the other cost little each. */
export interface LayeredAnswer {
  columns(x: readonly number[], withWalls: boolean): LayeredColumns;
  /** Trial shear of a bond at one place. */
  trial(bond: number, x: number): number;
}

/** Trial shear: elastic, the shear; flowing, yield plus the plastic slip's worth, with the sign of flow. */
const READ = ['shear', 'peel', 'trial'] as const;
export type LayeredColumns = SectionColumns<(typeof READ)[number]>;

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
  readonly balanced: Balanced;
  readonly readings: OfSection;
}

type SectionAt = LayeredLap['sectionAt'];

/** By section and what flows: laps that differ in their ends alone and all states of one lap ask for the same few. */
const known = new WeakMap<SectionAt, Map<string, UniformSystem>>();

function uniformSystem({ sectionAt }: LayeredLap, flow: FlowSigns): UniformSystem {
  let systems = known.get(sectionAt);
  if (!systems) {
    systems = new Map();
    known.set(sectionAt, systems);
  }
  const key = flow.join();
  let found = systems.get(key);
  if (!found) {
    const section = sectionAt(0);
    const system = layeredSystem(section, flow);
    found = {
      balanced: balance(system.a, system.g),
      readings: readingsOf(section, system),
    };
    systems.set(key, found);
  }
  return found;
}

const readingsOf = (section: LayeredSection, { bonds }: LayeredSystem): OfSection =>
  ofSection(bonds, () => wallReadings(section.shells, 3, layerPulls(section)));

const PLAIN: Layout = {
  each: 3,
  thermal: true,
  runOut: keptRunOuts((shell, pull, side) =>
    runOut(shell, pull, side, layeredSystem(aloneIn(shell), []), 3),
  ),
};

function stretchesOf(lap: LayeredLap, zones: readonly FlowZone[]): Stretch<Asked> {
  const stretches: Stretch<Asked>[] = [];
  let from = 0;
  for (const { to, flow } of zones) {
    if (to <= from) continue;
    if (lap.uniform) {
      const { balanced, readings } = uniformSystem(lap, flow);
      stretches.push(readBy(balancedStretch(balanced, to - from), readings));
    } else {
      const coefficients = {
        name: flow.join(),
        of: (section: LayeredSection) => layeredSystem(section, flow),
        readings: (section: LayeredSection) => readingsOf(section, layeredSystem(section, flow)),
      };
      stretches.push(...taperedStretches(lap, coefficients, from, to));
    }
    from = to;
  }
  return joinAll(stretches);
}

/** Laps without flow by their section: those of a flat joint under other loads differ in their ends alone. */
const elastic = new WeakMap<
  SectionAt,
  { readonly length: number; readonly whole: Stretch<Asked> }
>();

function elasticStretch(lap: LayeredLap, zones: readonly FlowZone[]): Stretch<Asked> {
  const { sectionAt, length } = lap;
  let found = elastic.get(sectionAt);
  if (found?.length !== length) {
    found = { length, whole: stretchesOf(lap, zones) };
    elastic.set(sectionAt, found);
  }
  return found.whole;
}

/** @throws RangeError when the lap has no single answer (a bond that flows from end to end) */
export function solveLayered(lap: LayeredLap, zones: readonly FlowZone[]): LayeredSolution {
  const isElastic = zones.every(({ flow }) => flow.every((sign) => sign === 0));
  const whole = isElastic ? elasticStretch(lap, zones) : stretchesOf(lap, zones);
  const [mechanical, fixed] = endDisplacements(lap, whole.ends, PLAIN);
  const lackAt = endLacks(lap);
  const under = (load: number, share: number): LayeredAnswer => {
    const mix = (end: 0 | 1): Matrix =>
      mechanical[end].map((value, i) => load * value + share * fixed[end][i]!);
    const acting = new Acting(mix(0), mix(1), share);
    const trial = (bond: number, x: number): number => {
      let found = 0;
      const span = { x: [x], from: 0, to: 1, start: 0 };
      whole.sample(span, acting, (_i, [value]) => (found = value!), 3 * bond + 2);
      return found;
    };
    return {
      trial,
      columns: (x, withWalls) => {
        const read = sectionColumns(whole, acting, x, READ, lap.sectionAt(0), withWalls);
        if (share !== 0) {
          read.bonds.forEach(({ peel }, j) => {
            for (let i = 0; i < x.length; i++) peel[i]! -= share * lackAt(j, x[i]!);
          });
        }
        return read;
      },
    };
  };
  const columns: LayeredSolution['columns'] = (x, load, share, withWalls) =>
    under(load, share).columns(x, withWalls);
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
  return { lap, under, columns, along, at: (x, load, share) => along([x], load, share)[0]! };
}

/** How much peel the layer of a bond lacks at a place, from both of its ends. */
function endLacks(lap: LayeredLap): (bond: number, x: number) => number {
  const lacks = [0, lap.length].map((x) => {
    const section = lap.sectionAt(x);
    return section.bonds.map((_bond, j) => endLack(section, j, lap.length));
  });
  return (j, x) => {
    const [root, mouth] = [lacks[0]![j]!, lacks[1]![j]!];
    return (
      root.stress * Math.exp(-x / root.length) +
      mouth.stress * Math.exp((x - lap.length) / mouth.length)
    );
  };
}
