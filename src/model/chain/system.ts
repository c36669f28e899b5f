/**
 * The equations of the chain on given nodes, and how far unknowns are from solving them. Cells are joined by the
 * two-point Hermite formula, fourth order where the stress is smooth:
 *
 *   y₁ − y₀ = h/2·(y₀′ + y₁′) + h²/12·(y₀″ − y₁″)
 */
import { type LapProblem, slipAtYield } from '../lap/problem.ts';
import { BandedMatrix } from '../numerics/banded.ts';
import { layoutOf, makeRates, makeRatesAt } from './equations.ts';
import type { Regime } from './law.ts';

/** What closes the system: a load factor, or the size of the slip of one bond at one end. */
export type Control =
  | { readonly kind: 'load'; readonly factor: number }
  | {
      readonly kind: 'slip';
      readonly bond: number;
      readonly end: 'root' | 'mouth';
      readonly size: number;
    };

export interface Chain {
  readonly nodes: Float64Array;
  /** Unknowns node by node, see `Layout`. */
  readonly values: Float64Array;
  /** For each cell, each bond's branch of the law. */
  readonly regimes: readonly (readonly Regime[])[];
}

export interface ChainSystem {
  /** Each unknown of a node is counted in its own scale, and each equation in that of its unknown. */
  readonly scale: Float64Array;
  readonly matrix: BandedMatrix;
  readonly residual: Float64Array;
  /**
   * Fills the residual, and the matrix where asked, at the present unknowns.
   * @returns size of the residual
   */
  assemble(withMatrix: boolean): number;
}

/**
 * @param start its unknowns are those of the system: write into them and assemble again
 * @param yieldScale multiplies the yield stress of every bond, for continuation
 */
export function chainSystem(
  problem: LapProblem,
  control: Control,
  start: Chain,
  yieldScale: number,
): ChainSystem {
  const { channels, bonds, unknowns: m } = layoutOf(problem);
  const { nodes, regimes, values } = start;
  const cells = nodes.length - 1;
  const size = m * nodes.length;
  const atRoot = control.kind === 'slip' && control.end === 'root' ? 1 : 0;
  const left = channels * bonds + atRoot;
  const matrix = new BandedMatrix(size, left + m - 1, 2 * m - 1 - left);
  const residual = new Float64Array(size);
  const lambda = m - 1;
  const ratesAt = makeRatesAt(problem, yieldScale);
  let rates0 = makeRates(m);
  let rates1 = makeRates(m);
  /** A node that lies between two cells on the same branches has the same rates in both. */
  const isAsBefore = regimes.map((regime, i) => {
    const before = regimes[i - 1];
    return (
      before !== undefined && (before === regime || regime.every((one, j) => one === before[j]))
    );
  });

  // Scales: slip at yield, the channel's force, the present load factor.
  const scale = new Float64Array(m);
  for (let q = 0; q < channels; q++) {
    for (let j = 0; j < bonds; j++) {
      const bond = problem.bonds[j]!;
      scale[2 * (q * bonds + j)] = slipAtYield(bond);
      scale[2 * (q * bonds + j) + 1] =
        bond.width * bond.shearYield * problem.channels[q]!.levers[j]! * problem.length;
    }
  }
  scale[lambda] = Math.max(Math.abs(values[lambda]!), 1e-9);

  const boundary = (withMatrix: boolean): void => {
    let row = 0;
    const put = (column: number, value: number, rowScale: number): void => {
      if (withMatrix) matrix.add(row, column, (value * scale[column % m]!) / rowScale);
    };
    const close = (node: number): void => {
      const at = node * m;
      if (control.kind === 'load') {
        residual[row] = (values[at + lambda]! - control.factor) / scale[lambda]!;
        put(at + lambda, 1, scale[lambda]!);
      } else {
        const unit = scale[2 * control.bond]!;
        const s0 = values[at + 2 * control.bond]!;
        const s1 = channels > 1 ? values[at + 2 * (bonds + control.bond)]! : 0;
        const length = Math.hypot(s0, s1);
        residual[row] = (length - control.size) / unit;
        put(at + 2 * control.bond, length > 0 ? s0 / length : 1, unit);
        if (channels > 1) put(at + 2 * (bonds + control.bond), length > 0 ? s1 / length : 0, unit);
      }
      row++;
    };
    for (let q = 0; q < channels; q++) {
      const channel = problem.channels[q]!;
      // The tube's end is free: the outers together carry the load at the root.
      let sum = -values[lambda]! * channel.load;
      for (let j = 0; j < bonds; j++) sum += values[2 * (q * bonds + j) + 1]!;
      const unit = scale[2 * q * bonds + 1]!;
      residual[row] = sum / unit;
      for (let j = 0; j < bonds; j++) put(2 * (q * bonds + j) + 1, 1, unit);
      put(lambda, -channel.load, unit);
      row++;
      if (bonds === 2) {
        // Spigot and socket are one piece behind the root.
        const u = 2 * q * bonds;
        const [a0, a1] = [channel.levers[0]!, channel.levers[1]!];
        residual[row] = (values[u]! / a0 - values[u + 2]! / a1) / scale[u]!;
        put(u, 1 / a0, scale[u]!);
        put(u + 2, -1 / a1, scale[u]!);
        row++;
      }
    }
    if (atRoot) close(0);
    row = left + cells * m;
    const end = cells * m;
    for (let q = 0; q < channels; q++) {
      for (let j = 0; j < bonds; j++) {
        const u = end + 2 * (q * bonds + j) + 1;
        residual[row] = values[u]! / scale[u % m]!;
        put(u, 1, scale[u % m]!);
        row++;
      }
    }
    if (!atRoot) close(cells);
  };

  const assemble = (withMatrix: boolean): number => {
    if (withMatrix) matrix.clear();
    boundary(withMatrix);
    for (let i = 0; i < cells; i++) {
      const h = nodes[i + 1]! - nodes[i]!;
      const at = i * m;
      const regime = regimes[i]!;
      if (isAsBefore[i]) [rates0, rates1] = [rates1, rates0];
      else ratesAt(nodes[i]!, values, at, regime, rates0);
      ratesAt(nodes[i + 1]!, values, at + m, regime, rates1);
      const half = h / 2;
      const twelfth = (h * h) / 12;
      for (let r = 0; r < m; r++) {
        const row = left + at + r;
        const unit = scale[r]!;
        residual[row] =
          (values[at + m + r]! -
            values[at + r]! -
            half * (rates0.first[r]! + rates1.first[r]!) -
            twelfth * (rates0.second[r]! - rates1.second[r]!)) /
          unit;
        if (!withMatrix) continue;
        for (let c = 0; c < m; c++) {
          const k = r * m + c;
          const own = r === c ? 1 : 0;
          const v0 = -own - half * rates0.firstBy[k]! - twelfth * rates0.secondBy[k]!;
          const v1 = own - half * rates1.firstBy[k]! + twelfth * rates1.secondBy[k]!;
          if (v0 !== 0) matrix.add(row, at + c, (v0 * scale[c]!) / unit);
          if (v1 !== 0) matrix.add(row, at + m + c, (v1 * scale[c]!) / unit);
        }
      }
    }
    let norm = 0;
    for (let i = 0; i < size; i++) norm += residual[i]! * residual[i]!;
    return Math.sqrt(norm);
  };

  return {
    scale,
    matrix,
    residual,
    assemble,
  };
}
