/**
 * One cell of the chain in terms of its slips alone, for uniform walls. With s″ = f(s) = C·τ(s),
 * Δ = s₁ − s₀ and G = ∂f/∂s the slip rates at its two ends are
 *
 *   e₀ + e₁ = 2Δ/h + h/6·(f₁ − f₀)
 *   e₁ − e₀ = h/2·(f₀ + f₁) + h²/12·(G₀ê₀ − G₁ê₁),   ê₀ = Δ/h − h/6·(2f₀ + f₁),  ê₁ = Δ/h + h/6·(f₀ + 2f₁)
 *
 * the two-point Hermite formula with the forces eliminated; fourth order where the stress is smooth.
 */
import type { LapProblem } from '../lap/problem.ts';
import { evaluateLaw, makeTraction, type Regime, type Traction, tangentGradient } from './law.ts';

/** One end of the cell. */
interface Side {
  readonly f: Float64Array;
  /** ê */
  readonly rate: Float64Array;
  /** G = ∂f/∂s */
  readonly g: Float64Array;
  /** ∂(G·ê)/∂s at fixed ê */
  readonly turn: Float64Array;
  readonly traction: readonly Traction[];
}

/** Slip rates at both ends of one cell and their derivatives with respect to both ends' slips. */
export class SlipCell {
  readonly e0: Float64Array;
  readonly e1: Float64Array;
  /** ∂e₀/∂s₀, ∂e₀/∂s₁, ∂e₁/∂s₀, ∂e₁/∂s₁, row-major. */
  readonly by: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
  private readonly n: number;
  private readonly channels: number;
  private readonly bonds: number;
  private readonly problem: LapProblem;
  private readonly yieldScale: number;
  /** C: curvature of slip u per stress v, MPa⁻¹mm⁻¹. */
  private readonly curvature: Float64Array;
  private readonly gradient = new Float64Array(4);
  private sides: [Side, Side];

  constructor(problem: LapProblem, yieldScale: number) {
    this.problem = problem;
    this.yieldScale = yieldScale;
    this.channels = problem.channels.length;
    this.bonds = problem.bonds.length;
    const n = this.channels * this.bonds;
    this.n = n;
    const square = (): Float64Array => new Float64Array(n * n);
    this.e0 = new Float64Array(n);
    this.e1 = new Float64Array(n);
    this.by = [square(), square(), square(), square()];
    this.curvature = square();
    problem.channels.forEach((channel, q) => {
      for (let j = 0; j < this.bonds; j++) {
        for (let i = 0; i < this.bonds; i++) {
          const own = i === j ? 1 / channel.outers[j]!.stiffness : 0;
          this.curvature[(q * this.bonds + j) * n + q * this.bonds + i] =
            channel.levers[j]! *
            channel.levers[i]! *
            problem.bonds[i]!.width *
            (1 / channel.tube.stiffness + own);
        }
      }
    });
    const side = (): Side => ({
      f: new Float64Array(n),
      rate: new Float64Array(n),
      g: square(),
      turn: square(),
      traction: problem.bonds.map(() => makeTraction()),
    });
    this.sides = [side(), side()];
  }

  private evaluate(end: 0 | 1, s: Float64Array, at: number, regimes: readonly Regime[]): void {
    const { n, bonds, channels, curvature: C, problem } = this;
    const { f, g, traction } = this.sides[end];
    for (let j = 0; j < bonds; j++) {
      const bond = problem.bonds[j]!;
      const s1 = channels > 1 ? s[at + bonds + j]! : 0;
      const limit = bond.shearYield * this.yieldScale;
      evaluateLaw(bond.stiffness, limit, s[at + j]!, s1, regimes[j]!, traction[j]!);
    }
    for (let q = 0; q < channels; q++) {
      for (let j = 0; j < bonds; j++) {
        const u = q * bonds + j;
        let sum = 0;
        for (let i = 0; i < bonds; i++) {
          const c = C[u * n + q * bonds + i]!;
          sum += c * traction[i]!.stress[q]!;
          for (let p = 0; p < channels; p++) {
            g[u * n + p * bonds + i] = c * traction[i]!.tangent[q + p]!;
          }
        }
        f[u] = sum;
      }
    }
  }

