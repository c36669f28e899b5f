/** Strength of the bond by adhesive ultimate strain, and its durability trough. */
import { nearly, type Step, step } from '../card.ts';
import { elasticState, hasExactPlastic, type LapState, plasticState } from '../joint/lap-state.ts';
import type { LocalProblem } from '../joint/local-problem.ts';
import { type BondLaw, type Channel, slipAtYield, thermalMismatch } from '../lap/problem.ts';
import {
  carried,
  resultantSlip,
  slipUse,
  troughGone,
  troughOutlasts,
  troughUse,
  wornByTemperature,
  wornForSure,
} from '../margins/bond-strength.card.ts';
import {
  type BondStrength,
  bondStrength,
  lowestRatio,
  TROUGH_RATIO,
} from '../margins/bond-strength.ts';
import { type ShearReached, shearFactor } from '../margins/shear-factor.ts';
import { slipForSure } from '../margins/worn-for-sure.ts';
import { endSlip, endSlope, flow, troughShear } from '../plastic/one-bond.card.ts';
import { type OneBondPlastic, solvePlastic } from '../plastic/one-bond.ts';
import { decayRate } from '../shear-lag/one-bond.ts';
import { bondSteps, slipSteps } from './bond.ts';
import { type Given, type GivenMode, marginSteps } from './context.ts';
import { loadSteps, mismatchStep, wallSteps } from './lap.ts';

/** Searches that end on the numerical solution stop near this in the slip or the factor. */
const CHAIN = { tolerance: 1e-6, why: 'Newton iteration of the numerical solution' };
const EXACT = { tolerance: 1e-9, why: 'root of the exact solution' };
const TROUGH = {
  tolerance: 2e-3,
  why: 'the factor is sought to 1e-5, near which the trough closes fast',
};

export function strainWorking(given: GivenMode): Step[] {
  return [...strengthSteps(given, given.result.theta), ...marginSteps(given)];
}

/** The strength at a clocking: the last card but the margin's is its criterion, or the flow load. */
export function strengthSteps(given: Given, theta: number): Step[] {
  const { state } = given;
  const problem = state.at(theta);
  const strength = strengthAt(problem);
  if (!strength) return [];
  const j = strength.bond;
  return [
    ...bondSteps(given, j),
    ...slipSteps(given, j),
    ...loadSteps(given, problem, theta),
    ...failureSteps(given, problem, strength, theta),
  ];
}

export const yieldAt = (problem: LocalProblem): ShearReached =>
  shearFactor(
    problem,
    problem.bonds.map(({ shearYield }) => shearYield),
  );

export const strengthAt = (problem: LocalProblem): BondStrength | null =>
  bondStrength(problem, yieldAt(problem));

function failureSteps(
  given: Given,
  problem: LocalProblem,
  strength: BondStrength,
  theta: number,
): Step[] {
  const j = strength.bond;
  const bond = problem.bonds[j]!;
  if (strength.factor === 0) return [wornStep(problem, strength)];
  if (!hasExactPlastic(problem)) return chainSteps(problem, strength);
  const channel = problem.channels[0]!;
  const walls = wallSteps(given, problem, 0, theta);
  if (strength.wholeBondFlows) {
    return [...walls, flowStep(problem, channel, bond, strength.factor)];
  }
  const { factor, end } = strength;
  const loaded = { ...channel, load: channel.load * factor };
  const solved = solvePlastic(loaded, bond, problem.length);
  const slip = Math.abs(end === 'root' ? solved.slipAtRoot : solved.slipAtMouth);
  return [
    ...walls,
    ...endSteps(given, problem, solved, end, factor),
    step(slipUse, { s: slip, s_u: bond.slipAtFailure }, slip / bond.slipAtFailure, {
      target: 1,
      ...EXACT,
    }),
    carriedStep(problem, plasticState(problem, factor), factor),
  ];
}

/** Equilibrium of the state at failure, in the direction that carries more. */
function carriedStep(problem: LocalProblem, lap: LapState, factor: number): Step {
  const loads = problem.channels.map(({ load }) => Math.abs(load));
  const q = loads.indexOf(Math.max(...loads));
  const of = (j: number): number => (j < problem.bonds.length ? lap.outerForce(q, j, 0) : 0);
  const values = { N_1: of(0), N_2: of(1), P: problem.channels[q]!.load };
  return nearly(step(carried, values, factor), {
    relative: 1e-6,
    why: 'equilibrium of the numerical solution at failure',
  });
}

const flowStep = (problem: LocalProblem, channel: Channel, bond: BondLaw, factor: number): Step =>
  step(
    flow,
    {
      a: channel.levers[0]!,
      c: bond.width,
      tau_p: bond.shearYield,
      L: problem.length,
      P: channel.load,
    },
    factor,
  );

