/**
 * The equations of one node of the chain: the slip s and the outer force N of every bond and
 * channel, and the load factor λ, which is carried along as a constant unknown so that a slip can
 * be prescribed instead of a load.
 *
 *   s′ = a(N_t/K_t − N/K) + Δε,   N′ = −a·c·τ(s),   N_t = λP − ΣN
 *   s″ = a(N_t′/K_t − N′/K + N·K′/K²),   N″ = −a·c·(∂τ/∂s)·s′
 */
import { type LapProblem, stiffnessAt, stiffnessRiseAt, thermalMismatch } from '../lap/problem.ts';
import { evaluateLaw, makeTraction, type Regime, tangentGradient } from './law.ts';

/** Unknowns of a node: 2·(q·bonds + j) is the slip, one more the force; λ is last. */
export interface Layout {
  readonly channels: number;
  readonly bonds: number;
  readonly unknowns: number;
}

export const layoutOf = (problem: LapProblem): Layout => {
  const channels = problem.channels.length;
  const bonds = problem.bonds.length;
  return { channels, bonds, unknowns: 2 * channels * bonds + 1 };
};

/** Rates at a node and their derivatives with respect to the node's unknowns (row-major). */
export interface NodeRates {
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly firstBy: Float64Array;
  readonly secondBy: Float64Array;
}

export const makeRates = (unknowns: number): NodeRates => ({
  first: new Float64Array(unknowns),
  second: new Float64Array(unknowns),
  firstBy: new Float64Array(unknowns * unknowns),
  secondBy: new Float64Array(unknowns * unknowns),
});

export type RatesAt = (
  x: number,
  y: Float64Array,
  offset: number,
  regimes: readonly Regime[],
  out: NodeRates,
) => void;

/** The rates alone, without derivatives: what interpolation needs. */
export function makeFirstRates(
  problem: LapProblem,
): (
  x: number,
  y: Float64Array,
  offset: number,
  regimes: readonly Regime[],
  out: Float64Array,
) => void {
  const { channels, bonds, unknowns: m } = layoutOf(problem);
  const traction = makeTraction();
  return (x, y, offset, regimes, out) => {
    out[m - 1] = 0;
    for (let q = 0; q < channels; q++) {
      const channel = problem.channels[q]!;
      let tubeForce = y[offset + m - 1]! * channel.load;
      for (let j = 0; j < bonds; j++) tubeForce -= y[offset + 2 * (q * bonds + j) + 1]!;
      for (let j = 0; j < bonds; j++) {
        const u = 2 * (q * bonds + j);
        const stiffness = stiffnessAt(channel.outers[j]!, x, problem.length);
        out[u] =
          channel.levers[j]! *
            (tubeForce / channel.tube.stiffness - y[offset + u + 1]! / stiffness) +
          thermalMismatch(channel, j);
      }
    }
    for (let j = 0; j < bonds; j++) {
      const bond = problem.bonds[j]!;
      if (regimes[j] === 'elastic') {
        // Of all cells most are so: the law need not be asked.
        for (let q = 0; q < channels; q++) {
          out[2 * (q * bonds + j) + 1] =
            -problem.channels[q]!.levers[j]! *
            bond.width *
            (bond.stiffness * y[offset + 2 * (q * bonds + j)]!);
        }
        continue;
      }
      const s1 = channels > 1 ? y[offset + 2 * (bonds + j)]! : 0;
      evaluateLaw(bond.stiffness, bond.shearYield, y[offset + 2 * j]!, s1, regimes[j]!, traction);
      for (let q = 0; q < channels; q++) {
        out[2 * (q * bonds + j) + 1] =
          -problem.channels[q]!.levers[j]! * bond.width * traction.stress[q]!;
      }
    }
  };
}

