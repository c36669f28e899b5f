/** First yield and cyclic shear: the elastic shear lag up to a limit. */
import { type Step, step } from '../card.ts';
import { fatigueShare } from '../margins/adhesive-modes.card.ts';
import { cyclicShare } from '../margins/adhesive-modes.ts';
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
  const { coefficient, exponent } = adhesive.fatigue!;
  const cycles = state.loadCase.cycles!;
  const q = cyclicShare(coefficient, exponent, cycles);
  const share = step(fatigueShare, { C: coefficient, n: cycles, b: exponent }, q);
  return reachWorking(given, FATIGUE, [share], { q });
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
  const { steps, shear } = elasticSteps(given, problem, j, result.x, result.theta);
  const values = { ...more, tau_p: state.bonds[j]!.shearYield, tau_T: shear.thermal };
  return [
    ...bondSteps(given, j),
    ...before,
    ...steps,
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