  /** Derivative of G·ê with the direction of the slip: only two channels at once can turn. */
  private evaluateTurn(end: 0 | 1, regimes: readonly Regime[]): void {
    const { n, bonds, channels, curvature: C, problem } = this;
    const { turn, rate, traction } = this.sides[end];
    turn.fill(0);
    if (channels === 1) return;
    for (let i = 0; i < bonds; i++) {
      if (regimes[i] !== 'plastic' || !(traction[i]!.size > 0)) continue;
      const limit = problem.bonds[i]!.shearYield * this.yieldScale;
      const d = this.gradient;
      tangentGradient(limit, traction[i]!, rate[i]!, rate[bonds + i]!, d);
      for (let q = 0; q < 2; q++) {
        for (let j = 0; j < bonds; j++) {
          const u = q * bonds + j;
          const c = C[u * n + q * bonds + i]!;
          turn[u * n + i]! += c * d[2 * q]!;
          turn[u * n + bonds + i]! += c * d[2 * q + 1]!;
        }
      }
    }
  }

  /**
   * @param follows whether the cell computed last ends where this one begins, with the same slips and
   *   regimes: its end need not be evaluated again
   */
  compute(
    s: Float64Array,
    at: number,
    h: number,
    regimes: readonly Regime[],
    follows: boolean,
  ): void {
    const { n } = this;
    if (follows) this.sides = [this.sides[1], this.sides[0]];
    else this.evaluate(0, s, at, regimes);
    this.evaluate(1, s, at + n, regimes);
    const [a, b] = this.sides;
    const smooth = regimes[0] !== 'either' && regimes[regimes.length - 1] !== 'either';
    for (let u = 0; u < n; u++) {
      const slope = (s[at + n + u]! - s[at + u]!) / h;
      a.rate[u] = slope - (h / 6) * (2 * a.f[u]! + b.f[u]!);
      b.rate[u] = slope + (h / 6) * (a.f[u]! + 2 * b.f[u]!);
    }
    const twelfth = smooth ? (h * h) / 12 : 0;
    if (smooth) {
      this.evaluateTurn(0, regimes);
      this.evaluateTurn(1, regimes);
    }
    const [e0s0, e0s1, e1s0, e1s1] = this.by;
    for (let u = 0; u < n; u++) {
      let ga = 0;
      let gb = 0;
      for (let v = 0; v < n; v++) {
        ga += a.g[u * n + v]! * a.rate[v]!;
        gb += b.g[u * n + v]! * b.rate[v]!;
      }
      const sum = (2 * (s[at + n + u]! - s[at + u]!)) / h + (h / 6) * (b.f[u]! - a.f[u]!);
      const difference = (h / 2) * (a.f[u]! + b.f[u]!) + twelfth * (ga - gb);
      this.e0[u] = (sum - difference) / 2;
      this.e1[u] = (sum + difference) / 2;
      for (let v = 0; v < n; v++) {
        const k = u * n + v;
        const one = u === v ? 1 : 0;
        const sumBy0 = (-2 * one) / h - (h / 6) * a.g[k]!;
        const sumBy1 = (2 * one) / h + (h / 6) * b.g[k]!;
        let by0 = (h / 2) * a.g[k]!;
        let by1 = (h / 2) * b.g[k]!;
        if (smooth) {
          let aa = 0;
          let ab = 0;
          let ba = 0;
          let bb = 0;
          for (let w = 0; w < n; w++) {
            const gaw = a.g[u * n + w]!;
            const gbw = b.g[u * n + w]!;
            aa += gaw * a.g[w * n + v]!;
            ab += gaw * b.g[w * n + v]!;
            ba += gbw * a.g[w * n + v]!;
            bb += gbw * b.g[w * n + v]!;
          }
          const ga0 = -a.g[k]! / h - (h / 3) * aa + a.turn[k]!;
          const ga1 = a.g[k]! / h - (h / 6) * ab;
          const gb0 = -b.g[k]! / h + (h / 6) * ba;
          const gb1 = b.g[k]! / h + (h / 3) * bb + b.turn[k]!;
          by0 += twelfth * (ga0 - gb0);
          by1 += twelfth * (ga1 - gb1);
        }
        e0s0[k] = (sumBy0 - by0) / 2;
        e0s1[k] = (sumBy1 - by1) / 2;
        e1s0[k] = (sumBy0 + by0) / 2;
        e1s1[k] = (sumBy1 + by1) / 2;
      }
    }
  }
}