/** Evaluator of the rates for one problem; `yieldScale` multiplies every bond's yield stress. */
export function makeRatesAt(problem: LapProblem, yieldScale: number): RatesAt {
  const { channels, bonds, unknowns: m } = layoutOf(problem);
  const lambda = m - 1;
  const traction = problem.bonds.map(() => makeTraction());
  const gradient = new Float64Array(4);
  const slips = problem.channels.map((channel) =>
    problem.bonds.map((bond, j) => ({
      lever: channel.levers[j]!,
      transfer: channel.levers[j]! * bond.width,
      mismatch: thermalMismatch(channel, j),
      outer: channel.outers[j]!,
    })),
  );

  return (x, y, offset, regimes, out) => {
    const { first, second, firstBy, secondBy } = out;
    firstBy.fill(0);
    secondBy.fill(0);
    first[lambda] = 0;
    second[lambda] = 0;
    for (let j = 0; j < bonds; j++) {
      const bond = problem.bonds[j]!;
      const s1 = channels > 1 ? y[offset + 2 * (bonds + j)]! : 0;
      evaluateLaw(
        bond.stiffness,
        bond.shearYield * yieldScale,
        y[offset + 2 * j]!,
        s1,
        regimes[j]!,
        traction[j]!,
      );
    }
    for (let q = 0; q < channels; q++) {
      const channel = problem.channels[q]!;
      const flexTube = 1 / channel.tube.stiffness;
      let tubeForce = y[offset + lambda]! * channel.load;
      let tubeRate = 0;
      for (let j = 0; j < bonds; j++) {
        const { transfer } = slips[q]![j]!;
        tubeForce -= y[offset + 2 * (q * bonds + j) + 1]!;
        tubeRate += transfer * traction[j]!.stress[q]!;
      }
      for (let j = 0; j < bonds; j++) {
        const u = 2 * (q * bonds + j);
        const { lever, transfer, mismatch, outer } = slips[q]![j]!;
        const stiffness = stiffnessAt(outer, x, problem.length);
        const rise = stiffnessRiseAt(outer, x, problem.length);
        const flex = 1 / stiffness;
        const force = y[offset + u + 1]!;
        const stress = traction[j]!.stress[q]!;
        first[u] = lever * (tubeForce * flexTube - force * flex) + mismatch;
        first[u + 1] = -transfer * stress;
        const flexRate = rise * flex * flex;
        second[u] = lever * (tubeRate * flexTube + transfer * stress * flex + force * flexRate);
        firstBy[u * m + lambda] = lever * channel.load * flexTube;
        for (let i = 0; i < bonds; i++) {
          const v = 2 * (q * bonds + i);
          const own = i === j ? 1 : 0;
          firstBy[u * m + v + 1] = -lever * (flexTube + own * flex);
          secondBy[u * m + v + 1] = own * lever * flexRate;
          const other = slips[q]![i]!.transfer;
          const share = lever * other * (flexTube + own * flex);
          for (let p = 0; p < channels; p++) {
            const tangent = traction[i]!.tangent[q + p]!;
            secondBy[u * m + 2 * (p * bonds + i)] = share * tangent;
          }
        }
        for (let p = 0; p < channels; p++) {
          firstBy[(u + 1) * m + 2 * (p * bonds + j)] = -transfer * traction[j]!.tangent[q + p]!;
        }
      }
    }
    // N″ needs every channel's slip rate: a second pass.
    for (let j = 0; j < bonds; j++) {
      const regime = regimes[j]!;
      for (let q = 0; q < channels; q++) {
        const u = 2 * (q * bonds + j);
        if (regime === 'either') {
          // Inside a cell that may hold a yield front the stress has a kink: no second derivative.
          second[u + 1] = 0;
          continue;
        }
        const { transfer } = slips[q]![j]!;
        let sum = 0;
        for (let p = 0; p < channels; p++) {
          const v = 2 * (p * bonds + j);
          const tangent = traction[j]!.tangent[q + p]!;
          sum += tangent * first[v]!;
          for (let col = 0; col < m; col++) {
            secondBy[(u + 1) * m + col]! -= transfer * tangent * firstBy[v * m + col]!;
          }
        }
        second[u + 1] = -transfer * sum;
        if (regime === 'plastic' && channels > 1 && traction[j]!.size > 0) {
          const v0 = 2 * j;
          const v1 = 2 * (bonds + j);
          const yieldStress = problem.bonds[j]!.shearYield * yieldScale;
          const g = gradient;
          tangentGradient(yieldStress, traction[j]!, first[v0]!, first[v1]!, g);
          secondBy[(u + 1) * m + v0]! -= transfer * g[2 * q]!;
          secondBy[(u + 1) * m + v1]! -= transfer * g[2 * q + 1]!;
        }
      }
    }
  };
}
