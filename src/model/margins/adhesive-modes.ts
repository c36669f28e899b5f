/**
 * Modes of the adhesive in shear, of one case in one gap state: the factor at which each is reached,
 * and where. See docs/method.md, margins.
 */

import { hasExactPlastic } from '../joint/lap-state.ts';
import type { AdhesiveInput, Factors } from '../joint/types.ts';
import { askedFactor, type Mode } from './asked.ts';
import {
  type BondStrength,
  bondStrength,
  carries,
  troughBond,
  troughReached,
} from './bond-strength.ts';
import { worstClockings } from './clocking.ts';
import { allowedShare, type CycleReached, cycleFactor } from './cyclic.ts';
import { type ModeResult, resultOf, UNLOADED } from './result.ts';
import { type ShearReached, shearFactor } from './shear-factor.ts';
import type { JointState } from './state.ts';
import { strengthClockings } from './strength-clocking.ts';

export interface AdhesiveOptions {
  /** The modes to compute; all when left out. */
  readonly only?: ReadonlySet<Mode>;
  /** Margins of the durability trough at or above this need not be found: the mode is left out. */
  readonly troughOfInterest?: number;
  /**
   * Margins of the ultimate strain at or above this need not be found: the mode is left out where the
   * bond is seen to carry as much.
   */
  readonly strengthOfInterest?: number;
}

/** Stands for a strength that lies beyond all interest. */
const BEYOND: BondStrength = {
  factor: Number.POSITIVE_INFINITY,
  bond: 0,
  end: 'mouth',
  wholeBondFlows: false,
};

export function adhesiveModes(
  state: JointState,
  adhesive: AdhesiveInput,
  factors: Factors,
  {
    only,
    troughOfInterest = Number.POSITIVE_INFINITY,
    strengthOfInterest = Number.POSITIVE_INFINITY,
  }: AdhesiveOptions = {},
): ModeResult[] {
  const { assembly, bonds, loadCase } = state;
  const { kind, loads } = loadCase;
  const results: ModeResult[] = [];
  const wanted = (mode: Mode): number | null =>
    only && !only.has(mode) ? null : askedFactor(mode, kind, factors);
  const add = (
    mode: Mode,
    asked: number,
    reached: number,
    bond: number,
    x: number,
    theta: number,
    { wholeBondFlows = false, end = 1 } = {},
  ): void => {
    if (!(reached < UNLOADED)) return;
    const part = assembly.bonds[bond]!.name;
    const reversed = end < 0 ? { end } : {};
    results.push(
      resultOf(state, { mode, part, reached, asked, x, theta, wholeBondFlows, ...reversed }),
    );
  };

  const reachedAt = (theta: number, share: number): ShearReached =>
    shearFactor(
      state.at(theta),
      bonds.map((bond) => bond.shearYield * share),
    );
  const worst = worstClockings(assembly.flat, loads, (theta) => reachedAt(theta, 1).factor);
  const first = worst[0];
  if (!first || !(first.factor < UNLOADED)) return results;

  const yieldAsked = wanted('adhesive-yield');
  if (yieldAsked !== null) {
    const { factor, bond, x } = reachedAt(first.theta, 1);
    add('adhesive-yield', yieldAsked, factor, bond, x, first.theta);
  }

  const cyclicAsked = wanted('cyclic-shear');
  if (cyclicAsked !== null && adhesive.fatigue && loadCase.cycles !== undefined) {
    const share = allowedShare(adhesive.fatigue, loadCase);
    const limits = bonds.map((bond) => bond.shearYield * share);
    const cycleAt = (theta: number): CycleReached => cycleFactor(state.at(theta), limits, loadCase);
    const [low] = worstClockings(assembly.flat, loads, (theta) => cycleAt(theta).factor);
    const { factor, bond, x, end } = cycleAt(low!.theta);
    add('cyclic-shear', cyclicAsked, factor, bond, x, low!.theta, { end });
  }

  const strainAsked = wanted('adhesive-strain');
  const troughAsked = wanted('durability-trough');
  if (strainAsked === null && troughAsked === null) return results;
  let strain: Parameters<typeof add> | null = null;
  let trough: Parameters<typeof add> | null = null;
  for (const theta of strengthClockings(state, worst)) {
    const problem = state.at(theta);
    const atYield = reachedAt(theta, 1);
    const enough =
      troughAsked === null
        ? 0
        : Math.min((1 + troughOfInterest) * troughAsked, trough?.[2] ?? Number.POSITIVE_INFINITY);
    // With one state where a search for the strength takes several.
    const most = strainAsked === null ? UNLOADED : (1 + strengthOfInterest) * strainAsked;
    const level = Math.max(most, enough);
    const isBeyond =
      level < UNLOADED && !hasExactPlastic(problem) && carries(problem, atYield, level);
    const strength = isBeyond ? BEYOND : bondStrength(problem, atYield);
    if (!strength) continue;
    const x = strength.end === 'root' ? 0 : assembly.overlap;
    if (strainAsked !== null && !isBeyond && (!strain || strength.factor < strain[2])) {
      strain = [
        'adhesive-strain',
        strainAsked,
        strength.factor,
        strength.bond,
        x,
        theta,
        { wholeBondFlows: strength.wholeBondFlows },
      ];
    }
    if (troughAsked !== null) {
      const reached = troughReached(problem, atYield, strength, enough);
      if (!trough || reached < trough[2]) {
        const bond = troughBond(problem, atYield, reached, strength.bond);
        trough = ['durability-trough', troughAsked, reached, bond, assembly.overlap / 2, theta];
      }
    }
  }
  if (strain) add(...strain);
  if (trough) add(...trough);
  return results;
}
