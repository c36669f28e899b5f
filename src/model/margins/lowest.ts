/**
 * The lowest margin of a joint, of one load case or of one corner, and what sets it.
 *
 * A corner is one state: a case in its surroundings, in a gap state. Its lowest margin is found from
 * that state alone, so that it is the same to the last bit whether one corner is asked for, a load
 * case or the joint. What other corners have shown already only decides which are left out.
 */
import { allModes } from './all-modes.ts';
import type { Mode } from './asked.ts';
import type { GoverningRow } from './governing.ts';
import { type Question, type StateName, statesOf } from './over-states.ts';
import { byMargin, type ModeResult } from './result.ts';
import { severestFirst } from './severest-first.ts';
import { type JointState, jointState } from './state.ts';
import { refineStrength } from './strength-clocking.ts';

/** How far the strength's own worst clocking can lie below that of the candidates, in share. */
const REFINES = 0.1;

/**
 * Modes whose search stops sooner when less is of interest: its last digits then differ. Their
 * tolerances are a millionth of the factor, for the trough a hundred-thousandth.
 */
const SEARCHED: ReadonlySet<Mode> = new Set<Mode>([
  'adhesive-peel',
  'interlaminar',
  'durability-trough',
]);
/** Those tolerances, with room. */
const ROUGH = 1e-4;

const above = (margin: number): number => margin + ROUGH * (1 + Math.abs(margin));

const solve = ({ joint, adhesive, cases, settings }: Question, name: StateName): JointState =>
  jointState(joint, adhesive, cases[name.caseIndex]!, name.gapState, settings);

interface Lowest {
  readonly result: ModeResult;
  /** False when the figure is that of a search cut short, or hangs on one. */
  readonly exact: boolean;
}

/**
 * The lowest margin of one state, the shear strength at its own worst clocking where that can be it.
 * @param below margins at or above this need not be found
 */
function lowestOf(
  state: JointState,
  { adhesive, settings }: Question,
  below: number,
): Lowest | null {
  const results = allModes(state, adhesive, settings.factors, {
    ofInterest: (_mode, known) => Math.min(known, below),
    spareStrength: true,
  });
  let lowest: ModeResult | null = null;
  for (const result of results) {
    if (!lowest || byMargin(result, lowest) < 0) lowest = result;
  }
  if (!lowest) return null;
  const strain = results.find(({ mode }) => mode === 'adhesive-strain');
  if (strain && (strain.reached * (1 - REFINES)) / strain.asked - 1 < lowest.margin) {
    const refined = refineStrength(state, strain);
    if (byMargin(refined, lowest) < 0) lowest = refined;
  }
  const reach = above(lowest.margin);
  const exact = results.every(({ mode, margin }) => margin > reach || !SEARCHED.has(mode));
  return { result: lowest, exact };
}

/** The lowest margin of one corner; null when no load acts on the joint in it. */
export function cornerOf(question: Question, name: StateName): GoverningRow | null {
  const state = solve(question, name);
  const lowest = lowestOf(state, question, Number.POSITIVE_INFINITY);
  return lowest && { result: lowest.result, caseIndex: name.caseIndex, state };
}

/** The same where it is below a margin; what is not is left as soon as that is known. */
function cornerBelow(question: Question, name: StateName, below: number): GoverningRow | null {
  if (below === Number.POSITIVE_INFINITY) return cornerOf(question, name);
  const near = above(below);
  const state = solve(question, name);
  const rough = lowestOf(state, question, near);
  if (!rough || rough.result.margin >= near) return null;
  // From a fresh state: a search starts where the one before it in the same state has ended.
  return rough.exact
    ? { result: rough.result, caseIndex: name.caseIndex, state }
    : cornerOf(question, name);
}

/** Margins equal to rounding have the same key: the plainer name then stands. */
const key = ({ result }: GoverningRow): number => Math.round(result.margin * 1e9);

const PLAINEST_FIRST = ['nominal', 'min', 'max', 'thin-side', 'thick-side'];

/** Lowest first; of corners that are equal to rounding the plainest, then the earliest. */
export function byCorner(a: GoverningRow, b: GoverningRow): number {
  const place = ({ result }: GoverningRow): number => PLAINEST_FIRST.indexOf(result.gapState);
  return key(a) - key(b) || place(a) - place(b) || a.caseIndex - b.caseIndex;
}

/** Of two corners of one load case, the one that stands for it. */
export const lowerOf = (a: GoverningRow, b: GoverningRow): GoverningRow =>
  byCorner(a, b) <= 0 ? a : b;

export interface LowestOptions {
  /** What the corners of one load case share; all are of one when left out. */
  readonly groupOf?: (caseIndex: number) => unknown;
  /** Told after each corner how many are judged, of how many. */
  readonly judged?: (corners: number, of: number) => void;
}

/**
 * The lowest corner of some: of each load case the one that stands for it, of these the lowest.
 * @returns null when no load acts on the joint
 * @throws ModelError naming the input that does not fit
 */
export function lowestCorner(
  question: Question,
  names: readonly StateName[] = statesOf(question),
  { groupOf = () => null, judged }: LowestOptions = {},
): GoverningRow | null {
  const ofGroup = new Map<unknown, GoverningRow>();
  let below = Number.POSITIVE_INFINITY;
  for (const [i, name] of severestFirst(question, names).entries()) {
    const corner = cornerBelow(question, name, below);
    judged?.(i + 1, names.length);
    if (!corner) continue;
    const group = groupOf(name.caseIndex);
    const known = ofGroup.get(group);
    const lower = known ? lowerOf(known, corner) : corner;
    ofGroup.set(group, lower);
    below = Math.min(below, lower.result.margin);
  }
  return [...ofGroup.values()].reduce<GoverningRow | null>(
    (low, one) =>
      low === null ||
      one.result.margin < low.result.margin ||
      (one.result.margin === low.result.margin && one.caseIndex < low.caseIndex)
        ? one
        : low,
    null,
  );
}
