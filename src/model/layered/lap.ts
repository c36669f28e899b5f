/**
 * A layered lap with its ends: the overlap, what each wall meets at the root and at the mouth, and the
 * linear answer in two parts, that of a unit load and that of temperature and flow.
 */
import { type Matrix, solveDense } from '../numerics/dense.ts';
import { type Balanced, balance } from './exponential.ts';
import { endLack, type LayerPull, layerPulls } from './layer-pull.ts';
import { runOut } from './run-out.ts';
import type { FlowSigns, LayeredSection } from './section.ts';
import type { Shell } from './shell.ts';
import { balancedStretch, type EndStiffness, joinAll, type See, type Stretch } from './stretch.ts';
import { type BondStresses, type LayeredSystem, layeredSystem } from './system.ts';
import { taperedStretches } from './taper.ts';

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

/** One wall at x: line forces per length of arc (width) of its middle, and its moment about its middle. */
export interface WallForces {
  readonly axial: number;
  readonly hoop: number;
  readonly moment: number;
}

export interface LayeredSolution {
  readonly lap: LayeredLap;
  /** Bonds and walls at x for load·(mechanical part) + share·(temperature and flow). */
  at(x: number, load: number, share: number): LayeredPoint;
  /** The same at many places in rising order, for less. */
  along(x: readonly number[], load: number, share: number): LayeredPoint[];
}

export interface LayeredPoint {
  readonly stresses: BondStresses;
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
  const [mechanical, fixed] = endDisplacements(lap, whole.ends, half);
  const flowAt = (x: number): FlowSigns =>
    (zones.find(({ to }) => x <= to) ?? zones[zones.length - 1]!).flow;

  const sample = (x: readonly number[], load: number, share: number, see: See): void => {
    const mix = (end: 0 | 1): Matrix => {
      const out = new Float64Array(half);
      for (let i = 0; i < half; i++) {
        out[i] = load * mechanical[end][i]! + share * fixed[end][i]!;
      }
      return out;
    };
    whole.sample({ x, from: 0, to: x.length, start: 0 }, mix(0), mix(1), share, see);
  };
  const uniformSection = lap.uniform ? lap.sectionAt(0) : null;
  const uniformPulls = uniformSection && layerPulls(uniformSection);
  const systemAt = (x: number): LayeredSystem =>
    uniformSection
      ? uniformSystem(lap, flowAt(x)).system
      : layeredSystem(lap.sectionAt(x), flowAt(x));
  const ends = [0, lap.length].map((x) => {
    const section = lap.sectionAt(x);
    return section.bonds.map((_bond, j) => endLack(section, j, lap.length));
  });
  const lackAt = (j: number, x: number): number => {
    const [root, mouth] = [ends[0]![j]!, ends[1]![j]!];
    return (
      root.stress * Math.exp(-x / root.length) +
      mouth.stress * Math.exp((x - lap.length) / mouth.length)
    );
  };
  const pointOf = (x: number, y: Matrix, share: number): LayeredPoint => {
    const section = uniformSection ?? lap.sectionAt(x);
    const stresses = systemAt(x).stresses(y, share);
    for (let j = 0; j < stresses.peel.length && share !== 0; j++) {
      stresses.peel[j]! -= share * lackAt(j, x);
    }
    return {
      stresses,
      // Asked for at few of the places where stresses are.
      get forces() {
        const pulls = uniformPulls ?? layerPulls(section);
        return section.shells.map((shell, i) => wallForces(shell, pulls[i]!, y, i, half, share));
      },
    };
  };
  const along = (x: readonly number[], load: number, share: number): LayeredPoint[] => {
    const points: LayeredPoint[] = [];
    sample(x, load, share, (i, y) => points.push(pointOf(x[i]!, y, share)));
    return points;
  };
  return { lap, along, at: (x, load, share) => along([x], load, share)[0]! };
}

