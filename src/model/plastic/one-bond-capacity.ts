/**
 * What one bond in one channel carries at most, with the thermal stress held fixed.
 */
import type { BondLaw, Channel } from '../lap/problem.ts';
import { findRoot } from '../numerics/root.ts';
import { findPlastic, flowLoad, type OneBondPlastic, solvePlastic } from './one-bond.ts';

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

/** The highest factor just below the flow load at which there is a state, and that state. */
function nearFlow(channel: Channel, bond: BondLaw, length: number, flow: number) {
  for (const share of NEARLY) {
    const state = findPlastic(times(channel, flow * share), bond, length);
    if (state) return { factor: flow * share, state };
  }
  throw new RangeError(`no equilibrium near the flow load, ${flow} times the load`);
}

const failingEnd = ({ slipAtRoot, slipAtMouth }: OneBondPlastic): 'root' | 'mouth' =>
  Math.abs(slipAtRoot) > Math.abs(slipAtMouth) ? 'root' : 'mouth';

/**
 * Load factor at which the larger end slip reaches the slip at failure, or the whole bond flows.
 * @returns factor 0 when temperature alone is enough
 * @throws RangeError when the channel has no load
 */
export function capacityOf(channel: Channel, bond: BondLaw, length: number): Capacity {
  if (channel.load === 0) throw new RangeError('a channel without load has no capacity factor');
  const flow = flowLoad(channel, bond, length) / Math.abs(channel.load);
  const excessOf = ({ slipAtRoot, slipAtMouth }: OneBondPlastic): number =>
    Math.max(Math.abs(slipAtRoot), Math.abs(slipAtMouth)) / bond.slipAtFailure - 1;
  const at = (factor: number): OneBondPlastic => solvePlastic(times(channel, factor), bond, length);
  const unloaded = at(0);
  if (excessOf(unloaded) >= 0) {
    return { factor: 0, end: failingEnd(unloaded), wholeBondFlows: false };
  }
  const near = nearFlow(channel, bond, length, flow);
  if (excessOf(near.state) <= 0) {
    return { factor: flow, end: failingEnd(near.state), wholeBondFlows: true };
  }
  const factor = findRoot((one) => excessOf(at(one)), 0, near.factor);
  return { factor, end: failingEnd(at(factor)), wholeBondFlows: false };
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
  if (excess(0) > 0) return 0;
  // Well below the flow load there is a state.
  const top =
    limit < flow * NEARLY.at(-1)!
      ? limit
      : Math.min(limit, nearFlow(channel, bond, length, flow).factor);
  if (excess(top) <= 0) return limit;
  return findRoot(excess, 0, top);
}
