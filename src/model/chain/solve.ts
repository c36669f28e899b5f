/**
 * The chain's answer to one question: the state under a load factor, or the load factor at which
 * an end slips by a given amount. First on a coarse mesh with the yield stress lowered step by step
 * to its true value, then with nodes moved onto the yield fronts until these stand still: there the
 * stress is smooth in every cell and the formula keeps its fourth order.
 */
import { ModelError } from '../errors.ts';
import { isTapered, type LapProblem } from '../lap/problem.ts';
import { type ElasticParts, elasticParts } from './elastic-parts.ts';
import { layoutOf } from './equations.ts';
import { breakpointsOf, findFronts, plasticAtRoot, regimesOf, slipRatio } from './fronts.ts';
import { interpolator } from './interpolate.ts';
import type { Regime } from './law.ts';
import { gradedMesh } from './mesh.ts';
import { newton } from './newton.ts';
import { slipNewton } from './slip-newton.ts';
import type { Chain, Control } from './system.ts';

/** Newton's method on given nodes. */
type Iterate = (
  control: Control,
  start: Chain,
  yieldScale?: number,
  maxIterations?: number,
) => Chain | null;

/** Bonds softer than this over their length keep the forces among the unknowns. */
const SOFTEST = 0.02;

/** Tapers and very soft bonds need the general method. */
const isGeneral = (problem: LapProblem, omega: number): boolean =>
  problem.channels.some(isTapered) || omega * problem.length < SOFTEST;

/** The fast method where it holds. */
function iterateFor(problem: LapProblem, omega: number): Iterate {
  if (isGeneral(problem, omega)) {
    return (control, start, yieldScale, maxIterations) =>
      newton(problem, control, start, yieldScale, maxIterations);
  }
  return (control, start, yieldScale, maxIterations) =>
    slipNewton(problem, control, start, omega, yieldScale, maxIterations);
}

/** Upper bound of the decay rate over all channels and bonds, 1/mm. */
export function fastestDecay(problem: LapProblem): number {
  let fastest = 0;
  for (const channel of problem.channels) {
    let trace = 0;
    problem.bonds.forEach((bond, j) => {
      const outer = channel.outers[j]!;
      const softest = Math.min(outer.stiffness, outer.taper?.mouth ?? outer.stiffness);
      trace +=
        channel.levers[j]! ** 2 *
        bond.width *
        bond.stiffness *
        (1 / channel.tube.stiffness + 1 / softest);
    });
    fastest = Math.max(fastest, trace);
  }
  return Math.sqrt(fastest);
}

const uniform = (nodes: Float64Array, bonds: number, regime: Regime): (readonly Regime[])[] =>
  new Array<readonly Regime[]>(nodes.length - 1).fill(new Array<Regime>(bonds).fill(regime));

function resample(problem: LapProblem, chain: Chain, nodes: Float64Array): Float64Array {
  const { unknowns } = layoutOf(problem);
  const at = interpolator(problem, chain);
  const values = new Float64Array(nodes.length * unknowns);
  const out = new Float64Array(unknowns);
  nodes.forEach((x, i) => {
    at(x, out);
    values.set(out, i * unknowns);
  });
  return values;
}

/** from + factor·step */
function alongBy(from: Float64Array, factor: number, step: Float64Array): Float64Array {
  const values = from.slice();
  for (let i = 0; i < values.length; i++) values[i]! += factor * step[i]!;
  return values;
}

/** The elastic answer to a load factor on given nodes, whatever the yield stress: the start of everything else. */
function elasticAt(
  problem: LapProblem,
  nodes: Float64Array,
  omega: number,
): (factor: number) => Chain {
  const { bonds, unknowns } = layoutOf(problem);
  const regimes = uniform(nodes, bonds, 'elastic');
  if (isGeneral(problem, omega)) {
    const { byLoad, byTemperature } = elasticParts(problem, nodes);
    return (factor) => ({
      nodes,
      regimes,
      values: alongBy(byTemperature.chain.values, factor, byLoad.chain.values),
    });
  }
  return (factor) => {
    const values = new Float64Array(nodes.length * unknowns);
    for (let i = 0; i < nodes.length; i++) values[(i + 1) * unknowns - 1] = factor;
    const chain = slipNewton(problem, { kind: 'load', factor }, { nodes, values, regimes }, omega);
    if (!chain) throw new ModelError('joint', 'The elastic equations have no solution.');
    return chain;
  };
}

