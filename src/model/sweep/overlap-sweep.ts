/**
 * Strength of the joint against its overlap, and the plateau: the shortest overlap whose bond is
 * within 2 % of a very long one.
 */
import { assemble } from '../joint/assembly.ts';
import type { JointInput } from '../joint/types.ts';
import { BOND_MODES, type Mode, WALL_MODES } from '../margins/asked.ts';
import { damageRow } from '../margins/cyclic-damage.ts';
import { overStates, type Question } from '../margins/over-states.ts';
import type { ModeResult } from '../margins/result.ts';
import { severestFirst } from '../margins/severest-first.ts';
import type { JointState } from '../margins/state.ts';
import { refineStrength } from '../margins/strength-clocking.ts';
import { findRoot } from '../numerics/root.ts';

/** Strength over the load asked for, and what sets it. */
export interface Strength {
  readonly ratio: number;
  readonly mode: ModeResult | null;
  /** Index of the case that sets it; −1 when no case loads the joint. */
  readonly caseIndex: number;
}

interface CaseMode {
  readonly mode: ModeResult;
  readonly caseIndex: number;
  readonly state: JointState;
}

const bondOnly: ReadonlySet<Mode> = new Set(['adhesive-strain']);
/** All but the durability trough, which is a rule of length. */
const service: ReadonlySet<Mode> = new Set<Mode>([...BOND_MODES, ...WALL_MODES]);

const ratioOf = ({ reached, asked }: ModeResult): number => reached / asked;

const lowest = (modes: readonly CaseMode[]): Strength =>
  modes.reduce<Strength>(
    (low, { mode, caseIndex }) =>
      ratioOf(mode) < low.ratio ? { ratio: ratioOf(mode), mode, caseIndex } : low,
    { ratio: Number.POSITIVE_INFINITY, mode: null, caseIndex: -1 },
  );

/** The lowest, the bond's strength at its own worst clocking. */
function lowestBond(modes: readonly CaseMode[]): Strength {
  const low = lowest(modes);
  const found = modes.find(({ mode }) => mode === low.mode);
  if (!found) return low;
  const mode = refineStrength(found.state, found.mode);
  return { ...low, ratio: ratioOf(mode), mode };
}

/** The joint with another overlap, all else as it is. */
export const withOverlap = (joint: JointInput, overlap: number): JointInput => ({
  ...joint,
  overlap,
});

function modesAt(question: Question, overlap: number, only: ReadonlySet<Mode>): CaseMode[] {
  const sized = { ...question, joint: withOverlap(question.joint, overlap) };
  // Only the lowest margin of all matters: what lies above it is not followed into the plastic range.
  let low = Number.POSITIVE_INFINITY;
  // The bond's own strength is asked for as well, whatever else is lower.
  let bond = Number.POSITIVE_INFINITY;
  const ofInterest = (mode: Mode, known: number): number =>
    mode === 'adhesive-strain' ? bond : Math.min(low, known);
  const found: CaseMode[] = [];
  for (const { caseIndex, state, modes } of overStates(
    sized,
    { only, ofInterest, spareStrength: true },
    severestFirst(sized),
  )) {
    for (const mode of modes) {
      low = Math.min(low, mode.margin);
      if (mode.mode === 'adhesive-strain') bond = Math.min(bond, mode.margin);
      found.push({ mode, caseIndex, state });
    }
  }
  const sum = only.has('cyclic-damage') ? damageRow(sized) : null;
  if (sum) found.push({ mode: sum.result, caseIndex: sum.caseIndex, state: sum.state });
  return found;
}

/** Bond strength over the load asked for: adhesive ultimate strain, worst over cases and gaps. */
export const bondStrengthAt = (question: Question, overlap: number): Strength =>
  lowestBond(modesAt(question, overlap, bondOnly));

/**
 * Bond strength, and the lowest of all modes asked for.
 * @param only must hold `adhesive-strain`; all but the durability trough when left out
 */
export function strengthAt(
  question: Question,
  overlap: number,
  only: ReadonlySet<Mode> = service,
): { readonly bond: number; readonly all: Strength } {
  const modes = modesAt(question, overlap, only);
  const bond = lowestBond(modes.filter(({ mode }) => mode.mode === 'adhesive-strain'));
  const all = lowest(modes);
  return { bond: bond.ratio, all: bond.ratio < all.ratio ? bond : all };
}

export const PLATEAU_SHARE = 0.98;
/** Longest overlap that the project file allows, mm. */
export const LONGEST_OVERLAP = 500;
export const SHORTEST_OVERLAP = 1;

export interface Plateau {
  /** Null when the bond still gains at the longest overlap. */
  readonly overlap: number | null;
  readonly strength: Strength;
}

/**
 * @param looked called after each overlap that was looked at
 * @throws ModelError when the joint cannot be assembled
 */
export function findPlateau(question: Question, looked?: () => void): Plateau {
  assemble(question.joint, 'nominal');
  const strengthOf = (overlap: number): Strength => {
    const found = bondStrengthAt(question, overlap);
    looked?.();
    return found;
  };
  const strength = strengthOf(LONGEST_OVERLAP);
  if (!Number.isFinite(strength.ratio) || strength.ratio <= 0) return { overlap: null, strength };
  const level = PLATEAU_SHARE * strength.ratio;
  const excess = (overlap: number): number => strengthOf(overlap).ratio - level;
  // Still growing: the bond is 2 % short of its strength at 98 % of the longest overlap.
  if (excess(LONGEST_OVERLAP * PLATEAU_SHARE) <= 0) return { overlap: null, strength };
  if (excess(SHORTEST_OVERLAP) >= 0) return { overlap: SHORTEST_OVERLAP, strength };
  // The strength rises with the overlap up to the plateau: bracket from below, then close in.
  let low = SHORTEST_OVERLAP;
  let high = LONGEST_OVERLAP;
  for (let guess = 2; guess < LONGEST_OVERLAP; guess *= 2) {
    if (excess(guess) >= 0) {
      high = guess;
      break;
    }
    low = guess;
  }
  return { overlap: findRoot(excess, low, high, 0.01), strength };
}
