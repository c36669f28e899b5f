/**
 * What the bonds carry at most, by the chain: the load factor at which the first end of any bond
 * slips by its slip at failure, thermal stress held fixed.
 */
import type { LapProblem } from '../lap/problem.ts';
import { slipAtYield } from '../lap/problem.ts';
import { slipRatio } from './fronts.ts';
import { solveChain } from './solve.ts';
import type { Chain } from './system.ts';

export interface ChainCapacity {
  readonly factor: number;
  readonly bond: number;
  readonly end: 'root' | 'mouth';
  readonly chain: Chain;
}

const ends = ['root', 'mouth'] as const;

/** Slip over slip at failure at both ends of every bond, largest first. */
function rankEnds(problem: LapProblem, chain: Chain) {
  return problem.bonds
    .flatMap((bond, j) =>
      ends.map((end) => {
        const node = end === 'root' ? 0 : chain.nodes.length - 1;
        const used = (slipRatio(problem, chain, j, node) * slipAtYield(bond)) / bond.slipAtFailure;
        return { bond: j, end, used };
      }),
    )
    .sort((a, b) => b.used - a.used);
}

/**
 * @param first bond and end to try first; the answer does not depend on it, only the time does
 * @throws ModelError when no load moves any end
 */
export function chainCapacity(
  problem: LapProblem,
  first: { readonly bond: number; readonly end: 'root' | 'mouth' },
): ChainCapacity {
  const targets = [
    first,
    ...problem.bonds.flatMap((_bond, j) => ends.map((end) => ({ bond: j, end }))),
  ];
  const tried = new Set<string>();
  let best: ChainCapacity | null = null;
  let refusal: unknown = null;
  for (let target = targets.shift(); target; target = targets.shift()) {
    const name = `${target.bond} ${target.end}`;
    if (tried.has(name)) continue;
    tried.add(name);
    const size = problem.bonds[target.bond]!.slipAtFailure;
    let chain: Chain;
    try {
      chain = solveChain(problem, { kind: 'slip', bond: target.bond, end: target.end, size });
    } catch (error) {
      // An end that others forestall may never get there: they decide.
      refusal = error;
      continue;
    }
    const factor = chain.values[chain.values.length - 1]!;
    if (!best || factor < best.factor) {
      best = { factor, bond: target.bond, end: target.end, chain };
    }
    const worst = rankEnds(problem, chain)[0]!;
    if (worst.used <= 1 + 1e-9) break;
    targets.unshift(worst);
  }
  if (!best) throw refusal;
  return best;
}