function elasticChain(
  problem: LapProblem,
  control: Control,
  nodes: Float64Array,
  omega: number,
): Chain {
  const { bonds, channels, unknowns } = layoutOf(problem);
  const solveAt = elasticAt(problem, nodes, omega);
  if (control.kind === 'load') return solveAt(control.factor);
  // Linear in the load factor: |thermal + λ·mechanical| = size, the positive root.
  const thermal = solveAt(0);
  const both = solveAt(1);
  const node = control.end === 'root' ? 0 : nodes.length - 1;
  let a = 0;
  let b = 0;
  let c = -control.size * control.size;
  for (let q = 0; q < channels; q++) {
    const at = node * unknowns + 2 * (q * bonds + control.bond);
    const t = thermal.values[at]!;
    const d = both.values[at]! - t;
    a += d * d;
    b += t * d;
    c += t * t;
  }
  const factor = (-b + Math.sqrt(Math.max(b * b - a * c, 0))) / a;
  if (!Number.isFinite(factor)) {
    throw new ModelError('load', 'The load does not move this end of the bond.');
  }
  const values = thermal.values.slice();
  for (let i = 0; i < values.length; i++) values[i]! += factor * (both.values[i]! - values[i]!);
  return { nodes, values, regimes: thermal.regimes };
}

/** Largest |s| over the slip at yield, over all nodes and bonds. */
function largestRatio(problem: LapProblem, chain: Chain): number {
  let largest = 0;
  for (let j = 0; j < problem.bonds.length; j++) {
    for (let i = 0; i < chain.nodes.length; i++) {
      largest = Math.max(largest, slipRatio(problem, chain, j, i));
    }
  }
  return largest;
}

/** From the elastic answer to the true yield stress on one mesh; null when it cannot be followed. */
function lowerYield(
  problem: LapProblem,
  control: Control,
  elastic: Chain,
  iterate: Iterate,
): Chain | null {
  const either = uniform(elastic.nodes, problem.bonds.length, 'either');
  let chain: Chain = { ...elastic, regimes: either };
  const direct = iterate(control, chain, 1, 12);
  if (direct) return direct;
  let level = Math.max(largestRatio(problem, elastic), 1);
  let ratio = 0.5;
  for (let step = 0; step < 200 && level > 1; step++) {
    const next = Math.max(level * ratio, 1);
    const advanced = iterate(control, chain, next, 15);
    if (advanced) {
      chain = advanced;
      level = next;
      ratio = Math.max(ratio * ratio, 0.5);
    } else {
      ratio = Math.sqrt(ratio);
      if (ratio > 0.9999) return null;
    }
  }
  return level <= 1 ? chain : null;
}

/** Fronts stand still when they move by less than this over 1/ω: the stress then errs by its square. */
const FRONT_TOLERANCE = 1e-3;

/** Cells over 1/ω beside a front, and their growth with the distance from it. */
const ROUGH = { first: 0.3, growth: 0.25 };
const FINE = { first: 0.14, growth: 0.12 };

/** Nodes onto the fronts, until these stand still; null where Newton's method cannot take the first step. */
function sharpen(
  problem: LapProblem,
  control: Control,
  coarse: Chain,
  omega: number,
  iterate: Iterate,
): Chain | null {
  const { length } = problem;
  let chain = coarse;
  let fronts = findFronts(problem, chain);
  for (let round = 0; round < 10; round++) {
    const starts = problem.bonds.map((_bond, j) => plasticAtRoot(problem, chain, j));
    // The first round only has to find the fronts.
    const grading = round === 0 ? ROUGH : FINE;
    const nodes = gradedMesh(breakpointsOf(fronts, length, 1e-7 * length), {
      first: grading.first / omega,
      growth: grading.growth,
      largest: length,
    });
    const regimes = regimesOf(nodes, fronts, starts);
    const solved = iterate(control, { nodes, values: resample(problem, chain, nodes), regimes });
    if (!solved) return round === 0 ? null : chain;
    chain = solved;
    const moved = findFronts(problem, chain);
    const before = fronts.flat();
    const after = moved.flat();
    fronts = moved;
    const still =
      after.length === before.length &&
      after.every((x, i) => Math.abs(x - before[i]!) <= FRONT_TOLERANCE / omega);
    if (still && round > 0) break;
  }
  return chain;
}

