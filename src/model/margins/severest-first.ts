/**
 * States of a joint in the order in which the lowest margins are likely to come first: what comes
 * later is then left out sooner. The order decides how long a search takes, never what it finds.
 */
import type { CaseInput, GapState } from '../joint/types.ts';
import { askedFactor } from './asked.ts';
import { allowedShare } from './cyclic.ts';
import { type Question, type StateName, statesOf } from './over-states.ts';
import { shearFactor } from './shear-factor.ts';
import { jointState } from './state.ts';

/** The extremes bound most modes; what lies between them seldom sets one. */
const rank: Readonly<Record<GapState, number>> = {
  min: 0,
  max: 0,
  nominal: 1,
  'thin-side': 2,
  'thick-side': 2,
};

/** In and across the plane of bending: no search for the worst, an order needs none. */
const CLOCKINGS = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2];

/** An ultimate case is not asked for yield, and a bond that flows carries about this much more. */
const BEYOND_YIELD = 2;

/**
 * Which margins are to come early: the lowest of all, or those of failure. The latter are the longest
 * to find, and a cyclic case with small loads is far from them.
 */
export type Severity = 'lowest' | 'failure';

/** About how much of what is asked the bond has: an estimate from its first yield. */
function estimate(question: Question, loadCase: CaseInput, severity: Severity): number {
  const { joint, adhesive, settings } = question;
  const { factors } = settings;
  const state = jointState(joint, adhesive, loadCase, 'nominal', settings);
  const limits = state.bonds.map(({ shearYield }) => shearYield);
  const thetas = state.assembly.flat ? [0] : CLOCKINGS;
  const least = Math.min(...thetas.map((theta) => shearFactor(state.at(theta), limits).factor));
  const failure = askedFactor('adhesive-strain', loadCase.kind, factors)!;
  if (severity === 'failure') return least / failure;
  const asked = askedFactor('adhesive-yield', loadCase.kind, factors);
  if (asked === null) return (least * BEYOND_YIELD) / failure;
  const { fatigue } = adhesive;
  if (!fatigue || loadCase.cycles === undefined) return least / asked;
  return (least * allowedShare(fatigue, loadCase)) / asked;
}

/** @throws ModelError naming the input that does not fit */
export function severestFirst(
  question: Question,
  states: readonly StateName[] = statesOf(question),
  severity: Severity = 'lowest',
): StateName[] {
  if (states.length < 2) return [...states];
  const indices = new Set(states.map(({ caseIndex }) => caseIndex));
  const estimates = new Map(
    [...indices].map((i) => [i, estimate(question, question.cases[i]!, severity)] as const),
  );
  const of = ({ caseIndex }: StateName): number => estimates.get(caseIndex)!;
  return states.toSorted(
    (a, b) =>
      rank[a.gapState] - rank[b.gapState] ||
      (of(a) < of(b) ? -1 : of(a) > of(b) ? 1 : a.caseIndex - b.caseIndex),
  );
}
