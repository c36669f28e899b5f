/**
 * States of a joint in the order in which the lowest margins are likely to come first: what comes
 * later is then left out sooner. The order decides how long a search takes, never what it finds.
 */
import type { CaseInput, GapState } from '../joint/types.ts';
import { askedFactor } from './asked.ts';
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

/** First yield of the bond over what is asked of failure. */
function yieldOverAsked(question: Question, loadCase: CaseInput): number {
  const { joint, adhesive, settings } = question;
  const state = jointState(joint, adhesive, loadCase, 'nominal', settings);
  const limits = state.bonds.map(({ shearYield }) => shearYield);
  const thetas = state.assembly.flat ? [0] : CLOCKINGS;
  const factors = thetas.map((theta) => shearFactor(state.at(theta), limits).factor);
  return Math.min(...factors) / askedFactor('adhesive-strain', loadCase.kind, settings.factors)!;
}

/** @throws ModelError naming the input that does not fit */
export function severestFirst(
  question: Question,
  states: readonly StateName[] = statesOf(question),
): StateName[] {
  if (states.length < 2) return [...states];
  const indices = new Set(states.map(({ caseIndex }) => caseIndex));
  const severity = new Map(
    [...indices].map((i) => [i, yieldOverAsked(question, question.cases[i]!)] as const),
  );
  const of = ({ caseIndex }: StateName): number => severity.get(caseIndex)!;
  return states.toSorted(
    (a, b) =>
      rank[a.gapState] - rank[b.gapState] ||
      (of(a) < of(b) ? -1 : of(a) > of(b) ? 1 : a.caseIndex - b.caseIndex),
  );
}