/** Rounding of the sums below. */
const ROUNDING = 1e-9;

/**
 * True where no state can be: with every bond flowing from end to end in the direction of the load, less
 * is carried than asked for. From equilibrium alone, Σ_j a_qj·c_j·∫τ_qj dx = λ·P_q with
 * √(Σ_q τ_qj²) ≤ τp_j: along n = P/|P| no more than Σ_j c_j·L·τp_j·√(Σ_q n_q²·a_qj²).
 */
export function isBeyondFlow({ bonds, channels, length }: LapProblem, factor: number): boolean {
  const load = Math.hypot(...channels.map((channel) => channel.load));
  if (load === 0) return false;
  let most = 0;
  bonds.forEach(({ width, shearYield }, j) => {
    const levers = channels.map((channel) => (channel.load / load) * channel.levers[j]!);
    most += width * length * shearYield * Math.hypot(...levers);
  });
  return Math.abs(factor) * load > most * (1 + ROUNDING);
}

const beyond = (): ModelError =>
  new ModelError(
    'load',
    'The plastic state of the bond was not found at this load: lower the load or lengthen the overlap.',
  );

const coarseNodes = ({ length }: LapProblem, omega: number, fineness: number): Float64Array =>
  gradedMesh([0, length], {
    first: 0.3 / omega / fineness,
    growth: 0.25 / fineness,
    largest: Math.max(0.7 / omega, length / 120) / fineness,
  });

/**
 * The state under a load factor on a coarse mesh, right to some thousandths: a first look.
 * @returns null where none is found, which says nothing
 */
export function roughChain(problem: LapProblem, factor: number): Chain | null {
  const control = { kind: 'load', factor } as const;
  if (isBeyondFlow(problem, factor)) return null;
  const omega = fastestDecay(problem);
  const elastic = elasticChain(problem, control, coarseNodes(problem, omega, 1), omega);
  if (largestRatio(problem, elastic) <= 1) return elastic;
  return lowerYield(problem, control, elastic, iterateFor(problem, omega));
}

/**
 * @throws ModelError when the state cannot be found: the load is beyond what the bond carries
 */
export function solveChain(problem: LapProblem, control: Control): Chain {
  // Newton's method would look long for what cannot be there.
  if (control.kind === 'load' && isBeyondFlow(problem, control.factor)) throw beyond();
  const omega = fastestDecay(problem);
  const iterate = iterateFor(problem, omega);
  let rough: Chain | null = null;
  // Newton's method can circle between two patterns of yielded nodes; other nodes break the circle.
  for (const fineness of [1, 1.7, 3]) {
    const base = coarseNodes(problem, omega, fineness);
    const elastic = elasticChain(problem, control, base, omega);
    if (largestRatio(problem, elastic) <= 1) return refineElastic(problem, control, omega);
    const coarse = lowerYield(problem, control, elastic, iterate);
    const sharp = coarse && sharpen(problem, control, coarse, omega, iterate);
    if (sharp) return sharp;
    // Right to some thousandths: the last of them has the finest nodes.
    rough = coarse ?? rough;
  }
  if (rough) return rough;
  throw beyond();
}

/** Nodes on which the elastic answer is as exact as the plastic one on its own. */
const fineNodes = ({ length }: LapProblem, omega: number): Float64Array =>
  gradedMesh([0, length], { first: 0.1 / omega, growth: 0.1, largest: length });

const refineElastic = (problem: LapProblem, control: Control, omega: number): Chain =>
  elasticChain(problem, control, fineNodes(problem, omega), omega);

/** The elastic answer in its parts: used where a taper leaves no closed form. */
export const elasticPartsOf = (problem: LapProblem): ElasticParts =>
  elasticParts(problem, fineNodes(problem, fastestDecay(problem)));
