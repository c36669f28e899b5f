/**
 * What one bond in one channel carries at most, with the thermal stress held fixed.
 */
import type { BondLaw, Channel } from '../lap/problem.ts';
import { findRoot } from '../numerics/root.ts';
import { findPlastic, flowLoad, solvePlastic } from './one-bond.ts';

export interface Capacity {
  /** Factor on the channel's load. */
  readonly factor: number;
  readonly end: 'root' | 'mouth';
  /** True when the whole bond flows before any end reaches the slip at failure. */
  readonly wholeBondFlows: boolean;
}

const times = (channel: Channel, factor: number): Channel => ({
  ...channel,
  load: channel.load * factor,
});

/**
 * Shares of the flow load just below it: the equations still have a solution there, but of walls that hardly give
 * rounding may leave none at the nearest.
 */
const NEARLY = [1 - 1e-12, 1 - 1e-9, 1 - 1e-6];

/** The highest factor just below the flow load at which there is a state. */
function nearFlow(channel: Channel, bond: BondLaw, length: number, flow: number): number {
  const found = NEARLY.find((share) => findPlastic(times(channel, flow * share), bond, length));
  return flow * (found ?? NEARLY.at(-1)!);
}

/**
 * Load factor at which the larger end slip reaches the slip at failure, or the whole bond flows.
 * @returns factor 0 when temperature alone is enough
 * @throws RangeError when the channel has no load
 */
export function capacityOf(channel: Channel, bond: BondLaw, length: number): Capacity {
  if (channel.load === 0) throw new RangeError('a channel without load has no capacity factor');
  const flow = flowLoad(channel, bond, length) / Math.abs(channel.load);
  const excess = (factor: number): number => {
    const state = solvePlastic(times(channel, factor), bond, length);
    return (
      Math.max(Math.abs(state.slipAtRoot), Math.abs(state.slipAtMouth)) / bond.slipAtFailure - 1
    );
  };
  const endAt = (factor: number): 'root' | 'mouth' => {
    const state = solvePlastic(times(channel, factor), bond, length);
    return Math.abs(state.slipAtRoot) > Math.abs(state.slipAtMouth) ? 'root' : 'mouth';
  };
  if (excess(0) >= 0) return { factor: 0, end: endAt(0), wholeBondFlows: false };
  const limit = nearFlow(channel, bond, length, flow);
  if (excess(limit) <= 0) return { factor: flow, end: endAt(limit), wholeBondFlows: true };
  const factor = findRoot(excess, 0, limit);
  return { factor, end: endAt(factor), wholeBondFlows: false };
}

/** Highest load factor at which the lowest |shear| is at or below `ratio` of yield, below `limit`. */
export function troughFactor(
  channel: Channel,
  bond: BondLaw,
  length: number,
  ratio: number,
  limit: number,
): number {
  const excess = (factor: number): number =>
    solvePlastic(times(channel, factor), bond, length).lowestShear / bond.shearYield - ratio;
  const flow = flowLoad(channel, bond, length) / Math.abs(channel.load);
  const top = Math.min(limit, nearFlow(channel, bond, length, flow));
  if (excess(0) > 0) return 0;
  if (excess(top) <= 0) return limit;
  return findRoot(excess, 0, top);
}
