/**
 * Several cyclic cases on one joint: each takes its part of the life, and the parts add up after Palmgren
 * and Miner. The margin is that of one factor on the loads of all of them.
 */
import { type Damage, minerSum } from '../coupons/blocks.ts';
import { gapStates } from '../joint/assembly.ts';
import type { CaseInput, GapState, SnLine } from '../joint/types.ts';
import { findRoot } from '../numerics/root.ts';
import { askedFactor } from './asked.ts';
import { worstClockings } from './clocking.ts';
import { allowedShare, cycleFactor, logLife, peakShare } from './cyclic.ts';
import type { GoverningRow } from './governing.ts';
import type { Question } from './over-states.ts';
import { type DamageShare, resultOf, UNLOADED } from './result.ts';
import { type JointState, jointState } from './state.ts';

/** A cyclic case in one of its surroundings, in a gap state. */
interface Block {
  readonly caseIndex: number;
  readonly occasion: string;
  readonly state: JointState;
  readonly limits: readonly number[];
}

interface Peak {
  readonly block: Block;
  readonly share: number;
  readonly bond: number;
  readonly x: number;
  readonly theta: number;
  /** Natural logarithm of cycles over life. */
  readonly log: number;
}

/** No load on the joint is no cycle, whatever the temperature does. */
const isLoaded = ({ loads }: CaseInput): boolean => Object.values(loads).some((load) => load !== 0);

function blocksOf({ joint, adhesive, cases, settings }: Question, gapState: GapState): Block[] {
  return cases.flatMap((one, caseIndex): Block[] => {
    if (one.kind !== 'cyclic' || one.cycles === undefined || !isLoaded(one)) return [];
    const state = jointState(joint, adhesive, one, gapState, settings);
    const limits = state.bonds.map(({ shearYield }) => shearYield);
    return [{ caseIndex, occasion: one.occasion ?? `case ${caseIndex}`, state, limits }];
  });
}

/** The worst place of a block under its loads times a factor. */
function peakOf(line: SnLine, block: Block, factor: number): Peak {
  const { state, limits } = block;
  const { assembly, loadCase } = state;
  const at = (theta: number) => peakShare(state.at(theta), limits, loadCase, factor);
  const [low] = worstClockings(assembly.flat, loadCase.loads, (theta) => 1 / at(theta).share);
  const { theta } = low!;
  const { share, bond, x } = at(theta);
  const log = Math.log(loadCase.cycles!) - logLife(line, loadCase, share);
  return { block, share, bond, x, theta, log };
}

/** Of each occasion the surroundings that take most of the life; the order is that of the cases. */
function peaksOf(line: SnLine, blocks: readonly Block[], factor: number): Peak[] {
  const worst = new Map<string, Peak>();
  for (const block of blocks) {
    const peak = peakOf(line, block, factor);
    const known = worst.get(block.occasion);
    if (!known || peak.log > known.log) worst.set(block.occasion, peak);
  }
  return [...worst.values()];
}

/** Natural logarithm of the damage sum; each occasion at its own worst place, so that it is an upper limit. */
function logSum(peaks: readonly Peak[]): number {
  const most = Math.max(...peaks.map(({ log }) => log));
  if (!Number.isFinite(most)) return most;
  return most + Math.log(peaks.reduce((sum, { log }) => sum + Math.exp(log - most), 0));
}

/** Stands for damage beyond all numbers in the search for a root. */
const BEYOND = 1e6;

/** Factor on all loads at which the damage is 1. */
function factorOf(line: SnLine, blocks: readonly Block[]): number {
  const alone = blocks.map(({ state, limits }) => {
    const { assembly, loadCase } = state;
    const share = allowedShare(line, loadCase);
    const allowed = limits.map((limit) => limit * share);
    const at = (theta: number): number => cycleFactor(state.at(theta), allowed, loadCase).factor;
    return worstClockings(assembly.flat, loadCase.loads, at)[0]!.factor;
  });
  const most = Math.min(...alone);
  if (!(most < UNLOADED)) return most;
  // The sum to the power of the exponent is nearly straight in the factor.
  const excess = (factor: number): number =>
    Math.min(BEYOND, Math.exp(line.exponent * logSum(peaksOf(line, blocks, factor)))) - 1;
  if (excess(most) <= 0) return most;
  return excess(0) >= 0 ? 0 : findRoot(excess, 0, most, 1e-12 * most);
}

function sharesOf(peaks: readonly Peak[], asked: readonly Peak[]): DamageShare[] {
  return peaks.map(({ block, share, log }) => {
    const same = asked.find(({ block: { occasion } }) => occasion === block.occasion)!;
    const { cycles, ratio } = block.state.loadCase;
    return {
      caseIndex: block.caseIndex,
      occasion: block.occasion,
      cycles: cycles!,
      ratio,
      peak: share,
      life: Math.exp(Math.log(cycles!) - log),
      lifeAsked: Math.exp(Math.log(cycles!) - same.log),
    };
  });
}

/**
 * The damage of all cyclic cases together, in the worst gap state; null where fewer than two occasions load
 * the joint, or the adhesive has no S-N line: one occasion alone is cyclic shear.
 * @throws ModelError naming the input that does not fit
 */
export function damageRow(question: Question): GoverningRow | null {
  const line = question.adhesive.fatigue;
  // A line without slope knows no damage below its stress: nothing adds up.
  if (!line || line.exponent === 0) return null;
  const asked = askedFactor('cyclic-damage', 'cyclic', question.settings.factors)!;
  const states = gapStates(question.joint).map((gapState) => {
    const blocks = blocksOf(question, gapState);
    return { gapState, blocks, log: logSum(peaksOf(line, blocks, asked)) };
  });
  const { blocks: some } = states[0]!;
  if (new Set(some.map(({ occasion }) => occasion)).size < 2) return null;
  let lowest: { readonly factor: number; readonly blocks: readonly Block[] } | null = null;
  // The most damaged first: the others need a search only where they are worse at its factor.
  for (const { blocks } of states.toSorted((a, b) => b.log - a.log)) {
    if (lowest && logSum(peaksOf(line, blocks, lowest.factor)) <= 0) continue;
    const factor = factorOf(line, blocks);
    if (!lowest || factor < lowest.factor) lowest = { factor, blocks };
  }
  const { factor, blocks } = lowest!;
  if (!(factor < UNLOADED)) return null;
  const peaks = peaksOf(line, blocks, factor);
  const worst = peaks.reduce((a, b) => (b.log > a.log ? b : a));
  const { state, caseIndex } = worst.block;
  const result = resultOf(state, {
    mode: 'cyclic-damage',
    part: state.assembly.bonds[worst.bond]!.name,
    reached: factor,
    asked,
    x: worst.x,
    theta: worst.theta,
    wholeBondFlows: false,
    damage: sharesOf(peaks, peaksOf(line, blocks, asked)),
  });
  return { result, caseIndex, state };
}

/** The damage sum under the loads that are asked for; null where one of them is above yield. */
export const damageAsked = (shares: readonly DamageShare[]): Damage | null =>
  shares.every(({ lifeAsked }) => lifeAsked > 0)
    ? minerSum(shares.map(({ cycles, lifeAsked }) => ({ cycles, life: lifeAsked })))
    : null;