function wallForces(
  shell: Shell,
  pull: LayerPull,
  y: Matrix,
  i: number,
  half: number,
  share: number,
): WallForces {
  const axial = (y[half + 3 * i]! - share * pull.n) / shell.radius;
  const moment = (y[half + 3 * i + 2]! - share * pull.m) / shell.radius + shell.offset * axial;
  if (shell.flat) return { axial, hoop: 0, moment };
  const ratio = shell.cxt / shell.cxx;
  const own = shell.ctt - ratio * shell.cxt;
  const strain = y[3 * i + 1]! / shell.radius - share * shell.freeHoop;
  return { axial, hoop: ratio * axial + own * strain, moment };
}

type Ends = readonly [root: Matrix, mouth: Matrix];

/** Displacements of both ends of the overlap: by a unit load, and by temperature and flow. */
function endDisplacements(lap: LayeredLap, k: EndStiffness, half: number): [Ends, Ends] {
  const size = 2 * half;
  const a = new Float64Array(size * size);
  const b = new Float64Array(size * 2);
  // Overlap's internal force at an end less what the neighbour has there: zero.
  const fill = (end: 0 | 1, k0: Matrix, k1: Matrix, p: Matrix): void => {
    for (let i = 0; i < half; i++) {
      const row = end * half + i;
      for (let j = 0; j < half; j++) {
        a[row * size + j] = k0[i * half + j]!;
        a[row * size + half + j] = k1[i * half + j]!;
      }
      b[row * 2 + 1] = -p[i]!;
    }
  };
  fill(0, k.k00, k.k01, k.p0);
  fill(1, k.k10, k.k11, k.p1);
  const shells: readonly (readonly Shell[])[] = [
    lap.sectionAt(0).shells,
    lap.sectionAt(lap.length).shells,
  ];
  [lap.root, lap.mouth].forEach((walls, end) => {
    walls.forEach((wall, i) => {
      const first = end * half + 3 * i;
      const shell = shells[end]![i]!;
      if (wall.kind === 'clamped') {
        for (let row = first; row < first + 3; row++) {
          a.fill(0, row * size, (row + 1) * size);
          a[row * size + row] = 1;
          b.fill(0, row * 2, row * 2 + 2);
        }
        b[(first + 1) * 2 + 1] = wall.growth;
      } else if (wall.kind === 'cut') {
        b[first * 2]! += wall.n;
        b[(first + 1) * 2]! += wall.q;
        b[(first + 2) * 2]! += wall.m - shell.offset * wall.n;
      } else if (wall.kind === 'run-out') {
        const beyond = runOut(shell, wall.pull, end === 0 ? 'root' : 'mouth');
        for (let row = 0; row < 3; row++) {
          for (let column = 0; column < 3; column++) {
            a[(first + row) * size + first + column]! -= beyond.stiffness[row * 3 + column]!;
          }
          b[(first + row) * 2]! += beyond.pull[row]!;
          b[(first + row) * 2 + 1]! += beyond.free[row]!;
        }
      }
    });
  });
  // Peel that the layers lack at their free ends, as a force there. Where a wall is clamped its support takes it.
  ([0, 1] as const).forEach((end) => {
    const section = lap.sectionAt(end * lap.length);
    const walls = end === 0 ? lap.root : lap.mouth;
    section.bonds.forEach((bond, j) => {
      const force = endLack(section, j, lap.length).force * bond.radius * (end === 0 ? -1 : 1);
      if (walls[j]!.kind !== 'clamped') b[(end * half + 3 * j + 1) * 2 + 1]! -= force;
      if (walls[j + 1]!.kind !== 'clamped') b[(end * half + 3 * j + 4) * 2 + 1]! += force;
    });
  });
  solveDense(a, b, size, 2);
  const column = (c: number): Ends => [
    Float64Array.from({ length: half }, (_v, i) => b[i * 2 + c]!),
    Float64Array.from({ length: half }, (_v, i) => b[(half + i) * 2 + c]!),
  ];
  return [column(0), column(1)];
}
