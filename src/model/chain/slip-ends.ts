/** What closes the chain of slips at its two ends, and the forces that follow from the slip rates. */
import { type LapProblem, thermalMismatch } from '../lap/problem.ts';

/** Linear end conditions: matrix on the slip rates, on the slips, on λ, and the constant. */
export interface EndRows {
  readonly onRate: Float64Array;
  readonly onSlip: Float64Array;
  readonly onLambda: Float64Array;
  readonly constant: Float64Array;
}

export function endRows(problem: LapProblem, omega: number): { root: EndRows; mouth: EndRows } {
  const bonds = problem.bonds.length;
  const n = problem.channels.length * bonds;
  const make = (): EndRows => ({
    onRate: new Float64Array(n * n),
    onSlip: new Float64Array(n * n),
    onLambda: new Float64Array(n),
    constant: new Float64Array(n),
  });
  const root = make();
  const mouth = make();
  problem.channels.forEach((channel, q) => {
    const u = q * bonds;
    for (let j = 0; j < bonds; j++) {
      // Mouth: the outers are free, the tube carries λP.
      mouth.onRate[(u + j) * n + u + j] = 1;
      mouth.onLambda[u + j] = (-channel.levers[j]! * channel.load) / channel.tube.stiffness;
      mouth.constant[u + j] = -thermalMismatch(channel, j);
    }
    // Root: the tube is free and the outers together carry λP.
    const weights = channel.outers.map((outer, j) => outer.stiffness / channel.levers[j]!);
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    for (let j = 0; j < bonds; j++) {
      root.onRate[u * n + u + j] = weights[j]! / total;
      root.constant[u]! -= (weights[j]! / total) * thermalMismatch(channel, j);
    }
    root.onLambda[u] = channel.load / total;
    if (bonds === 2) {
      // Spigot and socket are one piece behind the root.
      root.onSlip[(u + 1) * n + u] = omega / channel.levers[0]!;
      root.onSlip[(u + 1) * n + u + 1] = -omega / channel.levers[1]!;
    }
  });
  return { root, mouth };
}

/** Forces of the outers from the slip rates: a(N_t/K_t − N/K) + Δε = e, N_t = λP − ΣN. */
export function outerForces(
  problem: LapProblem,
  q: number,
  lambda: number,
  rates: Float64Array,
  node: number,
  values: Float64Array,
): void {
  const channel = problem.channels[q]!;
  const bonds = problem.bonds.length;
  const n = problem.channels.length * bonds;
  const m = 2 * n + 1;
  const flexTube = 1 / channel.tube.stiffness;
  // N_j = K_j·(N_t/K_t − r_j) with r_j = (e_j − Δε_j)/a_j; summed over j this gives N_t.
  let stiffness = 0;
  let drawn = 0;
  const strain = channel.outers.map((outer, j) => {
    const r = (rates[node * n + q * bonds + j]! - thermalMismatch(channel, j)) / channel.levers[j]!;
    stiffness += outer.stiffness;
    drawn += outer.stiffness * r;
    return r;
  });
  const tubeForce = (lambda * channel.load + drawn) / (1 + stiffness * flexTube);
  channel.outers.forEach((outer, j) => {
    values[node * m + 2 * (q * bonds + j) + 1] =
      outer.stiffness * (tubeForce * flexTube - strain[j]!);
  });
}
