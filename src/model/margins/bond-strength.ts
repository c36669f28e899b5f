/**
 * What the bond carries at one clocking, by adhesive ultimate strain, and how long it keeps an
 * elastic trough. Exact for one bond in one channel, by the chain otherwise.
 */
import { chainCapacity } from '../chain/capacity.ts';
import { roughChain } from '../chain/solve.ts';
import { ModelError } from '../errors.ts';
import {
  chainState,
  elasticState,
  hasExactPlastic,
  type LapState,
  plasticState,
  resultant,
} from '../joint/lap-state.ts';
import type { LocalProblem } from '../joint/local-problem.ts';
import { findMinimum, findRoot } from '../numerics/root.ts';
import { capacityOf, troughFactor } from '../plastic/one-bond-capacity.ts';
import type { ShearReached } from './shear-factor.ts';
import { slipForSure } from './worn-for-sure.ts';

export interface BondStrength {
  readonly factor: number;
  readonly bond: number;
  readonly end: 'root' | 'mouth';
  /** True when the whole bond flows before an end reaches its slip at failure. */
  readonly wholeBondFlows: boolean;
  /** The state at failure, where the chain has found it. */
  readonly failed?: LapState;
}

/** Durability: the elastic trough's lowest shear over the yield shear may be this much. */
export const TROUGH_RATIO = 0.1;

const hasLoad = (problem: LocalProblem): boolean =>
  problem.channels.some((channel) => channel.load !== 0);

/** @param atYield where the bond first yields, from `shearFactor` with the yield stress as limit */
export function bondStrength(problem: LocalProblem, atYield: ShearReached): BondStrength | null {
  if (!hasLoad(problem)) return null;
  const end = atYield.x < problem.length / 2 ? 'root' : 'mouth';
  if (hasExactPlastic(problem)) {
    const exact = capacityOf(problem.channels[0]!, problem.bonds[0]!, problem.length);
    return { ...exact, bond: 0 };
  }
  if (atYield.factor === 0) {
    const bond = problem.bonds.findIndex(
      ({ slipAtFailure }, j) => slipForSure(problem, j) >= slipAtFailure,
    );
    if (bond >= 0) return { factor: 0, bond, end, wholeBondFlows: false };
    const worn = wornByTemperature(problem);
    if (worn) return worn;
  }
  const found = chainCapacity(problem, { bond: atYield.bond, end });
  const allPlastic = found.chain.regimes.every((cell) => cell.every((r) => r === 'plastic'));
  return {
    factor: Math.max(found.factor, 0),
    bond: found.bond,
    end: found.end,
    wholeBondFlows: allPlastic,
    failed: chainState(problem, found.chain),
  };
}

/**
 * A coarse mesh errs by thousandths of the load: what it carries with room, at more than is asked for, the bond
 * carries.
 */
const ROUGH_LOAD = 1.02;
const ROUGH_SLIP = 0.9;

/**
 * True when the bond is sure to carry a factor: a state of it is there, short of failure at every
 * end. False says nothing.
 */
export function carries(problem: LocalProblem, atYield: ShearReached, factor: number): boolean {
  if (factor <= atYield.factor) return atYield.factor > 0;
  try {
    const rough = roughChain(problem, factor * ROUGH_LOAD);
    if (rough && !failedEnd(problem, chainState(problem, rough), ROUGH_SLIP)) return true;
    return failedEnd(problem, plasticState(problem, factor), 1 - 1e-6) === null;
  } catch (error) {
    if (error instanceof ModelError) return false;
    throw error;
  }
}

/** The end that temperature alone takes to its slip at failure, if any. */
function wornByTemperature(problem: LocalProblem): BondStrength | null {
  const end = failedEnd(problem, plasticState(problem, 0), 1);
  return end && { factor: 0, ...end, wholeBondFlows: false };
}

/** An end whose slip is at this share of its slip at failure or beyond, if any. */
function failedEnd(
  problem: LocalProblem,
  state: LapState,
  share: number,
): Pick<BondStrength, 'bond' | 'end'> | null {
  for (let j = 0; j < problem.bonds.length; j++) {
    for (const end of ['root', 'mouth'] as const) {
      const x = end === 'root' ? 0 : problem.length;
      const slip = Math.hypot(...problem.channels.map((_c, q) => state.slip(q, j, x)));
      if (slip >= share * problem.bonds[j]!.slipAtFailure) return { bond: j, end };
    }
  }
  return null;
}