/** Slope and slip of the exact solution at an end. */
function endSteps(
  given: Given,
  problem: LocalProblem,
  solved: OneBondPlastic,
  end: 'root' | 'mouth',
  factor: number,
): Step[] {
  const channel = problem.channels[0]!;
  const bond = problem.bonds[0]!;
  const atRoot = end === 'root';
  const length = atRoot ? solved.plasticAtRoot : solved.plasticAtMouth;
  const slip = Math.abs(atRoot ? solved.slipAtRoot : solved.slipAtMouth);
  if (length === 0) return [];
  const epsilon = thermalMismatch(channel, 0);
  const K = atRoot ? channel.outers[0]!.stiffness : channel.tube.stiffness;
  const strain = (factor * channel.levers[0]! * channel.load) / K;
  const g = Math.abs(atRoot ? strain - epsilon : strain + epsilon);
  const along = problem.axial === 0;
  return [
    ...(along ? [mismatchStep(given, channel)] : []),
    step(
      endSlope(end),
      { lambda: factor, a: channel.levers[0]!, P: channel.load, K, epsilon_T: epsilon },
      g,
    ),
    step(
      endSlip,
      { s_e: slipAtYield(bond), g, c_p: length, omega: decayRate(channel, bond) },
      slip,
    ),
  ];
}

function slipOf(problem: LocalProblem, state: LapState, j: number, end: 'root' | 'mouth') {
  const x = end === 'root' ? 0 : problem.length;
  const of = (q: number): number => (q < 0 ? 0 : state.slip(q, j, x));
  const [along, around] = [of(problem.axial), of(problem.hoop)];
  return { along, around, size: Math.hypot(along, around) };
}

function wornStep(problem: LocalProblem, { bond, end }: BondStrength): Step {
  const atLeast = slipForSure(problem, bond);
  const { slipAtFailure } = problem.bonds[bond]!;
  if (atLeast >= slipAtFailure) return step(wornForSure, { s_min: atLeast, s_u: slipAtFailure }, 0);
  const { size } = slipOf(problem, plasticState(problem, 0), bond, end);
  return step(wornByTemperature, { s: size, s_u: slipAtFailure }, 0);
}

function chainSteps(problem: LocalProblem, { bond: j, end, failed, factor }: BondStrength): Step[] {
  const lap = failed ?? plasticState(problem, factor);
  const { along, around, size } = slipOf(problem, lap, j, end);
  const limit = problem.bonds[j]!.slipAtFailure;
  return [
    step(resultantSlip, { s_x: along, s_theta: around }, size),
    step(slipUse, { s: size, s_u: limit }, size / limit, { target: 1, ...CHAIN }),
    carriedStep(problem, lap, factor),
  ];
}

export function troughWorking(given: GivenMode): Step[] {
  const { state, result } = given;
  const problem = state.at(result.theta);
  const strength = strengthAt(problem)!;
  const { reached } = result;
  if (Math.abs(reached - strength.factor) <= 1e-9 * reached) {
    const outlasts = step(troughOutlasts, { lambda_u: strength.factor }, reached);
    return [...strengthSteps(given, result.theta), outlasts, ...marginSteps(given)];
  }
  return [
    ...bondSteps(given, strength.bond),
    ...loadSteps(given, problem, result.theta),
    ...troughSteps(given, problem, reached, result.theta),
    ...marginSteps(given),
  ];
}

/** Lowest shear of the bond that keeps the least of its trough, and its yield shear. */
function troughOf(problem: LocalProblem, lap: LapState) {
  const [worst] = problem.bonds
    .map(({ shearYield }, j) => {
      const ratio = lowestRatio(problem, lap, j);
      return { ratio, low: ratio * shearYield, limit: shearYield };
    })
    .sort((a, b) => b.ratio - a.ratio);
  return worst!;
}

function troughSteps(given: Given, problem: LocalProblem, factor: number, theta: number): Step[] {
  if (factor === 0) {
    const { low, limit } = troughOf(problem, plasticState(problem, 0));
    return [step(troughGone, { tau_min: low, tau_p: limit }, 0)];
  }
  const criterion = { target: TROUGH_RATIO, ...TROUGH };
  if (!hasExactPlastic(problem)) {
    const elastic = factor <= yieldAt(problem).factor;
    const lap = elastic ? elasticState(problem, factor) : plasticState(problem, factor);
    const { low, limit, ratio } = troughOf(problem, lap);
    return [step(troughUse, { tau_min: low, tau_p: limit }, ratio, criterion)];
  }
  const [channel, bond] = [problem.channels[0]!, problem.bonds[0]!];
  const loaded = { ...channel, load: channel.load * factor };
  const solved = solvePlastic(loaded, bond, problem.length);
  const low = solved.lowestShear;
  const steps: Step[] = [];
  const sameWay = solved.slipAtRoot * solved.slipAtMouth > 0;
  if (solved.plasticAtRoot > 0 && solved.plasticAtMouth > 0 && sameWay) {
    const l = problem.length - solved.plasticAtRoot - solved.plasticAtMouth;
    const values = { tau_p: bond.shearYield, omega: decayRate(channel, bond), l };
    steps.push(...wallSteps(given, problem, 0, theta), step(troughShear, values, low));
  }
  const ratio = low / bond.shearYield;
  return [...steps, step(troughUse, { tau_min: low, tau_p: bond.shearYield }, ratio, criterion)];
}
