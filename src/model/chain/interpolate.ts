/** The chain's unknowns between its nodes, by cubic Hermite interpolation. */
import type { LapProblem } from '../lap/problem.ts';
import { layoutOf, makeFirstRates } from './equations.ts';
import type { Chain } from './system.ts';

/** Index of the cell that holds x. */
export function cellAt(nodes: Float64Array, x: number): number {
  let low = 0;
  let high = nodes.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (nodes[middle]! <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * @returns function writing all unknowns at x into `out`
 */
export function interpolator(
  problem: LapProblem,
  chain: Chain,
): (x: number, out: Float64Array) => void {
  const { unknowns: m } = layoutOf(problem);
  const ratesAt = makeFirstRates(problem);
  const rates0 = new Float64Array(m);
  const rates1 = new Float64Array(m);
  let cached = -1;
  return (x, out) => {
    const { nodes, values, regimes } = chain;
    const i = cellAt(nodes, x);
    if (i !== cached) {
      ratesAt(nodes[i]!, values, i * m, regimes[i]!, rates0);
      ratesAt(nodes[i + 1]!, values, (i + 1) * m, regimes[i]!, rates1);
      cached = i;
    }
    const h = nodes[i + 1]! - nodes[i]!;
    const t = Math.min(Math.max((x - nodes[i]!) / h, 0), 1);
    const t2 = t * t;
    const t3 = t2 * t;
    const h00 = 2 * t3 - 3 * t2 + 1;
    const h10 = t3 - 2 * t2 + t;
    const h01 = 3 * t2 - 2 * t3;
    const h11 = t3 - t2;
    for (let r = 0; r < m; r++) {
      out[r] =
        h00 * values[i * m + r]! +
        h10 * h * rates0[r]! +
        h01 * values[(i + 1) * m + r]! +
        h11 * h * rates1[r]!;
    }
  };
}