/** Lowest |shear| of bond j along the overlap over its yield stress. */
export function lowestRatio(problem: LocalProblem, state: LapState, j: number): number {
  const { length } = problem;
  const count = 48;
  const at = (i: number): number => (length * i) / count;
  if (problem.channels.length === 1) {
    const sign = Math.sign(state.shear(0, j, 0));
    for (let i = 1; i <= count; i++) {
      if (Math.sign(state.shear(0, j, at(i))) !== sign) return 0;
    }
  }
  let low = 0;
  let value = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= count; i++) {
    const shear = resultant(problem, state, j, at(i));
    if (shear < value) {
      value = shear;
      low = i;
    }
  }
  const x = findMinimum(
    (s) => resultant(problem, state, j, s),
    at(Math.max(low - 1, 0)),
    at(Math.min(low + 1, count)),
    length * 1e-6,
  );
  return Math.min(value, resultant(problem, state, j, x)) / problem.bonds[j]!.shearYield;
}

/** The same, worst over the bonds: each must keep its own trough. */
export function troughRatio(problem: LocalProblem, state: LapState): number {
  return Math.max(...problem.bonds.map((_bond, j) => lowestRatio(problem, state, j)));
}

/** Equal troughs are the first bond's: rounding must not choose. */
const EQUAL = 1e-9;

/** The bond whose trough is lost at a factor; `otherwise` where no state can be held there. */
export function troughBond(
  problem: LocalProblem,
  atYield: ShearReached,
  factor: number,
  otherwise: number,
): number {
  if (problem.bonds.length === 1 || !Number.isFinite(factor)) return 0;
  try {
    const state =
      factor <= atYield.factor ? elasticState(problem, factor) : plasticState(problem, factor);
    const ratios = problem.bonds.map((_bond, j) => lowestRatio(problem, state, j));
    return ratios[1]! > ratios[0]! * (1 + EQUAL) + EQUAL ? 1 : 0;
  } catch (error) {
    if (error instanceof ModelError || error instanceof RangeError) return otherwise;
    throw error;
  }
}

/**
 * Load factor at which the trough's lowest shear reaches a tenth of yield; the strength itself
 * where the trough outlasts the bond.
 *
 * @param enough a factor past which the caller has no interest: Infinity is returned when the trough
 *   is still there, which spares the search
 */
export function troughReached(
  problem: LocalProblem,
  atYield: ShearReached,
  strength: BondStrength,
  enough = Number.POSITIVE_INFINITY,
): number {
  if (hasExactPlastic(problem)) {
    const channel = problem.channels[0]!;
    return troughFactor(channel, problem.bonds[0]!, problem.length, TROUGH_RATIO, strength.factor);
  }
  const excessIn = (state: LapState): number => troughRatio(problem, state) - TROUGH_RATIO;
  const elastic = (factor: number): number => excessIn(elasticState(problem, factor));
  const plastic = (factor: number): number => {
    try {
      return excessIn(plasticState(problem, factor));
    } catch (error) {
      // Just below its limit load a bond that flows from end to end has no state that Newton's method
      // can hold; its trough is gone.
      if (error instanceof ModelError && factor > strength.factor * 0.99) return 1 - TROUGH_RATIO;
      throw error;
    }
  };
  if (elastic(0) > 0) return 0;
  const onset = Math.min(atYield.factor, strength.factor);
  if (elastic(onset) > 0) return findRoot(elastic, 0, onset, onset * 1e-9);
  if (onset === strength.factor) return onset;
  // Where the whole bond flows the trough is gone, whatever the failed state's last digits say.
  if (!strength.wholeBondFlows && strength.failed && excessIn(strength.failed) <= 0) {
    return strength.factor;
  }
  const top = strength.factor * (1 - 1e-9);
  const limit = Math.min(enough, top);
  if (limit <= onset || plastic(limit) <= 0) {
    return enough < top ? Number.POSITIVE_INFINITY : strength.factor;
  }
  return findRoot(plastic, onset, limit, limit * 1e-5);
}
