/** First yield and cyclic shear: the elastic shear lag up to a limit. */
import { type Step, step } from '../card.ts';
import type { CaseInput, SnLine } from '../joint/types.ts';
import { fatigueShare } from '../margins/adhesive-modes.card.ts';
import {
  higherRatio,
  lineShare,
  lowerRatio,
  reversedEnd,
  zeroMean,
} from '../margins/cyclic.card.ts';
import { allowedShare, ratiosOf } from '../margins/cyclic.ts';
import {
  FATIGUE,
  type Limit,
  reachBothWays,
  reachedCold,
  reachOneWay,
  YIELD,
} from '../margins/shear-factor.card.ts';
import { bondSteps } from './bond.ts';
import { bondIndex, type GivenMode, marginSteps } from './context.ts';
import { type ElasticShear, elasticSteps } from './lap.ts';

export function yieldWorking(given: GivenMode): Step[] {
  return reachWorking(given, YIELD, [], {});
}

export function cyclicWorking(given: GivenMode): Step[] {
  const { state, adhesive } = given;
  const line = adhesive.fatigue!;
  const q = allowedShare(line, state.loadCase);
  return reachWorking(given, FATIGUE, shareSteps(line, state.loadCase, q), { q });
}

/** The allowed share of yield, carried over where the case's ratio is not that of the line. */
function shareSteps(line: SnLine, loadCase: CaseInput, q: number): Step[] {
  const values = { C: line.coefficient, n: loadCase.cycles!, b: line.exponent };
  const onLine = line.coefficient * loadCase.cycles! ** -line.exponent;
  const [from, to] = ratiosOf(line, loadCase) ?? [0, 0];
  // Above yield there is nothing to carry over to a higher ratio: yield is the limit at both.
  if (from === to || (to > from && onLine >= 1)) return [step(fatigueShare, values, q)];
  const first = step(lineShare, values, onLine);
  if (to < from) return [first, step(lowerRatio, { q_L: onLine, R_L: from, R: to }, q)];
  const a = (onLine * (1 - from)) / (2 - onLine * (1 + from));
  return [first, step(zeroMean, { q_L: onLine, R_L: from }, a), step(higherRatio, { a, R: to }, q)];
}

function reachWorking(
  given: GivenMode,
  limit: Limit,
  before: readonly Step[],
  more: Readonly<Record<string, number>>,
): Step[] {
  const { state, result } = given;
  const j = bondIndex(state, result.part);
  const problem = state.at(result.theta);
  const { steps, shear: atPeak } = elasticSteps(given, problem, j, result.x, result.theta);
  const { end = 1 } = result;
  const shear = { ...atPeak, along: end * atPeak.along, around: end * atPeak.around };
  const ends = [atPeak.along, atPeak.around]
    .filter((tau) => end < 0 && tau !== 0)
    .map((tau) => step(reversedEnd, { R: end, tau }, end * tau));
  const values = { ...more, tau_p: state.bonds[j]!.shearYield, tau_T: shear.thermal };
  return [
    ...bondSteps(given, j),
    ...before,
    ...steps,
    ...ends,
    reachStep(limit, values, shear, result.reached),
    ...marginSteps(given),
  ];
}

function reachStep(
  limit: Limit,
  values: Readonly<Record<string, number>>,
  { thermal, along, around }: ElasticShear,
  reached: number,
): Step {
  if (reached === 0) return step(reachedCold(limit), values, reached);
  if (along !== 0 && around !== 0) {
    const both = reachBothWays(limit, thermal * along <= 0);
    return step(both, { ...values, tau_1: along, tau_theta: around }, reached);
  }
  if (thermal !== 0 && along === 0) {
    return step(reachBothWays(limit, true), { ...values, tau_1: 0, tau_theta: around }, reached);
  }
  return step(reachOneWay(limit), { ...values, tau_1: along === 0 ? around : along }, reached);
}
